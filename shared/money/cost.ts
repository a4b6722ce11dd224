import { isFault, Refusal, refuse } from "../base/refusal.ts";
import { type Grams, gramsIn, type Ratio, ratio, type Weight, type WeightUnit } from "../base/units.ts";
import { findIngredient, type Larder } from "../larder/larder.ts";
import { type PackTerms, packWeight } from "./pack.ts";

/**
 * What a unit of weight costs ready for use: the price of a pack over what is usable of it. A price per usable pound is
 * never below the price per pound bought.
 */
export const unitCost = (price: number, pack: Grams, usable: Ratio, unit: WeightUnit): number =>
  (price * gramsIn(unit)) / (pack * usable);

/** A cost in the larder's currency, and why there is none. */
export type Cost = readonly [cost: number | null, remark: string | null];

/** The cost of every row by the larder's prices; a row that has none says why, and the others still count. */
export function costs(
  names: readonly (string | null)[],
  weights: readonly (Weight | null)[],
  larder: Larder,
  terms: PackTerms,
): Cost[] {
  return weights.map((weight, index): Cost => {
    if (weight === null) return [null, null];
    const name = names[index] ?? null;
    if (name === null) return refuse("is blank though the row has an amount; enter its name", "ingredients", index + 1);
    const each = gramCost(name, larder, terms);
    return typeof each === "string" ? [null, each] : [weight * each, null];
  });
}

/** What a gram or another unit of an ingredient costs, or why that is not known. */
export function gramCost(name: string, larder: Larder, terms: PackTerms): number | string {
  try {
    const ingredient = findIngredient(larder, name);
    // Plain water needs no larder row; it has no price either.
    if (ingredient === undefined || (ingredient.row === null && ingredient.kind !== "water")) return "not in larder";
    const { price, pack, usable } = ingredient;
    if (price === null) return "no price";
    if (pack === null) return "no pack size";
    const weight = packWeight(pack, ingredient.name, larder, terms);
    if (isFault(weight)) return `pack ${weight.says}`;
    return usable === 0 ? "usable is 0" : unitCost(price, weight, usable ?? ratio(1), terms.unit ?? "g");
  } catch (error) {
    // One larder cell that cannot be read ("n/a" for a price) is told in its row; it must not take the total with it.
    if (!(error instanceof Refusal)) throw error;
    return error.faults.map(({ says }) => says).join("; ");
  }
}
