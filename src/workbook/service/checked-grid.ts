// A grid that a script hands over: of the range's size, and written in runs of equal cells.
import type { Zone } from "../engine/library.ts";
import { columnsOf, rowsOf } from "../engine/places.ts";

/** Checks a grid against a zone and hands out each different value with the blocks of cells that have it. */
export function eachRun(grid: unknown, zone: Zone, use: (value: unknown, zones: readonly Zone[]) => void): void {
  const runs = new Map<unknown, Zone[]>();
  checkedGrid(grid, zone).forEach((row, down) => {
    row.forEach((value, across) => {
      const zones = runs.get(value) ?? [];
      if (zones.length === 0) runs.set(value, zones);
      const [col, line] = [zone.left + across, zone.top + down];
      const last = zones[zones.length - 1];
      if (last && last.top === line && last.right === col - 1) last.right = col;
      else zones.push({ left: col, top: line, right: col, bottom: line });
    });
  });
  for (const [value, zones] of runs) use(value, joinedDown(zones));
}

/** Runs that stand above each other become one block, so that a row put in between belongs to it. */
function joinedDown(zones: readonly Zone[]): Zone[] {
  const blocks: Zone[] = [];
  for (const zone of zones) {
    const above = blocks.find(
      ({ left, right, bottom }) => left === zone.left && right === zone.right && bottom === zone.top - 1,
    );
    if (above) above.bottom = zone.bottom;
    else blocks.push({ ...zone });
  }
  return blocks;
}

/** The values of a grid, in Google's words when its size is not the range's. */
export function checkedGrid(grid: unknown, zone: Zone): unknown[][] {
  if (!Array.isArray(grid)) throw new Error("A grid is a list of rows");
  const [rows, columns] = [rowsOf(zone), columnsOf(zone)];
  if (grid.length !== rows) {
    throw new Error(
      `The number of rows in the data does not match the number of rows in the range. The data has ${grid.length} but the range has ${rows}.`,
    );
  }
  for (const row of grid) {
    if (!Array.isArray(row)) throw new Error("A row of a grid is a list of cells");
    if (row.length !== columns) {
      throw new Error(
        `The number of columns in the data does not match the number of columns in the range. The data has ${row.length} but the range has ${columns}.`,
      );
    }
  }
  return grid as unknown[][];
}
