import { refuse } from "../base/refusal.ts";
import { type Ratio, ratio, type Weight, weight } from "../base/units.ts";
import type { Kind } from "../larder/kinds.ts";
import type { Frame, Percents } from "./percents.ts";

export type AmountOf = "dough" | "flour";

type Weights = readonly (Weight | null)[];
type Kinds = readonly (Kind | null)[];

export const sum = (values: readonly (number | null)[]): number =>
  values.reduce<number>((total, value) => total + (value ?? 0), 0);

/** All flour of a formula: the flour rows and the flour inside its preferments. */
export function allFlour(weights: Weights, kinds: Kinds): Weight {
  return weight(sum(weights.map((row, index) => (row ?? 0) * (kinds[index]?.flour ?? 0))));
}

/** Flour that goes in by itself: the flour rows alone. */
export function addedFlour(weights: Weights, kinds: Kinds): Weight {
  return weight(sum(weights.map((row, index) => (kinds[index]?.word === "flour" ? (row ?? 0) : 0))));
}

/** Each row over all flour: the baker's percentage as a ratio. */
export function flourShares(weights: Weights, kinds: Kinds): (Ratio | null)[] {
  const flour = allFlour(weights, kinds);
  if (!(flour > 0)) {
    refuse("hold no flour; a baker's percentage needs a flour row (or a preferment) with a weight above 0", "weights");
  }
  return weights.map((row) => (row === null ? null : ratio(row / flour)));
}

/** Each row over the sum of all. */
export function wholeShares(weights: Weights): (Ratio | null)[] {
  const whole = sum(weights);
  if (!(whole > 0)) refuse("add up to 0; a percentage of the total needs a weight above 0", "weights");
  return weights.map((row) => (row === null ? null : ratio(row / whole)));
}

/** Weights for an amount of dough, or of the flour that the percents refer to. */
export function weightsFor({ shares }: Percents, amount: Weight, of: AmountOf): (Weight | null)[] {
  const flour = of === "flour" ? amount : amount / sum(shares);
  return shares.map((share) => (share === null ? null : weight(share * flour)));
}

/** The flour that percents of this frame refer to. */
export function flourOf(frame: Frame, weights: Weights, kinds: Kinds): Weight {
  return frame === "added flour" ? addedFlour(weights, kinds) : allFlour(weights, kinds);
}
