// Reads a formula sheet as it is now. Nothing else knows where its cells stand.

import { refuse } from "../../shared/base/refusal.ts";
import { quote } from "../../shared/base/show.ts";
import type { SeenSheet } from "../../shared/protocol/look.ts";
import { isWaitingText } from "../../shared/protocol/waiting.ts";
import { a1, type Zone } from "../../shared/sheet/a1.ts";
import { BUILT_CELL, builtByZone, newerSays } from "../../shared/sheet/built-by.ts";
import { locate } from "../../shared/sheet/locate.ts";
import type { Options, SheetModel } from "../../shared/sheet/model.ts";
import { LISTED_SHEETS, TEMPLATES } from "../../templates/index.ts";
import { look, type Steps } from "./steps.ts";

/** One row of the formula's table that holds an ingredient. */
export type FormulaRow = {
  /** Row of the sheet, counted from 1. */
  readonly row: number;
  /** Its place in the columns of the table, counted from the upper edge row. */
  readonly index: number;
  readonly name: string;
  readonly kind: string;
  readonly share: number | null;
  readonly weight: number | null;
};

export type FormulaSheet = {
  readonly name: string;
  readonly title: string;
  readonly model: SheetModel;
  /** What is said where a newer version built it; "" for nothing. */
  readonly newer: string;
  readonly options: Options;
  readonly rows: readonly FormulaRow[];
  readonly zone: (name: string) => Zone | undefined;
  /** Address of a cell, or of one row of a column (0 is the upper edge row); with $ and the sheet's name where asked. */
  readonly at: (name: string, index?: number) => string | undefined;
  /** What a cell holds as a number; null where it is blank, a text or not there. */
  readonly number: (name: string, index?: number) => number | null;
  readonly text: (name: string, index?: number) => string;
  /** As it came from the sheet. */
  readonly cell: (name: string, index?: number) => unknown;
  /** Whether a text stands somewhere on the sheet. */
  readonly says: (text: string) => boolean;
  /** As it is shown, which for a time of day is the only thing to trust. */
  readonly shown: (name: string, index?: number) => string;
};

const isError = (text: string): boolean => /^#(?:N\/A|[A-Z]+[/\d]*[!?])$/.test(text);

/** The cells of a sheet as a formula sheet, or null where it is none. `values` are what getValues() gives, from A1. */
export function asFormulaSheet(
  name: string,
  values: readonly (readonly unknown[])[],
  shown: readonly (readonly string[])[] = [],
  models: readonly SheetModel[] = TEMPLATES,
): FormulaSheet | null {
  const located = locate(values, models);
  if (located === null) return null;
  const { zones } = located;
  const raw = (cell: string, index = 0): unknown => {
    const zone = zones.get(cell);
    return zone === undefined || index >= zone.rows ? undefined : values[zone.row + index]?.[zone.column];
  };
  const number = (cell: string, index = 0): number | null => {
    const value = raw(cell, index);
    return typeof value === "number" && Number.isFinite(value) ? value : null;
  };
  const text = (cell: string, index = 0): string => {
    const value = raw(cell, index);
    return value === undefined || value === null || typeof value === "object" ? "" : String(value).trim();
  };
  const at = (cell: string, index = 0): string | undefined => {
    const zone = zones.get(cell);
    return zone === undefined ? undefined : a1({ row: zone.row + index, column: zone.column });
  };
  const table = zones.get("ingredient");
  const length = (table?.rows ?? 0) - (hasTotal(located.model) ? 1 : 0);
  const rows = Array.from(
    { length },
    (_, index): FormulaRow => ({
      row: (table?.row ?? 0) + index + 1,
      index,
      name: text("ingredient", index),
      kind: text("kind", index),
      share: number("share", index),
      weight: number("grams", index),
    }),
  ).filter((row) => row.name !== "" || row.weight !== null || row.kind !== "");
  return {
    name,
    title: text("title") || name,
    model: located.model,
    newer: newerSays(name, values),
    options: located.options,
    rows,
    zone: (cell) => (cell === BUILT_CELL ? builtByZone(values) : zones.get(cell)),
    at,
    number,
    text,
    cell: raw,
    says: (words) => values.some((line) => line.includes(words)),
    shown: (cell, index = 0) => {
      const zone = zones.get(cell);
      return zone === undefined || index >= zone.rows ? "" : (shown[zone.row + index]?.[zone.column] ?? "");
    },
  };
}

const hasTotal = ({ bands }: SheetModel): boolean =>
  bands.flat().some((item) => "table" in item && item.table === "formula" && item.total !== undefined);

/** The sheet of this name, or the one in front (""); refuses what is gone, is no formula sheet, or is not calculated yet. */
export function* readFormulaSheet(name: string, shown = false): Steps<FormulaSheet> {
  // A name that is known is not asked for: that is a call of the service.
  const [seen] = (yield* look({ sheet: name, shown, unnamed: name !== "" })).sheets;
  const sheet = seen === undefined || name === "" ? seen : { ...seen, name };
  if (sheet === undefined) {
    return refuse(`There is no sheet ${quote(name)} any more; it was renamed or deleted. Choose again from the list.`);
  }
  const formulaSheet = seenAs(sheet);
  if (formulaSheet === null) {
    return refuseOther(sheet.name);
  }
  return checkFormulaSheet(formulaSheet);
}

export const refuseOther = (name: string): never =>
  refuse(
    `The sheet ${quote(name)} is no formula sheet of Gramwright: its table of ingredients was not found. Choose another, or build one under New formula.`,
  );

export const seenAs = ({ name, values, shown }: SeenSheet): FormulaSheet | null => asFormulaSheet(name, values, shown);

/** The same with finished products, for whoever reads all sheets that have a row in the list. */
export const seenAsListed = ({ name, values }: SeenSheet): FormulaSheet | null =>
  asFormulaSheet(name, values, [], LISTED_SHEETS);

/** Refuses a sheet whose table shows an error, is still being calculated, or has no weights. */
export function checkFormulaSheet(sheet: FormulaSheet): FormulaSheet {
  mustBeCalculated(sheet);
  const says = sheet.text("check");
  if (!sheet.rows.some(({ weight }) => weight !== null) && says !== "" && !isError(says)) {
    refuse(`${quote(sheet.name)} has no weights yet. ${says}`);
  }
  if (!sheet.rows.some(({ weight }) => weight !== null)) {
    refuse(`${quote(sheet.name)} has no weights yet; type how much to make and the percentages first.`);
  }
  return sheet;
}

/** Refuses a sheet whose table shows an error or is still being calculated. */
export function mustBeCalculated(sheet: FormulaSheet): void {
  const cells = ["share", "grams"].flatMap((column) =>
    Array.from({ length: sheet.zone(column)?.rows ?? 0 }, (_, index) => ({
      text: sheet.text(column, index),
      at: sheet.at(column, index),
    })),
  );
  const waiting = cells.find(({ text }) => isWaitingText(text));
  if (waiting !== undefined) {
    refuse(
      `${quote(sheet.name)} is still calculating: wait until its numbers are there, then try again. If ${waiting.at} stays red, point at it: it says what to enter.`,
    );
  }
  const broken = cells.find(({ text }) => isError(text));
  if (broken !== undefined) {
    refuse(
      `${quote(sheet.name)} shows an error in ${broken.at}, so its weights are not known; point at the red cell: it says what to enter.`,
    );
  }
}
