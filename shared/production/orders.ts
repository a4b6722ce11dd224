// Orders in: what customers ordered for a day, what they take every week, and how many pieces are made for that.
import { countUp } from "../base/scaling.ts";
import { weekdayOf } from "./clock.ts";

/** What is ordered: a formula and one of its sizes ("" where it has one alone). */
export type Item = { readonly product: string; readonly size: string };

/** `customer` is "" where nobody in particular ordered; pieces typed as null change nothing. */
export type OrderLine = Item & {
  readonly day: number;
  readonly customer: string;
  readonly pieces: number | null;
  /** What the baker or the driver is told of it. */
  readonly note?: string;
};
export type RegularOrder = Item & {
  readonly customer: string;
  /** From Monday to Sunday. */
  readonly week: readonly (number | null)[];
};
export type Order = Item & {
  readonly day: number;
  readonly customer: string;
  readonly pieces: number;
  readonly isRegular: boolean;
};

/** Names are one where they differ in capitals and outer spaces alone. */
const plain = (text: string): string =>
  text
    .replace(/[\s\u00a0]+/g, " ")
    .trim()
    .toLowerCase();
export const itemKey = ({ product, size }: Item): string => `${plain(product)}|${plain(size)}`;
const lineKey = (line: Item & { readonly customer: string }): string => `${itemKey(line)}|${plain(line.customer)}`;

/**
 * What counts on each of the days: what was typed, and otherwise what the customer takes on that day of the week. A typed 0
 * cancels; lines of one day, customer and item add up.
 */
export function ordersFor(
  days: readonly number[],
  typed: readonly OrderLine[],
  regular: readonly RegularOrder[],
): Order[] {
  const orders: Order[] = [];
  for (const day of days) {
    const lines = typed.filter((line) => line.day === day && line.pieces !== null);
    const typedKeys = new Set(lines.map(lineKey));
    for (const { product, size, customer, pieces } of lines)
      if (pieces !== null && pieces > 0) orders.push({ product, size, day, customer, pieces, isRegular: false });
    for (const { product, size, customer, week } of regular) {
      const pieces = week[weekdayOf(day)] ?? null;
      if (pieces === null || pieces <= 0 || typedKeys.has(lineKey({ product, size, customer }))) continue;
      orders.push({ product, size, day, customer, pieces, isRegular: true });
    }
  }
  return orders;
}

export type Making = {
  /** Made beyond the orders on each day that has some. */
  readonly spares: number;
  /** Finished and frozen pieces, used for the first days. */
  readonly stock: number;
  /** Pieces are made in whole trays or straps of so many. */
  readonly multiple: number;
};

/**
 * Pieces to make on each day: (orders + spares − stock) ÷ multiple, rounded up, × multiple. What stock a day leaves goes to
 * the next; what the multiple makes too many is not counted for it.
 */
export function piecesMade(ordered: readonly number[], { spares, stock, multiple }: Making): number[] {
  const tray = multiple > 0 ? multiple : 1;
  let left = Math.max(0, stock);
  return ordered.map((orders) => {
    const wanted = orders > 0 ? orders + spares : 0;
    const taken = Math.min(left, wanted);
    left -= taken;
    const short = wanted - taken;
    return short > 0 ? countUp(short / tray) * tray : 0;
  });
}

/** Pieces by day of one item, over all customers. */
export const orderedByDay = (days: readonly number[], orders: readonly Order[], item: Item): number[] =>
  days.map((day) =>
    orders.reduce((sum, one) => sum + (one.day === day && itemKey(one) === itemKey(item) ? one.pieces : 0), 0),
  );
