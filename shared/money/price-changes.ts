// Prices of the ingredient sheet as they were seen last, and what has changed since.

/** Heads the first of three columns: the price as last seen, the one before it, and the day since when it is so. */
export const PRICE_KEPT = "Price last seen";

type Cell = unknown;
/** A row of those three columns. */
export type KeptPrice = readonly [price: number | "", before: number | "", seen: string];
export type PriceChange = { readonly name: string; readonly before: number; readonly now: number };

/** A row with a price that is not the one last seen gets it, with the day; a first price is no change, and a price that went stays known. */
export function priceChanges(
  rows: readonly { readonly name: Cell; readonly price: Cell; readonly kept: readonly Cell[] }[],
  day: string,
): { readonly kept: readonly KeptPrice[]; readonly changes: readonly PriceChange[]; readonly isNew: boolean } {
  const changes: PriceChange[] = [];
  let isNew = false;
  const prices = rows.map(({ name, price, kept: [last = "", before = "", seen = ""] }): KeptPrice => {
    const same: KeptPrice = [numberOr(last), numberOr(before), typeof seen === "string" ? seen : ""];
    const label = String(name ?? "").trim();
    if (typeof price !== "number" || !Number.isFinite(price) || label === "" || price === last) return same;
    isNew = true;
    if (typeof last !== "number") return [price, "", day];
    changes.push({ name: label, before: last, now: price });
    return [price, last, day];
  });
  return { kept: prices, changes, isNew };
}

const numberOr = (cell: Cell): number | "" => (typeof cell === "number" && Number.isFinite(cell) ? cell : "");
