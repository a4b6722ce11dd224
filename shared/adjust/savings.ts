// What changes would bring in money, the cheapest first: every swap, a little less of what is dear, a little more water.
import type { Larder } from "../larder/larder.ts";
import { applyWish, type Wish } from "./changes.ts";
import { type Formula, plainHydration, shareOf } from "./formula.ts";
import { billOf, doughOf, type Money } from "./money.ts";
import { orNull } from "./parts.ts";
import { offersFor } from "./swap.ts";
import { PLAIN } from "./water.ts";

export type Saving = {
  readonly wish: Wish;
  readonly label: string;
  /** Ingredients of all of it, before and after, for as much dough as now. */
  readonly before: number;
  readonly after: number;
};

/** So much less of fat or sugar, and so much more water, is tried: common practice, no source. */
const LESS = 0.1;
const MORE_WATER = 0.02;

type Offer = Pick<Saving, "wish" | "label">;

function offersOf(formula: Formula): Offer[] {
  const { rows } = formula;
  const less = (["fat", "sugar"] as const).flatMap((word): Offer[] => {
    const now = shareOf(rows, word);
    const wanted = `${100 * now * (1 - LESS)}`;
    return now > 0 ? [{ label: `A tenth less ${word}`, wish: { change: word, values: { wanted } } }] : [];
  });
  const wanted = `${100 * (plainHydration(rows) + MORE_WATER)}`;
  const wetter = { label: "2 % more water", wish: { change: "hydration", values: { counted: PLAIN, wanted } } };
  const swaps = offersFor(formula).map(({ label }) => ({
    label,
    wish: { change: "swap", values: { swap: label, part: "100" } },
  }));
  return [...swaps, ...less, wetter];
}

/** For as much dough as now. A change without a price for what is new is left out, as its cost is not known. */
export function savingsOf(formula: Formula, money: Money, larder: Larder): readonly Saving[] {
  const before = billOf(formula, money, larder);
  if (before === null) return [];
  // A change that is refused saves nothing.
  return offersOf(formula)
    .flatMap(({ label, wish }): Saving[] => {
      const after = orNull(() => applyWish(formula, wish, larder).formula);
      const bill = after === null ? null : billOf(after, money, larder);
      if (after === null || bill === null || bill.unpriced.length > before.unpriced.length) return [];
      return [{ wish, label, before: before.cost, after: (bill.cost / doughOf(after)) * doughOf(formula) }];
    })
    .sort((one, other) => one.after - other.after);
}
