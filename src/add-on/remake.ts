// Builds a formula sheet anew in the place of another: what was typed goes over, other sheets read the new one, the old one goes last.

import { attempt, becauseOf, refuse } from "../../shared/base/refusal.ts";
import { quote } from "../../shared/base/show.ts";
import { emptySheets } from "../../shared/protocol/left-over.ts";
import type { NewSheet, Writable } from "../../shared/protocol/plan-message.ts";
import { inShort, type Remade, type RemakeOrder } from "../../shared/protocol/remake.ts";
import type { Zone } from "../../shared/sheet/a1.ts";
import { type Moves, withMoved, withoutDecimals } from "../../shared/sheet/moved-references.ts";
import { aboutTab, tabOf } from "../../shared/sheet/tab.ts";
import { asText, carryTyped, contents } from "./carry-over.ts";
import { look } from "./look.ts";
import { keepNoted } from "./typing.ts";
import { undo } from "./undo.ts";
import { activeWorkbook, listIn, namedRanges } from "./workbook.ts";
import { writeSheet } from "./write.ts";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

export function remake({ plan, row, ...remade }: RemakeOrder): NewSheet {
  const workbook = activeWorkbook();
  const old = workbook.getSheetByName(remade.sheet);
  const [seen] = old === null ? [] : look({ sheet: remade.sheet, formulas: true }).sheets;
  if (old === null || old.getSheetId() !== remade.id || seen === undefined || inShort(seen) !== remade.seen)
    return refuse(
      `The sheet ${quote(remade.sheet)} was changed meanwhile, and nothing was built. Press the button again.`,
    );
  const known = namedRanges(workbook);
  const ownRanges = [...known].filter(([, range]) => range.getSheet().getSheetId() === remade.id);
  const moves = movesOf(remade, plan.page);
  const read = old.getRange(1, 1, old.getMaxRows(), old.getMaxColumns());
  const cells = contents(read.getValues(), read.getFormulas(), remade.sheet, moves);
  const { filled, beside } = carryTyped(plan, remade.typed, cells);
  const notes = read.getNotes();
  // Nothing is read once formulas are written: a read would wait for them.
  const readers = workbook.getSheets().flatMap((sheet) => (sheet.getSheetId() === remade.id ? [] : readersIn(sheet)));
  const listRow = rowOf(listIn(known), remade.id, row);
  const { sheet, tab, unsure } = writeSheet(workbook, filled, remade.sheet, known);
  const changed: Reader[] = [];
  try {
    for (const { row: down, column, value, formula } of beside) {
      const range = sheet.getRange(down + 1, column + 1);
      if (formula === "") range.setValue(asText(value, undefined));
      else range.setFormula(formula);
    }
    carryNotes(sheet, plan, notes, moves);
    for (const reader of readers) {
      const now = withMoved(reader.formula, remade.sheet, moves, false, tab.name);
      if (now === reader.formula) continue;
      changed.push(reader);
      reader.range.setFormula(withoutDecimals(now));
    }
    for (const [name, range] of ownRanges) {
      const to = moves(zoneOf(range));
      if (to !== null) workbook.setNamedRange(name, sheet.getRange(to.row + 1, to.column + 1, to.rows, to.columns));
    }
    listRow?.setFormulas([row.map((formula) => aboutTab(formula, tab))]);
    SpreadsheetApp.flush();
  } catch (error) {
    const isBack = changed.filter(({ range, formula }) => !attempt(() => range.setFormula(formula))).length === 0;
    for (const [name, range] of ownRanges) attempt(() => workbook.setNamedRange(name, range));
    if (!isBack)
      refuse(
        `The change broke off: ${becauseOf(error)}. ${quote(tab.name)} has all that you entered, and other sheets read it. Delete ${quote(remade.sheet)} and rename it.`,
      );
    return undo(workbook, { sheet, name: tab.name, unsure, names: [], front: old }, error);
  }
  attempt(() => keepNoted(old, sheet));
  // From here on only the old one is in the way.
  if (!attempt(() => workbook.deleteSheet(old)))
    refuse(`The sheet is changed, and stands as ${quote(tab.name)}. Delete the older one, ${quote(remade.sheet)}.`);
  const now = attempt(() => sheet.setName(remade.sheet)) ? remade.sheet : tab.name;
  return unsure.length === 0 ? { sheet: now } : { sheet: now, note: emptySheets(unsure) };
}

