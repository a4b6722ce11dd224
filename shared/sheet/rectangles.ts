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
  // Rows that are alike below each other go together, and columns: a table of many rows is as one.
  const marks = texts.map((row, down) =>
    row.map((text, at) => (text !== "" ? OPEN : values[down]?.[at] !== "" ? TYPED : "")),
  );
  const rows = groups(marks.map((row) => row.join(" ")));
  const columns = groups((marks[0] ?? []).map((_, at) => rows.map(({ from }) => marks[from]?.[at] ?? "").join(" ")));
  const gridOf = (mark: string) =>
    rows.map((row) => columns.map((column) => (marks[row.from]?.[column.from] === mark ? row.many * column.many : 0)));
  const typed = summed(gridOf(TYPED));
  const open = gridOf(OPEN);
  const results: FormulaRectangle[] = [];
  for (;;) {
    const zone = largest(open, typed);
    if (zone === undefined) return results;
    for (const row of open.slice(zone.row, zone.row + zone.rows)) row.fill(0, zone.column, zone.column + zone.columns);
    const [from, to] = [placeOf(rows, zone.row), placeOf(rows, zone.row + zone.rows)];
    const [left, right] = [placeOf(columns, zone.column), placeOf(columns, zone.column + zone.columns)];
    results.push({ row: from, column: left, cells: texts.slice(from, to).map((cells) => cells.slice(left, right)) });
  }
}

const [OPEN, TYPED] = ["=", "t"];

/** Runs of the same text: where each begins, and how long it is. */
type Group = { readonly from: number; many: number };
function groups(texts: readonly string[]): Group[] {
  const all: Group[] = [];
  texts.forEach((text, at) => {
    const last = all[all.length - 1];
    if (last !== undefined && texts[last.from] === text) last.many += 1;
    else all.push({ from: at, many: 1 });
  });
  return all;
}

/** Where a group begins; the one after the last at the end. */
function placeOf(all: readonly Group[], at: number): number {
  const last = all[all.length - 1];
  return all[at]?.from ?? (last === undefined ? 0 : last.from + last.many);
}

/** How many marks stand above and left of each corner, row by row, so that four corners tell those of a rectangle. */
type Sums = { readonly width: number; readonly counts: Int32Array };

/** The rectangle with most open formulas in it, and nothing typed, from a row and a column with some to others with some. */
function largest(grid: readonly (readonly number[])[], typed: Sums): Zone | undefined {
  const open = summed(grid);
  const rows = grid.flatMap((row, at) => (row.some((many) => many > 0) ? [at] : []));
  const columns = (grid[0] ?? []).flatMap((_, at) => (grid.some((row) => (row[at] ?? 0) > 0) ? [at] : []));
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

function summed(marks: readonly (readonly number[])[]): Sums {
  const width = (marks[0]?.length ?? 0) + 1;
  const counts = new Int32Array((marks.length + 1) * width);
  for (const [down, row] of marks.entries()) {
    let ofRow = 0;
    const below = (down + 1) * width + 1;
    for (let across = 0; across < row.length; across++) {
      ofRow += row[across] ?? 0;
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
