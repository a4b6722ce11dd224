// What sheets over all formula sheets use of each, read on the sheet itself or in its row of the list.

import type { FormulaSummary } from "../../shared/protocol/sheet-review.ts";
import { absolute, type Zone, zoneA1 } from "../../shared/sheet/a1.ts";
import { quotedTab } from "../../shared/sheet/tab.ts";
import type { FormulaSheet } from "./formula-sheet.ts";

/** `number` and `text` are of single cells. */
export type Overview = Pick<FormulaSheet, "name" | "title" | "zone" | "newer"> & {
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
  /** The rows of a column of numbers to six decimals, from its upper edge row. */
  readonly figures: (name: string) => readonly (number | null)[];
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
  const rows = (name: string) => Array.from({ length: sheet.zone(name)?.rows ?? 0 }, (_, at) => at);
  return {
    name: sheet.name,
    title: sheet.title,
    newer: sheet.newer,
    unit: sheet.options.weight,
    parts: sheet.rows.filter(({ weight }) => weight !== null),
    zone: sheet.zone,
    ...references(sheet.name, sheet.zone),
    number: (name) => sheet.number(name),
    text: (name) => sheet.text(name),
    numbered: (name) => rows(name).filter((at) => sheet.number(name, at) !== null),
    column: (name) => rows(name).map((at) => sheet.text(name, at)),
    // As the list of formulas tells them.
    figures: (name) => rows(name).map((at) => inMillionths(sheet.number(name, at))),
  };
}

const inMillionths = (value: number | null): number | null => (value === null ? null : Math.round(1e6 * value) / 1e6);

/** What the sidebar shows of it in a list. */
export function summary(sheet: Overview): FormulaSummary {
  return {
    sheet: sheet.name,
    title: sheet.title,
    unit: sheet.unit,
    dough: sheet.number("dough"),
    mixes: sheet.number("mixes"),
    pieces: sheet.number("pieces"),
    ingredients: sheet.parts.map(({ name, kind }) => name || kind),
    sizes: sizesOf(sheet).map(({ size }) => size),
    ...(sheet.newer === "" ? {} : { newer: sheet.newer }),
  };
}

/** One size of a formula, and its row in the sizes' columns; null where the sheet has none and divides by its pieces. */
export type SizeRow = { readonly size: string; readonly row: number | null; readonly scaling: number };

/** Sizes that can be ordered: those with a scaling weight. */
export function sizesOf(sheet: Overview): SizeRow[] {
  const names = sheet.column("size_name");
  const sizes = sheet
    .figures("size_scaled")
    .flatMap((scaling, row): SizeRow[] =>
      scaling === null || !(scaling > 0) ? [] : [{ size: names[row] ?? "", row, scaling }],
    );
  if (sizes.length > 0) return sizes;
  const [whole, pieces] = [sheet.number("dough_in_all") ?? sheet.number("dough"), sheet.number("pieces")];
  return whole === null || pieces === null || !(pieces > 0) ? [] : [{ size: "", row: null, scaling: whole / pieces }];
}
