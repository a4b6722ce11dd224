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

/** How many marks stand above and left of each corner, row by row, so that four corners tell those of a rectangle. */
type Sums = { readonly width: number; readonly counts: Int32Array };

/** The rectangle between rows and columns of formulas with most open formulas in it, and nothing typed. */
function largest(rows: readonly number[], columns: readonly number[], typed: Sums, open: Sums): Zone | undefined {
  let best: Zone | undefined;
  let most = 0;
  const end = (rows[rows.length - 1] ?? 0) + 1;
  for (let from = 0; from < rows.length; from++) {
    for (let left = 0; left < columns.length; left++) {
      const [row, column] = [rows[from] ?? 0, columns[left] ?? 0];
      let widest = columns.length;
      /** Open formulas that a rectangle from here down to a row can hold at most. */
      const hope = (bottom: number) => within(open, row, column, bottom, (columns[widest - 1] ?? column) + 1);
      if (hope(end) <= most) continue;
      for (let lowest = from; lowest < rows.length; lowest++) {
        const last = rows[lowest] ?? 0;
        if (hope(last + 1) <= most) continue;
        // What is typed in a shorter rectangle is typed in every longer one.
        for (let right = left; right < widest; right++) {
          const beyond = (columns[right] ?? 0) + 1;
          if (within(typed, row, column, last + 1, beyond) > 0) widest = right;
          else if (within(open, row, column, last + 1, beyond) > most) {
            best = { row, column, rows: last - row + 1, columns: beyond - column };
            most = within(open, row, column, last + 1, beyond);
          }
        }
      }
    }
  }
  return best;
}

function summed(marks: readonly (readonly boolean[])[]): Sums {
  const width = (marks[0]?.length ?? 0) + 1;
  const counts = new Int32Array((marks.length + 1) * width);
  for (const [down, row] of marks.entries()) {
    let ofRow = 0;
    const below = (down + 1) * width + 1;
    for (let across = 0; across < row.length; across++) {
      if (row[across]) ofRow += 1;
      counts[below + across] = ofRow + (counts[below - width + across] ?? 0);
    }
  }
  return { width, counts };
}

/** The marks in a rectangle: `bottom` and `right` are the row and the column after its last. */
function within({ width, counts }: Sums, top: number, left: number, bottom: number, right: number): number {
  const [above, below] = [top * width, bottom * width];
  const [inAll, aside] = [counts[below + right] ?? 0, counts[below + left] ?? 0];
  return inAll - aside - (counts[above + right] ?? 0) + (counts[above + left] ?? 0);
}
