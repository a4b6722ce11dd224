import type { Library, Zone } from "./library.ts";

/** Where a range object of a script lies. */
export type Place = { readonly sheetId: string; readonly zone: Zone };

const places = new WeakMap<object, Place>();

export function keepPlace(range: object, place: Place): void {
  places.set(range, place);
}

export function placeOf(range: object): Place {
  const place = places.get(range);
  if (place === undefined) throw new Error("A range of this spreadsheet is expected");
  return place;
}

/** The engine knows no apostrophe in the name of a sheet: it keeps the printer's one instead. */
export const engineName = (name: string): string => name.replace(/'/g, "\u2019");

/** The same for the names of sheets in a formula: 'Day''s loaf'!A1. */
export const withEngineNames = (formula: string): string =>
  formula.replace(/'((?:[^'"]|'')+)'!/g, (_, name: string) => `'${engineName(name.replace(/''/g, "'"))}'!`);

export const rowsOf = ({ top, bottom }: Zone): number => bottom - top + 1;
export const columnsOf = ({ left, right }: Zone): number => right - left + 1;

export function a1Of(library: Library, { left, top, right, bottom }: Zone): string {
  const from = library.helpers.toXC(left, top);
  const to = library.helpers.toXC(right, bottom);
  return from === to ? from : `${from}:${to}`;
}

/** A zone in the sheet's size; "A:A" and "2:2" reach the edges. Throws as Sheets does when it lies outside. */
export function zoneOf(a1: string, rows: number, columns: number): Zone {
  const [from, to] = a1.replace(/\$/g, "").toUpperCase().split(":");
  const start = corner(from ?? "", a1);
  const end = to === undefined ? start : corner(to, a1);
  const zone = {
    left: start.column ?? 0,
    top: start.row ?? 0,
    right: end.column ?? columns - 1,
    bottom: end.row ?? rows - 1,
  };
  return inside(zone, rows, columns);
}

export function inside(zone: Zone, rows: number, columns: number): Zone {
  const { left, top, right, bottom } = zone;
  if (![left, top, right, bottom].every(Number.isInteger))
    throw new Error("A range's place and size are whole numbers");
  if (left < 0 || top < 0) throw new Error("The starting row or column of the range is too small");
  if (right < left || bottom < top) throw new Error("The number of rows or columns in the range must be at least 1");
  if (right >= columns || bottom >= rows)
    throw new Error("The coordinates of the range are outside the dimensions of the sheet.");
  return zone;
}

function corner(text: string, a1: string): { column: number | undefined; row: number | undefined } {
  const [, letters = "", digits = ""] = /^([A-Z]{0,3})(\d{0,7})$/.exec(text) ?? [];
  if (letters === "" && digits === "") throw new Error(`Range not found: ${a1}`);
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  return { column: letters === "" ? undefined : column, row: digits === "" ? undefined : Number(digits) - 1 };
}
