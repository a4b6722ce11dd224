// A formula as one bar, a part for each kind of ingredient. Pure: it knows heights and words, no page.

import type { Weight } from "../base/units.ts";
import { KIND_WORDS } from "../larder/kind-words.ts";
import type { Kind } from "../larder/kinds.ts";
import { apart } from "./tin-drawing.ts";

export type KindPart = {
  readonly word: Kind["word"];
  readonly weight: number;
  /** Of the whole dough. */
  readonly share: number;
};

/** From the flour down to what is weighed in grams. */
const ORDER: readonly Kind["word"][] = [
  "flour",
  "preferment",
  ...KIND_WORDS.filter((word) => !["flour", "salt", "yeast", "other"].includes(word)),
  "other",
  "salt",
  "yeast",
];

/** What the rows of each kind come to; kinds without any are left out. */
export function kindParts(weights: readonly (Weight | null)[], kinds: readonly Kind[]): readonly KindPart[] {
  const whole = weights.reduce<number>((sum, row) => sum + (row ?? 0), 0);
  if (!(whole > 0)) return [];
  return ORDER.flatMap((word) => {
    const weight = weights.reduce<number>((sum, row, at) => sum + (kinds[at]?.word === word ? (row ?? 0) : 0), 0);
    return weight > 0 ? [{ word, weight, share: weight / whole }] : [];
  });
}

export type BarPart = KindPart & {
  readonly from: number;
  readonly to: number;
  /** Where its words stand, in the order of the parts and never closer than the gap. */
  readonly label: number;
};

/** The parts on a bar of `height`, their labels beside it `gap` apart; they must have room: see `barHeight`. */
export function kindBar(parts: readonly KindPart[], height: number, gap: number): readonly BarPart[] {
  let down = 0;
  const stripes = parts.map((part) => {
    const from = down;
    down += part.share * height;
    return { ...part, from, to: down };
  });
  const labels = apart(
    stripes.map(({ from, to }) => (from + to) / 2),
    gap,
    height - gap / 2,
  );
  return stripes.map((part, at) => ({ ...part, label: labels[at] ?? part.from }));
}

/** A bar beside which all labels have room. */
export const barHeight = (parts: readonly KindPart[], gap: number, least: number): number =>
  Math.max(least, (parts.length + 1) * gap);
