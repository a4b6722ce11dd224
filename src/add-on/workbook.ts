// The workbook, and the names that it gives to ranges.
import { LIST_NAME } from "../../shared/sheet/workbook-names.ts";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

/** The workbook that the add-on was opened in, the only one it may touch. */
export const activeWorkbook = (): Workbook => SpreadsheetApp.getActiveSpreadsheet();

/** The list of formula sheets down to the end of its sheet: rows that are added last may stand below its name's range. */
export function listIn(names: ReadonlyMap<string, Range> | undefined): Range | undefined {
  const list = names?.get(LIST_NAME);
  return list?.offset(0, 0, list.getSheet().getMaxRows() - list.getRow() + 1);
}

/** All of them in one call of the service, the first where two are alike, without those whose sheet was deleted. */
export function namedRanges(workbook: Workbook): ReadonlyMap<string, Range> {
  const ranges = new Map<string, Range>();
  for (const one of workbook.getNamedRanges()) {
    try {
      // Of a deleted sheet there may be none.
      const range = one.getRange() as Range | null;
      if (range !== null && !ranges.has(one.getName())) ranges.set(one.getName(), range);
    } catch {}
  }
  return ranges;
}
