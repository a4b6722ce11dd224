// Takes what was typed over the weights of a formula sheet: after an edit, and where the sidebar asks for it.
import { attempt, becauseOf, refuse } from "../../shared/base/refusal.ts";
import { quote } from "../../shared/base/show.ts";
import type { Questions } from "../../shared/protocol/questions.ts";
import { a1, type Zone } from "../../shared/sheet/a1.ts";
import type { Spot } from "../../shared/typing/cells.ts";
import { isOwnNote } from "../../shared/typing/sentences.ts";
import { FIRST_COLUMN, FIRST_ROW, MIN_COLUMNS } from "../../shared/typing/words.ts";
import { type TypedOver, typedOver, type Writes, writesFor } from "../../shared/typing/writes.ts";
import { activeWorkbook } from "./workbook.ts";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;
/** What Google tells of an edit; `value` only where one cell was typed. */
type Edit = { readonly range?: Range; readonly value?: unknown; readonly authMode?: unknown };

/** No sheet of ours is larger. */
const MAX_ROWS = 1500;
const MAX_COLUMNS = 180;
const WAIT_MS = 10_000;

/** After every edit by hand. Whatever goes wrong, a person is not bothered with it: the sheet's check line says what is typed over. */
export function onEdit(event: unknown): void {
  try {
    edited((event ?? {}) as Edit);
  } catch (error) {
    console.error(`onEdit: ${becauseOf(error)}`);
  }
}

function edited({ range, value, authMode }: Edit): void {
  if (range === undefined || String(authMode) === "NONE") return;
  const sheet = range.getSheet();
  if (sheet.getMaxColumns() < MIN_COLUMNS) return;
  if (range.getLastColumn() <= FIRST_COLUMN || range.getLastRow() <= FIRST_ROW) {
    forget(sheet);
    return;
  }
  const lock = LockService.getDocumentLock();
  if (lock !== null && !lock.tryLock(WAIT_MS)) return;
  try {
    const zone = {
      row: range.getRow() - 1,
      column: range.getColumn() - 1,
      rows: range.getNumRows(),
      columns: range.getNumColumns(),
    };
    afterEdit(sheet, range, zone, value);
  } finally {
    attempt(() => lock?.releaseLock());
  }
}

function afterEdit(sheet: Sheet, range: Range, zone: Zone, value: unknown): void {
  const typed = typedOver(valuesOf(sheet), zone);
  if (typed === null) return;
  if (typed.weights.length === 0) forget(sheet);
  if (typed.weights.length + typed.others.length === 0) {
    if (!isAnswered(sheet, zone, value)) clearOwnNotes(sheet, range);
    return;
  }
  const writes = writesFor(typed, formulasOf(sheet, typed, value === undefined ? null : { zone, value }));
  if (typed.weights.length > 0 && typed.others.length === 0 && property(sheet, TAKEN) === writes.before) return;
  write(sheet, writes, range);
}

/** An event that waited may be of cells that were emptied since, with the notes that another event left there. */
function isAnswered(sheet: Sheet, { rows, columns }: Zone, value: unknown): boolean {
  const isRecent = () => Date.now() - Number(property(sheet, NOTED) ?? 0) < WAIT_MS;
  return value !== undefined || (rows * columns > 1 && isRecent());
}

/** Takes the typed weights of a sheet; a sentence about each cell that was put back. */
export function takeTyped({ sheet: name }: { readonly sheet: string }): Questions["take"]["answer"] {
  const sheet = activeWorkbook().getSheetByName(name);
  if (sheet === null)
    return refuse(`There is no sheet ${quote(name)} any more; it was renamed or deleted. Check the sheet again.`);
  const typed = typedOver(valuesOf(sheet), null);
  if (typed === null)
    return refuse(`The sheet ${quote(sheet.getName())} is no formula sheet of Gramwright. Open one and check it.`);
  if (typed.weights.length === 0) return { taken: [], notes: [] };
  const writes = writesFor(typed, formulasOf(sheet, typed, null));
  write(sheet, writes);
  return { taken: writes.taken, notes: writes.notes };
}

