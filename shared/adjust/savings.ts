// What each swap would bring in money, the cheapest first.
import type { Larder } from "../larder/larder.ts";
import { applyWish, type Wish } from "./changes.ts";
import type { Formula } from "./formula.ts";
import { billOf, doughOf, type Money } from "./money.ts";
import { orNull } from "./parts.ts";
import { offersFor } from "./swap.ts";

export type Saving = {
  readonly wish: Wish;
  readonly label: string;
  /** Ingredients of all of it, before and after, for as much dough as now. */
  readonly before: number;
  readonly after: number;
};

/** Of every swap that the formula has a row for; one without a price for what is new is left out, as its cost is not known. */
export function savingsOf(formula: Formula, money: Money, larder: Larder): readonly Saving[] {
  const before = billOf(formula, money, larder);
  if (before === null) return [];
  // A swap that is refused saves nothing.
  return offersFor(formula)
    .flatMap(({ label }): Saving[] => {
      const wish = { change: "swap", values: { swap: label, part: "100" } };
      const after = orNull(() => applyWish(formula, wish, larder).formula);
      const bill = after === null ? null : billOf(after, money, larder);
      if (after === null || bill === null || bill.unpriced.length > before.unpriced.length) return [];
      return [{ wish, label, before: before.cost, after: (bill.cost / doughOf(after)) * doughOf(formula) }];
    })
    .sort((one, other) => one.after - other.after);
}
