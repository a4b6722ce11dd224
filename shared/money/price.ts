import { refuse } from "../base/refusal.ts";
import { countUp } from "../base/scaling.ts";
import { showNumber, shownApart } from "../base/show.ts";
import type { Ratio } from "../base/units.ts";

/** What a share says of a price: the cost's part of it, the profit's part of it, or the profit over the cost. */
export const MEANINGS = {
  "food cost": ["cost share", "food cost share", "cost percentage"],
  margin: ["profit margin", "gross margin"],
  markup: ["mark-up"],
} as const;
export type Meaning = keyof typeof MEANINGS;

/** Selling price: tax on top of the price, then up to the next whole step. Nothing is rounded before. */
export function sellingPrice(cost: number, share: Ratio, meaning: Meaning, tax: Ratio, step: number | null): number {
  const price = netPrice(cost, share, meaning) * (1 + tax);
  return step === null ? price : Number((countUp(price / step) * step).toPrecision(15));
}

function netPrice(cost: number, share: Ratio, meaning: Meaning): number {
  if (meaning === "markup") return cost * (1 + share);
  const most = meaning === "margin" ? "must be below" : "cannot be above";
  if (share > 1 || (share === 1 && meaning === "margin")) {
    const plain = share > 1 ? `; if ${showNumber(share, 4)} % is meant, enter ${showNumber(share, 4)}%` : "";
    return refuse(`is ${shownApart(share * 100, 100, 2)} %; a ${meaning} ${most} 100 % of the price${plain}`, "share");
  }
  if (meaning === "margin") return cost / (1 - share);
  if (share === 0) return refuse("is 0; a food cost must be above 0 %", "share");
  return cost / share;
}
