import { atMost } from "../base/scaling.ts";
import { shown, shownShare } from "../base/show.ts";
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
export type Remark = (index: number, says: string) => void;

/** What every part of a review needs: whom to tell, and the first flour row, which speaks for the whole. */
export type Told = {
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

export function sentence(what: string, value: number, side: Side, band: Band, { styleName }: Told): string {
  const range =
    band.high === 0
      ? "none"
      : `${shown(band.low * 100)} to ${shownShare(band.high)}, usually ${shownShare(band.usual)}`;
  const amount = value === 0 ? "missing" : `${shownShare(value)} of all flour`;
  return `${what} is ${amount}, ${side} the usual range for ${styleName} (${range}), from published formulas`;
}
