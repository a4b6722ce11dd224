// A living card: the sheet's own sums from one open cell, right where nobody has the add-on.

import type { CellModel, ColumnModel, Line, Unit, Value } from "../sheet/model.ts";
import type { CardAmount, CardData } from "./data.ts";
import {
  block,
  type Drawn,
  eggsSay,
  FINE,
  head,
  type Into,
  loadsSay,
  named,
  piecesSay,
  sizeSays,
  text,
  tidy,
  traysSay,
  weightColumn,
} from "./parts.ts";
import { upOnSteps } from "./values.ts";

/** Digits of what a living card reckons from: far below any scale. */
const EXACT = 4;

export function livingCard(data: CardData, amount: CardAmount, values: Into): Drawn {
  const put = (name: string, value: Value): string => {
    values.set(name, value);
    return name;
  };
  const number = (name: string, value: number | null, at = 2, unit: Unit = "plain"): CellModel => ({
    at,
    role: "ruled",
    name: put(name, value === null ? null : tidy(value, EXACT)),
    unit,
    align: "right",
  });
  const computed = (says: string, name: string, unit: Unit, formula: string, at = 2, tick = false): Line => ({
    cells: [
      ...named(says, tick),
      { at, role: "figure", name, unit, formula: `=IF(COUNT(@open)=0;"";${formula})` },
      ...(data.unit === "oz" && /^(?:all|each|added)/.test(name)
        ? [
            {
              at: at + 1,
              role: "ruled" as const,
              unit: "text" as const,
              align: "right" as const,
              formula: `=IF(LEN(@${name})=0;"";${alsoFormula(`@${name}`)})`,
            },
          ]
        : []),
    ],
  });
  // A cell without a format would take over that of what it reads.
  const weighed: Unit = data.unit === "g" && data.steps.every(Number.isInteger) ? "count" : "weight";
  const up = (value: string) =>
    data.steps
      .map((_, at) => `ROUNDUP(ROUND((${value})/@step_${at + 1};9);0)*@step_${at + 1}`)
      .reduceRight((finer, one, at) => `IF(${value}>=${FINE}*@step_${at + 1};${one};${finer})`);
  values.set("open", amount.wanted);
  const mixes =
    amount.by === "mixes"
      ? "ROUNDUP(ROUND(@open;9);0)"
      : "IF(COUNT(@limit)=0;1;IF(@limit=0;1;ROUNDUP(ROUND(@base_dough*@times/@limit;9);0)))";
  const make = block("make", [
    {
      cells: [
        ...named(amount.says, false),
        { at: 2, role: "input", name: "open", unit: "plain" },
        { at: 3, role: "remark", text: "← type here" },
      ],
    },
    computed("Times the formula", "times", "fill", "@open/@base_open"),
    ...(data.pieces === null || amount.by === "pieces"
      ? []
      : [computed("Pieces", "pieces", "count", "ROUNDDOWN(ROUND(@base_pieces*@times;6);0)")]),
    computed(head(data, `${data.what} in all`), "all_dough", weighed, up("@base_dough*@times")),
    computed("Mixes", "mixes", "count", mixes),
    computed(
      head(data, `${data.what} in each mix`),
      "each_dough",
      weighed,
      up("IF(@mixes=0;0;@base_dough*@times/@mixes)"),
    ),
  ]);
  const columns = [
    ...data.stages.flatMap(({ head: says }, stage): ColumnModel[] => [
      {
        name: `weight_${stage}`,
        head: head(data, says),
        unit: weighed,
        role: "figure",
        formula: `=IF(COUNT(@open)=0;"";IF(@mixes=0;"";ARRAYFORMULA(IF(LEN(@base_${stage})=0;"";${stageWeight(data, stage)}))))`,
      },
      ...(data.unit === "oz"
        ? [
            {
              name: `also_${stage}`,
              head: "as lb and oz",
              unit: "text",
              role: "ruled",
              align: "right",
              formula: `=ARRAYFORMULA(IF(LEN(@weight_${stage})=0;"";${alsoFormula(`IF(LEN(@weight_${stage})=0;0;@weight_${stage})`)}))`,
            } as const,
          ]
        : []),
    ]),
    ...data.stages.map(({ head: says, weights }, stage): ColumnModel => {
      values.set(
        `base_${stage}`,
        weights.map((one) => (one === null ? null : tidy(one, EXACT))),
      );
      return {
        name: `base_${stage}`,
        head: data.stages.length === 1 ? "Formula" : `Formula, ${says}`,
        unit: "weight",
        role: "ruled",
      };
    }),
  ];
  const below: Line[] = [];
  data.added.forEach(({ says, base, fixed: kept = 0, perMix, stage }, at) => {
    const all = `${kept === 0 ? "" : `@kept_${at}+`}@base_added_${at}*@times`;
    const line = computed(
      head(data, says),
      `added_${at}`,
      weighed,
      rounded(perMix ? `((${all})/@mixes)` : `(${all})`, data.steps),
      weightColumn(data, stage),
      true,
    );
    below.push({
      cells: [
        ...line.cells,
        number(`base_added_${at}`, base, baseAt(data), "weight"),
        ...(kept === 0 ? [] : [number(`kept_${at}`, kept, baseAt(data) + 1)]),
      ],
    });
  });
  if (data.eggs !== null) {
    const line = computed(eggsSay(data), "eggs", "figure", "ROUND(@base_eggs*@times/@mixes;1)");
    below.push({
      cells: [...line.cells, number("base_eggs", data.eggs.weight / data.eggs.each, baseAt(data), "figure")],
    });
  }
  const based = (line: Line, name: string, value: number): void => {
    below.push({ cells: [...line.cells, number(name, value, baseAt(data))] });
  };
  data.sizes.forEach(({ name, pieces }, at) => {
    if (pieces === null) return;
    const some = `ROUNDDOWN(ROUND(@base_pieces_${at}*@times;6);0)`;
    based(computed(piecesSay(name), `pieces_${at}`, "count", some), `base_pieces_${at}`, pieces);
  });
  const { oven } = data;
  if (oven !== null && data.pieces !== null) {
    const pieces = amount.by === "pieces" ? "@open" : "@pieces";
    const holders = `ROUNDUP(ROUND(${pieces}/@holds;9);0)`;
    if (oven.on === "trays") based(computed(traysSay(oven), "trays", "count", holders), "holds", oven.holds);
    const loads = `ROUNDUP(ROUND(${oven.on === "trays" ? holders : pieces}/@takes;9);0)`;
    if (oven.takes !== null) based(computed(loadsSay(oven, oven.takes), "loads", "count", loads), "takes", oven.takes);
  }
  data.sizes.forEach(({ name, weight: each }, at) => {
    below.push({ cells: [...named(sizeSays(data, name), false), number(`size_${at}`, upOnSteps(each, data.steps))] });
  });
  below.push(text("What the card reckons from", "label"));
  below.push({ cells: [...named(`${amount.says}, on the formula sheet`, false), number("base_open", amount.base)] });
  below.push({
    cells: [
      ...named(head(data, `${data.what}, on the formula sheet`), false),
      number("base_dough", data.dough, 2, "weight"),
    ],
  });
  if (data.pieces !== null && amount.by !== "pieces")
    below.push({ cells: [...named("Pieces, on the formula sheet", false), number("base_pieces", data.pieces)] });
  if (amount.by !== "mixes")
    below.push({ cells: [...named(head(data, "Mixer takes at most"), false), number("limit", data.mixerLimit)] });
  data.steps.forEach((step, at) => {
    const says = at === 0 ? head(data, "Scale steps, the coarsest first") : "";
    below.push({ cells: [...named(says, false), number(`step_${at + 1}`, step)] });
  });
  return { make, columns, below };
}

