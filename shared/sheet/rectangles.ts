import type { Zone } from "./a1.ts";

export type FormulaAt = { readonly row: number; readonly column: number; readonly formula: string };
export type FormulaRectangle = {
  readonly row: number;
  readonly column: number;
  readonly cells: readonly (readonly string[])[];
};

/**
 * As few rectangles as hold all formulas and no typed cell, because each is one call when it is written; the one with most
 * formulas first. Cells without a formula are "" in it: writing that leaves a blank cell blank.
 */
export function rectangles(
  formulas: readonly FormulaAt[],
  values: readonly (readonly unknown[])[],
): FormulaRectangle[] {
  const texts = values.map((row) => row.map(() => ""));
  for (const { row, column, formula } of formulas) texts[row]?.splice(column, 1, formula);
  const typed = summed(values.map((row) => row.map((value) => value !== "")));
  const open = texts.map((row) => row.map((text) => text !== ""));
  const rows = inOrder(formulas.map(({ row }) => row));
  const columns = inOrder(formulas.map(({ column }) => column));
  const results: FormulaRectangle[] = [];
  for (;;) {
    const zone = largest(rows, columns, typed, summed(open));
    if (zone === undefined) return results;
    const end = zone.column + zone.columns;
    const within = { from: zone.row, to: zone.row + zone.rows };
    results.push({
      row: zone.row,
      column: zone.column,
      cells: texts.slice(within.from, within.to).map((cells) => cells.slice(zone.column, end)),
    });
    for (const row of open.slice(within.from, within.to)) row.fill(false, zone.column, end);
  }
}

const inOrder = (numbers: readonly number[]) => [...new Set(numbers)].sort((a, b) => a - b);

type Sums = readonly (readonly number[])[];

/** The rectangle between rows and columns of formulas with most open formulas in it, and nothing typed. */
function largest(rows: readonly number[], columns: readonly number[], typed: Sums, open: Sums): Zone | undefined {
  let best: Zone | undefined;
  let most = 0;
  /** Open formulas that a rectangle from here down to a row can hold at most. */
  const hope = (row: number, column: number, last: number, right: number): number =>
    within(open, { row, column, rows: last - row + 1, columns: (columns[right - 1] ?? column) - column + 1 });
  const lowest = rows[rows.length - 1] ?? 0;
  for (const [from, row] of rows.entries()) {
    for (const [left, column] of columns.entries()) {
      let widest = columns.length;
      if (hope(row, column, lowest, widest) <= most) continue;
      for (const last of rows.slice(from)) {
        if (hope(row, column, last, widest) <= most) continue;
        // What is typed in a shorter rectangle is typed in every longer one.
        for (let right = left; right < widest; right++) {
          const zone = { row, column, rows: last - row + 1, columns: (columns[right] ?? 0) - column + 1 };
          if (within(typed, zone) > 0) widest = right;
          else if (within(open, zone) > most) {
            best = zone;
            most = within(open, zone);
          }
        }
      }
    }
  }
  return best;
}

/** Marks above and left of every corner, so that four corners tell those of a rectangle. */
function summed(marks: readonly (readonly boolean[])[]): Sums {
  const sums = [Array<number>((marks[0]?.length ?? 0) + 1).fill(0)];
  for (const row of marks) {
    const above = sums[sums.length - 1] ?? [];
    const next = [0];
    for (const [at, mark] of row.entries()) {
      next.push((next[at] ?? 0) + (above[at + 1] ?? 0) - (above[at] ?? 0) + (mark ? 1 : 0));
    }
    sums.push(next);
  }
  return sums;
}

function within(sums: Sums, { row, column, rows, columns }: Zone): number {
  const at = (down: number, across: number) => sums[down]?.[across] ?? 0;
  return at(row + rows, column + columns) - at(row, column + columns) - at(row + rows, column) + at(row, column);
}
