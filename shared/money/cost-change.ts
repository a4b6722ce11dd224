// What another price of one ingredient, or of all that one supplier brings, does to formulas, through all formulas inside.
import { refuse } from "../base/refusal.ts";
import { quote } from "../base/show.ts";
import { foldText } from "../base/words.ts";
import { findIngredient, type Larder } from "../larder/larder.ts";
import { type Bought, boughtFor, productOf, readMakings } from "./breakdown.ts";
import { gramCost } from "./cost.ts";
import type { PackTerms } from "./pack.ts";

/**
 * For each cell of parts how many times its ingredients cost what they cost now; null where nothing is made, or nothing in it has
 * a price. What has none counts for nothing, now and then.
 */
export function costChanges(
  cells: readonly (string | null)[],
  larder: Larder,
  tried: string,
  times: number,
  terms: PackTerms,
): (number | null)[] {
  const isTried = triedIn(larder, tried);
  const bought = boughtFor(readMakings(cells));
  const prices = new Map<string, number>();
  const priceOf = (name: string): number => {
    const known = prices.get(name);
    if (known !== undefined) return known;
    const price = gramCost(name, larder, terms);
    const cost = typeof price === "number" ? price : 0;
    prices.set(name, cost);
    return cost;
  };
  const sum = (some: Bought, factor: (name: string) => number): number =>
    [...some.values()].reduce((all, { name, grams }) => all + grams * priceOf(name) * factor(name), 0);
  return cells.map((cell) => {
    const product = productOf(cell);
    if (product === null) return null;
    const inside = bought(product);
    const now = sum(inside, () => 1);
    return now === 0 ? null : sum(inside, (name) => (isTried(name) ? times : 1)) / now;
  });
}

/** Whether a name is the ingredient that is tried, by any of its names, or comes from the supplier that is. */
function triedIn(larder: Larder, tried: string): (name: string) => boolean {
  const wanted = foldText(tried);
  const suppliers = new Set(
    larder.rows.map(({ cell }) => foldText(String(cell("supplier") ?? ""))).filter((one) => one !== ""),
  );
  const row = findIngredient(larder, tried)?.row ?? null;
  if (row === null && !suppliers.has(wanted))
    return refuse(`is ${quote(tried)}, which is no ingredient and no supplier in the larder`, "tried");
  const rows = new Map<number, string>(
    larder.rows.map(({ row: at, cell }) => [at, foldText(String(cell("supplier") ?? ""))]),
  );
  return (name) => {
    const at = findIngredient(larder, name)?.row ?? null;
    return at !== null && (row !== null ? at === row : rows.get(at) === wanted);
  };
}
