// What stands in the workbook, for the sidebar to work with. Reads only, in as few calls of the service as there are.

import { attempt, refuse } from "../../shared/base/refusal.ts";
import {
  type CellValue,
  type LookAsk,
  MAX_SEEN_ROWS,
  MAX_TEXT_LENGTH,
  type SeenSheet,
  type Snapshot,
} from "../../shared/protocol/look.ts";
import { tabsOf } from "../../shared/sheet/tab.ts";
import { LIST_NAME } from "../../shared/sheet/workbook-names.ts";
import { activeWorkbook, listIn, namedRanges } from "./workbook.ts";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** No sheet of ours is wider; what stands beyond does not travel. */
const MAX_COLUMNS = 140;
const MAX_SHEETS = 300;

export function look(ask: LookAsk): Snapshot {
  const { sheet, words, list: wantsList, reread = [], counted, unnamed, shown, formulas, names = [], cells = [] } = ask;
  const workbook = activeWorkbook();
  const known = names.length + cells.length === 0 && !wantsList ? undefined : namedRanges(workbook);
  const nameRanges = [...new Set([...names, ...cells])].flatMap((name) => {
    const range = known?.get(name);
    if (!range) return [];
    return [{ name, rows: range.getNumRows(), values: cells.includes(name) ? range.getValues().map(seenRow) : [] }];
  });
  if (words !== undefined) {
    const rows = wantsList && listIn(known);
    const list = rows && { formulas: rows.getFormulas().map(seenRow), values: rows.getValues().map(seenRow) };
    const ids = list ? tabsOf(list.formulas).map(({ id }) => id) : [];
    // One call for a word, however many sheets there are.
    const ranges = (counted && known?.has(LIST_NAME) ? [] : words).flatMap((word) =>
      workbook.createTextFinder(word).findAll(),
    );
    const showing = inOrder(
      workbook,
      new Map(ranges.map((range) => [range.getSheet().getSheetId(), range.getSheet()])),
      words,
    );
    const front = unnamed ? "" : workbook.getActiveSheet().getName();
    const sheets = showing.slice(0, MAX_SHEETS).map(([id, one]): SeenSheet => {
      return counted || (ids.includes(id) && !reread.includes(id))
        ? { id, name: "", values: [] }
        : seenSheet(one, unnamed);
    });
    return { front, sheets, names: nameRanges, ...(list && { list }) };
  }
  const one = sheet === undefined ? null : sheet === "" ? workbook.getActiveSheet() : workbook.getSheetByName(sheet);
  if (one === null) return { front: "", sheets: [], names: nameRanges };
  const read = readable(one, unnamed);
  const texts = shown ? cellsOf(one).getDisplayValues() : [];
  const sheets = [
    {
      ...read,
      ...(shown && { shown: read.values.map((row, at) => texts[at]?.slice(0, row.length) ?? []) }),
      ...(formulas && { formulas: pageOf(one).getFormulas().slice(0, read.values.length) }),
    },
  ];
  return { front: sheet === "" ? read.name : "", sheets, names: nameRanges };
}

/** As the tabs stand: each word finds its sheets in this order, several words one after the other. */
function inOrder(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  showing: ReadonlyMap<number, Sheet>,
  words: readonly string[],
): readonly (readonly [number, Sheet])[] {
  if (words.length < 2 || showing.size < 2) return [...showing];
  return workbook.getSheets().flatMap((sheet): [number, Sheet][] => {
    const id = sheet.getSheetId();
    const shown = showing.get(id);
    return shown === undefined ? [] : [[id, shown]];
  });
}

/** A sheet that was asked for; the tab of a chart has no cells, and Google fails at reading any. */
function readable(sheet: Sheet, unnamed?: boolean): SeenSheet {
  try {
    return seenSheet(sheet, unnamed);
  } catch (error) {
    let isChart = false;
    attempt(() => {
      isChart = sheet.getType() !== SpreadsheetApp.SheetType.GRID;
    });
    if (isChart)
      refuse(
        `The tab in front, “${sheet.getName()}”, is a chart and has no cells. Select a tab with cells, then try again.`,
      );
    throw error;
  }
}

function seenSheet(sheet: Sheet, unnamed?: boolean): SeenSheet {
  const values = cellsOf(sheet).getValues().map(seenRow);
  while (values[values.length - 1]?.length === 0) values.pop();
  return { id: sheet.getSheetId(), name: unnamed ? "" : sheet.getName(), values };
}

/** All of them: to ask which hold something is a call more. */
const cellsOf = (sheet: Sheet) =>
  sheet.getRange(1, 1, Math.min(sheet.getMaxRows(), MAX_SEEN_ROWS), Math.min(sheet.getMaxColumns(), MAX_COLUMNS));

/** No formula sheet's page is wider. */
const MAX_PAGE_COLUMNS = 20;
const pageOf = (sheet: Sheet) =>
  sheet.getRange(1, 1, Math.min(sheet.getMaxRows(), MAX_SEEN_ROWS), Math.min(sheet.getMaxColumns(), MAX_PAGE_COLUMNS));

/** Without the blanks at its end; what is no text, number or tick, such as a date, only as there. */
function seenRow(row: readonly unknown[]): CellValue[] {
  let end = row.length;
  while (end > 0 && row[end - 1] === "") end -= 1;
  return row.slice(0, end).map(seen);
}

function seen(cell: unknown): CellValue {
  if (typeof cell === "string") return cell.slice(0, MAX_TEXT_LENGTH);
  return typeof cell === "boolean" || (typeof cell === "number" && Number.isFinite(cell)) ? cell : null;
}
