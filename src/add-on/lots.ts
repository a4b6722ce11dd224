// Rows of lots below everything in the lot log: none is written over, and what is there already is kept once.
import { refuse } from "../../shared/base/refusal.ts";
import { type LotRow, type LotsAnswer, type LotsAsk, lotCells, lotKey } from "../../shared/protocol/lots.ts";
import { LOTS_NAME } from "../../shared/sheet/workbook-names.ts";
import { activeWorkbook } from "./workbook.ts";

type Range = GoogleAppsScript.Spreadsheet.Range;

export function keepLots({ rows }: LotsAsk): LotsAnswer {
  const log = activeWorkbook().getRangeByName(LOTS_NAME);
  const added = addLots(log, rows);
  return { sheet: log?.getSheet().getName() ?? "", added };
}

/** How many of the rows were not in the log yet. */
export function addLots(range: Range | null | undefined, lots: readonly LotRow[]): number {
  if (!range) return refuse("The lot log was deleted meanwhile, and no lot was kept. Press the button again.");
  const rows = lots.map(lotCells);
  const sheet = range.getSheet();
  const [top, left] = [range.getRow(), range.getColumn()];
  const there = sheet.getRange(top, left, sheet.getMaxRows() - top + 1, range.getNumColumns()).getValues();
  const known = new Set(there.map(lotKey));
  const wanted = rows.filter((row) => {
    const isNew = !known.has(lotKey(row));
    known.add(lotKey(row));
    return isNew;
  });
  if (wanted.length === 0) return 0;
  let last = there.length;
  while (last > 0 && there[last - 1]?.every((cell) => cell === "")) last -= 1;
  const short = last + wanted.length - there.length;
  if (short > 0) sheet.insertRowsAfter(sheet.getMaxRows(), short);
  const place = sheet.getRange(top + last, left, wanted.length, wanted[0]?.length ?? 1);
  // A lot such as "=A1", "3/12" or "007" stays the text it is.
  place.setNumberFormats(wanted.map((row) => row.map((cell) => (typeof cell === "string" ? "@" : "#,##0.0"))));
  place.setValues(wanted);
  return wanted.length;
}
