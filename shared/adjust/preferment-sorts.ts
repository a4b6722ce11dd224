// What is usual for each sort of preferment, and what is said where it is not.
import { showNumber, shownShare } from "../base/show.ts";
import { type Formula, type Row, SORTS, type Sort, shareOf } from "./formula.ts";

/** Hydrations a preferment is usually made at: Fundamental Techniques of Classic Bread Baking, guide to preferments. */
export const USUAL: Readonly<Record<Sort, readonly [low: number, usual: number, high: number]>> = {
  poolish: [1, 1, 1],
  biga: [0.5, 0.55, 0.6],
  sponge: [0.5, 0.62, 0.85],
  levain: [0.5, 1, 1.25],
};
/** A little fresh yeast ripens it in 12 to 16 hours: poolish and biga of published formulas, 0.1 to 0.2 % of its flour (King Arthur professional formulas). */
export const USUAL_YEAST = 0.002;

/** A preferment as it is now; `yeast` is not known of one in a row. */
export type Now = {
  readonly sort: Sort;
  readonly share: number;
  readonly hydration: number;
  readonly yeast: number | null;
};

/** By the word of its type; a starter, a sour or a sourdough is a levain. */
export const sortOf = ({ type }: Row): Sort => SORTS.find((one) => type.toLowerCase().includes(one)) ?? "levain";

export function unusual(sort: Sort, hydration: number): string[] {
  const [low, , high] = USUAL[sort];
  if (hydration >= low && hydration <= high) return [];
  const span = low === high ? shownShare(low, 0) : `${showNumber(low * 100, 0)} to ${shownShare(high, 0)}`;
  return [`A ${sort} is usually made at ${span}.`];
}

/** Levain and yeast raise in their own time. */
export function raised({ rows }: Formula, sort: Sort, now: Now | null): string[] {
  const hasYeast = shareOf(rows, "yeast") > 0;
  if (sort === "levain" && hasYeast && now?.sort !== "levain")
    return ["The yeast stays beside the levain. Take it down under Time and temperature, or leave it as a help."];
  if (sort !== "levain" && !hasYeast)
    return [`Nothing but the ${sort} raises this dough: put yeast into the formula first.`];
  return [];
}