/** A row's weight in a stage, on the scale's steps. */
function stageWeight({ steps, lastIsRest }: CardData, stage: number): string {
  const own = rounded(`(@base_${stage}*@times/@mixes)`, steps);
  if (!lastIsRest || stage === 0) return own;
  const first = `@base_${stage - 1}`;
  const whole = rounded(`((${first}+@base_${stage})*@times/@mixes)`, steps);
  const before = `@weight_${stage - 1}`;
  return `IF(LEN(${first})=0;${own};ROUND(${whole}-IF(LEN(${before})=0;0;${before});9))`;
}

const baseAt = (data: CardData): number => weightColumn(data, data.stages.length);

/** The coarsest step that moves the weight by at most 2 %, or the weight as it is: BAKE_SCALEROUND in the sheet's own words. */
function rounded(value: string, steps: readonly number[]): string {
  const near = steps.map((_, at) => `ROUND(${value}/@step_${at + 1};0)*@step_${at + 1}`);
  const tried = near.reduceRight(
    (other, one) => `IF(ABS(${one}-${value})<=${value}*(2/100+1/1000000000);${one};${other})`,
    value,
  );
  return `IF(${value}=0;0;${tried})`;
}

/**
 * 16 oz are a pound (NIST SP 811, appendix B). In a column of them no blank may come in: LibreOffice takes the error it makes
 * for that of another row.
 */
const alsoFormula = (value: string): string =>
  `INT(ROUND(${value};2)/16)&" lb "&ROUND(ROUND(${value};2)-16*INT(ROUND(${value};2)/16);2)&" oz"`;
