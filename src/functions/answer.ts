// From what a function computed to the cells that a sheet takes.
import { fault, refuseAll } from "../../shared/base/refusal.ts";
import type { Answer, SheetFunction } from "./define.ts";

export type Value = number | string;
export type Rows = readonly (readonly Answer[])[];

/** A cell of a sheet takes no more (Google Sheets' limit). */
const MAX_TEXT = 50_000;

/** An answer of any shape, as rows of cells. */
export function shapeAnswer(sheetFunction: SheetFunction, answer: ReturnType<SheetFunction["compute"]>): Rows {
  switch (sheetFunction.returns.shape) {
    case "cell":
      return [[answer as Answer]];
    case "row":
      return [answer as readonly Answer[]];
    case "column":
      return (answer as readonly Answer[]).map((one) => [one]);
    case "rows":
      return answer as Rows;
  }
}

/** The last gate: a rectangle of finite numbers, texts and "" for blank. */
export function finish(rows: Rows): Value | Value[][] {
  const width = rows.reduce((most, row) => Math.max(most, row.length), 1);
  const cells = rows.map((row) => {
    if (row.length === width && row.every(isFinished)) return row as Value[];
    if (row.length === width) return row.map(finishCell);
    const done: Value[] = [];
    for (let at = 0; at < width; at++) done.push(finishCell(row[at] ?? null));
    return done;
  });
  const first = cells[0]?.[0];
  if (first === undefined) return "";
  return cells.length === 1 && width === 1 ? first : cells;
}

/** Most answers are cells already. */
const isFinished = (answer: Answer): boolean =>
  typeof answer === "number" ? Number.isFinite(answer) && answer !== 0 : answer !== null && answer.length <= MAX_TEXT;

function finishCell(answer: Answer): Value {
  if (answer === null) return "";
  if (typeof answer === "string") return answer.length > MAX_TEXT ? `${answer.slice(0, MAX_TEXT - 1)}…` : answer;
  if (!Number.isFinite(answer))
    refuseAll([fault("the answer is too large for a cell; check for a figure with too many digits")]);
  return answer === 0 ? 0 : answer;
}
