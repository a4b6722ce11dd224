// What another price of one ingredient, or of all that one supplier brings, does to formulas, through all formulas inside
// and with the parts that are counted, such as bags.
import { refuse } from "../base/refusal.ts";
import { quote } from "../base/show.ts";
import { foldText } from "../base/words.ts";
import { findIngredient, type Larder } from "../larder/larder.ts";
import { type Bought, boughtFor, productOf, readMakings } from "./breakdown.ts";
import { gramCost } from "./cost.ts";
import type { PackTerms } from "./pack.ts";

/**
 * For each cell of parts how many times its ingredients cost what they cost now; null where nothing is made, or nothing in it has
 * a price. What has none counts for nothing, now and then. Where parts are counted, their cost is among it: `counted` says it.
 */
export function costChanges(
  {
    cells,
    counted = [],
  }: { readonly cells: readonly (string | null)[]; readonly counted?: readonly (string | null)[] },
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
  const weighedChange = (product: string): number | null => {
    const inside = bought(product);
    const now = sum(inside, () => 1);
    return now === 0 ? null : sum(inside, (name) => (isTried(name) ? times : 1)) / now;
  };
  return cells.map((cell, at) => {
    const product = productOf(cell);
    if (product === null) return null;
    const change = weighedChange(product);
    const costs = readCounted(counted[at] ?? null);
    const now = costs.reduce((all, { cost }) => all + cost, 0);
    if (!(now > 0)) return change;
    const factorOf = (name: string) => (name === "" ? (change ?? 1) : isTried(name) ? times : 1);
    return costs.reduce((all, { name, cost }) => all + cost * factorOf(name), 0) / now;
  });
}

/** Lines of name and cost with a tab between; one of a cost alone is about all that is weighed. */
const readCounted = (cell: string | null): readonly { readonly name: string; readonly cost: number }[] =>
  (cell ?? "").split("\n").flatMap((line) => {
    const [name = "", cost = ""] = line.includes("\t") ? line.split("\t").map((one) => one.trim()) : ["", line];
    return Number(cost) > 0 ? [{ name, cost: Number(cost) }] : [];
  });

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
