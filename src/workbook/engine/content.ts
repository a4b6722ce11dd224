import type { Session } from "../service/session.ts";
import type { Position } from "./library.ts";

const NUMBER = /^[-+]?\s?[$€£]?\s?(\d[\d.,' ]*|\.\d+)(e[-+]?\d+)?\s?[%€$£]?$/i;
const DATE = /^\d{1,4}[-/.]\d{1,2}([-/.]\d{1,4})?$/;
const TIME = /^\d{1,2}:\d{2}(:\d{2})?(\s?[ap]m)?$/i;
const MONTH = "(jan|feb|mar|apr|may|jun|jul|aug|sep|sept|oct|nov|dec)[a-z]*\\.?";
const NAMED_DATE = new RegExp(
  `^(${MONTH}[\\s-]+\\d{1,4}(,?\\s+\\d{2,4})?|\\d{1,2}[\\s-]+${MONTH}([\\s-]+\\d{2,4})?)$`,
  "i",
);

/** Whether a sheet would read the text as a number, a percentage, a date, a time or a truth value. */
export function readsAsValue(text: string): boolean {
  const trimmed = text.trim();
  if (/^(true|false)$/i.test(trimmed)) return true;
  return [NUMBER, DATE, TIME, NAMED_DATE].some((pattern) => pattern.test(trimmed));
}

/**
 * What the engine is to hold for a value that a script writes. A text that a sheet would read as something else is
 * refused, unless the cell is formatted as text or the text begins with the escape `'`, which is not stored.
 */
export function contentFor(session: Session, value: unknown, position: Position): string {
  const where = session.engine.library.helpers.toXC(position.col, position.row);
  const isText = session.formatOf(position) === "@";
  if (value === null || value === "") return "";
  if (typeof value === "string") return textFor(session, value, isText, where);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "number") {
    if (!Number.isFinite(value)) throw new Error(`${where}: ${value} cannot be written to a cell`);
    if (isText) throw new Error(`${where}: the number ${value} is written to a cell of text; give it as text`);
    return String(value);
  }
  if (Object.prototype.toString.call(value) === "[object Date]") return String(serialOf(value as Date));
  throw new Error(
    `${where}: ${value === undefined ? "undefined" : Object.prototype.toString.call(value)} cannot be written to a cell`,
  );
}

function textFor(session: Session, text: string, isText: boolean, where: string): string {
  if (text.length > 50_000)
    throw new Error(`${where}: your input contains more than the maximum of 50000 characters in a single cell.`);
  if (isText) {
    if (text.startsWith("'")) throw new Error(`${where}: the apostrophe would stay in a cell of text: ${text}`);
    return text;
  }
  if (text.startsWith("'")) return text;
  if (/^[=+\-@]/.test(text)) throw new Error(`${where}: text that begins like a formula must be escaped: ${text}`);
  if (readsAsValue(text))
    throw new Error(`${where}: a sheet would not keep this as text; format the cell "@" or escape it: ${text}`);
  // What only the engine would take for a number or a date is kept as text by the escape.
  const { library, locale } = session.engine;
  return library.helpers.isNumber(text, locale) || library.helpers.isDateTime(text, locale) ? `'${text}` : text;
}

const DAY = 86_400_000;
/** Days since the sheet's day 0, 1899-12-30, by the clock on the wall. */
function serialOf(date: Date): number {
  const wall = Date.UTC(
    date.getFullYear(),
    date.getMonth(),
    date.getDate(),
    date.getHours(),
    date.getMinutes(),
    date.getSeconds(),
  );
  return (wall - Date.UTC(1899, 11, 30)) / DAY;
}
