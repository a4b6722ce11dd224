// Formulas whose cells moved: references are found in them, and told anew.
import { columnLetters, columnNumber, type Zone } from "./a1.ts";
import { quotedTab, unquote } from "./tab.ts";

/** A text, or a reference with or without a sheet's name; no name that a reference only ends or begins. */
const PARTS =
  /"(?:[^"]|"")*"|(?:(?:'((?:[^']|'')+)'|([\p{L}_][\p{L}\p{N}_.]*))!)?(\$?)([A-Z]{1,3})(\$?)([1-9]\d*)(?::(\$?)([A-Z]{1,3})(\$?)([1-9]\d*))?(?![\p{L}\p{N}_(.])/gu;

/** Where a zone of the moved cells is now; null where it is gone. */
export type Moves = (zone: Zone) => Zone | null;

/**
 * The formula with its references to `sheet` moved, and those without a sheet's name where `isOwn` says that it stands there itself.
 * What is gone becomes #REF!, as where rows are deleted. References get the name `as`.
 */
export function withMoved(formula: string, sheet: string, moves: Moves, isOwn: boolean, as = sheet): string {
  return formula.replace(PARTS, (whole: string, ...groups: (string | number | undefined)[]) => {
    const [quoted, bare, , left, , top] = groups as (string | undefined)[];
    const offset = groups[10] as number;
    // The end of a longer word is no cell.
    if (left === undefined || top === undefined || /[\p{L}\p{N}_.$]/u.test(formula.charAt(offset - 1))) return whole;
    const named = unquote(quoted) ?? bare;
    if (named === undefined ? !isOwn : named !== sheet) return whole;
    const [, , dollarLeft = "", , dollarTop = "", , dollarRight = "", right, dollarBottom = "", bottom] = groups;
    const [row, column] = [Number(top) - 1, columnNumber(left)];
    const [lastRow, lastColumn] = [Number(bottom ?? top) - 1, columnNumber(String(right ?? left))];
    const to = moves({ row, column, rows: lastRow - row + 1, columns: lastColumn - column + 1 });
    if (to === null) return "#REF!";
    const first = `${dollarLeft}${columnLetters(to.column)}${dollarTop}${to.row + 1}`;
    const last = `${dollarRight}${columnLetters(to.column + to.columns - 1)}${dollarBottom}${to.row + to.rows}`;
    return `${named === undefined ? "" : quotedTab(as)}${first}${right === undefined ? "" : `:${last}`}`;
  });
}

/** A formula without what its references say: alike wherever it stands. */
export const skeleton = (formula: string): string =>
  formula.replace(PARTS, (whole: string) => (whole.startsWith('"') ? whole : "#")).replace(/\s+/g, "");

/** Decimals as fractions: a script's formula is read with the signs of the spreadsheet's own locale. */
export function withoutDecimals(formula: string): string {
  return formula.replace(
    /"(?:[^"]|"")*"|'(?:[^']|'')+'!|(?<![\w.])(\d*)\.(\d+)(?![\w.])/g,
    (whole: string, ...groups) => {
      const [digits = "", decimals] = groups as [string?, string?];
      if (decimals === undefined) return whole;
      return `(${Number(`${digits}${decimals}`)}/${10 ** decimals.length})`;
    },
  );
}
