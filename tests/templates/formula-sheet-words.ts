// How a person reads the words on a formula sheet: types, names, and what is blank.
import type { Cell } from "./formula-sheet-sum.ts";

/** Spaces and signs without width that get into cells from web pages and word processors. */
const ODD = /[\s\u00a0\u2000-\u200f\u202f\u205f\u2060\u3000\ufeff]/g;
export const plain = (cell: Cell | undefined): string =>
  typeof cell === "string" ? cell.replace(ODD, "").toLowerCase() : "";
export const cleaned = (cell: Cell | undefined): string =>
  typeof cell === "string" ? cell.replace(ODD, " ").replace(/ +/g, " ").trim().toLowerCase() : "";
export const isBlank = (cell: Cell | undefined): boolean => cell === "" || cell === undefined;

const TYPES = "flour water salt yeast sugar fat egg dairy grain fruit ice other".split(" ");
const STARTERS = "starter levain sourdough poolish biga sponge sour preferment".split(" ");

/** Flour as a part of a row and what it is; undefined where the type is none. */
export function typeOf(cell: Cell | undefined): { readonly word: string; readonly flour: number } | undefined {
  // A comma within a number is a decimal sign for some.
  const text = plain(cell)
    .replace(/[()]|(?<!\d),|,(?!\d)|hydration/g, "")
    .replace(/(\d),(\d%)/g, "$1.$2");
  const word = TYPES.find((one) => text === one || text === `${one}s`);
  if (word !== undefined) return { word, flour: word === "flour" ? 1 : 0 };
  const [, first, name, last] = /^(?:(\d+(?:\.\d+)?)%)?([a-z]+)(?:(\d+(?:\.\d+)?)%)?$/.exec(text) ?? [];
  const hydration = Number(first ?? last ?? 0);
  if (!STARTERS.some((one) => name === one || name === `${one}s`) || (first !== undefined && last !== undefined))
    return undefined;
  return hydration > 0 && hydration <= 500 ? { word: "starter", flour: 100 / (100 + hydration) } : undefined;
}
