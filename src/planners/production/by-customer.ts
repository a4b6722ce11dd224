// Delivery notes of a production: a block for each customer and day.
import { refuse } from "../../../shared/base/refusal.ts";
import { batchCodes } from "../../../shared/production/batch-code.ts";
import { dayWords } from "../../../shared/production/clock.ts";
import type { NewSheet } from "../../../shared/protocol/plan-message.ts";
import type { Value } from "../../../shared/sheet/model.ts";
import { plan } from "../../../shared/sheet/plan.ts";
import { CUSTOMERS_NAME, PRICE_LISTS_NAME, SETTINGS_NAME } from "../../../shared/sheet/workbook-names.ts";
import { byCustomerSheet } from "../../../templates/production/by-customer.ts";
import { EXCLUDED, INCLUDED, priceFor, taxFor } from "../../../templates/production/price-for.ts";
import { linkName } from "../../../templates/production/shape.ts";
import { type FormulaSheets, overAllSheets } from "../all-sheets.ts";
import { sizesOf } from "../overview.ts";
import { moneyIn } from "../settings.ts";
import { make, type Steps } from "../steps.ts";
import { sheetOf } from "./night.ts";
import { noteOf } from "./note.ts";
import { doughsFor } from "./parts.ts";
import type { OrderNow, ProductionNow } from "./production-now.ts";
import { readProduction } from "./read.ts";
import { nameOf } from "./tab-names.ts";

export function* buildByCustomer({ sheet }: Readonly<Record<string, unknown>>): Steps<NewSheet> {
  const production = yield* readProduction(typeof sheet === "string" ? sheet : "");
  return yield* overAllSheets({ names: [PRICE_LISTS_NAME, CUSTOMERS_NAME], cells: [SETTINGS_NAME] }, (all) =>
    notes(all, production),
  );
}

function* notes(all: FormulaSheets, now: ProductionNow): Steps<NewSheet> {
  if (now.orders.length === 0) refuse("Nothing is ordered yet. Enter orders on the production sheet first.");
  const codeOf = codesOf(now, all);
  const groups = grouped(now);
  const links: Record<string, string> = { ordered: orderedLink(now) };
  let row = 0;
  const columns = {
    hasPrices: hasLists(all) || now.orders.some((order) => priceOf(all, order) !== null),
    hasNotes: now.orders.some(({ note }) => note !== ""),
  };
  const customers = groups.map(({ customer, day, orders }) => ({
    heading: `${customer === "" ? "Shop" : customer} · ${dayWords(day)}`,
    rows: orders.map((order) => {
      links[linkName("pieces", row)] = order.at;
      const { price, tax } = priceLinks(all, order);
      links[linkName("price", row)] = price;
      links[linkName("tax", row)] = tax;
      row += 1;
      return { product: order.product, size: order.size, code: codeOf(order.product, day), note: noteOf(order, now) };
    }),
  }));
  const values: Record<string, Value> = { title: "By customer" };
  const money = moneyIn(all.names.get(SETTINGS_NAME)?.values ?? []);
  const options = { weight: now.unit, temperature: "C", length: "cm", parts: [], ...money } as const;
  const title = nameOf("By customer", now);
  return yield* make(plan(byCustomerSheet(customers, columns), options, values, links), title, [...all.tabs, now.tab], {
    renews: { cell: "A1", begins: "By customer" },
  });
}

/** A product of parts has a code of its own, and says those of its parts: a lot of one leads to whoever got it. */
function codesOf({ items }: ProductionNow, all: FormulaSheets): (product: string, day: number) => string {
  const { parts } = doughsFor(
    items.map(({ product }) => sheetOf(all, product)),
    all.sheets,
  );
  const codeOf = batchCodes(all.inListOrder);
  const inside = (name: string): string[] =>
    parts.flatMap(({ taker, part }) => (taker.name === name ? [part.name, ...inside(part.name)] : []));
  return (product, day) => [product, ...new Set(inside(product))].map((name) => codeOf(name, day)).join(", ");
}

type Group = { readonly customer: string; readonly day: number; readonly orders: OrderNow[] };

/** By customer and day, the shop's own last. */
function grouped({ orders, days }: ProductionNow): Group[] {
  const customers = [...new Set(orders.map(({ customer }) => customer))].sort((a, b) =>
    a === "" ? 1 : b === "" ? -1 : a < b ? -1 : 1,
  );
  return customers.flatMap((customer) =>
    days.flatMap((day) => {
      const products = orders.filter((order) => order.customer === customer && order.day === day);
      return products.length === 0 ? [] : [{ customer, day, orders: products }];
    }),
  );
}

/** All pieces that count on the production sheet. */
const orderedLink = ({ countedColumns }: ProductionNow): string =>
  countedColumns.map((range) => `SUM(${range})`).join("+");

/** Its price as it is now. */
function priceOf(all: FormulaSheets, { product, size }: OrderNow): number | null {
  const sheet = sheetOf(all, product);
  const sizeNow = sizesOf(sheet).find((one) => one.size === size);
  return sheet.figures("size_price")[sizeNow?.row ?? -1] ?? null;
}

/** Its price, and whether tax is in it. */
function priceLinks(all: FormulaSheets, { customer, product, size }: OrderNow): { price: string; tax: string } {
  const sheet = sheetOf(all, product);
  const sizes = sizesOf(sheet);
  const sizeNow = sizes.find((one) => one.size === size);
  const cell = sizeNow?.row === null || sizeNow === undefined ? undefined : sheet.row("size_price", sizeNow.row);
  const price = cell === undefined ? '""' : `IF(COUNT(${cell})=0;"";${cell})`;
  const taxCell = sheet.reference("tax");
  const tax = taxCell === undefined ? `"${EXCLUDED}"` : `IF(COUNT(${taxCell})=0;"${EXCLUDED}";"${INCLUDED}")`;
  if (!hasLists(all)) return { price, tax };
  const sale = { customer, product, size, isOnlySize: sizes.length === 1 };
  return { price: priceFor(sale, price), tax: taxFor(sale, tax) };
}

const hasLists = ({ names }: FormulaSheets): boolean => names.has(PRICE_LISTS_NAME) && names.has(CUSTOMERS_NAME);