const zoneOf = (range: GoogleAppsScript.Spreadsheet.Range): Zone => ({
  row: range.getRow() - 1,
  column: range.getColumn() - 1,
  rows: range.getNumRows(),
  columns: range.getNumColumns(),
});

/** By the smallest zone around it that moved as a whole; elsewhere on the page by its rows. */
function movesOf({ moves, rowsNow }: Remade, page: number): Moves {
  const bySize = [...moves].sort(([one], [other]) => one.rows * one.columns - other.rows * other.columns);
  const holds = (outer: Zone, { row, column, rows, columns }: Zone) =>
    row >= outer.row &&
    column >= outer.column &&
    row + rows <= outer.row + outer.rows &&
    column + columns <= outer.column + outer.columns;
  const end = rowsNow.length - 1;
  const rowNow = (row: number) => (row <= end ? (rowsNow[row] ?? -1) : (rowsNow[end] ?? 0) + row - end);
  return (zone) => {
    const around = bySize.find(([from]) => holds(from, zone));
    if (around !== undefined) {
      const [from, to] = around;
      return { ...zone, row: zone.row + to.row - from.row, column: zone.column + to.column - from.column };
    }
    const [first, last] = [rowNow(zone.row), rowNow(zone.row + zone.rows - 1)];
    if (first < 0 || last < first || zone.column + zone.columns > page) return null;
    return { ...zone, row: first, rows: last - first + 1 };
  };
}

function carryNotes(fresh: Sheet, plan: Writable, notes: readonly (readonly string[])[], moves: Moves): void {
  const now = Array.from({ length: plan.rows }, () => Array<string>(plan.page).fill(""));
  let isAny = false;
  for (const [row, line] of notes.entries())
    for (const [column, note] of line.entries()) {
      const to = note === "" ? null : moves({ row, column, rows: 1, columns: 1 });
      const there = to === null ? undefined : now[to.row];
      if (to === null || there === undefined || to.column >= plan.page) continue;
      there[to.column] = note;
      isAny = true;
    }
  if (isAny) fresh.getRange(1, 1, plan.rows, plan.page).setNotes(now);
}

/** A cell with a formula that may read the sheet. */
type Reader = { readonly range: GoogleAppsScript.Spreadsheet.Range; readonly formula: string };

function readersIn(sheet: Sheet): Reader[] {
  return formulasIn(sheet).flatMap((line, row) =>
    line.flatMap((formula, column) =>
      formula.includes("!") ? [{ range: sheet.getRange(row + 1, column + 1), formula }] : [],
    ),
  );
}

/** The tab of a chart has no cells, and Google fails at reading any. */
function formulasIn(sheet: Sheet): string[][] {
  try {
    return sheet.getDataRange().getFormulas();
  } catch (error) {
    let isChart = false;
    attempt(() => {
      isChart = sheet.getType() !== SpreadsheetApp.SheetType.GRID;
    });
    if (isChart) return [];
    throw error;
  }
}

/** Its row of the list of formula sheets, which is to say where everything is now. */
function rowOf(
  list: GoogleAppsScript.Spreadsheet.Range | undefined,
  id: number,
  { length }: readonly string[],
): GoogleAppsScript.Spreadsheet.Range | undefined {
  if (list === undefined || length === 0) return undefined;
  const at = list.getFormulas().findIndex((line) => line.some((formula) => tabOf(formula)?.id === id));
  return at < 0 ? undefined : list.offset(at, 0, 1, length);
}
