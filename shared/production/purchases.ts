// To order: what the planned days need beyond what is there, in packs, from suppliers that come on certain days.
import { countUp } from "../base/scaling.ts";
import { type Clock, clockOf, dayOf, weekdayOf } from "./clock.ts";

export type Stock = {
  /** As it was counted on a day. */
  readonly counted: number;
  /** Used and delivered since. */
  readonly used: number;
  readonly delivered: number;
};
export type Purchase = {
  readonly stock: number;
  /** What is missing of need and minimum; 0 where there is enough. */
  readonly missing: number;
  /** Whole packs; null where nobody knows what a pack holds. */
  readonly packs: number | null;
  /** Weight that is ordered. */
  readonly ordered: number;
  readonly cost: number | null;
};

/** Order = need + minimum − stock, in whole packs. What is left of a stock that was counted too low is never below 0. */
export function purchaseOf(
  need: number,
  minimum: number,
  { counted, used, delivered }: Stock,
  pack: { readonly holds: number | null; readonly price: number | null },
): Purchase {
  const stock = Math.max(0, counted - used + delivered);
  const short = need + minimum - stock;
  const missing = short > 1e-9 * Math.max(1, need) ? short : 0;
  const packs = pack.holds === null || !(pack.holds > 0) ? null : missing === 0 ? 0 : countUp(missing / pack.holds);
  return {
    stock,
    missing,
    packs,
    ordered: packs === null || pack.holds === null ? missing : packs * pack.holds,
    cost: packs === null || pack.price === null ? null : packs * pack.price,
  };
}

export type Supplier = {
  readonly name: string;
  /** Whether it delivers, from Monday to Sunday. */
  readonly delivers: readonly boolean[];
  /** Orders are in by this time of so many days before. */
  readonly cutOff: { readonly daysBefore: number; readonly time: number };
};

/** The last delivery in time for a day, and until when to order; null where it has passed at `now` or nothing comes. */
export function deliveryFor(
  { delivers, cutOff }: Supplier,
  needed: number,
  now: Clock,
): { readonly day: number; readonly orderBy: Clock } | null {
  for (let day = needed; day >= dayOf(now); day--) {
    if (delivers[weekdayOf(day)] !== true) continue;
    const orderBy = clockOf(day - cutOff.daysBefore, cutOff.time);
    if (orderBy >= now) return { day, orderBy };
  }
  return null;
}
