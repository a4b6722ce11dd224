// The cells of a line that tabs, bars or wide gaps part.

import type { SourceLine } from "./source-lines.ts";

export const NUMBER = "[\\d.,½¼¾⅓⅔]*[\\d½¼¾⅓⅔](?:\\s\\d/\\d)?";
export const UNIT = "(?:k?g|gr|grams?|oz|lbs?|#|ml|cl|dl|l|cups?|tsp|tbsp|%)";
export const AMOUNT = new RegExp(`^${NUMBER}\\s?${UNIT}?\\.?$`, "iu");
export const BARE = new RegExp(`^${NUMBER}%?$`, "u");
export const AMOUNT_AND_NAME = new RegExp(`^${NUMBER}\\s?${UNIT}\\s+\\p{L}{2}`, "iu");
export const NAME_AND_AMOUNT = new RegExp(`^\\p{L}{2}.*\\s${NUMBER}\\s?${UNIT}$`, "iu");
export const isName = (cell: string): boolean => /\p{L}{2}/u.test(cell) && !AMOUNT.test(cell);

/** A cell and where in its line it begins. */
export type Cell = { readonly text: string; readonly from: number };
export const MAY = /\t|\||\S {2,}\S/;

export function cellsOf(raw: string): Cell[] {
  const cells: Cell[] = [];
  for (const match of raw.matchAll(/[^\t|\s](?:[^\t|]*?[^\t|\s])??(?=\s*[\t|]| {2,}|\s*$)/g))
    cells.push({ text: match[0], from: match.index ?? 0 });
  return cells;
}

export const lineOf = (line: SourceLine, text: string, isMarked = false): SourceLine => ({
  ...line,
  raw: text,
  text,
  isMarked,
  isListed: false,
  isNumbered: false,
});
