import type { CellErrorValue, Worksheet } from "exceljs";
import type { Engine, FormulaCell } from "../engine/engine.ts";
import type { EvaluatedCell, Position, Zone } from "../engine/library.ts";
import { sheetFormat } from "../engine/patches/graded-formats.ts";
import { a1Of } from "../engine/places.ts";
import type { PlacedMark } from "../engine/plugins.ts";
import { WORKBOOK_NAME } from "../service/sheets.ts";
import { portable } from "./formula.ts";
import { argb, cellStyle, columnWidth, type Lines, type Look, rowHeight } from "./looks.ts";
import { foldedPage, pageOf, pagesOf, printArea } from "./page.ts";
import { writeConditionals, writeValidations } from "./rules.ts";

type NamedRange = { readonly name: string; readonly range: { readonly sheetId: string; readonly zone: Zone } };
type Value = number | string | boolean | null | CellErrorValue;

const KNOWN_ERRORS = ["#N/A", "#REF!", "#NAME?", "#DIV/0!", "#NULL!", "#VALUE!", "#NUM!"] as const;

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
  const { begins, isInOunces } = isFolded ? pagesOf(rows, textAt, columns) : { begins: undefined, isInOunces: false };
  const set = isFolded ? foldedPage(isInOunces) : pageOf(width, height);
  sheet.pageSetup = { ...sheet.pageSetup, ...set };
  if (begins !== undefined && begins > 0) sheet.getRow(begins).addPageBreak();
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

function writeCells(engine: Engine, sheet: Worksheet, sheetId: string): void {
  const spilled = new Set<string>();
  const names = new Set<string>();
  const styled = engine
    .get<readonly { id: number }[]>("getCells", sheetId)
    .map(({ id }) => engine.get<Position>("getCellPosition", id));
  const filled = engine.get<readonly Position[]>("getEvaluatedCellsPositions", sheetId);
  const places = new Map([...styled, ...filled].map((place) => [`${place.col},${place.row}`, { ...place, sheetId }]));
  for (const position of places.values()) {
    const cell = sheet.getCell(position.row + 1, position.col + 1);
    const look = engine.get<Look>("getCellStyle", position);
    const evaluated = engine.evaluated(position);
    const format = evaluated.format === undefined ? undefined : sheetFormat(evaluated.format);
    cell.style = cellStyle(look ?? {}, engine.get<Lines | null>("getCellBorder", position), format);
    if (!spilled.has(cell.address)) cell.value = storedValue(evaluated);
    writeFormula(engine, sheet, position, spilled, names);
  }
  for (const address of names) markKept(sheet, address);
  for (const { kind, text, zone, sheetId: on } of engine.get<readonly PlacedMark[]>("getMarks")) {
    if (kind === "note" && on === sheetId) sheet.getCell(zone.top + 1, zone.left + 1).note = text;
  }
}

/** What no other program calculates again is seen to be so: slanted on grey. */
function markKept(sheet: Worksheet, address: string): void {
  const cell = sheet.getCell(address);
  const fill = { type: "pattern", pattern: "solid", fgColor: { argb: "FFE4E1DC" } } as const;
  cell.style = { ...cell.style, font: { ...cell.style.font, italic: true }, fill };
}

function writeFormula(
  engine: Engine,
  sheet: Worksheet,
  position: Position,
  spilled: Set<string>,
  names: Set<string>,
): void {
  const held = engine.get<FormulaCell | undefined>("getCell", position);
  if (!held?.isFormula) return;
  const canonical = held.compiledFormula.toFormulaString(engine.model.getters);
  const cell = sheet.getCell(position.row + 1, position.col + 1);
  const evaluated = engine.evaluated(position);
  const portableFormula = readable(engine, canonical);
  const zone = engine.get<Zone | undefined>("getSpreadZone", position);
  if (portableFormula.kind === "value") {
    const why = evaluated.type === "error" && evaluated.message ? ` It says: ${evaluated.message}` : "";
    cell.note = `A kept value, computed by ${portableFormula.because} in Gramwright.${why}`;
    const { left, right, top, bottom } = zone ?? zoneOf(position);
    for (let row = top; row <= bottom; row++)
      for (let col = left; col <= right; col++) names.add(engine.library.helpers.toXC(col, row));
    return;
  }
  const several = zone && (zone.right > zone.left || zone.bottom > zone.top);
  const result = storedValue(evaluated);
  if (portableFormula.kind === "formula" && !several) {
    cell.value = { formula: portableFormula.text, ...(result === null ? {} : { result }) } as never;
    return;
  }
  const whole = zone ?? zoneOf(position);
  const width = whole.right - whole.left + 1;
  const results = Array.from({ length: whole.bottom - whole.top + 1 }, (_, down) =>
    Array.from(
      { length: width },
      (_, across) =>
        storedValue(engine.evaluated({ sheetId: position.sheetId, col: whole.left + across, row: whole.top + down })) ??
        "",
    ),
  );
  // exceljs types leave out the kind of a filled formula.
  const { fillFormula } = sheet as unknown as {
    fillFormula(a1: string, text: string, results: unknown, kind: "array"): void;
  };
  const { toXC } = engine.library.helpers;
  // exceljs fills nothing where a range of one cell is written without its colon.
  const range = `${toXC(whole.left, whole.top)}:${toXC(whole.right, whole.bottom)}`;
  fillFormula.call(sheet, range, portableFormula.text, results, "array");
  for (let row = whole.top; row <= whole.bottom; row++) {
    for (let col = whole.left; col <= whole.right; col++) spilled.add(engine.library.helpers.toXC(col, row));
  }
}

const zoneOf = ({ col, row }: Position): Zone => ({ left: col, right: col, top: row, bottom: row });

/** A formula that cannot be read (a person's slip) keeps its error. */
function readable(engine: Engine, canonical: string): ReturnType<typeof portable> {
  try {
    return portable(engine.library, canonical);
  } catch {
    return { kind: "value", because: "a formula that cannot be read" };
  }
}

function storedValue({ type, value }: EvaluatedCell): Value {
  if (type === "empty" || value === "") return null;
  if (type !== "error") return value;
  const error = KNOWN_ERRORS.find((known) => known === value) ?? "#VALUE!";
  return { error } as CellErrorValue;
}
