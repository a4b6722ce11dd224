// The list of formula sheets: a row for each, of formulas that follow it wherever its cells and its name go.

import type { CellValue, SeenList } from "../../shared/protocol/look.ts";
import { absolute, columnNumber, type Zone, zoneA1 } from "../../shared/sheet/a1.ts";
import { BUILT_CELL, newerSays } from "../../shared/sheet/built-by.ts";
import { aboutTab, type Tab, THIS_NUMBER, THIS_SHEET, tabOf, unquote } from "../../shared/sheet/tab.ts";
import {
  LIST_COLUMNS,
  LIST_TAB,
  LIST_UNIT,
  LISTED,
  type ListColumn,
  lettersOf,
  listColumn,
  SIZED,
  sizedColumn,
  sizesText,
} from "../../templates/formula-list.ts";
import { countedZone, type Overview, references } from "./overview.ts";

export type ListedSheet = { readonly sheet: Overview; readonly tab: Tab };

/** Where a name has one in it the row has too many parts, and the sheet itself is read. */
const BETWEEN = "|";
const NO_FIGURE = "-";
/** What a row says of a cell or column; a blank cell would come over as 0, and an error has no figure. */
const SAYS: Readonly<Record<ListColumn, (at: string) => string>> = {
  cell: (at) => `=IFERROR(IF(LEN(${at})=0;"";${at});"")`,
  texts: (at) => `=TEXTJOIN("${BETWEEN}";FALSE();${at})`,
  numbers: (at) => `=ARRAYFORMULA(TEXTJOIN(" ";TRUE();IF(ISNUMBER(${at});ROW(${at})-MIN(ROW(${at}));"")))`,
  // In millionths, so that no locale's decimals stand in a text.
  figures: (at) => `=ARRAYFORMULA(TEXTJOIN(" ";FALSE();IF(ISNUMBER(${at});ROUND(10^6*${at};0);"${NO_FIGURE}")))`,
  place: (at) => `=ROWS(${at})`,
};
const NOT_THERE = '=""';
const unitFormula = (unit: "g" | "oz"): string => `="${unit}"`;
export const TAB_FORMULA = `=ROWS(${THIS_SHEET}$A$1)${THIS_NUMBER}`;
const GONE = "this sheet is gone: delete the row";

/** The row of a sheet whose tab is told when it is made, from where its cells stand. */
export function listRow(zone: (name: string) => Zone | undefined, unit: "g" | "oz"): string[] {
  const cells = new Map(
    LISTED.map(({ of, is }) => {
      const at = countedZone(zone)(of);
      const says = at === undefined ? NOT_THERE : SAYS[is](`${THIS_SHEET}${absolute(zoneA1(at))}`);
      return [listColumn(of), of === "title" ? says.replace(/""\)$/, `"${GONE}")`) : says];
    }),
  );
  for (const of of SIZED) {
    const at = zone(of);
    if (at === undefined) continue;
    cells.set(sizedColumn(of), sizesText(of, `${THIS_SHEET}${absolute(zoneA1(at))}`, at.rows > 1));
  }
  cells.set(LIST_UNIT, unitFormula(unit)).set(LIST_TAB, TAB_FORMULA);
  return LIST_COLUMNS.map(({ name }) => cells.get(name) ?? NOT_THERE);
}

/** The rows of sheets that are there, a column each. */
export function listLinks(sheets: readonly ListedSheet[]): Record<string, string[]> {
  // As parts of the column's formulas, which have the = already.
  const rows = sheets.map(({ sheet, tab }) =>
    listRow(sheet.zone, sheet.unit).map((formula) => aboutTab(formula, tab).slice(1)),
  );
  return Object.fromEntries(LIST_COLUMNS.map(({ name }, at) => [name, rows.map((row) => row[at] ?? "")]));
}

/** Whether its columns are those that are read now: a list that an earlier Gramwright built has others. */
export const isCurrent = (list: SeenList | undefined): boolean =>
  list !== undefined && LIST_COLUMNS.every(({ head }, at) => list.values[0]?.[at] === head);

/** How many products and sizes it has now, and how many sizes the formula with the most of them has room for. */
export function sizesIn(list: SeenList | undefined): { readonly all: number; readonly most: number } {
  const at = placeOf(sizedColumn("size_scaled"));
  const letters = lettersOf("size_scaled");
  const sizes = (list?.values ?? []).slice(1).map((row) => {
    const text = String(row[at] ?? "");
    return Array.from({ length: Math.ceil(text.length / letters) }, (_, one) =>
      text.slice(one * letters, (one + 1) * letters).trim(),
    ).slice(1);
  });
  return {
    all: sizes.flat().filter((one) => one !== "").length,
    most: Math.max(0, ...sizes.map(({ length }) => length)),
  };
}

