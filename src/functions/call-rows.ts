// Functions of which every argument may be one cell or a column: a row in, a row out.
import { type Fault, fault, Refusal, refuseAll } from "../../shared/base/refusal.ts";
import { columnCells, toGrid } from "../../shared/cells/decoder.ts";
import { isBlank } from "../../shared/cells/hint.ts";
import { type Rows, shapeAnswer } from "./answer.ts";
import type { Answer, SheetFunction } from "./define.ts";

/** An argument of a row-wise function: a column with each row's own cell, or one cell for all rows. */
type RowArgument = {
  readonly name: string;
  readonly is: SheetFunction["args"][string]["is"];
  readonly cells: readonly unknown[];
  readonly isColumn: boolean;
};

/** A row of answers for each row of the columns, one row where there is no column. */
export function callRows(sheetFunction: SheetFunction, raw: ArrayLike<unknown>): Rows {
  const faults: Fault[] = [];
  const width = "cells" in sheetFunction.returns ? sheetFunction.returns.cells.length : 1;
  const entries = Object.entries(sheetFunction.args).map(([name, { is }], index) => ({ name, is, raw: raw[index] }));
  const tables = entries.filter(({ is }) => is.shape === "table");
  const given = entries
    .filter((one) => !tables.includes(one))
    .map(({ name, is, raw }): RowArgument => ({ name, is, ...asColumn(raw, name, faults) }));
  // A table is one for all rows, and is read whatever the rows hold.
  const args: Record<string, unknown> = Object.fromEntries(entries.map(({ name }) => [name, undefined]));
  for (const { name, is, raw } of tables) args[name] = is.decode(raw, name, faults);
  refuseAll(faults);
  const rows = Math.max(1, ...given.map(({ cells }) => cells.length));
  const columns = given.filter(({ isColumn }) => isColumn);
  const heads = headsOf(given);
  const answers: (readonly Answer[])[] = [];
  let isFirst = true;
  let isStuck = false;
  for (let row = 0; row < rows; row++) {
    if (isBlankIn(row, heads)) {
      answers.push(Array(width).fill(null));
      continue;
    }
    const number = columns.length > 0 ? row + 1 : undefined;
    // One cell for all rows is read, and what is wrong with it told, once: when the first row needs it.
    if (isFirst) {
      for (const { name, is, cells, isColumn } of given) if (!isColumn) args[name] = is.decode(cells[0], name, faults);
      isStuck = faults.length > 0;
      isFirst = false;
    }
    const before = faults.length;
    for (const { name, is, cells } of columns) args[name] = is.decode(cells[row] ?? "", name, faults, number);
    if (!isStuck && faults.length === before) rowOf(sheetFunction, args, number, answers, faults);
  }
  refuseAll(faults);
  return answers;
}

/**
 * The arguments that leave a row blank when they are blank in it: the first one, or where that is one cell for all rows, the
 * columns that cannot be left out.
 */
function headsOf(columns: readonly RowArgument[]): readonly RowArgument[] {
  const [first] = columns;
  if (first === undefined || (!first.isColumn && first.cells[0] === undefined)) return [];
  if (first.isColumn || isBlank(first.cells[0])) return [first];
  return columns.filter(({ isColumn, is }) => isColumn && !is.optional);
}

function isBlankIn(row: number, heads: readonly RowArgument[]): boolean {
  for (const { cells, isColumn } of heads) if (!isBlank(isColumn ? cells[row] : cells[0])) return false;
  return heads.length > 0;
}

/** A refusal of the arithmetic belongs to the row it was asked for. */
function rowOf(
  sheetFunction: SheetFunction,
  args: Readonly<Record<string, unknown>>,
  row: number | undefined,
  answers: (readonly Answer[])[],
  faults: Fault[],
): void {
  try {
    const answer = sheetFunction.compute(args);
    if (sheetFunction.returns.shape === "cell") answers.push([answer as Answer]);
    else for (const one of shapeAnswer(sheetFunction, answer)) answers.push(one);
  } catch (error) {
    if (row === undefined || !(error instanceof Refusal)) throw error;
    faults.push(...error.faults.map(({ says, argument }) => fault(says, argument, row)));
  }
}

/** One cell is the cell for all rows; more are a column of the rows' own. */
function asColumn(raw: unknown, name: string, faults: Fault[]): { cells: readonly unknown[]; isColumn: boolean } {
  const grid = toGrid(raw);
  if (grid.length <= 1 && (grid[0]?.length ?? 0) <= 1) return { cells: grid[0] ?? [], isColumn: false };
  return { ...columnCells(grid, name, faults), isColumn: true };
}
