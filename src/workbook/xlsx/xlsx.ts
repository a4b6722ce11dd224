import type { Worksheet } from "exceljs";
import { ACCENT, APPEARANCES } from "../../../shared/sheet/theme.ts";
import type { Engine } from "../engine/engine.ts";
import type { Position, Zone } from "../engine/library.ts";
import { a1Of } from "../engine/places.ts";
import { WORKBOOK_NAME } from "../service/sheets.ts";
import { argb, columnWidth, rowHeight } from "./appearance.ts";
import { writeCells } from "./cells.ts";
import { foldedPage, isUpright, LETTER, lastShown, pageOf, pageStarts, pagesOf, printArea, twoPages } from "./page.ts";
import { writeConditionals, writeValidations } from "./rules.ts";
import { foldSpareRows } from "./spare-rows.ts";

/** 15 points, in pixels: what a spreadsheet makes a row of 10 or 11 point type. */
const USUAL_ROW = 20;

type NamedRange = { readonly name: string; readonly range: { readonly sheetId: string; readonly zone: Zone } };

/**
 * The whole workbook as an .xlsx file: plain formulas as formulas that any program calculates again when it opens the
 * file, cells of custom functions as the values they show, with a note on the cell that held the function.
 */
export async function xlsxBytes(engine: Engine): Promise<Uint8Array> {
  const { default: exceljs } = await import("exceljs");
  const book = new exceljs.Workbook();
  book.title = WORKBOOK_NAME;
  book.calcProperties.fullCalcOnLoad = true;
  const all = engine.get<readonly string[]>("getSheetIds");
  const isFilled = (id: string) => engine.get<readonly Position[]>("getEvaluatedCellsPositions", id).length > 0;
  // The empty sheet that every new workbook starts with is not worth a page.
  const sheetIds = all.some(isFilled) ? all.filter(isFilled) : all;
  for (const sheetId of sheetIds) book.addWorksheet(engine.get<string>("getSheetName", sheetId));
  const units = new Map<Worksheet, string | null>();
  for (const sheetId of sheetIds) {
    const sheet = book.getWorksheet(engine.get<string>("getSheetName", sheetId));
    if (!sheet) continue;
    units.set(sheet, writeShape(engine, sheet, sheetId));
    writeCells(engine, sheet, sheetId);
    writeValidations(engine, book, sheet, sheetId);
    writeConditionals(engine, sheet, sheetId);
  }
  // A sheet that does not say what it weighs in, such as a timetable, goes on the paper of most that do.
  const many = (unit: string) => [...units.values()].filter((one) => one === unit).length;
  for (const [sheet, unit] of units) if (unit === null && many("oz") > many("g")) sheet.pageSetup.paperSize = LETTER;
  for (const { name, range } of engine.get<readonly NamedRange[]>("getNamedRanges")) {
    const sheet = engine.get<string>("getSheetName", range.sheetId).replace(/'/g, "''");
    book.definedNames.add(`'${sheet}'!${a1Of(engine.library, range.zone).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2")}`, name);
  }
  return new Uint8Array(await book.xlsx.writeBuffer());
}

/** The same for Node. */
export const toXlsx = async (engine: Engine): Promise<Buffer> => Buffer.from(await xlsxBytes(engine));

/** Widths, heights and paper of a sheet; answers what it says it weighs in. */
function writeShape(engine: Engine, sheet: Worksheet, sheetId: string): string | null {
  const { xSplit, ySplit } = engine.get<{ xSplit: number; ySplit: number }>("getPaneDivisions", sheetId);
  const showGridLines = engine.get<boolean>("getGridLinesVisibility", sheetId);
  const frozen = xSplit > 0 || ySplit > 0;
  sheet.views = [frozen ? { state: "frozen", xSplit, ySplit, showGridLines } : { state: "normal", showGridLines }];
  const { color } = engine.get<{ color?: string }>("getSheet", sheetId);
  if (color) sheet.properties.tabColor = argb(color);
  const { right, bottom } = usedZone(engine.get<readonly { id: number }[]>("getCells", sheetId), (id) =>
    engine.get<Position>("getCellPosition", id),
  );
  for (let col = 0; col <= right; col++)
    sheet.getColumn(col + 1).width = columnWidth(engine.get<number>("getColSize", sheetId, col));
  for (let row = 0; row <= bottom; row++) {
    const size = engine.get<number | undefined>("getUserRowSize", sheetId, row);
    if (size !== undefined) sheet.getRow(row + 1).height = rowHeight(size);
  }
  const page = foldAway(engine, sheet, sheetId, right + 1, bottom + 1);
  const textAt = (col: number, row: number) => {
    const { value } = engine.evaluated({ sheetId, col, row });
    return typeof value === "string" ? value : "";
  };
  const area = printArea(page, bottom + 1, textAt);
  const isFolded = page <= right;
  const { columns } = area;
  const isShown = (col: number, row: number) =>
    !["", null].includes(engine.evaluated({ sheetId, col, row }).value as "");
  const rows = isFolded || columns <= right ? lastShown(columns, area.rows, isShown) : area.rows;
  const sum = (sizes: readonly number[]) => sizes.reduce((all, one) => all + one, 0);
  const width = sum(Array.from({ length: columns }, (_, col) => engine.get<number>("getColSize", sheetId, col)));
  const { begins, weighs, hasLabel, isProduct, sideBySide } = pagesOf(rows, textAt, columns);
  const spare =
    isFolded && isProduct ? foldSpareRows(engine, sheet, sheetId, { columns, rows, isShown }) : new Set<number>();
  const isHidden = (row: number) => spare.has(row) || engine.get<boolean>("isRowHidden", sheetId, row);
  const heights = Array.from({ length: rows }, (_, row) =>
    isHidden(row) ? 0 : engine.get<number>("getRowSize", sheetId, row),
  );
  const isInOunces = weighs === "oz";
  // A card is upright, also one that works with columns beside it.
  const set =
    sideBySide !== undefined
      ? twoPages(sideBySide, isInOunces)
      : isFolded && !isUpright(width)
        ? foldedPage(isInOunces)
        : pageOf(width, sum(heights), isInOunces);
  sheet.pageSetup = { ...sheet.pageSetup, ...set };
  if (isFolded && begins !== undefined && begins > 0) sheet.getRow(begins).addPageBreak();
  else if (set.fitToHeight === 0 && !hasLabel) {
    const headings = heights.flatMap((_, row) => (isHeading(engine, { sheetId, col: 0, row }) ? [row] : []));
    // A row whose height nobody set is as high as the program that prints makes it.
    const onPaper = heights.map((height, row) =>
      height === 0 ? 0 : (engine.get<number | undefined>("getUserRowSize", sheetId, row) ?? USUAL_ROW),
    );
    for (const row of pageStarts(headings, onPaper, set, width)) sheet.getRow(row).addPageBreak();
  }
  if (columns <= right || rows <= bottom) {
    const zone = a1Of(engine.library, { left: 0, top: 0, right: columns - 1, bottom: rows - 1 });
    // exceljs puts a $ before the columns itself.
    sheet.pageSetup.printArea = zone.replace(/([A-Z]+)(\d+)/g, "$1$$$2");
  }
  return weighs;
}

/** What stands over a block: accented and bold, smaller than a title. */
function isHeading(engine: Engine, position: Position): boolean {
  const { bold, fontSize, textColor } = engine.get<{ bold?: boolean; fontSize?: number; textColor?: string }>(
    "getCellStyle",
    position,
  );
  return bold === true && fontSize === APPEARANCES.heading.size && textColor?.toLowerCase() === ACCENT;
}

type Fold = { readonly start: number; readonly end: number; readonly isFolded: boolean };

/** Hides what is hidden and folds what is folded; answers how many columns stand before the first that is folded away. */
function foldAway(engine: Engine, sheet: Worksheet, sheetId: string, columns: number, rows: number): number {
  const folds = engine.get<readonly Fold[]>("getHeaderGroups", sheetId, "COL");
  for (const { start, end } of folds) {
    for (let col = start; col <= Math.min(end, columns - 1); col++) sheet.getColumn(col + 1).outlineLevel = 1;
  }
  for (let col = 0; col < columns; col++)
    if (engine.get<boolean>("isColHidden", sheetId, col)) sheet.getColumn(col + 1).hidden = true;
  for (let row = 0; row < rows; row++)
    if (engine.get<boolean>("isRowHidden", sheetId, row)) sheet.getRow(row + 1).hidden = true;
  return Math.min(columns, ...folds.filter(({ isFolded }) => isFolded).map(({ start }) => start));
}

function usedZone(
  cells: readonly { id: number }[],
  positionOf: (id: number) => Position,
): { right: number; bottom: number } {
  const places = cells.map(({ id }) => positionOf(id));
  return { right: Math.max(0, ...places.map(({ col }) => col)), bottom: Math.max(0, ...places.map(({ row }) => row)) };
}
