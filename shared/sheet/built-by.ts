// Which version built a sheet: it says so in its first row, at the right end of what a screen shows.
import { VERSION } from "../base/version.ts";
import type { Zone } from "./a1.ts";

export const BUILT_BY = `Gramwright ${VERSION}`;
const SAYS = /^Gramwright (\d+)\.(\d+)\.(\d+)$/;

export const isBuiltBy = (cell: unknown): boolean => typeof cell === "string" && SAYS.test(cell.trim());

/** A screen beside the sidebar shows so much. */
const SCREEN = 920;
/** Room for the words. */
const MIN_WIDTH = 95;

/** The column for it: the last that shows them whole on the screen and has room up to what stands behind it; null where there is none. */
export function builtByColumn(first: readonly unknown[], widths: readonly number[]): number | null {
  const starts = widths.map((_, at) => widths.slice(0, at).reduce((sum, width) => sum + width, 0));
  let room = 0;
  for (let column = first.length - 1; column > 0; column--) {
    room = first[column] === "" ? room + (widths[column] ?? 0) : 0;
    if (room >= MIN_WIDTH && (starts[column] ?? 0) + MIN_WIDTH <= SCREEN) return column;
  }
  return null;
}

const MAX_ROWS = 3;

/** Where a sheet says it; other sheets know the cell by this name. */
export const BUILT_CELL = "built_by";
export function builtByZone(values: readonly (readonly unknown[])[]): Zone | undefined {
  const row = values.slice(0, MAX_ROWS).findIndex((cells) => cells.some(isBuiltBy));
  return row < 0 ? undefined : { row, column: (values[row] ?? []).findIndex(isBuiltBy), rows: 1, columns: 1 };
}

/** The version that a sheet says it was built by, where it is newer than this one; null for all others. */
export function newerBuild(values: readonly (readonly unknown[])[], own = VERSION): string | null {
  const text = values.slice(0, MAX_ROWS).flat().find(isBuiltBy);
  const parts = (version: string) => version.split(".").map(Number);
  const [built, now] = [
    parts(
      String(text ?? "")
        .trim()
        .replace("Gramwright ", ""),
    ),
    parts(own),
  ];
  if (text === undefined) return null;
  const at = built.findIndex((part, place) => part !== (now[place] ?? 0));
  return at >= 0 && (built[at] ?? 0) > (now[at] ?? 0) ? built.join(".") : null;
}

/** What is said of such a sheet; "" for any other. */
export const newerSays = (sheet: string, values: readonly (readonly unknown[])[]): string => {
  const version = newerBuild(values);
  return version === null
    ? ""
    : `Gramwright ${version} built “${sheet}”, and this is ${VERSION}. Update Gramwright before you change that sheet.`;
};
