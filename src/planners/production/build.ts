// A production sheet from orders, the formula sheets and the regular orders of the workbook.

import { refuse } from "../../../shared/base/refusal.ts";
import { batchCodes } from "../../../shared/production/batch-code.ts";
import { dayWords } from "../../../shared/production/clock.ts";
import { ordersFor } from "../../../shared/production/orders.ts";
import { productionOf } from "../../../shared/production/plan.ts";
import type { NewSheet } from "../../../shared/protocol/plan-message.ts";
import type { Value } from "../../../shared/sheet/model.ts";
import { plan } from "../../../shared/sheet/plan.ts";
import { REGULAR_NAME } from "../../../shared/sheet/workbook-names.ts";
import { productionSheet } from "../../../templates/production/production.ts";
import type { ProductionShape } from "../../../templates/production/shape.ts";
import { type FormulaSheets, overAllSheets } from "../all-sheets.ts";
import { type Overview, sizesOf } from "../overview.ts";
import { make, type Steps, withNotes } from "../steps.ts";
import { temperatureIn } from "./day-water.ts";
import { levainsOf, notOrdered } from "./formula.ts";
import { levainSettings, levainValues, machineValues } from "./levain-settings.ts";
import { columnsOf, gridRows, type Item, longestOf } from "./order-grid.ts";
import { doughsFor, type OwnPart, plannedAll, takerOf } from "./parts.ts";
import { type AskedProduction, matched, readAsked, regularOf } from "./production-ask.ts";
import { linksOf } from "./production-links.ts";

/** Formula sheets up to which all their items have a row, whether they are ordered or not. */
const FEW = 12;
/** Of a production before anything in it is typed. */
const UNPLANNED = { making: new Map(), machines: [], earlier: new Map(), changes: [] } as const;
/** A mixer and an oven to begin with. */
const MACHINES = 2;

export function* buildProduction(question: Readonly<Record<string, unknown>>): Steps<NewSheet> {
  const order = readAsked(question);
  return yield* overAllSheets({ cells: [REGULAR_NAME] }, (all) => over(all, order));
}

