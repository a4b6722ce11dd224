// What is to be written where weights, or anything else, were typed over the filled cells of a formula sheet. Reads a grid, writes nothing.
import { onSteps } from "../base/scaling.ts";
import { weight as asWeight, ratio } from "../base/units.ts";
import { a1, type Zone } from "../sheet/a1.ts";
import { filledTables, type Grid, type Ingredients, ingredientsOf, isBlank, isBlocked, type Spot } from "./cells.ts";
import { isNobodys, numberOf, orderOf, type ReadRow, rowsOf, weightIn } from "./rows.ts";
import * as says from "./sentences.ts";
import { takeWeights } from "./typed-weights.ts";

/** Cells that hold something over a column that is filled, found in one reading of the sheet. */
export type TypedOver = {
  readonly table: Ingredients;
  readonly grid: Grid;
  readonly weights: readonly (Spot & { readonly value: unknown })[];
  /** Other cells of the edit. */
  readonly others: readonly (Spot & { readonly value: unknown })[];
};

export type Writes = {
  /** Numbers below each other. */
  readonly percents: readonly (Spot & { readonly cells: readonly number[] })[];
  readonly amount: (Spot & { readonly value: number }) | null;
  /** Addresses of cells to be emptied, and of those whose weight was taken. */
  readonly clear: readonly string[];
  readonly taken: readonly string[];
  readonly notes: readonly { readonly cells: readonly string[]; readonly text: string }[];
  /** What stood there before, to know an undone edit by. */
  readonly before: string;
};

/** Null where the sheet is none of ours. Of `edited` the cells that are worked out are looked at; weights wherever they stand. */
export function typedOver(grid: Grid, edited: Zone | null): TypedOver | null {
  const table = ingredientsOf(grid);
  if (table === null) return null;
  const weights = [table.weight, table.perMix].flatMap((column) =>
    column >= 0 && isBlocked(grid, table.top, column) ? filledIn(grid, column, table.top + 1, table.total - 1) : [],
  );
  const isWeight = (spot: Spot) => weights.some(({ row, column }) => row === spot.row && column === spot.column);
  return {
    table,
    grid,
    weights,
    others: edited === null ? [] : editedOver(grid, edited).filter((one) => !isWeight(one)),
  };
}

function filledIn(grid: Grid, column: number, first: number, last: number) {
  const rows = Array.from({ length: Math.max(0, last - first + 1) }, (_, at) => first + at);
  return rows.map((row) => ({ row, column, value: grid[row]?.[column] })).filter(({ value }) => !isBlank(value));
}

function editedOver(grid: Grid, { row, column, rows, columns }: Zone) {
  return filledTables(grid).flatMap(({ top, last }) =>
    Array.from({ length: columns }, (_, at) => column + at).flatMap((at) =>
      isBlocked(grid, top, at) ? filledIn(grid, at, Math.max(top + 1, row), Math.min(last, row + rows - 1)) : [],
    ),
  );
}

/** The order as typed; `hasFormula` says of a cell with a weight that it holds a formula. */
export function writesFor(typed: TypedOver, hasFormula: (spot: Spot) => boolean): Writes {
  const { table, grid, weights, others } = typed;
  const notes = new Map<string, string[]>();
  const note = (text: string, spot: Spot) => notes.set(text, [...(notes.get(text) ?? []), a1(spot)]);
  for (const one of others)
    note(table.stages.includes(one.column) ? says.saysStages(one.value) : says.saysFilled(one.value), one);
  const candidates = weights.map((one) => ({
    ...one,
    weight: hasFormula(one) ? null : weightIn(one.value, table.unit),
  }));
  const usable = candidates.filter((one): one is (typeof candidates)[number] & { weight: number } => {
    if (one.weight === null)
      note(hasFormula(one) ? says.saysFormula(table.unit) : says.saysNoWeight(one.value, table.unit), one);
    else if (isNobodys(grid, table, one.row)) note(says.saysNoRow(one.value), one);
    else return true;
    return false;
  });
  const order = orderOf(grid, table);
  const rows = rowsOf(grid, table, usable);
  const outcome = usable.length === 0 ? null : takeWeights(rows, order);
  const isTaken = outcome !== null && !("back" in outcome);
  if (outcome !== null && "back" in outcome)
    for (const one of usable) note(says.saysBack(one.value, outcome.back), one);
  else if (outcome !== null) {
    for (const one of usable) {
      const text = remarkOn(one, table, rows);
      if (text !== "") note(text, one);
    }
    if (outcome.isOrderKept && usable[0] !== undefined) note(says.saysOrderKept(), usable[0]);
  }
  const amountAt = table.input("amount");
  return {
    percents: isTaken ? runsOf(rows, outcome.percents, table.columns.percent) : [],
    amount: isTaken && outcome.amount !== null && amountAt ? { ...amountAt, value: outcome.amount } : null,
    clear: [...weights, ...others].map(a1),
    taken: isTaken ? usable.map(a1) : [],
    notes: oneEach(notes),
    before: JSON.stringify([
      candidates.map((one) => [a1(one), one.value]),
      rows.map(({ cell }) => cell),
      order.by,
      order.amount,
    ]),
  };
}

/** A cell has one note: the last that was said of it. */
function oneEach(notes: ReadonlyMap<string, readonly string[]>): Writes["notes"] {
  const last = new Map<string, string>();
  for (const [text, cells] of notes) for (const cell of cells) last.set(cell, text);
  return [...notes.keys()].flatMap((text) => {
    const cells = [...last].flatMap(([cell, one]) => (one === text ? [cell] : []));
    return cells.length === 0 ? [] : [{ text, cells }];
  });
}

/** The scales may show another weight than the one that was typed for a mix. */
function remarkOn(
  { column, row, weight }: Spot & { weight: number },
  table: Ingredients,
  rows: readonly ReadRow[],
): string {
  if (column !== table.perMix || rows.find((one) => one.row === row)?.perMix === null) return "";
  const steps = [numberOf(table.single("coarse")), numberOf(table.single("fine"))].filter((step) => step > 0);
  const [onScale] = onSteps([asWeight(weight)], steps, ratio(SHIFT));
  return onScale === undefined || onScale === null || Math.abs(onScale - weight) < 1e-9
    ? ""
    : says.saysOnSteps(weight, onScale, table.unit);
}

/** How far a step of the scales may move a weight, as on the sheet. */
const SHIFT = 0.02;
/** What binary arithmetic adds is no change: the old weight typed again leaves every percentage as it is. */
const SAME = 1e-12;

/** Percentages that change, those below each other together. */
function runsOf(rows: readonly ReadRow[], percents: readonly number[], column: number): Writes["percents"] {
  const runs: { row: number; column: number; cells: number[] }[] = [];
  rows.forEach(({ row, cell }, at) => {
    const percent = percents[at] ?? 0;
    if (typeof cell === "number" && Math.abs(percent - cell) <= SAME * Math.max(Math.abs(cell), percent)) return;
    const last = runs[runs.length - 1];
    if (last !== undefined && last.row + last.cells.length === row) last.cells.push(percent);
    else runs.push({ row, column, cells: [percent] });
  });
  return runs;
}
