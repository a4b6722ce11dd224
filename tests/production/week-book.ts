// A week of the demo shop in a workbook: six formulas, three customers with regular orders, and what was typed over them.
import { isoOf } from "../../shared/production/clock.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { openBook } from "../../src/workbook/scripted.ts";
import { demoShop } from "../../templates/demo/shop.ts";

/** Monday, 30 November 2026 (46023 is 1 January 2026, a Thursday). */
export const MONDAY = 46356;
export const DAYS = Array.from({ length: 7 }, (_, at) => MONDAY + at);
export const WEEK = DAYS.map(isoOf);

export const REGULAR = [
  { customer: "Café Mole", product: "Quay pan loaf", size: "large", week: [6, 6, 6, 6, 8, 12, null] },
  { customer: "Harbour inn", product: "Quay hearth loaf", size: "round", week: [null, null, null, 8, 12, 16, 16] },
  { customer: "Pier school", product: "Ferry bun", size: "bun", week: [40, 40, 40, 40, 40, null, null] },
] as const;
/** The shop's own: pieces from Monday to Sunday. */
export const SHOP = [
  { product: "Quay pan loaf", size: "large", week: [18, 18, 18, 18, 24, 30, 12] },
  { product: "Quay pan loaf", size: "small", week: [12, 12, 12, 12, 12, 20, 0] },
  { product: "Quay hearth loaf", size: "round", week: [20, 20, 20, 20, 30, 40, 24] },
  { product: "Harbour levain loaf", size: "large", week: [0, 18, 0, 18, 0, 36, 18] },
  { product: "Harbour levain loaf", size: "small", week: [0, 16, 0, 16, 0, 20, 0] },
  { product: "Ferry bun", size: "bun", week: [60, 60, 60, 60, 90, 150, 80] },
  { product: "Lantern rye tin", size: "tin", week: [0, 0, 12, 0, 12, 24, 0] },
  { product: "Quay levain", size: "kilogram", week: [0, 0, 0, 0, 0, 2, 0] },
] as const;
/** Café Mole takes 20 on Wednesday instead of 6, and the school no buns on Friday. */
export const OVERRULED = [
  { customer: "Café Mole", product: "Quay pan loaf", size: "large", day: 2, pieces: 20 },
  { customer: "Pier school", product: "Ferry bun", size: "bun", day: 4, pieces: 0 },
] as const;

/** What is ordered on a day, by product and size, worked out from the tables above alone. */
export function orderedOn(day: number): Map<string, { customer: string; pieces: number }[]> {
  const orders = new Map<string, { customer: string; pieces: number }[]>();
  const add = (item: { product: string; size: string }, customer: string, pieces: number) => {
    const key = `${item.product}|${item.size}`;
    if (pieces > 0) orders.set(key, [...(orders.get(key) ?? []), { customer, pieces }]);
  };
  for (const one of SHOP) add(one, "", one.week[day] ?? 0);
  for (const one of REGULAR) {
    const over = OVERRULED.find((other) => other.customer === one.customer && other.day === day);
    add(one, one.customer, over?.pieces ?? one.week[day] ?? 0);
  }
  return orders;
}

export async function openWeek(): Promise<{ book: WorkbookHost; production: string; calls: number }> {
  const book = await openBook();
  const isNeeded = (asked: { ask: string; template?: string }) =>
    asked.ask === "list" ||
    (asked.ask === "build" && !["mix-log", "bake-off-log", "prices", "regular-orders"].includes(asked.template ?? ""));
  for (const asked of demoShop(MONDAY)) if (isNeeded(asked)) book.answer(asked);
  const weekday = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"];
  book.answer({
    ask: "build",
    template: "regular-orders",
    values: {
      regular_customer: REGULAR.map(({ customer }) => customer),
      regular_product: REGULAR.map(({ product }) => product),
      regular_size: REGULAR.map(({ size }) => size),
      ...Object.fromEntries(
        weekday.map((name, at) => [`regular_${name}`, REGULAR.map(({ week }) => week[at] ?? null)]),
      ),
    },
  });
  const orders = [
    ...SHOP.flatMap(({ product, size, week }) =>
      week
        .map((pieces, at) => ({ sheet: product, size, pieces, day: WEEK[at] ?? "" }))
        .filter(({ pieces }) => pieces > 0),
    ),
    ...OVERRULED.map(({ product, size, customer, day, pieces }) => ({
      sheet: product,
      size,
      customer,
      pieces,
      day: WEEK[day] ?? "",
    })),
  ];
  const { sheet } = book.answer({ ask: "day", day: WEEK[0], days: WEEK, orders }) as { sheet: string };
  return { book, production: sheet, calls: book.trail.length };
}

/** Texts and values of a sheet's page, and where a text stands. */
export function pageOf(book: WorkbookHost, sheet: string) {
  const range = book.usedRange(sheet);
  const values = book.values(sheet, range);
  const shown = book.shownTexts(sheet, range);
  const rowOf = (text: string, from = 0) => shown.findIndex((row, at) => at >= from && row.includes(text));
  return {
    values,
    shown,
    rowOf,
    formulas: () =>
      book
        .formulas(sheet, range)
        .flat()
        .filter((one) => one) as string[],
  };
}

/** Address of a cell by its place, both counted from 0. */
export function address(row: number, column: number): string {
  const letters = column < 26 ? "" : String.fromCharCode(64 + Math.floor(column / 26));
  return `${letters}${String.fromCharCode(65 + (column % 26))}${row + 1}`;
}
