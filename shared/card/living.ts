// A living card: the sheet's own sums from one open cell, right where nobody has the add-on.

import type { Block, CellModel, ColumnModel, Line, Unit } from "../sheet/model.ts";
import type { CardAmount, CardData } from "./data.ts";
import {
  block,
  type Drawn,
  eggsSay,
  FINE,
  head,
  type Into,
  labelCells,
  loadsSay,
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
  values.set("open", amount.wanted);
  return {
    make: amountBlock(data, amount),
    columns: [
      ...data.stages.flatMap(({ head: says }, stage) => weightColumns(data, says, stage)),
      ...data.stages.map((stage, at) => baseColumn(data, stage, at, values)),
    ],
    below: [
      ...addedLines(data, values),
      ...eggLines(data, values),
      ...pieceLines(data, values),
      ...ovenLines(data, amount, values),
      ...sizeLines(data, values),
      ...baseLines(data, amount, values),
    ],
  };
}

/** What is open to type, and what follows from it: pieces, dough, mixes. */
function amountBlock(data: CardData, amount: CardAmount): Block {
  const weight = weightUnit(data);
  const mixes =
    amount.by === "mixes"
      ? "ROUNDUP(ROUND(@open;9);0)"
      : "IF(COUNT(@limit)=0;1;IF(@limit=0;1;ROUNDUP(ROUND(@base_dough*@times/@limit;9);0)))";
  const each = "IF(@mixes=0;0;@base_dough*@times/@mixes)";
  return block("make", [
    {
      cells: [
        ...labelCells(amount.says, false),
        { at: 2, role: "input", name: "open", unit: "plain" },
        { at: 3, role: "remark", text: "← type here" },
      ],
    },
    computed(data, "Times the formula", "times", "fill", "@open/@base_open"),
    ...(data.pieces === null || amount.by === "pieces"
      ? []
      : [computed(data, "Pieces", "pieces", "count", "ROUNDDOWN(ROUND(@base_pieces*@times;6);0)")]),
    computed(data, head(data, `${data.what} in all`), "all_dough", weight, roundedUp("@base_dough*@times", data.steps)),
    computed(data, "Mixes", "mixes", "count", mixes),
    computed(data, head(data, `${data.what} in each mix`), "each_dough", weight, roundedUp(each, data.steps)),
  ]);
}

/** A stage's weights; in ounces with a column beside them in pounds and ounces. */
function weightColumns(data: CardData, says: string, stage: number): ColumnModel[] {
  const weight = `@weight_${stage}`;
  const perMix = `ARRAYFORMULA(IF(LEN(@base_${stage})=0;"";${stageWeight(data, stage)}))`;
  const weights: ColumnModel = {
    name: `weight_${stage}`,
    head: head(data, says),
    unit: weightUnit(data),
    role: "figure",
    formula: `=IF(COUNT(@open)=0;"";IF(@mixes=0;"";${perMix}))`,
  };
  if (data.unit !== "oz") return [weights];
  const ounces: ColumnModel = {
    name: `also_${stage}`,
    head: "as lb and oz",
    unit: "text",
    role: "ruled",
    align: "right",
    formula: `=ARRAYFORMULA(IF(LEN(${weight})=0;"";${alsoFormula(`IF(LEN(${weight})=0;0;${weight})`)}))`,
  };
  return [weights, ounces];
}

/** What a stage weighs on the formula sheet. */
function baseColumn(
  data: CardData,
  { head: says, weights }: CardData["stages"][number],
  stage: number,
  values: Into,
): ColumnModel {
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
}

/** What goes in beside the dough's own rows; a part of it may be fixed, whatever the amount. */
function addedLines(data: CardData, values: Into): Line[] {
  return data.added.map(({ says, base, fixed = 0, perMix, stage }, at): Line => {
    const all = `${fixed === 0 ? "" : `@kept_${at}+`}@base_added_${at}*@times`;
    const weight = rounded(perMix ? `((${all})/@mixes)` : `(${all})`, data.steps);
    const column = weightColumn(data, stage);
    const line = computed(data, head(data, says), `added_${at}`, weightUnit(data), weight, column, true);
    const numbers = [figure(values, `base_added_${at}`, base, baseAt(data), "weight")];
    if (fixed !== 0) numbers.push(figure(values, `kept_${at}`, fixed, baseAt(data) + 1));
    return { cells: [...line.cells, ...numbers] };
  });
}

function eggLines(data: CardData, values: Into): Line[] {
  if (data.eggs === null) return [];
  const line = computed(data, eggsSay(data), "eggs", "figure", "ROUND(@base_eggs*@times/@mixes;1)");
  const eggs = data.eggs.weight / data.eggs.each;
  return [withBase(line, figure(values, "base_eggs", eggs, baseAt(data), "figure"))];
}

