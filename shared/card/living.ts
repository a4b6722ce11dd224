// A living card: the sheet's own sums from one open cell, right where nobody has the add-on.

import type { Block, CellModel, ColumnModel, Line } from "../sheet/model.ts";
import type { CardAmount, CardData } from "./data.ts";
import {
  addedLines,
  alsoFormula,
  EXACT,
  eggLines,
  ovenLines,
  pieceLines,
  scaled,
  shown,
  sizeLines,
  stageColumns,
  weightUnit,
} from "./living-lines.ts";
import { block, type Drawn, head, type Into, labelCells, tidy } from "./parts.ts";
import { helperCell, upwardCells } from "./workings.ts";

export function livingCard(data: CardData, amount: CardAmount, values: Into): Drawn {
  values.set("open", amount.wanted);
  return {
    make: amountBlock(data, amount),
    columns: data.stages.flatMap(({ head: says }, stage) => weightColumns(data, says, stage)),
    below: [
      ...addedLines(data, values),
      ...eggLines(data, values),
      ...pieceLines(data, values),
      ...ovenLines(data, values),
      ...sizeLines(data, values),
    ],
    workings: workingLines(data, amount, values),
    bases: data.stages.flatMap((_, stage) => stageColumns(data, stage, values)),
  };
}

/** What is open to type, and what follows from it: pieces, dough, mixes. */
function amountBlock(data: CardData, amount: CardAmount): Block {
  const weight = weightUnit(data);
  return block("make", [
    {
      cells: [
        ...labelCells(amount.says, false),
        { at: 2, role: "input", name: "open", unit: "plain" },
        { at: 3, role: "remark", text: "← type here" },
      ],
    },
    ...(data.pieces === null || amount.by === "pieces" ? [] : [shown(data, "Pieces", "pieces_now", "count")]),
    shown(data, head(data, `${data.what} to make`), "all_exact_s", weight, 2, true),
    shown(data, "Mixes", "mixes", "count"),
    shown(data, head(data, `${data.what} in each mix`), "each_exact_s", weight, 2, true),
  ]);
}

/** Beside that: figures of the formula sheet, and what the open cell makes of them; words over figures. */
function workingLines(data: CardData, amount: CardAmount, values: Into): Line[] {
  const base = (name: string, value: number | null) => (at: number) => {
    values.set(name, value === null ? null : tidy(value, EXACT));
    return helperCell(at, name);
  };
  const worked = (name: string, formula: string) => (at: number) => helperCell(at, name, formula);
  const mixes =
    amount.by === "mixes"
      ? "IF(@times>0;ROUNDUP(ROUND(@open;9);0);0)"
      : "IF(@times=0;0;IF(N(@limit)=0;1;ROUNDUP(ROUND(@base_dough*@times/@limit;9);0)))";
  const cells: [string, (at: number) => CellModel][] = [
    // Formulas first: beside those of the page they go out in one call.
    ["Batch factor", worked("times", "IF(COUNT(@open)=0;0;MAX(0;@open/@base_open))")],
    ["Mixes", worked("mixes", mixes)],
    ["Pieces", worked("pieces_now", "ROUNDDOWN(ROUND(N(@base_pieces)*@times;6);0)")],
    ["A step moves at most", worked("most", "2/100+1/10^9")],
    [`${amount.says}, on the formula sheet`, base("base_open", amount.base)],
    [head(data, `${data.what}, on the formula sheet`), base("base_dough", data.dough)],
    ["Pieces, on the formula sheet", base("base_pieces", data.pieces)],
    [head(data, "Mixer capacity"), base("limit", data.mixerLimit)],
    ...data.steps.map((step, at): [string, (at: number) => CellModel] => [
      head(data, `Scales read to, ${at + 1}`),
      base(`step_${at + 1}`, step),
    ]),
  ];
  return [
    { cells: cells.map(([says], at) => ({ at, role: "helper", text: says })) },
    { cells: cells.map(([, cell], at) => cell(at)) },
    { cells: upwardCells(data, 0, "all_exact", "@base_dough*@times") },
    { cells: upwardCells(data, 0, "each_exact", "IF(@mixes=0;0;@base_dough*@times/@mixes)") },
  ];
}

/** A stage's weights; in ounces with a column beside them in pounds and ounces. */
function weightColumns(data: CardData, says: string, stage: number): ColumnModel[] {
  const weight = `@${scaled(stage)}`;
  const weights: ColumnModel = {
    name: `weight_${stage}`,
    head: head(data, says),
    unit: weightUnit(data),
    role: "figure",
    formula: `=ARRAYFORMULA(IF(${weight}=0;"";${weight}))`,
  };
  if (data.unit !== "oz") return [weights];
  const ounces: ColumnModel = {
    name: `also_${stage}`,
    head: "as lb and oz",
    unit: "text",
    role: "ruled",
    align: "right",
    formula: `=ARRAYFORMULA(IF(${weight}=0;"";${alsoFormula(weight)}))`,
  };
  return [weights, ounces];
}
