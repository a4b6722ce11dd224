import { showNumber } from "../base/show.ts";
import { type Weight, weight } from "../base/units.ts";
import type { Ingredient } from "../larder/ingredient.ts";
import type { KindWord } from "../larder/kind-words.ts";
import type { Kind } from "../larder/kinds.ts";
import { eachRow, type Larder, requireIngredients } from "../larder/larder.ts";

export type ExtraWater = { readonly water: Weight | null; readonly remark: string | null };

/** Kinds that take no water of their own beyond the formula's. */
const TAKES_NONE: readonly (KindWord | "preferment")[] = [
  "flour",
  "water",
  "ice",
  "salt",
  "sugar",
  "fat",
  "preferment",
];
/** From this water on an ingredient is wet: it brings its water along (common practice, no source). */
const WET = 0.25;

/**
 * The extra water each dry addition asks for, by the larder's grams per gram; a remark where the figure is rough or there is
 * none. There is no figure for fibre as a class: some fibres take many times their weight, and inulin lowers what a dough takes.
 */
export function extraWaters(
  names: readonly (string | null)[],
  weights: readonly (Weight | null)[],
  larder: Larder,
  kinds: readonly (Kind | null)[],
): ExtraWater[] {
  const takesNone = (index: number) => TAKES_NONE.some((one) => one === kinds[index]?.word);
  const ingredients = requireIngredients(larder, names, (index) => weights[index] !== null && !takesNone(index));
  return eachRow(weights, (row, index): ExtraWater => {
    const ingredient = ingredients[index] ?? null;
    if (row === null) return { water: null, remark: null };
    return ingredient === null ? { water: weight(0), remark: null } : extraOf(ingredient, row, kinds[index] ?? null);
  });
}

function extraOf(ingredient: Ingredient, row: Weight, kind: Kind | null): ExtraWater {
  const { extraWater, water } = ingredient;
  if (extraWater !== null) {
    const remark = ingredient.extraWaterRough
      ? `rough figure, ${showNumber(extraWater)} g per g: try it, and enter your own under "extra water" in the larder`
      : null;
    return { water: weight(row * extraWater), remark };
  }
  const word = kind?.word ?? ingredient.kind;
  const none = TAKES_NONE.some((one) => one === word) || (water !== null && water >= WET);
  return none ? { water: weight(0), remark: null } : { water: null, remark: "no figure" };
}
