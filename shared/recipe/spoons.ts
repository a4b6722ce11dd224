import { refuse } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { quote, showNumber } from "../base/show.ts";
import { fromGrams, type Grams, gramsIn } from "../base/units.ts";
import type { CupSystem } from "../base/volumes.ts";
import type { Ingredient } from "../larder/ingredient.ts";
import { volumeWeight } from "../larder/ingredient-measures.ts";

/** A set of spoons is near enough when it misses the weight by this much. */
const NEAR = 0.02;
/** By how many percent it is off is said above this. */
const SAID_ABOVE = 1;

/** A way to measure: whole measures and a fraction of one, and how often something is filled. */
type Filling = { readonly value: number; readonly says: string; readonly fills: number };

const filling = (whole: number, [value, sign]: readonly [number, string]): Filling => ({
  value: whole + value,
  says: [whole > 0 || value === 0 ? String(whole) : "", sign].filter((part) => part !== "").join(" "),
  fills: whole + (value > 0 ? 1 : 0),
});
const NONE: readonly [number, string] = [0, ""];
const QUARTERS = [NONE, [1 / 4, "1/4"], [1 / 2, "1/2"], [3 / 4, "3/4"]] as const;
/** The cups of a set: quarters and thirds. */
const CUPS = [...QUARTERS, [1 / 3, "1/3"], [2 / 3, "2/3"]] as const;
const EIGHTHS = [...QUARTERS, [1 / 8, "1/8"], [3 / 8, "3/8"], [5 / 8, "5/8"], [7 / 8, "7/8"]] as const;

/** The fillings just below and just above an amount. */
function around(amount: number, parts: readonly (readonly [number, string])[]): Filling[] {
  const whole = Math.max(0, Math.floor(amount + 1e-9));
  return [whole - 1, whole, whole + 1]
    .filter((one) => one >= 0)
    .flatMap((one) => parts.map((part) => filling(one, part)));
}

type Set = { readonly grams: number; readonly says: string; readonly fills: number };

/**
 * A weight in cups, tablespoons and teaspoons, such as "1 cup + 2 tbsp": the fewest fillings that come within 2 %, else the
 * nearest with its error. Refuses an ingredient the larder does not weigh by volume, or weighs as a span.
 */
export function inSpoons(weight: Grams, ingredient: Ingredient, system: CupSystem): string {
  const [tsp, tbsp, cup] = (["tsp", "tbsp", "cup"] as const).map((unit) => {
    const measure = volumeWeight(ingredient, unit, system);
    if (measure === undefined) {
      return refuse(
        `is ${quote(ingredient.name)}, which the larder has no cup or spoon of; give its row measures`,
        "ingredient",
      );
    }
    if (measure.least < measure.most) {
      const span = `${showNumber(measure.least)} g to ${showNumber(measure.most)} g a ${unit}`;
      return refuse(
        `is ${quote(ingredient.name)}, which weighs ${span} from one brand to the next; weigh it`,
        "ingredient",
      );
    }
    return measure.least as number;
  }) as [number, number, number];
  if (weight === 0) return "0 tsp";
  const least = Math.round(cup / tbsp / 4);
  const sets: Set[] = [];
  const add = (cups: Filling | undefined, spoons: number, small: Filling | undefined) => {
    const parts = [
      cups && cups.value > 0 ? `${cups.says} ${cups.value > 1 ? "cups" : "cup"}` : "",
      spoons > 0 ? `${spoons} tbsp` : "",
      small && small.value > 0 ? `${small.says} tsp` : "",
    ].filter((part) => part !== "");
    const held = (cups?.value ?? 0) * cup + spoons * tbsp + (small?.value ?? 0) * tsp;
    if (parts.length > 0)
      sets.push({ grams: held, says: parts.join(" + "), fills: (cups?.fills ?? 0) + spoons + (small?.fills ?? 0) });
  };
  const none = filling(0, NONE);
  const perSpoon = Math.round(tbsp / tsp);
  for (const cups of [none, ...around(weight / cup, CUPS)]) {
    const afterCups = weight - cups.value * cup;
    if (cups.value > 0 && afterCups > cup / 2) continue;
    const most = Math.min(Math.ceil(afterCups / tbsp), cups.value > 0 ? 2 * least : 4 * least);
    for (let spoons = 0; spoons <= Math.max(0, most); spoons++) {
      const left = afterCups - spoons * tbsp;
      const parts = cups.value === 0 && spoons === 0 ? EIGHTHS : QUARTERS;
      // Three teaspoons are a tablespoon, four in Australia; of more than that none are near.
      const smalls = left / tsp > perSpoon + 1 ? [] : around(left / tsp, parts);
      for (const small of [none, ...smalls]) {
        if (small.value < perSpoon) add(cups, spoons, small);
      }
    }
  }
  return nameSets(sets, weight);
}

function nameSets(sets: readonly Set[], weight: number): string {
  const miss = ({ grams }: Set) => Math.abs(grams / weight - 1);
  const near = sets.filter((one) => miss(one) <= NEAR);
  const better = (one: Set, other: Set) => one.fills - other.fills || miss(one) - miss(other);
  const [best] = [...(near.length > 0 ? near : sets)].sort(
    near.length > 0 ? better : (one, other) => miss(one) - miss(other),
  );
  if (best === undefined) return refuse("is too small for a spoon", "grams");
  const error = (best.grams / weight - 1) * 100;
  if (atMost(Math.abs(error), SAID_ABOVE)) return best.says;
  return `${best.says} (${error > 0 ? "+" : "-"}${showNumber(Math.abs(error), Math.abs(error) < 10 ? 1 : 0)} %)`;
}

/** A weight in pounds and ounces, in whole, half or quarter ounces, the coarsest that comes within 2 %. */
export function inPoundsAndOunces(weight: Grams): string {
  if (weight === 0) return "0 oz";
  const sets = [1, 2, 4].map((parts): Set => {
    const ounces = Math.max(1, Math.round(fromGrams(weight, "oz") * parts)) / parts;
    const pounds = Math.floor(ounces / 16);
    const [whole, rest] = [Math.floor(ounces - pounds * 16), (ounces % 1) as number];
    const sign = EIGHTHS.find(([value]) => Math.abs(value - rest) < 1e-9) ?? NONE;
    const small = filling(whole, sign);
    const says = [pounds > 0 ? `${pounds} lb` : "", small.value > 0 ? `${small.says} oz` : ""].filter(
      (part) => part !== "",
    );
    return { grams: ounces * gramsIn("oz"), says: says.join(" "), fills: parts };
  });
  return nameSets(sets, weight);
}
