// What sheets over all formula sheets use of each, read on the sheet itself or in its row of the list.

import type { FormulaSummary } from "../../shared/protocol/bench.ts";
import { absolute, type Zone, zoneA1 } from "../../shared/sheet/a1.ts";
import { quotedTab } from "../../shared/sheet/tab.ts";
import type { FormulaSheet } from "./formula-sheet.ts";

/** `number` and `text` are of single cells. */
export type Overview = Pick<FormulaSheet, "name" | "title" | "zone"> & {
  readonly unit: "g" | "oz";
  /** Rows of the formula's table that have a weight. */
  readonly parts: readonly { readonly name: string; readonly kind: string }[];
  readonly number: (name: string) => number | null;
  readonly text: (name: string) => string;
  /** Address of a whole column or cell, with $ and the sheet's name, as formulas of other sheets write it. */
  readonly reference: (name: string) => string | undefined;
  /** The same of one row of a column, counted from the upper edge row. */
  readonly row: (name: string, index: number) => string | undefined;
  /** The texts of a column, from its upper edge row. */
  readonly column: (name: string) => readonly string[];
  /** Which rows of a column hold a number, counted from the upper edge row. */
  readonly numbered: (name: string) => readonly number[];
};

/** Where a formula sheet says which of its rows count, other sheets read those alone. */
const COUNTED: Readonly<Record<string, string>> = { ingredient: "name_counted", kind: "kind_counted" };
export const countedZone =
  (zone: (name: string) => Zone | undefined) =>
  (name: string): Zone | undefined =>
    zone(COUNTED[name] ?? name) ?? zone(name);

const referenceTo = (name: string, zone: Zone): string => `${quotedTab(name)}${absolute(zoneA1(zone))}`;

/** Zones of a sheet as formulas of other sheets write them. */
export function references(
  name: string,
  zone: (cell: string) => Zone | undefined,
): Pick<Overview, "reference" | "row"> {
  const counted = countedZone(zone);
  return {
    reference: (cell) => {
      const amount = counted(cell);
      return amount === undefined ? undefined : referenceTo(name, amount);
    },
    row: (cell, index) => {
      const amount = counted(cell);
      return amount === undefined ? undefined : referenceTo(name, { ...amount, row: amount.row + index, rows: 1 });
    },
  };
}

export function overviewOf(sheet: FormulaSheet): Overview {
  return {
    name: sheet.name,
    title: sheet.title,
    unit: sheet.options.weight,
    parts: sheet.rows.filter(({ weight }) => weight !== null),
    zone: sheet.zone,
    ...references(sheet.name, sheet.zone),
    number: (name) => sheet.number(name),
    text: (name) => sheet.text(name),
    column: (name) => Array.from({ length: sheet.zone(name)?.rows ?? 0 }, (_, at) => sheet.text(name, at)),
    numbered: (name) =>
      Array.from({ length: sheet.zone(name)?.rows ?? 0 }, (_, at) => at).filter(
        (at) => sheet.number(name, at) !== null,
      ),
  };
}

/** What the bench shows of it in a list. */
export function summary(sheet: Overview): FormulaSummary {
  return {
    sheet: sheet.name,
    title: sheet.title,
    unit: sheet.unit,
    dough: sheet.number("dough"),
    mixes: sheet.number("mixes"),
    pieces: sheet.number("pieces"),
    ingredients: sheet.parts.map(({ name, kind }) => name || kind),
  };
}
