import { refuse } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { quote, shownShare, shownWeight } from "../base/show.ts";
import { type Ratio, ratio, type Weight, weight } from "../base/units.ts";
import { allFlour } from "../formula/formula.ts";
import type { Ingredient } from "../larder/ingredient.ts";
import { type Kind, type KindCell, kindsOf } from "../larder/kinds.ts";
import { eachRow, findIngredient, type Larder, requireIngredient, requireIngredients } from "../larder/larder.ts";

type Weights = readonly (Weight | null)[];
type Kinds = readonly (Kind | null)[];
type Names = readonly (string | null)[];

/** The kinds of the rows with a weight where a column of kinds was given; without one no row has a kind. */
export function kindsGiven(weights: Weights, kinds: readonly (KindCell | null)[], names: Names): Kinds {
  if (kinds.every((one) => one === null)) return weights.map(() => null);
  return kindsOf(weights, kinds, "kinds", names);
}

/** Whether a formula is still empty: its names may stand there before its weights. */
export const isUnweighed = (weights: Weights): boolean => weights.every((row) => row === null);

/** What can be asked of an ingredient: a part of its weight, or its energy in kcal. */
export const ASKED = {
  water: ["moisture"],
  fat: [],
  saturates: ["saturated fat"],
  carbohydrate: ["carb"],
  sugar: [],
  protein: [],
  fibre: ["fiber"],
  salt: [],
  energy: ["kcal", "calorie"],
} as const satisfies Readonly<Record<string, readonly string[]>>;
export type Content = keyof typeof ASKED;

/** A figure of an ingredient, refused by row when the larder has none. */
function known(ingredient: Ingredient, content: Content, argument: string, row?: number): number {
  const figure = ingredient[content];
  if (figure !== null) return figure;
  const plainYeast = /^(dry |dried )?yeast$/i.test(ingredient.name.trim());
  const instead = plainYeast
    ? "; say fresh, instant or active dry yeast"
    : `; give its larder row a figure under "${content}"`;
  return refuse(`is ${quote(ingredient.name)}, whose ${content} is not known${instead}`, argument, row);
}

/**
 * Grams (kcal for energy) of a part in each row; null where the row has no weight. A kind speaks for a row whose name the
 * larder lacks: water and ice are water, salt is table salt, flour and the flour of a preferment are plain flour.
 */
export function contents(
  names: Names,
  weights: Weights,
  content: Content,
  larder: Larder,
  kinds: Kinds,
): (number | null)[] {
  const spokenFor = (index: number) => {
    const kind = kinds[index] ?? null;
    const name = names[index] ?? null;
    if (kind === null) return null;
    const inLarder = name === null ? undefined : findIngredient(larder, name);
    if (kind.word === "preferment") return inLarder === undefined || inLarder[content] === null ? kind : null;
    return saysItsWater(kind) && inLarder === undefined ? kind : null;
  };
  const byKind = eachRow(weights, (row, index) => (row === null ? null : spokenFor(index)));
  const ingredients = requireIngredients(larder, names, (index) => weights[index] !== null && byKind[index] === null);
  return eachRow(weights, (row, index) => {
    if (row === null) return null;
    const kind = byKind[index] ?? null;
    const ingredient = ingredients[index] ?? null;
    if (kind !== null) return row * ofKind(kind, content, larder, index);
    return ingredient === null ? null : row * known(ingredient, content, "ingredients", index + 1);
  });
}

/** What all rows hold together of each part, side by side; blank for a blank part, no row while nothing is weighed. */
export function totals(
  names: Names,
  weights: Weights,
  columns: readonly (Content | null)[],
  larder: Larder,
  kinds: Kinds,
): (number | null)[][] {
  if (isUnweighed(weights)) return [];
  return [eachRow(columns, (part) => (part === null ? null : total(contents(names, weights, part, larder, kinds))))];
}

function ofKind(kind: Kind, content: Content, larder: Larder, index: number): number {
  const of = (name: string) => known(requireIngredient(larder, name), content, "ingredients", index + 1);
  if (kind.word === "salt") return of("salt");
  const inFlour = kind.flour > 0 ? kind.flour * of("flour") : 0;
  return inFlour + (content === "water" ? kind.water : 0);
}

