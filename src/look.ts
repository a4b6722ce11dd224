// What stands in the workbook, for the bench to work with. Reads only, in as few calls of the service as there are.
import { lookAsk, type Seen, type SeenSheet, type Snapshot } from "../shared/look.ts";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

/** No sheet of ours is larger; what stands beyond does not travel. */
const MOST_ROWS = 1500;
const MOST_COLUMNS = 60;
const MOST_SHEETS = 300;
const LONGEST_TEXT = 2000;

export function look(asked: Readonly<Record<string, unknown>>): Snapshot {
  const { sheet, words, shown = false, names = [], cells = [] } = lookAsk(asked);
  const workbook = SpreadsheetApp.getActiveSpreadsheet();
  // All names in one call of the service.
  const known = names.length + cells.length === 0 ? [] : workbook.getNamedRanges();
  const found = [...new Set([...names, ...cells])].flatMap((name) => {
    const range = known.find((one) => one.getName() === name)?.getRange();
    return range ? [{ name, values: cells.includes(name) ? range.getValues().map(seenRow) : [] }] : [];
  });
  if (words !== undefined) {
    const front = workbook.getActiveSheet().getName();
    const wanted = new Set(words);
    const sheets = workbook.getSheets().slice(0, MOST_SHEETS);
    return { front, sheets: sheets.flatMap((one) => seenWith(one, wanted) ?? []), names: found };
  }
  const one = sheet === undefined ? null : sheet === "" ? workbook.getActiveSheet() : workbook.getSheetByName(sheet);
  if (one === null) return { front: "", sheets: [], names: found };
  const all = within(one.getDataRange());
  const read = { name: one.getName(), values: all.getValues().map(seenRow) };
  const sheets = [shown ? { ...read, shown: all.getDisplayValues() } : read];
  return { front: sheet === "" ? read.name : "", sheets, names: found };
}

/** A sheet that shows one of the words; its name is asked for only then. */
function seenWith(sheet: Sheet, words: ReadonlySet<string>): SeenSheet | undefined {
  const values = within(sheet.getDataRange()).getValues();
  const isWanted = values.some((row) => row.some((cell) => typeof cell === "string" && words.has(cell.trim())));
  return isWanted ? { name: sheet.getName(), values: values.map(seenRow) } : undefined;
}

function within(range: Range): Range {
  const [rows, columns] = [range.getNumRows(), range.getNumColumns()];
  if (rows <= MOST_ROWS && columns <= MOST_COLUMNS) return range;
  return range.offset(0, 0, Math.min(rows, MOST_ROWS), Math.min(columns, MOST_COLUMNS));
}

/** Without the blanks at its end; what is no text, number or tick, such as a date, only as there. */
function seenRow(row: readonly unknown[]): Seen[] {
  let end = row.length;
  while (end > 0 && row[end - 1] === "") end -= 1;
  return row.slice(0, end).map(seen);
}

function seen(cell: unknown): Seen {
  if (typeof cell === "string") return cell.slice(0, LONGEST_TEXT);
  return typeof cell === "boolean" || (typeof cell === "number" && Number.isFinite(cell)) ? cell : null;
}
