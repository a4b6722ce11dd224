// One formula into the cell with the cursor, and never over anything that stands there.

import { becauseOf, isFault, Refusal, refuse } from "../../shared/base/refusal.ts";
import { quote } from "../../shared/base/show.ts";
import { type Entry, entryFormula, readEntry } from "../../shared/cells/typed-argument.ts";
import type { InsertAnswer, InsertAsk } from "../../shared/protocol/insert.ts";
import { a1, type Zone } from "../../shared/sheet/a1.ts";
import { call } from "../functions/call.ts";
import type { SheetFunction } from "../functions/define.ts";
import { FUNCTIONS } from "../functions/index.ts";
import { activeWorkbook } from "./workbook.ts";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;
/** An argument with the cells that it names, where they could be found. */
type Argument = { readonly entry: Entry; readonly range: Range | null };

export function insert({ name, args }: InsertAsk): InsertAnswer {
  const sheetFunction = FUNCTIONS.find((one) => one.name === name);
  if (sheetFunction === undefined) return refuse(`There is no function ${quote(name)}.`);
  const workbook = activeWorkbook();
  const active = workbook.getActiveRange();
  if (active === null) return refuse("No cell has the cursor: click the cell the formula is to stand in, then insert.");
  const sheet = workbook.getActiveSheet();
  const at = active.getCell(1, 1);
  const names = Object.keys(sheetFunction.args);
  if (args.length > names.length) return refuse(`${name} takes ${names.length} arguments, not ${args.length}.`);
  const entries = args.map((typed, index): Argument => {
    const entryRead = readEntry(typed);
    if (isFault(entryRead)) return refuse(`${names[index]} ${entryRead.says}.`);
    return {
      entry: entryRead,
      range: "cells" in entryRead.is ? rangeOf(workbook, sheet, entryRead.is.cells, names[index] ?? "") : null,
    };
  });
  const { rows, columns, says } = outcome(sheetFunction, entries);
  const zone = { row: at.getRow() - 1, column: at.getColumn() - 1, rows, columns };
  mustFit(sheet, zone, entries);
  const answer = { sheet: sheet.getName(), cell: a1(zone), says };
  const isText = at.getNumberFormat() === "@";
  const formula = entryFormula(
    name,
    entries.map(({ entry }) => entry.formula),
  );
  try {
    if (isText) at.setNumberFormat("General");
    at.setFormula(formula);
  } catch (error) {
    throw new Error(
      `${becauseOf(error)}. If the cell is protected, or you may only view this file, ask its owner to let you edit it.`,
    );
  }
  return answer;
}

function rangeOf(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  sheet: Sheet,
  cells: string,
  argument: string,
): Range {
  const missing = () =>
    refuse(`${argument} is ${quote(cells)}, and there are no such cells. Enter cells that there are.`);
  const [, other = "", address = cells] = /^(.*)!(.*)$/.exec(cells) ?? [];
  const where = other === "" ? sheet : workbook.getSheetByName(other.replace(/^'|'$/g, "").replace(/''/g, "'"));
  if (where === null) return missing();
  try {
    const named = /^gramwright_/i.test(address)
      ? workbook.getRangeByName(address)
      : where.getRange(address.replace(/\$/g, ""));
    return named ?? missing();
  } catch {
    return missing();
  }
}

/** How many cells the answer fills: by the answer itself, or by what the function returns where it refuses for now. */
function outcome(
  sheetFunction: SheetFunction,
  entries: readonly Argument[],
): { rows: number; columns: number; says: string } {
  try {
    const answer = call(
      sheetFunction,
      entries.map(({ entry, range }) => (range === null ? "value" in entry.is && entry.is.value : values(range))),
    );
    const rows = Array.isArray(answer) ? answer : [[answer]];
    const size = { rows: rows.length, columns: Math.max(...rows.map((row) => row.length)) };
    const isFresh = size.rows === 1 && rows[0]?.every((cell) => cell === "") === true;
    return { ...(isFresh ? sizeByShape(sheetFunction, entries) : size), says: "" };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { ...sizeByShape(sheetFunction, entries), says: error.message };
  }
}

function sizeByShape(
  { returns, rowwise }: SheetFunction,
  entries: readonly Argument[],
): { rows: number; columns: number } {
  const isTall = returns.shape === "column" || returns.shape === "rows" || rowwise;
  const long = entries.map(({ range }) => (isTall ? (range?.getNumRows() ?? 1) : 1));
  return { rows: Math.max(1, ...long), columns: "cells" in returns ? returns.cells.length : 1 };
}

/** One cell arrives as itself, several as rows. */
function values(range: Range): unknown {
  const cells = range.getValues();
  return cells.length === 1 && cells[0]?.length === 1 ? cells[0][0] : cells;
}

function mustFit(sheet: Sheet, zone: Zone, entries: readonly Argument[]): void {
  const where = a1(zone);
  const several = zone.rows * zone.columns > 1 ? ` The answer fills ${zone.rows} × ${zone.columns} cells.` : "";
  if (zone.row + zone.rows > sheet.getMaxRows() || zone.column + zone.columns > sheet.getMaxColumns()) {
    refuse(`From ${where} the answer would reach beyond the sheet.${several} Choose a cell further up or left.`);
  }
  const reads = entries.find(({ range }) => range !== null && isSame(range, sheet) && meets(range, zone));
  if (reads !== undefined) {
    refuse(
      `The formula reads ${quote(reads.entry.formula)}, and its answer would stand in there.${several} Put the cursor into a cell outside.`,
    );
  }
  const target = sheet.getRange(zone.row + 1, zone.column + 1, zone.rows, zone.columns);
  const [held, formulas] = [target.getValues(), target.getFormulas()];
  for (const [down, row] of held.entries()) {
    const across = row.findIndex((cell, index) => cell !== "" || (formulas[down]?.[index] ?? "") !== "");
    if (across < 0) continue;
    const taken = a1({ row: zone.row + down, column: zone.column + across });
    if (taken === where)
      refuse(`${where} is not empty, and nothing is written over. Put the cursor into an empty cell.`);
    refuse(`${taken} is not empty, and the answer would need it.${several} Put the cursor where there is room.`);
  }
}

const isSame = (range: Range, sheet: Sheet): boolean => range.getSheet().getSheetId() === sheet.getSheetId();

function meets(range: Range, { row, column, rows, columns }: Zone): boolean {
  const [top, left] = [range.getRow() - 1, range.getColumn() - 1];
  return (
    top < row + rows &&
    row < top + range.getNumRows() &&
    left < column + columns &&
    column < left + range.getNumColumns()
  );
}
