import type { Worksheet } from "exceljs";
import { WORKED_OUT } from "../../../shared/sheet/model.ts";

const A4 = 9;
const MARGINS = { left: 0.4, right: 0.4, top: 0.5, bottom: 0.5, header: 0.2, footer: 0.2 };
/** A4 inside these margins, in pixels of 96 to the inch. */
const SHORT = (8.27 - 0.8) * 96;
const LONG = (11.69 - 1) * 96;
/** Smaller than this, 10 point type is under 6 points on paper; several pages read better. */
const MIN_SCALE = 0.6;

/** The paper of the United States, for sheets in ounces. */
const LETTER = 1 as NonNullable<Worksheet["pageSetup"]["paperSize"]>;
/** A sheet with columns folded away lies on its side, as wide as the page, in a type that is read at arm's length. */
export const foldedPage = (isInOunces: boolean): Partial<Worksheet["pageSetup"]> => ({
  paperSize: isInOunces ? LETTER : A4,
  orientation: "landscape",
  fitToPage: true,
  fitToWidth: 1,
  fitToHeight: 0,
  horizontalCentered: true,
  margins: MARGINS,
});

/** The block that begins a page where a program looks at page breaks in a sheet that fits its pages, and what tells a sheet in ounces. */
const NEXT_PAGE = "Method";
const OUNCES = /\(oz\)$/;

/** The row, counted from 0, that the second page of a folded sheet begins with, if any; and whether the sheet is in ounces. */
export function pagesOf(rows: number, textAt: (column: number, row: number) => string, columns: number) {
  const lines = Array.from({ length: rows }, (_, row) => row);
  const begins = lines.find((row) => textAt(0, row) === NEXT_PAGE);
  const isInOunces = lines.some((row) =>
    Array.from({ length: columns }, (_, column) => column).some((column) => OUNCES.test(textAt(column, row))),
  );
  return { begins, isInOunces };
}

/** Whether a sheet of so many pixels has room on upright paper in its own size. */
export const isUpright = (width: number): boolean => width <= SHORT;

/** A sheet of so many pixels: one page where it can be read; else pages as wide as the sheet, and on their side where it is wider than a page. */
export function pageOf(width: number, height: number, isInOunces: boolean): Partial<Worksheet["pageSetup"]> {
  const isOnePage = Math.min(SHORT / width, LONG / height) >= MIN_SCALE;
  return {
    paperSize: isInOunces ? LETTER : A4,
    orientation: isOnePage || SHORT / width >= MIN_SCALE ? "portrait" : "landscape",
    fitToPage: true,
    fitToWidth: 1,
    fitToHeight: isOnePage ? 1 : 0,
    horizontalCentered: true,
    margins: MARGINS,
  };
}

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
