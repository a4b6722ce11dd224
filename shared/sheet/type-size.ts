import { type Zone, zoneA1 } from "./a1.ts";
import type { Table } from "./model.ts";
import type { Appearance } from "./theme.ts";

/** Headings, and columns of long texts; what a sheet only works with has one line a row. */
export function wrappedRanges({ table, row, column }: { table: Table } & Pick<Zone, "row" | "column">): string[] {
  const texts = table.columns.flatMap(({ wraps }, at) =>
    wraps ? [zoneA1({ row: row + 1, column: column + at, rows: table.rows + 2, columns: 1 })] : [],
  );
  if (table.hidden) {
    const shown = table.columns.filter(({ role }) => role !== "helper").length;
    return table.tallHead ? [zoneA1({ row, column, rows: 1, columns: shown }), ...texts] : texts;
  }
  // Helpers beside a page have one line.
  return table.columns.every(({ role }) => role === "helper")
    ? texts
    : [zoneA1({ row, column, rows: 1, columns: table.columns.length }), ...texts];
}

/** Looks in a larger type; 1 is the size of a formula sheet. */
export function inType(appearances: readonly (readonly Appearance[])[], type = 1): readonly (readonly Appearance[])[] {
  if (type === 1) return appearances;
  return appearances.map((row) =>
    row.map((appearance) => ({ ...appearance, size: Math.round(appearance.size * type) })),
  );
}
