import { refuse, refuseUnread } from "../../shared/base/refusal.ts";
import type { CheckAnswer } from "../../shared/protocol/self-check.ts";
import { activeWorkbook } from "./active.ts";
import { undo } from "./undo.ts";
import { newSheet } from "./write.ts";

const NAME = "Gramwright check";
/** Only a sheet that begins with these words is read, written or removed here. */
const MARK = "Gramwright checks itself in this sheet and removes it afterwards. It may be deleted.";
const MAX_ROWS = 400;
const MAX_COLUMNS = 26;
/** No quotation mark and no !, so that nothing outside the sheet can be named; `;` alone parts arguments. */
const FORMULA = /^=[A-Z0-9_:;()*/]{1,300}$/;
const CALLED = /^(BAKE_[A-Z]+|GRAMWRIGHT_PROBE|ISBLANK|LEN)$/;

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Asked = Readonly<Record<string, unknown>>;

/** One step of the check. */
export function check(asked: Asked): CheckAnswer {
  const workbook = activeWorkbook();
  const name = String(asked.sheet ?? "");
  const sheet = asked.step === "write" && name === "" ? null : ownSheet(name);
  const answer = { sheet: name, locale: workbook.getSpreadsheetLocale(), values: [], formulas: [] };
  switch (asked.step) {
    case "write": {
      const before = workbook.getActiveSheet();
      const target = sheet === null ? newSheet(workbook, NAME) : { sheet, name, unsure: [] };
      try {
        if (target.unsure.length > 0) throw new Error("the service did not say whether it added one");
        write(target.sheet, asked);
      } catch (error) {
        undo(workbook, { ...target, names: [], front: before }, error);
      }
      return { ...answer, sheet: target.name };
    }
    case "read": {
      const all = (sheet as Sheet).getDataRange();
      return { ...answer, values: all.getValues(), formulas: all.getFormulas() };
    }
    case "insert":
      (sheet as Sheet).insertRowsBefore(whole(asked.row, MAX_ROWS), 1);
      return answer;
    case "remove":
      workbook.deleteSheet(sheet as Sheet);
      return answer;
    default:
      return unclear();
  }
}

function ownSheet(name: string): Sheet {
  const checkTab = name.startsWith(NAME) ? activeWorkbook().getSheetByName(name) : null;
  if (checkTab === null || checkTab.getRange(1, 1).getValue() !== MARK) {
    return refuse("The sheet of the check is gone; start the check again.");
  }
  return checkTab;
}

function write(sheet: Sheet, { cells, formats, formulas }: Asked): void {
  const rows = grid(cells);
  const looks = grid(formats);
  const placed = list(formulas, 40).map((one) => {
    const { row, column, formula } = one as { row: unknown; column: unknown; formula: unknown };
    const text = String(formula);
    const calls = text.match(/[A-Z_]+(?=\()/g) ?? [];
    if (!FORMULA.test(text) || !calls.every((called) => CALLED.test(called))) unclear();
    return { row: whole(row, MAX_ROWS), column: whole(column, MAX_COLUMNS), text };
  });
  sheet.getRange(1, 1, sheet.getMaxRows(), sheet.getMaxColumns()).clear();
  // What the cells held before must be gone before new answers need their room.
  SpreadsheetApp.flush();
  sheet.getRange(1, 1).setNumberFormat("@").setValue(MARK);
  // Text first becomes a cell of text, so that nothing of it is read as a formula, a number or a date.
  sheet
    .getRange(2, 1, rows.length, rows[0]?.length ?? 1)
    .setNumberFormats(rows.map((row, down) => row.map((cell, across) => formatOf(cell, looks[down]?.[across]))))
    .setValues(rows.map((row) => row.map((cell) => (typeof cell === "string" ? cell.replace(/^'+/, "") : cell))));
  for (const { row, column, text } of placed) sheet.getRange(row + 1, column + 1).setFormula(text);
  SpreadsheetApp.flush();
}

function formatOf(cell: unknown, format: unknown): string {
  if (typeof cell === "string" && cell !== "") return "@";
  return typeof format === "string" && /^[0#,.%$hms:ymd-]{1,12}$/.test(format) ? format : "General";
}

/** A rectangle of numbers, short texts and ticks. */
function grid(raw: unknown): (number | string | boolean)[][] {
  const rows = list(raw, MAX_ROWS).map((row) => list(row, MAX_COLUMNS));
  const width = rows[0]?.length;
  const fits = (cell: unknown) =>
    typeof cell === "boolean" || Number.isFinite(cell) || (typeof cell === "string" && cell.length <= 500);
  if (!rows.every((row) => row.length === width && row.every(fits))) unclear();
  return rows as (number | string | boolean)[][];
}

const list = (raw: unknown, most: number): unknown[] =>
  Array.isArray(raw) && raw.length > 0 && raw.length <= most ? raw : unclear();

const whole = (raw: unknown, most: number): number =>
  typeof raw === "number" && Number.isInteger(raw) && raw >= 0 && raw < most ? raw : unclear();

const unclear = (): never => refuseUnread("The step of the check");

/** What reached a custom function, as text. */
export const probe = (args: ArrayLike<unknown>): string => `${args.length}: ${Array.from(args, cellText).join(" ; ")}`;

function cellText(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(cellText).join(", ")}]`;
  if (Object.prototype.toString.call(value) === "[object Date]") return `date ${(value as Date).toISOString()}`;
  return typeof value === "string" ? JSON.stringify(value) : String(value);
}
