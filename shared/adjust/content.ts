// What is typed into a formula sheet that makes its formula, as it is kept: nothing of the day's order, and nothing that is worked out.
import { refuseUnread } from "../base/refusal.ts";
import type { Value } from "../sheet/model.ts";

/** Columns that are kept row by row, table by table; prices and pieces belong to the day. */
export const TABLES = {
  rows: ["ingredient", "kind", "percent"],
  sizes: ["size_name", "size_weight", "size_loss", "size_diameter"],
  steps: ["step", "step_minutes", "step_temp", "step_how"],
} as const;
export type TableName = keyof typeof TABLES;
export const TABLE_NAMES = Object.keys(TABLES) as TableName[];

/** Single cells that are kept, as far as a sheet has them. */
export const CELLS = [
  "pre_kind",
  "pre_share",
  "pre_hydration",
  "pre_yeast",
  "pre_from",
  "pre_hours",
  "pre_step",
  "seed_hydration",
  "seed_share",
  "roll_in_name",
  "roll_in_share",
  "roll_in_of",
  "fold_1",
  "fold_2",
  "fold_3",
  "style",
  "per_area",
  "known_weight",
  "known_diameter",
  "tin_shape",
  "tin_size_1",
  "tin_size_2",
  "tin_size_3",
  "tin_size_4",
  "tin_size_5",
  "tin_kind",
  "tin_fill",
  "tin_own",
  "dough_target",
  "effective_wanted",
  "held_share",
  "egg_weight",
  "oven_step",
] as const;
export type CellName = (typeof CELLS)[number];

/** One row of a table, as many values as it has columns. */
export type Line = readonly Value[];

export type Content = {
  readonly template: string;
  readonly units: { readonly weight: "g" | "oz"; readonly temperature: "C" | "F"; readonly length: "cm" | "in" };
  readonly tables: Readonly<Record<TableName, readonly Line[]>>;
  readonly cells: Readonly<Partial<Record<CellName, Value>>>;
};

export const isBlank = (value: unknown): boolean => value === null || value === undefined || value === "";
const isEmpty = (line: Line): boolean => line.every(isBlank);

/** A cell keeps fifteen digits, and not every one of them. */
const DIGITS = 12;
export const tidy = (value: Value): Value =>
  typeof value === "number" ? Number(value.toPrecision(DIGITS)) : value === "" ? null : value;

/** The same text for the same formula, however many blank rows its sheet has. */
export function contentText({ template, units, tables, cells }: Content): string {
  const lines = (name: TableName): Line[] => {
    const all = tables[name].map((line) => line.map(tidy));
    // A size goes with the pieces of its row; elsewhere blank rows are nothing.
    const last = all.reduce((at, line, index) => (isEmpty(line) ? at : index), -1);
    return name === "sizes" ? all.slice(0, last + 1) : all.filter((line) => !isEmpty(line));
  };
  return JSON.stringify({
    template,
    units: [units.weight, units.temperature, units.length],
    tables: Object.fromEntries(TABLE_NAMES.map((name) => [name, lines(name)])),
    cells: Object.fromEntries(
      CELLS.flatMap((name) => (isBlank(cells[name]) ? [] : [[name, tidy(cells[name] ?? null)]])),
    ),
  });
}

/** Behind a size stood its area once, which the sheet works out. */
const ONCE_KEPT = 1;

const unclear = (): never => refuseUnread("The version in the formula history");
const isRecord = (raw: unknown): raw is Readonly<Record<string, unknown>> => typeof raw === "object" && raw !== null;
const keptValue = (raw: unknown): Value =>
  raw === null || typeof raw === "string" || (typeof raw === "number" && Number.isFinite(raw)) ? raw : unclear();

/** A version as it was kept; refuses what is none, as where somebody typed into the history. */
export function readContent(text: string): Content {
  const raw = parsed(text);
  if (!isRecord(raw) || typeof raw.template !== "string" || !isRecord(raw.tables) || !isRecord(raw.cells))
    return unclear();
  const [weight, temperature, length] = Array.isArray(raw.units) ? raw.units : unclear();
  const { tables, cells } = raw;
  const lines = (name: TableName): Line[] => {
    const rows = tables[name];
    if (!Array.isArray(rows)) return unclear();
    return rows.map((line: unknown) => {
      if (!Array.isArray(line) || line.length > TABLES[name].length + (name === "sizes" ? ONCE_KEPT : 0))
        return unclear();
      return TABLES[name].map((_, at) => keptValue(line[at] ?? null));
    });
  };
  return {
    template: raw.template,
    units: {
      weight: weight === "oz" ? "oz" : "g",
      temperature: temperature === "F" ? "F" : "C",
      length: length === "in" ? "in" : "cm",
    },
    tables: { rows: lines("rows"), sizes: lines("sizes"), steps: lines("steps") },
    cells: Object.fromEntries(CELLS.flatMap((name) => (name in cells ? [[name, keptValue(cells[name])]] : []))),
  };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return unclear();
  }
}
