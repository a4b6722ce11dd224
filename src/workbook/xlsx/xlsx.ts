import type { Worksheet } from "exceljs";
import type { Engine } from "../engine/engine.ts";
import type { Position, Zone } from "../engine/library.ts";
import { a1Of } from "../engine/places.ts";
import { WORKBOOK_NAME } from "../service/sheets.ts";
import { argb, columnWidth, rowHeight } from "./appearance.ts";
import { writeCells } from "./cells.ts";
import { foldedPage, isUpright, pageOf, pagesOf, printArea } from "./page.ts";
import { writeConditionals, writeValidations } from "./rules.ts";

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
  for (const sheetId of sheetIds) {
    const sheet = book.getWorksheet(engine.get<string>("getSheetName", sheetId));
    if (!sheet) continue;
    writeShape(engine, sheet, sheetId);
    writeCells(engine, sheet, sheetId);
    writeValidations(engine, book, sheet, sheetId);
    writeConditionals(engine, sheet, sheetId);
  }
  for (const { name, range } of engine.get<readonly NamedRange[]>("getNamedRanges")) {
    const sheet = engine.get<string>("getSheetName", range.sheetId).replace(/'/g, "''");
    book.definedNames.add(`'${sheet}'!${a1Of(engine.library, range.zone).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2")}`, name);
  }
  return new Uint8Array(await book.xlsx.writeBuffer());
}

/** The same for Node. */
export const toXlsx = async (engine: Engine): Promise<Buffer> => Buffer.from(await xlsxBytes(engine));

function writeShape(engine: Engine, sheet: Worksheet, sheetId: string): void {
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
  const { columns, rows } = printArea(page, bottom + 1, textAt);
  const sum = (count: number, size: (at: number) => number) =>
    Array.from({ length: count }, (_, at) => size(at)).reduce((all, one) => all + one, 0);
  const width = sum(columns, (col) => engine.get<number>("getColSize", sheetId, col));
  const height = sum(rows, (row) => engine.get<number>("getRowSize", sheetId, row));
  const isFolded = page <= right;
  const { begins, isInOunces } = pagesOf(rows, textAt, columns);
  // A card is upright, also one that works with columns beside it.
  const set = isFolded && !isUpright(width) ? foldedPage(isInOunces) : pageOf(width, height, isInOunces);
  sheet.pageSetup = { ...sheet.pageSetup, ...set };
  if (isFolded && begins !== undefined && begins > 0) sheet.getRow(begins).addPageBreak();
  if (columns <= right || rows <= bottom) {
    const area = a1Of(engine.library, { left: 0, top: 0, right: columns - 1, bottom: rows - 1 });
    // exceljs puts a $ before the columns itself.
    sheet.pageSetup.printArea = area.replace(/([A-Z]+)(\d+)/g, "$1$$$2");
  }
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
