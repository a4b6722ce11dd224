// What a shift weighs: each dough's ingredients for a mix on the scales' steps, preferment and final mix apart, water and ice.

import { FINE } from "../../shared/card/parts.ts";
import type { Block, CellModel, Formula, Line, SheetModel } from "../../shared/sheet/model.ts";
import { MELTING, WATER_HEAT } from "../../shared/water/ice.ts";
import { headingLine } from "../blocks/line.ts";
import { CAUTIONS, cautionsOf } from "../blocks/name.ts";
import { linkName, quoted, textFormula } from "./shape.ts";

export const WEIGH_UP_MARK = "Weigh-up of a shift";
export const TEMPERATURES_SAY = "Room, flour, tap water";

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
export type WeighUpShape = {
  readonly blocks: readonly WeighShape[];
  /** Lines on feeds, times and clocks. */
  readonly facts: readonly string[];
};

const TICK = "☐";
const PAGE = 6;
const HELPERS = PAGE + 1;

export function weighUpSheet({ blocks, facts }: WeighUpShape): SheetModel {
  const rowsBefore = blocks.map((_, at) => blocks.slice(0, at).reduce((sum, { rows }) => sum + rows, 0));
  return {
    name: "weigh-up",
    title: "Weigh-up",
    says: "What a shift weighs, dough by dough.",
    widths: [28, 250, ...Array<number>(17).fill(120)],
    parts: [],
    frozen: 3,
    foldedFrom: PAGE,
    fillsFirst: ["room"],
    bands: [
      [titleBlock(), { block: "says", left: HELPERS, lines: checkLines(blocks) }],
      [temperatures],
      ...blocks.map((block, at) => [
        doughBlock(block, at, rowsBefore[at] ?? 0),
        { block: `helpers_${at}`, left: HELPERS, lines: helperLines(block, at, rowsBefore[at] ?? 0) },
      ]),
      ...(facts.length === 0
        ? []
        : [
            [
              {
                block: "facts",
                left: 0,
                lines: facts.map((text): Line => ({ cells: [{ at: 0, role: "label", text }] })),
              },
            ],
          ]),
      [cautionsOf(CAUTIONS.raw)],
    ],
    sample: {},
    expects: {},
  };
}

function titleBlock(): Block {
  return {
    block: "name",
    left: 0,
    lines: [
      { height: 30, cells: [{ at: 0, role: "title", name: "title", text: "Weigh-up" }] },
      { cells: [{ at: 0, role: "result", name: "result", text: "" }] },
      { cells: [{ at: 0, role: "check", name: "check", unit: "text", formula: "=TRIM(@parts_say&@more_says)" }] },
    ],
  };
}

function checkLines(blocks: readonly WeighShape[]): Line[] {
  const bad = blocks.map((_, at) => `(ABS(@parts_${at}-1)>1/10^6)`).join("+");
  return [
    { cells: [{ at: 0, role: "helper", text: WEIGH_UP_MARK }] },
    {
      cells: [
        {
          at: 0,
          role: "helper",
          name: "parts_say",
          unit: "text",
          formula: `=IF(1*${bad}>0;"A formula sheet has other rows now: build this sheet again before you weigh. ";"")`,
        },
        {
          at: 1,
          role: "helper",
          name: "more_says",
          unit: "text",
          formula: '=IF([more]>0;"A dough of this shift is ordered that is not here: build this sheet again. ";"")',
        },
      ],
    },
  ];
}

/** Typed once for all doughs. */
const temperatures: Block = {
  block: "temperatures",
  left: 0,
  lines: [
    headingLine("Today's temperatures ({temperature})", PAGE),
    {
      cells: [
        { at: 1, role: "label", text: TEMPERATURES_SAY },
        { at: 2, role: "input", name: "room", unit: "temperature" },
        { at: 3, role: "input", name: "flour", unit: "temperature" },
        { at: 4, role: "input", name: "tap", unit: "temperature", align: "right" },
        { at: 5, role: "remark", text: "for water and ice" },
      ],
    },
  ],
};

const cell = (at: number, name: string, formula: Formula, unit: CellModel["unit"] = "plain"): CellModel => ({
  at,
  role: "helper",
  name,
  unit,
  formula,
});
const titleLine = (title: string): Line => ({
  cells: Array.from({ length: PAGE }, (_, at) => ({
    at,
    role: "heading" as const,
    ...(at === 0 ? { unit: "text" as const, formula: quoted(title) } : {}),
  })),
});
const weighed = (at: number, from: string): CellModel => ({
  at,
  role: "figure",
  unit: "step",
  formula: `=IF(@${from}=0;"";@${from})`,
});