function* over(all: FormulaSheets, order: AskedProduction): Steps<NewSheet> {
  const able = all.sheets.filter((sheet) => notOrdered(sheet) === null);
  const items = able.flatMap((sheet) =>
    sizesOf(sheet).map((row): Item => ({ sheet, product: sheet.name, size: row.size, row })),
  );
  if (items.length === 0) refuse("There is no formula sheet that makes pieces. Build one under New formula first.");
  const lines = matched(order.lines, items, "Orders");
  const regular = matched(regularOf(all.names.get(REGULAR_NAME)), items, "Regular orders", true);
  const hasRegular = all.names.has(REGULAR_NAME);
  const wanted = ordersFor(order.days, lines, regular);
  if (wanted.length === 0) refuse("Enter the pieces of at least one product.");
  const ordered = new Set(wanted.map(({ product }) => product));
  const unit = items.find(({ product }) => ordered.has(product))?.sheet.unit ?? "g";
  const mixed = items.find(({ product, sheet }) => ordered.has(product) && sheet.unit !== unit);
  if (mixed !== undefined)
    refuse(`“${mixed.product}” counts in ${mixed.sheet.unit}, others in ${unit}. Build a production for each unit.`);
  const isFew = able.length <= FEW;
  const rows = items.filter(({ product, sheet }) => sheet.unit === unit && (isFew || ordered.has(product)));
  const { doughs, parts } = doughsFor(
    rows.map(({ sheet }) => sheet),
    all.sheets,
  );
  mustCountAlike(doughs, parts, unit);
  const levains = doughs.map((sheet) => levainsOf(sheet, all.sheets));
  const names = [...new Set(levains.flat().map(({ from }) => from))];
  const customers = [...new Set([...lines, ...regular].map(({ customer }) => customer).filter((one) => one !== ""))];
  const columns = columnsOf(order, customers);
  const grid = gridRows(rows, order, lines, regular, columns);
  const shape: ProductionShape = {
    isInOunces: unit === "oz",
    days: order.days.length,
    columns,
    hasCustomers: !order.isAcross && customers.length > 0,
    orderRows: grid.length,
    longest: longestOf(grid),
    items: rows.map(({ product, size }) => ({ product, size })),
    doughs: doughs.map((sheet) => doughShape(sheet, rows, doughs, parts)),
    levains: names.map((name) => ({
      name,
      doughs: levains.flatMap((some, at) => (some.some(({ from }) => from === name) ? [at] : [])),
    })),
    machines: MACHINES,
    hasRegular,
  };
  const settings = names.map((name) => levainSettings(name, doughs, levains, all.sheets));
  const chains = productionOf({
    ...UNPLANNED,
    days: order.days,
    orders: wanted,
    formulas: plannedAll(doughs, all.sheets, parts),
    codeOf: batchCodes(all.inListOrder),
    levains: settings.map(({ levain }) => levain),
  }).chains;
  const values: Record<string, Value | readonly Value[]> = {
    title: titleOf(order.days),
    day_1: order.days[0] ?? null,
    ...Object.fromEntries(order.days.map((day, at) => [`day_offset_${at + 1}`, day - (order.days[0] ?? day)])),
    ...Object.fromEntries(rows.map(({ product }, at) => [`made_product_${at + 1}`, product])),
    ...Object.fromEntries(rows.map(({ size }, at) => [`made_size_${at + 1}`, size])),
    ...Object.fromEntries(doughs.map(({ name }, at) => [`dough_${at + 1}`, name])),
    ...Object.fromEntries(names.map((name, at) => [`levain_${at + 1}`, name])),
    order_product: grid.map(({ item }) => item.product),
    order_size: grid.map(({ item }) => item.size),
    ...(shape.hasCustomers ? { order_customer: grid.map(({ customer }) => customer) } : {}),
    order_note: grid.map(({ note }) => note),
    ...Object.fromEntries(columns.map((_, at) => [`o_${at + 1}`, grid.map(({ typed }) => typed[at] ?? null)])),
    ...levainValues(
      settings,
      chains.map(({ chain }) => chain.feeds[0]?.seed ?? null),
    ),
    ...machineValues(doughs),
  };
  const options = {
    weight: unit,
    temperature: temperatureIn(doughs),
    length: "cm",
    parts: hasRegular ? ["regular"] : [],
  } as const;
  const links = linksOf(rows, doughs, names, levains, parts);
  const sheetPlan = plan(productionSheet(shape), options, values, links);
  const notes = all.sheets.flatMap((sheet) =>
    ordered.has(sheet.name) || doughs.includes(sheet) ? [] : (notOrdered(sheet) ?? []),
  );
  const newer = doughs.find((sheet) => sheet.newer !== "")?.newer;
  return withNotes(yield* make(sheetPlan, titleOf(order.days), all.tabs), newer, ...notes.slice(0, 3));
}

function mustCountAlike(doughs: readonly Overview[], parts: readonly OwnPart[], unit: Overview["unit"]): void {
  const other = doughs.find((sheet) => sheet.unit !== unit);
  if (other !== undefined)
    refuse(
      `“${other.name}” counts in ${other.unit}, and “${takerOf(other, parts)}” is made of it. Build both in one unit.`,
    );
}

/** Which rows are made of a dough, and what takes of it beside them. */
function doughShape(
  sheet: Overview,
  rows: readonly Item[],
  doughs: readonly Overview[],
  parts: readonly OwnPart[],
): ProductionShape["doughs"][number] {
  const from = Math.max(
    0,
    rows.findIndex((row) => row.sheet === sheet),
  );
  const takers = parts.filter(({ part }) => part === sheet);
  return {
    name: sheet.name,
    from,
    to: from + rows.filter((row) => row.sheet === sheet).length,
    inItems: rows.flatMap((row, at) =>
      !doughs.includes(row.sheet) && takers.some(({ taker }) => taker === row.sheet) ? [at] : [],
    ),
    inDoughs: takers.flatMap(({ taker, isRolledIn }) =>
      doughs.includes(taker) ? [{ dough: doughs.indexOf(taker), isRolledIn }] : [],
    ),
  };
}

/** Named by its day, or by the first and the last: short enough for the tab of any spreadsheet. */
function titleOf(days: readonly number[]): string {
  const [first, last] = [days[0] ?? 0, days[days.length - 1] ?? 0];
  const short = (day: number) => dayWords(day).replace(/^\w+ /, "");
  return first === last ? `Production ${dayWords(first)}` : `Production ${short(first)} to ${short(last)}`;
}
