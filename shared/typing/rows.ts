// What a sheet's cells say of rows and order, as typed weights need it.
import { gramsIn } from "../base/units.ts";
import { readCarried } from "../cells/carried-units.ts";
import { type Grid, type Ingredients, isBlank, type Spot } from "./cells.ts";
import { type Order, scaled, sumOf } from "./scaling.ts";
import type { TypedRow } from "./typed-weights.ts";

/** In the sheet's unit; ounces also as people write them, "1 lb 6 oz". */
export function weightIn(value: unknown, unit: "g" | "oz"): number | null {
  if (typeof value === "number") return Number.isFinite(value) && value >= 0 ? value : null;
  const carried = unit === "oz" ? readCarried(value) : undefined;
  return carried?.of === "weight" && carried.value >= 0 ? carried.value / gramsIn("oz") : null;
}

export const isNobodys = (grid: Grid, { columns }: Ingredients, row: number): boolean =>
  [columns.ingredient, columns.kind, columns.percent].every((column) => isBlank(grid[row]?.[column]));

const plainText = (cell: unknown): string => (typeof cell === "string" ? cell.trim().toLowerCase() : "");
export const numberOf = (cell: unknown): number => (typeof cell === "number" && Number.isFinite(cell) ? cell : 0);

export function orderOf(grid: Grid, table: Ingredients): Order {
  const { input, single } = table;
  const cell = (name: Parameters<typeof input>[0]): unknown => {
    const spot = input(name);
    return spot && grid[spot.row]?.[spot.column];
  };
  const [by, amount] = [plainText(cell("by")), cell("amount")];
  const [part, of] = [numberOf(single("roll_part")), plainText(cell("roll_in_of"))];
  const rows = rowsOf(grid, table, []);
  const { base } = scaled(rows, NO_ORDER);
  const sum = sumOf(rows, ({ percent }) => percent);
  return {
    by: WAYS.get(by) ?? "pieces",
    amount: typeof amount === "number" && amount > 0 ? amount : null,
    ordered: numberOf(single("dough_ordered")),
    mixerLimit: numberOf(cell("mixer_limit")),
    rolled: of === "flour" ? { ofMix: 0, ofFlour: base > 0 ? (part * sum) / base : 0 } : { ofMix: part, ofFlour: 0 },
  };
}

const WAYS: ReadonlyMap<string, Order["by"]> = new Map([
  ["tins", "tins"],
  ["trays", "tins"],
  ["dough", "dough"],
  ["batter", "dough"],
  ["flour", "flour"],
]);
const NO_ORDER: Order = { by: "flour", amount: null, ordered: 0, mixerLimit: 0, rolled: { ofMix: 0, ofFlour: 0 } };

export type ReadRow = TypedRow & { readonly row: number; readonly cell: unknown };

/** Rows with a percentage that counts, and those with a weight; of both kinds of weight in a row that of the whole dough is taken. */
export function rowsOf(
  grid: Grid,
  { top, total, columns, weight }: Ingredients,
  typed: readonly (Spot & { weight: number })[],
): ReadRow[] {
  const rows = Array.from({ length: Math.max(0, total - top - 1) }, (_, at) => top + 1 + at);
  return rows.flatMap((row): ReadRow[] => {
    const line = grid[row] ?? [];
    const of = (isWhole: boolean) =>
      typed.find((one) => one.row === row && (one.column === weight) === isWhole)?.weight ?? null;
    const [whole, perMix] = [of(true), of(false)];
    const counts = line[columns.counts] === 1;
    if (!counts && whole === null && perMix === null) return [];
    const cell = line[columns.percent];
    const percent = counts ? numberOf(cell) : 0;
    return [
      {
        row,
        cell,
        percent,
        flour: numberOf(line[columns.flour_part]),
        weight: whole,
        perMix: whole === null ? perMix : null,
      },
    ];
  });
}