/**
 * Water of each row that counts towards hydration: plain water whole, a preferment's own, none of the flour's or the
 * salt's; everything else by the larder. Null where the row has no weight.
 */
export function waters(names: Names, weights: Weights, kinds: Kinds, larder: Larder): (Weight | null)[] {
  const needsLarder = (index: number) => weights[index] !== null && !saysItsWater(kinds[index] ?? null);
  const ingredients = requireIngredients(larder, names, needsLarder);
  return eachRow(weights, (row, index) => {
    if (row === null) return null;
    const ingredient = ingredients[index] ?? null;
    const share =
      ingredient === null ? (kinds[index]?.water ?? 0) : known(ingredient, "water", "ingredients", index + 1);
    return weight(row * share);
  });
}

/** Whether the kind alone tells a row's water. */
export const saysItsWater = (kind: Kind | null): boolean =>
  kind !== null && ["flour", "water", "ice", "salt", "preferment"].includes(kind.word);

function flourOrRefuse(weights: Weights, kinds: Kinds): Weight {
  const flour = allFlour(weights, kinds);
  if (!(flour > 0)) {
    refuse("hold no flour; hydration is water over flour, so a flour row (or a preferment) needs a weight", "weights");
  }
  return flour;
}

const total = (values: readonly (number | null)[]) => values.reduce<number>((sum, value) => sum + (value ?? 0), 0);

/** Effective hydration: the water of everything but flour, over all flour. */
export function hydrationOf(names: Names, weights: Weights, kinds: Kinds, larder: Larder): Ratio {
  const flour = flourOrRefuse(weights, kinds);
  return ratio(total(waters(names, weights, kinds, larder)) / flour);
}

/** Binary arithmetic leaves a dust of water where the others bring exactly what is wanted. */
const DUST = 1e-9;

/** All the plain water that brings a dough to an effective hydration; its own water and ice rows are left out. */
export function plainWater(names: Names, weights: Weights, kinds: Kinds, wanted: Ratio, larder: Larder): Weight {
  const flour = flourOrRefuse(weights, kinds);
  const others = weights.map((row, index) => (isPlainWater(kinds[index] ?? null) ? null : row));
  const brought = total(waters(names, others, kinds, larder));
  const water = wanted * flour - brought;
  if (water < -DUST * flour) {
    refuse(
      `is ${shownShare(wanted)}, and without plain water the dough has ${shownShare(brought / flour)} already: ${shownWeight(-water)} too much. Enter a higher one, or take that much water out of the other rows`,
      "hydration",
    );
  }
  return weight(Math.max(0, water));
}

const isPlainWater = (kind: Kind | null) => kind?.word === "water" || kind?.word === "ice";

export const KEPT = { solids: ["dry matter"], water: [], fat: [], sugar: [] } as const;
export type SwapGoal = keyof typeof KEPT;

/** Below this share of its weight an ingredient has none of a part worth exchanging (common practice, no source). */
const NONE = 0.01;

/** No one weighs more than this times what is replaced (common practice, no source). */
const MAX_TIMES = 3;

/** The weight of another ingredient that keeps a part of this one, and the plain water that balances the two. */
export function swap(
  amount: Weight,
  from: string,
  to: string,
  goal: SwapGoal,
  larder: Larder,
): { weight: Weight; water: Weight } {
  const old = sideOf(from, "from", goal, larder);
  const other = sideOf(to, "to", goal, larder);
  const needed = (amount * old.share) / other.share;
  const water = amount * old.water - needed * other.water;
  if (!atMost(needed, MAX_TIMES * amount)) {
    refuse(
      `is ${quote(to)}, of which ${shownWeight(needed)} would replace ${shownWeight(amount)}, more than ${MAX_TIMES} times as much; keep a part that both are rich in`,
      "to",
    );
  }
  return { weight: weight(needed), water: weight(water) };
}

function sideOf(name: string, argument: string, goal: SwapGoal, larder: Larder): { water: number; share: number } {
  const ingredient = requireIngredient(larder, name, argument);
  const water = known(ingredient, "water", argument);
  const share = goal === "solids" ? 1 - water : known(ingredient, goal, argument);
  if (share < NONE) {
    refuse(`is ${quote(name)}, which has ${shownShare(share)} ${goal}; keep something that both have`, argument);
  }
  return { water, share };
}
