import { refuse } from "./refusal.ts";
import { shownApart, shownWeight } from "./show.ts";
import { type Ratio, type Weight, weight } from "./units.ts";

type Weights = readonly (Weight | null)[];

/** Counting up and comparing with a limit forgive what binary arithmetic adds: 2.1 ÷ 0.7 is 3. */
const SLACK = 1e-9;
export const atMost = (value: number, limit: number): boolean =>
  value <= limit || (Number.isFinite(value) && value <= limit + SLACK * Math.max(Math.abs(value), Math.abs(limit)));
export const countUp = (value: number): number => Math.ceil(value * (1 - SLACK));
export const countDown = (value: number): number => Math.floor(value * (1 + SLACK));

/** Every row × target ÷ from. */
export function rescale(weights: Weights, target: Weight, from: number, argument: string): (Weight | null)[] {
  if (!(from > 0))
    refuse(`${argument === "from" ? "adds" : "add"} up to 0, and nothing can be scaled from 0`, argument);
  return weights.map((row) => (row === null ? null : weight((row * target) / from)));
}

/**
 * Each weight on the coarsest of the scale's steps that moves it by no more than `shift` of itself. Half a step rounds
 * away from 0. Where even the finest moves it further, no scale here can show it, and it stays as it is.
 */
export function onSteps(weights: Weights, steps: readonly number[], shift: Ratio): (Weight | null)[] {
  const sorted = [...steps].sort((a, b) => b - a);
  return weights.map((row) => (row === null ? null : weight(onStep(row, sorted, shift))));
}

function onStep(value: number, steps: readonly number[], shift: number): number {
  for (const step of steps) {
    const rounded = times(nearestWhole(value / step), step);
    if (atMost(Math.abs(rounded - value), shift * value)) return rounded;
  }
  return value;
}

const nearestWhole = (value: number): number => Math.floor(value * (1 + SLACK) + 0.5);
/** 3 × 0.1 is 0.3: a step has few digits, and so has its multiple. */
const times = (count: number, step: number): number => Number((count * step).toPrecision(12));

/** How many times the formula the stock allows, and the row that limits it (counted from 1). */
export function stockLimit(weights: Weights, stock: readonly (number | null)[]): { factor: number; row: number } {
  if (stock.every((row) => row === null))
    refuse("is blank throughout; enter the stock of at least one ingredient", "stock");
  let limit: { factor: number; row: number } | undefined;
  weights.forEach((needed, index) => {
    const there = stock[index] ?? null;
    if (there === null || needed === null || needed <= 0) return;
    const factor = there / needed;
    if (limit === undefined || factor < limit.factor * (1 - SLACK)) limit = { factor, row: index + 1 };
  });
  return limit ?? refuse("stands only beside rows that need nothing; put it beside the ingredients it is of", "stock");
}

/** Dough to mix for pieces of a weight; losses divide, one after the other. */
export function doughFor(pieces: number, each: Weight, bakeLoss: Ratio, handlingLoss: Ratio): Weight {
  return weight((pieces * each) / (1 - bakeLoss) / (1 - handlingLoss));
}

/** More mixes or pieces than this are a slip of unit. */
const MAX_COUNTED = 1e6;

/** Whole pieces of a scaling weight after the handling loss, and the dough left over. */
export function wholePieces(dough: Weight, each: Weight, handlingLoss: Ratio): { pieces: number; left: Weight } {
  const usable = dough * (1 - handlingLoss);
  if (usable / each > MAX_COUNTED)
    refuse(
      `is ${shownWeight(each)}, and ${shownWeight(dough)} of dough would be over a million pieces; are both in one unit?`,
      "weight",
    );
  const pieces = countDown(usable / each);
  const left = usable - pieces * each;
  return { pieces, left: weight(atMost(usable, pieces * each) ? 0 : left) };
}

/** Equal mixes within the mixer's limits. */
export function mixes(dough: Weight, limit: Weight, least: Weight): { mixes: number; each: Weight } {
  if (!atMost(least, limit))
    refuse(
      `is ${shownApart(least, limit, 2)}, above the limit of ${shownWeight(limit)}; enter the least dough the mixer takes, or leave it out`,
      "mixer_least",
    );
  if (dough === 0) return { mixes: 0, each: weight(0) };
  if (dough / limit > MAX_COUNTED)
    refuse(
      `is ${shownWeight(limit)}, and ${shownWeight(dough)} of dough would be over a million mixes; are both in one unit?`,
      "mixer_limit",
    );
  const number = countUp(dough / limit);
  const each = dough / number;
  if (!atMost(least, each)) {
    const fewer = (number - 1) * limit;
    const fits = [fewer > 0 ? shownWeight(fewer, "at most") : "", shownWeight(number * least, "at least")].filter(
      (one) => one !== "",
    );
    refuse(
      `is ${shownWeight(dough)}: ${number === 1 ? "one mix" : `${number} equal mixes of ${shownWeight(each)}`} would be below the least of ${shownWeight(least)}; ${fits.join(" or ")} would fit`,
      "dough",
    );
  }
  return { mixes: number, each: weight(each) };
}
