import type { Worksheet } from "exceljs";
import { WORKED_OUT } from "../../../shared/sheet/model.ts";

const A4 = 9;
/** Sheets on their side are as wide as the paper allows: inches that every printer can leave. */
const NARROW = 0.25;
const MARGINS = { left: 0.4, right: 0.4, top: 0.5, bottom: 0.5, header: 0.2, footer: 0.2 };
/** A4 inside these margins, in pixels of 96 to the inch. */
const SHORT = (8.27 - 0.8) * 96;
const LONG = (11.69 - 1) * 96;
const SIDE = (11.69 - 2 * NARROW) * 96;
/** Smaller than this, 10 point type is under 6 points on paper; several pages read better. */
const MIN_SCALE = 0.6;

/** The paper of the United States, for sheets in ounces. */
export const LETTER = 1 as NonNullable<Worksheet["pageSetup"]["paperSize"]>;
/** A sheet with columns folded away lies on its side, as wide as the page, in a type that is read at arm's length. */
export const foldedPage = (isInOunces: boolean): Partial<Worksheet["pageSetup"]> => ({
  paperSize: isInOunces ? LETTER : A4,
  orientation: "landscape",
  fitToPage: true,
  fitToWidth: 1,
  fitToHeight: 0,
  horizontalCentered: true,
  margins: { ...MARGINS, left: NARROW, right: NARROW },
});

/** The block that begins a page where a program looks at page breaks in a sheet that fits its pages, and what tells a sheet in ounces. */
const NEXT_PAGE = "Method";
/** A block of every sheet that makes a product: those are long, and run on over their pages. */
const LABEL = "Label, an estimate";
/** Blocks of formula sheets and of finished products, which no other sheet has. */
const OF_PRODUCTS = ["Set-up", "One piece"];
/** In the second column of a table that has two pages side by side, its first column and its headings on each. */
const SIDE_BY_SIDE = "Name on the label";
const UNIT = /\((oz|g)\)$/;

/** The row, counted from 0, that the second page of a folded sheet begins with, if any; and what the sheet says it weighs in. */
export function pagesOf(rows: number, textAt: (column: number, row: number) => string, columns: number) {
  const lines = Array.from({ length: rows }, (_, row) => row);
  const begins = lines.find((row) => textAt(0, row) === NEXT_PAGE);
  const units = lines.flatMap((row) =>
    Array.from({ length: columns }, (_, column) => UNIT.exec(textAt(column, row))?.[1] ?? "").filter(
      (one) => one !== "",
    ),
  );
  const weighs = units.includes("oz") ? "oz" : (units[0] ?? null);
  const hasLabel = lines.some((row) => textAt(0, row) === LABEL);
  const isProduct = lines.some((row) => OF_PRODUCTS.includes(textAt(0, row)));
  const sideBySide = lines.find((row) => textAt(1, row) === SIDE_BY_SIDE);
  return { begins, weighs, hasLabel, isProduct, sideBySide };
}

/** Whether a sheet of so many pixels has room on upright paper in its own size. */
export const isUpright = (width: number): boolean => width <= SHORT;

/** A sheet of so many pixels: one page where it can be read; else pages as wide as the sheet. It lies on its side where its type is larger so. */
export function pageOf(width: number, height: number, isInOunces: boolean): Partial<Worksheet["pageSetup"]> {
  const upright = Math.min(SHORT / width, LONG / height, 1);
  const onSide = Math.min(SIDE / width, SHORT / height, 1);
  const isOnePage = Math.max(upright, onSide) >= MIN_SCALE;
  const isUp = isOnePage ? upright >= onSide : SHORT / width >= MIN_SCALE;
  return {
    paperSize: isInOunces ? LETTER : A4,
    orientation: isUp ? "portrait" : "landscape",
    fitToPage: true,
    fitToWidth: 1,
    fitToHeight: isOnePage ? 1 : 0,
    horizontalCentered: true,
    margins: isUp ? MARGINS : { ...MARGINS, left: NARROW, right: NARROW },
  };
}

/** A table too wide for a page at full size has two side by side; row `heads`, counted from 0, has its headings. */
export const twoPages = (heads: number, isInOunces: boolean): Partial<Worksheet["pageSetup"]> => ({
  ...foldedPage(isInOunces),
  fitToWidth: 2,
  horizontalCentered: false,
  printTitlesColumn: "A:A",
  printTitlesRow: `${heads + 1}:${heads + 1}`,
});

/** How many columns and rows are for paper: those before what the sheet only works with, beside or below. */
export function printArea(
  columns: number,
  rows: number,
  textAt: (column: number, row: number) => string,
): { readonly columns: number; readonly rows: number } {
  let most = columns;
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < most; column++) {
      if (!textAt(column, row).startsWith(WORKED_OUT)) continue;
      if (column === 0) return { columns: most, rows: row };
      most = column;
    }
  }
  return { columns: most, rows };
}

/** The row after the last that shows something on the page: what a sheet works with beside it may go further down. */
export function lastShown(columns: number, rows: number, isShown: (column: number, row: number) => boolean): number {
  let last = rows;
  while (last > 1 && !Array.from({ length: columns }, (_, at) => at).some((at) => isShown(at, last - 1))) last -= 1;
  return last;
}

/** Rows, counted from 0, that begin a page so that no block is parted that has room on one: `begins` are the first rows of blocks. */
export function pageStarts(
  begins: readonly number[],
  heights: readonly number[],
  { orientation }: Partial<Worksheet["pageSetup"]>,
  width: number,
): number[] {
  const [across, down] =
    orientation === "landscape" ? [LONG + 2 * (0.5 - NARROW) * 96, SHORT - 0.2 * 96] : [SHORT, LONG];
  const room = SURE * down * Math.max(1, (WIDER * width) / across);
  const starts: number[] = [];
  let used = heights.slice(0, begins[0]).reduce((sum, one) => sum + one, 0);
  begins.forEach((row, at) => {
    const height = heights.slice(row, begins[at + 1]).reduce((sum, one) => sum + one, 0);
    // The first block stands under the title.
    if (at > 0 && used + height > room && height <= room) {
      starts.push(row);
      used = 0;
    }
    used = (used + height) % room;
  });
  return starts;
}
/** Columns come out wider where a program lacks the font that their widths are counted in. */
const WIDER = 1.08;
/** Programs differ by a little in how high a row is, and Letter on its side is a little wider than high A4 is. */
const SURE = 0.93;
