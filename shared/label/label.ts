import { refuse } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { showNumber, shownApart } from "../base/show.ts";
import type { Weight } from "../base/units.ts";
import type { LabelLaw } from "../enrichment/protein.ts";
import { nameKey } from "../larder/built-in-larder.ts";
import type { Ingredient } from "../larder/ingredient.ts";
import { eachRow, type Larder, requireIngredients } from "../larder/larder.ts";
import type { Allergen } from "./allergen-list.ts";
import { allergensOf, isPlainWater, isWaterKind } from "./allergens.ts";
import { partsOf } from "./made-of.ts";

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
  larder: Larder,
  law: LabelLaw,
  finished: Weight | null,
): string {
  const isUsed = (index: number) => (weights[index] ?? 0) > 0;
  const rowIngredients = requireIngredients(larder, names, isUsed);
  const sum = addedUp(weights);
  if (sum === 0) return "";
  if (finished !== null) nearSum(finished, sum);
  const entries = new Map<string, { text: string; weight: number; isWater: boolean }>();
  const texts = eachRow(rowIngredients, (one, index) => (one === null ? "" : entryOf(one, law, index)));
  rowIngredients.forEach((one, index) => {
    if (one === null) return;
    const isWater = isWaterKind(one.kind) || isPlainWater(one);
    const key = isWater ? "water" : nameKey(texts[index] ?? "");
    const before = entries.get(key);
    const weight = (before?.weight ?? 0) + (weights[index] ?? 0);
    entries.set(key, { text: before?.text ?? texts[index] ?? "", weight, isWater });
  });
  const water = entries.get("water");
  if (water?.isWater && law !== "US") {
    if (finished === null)
      return refuse(
        `is blank; where water goes in, ${law} lists need the weight of the finished product`,
        "finished_weight",
      );
    water.weight = finished - (sum - water.weight);
    if (atMost(water.weight, WATER_LEFT_OUT * finished)) entries.delete("water");
  }
  return [...entries.values()]
    .sort((a, b) => b.weight - a.weight)
    .map(({ text }) => text)
    .join(", ");
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

/** An ingredient as the list names it: its label name, what it is made of, its allergens in capitals. */
function entryOf(ingredient: Ingredient, law: LabelLaw, index: number): string {
  const { labelName, name, madeOf, row } = ingredient;
  const allergens = allergensOf(ingredient, law, "ingredients", index);
  const parts = madeOf === null ? "" : ` (${namesOf(madeOf, row).join(", ")})`;
  let text = `${labelName ?? (isPlainWater(ingredient) ? "water" : name)}${parts}`;
  const missing: string[] = [];
  for (const { species, spellings } of allergens.flatMap(withGroup)) {
    let isThere = false;
    text = text.replace(new RegExp(`(?<!\\p{L})(?:${spellings.map(literal).join("|")})s?(?!\\p{L})`, "giu"), (word) => {
      isThere = true;
      return word.toUpperCase();
    });
    if (!isThere && !missing.includes(species)) missing.push(species);
  }
  return missing.length === 0 ? text : `${text} (${missing.join(", ").toUpperCase()})`;
}

const literal = (text: string) => text.replace(/[.*+?^${}|[\]\\]/g, "\\$&");

/** A fish is called fish beside its own name, and so are crustaceans and molluscs. */
function withGroup(one: Allergen): Allergen[] {
  const isOpen = one.group === "fish" || one.group === "crustaceans" || one.group === "molluscs";
  const group = { ...one, species: one.group, spellings: [one.group.replace(/s$/, "")] };
  return isOpen && one.species !== one.group ? [group, one] : [one];
}

/** The parts of a compound, by falling share where every part has one. */
function namesOf(madeOf: string, row: number | null): string[] {
  const parts = partsOf(madeOf, row);
  if (parts.every(({ share }) => share !== null)) parts.sort((a, b) => (b.share ?? 0) - (a.share ?? 0));
  return parts.map(({ name }) => name);
}
