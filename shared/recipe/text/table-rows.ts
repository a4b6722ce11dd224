// Rows of a pasted table: which cell is the name, which the weight, which the percentage, and which stage it belongs to.

import { isTotal } from "./clutter.ts";
import { unitIn } from "./columns.ts";
import { lineKey } from "./corrections.ts";
import type { Stage } from "./description.ts";
import { addRow, addStage, correctedRow, type Draft, ignore, stageAt, takeYield } from "./draft.ts";
import { stageOf } from "./headings.ts";
import { readRow } from "./row.ts";
import { cellNumber, gramsOf } from "./row-amount.ts";
import type { Reading } from "./row-context.ts";
import { roleBeside } from "./rows-in-line.ts";
import type { TableLine } from "./table.ts";
import { planOf, type Weight } from "./table-plan.ts";
import { yieldIn } from "./yields.ts";

export function headStage(text: string, line: number): Stage | undefined {
  const stage = stageOf(text, line, true);
  if (stage === undefined || !("stage" in stage)) return undefined;
  return stage.isUnsure && !/:$/.test(text) ? undefined : stage.stage;
}

export function tableRows(
  draft: Draft,
  table: TableLine,
  reading: Reading,
  tables: ReadonlyMap<number, TableLine>,
): void {
  const plan = planOf(table, reading, tables, draft);
  const { cells, line } = table;
  const cell = (at: number): string => (at < 0 ? "" : (cells[at] ?? ""));
  const name = cell(plan.name);
  const number = (text: string, column: Weight): number | null => {
    const figure = cellNumber(text, reading.style);
    const unit = column.unit || unitIn(text.replace(/(\d)(?=\p{L})/gu, "$1 ")) || reading.unit;
    return figure === null ? null : figure * (unit === "" ? 1 : gramsOf(unit));
  };
  const stageCell = cell(plan.stage);
  const percentText = plan.percent === undefined ? "" : cell(plan.percent.at);
  const percentRead = percentText === "" ? null : cellNumber(percentText, reading.style);
  const percent = percentRead === null ? null : percentRead * (plan.isFraction ? 100 : 1);
  if (name === "" || isTotal(name)) {
    const [first] = plan.weights;
    const grams = first === undefined || cell(first.at) === "" ? null : number(cell(first.at), first.column);
    const hasUnit =
      first !== undefined && (first.column.unit !== "" || reading.unit !== "" || unitIn(cell(first.at)) !== "");
    draft.totals.push({
      line: line.at,
      grams: hasUnit ? grams : null,
      bare: hasUnit ? null : grams,
      percent,
      stage: draft.stage,
      rows: draft.rows.length,
    });
    ignore(draft, line, "total");
    return;
  }
  const isYield = /\b(?:yield|makes|pieces|scal|piece weight)\b/i.test(name)
    ? yieldIn(cells.filter((one) => one !== "").join(" "))
    : undefined;
  if (isYield !== undefined) {
    takeYield(draft, isYield);
    ignore(draft, line, "yield");
    return;
  }
  const staged = plan.weights.filter(({ column }) => column.stage !== undefined);
  if (stageCell !== "") {
    draft.stage = stageOfCell(draft, stageCell, line.at);
    draft.byColumn.add(draft.stage);
  }
  const correction = reading.corrections.lines[lineKey(line.text)];
  const add = (stage: number, amount: string | undefined, unit: string, percentage: number | null): void => {
    // "30 % of the dough" is no number: the row says it whole.
    const said = amount === "" && percentRead === null ? percentText : "";
    const row = readRow(
      said === "" ? name : `${name} ${said}`,
      reading,
      said !== "" ? {} : { ...(amount === undefined ? {} : { amount }), unit, percent: percentage },
    );
    const role = roleBeside(name);
    const side = role === undefined ? stage : sideOf(draft, role);
    addRow(draft, line.at, correction === undefined ? row : correctedRow(row, correction, reading), side);
  };
  if (staged.length >= 2) {
    for (const { at, column } of staged) {
      const text = cell(at);
      if (text === "" || /^[-–—]+$/.test(text) || cellNumber(text, reading.style) === 0) continue;
      if (column.stage === undefined) continue;
      add(stageOfColumn(draft, column.stage), text, column.unit, null);
    }
    return;
  }
  const here = stageAt(draft);
  if (plan.isSplit) {
    const texts = plan.weights.flatMap(({ at, column }) =>
      cell(at) === "" ? [] : [/\p{L}/u.test(cell(at)) ? cell(at) : `${cell(at)} ${column.unit}`],
    );
    add(here, texts.join(" "), "", percent);
    return;
  }
  const [weight] = plan.weights;
  const text = weight === undefined ? undefined : cell(weight.at);
  const unit = weight === undefined ? "" : weight.column.unit || cell(plan.unit);
  add(
    here,
    weight === undefined && percent !== null ? "" : (text ?? ""),
    /\p{L}/u.test(text ?? "") ? "" : unit,
    percent,
  );
}

function sideOf(draft: Draft, role: Stage["role"]): number {
  const at = draft.stages.findIndex((one) => one.role === role);
  return at >= 0 ? at : addStage(draft, { role, name: "", line: null, preferment: "", hours: null, temperature: null });
}

const sameName = (one: string, other: string): boolean => one.trim().toLowerCase() === other.trim().toLowerCase();

function stageOfColumn(draft: Draft, stage: Stage): number {
  const at = draft.stages.findIndex((one) => sameName(one.name, stage.name) && one.role === stage.role);
  return at >= 0 ? at : addStage(draft, { ...stage, line: null });
}

function stageOfCell(draft: Draft, text: string, line: number): number {
  const at = draft.stages.findIndex((one) => sameName(one.name, text));
  if (at >= 0) return at;
  const match = stageOf(text, line, true);
  const stage: Stage =
    match !== undefined && "stage" in match && !match.isUnsure
      ? match.stage
      : { role: "dough", name: text, line, preferment: "", hours: null, temperature: null };
  return addStage(draft, { ...stage, name: text });
}