function doughBlock(shape: WeighShape, index: number, before: number): Block {
  const { title, says, rows, stage, preferment, hasWater, sizes } = shape;
  const head = (at: number, text: string): CellModel => ({
    at,
    role: "label",
    unit: "text",
    formula:
      text.startsWith(preferment) && preferment !== "" ? `${quoted(preferment)}&" ({weight})"` : textFormula(text),
    ...(at > 1 ? { align: "right" } : {}),
  });
  const isBoth = stage === "whole" && preferment !== "";
  const heads =
    stage === "preferment"
      ? [`${preferment} ({weight})`]
      : stage === "final"
        ? ["Final mix ({weight})"]
        : isBoth
          ? [`${preferment} ({weight})`, "Final mix ({weight})"]
          : ["Per mix ({weight})"];
  return {
    block: `dough_${index}`,
    left: 0,
    lines: [
      titleLine(title),
      {
        cells: [
          { at: 0, role: "strong", unit: "text", formula: mixesSay(index) },
          { at: 2, role: "label", unit: "text", formula: quoted(says) },
        ],
      },
      {
        cells: [
          head(1, "Ingredient"),
          ...heads.map((text, at) => head(2 + at, text)),
          { at: 4, role: "label", unit: "text", formula: textFormula("Lot number") },
        ],
      },
      ...Array.from({ length: rows }, (_, row): Line => {
        const at = before + row;
        const columns =
          stage === "preferment"
            ? ["pre_scale"]
            : stage === "final"
              ? ["final"]
              : isBoth
                ? ["pre_scale", "final"]
                : ["mix_scale"];
        return {
          cells: [
            { at: 0, role: "ruled", unit: "text", formula: textFormula(TICK) },
            { at: 1, role: "ruled", unit: "text", formula: `=[${linkName("name", at)}]&""` },
            ...columns.map((name, which) => weighed(2 + which, `${name}_${at}`)),
            { at: 4, role: "input", name: `lot_${at}`, unit: "text" },
          ],
        };
      }),
      {
        cells: [
          {
            at: 1,
            role: "total",
            unit: "text",
            formula: textFormula(stage === "preferment" ? "Preferment of a mix" : "A mix"),
          },
          { at: 2, role: "total", unit: "step", align: "right", formula: `=${totalOf(shape, before)}` },
          ...(isBoth
            ? [
                {
                  at: 3,
                  role: "total",
                  unit: "step",
                  align: "right",
                  formula: `=${sumOf("final", before, rows)}`,
                } as const,
              ]
            : []),
        ],
      },
      ...(stage === "final" && preferment !== "" ? [fromPreferment(preferment, index)] : []),
      ...(hasWater && stage !== "preferment" ? waterLines(index) : []),
      ...(stage === "preferment" ? [] : sizes.map((name, at): Line => sizeLine(name, index, at))),
    ],
  };
}

const sumOf = (name: string, before: number, rows: number) => `SUM(@${name}_${before}:@${name}_${before + rows - 1})`;
const totalOf = ({ stage, rows, preferment }: WeighShape, before: number) =>
  sumOf(
    stage === "preferment" || (stage === "whole" && preferment !== "")
      ? "pre_scale"
      : stage === "final"
        ? "final"
        : "mix_scale",
    before,
    rows,
  );

/** Boxes to tick, one a mix. */
const mixesSay = (index: number): Formula => {
  const words = (weight: string) =>
    `=IF(@mixes_${index}=0;"Nothing is ordered of it now.";MID("☐☐☐☐☐☐☐☐☐☐☐☐";1;MIN(12;@mixes_${index}))&" "&@mixes_${index}&IF(@mixes_${index}=1;" mix of ";" mixes of ")&${weight})`;
  return [
    { when: "oz", formula: words(`ROUND(@each_${index}/16;2)&" lb"`) },
    { formula: words(`ROUND(@each_${index}/1000;2)&" kg"`) },
  ];
};

const fromPreferment = (preferment: string, index: number): Line => ({
  cells: [
    { at: 0, role: "ruled", unit: "text", formula: textFormula(TICK) },
    { at: 1, role: "ruled", unit: "text", formula: quoted(`${preferment}, ready`) },
    weighed(2, `pre_mix_${index}`),
  ],
});

function waterLines(index: number): Line[] {
  const figure = (at: number, name: string, unit: CellModel["unit"]): CellModel => ({
    at,
    role: "figure",
    unit: unit ?? "plain",
    formula: `=IF(LEN(@${name}_${index})=0;"";@${name}_${index})`,
  });
  const line = (text: string, ...cells: CellModel[]): Line => ({
    cells: [{ at: 1, role: "ruled", unit: "text", formula: textFormula(text) }, ...cells],
  });
  const noIce = `=IF(LEN(@ice_scale_${index})>0;@ice_scale_${index};IF(LEN(@water_at_${index})=0;"";"no ice"))`;
  return [
    line(
      "Water at (°{temperature}), hold back ({weight})",
      figure(2, "water_at", "temperature"),
      figure(3, "held_scale", "step"),
    ),
    line(
      "Of the water: ice, tap water ({weight})",
      { ...figure(2, "ice_scale", "step"), formula: noIce },
      figure(3, "tap_scale", "step"),
    ),
  ];
}

const sizeLine = (name: string, index: number, at: number): Line => ({
  cells: [
    {
      at: 1,
      role: "ruled",
      unit: "text",
      formula:
        name === ""
          ? textFormula("Pieces, scaling weight ({weight})")
          : `${quoted(name)}&": pieces, scaling weight ({weight})"`,
    },
    { at: 2, role: "figure", unit: "count", formula: `=[${linkName("pieces", 10 * index + at)}]` },
    { at: 3, role: "figure", unit: "step", formula: upwards(`[${linkName("scaling", 10 * index + at)}]`, index) },
  ],
});

/** The next weight upwards that the scales show, on the coarse step where that is so small a part of it; as a card has it. */
function upwards(exact: string, index: number): string {
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
function helperLines({ rows, water, hasWater, stage }: WeighShape, index: number, before: number): Line[] {
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