/** The sheets of the list by the number of their tab, without rows that somebody changed. */
export function listedSheets(list: SeenList | undefined): ReadonlyMap<number, ListedSheet> {
  const { formulas = [], values = [] } = list ?? {};
  // A list that an earlier Gramwright built has other columns.
  if (LIST_COLUMNS.some(({ head }, at) => values[0]?.[at] !== head)) return new Map();
  return new Map(
    formulas.flatMap((row, at): [number, ListedSheet][] => {
      const listedRow = listedSheet(row, values[at] ?? []);
      return listedRow === null ? [] : [[listedRow.tab.id, listedRow]];
    }),
  );
}

const placeOf = (column: string): number => LIST_COLUMNS.findIndex(({ name }) => name === column);

function listedSheet(formulas: readonly CellValue[], values: readonly CellValue[]): ListedSheet | null {
  const tab = tabOf(formulas[placeOf(LIST_TAB)]);
  const unit = values[placeOf(LIST_UNIT)];
  if (tab === null || (unit !== "g" && unit !== "oz") || formulas[placeOf(LIST_UNIT)] !== unitFormula(unit))
    return null;
  const zones = new Map<string, Zone>();
  for (const { of } of LISTED) {
    const formula = String(formulas[placeOf(listColumn(of))] ?? "");
    const zone = zoneIn(formula, tab.name);
    if (zone !== null) zones.set(of, zone);
    // Typed over, emptied, or out of another row, as where only some columns were sorted.
    else if (formula !== NOT_THERE && !formula.includes("#REF!")) return null;
  }
  const value = (name: string) => values[placeOf(listColumn(name))] ?? "";
  const lines = (name: string) => String(value(name)).split(BETWEEN);
  const figures = (name: string) =>
    String(value(name))
      .split(" ")
      .map((one) => (/^-?\d+$/.test(one) ? Number(one) / 1e6 : null));
  const numbered = (name: string) =>
    LISTED.find(({ of }) => of === name)?.is === "figures"
      ? figures(name).flatMap((one, at) => (one === null ? [] : [at]))
      : String(value(name))
          .split(" ")
          .filter((one) => /^\d+$/.test(one))
          .map(Number);
  const [names, kinds] = [lines("ingredient"), lines("kind")];
  const rows = zones.get("ingredient")?.rows;
  if (rows === undefined || names.length !== rows || kinds.length !== rows || !zones.has("grams")) return null;
  const zone = (name: string) => zones.get(name);
  const title = String(value("title")).trim();
  const sheet: Overview = {
    name: tab.name,
    title: title || tab.name,
    newer: newerSays(tab.name, [[value(BUILT_CELL)]]),
    unit,
    parts: numbered("grams").map((row) => ({ name: names[row]?.trim() ?? "", kind: kinds[row]?.trim() ?? "" })),
    zone,
    ...references(tab.name, zone),
    number: (name) => {
      const cellValue = value(name);
      return typeof cellValue === "number" ? cellValue : null;
    },
    text: (name) => String(value(name)).trim(),
    column: (name) => lines(name).map((line) => line.trim()),
    numbered,
    figures,
  };
  return { sheet, tab };
}

/** The cells of this sheet that a formula of the list is about; none where they were deleted. */
function zoneIn(formula: string, sheet: string): Zone | null {
  const pattern = /(?:'((?:[^']|'')+)'|([^'"!(),;\s]+))!\$([A-Z]+)\$(\d+)(?::\$([A-Z]+)\$(\d+))?/;
  const [, quoted, bare, left, top, right = left, bottom = top] = pattern.exec(formula) ?? [];
  if (left === undefined || right === undefined || (unquote(quoted) ?? bare) !== sheet) return null;
  const [row, column] = [Number(top) - 1, columnNumber(left)];
  return { row, column, rows: Number(bottom) - row, columns: columnNumber(right) - column + 1 };
}

/** What a row of the list says as a text. */
export const textAt = (row: readonly CellValue[], of: string): string =>
  String(row[LIST_COLUMNS.findIndex(({ name }) => name === listColumn(of))] ?? "").trim();
