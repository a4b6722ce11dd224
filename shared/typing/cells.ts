// Where the cells stand that a typed weight concerns, and what they hold.
import { trimmedText } from "../base/words.ts";
import { BESIDE, HEADS, INPUTS, MESSAGE, SINGLES, TOTAL } from "./words.ts";

/** What getValues() gives, from A1. */
export type Grid = readonly (readonly unknown[])[];
/** Counted from 0. */
export type Spot = { readonly row: number; readonly column: number };

/** The table of ingredients: `top` is the hidden row of its formulas, `total` the last one. */
export type Ingredients = {
  readonly unit: "g" | "oz";
  readonly top: number;
  readonly total: number;
  readonly columns: Readonly<Record<"ingredient" | "kind" | "percent" | "counts" | "flour_part", number>>;
  /** Columns of weights that may be typed over, as far as there are any; `stages` are those of preferment and final mix. */
  readonly weight: number;
  readonly perMix: number;
  readonly stages: readonly number[];
  readonly single: (name: keyof typeof SINGLES) => unknown;
  readonly input: (name: keyof typeof INPUTS) => Spot | undefined;
};

const UNITS = ["g", "oz"] as const;
const inUnit = (text: string, unit: string): string => text.replace("{weight}", unit);

/** Null where the sheet is no formula sheet of Gramwright, or its table is damaged. */
export function ingredientsOf(grid: Grid): Ingredients | null {
  const wanted = [HEADS.ingredient, HEADS.kind, HEADS.percent, BESIDE.counts, BESIDE.flour_part];
  const head = grid.findIndex((row) => wanted.every((text) => row.some((cell) => trimmedText(cell) === text)));
  const texts = (grid[head] ?? []).map(trimmedText);
  const unit = UNITS.find((one) => texts.includes(inUnit(HEADS.weight, one)));
  if (head < 0 || unit === undefined) return null;
  const column = (text: string) => texts.indexOf(inUnit(text, unit));
  const ingredient = column(HEADS.ingredient);
  const total = grid.findIndex((row, at) => at > head && trimmedText(row[ingredient]).startsWith(TOTAL));
  if (total < 0) return null;
  const above = grid.slice(0, head);
  return {
    unit,
    top: head + 1,
    total,
    columns: {
      ingredient,
      kind: column(HEADS.kind),
      percent: column(HEADS.percent),
      counts: texts.lastIndexOf(BESIDE.counts),
      flour_part: texts.lastIndexOf(BESIDE.flour_part),
    },
    weight: column(HEADS.weight),
    perMix: column(HEADS.per_mix),
    stages: [HEADS.pre_shown, HEADS.levain_shown, HEADS.final_shown].map(column).filter((at) => at >= 0),
    single: (name) => {
      const label = spotOf(above, SINGLES[name], texts.lastIndexOf(MESSAGE));
      return label && grid[label.row + 1]?.[label.column];
    },
    input: (name) => {
      const { says, across } = INPUTS[name];
      const label = spotOf(grid, inUnit(says, unit), 0);
      return label && { row: label.row, column: label.column + across };
    },
  };
}

function spotOf(grid: Grid, text: string, from: number): Spot | undefined {
  for (const [row, line] of grid.entries()) {
    const column = line.findIndex((cell, at) => at >= from && trimmedText(cell) === text);
    if (column >= 0) return { row, column };
  }
  return undefined;
}

/** Whether a formula stands in the hidden row that could not spread because something is typed over its column. */
export const isBlocked = (grid: Grid, top: number, column: number): boolean =>
  /^#/.test(trimmedText(grid[top]?.[column]));

export const isBlank = (cell: unknown): boolean => cell === "" || cell === undefined || cell === null;

/** The hidden rows of all tables, each with the last row that its formulas fill. */
export function filledTables(grid: Grid): { top: number; last: number }[] {
  const heads = grid.flatMap((row, at) => (row.some((cell) => trimmedText(cell) === MESSAGE) ? [at] : []));
  return heads.map((head, index) => {
    const line = grid[head] ?? [];
    const from = line.findIndex((cell) => trimmedText(cell) === MESSAGE);
    const end = heads[index + 1] ?? grid.length;
    let last = head;
    for (let column = from; column < line.length; column++) {
      if (trimmedText(line[column]) === "") continue;
      let row = head;
      while (row + 1 < end && !isBlank(grid[row + 1]?.[column])) row += 1;
      last = Math.max(last, row);
    }
    return { top: head + 1, last };
  });
}
