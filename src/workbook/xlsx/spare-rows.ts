import type { Worksheet } from "exceljs";
import type { Engine } from "../engine/engine.ts";
import type { Zone } from "../engine/library.ts";

/**
 * Folds the rows to spare at the end of each table, so that they do not print: a click on the plus beside them brings them back.
 * A table has a hidden row with a formula for all its rows. One in which nothing is typed yet keeps them open.
 */
export function foldSpareRows(
  engine: Engine,
  sheet: Worksheet,
  sheetId: string,
  { columns, rows, isShown }: Page,
): ReadonlySet<number> {
  const page = Array.from({ length: columns }, (_, column) => column);
  const folded = new Set<number>();
  for (let hidden = 0; hidden < rows; hidden++) {
    if (!engine.get<boolean>("isRowHidden", sheetId, hidden)) continue;
    const ends = page.map(
      (col) => engine.get<Zone | undefined>("getSpreadZone", { sheetId, col, row: hidden })?.bottom ?? hidden,
    );
    const end = Math.max(...ends);
    const isBlank = (row: number) => !page.some((column) => isShown(column, row));
    let last = end - 1;
    while (last > hidden && isBlank(last)) last -= 1;
    if (last === hidden) continue;
    for (let row = last + 1; row < end; row++) {
      folded.add(row);
      const line = sheet.getRow(row + 1);
      line.outlineLevel = 1;
      line.hidden = true;
    }
  }
  return folded;
}

type Page = {
  readonly columns: number;
  readonly rows: number;
  readonly isShown: (column: number, row: number) => boolean;
};
