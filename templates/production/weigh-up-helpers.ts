// What a weigh-up is worked out from, beside the page: steps of the scale, ice, temperatures.
import { FINE } from "../../shared/card/parts.ts";
import type { CellModel, Formula, Line } from "../../shared/sheet/model.ts";
import { MELTING, WATER_HEAT } from "../../shared/water/ice.ts";
import { linkName, textFormula } from "./shape.ts";

/** What of a dough is mixed in the shift. */
export type Stage = "whole" | "preferment" | "final";
export type WeighShape = {
  readonly title: string;
  /** When it is mixed, which batch it is, and what of it. */
  readonly says: string;
  readonly stage: Stage;
  readonly rows: number;
  /** Which of the rows (counted from 0) are water, and which come ready out of a crock. */
  readonly water: readonly number[];
  /** What the preferment is called; "" where there is none. */
  readonly preferment: string;
  readonly sizes: readonly string[];
  /** Whether the formula has a dough temperature to work towards. */
  readonly hasWater: boolean;
};
export const PAGE = 6;
export const HELPERS = PAGE + 1;

const cell = (at: number, name: string, formula: Formula, unit: CellModel["unit"] = "plain"): CellModel => ({
  at,
  role: "helper",
  name,
  unit,
  formula,
});

export const sumOf = (name: string, before: number, rows: number) =>
  `SUM(@${name}_${before}:@${name}_${before + rows - 1})`;

/** The next weight upwards that the scales show, on the coarse step where that is so small a part of it; as a card has it. */
export function upwards(exact: string, index: number): string {
  const stepped = (step: string) => `ROUNDUP(ROUND(${exact}/@${step}_${index};9);0)*@${step}_${index}`;
  return `=IF(${exact}>=${FINE}*@coarse_${index};${stepped("coarse")};${stepped("fine")})`;
}

/** The weight on the coarse step where that moves it by 2 % at most, else on the fine one, else as it is. */
function onScale(exact: string, index: number): string {
  const stepped = (step: string) => `ROUND(ROUND(${exact}/@${step}_${index};9);0)*@${step}_${index}`;
  const near = (step: string) => `ABS(${stepped(step)}-${exact})<=${exact}*(1/50*(1+1/10^9))`;
  return `=IF(${near("coarse")};${stepped("coarse")};IF(${near("fine")};${stepped("fine")};${exact}))`;
}

const fraction = (value: number) => `(${Math.round(value * 1000)}/1000)`;
const MELTS = `${fraction(MELTING)}/${fraction(WATER_HEAT)}`;

/** Beside a dough: links, and the weights exact and on the scales' steps. */
export function helperLines({ rows, water, hasWater, stage }: WeighShape, index: number, before: number): Line[] {
  const link = (name: string) => `=[${linkName(name, index)}]`;
  const finalWater =
    water.length === 0
      ? "0"
      : water
          .map((row) =>
            stage === "final" || stage === "whole" ? `@exact_${before + row}-@pre_exact_${before + row}` : "0",
          )
          .join("+");
  const [weight, target] = [`@preferment_at_${index}`, `@target_${index}`];
  const singles: CellModel[] = [
    cell(0, `mixes_${index}`, link("mixes")),
    cell(1, `each_${index}`, link("each")),
    cell(2, `coarse_${index}`, `=IF(N([${linkName("coarse", index)}])>0;[${linkName("coarse", index)}];1)`),
    cell(3, `fine_${index}`, `=IF(N([${linkName("fine", index)}])>0;[${linkName("fine", index)}];1)`),
    cell(4, `parts_${index}`, `=${sumOf("part", before, rows)}`),
    cell(5, `pre_mix_${index}`, `=${sumOf("pre_scale", before, rows)}`),
  ];
  const temperature: CellModel[] = hasWater
    ? [
        cell(0, target.slice(1), link("target")),
        cell(1, `friction_${index}`, link("friction")),
        cell(2, weight.slice(1), link("preferment_at")),
        cell(
          3,
          `water_at_${index}`,
          `=IF(COUNT(@room;@flour;${target};@friction_${index})<4;"";(3+COUNT(${weight}))*${target}-@room-@flour-N(${weight})-@friction_${index})`,
        ),
        cell(4, `water_mix_${index}`, `=${finalWater}`),
        cell(5, `ice_share_${index}`, [
          { when: "F", formula: iceShare(index, "32", `9/5*${MELTS}`) },
          { formula: iceShare(index, "0", MELTS) },
        ]),
        cell(
          6,
          `ice_${index}`,
          `=IF(COUNT(@ice_share_${index})=0;0;IF(@ice_share_${index}>1;0;@ice_share_${index}*@water_mix_${index}))`,
        ),
        cell(7, `ice_scale_${index}`, `=IF(@ice_${index}=0;"";${onScale(`@ice_${index}`, index).slice(1)})`),
        cell(
          8,
          `tap_scale_${index}`,
          `=IF(@ice_${index}=0;"";${onScale(`(@water_mix_${index}-@ice_${index})`, index).slice(1)})`,
        ),
        cell(
          9,
          `held_scale_${index}`,
          `=IF(N([${linkName("held", index)}])=0;"";${onScale(`(@water_mix_${index}*[${linkName("held", index)}])`, index).slice(1)})`,
        ),
      ]
    : [];
  return [
    { cells: singles },
    { cells: temperature },
    {
      cells: ["Part", "In the preferment", "Exact", "Preferment", "On the scale", "Preferment", "Final mix"].map(
        (text, at) => ({ at, role: "helper", unit: "text", formula: textFormula(text) }),
      ),
    },
    ...Array.from({ length: rows }, (_, row): Line => {
      const at = before + row;
      return {
        cells: [
          cell(0, `part_${at}`, `=N([${linkName("part", at)}])`),
          cell(1, `pre_part_${at}`, `=N([${linkName("pre_part", at)}])`),
          cell(2, `exact_${at}`, `=@part_${at}*@each_${index}`),
          cell(3, `pre_exact_${at}`, `=@exact_${at}*@pre_part_${at}`),
          cell(4, `mix_scale_${at}`, onScale(`@exact_${at}`, index)),
          cell(5, `pre_scale_${at}`, onScale(`@pre_exact_${at}`, index)),
          cell(6, `final_${at}`, `=ROUND(@mix_scale_${at}-@pre_scale_${at};9)`),
        ],
      };
    }),
  ];
}

/** As the formula sheet has it: of the water so much ice that the rest, at the tap's temperature, comes to what is wanted. */
const iceShare = (index: number, at: string, degrees: string) =>
  `=IF(COUNT(@water_at_${index};@tap)<2;"";IF(@tap<${at};"";IF(@water_at_${index}>=@tap;0;(@tap-@water_at_${index})/(@tap-${at}+${degrees}))))`;
