import { refuse } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { showNumber, shownApart } from "../base/show.ts";
import type { Weight } from "../base/units.ts";
import type { LabelLaw } from "../enrichment/protein.ts";
import { nameKey } from "../larder/built-in-larder.ts";
import { eachRow } from "../larder/larder.ts";
import { allergensOfRows, requireNamed } from "./allergens.ts";
import { containsLine, entries, isWaterOf } from "./list-names.ts";
import type { Sources } from "./own-formulas.ts";

type Names = readonly (string | null)[];
type Weights = readonly (Weight | null)[];

/** Added water of at most 5 % of the finished weight may be left out (Regulation (EU) 1169/2011, annex VII A.1). */
const WATER_LEFT_OUT = 0.05;

/**
 * The ingredient list of a product, by falling weight as it goes in (Regulation (EU) 1169/2011, article 18; 21 CFR
 * 101.4(a)); equal weights keep their order. In the EU and the UK added water weighs what of it is left in the finished product.
 */
export function labelList(
  names: Names,
  weights: Weights,
  sources: Sources,
  law: LabelLaw,
  finished: Weight | null,
): string {
  const isUsed = (index: number) => (weights[index] ?? 0) > 0;
  const rowIngredients = requireNamed(sources, names, isUsed);
  const sum = addedUp(weights);
  if (sum === 0) return "";
  if (finished !== null) nearSum(finished, sum);
  const entriesByName = new Map<string, { text: string; weight: number; isWater: boolean }>();
  const held = allergensOfRows(sources, law);
  const entryOf = entries(sources, law);
  const used = names.map((name, index) => (isUsed(index) ? name : null));
  const allergens = eachRow(used, (name, index) => (name === null ? [] : held(name, index)));
  const texts = used.map((name) => (name === null ? "" : entryOf(name)));
  used.forEach((name, index) => {
    if (name === null) return;
    const isWater = isWaterOf(rowIngredients[index] ?? null);
    const key = isWater ? "water" : nameKey(texts[index] ?? "");
    const before = entriesByName.get(key);
    const weight = (before?.weight ?? 0) + (weights[index] ?? 0);
    entriesByName.set(key, { text: before?.text ?? texts[index] ?? "", weight, isWater });
  });
  const water = entriesByName.get("water");
  if (water?.isWater && law !== "US") {
    if (finished === null)
      return refuse(
        `is blank; where water goes in, ${law} lists need the weight of the finished product`,
        "finished_weight",
      );
    water.weight = finished - (sum - water.weight);
    if (atMost(water.weight, WATER_LEFT_OUT * finished)) entriesByName.delete("water");
  }
  const list = [...entriesByName.values()].sort((a, b) => b.weight - a.weight).map(({ text }) => text);
  return [list.join(", "), ...(law === "US" ? containsLine(allergens.flat()) : [])].join(". ");
}

export const addedUp = (weights: Weights): number => weights.reduce((sum: number, one) => sum + (one ?? 0), 0);

/** Nothing that is baked or dried keeps less of its weight. */
const MIN_FINISHED = 0.1;

/** A finished weight lies below the ingredients' and not in kilograms beside their grams. */
export function nearSum(finished: Weight, sum: number): void {
  if (!atMost(MIN_FINISHED * sum, finished))
    refuse(
      `is ${shownApart(finished, MIN_FINISHED * sum, 2)}, less than a tenth of the ingredients' ${showNumber(sum)}; enter both in one unit`,
      "finished_weight",
    );
  if (atMost(finished, sum)) return;
  refuse(
    `is ${shownApart(finished, sum, 2)}, more than the ingredients' ${showNumber(sum)}; enter both in one unit`,
    "finished_weight",
  );
}