const valuesOf = (sheet: Sheet): unknown[][] =>
  sheet
    .getRange(1, 1, Math.min(sheet.getMaxRows(), MAX_ROWS), Math.min(sheet.getMaxColumns(), MAX_COLUMNS))
    .getValues();

/** Which typed weights are formulas. The edit itself tells that a number was typed; of all others the sheet is asked. */
function formulasOf(
  sheet: Sheet,
  { weights, table }: TypedOver,
  edit: { readonly zone: Zone; readonly value: unknown } | null,
): (spot: Spot) => boolean {
  const [only, ...more] = weights;
  if (only === undefined) return () => false;
  if (more.length === 0 && edit !== null && isAt(edit.zone, only) && isNumber(edit.value, only.value))
    return () => false;
  const columns = weights.map(({ column }) => column);
  const [left, right] = [Math.min(...columns), Math.max(...columns)];
  const formulas = sheet.getRange(table.top + 2, left + 1, table.total - table.top - 1, right - left + 1).getFormulas();
  return ({ row, column }) => (formulas[row - table.top - 1]?.[column - left] ?? "") !== "";
}

const isAt = ({ row, column, rows, columns }: Zone, spot: Spot): boolean =>
  rows === 1 && columns === 1 && row === spot.row && column === spot.column;
const isNumber = (typed: unknown, value: unknown): boolean => String(typed).trim() !== "" && Number(typed) === value;

/** Percentages before the amount, and cells are emptied last: what fails half-way leaves what was typed. */
function write(sheet: Sheet, { percents, amount, clear, taken, notes, before }: Writes, range?: Range): void {
  for (const { row, column, cells } of percents)
    sheet.getRange(row + 1, column + 1, cells.length, 1).setValues(cells.map((cell) => [cell]));
  if (amount !== null) sheet.getRange(amount.row + 1, amount.column + 1).setValue(amount.value);
  sheet.getRangeList(clear as string[]).clearContent();
  if (range !== undefined)
    clearOwnNotes(
      sheet,
      range,
      notes.flatMap(({ cells }) => cells),
    );
  for (const { cells, text } of notes) sheet.getRangeList(cells as string[]).setNote(text);
  if (notes.length > 0) keep(sheet, NOTED, String(Date.now()));
  if (taken.length > 0) keep(sheet, TAKEN, before);
  else forget(sheet);
}

/** A note goes at the next edit of its cell; `except` are cells that get another one. */
function clearOwnNotes(sheet: Sheet, range: Range, except: readonly string[] = []): void {
  if (property(sheet, NOTED) === null) return;
  const cells = range.getNotes().flatMap((line, down) =>
    line.flatMap((note, across) => {
      const cell = a1({ row: range.getRow() - 1 + down, column: range.getColumn() - 1 + across });
      return isOwnNote(note) && !except.includes(cell) ? [cell] : [];
    }),
  );
  if (cells.length > 0) sheet.getRangeList(cells).clearNote();
}

/** What is remembered of a sheet: the edit that was taken last, and when a cell was given a note. */
const TAKEN = "taken";
const NOTED = "noted";
const key = (sheet: Sheet, what: string): string => `typed.${what}.${sheet.getSheetId()}`;
const properties = () => PropertiesService.getDocumentProperties();
const property = (sheet: Sheet, what: string): string | null => properties().getProperty(key(sheet, what));

function keep(sheet: Sheet, what: string, text: string): void {
  properties().setProperty(key(sheet, what), text);
}

/** A sheet that takes the place of another has its notes, and they go as they would have there. */
export function keepNoted(from: Sheet, to: Sheet): void {
  const notedCells = property(from, NOTED);
  if (notedCells !== null) keep(to, NOTED, notedCells);
  properties().deleteProperty(key(from, NOTED));
  forget(from);
}

function forget(sheet: Sheet): void {
  properties().deleteProperty(key(sheet, TAKEN));
}
