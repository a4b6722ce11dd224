// What the panel asks a production with, checked; and the regular orders of the workbook.
import { refuse } from "../../../shared/base/refusal.ts";
import { oneOf, quote } from "../../../shared/base/show.ts";
import { nearest } from "../../../shared/base/words.ts";
import { isoOf } from "../../../shared/production/clock.ts";
import { itemKey, type OrderLine, type RegularOrder } from "../../../shared/production/orders.ts";
import type { SeenName } from "../../../shared/protocol/look.ts";

export const MAX_DAYS = 7;
const MAX_ORDERS = 1000;
const MAX_TEXT = 200;

type Raw = Readonly<Record<string, unknown>>;

export type AskedProduction = {
  /** Days of a spreadsheet, in their order. */
  readonly days: readonly number[];
  readonly lines: readonly OrderLine[];
  readonly isAcross: boolean;
};

export function readAsked({ days, day, orders, across }: Raw): AskedProduction {
  const lines = readLines(orders, readDay(day));
  const all = [...(Array.isArray(days) ? days.map(readDay) : [readDay(day)]), ...lines.map((line) => line.day)];
  const chosen = [...new Set(all.filter((one): one is number => one !== null && one >= 0))].sort((a, b) => a - b);
  if (chosen.length === 0) refuse("Choose the day of the orders.");
  if (chosen.length > MAX_DAYS)
    refuse(
      `There are orders for ${chosen.length} days; a production takes up to ${MAX_DAYS}. Build another for the others.`,
    );
  return { days: chosen, lines, isAcross: across === "customers" && chosen.length === 1 };
}

function readLines(raw: unknown, usual: number | null): OrderLine[] {
  const all = Array.isArray(raw) ? raw : [];
  if (all.length > MAX_ORDERS)
    refuse(`A production begins with up to ${MAX_ORDERS} orders; enter the others on its sheet.`);
  return all.flatMap((one): OrderLine[] => {
    const { sheet, size, customer, pieces, day, note } = (one ?? {}) as Raw;
    if (typeof sheet !== "string" || sheet === "") return [];
    const isCount = typeof pieces === "number" && Number.isInteger(pieces) && pieces >= 0 && pieces < 1e6;
    if (!isCount)
      return refuse(`The pieces of ${quote(sheet)} are ${quote(String(pieces))}. Enter a whole number from 0.`);
    const at = readDay(day) ?? usual;
    if (at === null) return refuse(`Choose the day of the orders of ${quote(sheet)}.`);
    return [
      {
        product: shortText(sheet),
        size: shortText(size),
        customer: shortText(customer),
        pieces,
        day: at,
        note: shortText(note),
      },
    ];
  });
}

const shortText = (raw: unknown): string => (typeof raw === "string" ? raw.slice(0, MAX_TEXT).trim() : "");

/** A date such as 2026-01-31 as the day number a sheet counts in; null where it is none. */
export function readDay(raw: unknown): number | null {
  if (typeof raw !== "string" || !/^\d{4}-\d\d-\d\d$/.test(raw)) return null;
  const time = Date.parse(`${raw}T00:00:00Z`);
  const day = Math.round((time - Date.UTC(1899, 11, 30)) / 86_400_000);
  return Number.isNaN(time) || isoOf(day) !== raw ? null : day;
}

/** Rows of the sheet of regular orders: customer, product, size, and a number for each weekday. */
export function regularOf(seen: SeenName | undefined): RegularOrder[] {
  return (seen?.values ?? []).flatMap((row): RegularOrder[] => {
    const [customer, product, size] = row.map((cell) => (typeof cell === "string" ? cell.trim() : ""));
    const week = Array.from({ length: 7 }, (_, at) => {
      const pieces = row[3 + at];
      return typeof pieces === "number" && pieces > 0 ? pieces : null;
    });
    if (product === undefined || product === "" || week.every((pieces) => pieces === null)) return [];
    return [{ customer: customer ?? "", product, size: size ?? "", week }];
  });
}

type Known = { readonly product: string; readonly size: string };

/** Orders under the names of the formula sheets; one that no sheet has is refused with the nearest. */
export function matched<T extends Known>(
  lines: readonly T[],
  items: readonly Known[],
  where: string,
  isExact = false,
): T[] {
  const byKey = new Map(items.map((item) => [itemKey(item), item]));
  const sizes = new Map<string, Known[]>();
  for (const item of items) {
    const key = itemKey({ product: item.product, size: "" });
    sizes.set(key, [...(sizes.get(key) ?? []), item]);
  }
  return lines.map((line) => {
    const own = sizes.get(itemKey({ product: line.product, size: "" })) ?? [];
    // The size of a product that has one alone need not be said.
    const item = byKey.get(itemKey(line)) ?? (line.size === "" && own.length === 1 && !isExact ? own[0] : undefined);
    if (item !== undefined) return { ...line, product: item.product, size: item.size };
    return refuse(`${where}: ${unknown(line, own, items)}`);
  });
}

function unknown({ product, size }: Known, sizes: readonly Known[], items: readonly Known[]): string {
  if (sizes.length > 0) {
    const known = sizes.map((one) => quote(one.size));
    return size === ""
      ? `${quote(product)} has no size. Enter ${known.length === 1 ? "" : "one of "}${known.join(", ")}.`
      : `${quote(product)} has no size ${quote(size)}. Enter one of ${known.join(", ")}.`;
  }
  const near = nearest(product, [...new Set(items.map((one) => one.product))].slice(0, 500));
  const perhaps = near.length > 0 ? ` Perhaps ${oneOf(near)}?` : "";
  return `there is no formula sheet ${quote(product)}.${perhaps}`;
}
