import { atMost } from "../base/scaling.ts";
import { showNumber, shownShare } from "../base/show.ts";
import type { Ingredient } from "../larder/ingredient.ts";
import type { KindWord } from "../larder/kind-words.ts";
import type { Kind } from "../larder/kinds.ts";
import type { Band, StyleName } from "./bands.ts";
import type { Style } from "./style.ts";

/** A row under review; its share is of all flour. */
export type Row = {
  readonly index: number;
  readonly names: readonly string[];
  readonly kind: Kind;
  readonly share: number;
  readonly ingredient: Ingredient | null;
};
export type Side = "above" | "below" | null;
/**
 * What is said of a row, and how much it matters: what cannot be read first, then what is furthest outside, last what is not known.
 * `of` is what is missing, or the whole dough, where the row only speaks for it.
 */
export type RowNote = { readonly row: number; readonly says: string; readonly matters: number } & Detail;
export type Remark = (index: number, says: string, matters?: number, detail?: Detail) => void;
/** What there is too much or too little of, and which: for whoever goes by a remark without reading its sentence. */
type Detail = { readonly of?: string | undefined; readonly topic?: Topic | undefined; readonly side?: Side };
export type Topic = "water" | "salt" | "yeast" | "sugar" | "fat" | "egg" | "milk solids";

export const UNREADABLE = 1000;
const UNKNOWN = 0;
/** Nothing is further outside than what is missing. */
const FARTHEST = 100;
/** Water, salt and what raises it: without them it fails, and richer or leaner it is another product. Common practice, no source. */
const ESSENTIAL = 4;

/** Takes down what is said; a figure that is not known matters least. */
export const notesInto =
  (notes: RowNote[]): Remark =>
  (row, says, matters = UNKNOWN, detail = {}) =>
    notes.push({ row, says, matters, ...detail });

/** How many times the nearest end of its usual range it is, or the end is of it; `what` a dough cannot do without counts for more. */
export function outside(value: number, side: Side, { low, high }: Band, what: "essential" | "enriching"): number {
  const [more, less] = side === "above" ? [value, high] : [low, value];
  const times = Math.min(FARTHEST, less > 0 ? more / less : FARTHEST);
  return times * (what === "essential" ? ESSENTIAL : 1);
}

/** What every part of a review needs: whom to tell, and the first flour row, which speaks for the whole. */
export type ReviewSetting = {
  readonly remark: Remark;
  readonly whole: number;
  readonly styleName: StyleName;
  readonly style: Style;
};

export const sumOf = (rows: readonly Row[]) => rows.reduce((sum, { share }) => sum + share, 0);
export const ofKind = (rows: readonly Row[], ...words: readonly KindWord[]) =>
  rows.filter(({ kind }) => words.some((word) => word === kind.word));

export function sideOf(value: number, { low, high }: Band): Side {
  if (!atMost(value, high)) return "above";
  return atMost(low, value) ? null : "below";
}

export function sentence(what: string, value: number, side: Side, band: Band, { styleName }: ReviewSetting): string {
  const range =
    band.high === 0
      ? "none"
      : `${showNumber(band.low * 100)} to ${shownShare(band.high)}, usually ${shownShare(band.usual)}`;
  const amount = value === 0 ? "missing" : `${shownShare(value)} of all flour`;
  return `${what} is ${amount}, ${side} the usual range for ${styleName} (${range}), from published formulas`;
}
