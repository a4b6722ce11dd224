// An argument as a person types it into a field, as the text of a formula that every locale reads alike.

import { readNumber } from "../base/number.ts";
import type { Fault } from "../base/refusal.ts";

export type Entry = {
  /** Text for the formula; "" where nothing was typed. */
  readonly formula: string;
  /** What the argument is: cells, or a value (a list is a column of values). */
  readonly is:
    | { readonly cells: string }
    | { readonly value: number | string | boolean | readonly (readonly (number | string | boolean)[])[] | undefined };
};

/** C5, C5:C14, C5:C, C:C, 'Other sheet'!C5, or a name the whole workbook knows. */
const CELLS = /^(?:(?:'(?:[^']|'')+'|[A-Za-z]\w*)!)?\$?[A-Za-z]{1,3}(?:\$?\d+)?(?::\$?[A-Za-z]{1,3}(?:\$?\d+)?)?$/;
const ONE_CELL = /\$?\d+$|:/;
const WORKBOOK_NAME = /^gramwright_\w+$/i;
/** What can only have been meant as a number. */
const NUMERIC = /^[-+−]?[\d.,][\d.,\s/%½⅓⅔¼¾⅛⅜⅝⅞]*$/;

/** Reads one field. Nothing that is typed becomes a function: it is cells, a number, TRUE or FALSE, a list, or text in quotes. */
export function readEntry(typed: string): Entry | Fault {
  const text = typed.trim();
  if (text === "") return { formula: "", is: { value: undefined } };
  if (WORKBOOK_NAME.test(text) || (CELLS.test(text) && ONE_CELL.test(text)))
    return { formula: text, is: { cells: text } };
  return /^\{.*\}$/.test(text) ? readList(text.slice(1, -1)) : readOne(text);
}

function readOne(text: string): { formula: string; is: { value: number | string | boolean } } | Fault {
  if (/^(true|false)$/i.test(text)) return { formula: `${text.toUpperCase()}()`, is: { value: /^t/i.test(text) } };
  if (NUMERIC.test(text)) {
    const reading = readNumber(text, { percent: true });
    if ("says" in reading) return { says: `is "${text}", which ${reading.says}` };
    return { formula: asFraction(reading.value), is: { value: reading.value } };
  }
  const bare = /^"(.*)"$/.exec(text)?.[1]?.replace(/""/g, '"') ?? text;
  return { formula: `"${bare.replace(/"/g, '""')}"`, is: { value: bare } };
}

/** Values below each other: "{1; 0.65; 0.02}". */
function readList(inside: string): Entry | Fault {
  const parts = inside.match(/\s*"(?:[^"]|"")*"\s*|[^;]+/g) ?? [];
  const items = parts.flatMap((part) => (part.trim() === "" ? [] : [readOne(part.trim())]));
  const stuck = items.find((one) => "says" in one);
  if (stuck !== undefined && "says" in stuck) return stuck;
  const good = items.flatMap((one) => ("says" in one ? [] : [one]));
  if (good.length === 0) return { says: "is a list without anything in it" };
  return {
    formula: `{${good.map(({ formula }) => formula).join("; ")}}`,
    is: { value: good.map(({ is }) => [is.value]) },
  };
}

/** 0.65 is 65/100: a decimal sign would be read in one country and not in the next. */
function asFraction(value: number): string {
  const [whole = "0", part = ""] = value
    .toFixed(12)
    .replace(/\.?0+$/, "")
    .split(".");
  if (part === "") return whole;
  return `${BigInt(whole + part)}/${10 ** part.length}`;
}

/** The formula of a call; arguments left out at the end are left out. */
export function entryFormula(name: string, formulas: readonly string[]): string {
  let count = formulas.length;
  while (count > 0 && formulas[count - 1] === "") count -= 1;
  return `=${name}(${formulas.slice(0, count).join("; ")})`;
}