function pieceLines(data: CardData, values: Into): Line[] {
  return data.sizes.flatMap(({ name, pieces }, at): Line[] => {
    if (pieces === null) return [];
    const count = `ROUNDDOWN(ROUND(@base_pieces_${at}*@times;6);0)`;
    const line = computed(data, piecesSay(name), `pieces_${at}`, "count", count);
    return [withBase(line, figure(values, `base_pieces_${at}`, pieces, baseAt(data)))];
  });
}

/** Trays and oven loads for the pieces. */
function ovenLines(data: CardData, amount: CardAmount, values: Into): Line[] {
  const { oven } = data;
  if (oven === null || data.pieces === null) return [];
  const pieces = amount.by === "pieces" ? "@open" : "@pieces";
  const trays = `ROUNDUP(ROUND(${pieces}/@holds;9);0)`;
  const loads = `ROUNDUP(ROUND(${oven.on === "trays" ? trays : pieces}/@takes;9);0)`;
  const lines: Line[] = [];
  if (oven.on === "trays") {
    const line = computed(data, traysSay(oven), "trays", "count", trays);
    lines.push(withBase(line, figure(values, "holds", oven.holds, baseAt(data))));
  }
  if (oven.takes !== null) {
    const line = computed(data, loadsSay(oven, oven.takes), "loads", "count", loads);
    lines.push(withBase(line, figure(values, "takes", oven.takes, baseAt(data))));
  }
  return lines;
}

function sizeLines(data: CardData, values: Into): Line[] {
  return data.sizes.map(({ name, weight }, at): Line => {
    const each = figure(values, `size_${at}`, upOnSteps(weight, data.steps));
    return { cells: [...labelCells(sizeSays(data, name), false), each] };
  });
}

/** What the card reckons from, as the formula sheet has it. */
function baseLines(data: CardData, amount: CardAmount, values: Into): Line[] {
  const line = (says: string, cell: CellModel): Line => ({ cells: [...labelCells(says, false), cell] });
  const dough = head(data, `${data.what}, on the formula sheet`);
  const lines = [
    text("What the card reckons from", "label"),
    line(`${amount.says}, on the formula sheet`, figure(values, "base_open", amount.base)),
    line(dough, figure(values, "base_dough", data.dough, 2, "weight")),
  ];
  if (data.pieces !== null && amount.by !== "pieces")
    lines.push(line("Pieces, on the formula sheet", figure(values, "base_pieces", data.pieces)));
  if (amount.by !== "mixes") lines.push(line(head(data, "Mixer capacity"), figure(values, "limit", data.mixerLimit)));
  data.steps.forEach((step, at) => {
    const says = at === 0 ? head(data, "Scales read to, the coarsest first") : "";
    lines.push(line(says, figure(values, `step_${at + 1}`, step)));
  });
  return lines;
}

/** A cell with a number of the formula sheet. */
function figure(values: Into, name: string, value: number | null, at = 2, unit: Unit = "plain"): CellModel {
  values.set(name, value === null ? null : tidy(value, EXACT));
  return { at, role: "ruled", name, unit, align: "right" };
}

/** A line with a formula; a weight in ounces stands beside it in pounds and ounces. */
function computed(
  { unit: scale }: CardData,
  says: string,
  name: string,
  unit: Unit,
  formula: string,
  at = 2,
  tick = false,
): Line {
  const cell: CellModel = { at, role: "figure", name, unit, formula: `=IF(COUNT(@open)=0;"";${formula})` };
  const ounces: CellModel = {
    at: at + 1,
    role: "ruled",
    unit: "text",
    align: "right",
    formula: `=IF(LEN(@${name})=0;"";${alsoFormula(`@${name}`)})`,
  };
  const isWeight = /^(?:all|each|added)/.test(name);
  return { cells: [...labelCells(says, tick), cell, ...(scale === "oz" && isWeight ? [ounces] : [])] };
}

const withBase = (line: Line, base: CellModel): Line => ({ cells: [...line.cells, base] });

/** A cell without a format would take over that of what it reads. */
const weightUnit = (data: CardData): Unit =>
  data.unit === "g" && data.steps.every(Number.isInteger) ? "count" : "weight";

/** A row's weight in a stage, on the scale's steps. */
function stageWeight({ steps, lastIsRest }: CardData, stage: number): string {
  const alone = rounded(`(@base_${stage}*@times/@mixes)`, steps);
  if (!lastIsRest || stage === 0) return alone;
  const first = `@base_${stage - 1}`;
  const whole = rounded(`((${first}+@base_${stage})*@times/@mixes)`, steps);
  const before = `@weight_${stage - 1}`;
  return `IF(LEN(${first})=0;${alone};ROUND(${whole}-IF(LEN(${before})=0;0;${before});9))`;
}

const baseAt = (data: CardData): number => weightColumn(data, data.stages.length);

/** Upwards, on the coarsest step that is so small a part of the weight. */
const roundedUp = (value: string, steps: readonly number[]): string =>
  steps
    .map((_, at) => `ROUNDUP(ROUND((${value})/@step_${at + 1};9);0)*@step_${at + 1}`)
    .reduceRight((finer, one, at) => `IF(${value}>=${FINE}*@step_${at + 1};${one};${finer})`);

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
