// One sheet of a scripted workbook, its cells by address or by the names that its template gives them.
import { a1, columnLetters, columnNumber, type Zone } from "../../shared/sheet/a1.ts";
import { locate } from "../../shared/sheet/locate.ts";
import { SHEETS, TEMPLATES } from "../../templates/index.ts";
import type { HostCell } from "./cell-readers.ts";
import { type CellName, nameCells } from "./engine/cell-names.ts";
import type { Book, Sheet } from "./scripted-book.ts";

const ADDRESS = /^\$?[A-Za-z]{1,3}\$?\d{1,7}$/;

/** The sheet whose tab has this name now; renamed later, it is still the one. */
export function sheetOf(book: Book, tab: string): Sheet {
  const id = book.sheetId(tab);
  const nameNow = (): string => {
    const name = book.session.get<string | undefined>("tryGetSheetName", id);
    if (name === undefined)
      throw new Error(`The sheet "${tab}" was deleted; there are ${book.sheetNames().join(", ")}`);
    return name;
  };
  const names = (): ReadonlyMap<string, Zone> => namesOf(book, nameNow(), id);
  const zone = (place: string): Zone | undefined => names().get(place);
  const lastRow = () => book.session.get<number>("getNumberRows", id);

  const at = (place: string, row?: number): string => {
    const target = zone(place);
    if (target !== undefined) {
      const index = row ?? 0;
      if (!Number.isInteger(index) || index < 0 || index >= target.rows)
        throw new Error(`"${place}" on "${nameNow()}" has rows 0 to ${target.rows - 1}; there is no row ${index}.`);
      return a1({ row: target.row + index, column: target.column });
    }
    if (!ADDRESS.test(place) || row !== undefined) throw new Error(unknown(nameNow(), place, names()));
    const address = place.replace(/\$/g, "").toUpperCase();
    const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
    const [rows, columns] = [lastRow(), book.session.get<number>("getNumberCols", id)];
    if (Number(digits) < 1 || Number(digits) > rows || columnNumber(letters) >= columns)
      throw new Error(`"${nameNow()}" has no cell ${address}; its last cell is ${columnLetters(columns - 1)}${rows}.`);
    return address;
  };
  const cell = (place: string, row?: number): HostCell => book.cell(nameNow(), at(place, row));
  const checkRows = (from: number, many: number, last = lastRow()): void => {
    if (!Number.isInteger(many) || many < 1)
      throw new Error(`Enter how many rows as a whole number from 1, not ${many}.`);
    if (!Number.isInteger(from) || from < 1 || from + many - 1 > last)
      throw new Error(`"${nameNow()}" has rows 1 to ${last}; there is no row ${from < 1 ? from : from + many - 1}.`);
  };
  return {
    book,
    get sheet() {
      return nameNow();
    },
    names: () => [...names().keys()],
    at,
    rowOf: (place, row) => Number(at(place, row).replace(/\D/g, "")),
    rows: (place) => zone(place)?.rows ?? (at(place) === "" ? 0 : 1),
    cell,
    value: (place, row) => book.values(nameNow(), at(place, row))[0]?.[0],
    shown: (place, row) => cell(place, row).shown,
    message: (place, row) => cell(place, row).message,
    formula: (place, row) => cell(place, row).formula,
    note: (place, row) => cell(place, row).note,
    type: (place, text, row) => book.type(nameNow(), at(place, row), text),
    paste(place, block, row) {
      if (block.flat().some((text) => /[\t\n\r]/.test(text)))
        throw new Error(
          "A pasted text with a tab or a line break in it would fill several cells; paste it as several.",
        );
      book.paste(nameNow(), at(place, row), block.map((texts) => texts.join("\t")).join("\n"));
    },
    insertRows(beforeRow, many = 1) {
      checkRows(beforeRow, 1);
      checkRows(1, many, Number.POSITIVE_INFINITY);
      book.insertRows(nameNow(), beforeRow, many);
    },
    deleteRows(fromRow, many = 1) {
      checkRows(fromRow, many);
      book.deleteRows(nameNow(), fromRow, many);
    },
    moveRows(fromRow, many, beforeRow) {
      checkRows(fromRow, many);
      checkRows(beforeRow, 1, lastRow() + 1);
      if (beforeRow >= fromRow && beforeRow <= fromRow + many)
        throw new Error(
          `Rows ${fromRow} to ${fromRow + many - 1} cannot be moved in front of row ${beforeRow}: they stand there.`,
        );
      book.moveRows(nameNow(), fromRow, many, beforeRow);
    },
    moveCells: (range, to) => book.moveRange(nameNow(), range, at(to)),
    sortRows(range, by, ascending = true) {
      const column = zone(by)?.column;
      book.sortRange(nameNow(), range, column === undefined ? by.toUpperCase() : columnLetters(column), ascending);
    },
  };
}

function unknown(sheet: string, place: string, names: ReadonlyMap<string, Zone>): string {
  const known = names.size === 0 ? "its cells have no names" : `its names are ${[...names.keys()].join(", ")}`;
  return `"${sheet}" has no cell called "${place}"; ${known}.`;
}

/** As kept since the sheet was built; a sheet from elsewhere is read as the sidebar reads it, by the words beside its cells. */
function namesOf(book: Book, sheet: string, sheetId: string): ReadonlyMap<string, Zone> {
  const cellNames = () => book.session.get<readonly CellName[]>("getCellNames", sheetId);
  if (cellNames().length === 0) {
    const values = book.values(sheet, book.usedRange(sheet));
    const words = located(values);
    if (words === undefined) return new Map();
    const named = Array.from(words, ([name, { row, column, rows, columns }]) => ({
      name,
      zone: { left: column, top: row, right: column + columns - 1, bottom: row + rows - 1 },
    }));
    const { type, payload } = nameCells(sheetId, named);
    book.engine.run(type, payload);
  }
  const all = cellNames();
  const known = zones.get(all) ?? zonesOf(all);
  zones.set(all, known);
  return known;
}

/** Those of the lists that the engine gave and that still hold. */
const zones = new WeakMap<readonly CellName[], ReadonlyMap<string, Zone>>();

const zonesOf = (names: readonly CellName[]): ReadonlyMap<string, Zone> =>
  new Map(
    names.map(({ name, zone: { left, top, right, bottom } }) => [
      name,
      { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 },
    ]),
  );

function located(values: readonly (readonly unknown[])[]): ReadonlyMap<string, Zone> | undefined {
  const formula = locate(values, TEMPLATES);
  if (formula !== null) return formula.zones;
  for (const model of SHEETS) {
    const tables = model.bands.flat().flatMap((item) => ("table" in item ? [item.table] : []));
    const match = TEMPLATES.includes(model) ? null : locate(values, [model], tables[0]);
    if (match !== null) return match.zones;
  }
  return undefined;
}
