import { becauseOf } from "../../shared/base/refusal.ts";
import { emptySheets, refuseWithLeftOver } from "../../shared/protocol/left-over.ts";
import { numbered, sheetName, type Writable } from "../../shared/protocol/plan-message.ts";
import type { Tab } from "../../shared/sheet/tab.ts";
import { undo } from "./undo.ts";
import {
  commonest,
  drawBorders,
  formatsOf,
  heightRuns,
  protect,
  type Range,
  runs,
  type Sheet,
  textStyles,
  validation,
  valuesOf,
} from "./write-appearance.ts";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** Blank rows and columns left around a sheet, so that rows can be added at its end. */
const SPARE_ROWS = 12;
const SPARE_COLUMNS = 1;

/**
 * Writes a plan to a new sheet: values, formats and validation first, formulas last, and no reading afterwards. Where
 * anything fails, the half-made sheet is removed and the failure passed on; where that fails too, a person is told what is left.
 * `known` are the names of ranges as they were before; `taken` is whether sheets are called as the title and as the names after it, as far as known. Returns the new sheet and its tab.
 */
export function writeSheet(
  workbook: Workbook,
  plan: Writable,
  title: string,
  known: ReadonlyMap<string, Range>,
  taken: readonly boolean[] = [],
): { sheet: Sheet; tab: Tab; unsure: readonly string[] } {
  const before = workbook.getActiveSheet();
  const { sheet, name, unsure } = newSheet(workbook, title, taken);
  try {
    fill(sheet, plan);
    for (const { name: rangeName, range } of plan.defines) workbook.setNamedRange(rangeName, sheet.getRange(range));
    if (plan.start !== "") sheet.getRange(plan.start).activate();
    SpreadsheetApp.flush();
    return { sheet, tab: { name, id: sheet.getSheetId() }, unsure };
  } catch (error) {
    const names = plan.defines.map((one) => ({ name: one.name, before: known.get(one.name) }));
    return undo(workbook, { sheet, name, unsure, names, front: before }, error);
  }
}

/** A new sheet, and the names under which an empty one may be there besides: the service may add a sheet and fail to say so. */
export type Added = { readonly sheet: Sheet; readonly name: string; readonly unsure: readonly string[] };

/** With a name no sheet has yet; `taken` is what is known of the title and the names after it. */
export function newSheet(workbook: Workbook, title: string, taken: readonly boolean[] = []): Added {
  const wanted = sheetName(title);
  const unsure: string[] = [];
  try {
    for (let count = 1; count < 500; count++) {
      const name = numbered(wanted, count);
      if (taken[count - 1] ?? workbook.getSheetByName(name) !== null) continue;
      const sheet = insertSheet(workbook, name, unsure);
      if (sheet !== null) return { sheet, name, unsure };
    }
  } catch (error) {
    if (unsure.length === 0) throw error;
    refuseWithLeftOver(`The sheet could not be built: ${becauseOf(error)}. ${emptySheets(unsure)}`);
  }
  throw new Error(`There are 500 sheets called "${wanted}" already; choose another name.`);
}

/**
 * Null where the name is taken by now: by another person's sheet, or by the one that was just added without a word. Which of
 * them it is cannot be told apart, so that sheet is left alone, and named in `unsure`.
 */
function insertSheet(workbook: Workbook, name: string, unsure: string[]): Sheet | null {
  try {
    return workbook.insertSheet(name);
  } catch (error) {
    unsure.push(name);
    const names = workbook.getSheets().map((sheet) => sheet.getName());
    if (!names.includes(name)) unsure.pop();
    // A sheet is found by its exact name, but a name that differs in capitals alone is taken all the same.
    if (names.some((one) => one.toLowerCase() === name.toLowerCase())) return null;
    throw new Error(`${becauseOf(error)}. If you may only view this file, ask its owner to let you edit it.`);
  }
}

function fill(sheet: Sheet, plan: Writable): void {
  const [wanted, there] = [plan.rows + SPARE_ROWS, sheet.getMaxRows()];
  if (wanted > there) sheet.insertRowsAfter(there, wanted - there);
  if (wanted < there) sheet.deleteRows(wanted + 1, there - wanted);
  const [wide, across] = [plan.columns + SPARE_COLUMNS, sheet.getMaxColumns()];
  if (wide > across) sheet.insertColumnsAfter(across, wide - across);
  // Blank columns behind those that are folded away may stay: to delete them is a call.
  if (wide < across && plan.page === plan.columns) sheet.deleteColumns(wide + 1, across - wide);
  const all = sheet.getRange(1, 1, plan.rows, plan.page);
  // What stands beside the page goes along with it: to write it apart is a call more.
  const whole = sheet.getRange(1, 1, plan.rows, plan.columns);
  sheet.setHiddenGridlines(true);
  const usual = commonest(plan.widths);
  sheet.setColumnWidths(1, plan.columns, usual);
  for (const { from, count, width } of runs(plan.widths)) {
    if (width !== usual) sheet.setColumnWidths(from + 1, count, width);
  }
  for (const { row, rows, height, grows } of heightRuns(plan)) {
    if (grows) sheet.setRowHeights(row + 1, rows, height);
    else sheet.setRowHeightsForced(row + 1, rows, height);
  }
  whole.setNumberFormats(formatsOf(plan));
  all.setBackgrounds(plan.appearances.map((row) => row.map(({ ground }) => ground)));
  all.setTextStyles(textStyles(plan));
  all.setHorizontalAlignments(plan.aligned as ("left" | "right" | "center")[][]);
  if (plan.wrapped.length > 0) sheet.getRangeList(plan.wrapped as string[]).setWrap(true);
  drawBorders(sheet, plan);
  if (plan.validations.some((row) => row.some((one) => one !== null)))
    all.setDataValidations(plan.validations.map((row) => row.map((one) => (one === null ? null : validation(one)))));
  foldAway(sheet, plan);
  // Without formulas there is nothing to guard.
  if (plan.formulas.length > 0) protect(sheet, plan);
  whole.setValues(valuesOf(plan));
  for (const { row, column, cells } of plan.formulas) {
    sheet.getRange(row + 1, column + 1, cells.length, cells[0]?.length ?? 1).setFormulas(cells as string[][]);
  }
}

/** What a person need not see: rows of formulas, and columns that the sheet only works with. The top rows stay in sight. */
function foldAway(sheet: Sheet, { hidden, frozen, page, columns }: Writable): void {
  if (frozen > 0) sheet.setFrozenRows(frozen);
  for (const row of hidden) sheet.hideRows(row + 1);
  if (columns === page) return;
  sheet
    .getRange(1, page + 1, 1, columns - page)
    .shiftColumnGroupDepth(1)
    .collapseGroups();
}
