// The lines of a card whose weights follow its amount.
import type { CellModel, ColumnModel, Line, Unit } from "../sheet/model.ts";
import type { CardData } from "./data.ts";
import {
  eggsSay,
  head,
  type Into,
  labelCells,
  loadsSay,
  pageColumns,
  piecesSay,
  sizeSays,
  tidy,
  traysSay,
  weightColumn,
} from "./parts.ts";
import { upOnSteps } from "./values.ts";
import { helperCell, helperColumn, weighedCells, weighedColumns } from "./workings.ts";

/** Digits of what a living card reckons from: far below any scale. */
export const EXACT = 4;

export const scaled = (stage: number): string => `stage_${stage}_s`;

/** What a stage weighs on the formula sheet, and what of it goes into a mix; the last of two is the whole mix less the first. */
export function stageColumns(data: CardData, stage: number, values: Into): ColumnModel[] {
  const { head: says, weights } = data.stages[stage] as CardData["stages"][number];
  values.set(
    `base_${stage}`,
    weights.map((one) => (one === null ? null : tidy(one, EXACT))),
  );
  const of = (at: number) => `IF(ISNUMBER(@base_${at});@base_${at};0)`;
  const base = helperColumn(`base_${stage}`, `Formula, ${says}`);
  const perMix = (all: string) => `IF(@mixes=0;0;(${all})*@times/MAX(1;@mixes))`;
  if (!data.lastIsRest || stage === 0)
    return [base, ...weighedColumns(data, `stage_${stage}`, says, perMix(of(stage)))];
  return [
    base,
    ...weighedColumns(data, `whole_${stage}`, "Whole mix", perMix(`${of(stage - 1)}+${of(stage)}`)),
    helperColumn(
      scaled(stage),
      `${says}, on the scale`,
      `IF(${of(stage)}=0;0;ROUND(@whole_${stage}_s-@${scaled(stage - 1)};9))`,
    ),
  ];
}

/** What goes in beside the dough's own rows; a part of it may be fixed, whatever the amount. */
export function addedLines(data: CardData, values: Into): Line[] {
  return data.added.map(({ says, base, fixed = 0, perMix, stage }, at): Line => {
    const all = `@base_added_${at}*@times${fixed === 0 ? "" : `+@kept_${at}`}`;
    const exact = perMix ? `IF(@mixes=0;0;(${all})/MAX(1;@mixes))` : `IF(@mixes=0;0;${all})`;
    const line = shown(
      data,
      head(data, says),
      `added_${at}_s`,
      weightUnit(data),
      weightColumn(data, stage),
      true,
      true,
    );
    return beside(data, line, (from) => [
      figure(values, `base_added_${at}`, base, from),
      ...(fixed === 0 ? [] : [figure(values, `kept_${at}`, fixed, from + 1)]),
      ...weighedCells(data, from + 2, `added_${at}`, exact),
    ]);
  });
}

export function eggLines(data: CardData, values: Into): Line[] {
  if (data.eggs === null) return [];
  const eggs = data.eggs.weight / data.eggs.each;
  return [
    beside(data, shown(data, eggsSay(data), "eggs", "figure"), (from) => [
      figure(values, "base_eggs", eggs, from),
      helperCell(from + 1, "eggs", "IF(@mixes=0;0;ROUND(@base_eggs*@times/MAX(1;@mixes);1))"),
    ]),
  ];
}

export function pieceLines(data: CardData, values: Into): Line[] {
  return data.sizes.flatMap(({ name, pieces }, at): Line[] => {
    if (pieces === null) return [];
    return [
      beside(data, shown(data, piecesSay(name), `pieces_${at}`, "count"), (from) => [
        figure(values, `base_pieces_${at}`, pieces, from),
        helperCell(from + 1, `pieces_${at}`, `ROUNDDOWN(ROUND(@base_pieces_${at}*@times;6);0)`),
      ]),
    ];
  });
}

/** Trays and oven loads for the pieces. */
export function ovenLines(data: CardData, values: Into): Line[] {
  const { oven } = data;
  if (oven === null || data.pieces === null) return [];
  const { takes } = oven;
  const lines: Line[] = [];
  if (oven.on === "trays")
    lines.push(
      beside(data, shown(data, traysSay(oven), "trays", "count"), (from) => [
        figure(values, "holds", oven.holds, from),
        helperCell(from + 1, "trays", "ROUNDUP(ROUND(@pieces_now/@holds;9);0)"),
      ]),
    );
  if (takes !== null)
    lines.push(
      beside(data, shown(data, loadsSay(oven, takes), "loads", "count"), (from) => [
        figure(values, "takes", takes, from),
        helperCell(from + 1, "loads", `ROUNDUP(ROUND(${oven.on === "trays" ? "@trays" : "@pieces_now"}/@takes;9);0)`),
      ]),
    );
  return lines;
}

export function sizeLines(data: CardData, values: Into): Line[] {
  return data.sizes.map(({ name, weight }, at): Line => {
    values.set(`size_${at}`, upOnSteps(weight, data.steps));
    const each: CellModel = { at: 2, role: "ruled", name: `size_${at}`, unit: "exact", align: "right" };
    return { cells: [...labelCells(sizeSays(data, name), false), each] };
  });
}

/** A number of the formula sheet, beside the page. */
function figure(values: Into, name: string, value: number, at: number): CellModel {
  values.set(name, tidy(value, EXACT));
  return helperCell(at, name);
}

/** A line that shows a figure from beside the page; a weight in ounces stands beside it in pounds and ounces. */
export function shown(
  { unit: scale }: CardData,
  says: string,
  name: string,
  unit: Unit,
  at = 2,
  isWeight = false,
  tick = false,
): Line {
  const cell: CellModel = { at, role: "figure", unit, formula: `=IF(@mixes=0;"";@${name})` };
  const ounces: CellModel = {
    at: at + 1,
    role: "ruled",
    unit: "text",
    align: "right",
    formula: `=IF(@mixes=0;"";${alsoFormula(`@${name}`)})`,
  };
  return { cells: [...labelCells(says, tick), cell, ...(scale === "oz" && isWeight ? [ounces] : [])] };
}

const beside = (data: CardData, line: Line, cells: (from: number) => CellModel[]): Line => ({
  cells: [...line.cells, ...cells(pageColumns(data))],
});

/** A cell without a format would take over that of what it reads. */
export const weightUnit = (data: CardData): Unit =>
  data.unit === "g" && data.steps.every(Number.isInteger) ? "count" : "weight";

/** 16 oz are a pound (NIST SP 811, appendix B). */
export const alsoFormula = (value: string): string =>
  `INT(ROUND(${value};2)/16)&" lb "&ROUND(ROUND(${value};2)-16*INT(ROUND(${value};2)/16);2)&" oz"`;
