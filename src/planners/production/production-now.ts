// What is read of a production sheet: its items, orders, doughs and levains.
import type { Machine } from "../../../shared/production/clashes.ts";
import type { Levain } from "../../../shared/production/levain.ts";
import type { Making, Order } from "../../../shared/production/orders.ts";
import type { Tab } from "../../../shared/sheet/tab.ts";

/** A figure of the sheet and where it stands, as formulas of other sheets say it. */
export type Figure = { readonly value: number; readonly at: string };
export type ItemNow = {
  readonly product: string;
  readonly size: string;
  /** Pieces made on each day, and the days' figures in one row. */
  readonly made: readonly Figure[];
  readonly madeRow: string;
};
export type DoughNow = {
  readonly name: string;
  /** On each day: all of it with what is rolled in, what is mixed, mixes and the weight of one. */
  readonly whole: readonly Figure[];
  readonly mixed: readonly Figure[];
  readonly mixes: readonly Figure[];
  readonly each: readonly Figure[];
  /** The days' figures in one row. */
  readonly wholeRow: string;
  /** Minutes that it is begun earlier, and where they stand. */
  readonly earlier: number;
  readonly earlierAt: string;
};
export type OrderNow = Order & { readonly at: string; readonly note: string };
export type LevainNow = {
  readonly levain: Levain;
  readonly flour: string;
  readonly flourAt: string;
  readonly waterAt: string;
};
export type ProductionNow = {
  readonly tab: Tab;
  readonly title: string;
  readonly unit: "g" | "oz";
  readonly check: string;
  readonly days: readonly number[];
  /** The days in one row. */
  readonly dayRow: string;
  readonly items: readonly ItemNow[];
  readonly doughs: readonly DoughNow[];
  readonly orders: readonly OrderNow[];
  /** Columns of the pieces that count, as formulas of other sheets say them. */
  readonly countedColumns: readonly string[];
  readonly making: ReadonlyMap<string, Making>;
  readonly levains: readonly LevainNow[];
  readonly machines: readonly Machine[];
  /** Numbers typed for levains and machines, row by row: what they add up to, and where they stand. */
  readonly typedRows: readonly Figure[];
};
