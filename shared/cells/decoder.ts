// How the arguments of a sheet function arrive, and how each is read: the boundary between cells and arithmetic.

import { type Fault, fault, isFault } from "../base/refusal.ts";
import { oneOf } from "../base/show.ts";
import type { Reader } from "./cell.ts";
import { type Hint, isBlank } from "./hint.ts";

/** How an argument arrives: one cell, a column that lines up with the other columns, a list of its own, or a table. */
export type Shape = "cell" | "column" | "list" | "either" | "table";

/** Turns what the sheet passes for one argument into what the arithmetic works with; faults are collected, not thrown. */
export type Decoder<T> = {
  readonly shape: Shape;
  readonly optional: boolean;
  readonly hint: Hint;
  /** With a row the cell is one of a column, and faults say so. */
  readonly decode: (raw: unknown, argument: string, faults: Fault[], row?: number) => T;
};

/** A fault was recorded; the value is never looked at. */
const nothing = <T>() => undefined as T;

function readInto<T>(reader: Reader<T>, raw: unknown, faults: Fault[], argument: string, row?: number): T {
  const cellValue = reader.read(raw);
  if (!isFault(cellValue)) return cellValue;
  faults.push(fault(cellValue.says, argument, row));
  return nothing();
}

/** Rows of cells, whatever came: one cell, a row, a column, a block. */
export function toGrid(raw: unknown): readonly (readonly unknown[])[] {
  if (!Array.isArray(raw)) return [[raw]];
  // No map, which would keep the gaps of an array that has some.
  const rows: (readonly unknown[])[] = [];
  for (let at = 0; at < raw.length; at++) rows.push(Array.isArray(raw[at]) ? raw[at] : [raw[at]]);
  return rows;
}

function single(raw: unknown, argument: string, faults: Fault[]): unknown {
  if (!Array.isArray(raw)) return raw;
  const grid = toGrid(raw);
  if (grid.length === 1 && grid[0]?.length === 1) return grid[0][0];
  faults.push(fault("is a range; give one cell", argument));
  return nothing();
}

/** One cell, required. */
export function cell<T>(reader: Reader<T>): Decoder<T> {
  return {
    shape: "cell",
    optional: false,
    hint: reader.hint,
    decode: (raw, argument, faults, row) => {
      const before = faults.length;
      const value = single(raw, argument, faults);
      if (faults.length > before) return nothing();
      if (isBlank(value)) {
        faults.push(fault(`is ${value === undefined ? "missing" : "blank"}; ${wanted(reader.hint)}`, argument, row));
        return nothing();
      }
      return readInto(reader, value, faults, argument, row);
    },
  };
}

function wanted(hint: Hint): string {
  if (hint.of === "number") return `enter ${hint.what}`;
  if (hint.of === "word") return `choose ${oneOf(hint.words)}`;
  return "it is needed";
}

/** One cell that may be left out or blank; then `otherwise` holds. */
export function optional<T, const D>(reader: Reader<T>, otherwise: D): Decoder<T | D> {
  return {
    shape: "cell",
    optional: true,
    hint: reader.hint,
    decode: (raw, argument, faults, row) => {
      const before = faults.length;
      const value = single(raw, argument, faults);
      if (faults.length > before) return nothing();
      return isBlank(value) ? otherwise : readInto<T | D>(reader, value, faults, argument, row);
    },
  };
}

/** The cells of a column (or a row), blank ones at the end cut; a block of both is a fault. */
export function columnCells(raw: unknown, argument: string, faults: Fault[]): { readonly cells: readonly unknown[] } {
  const grid = toGrid(raw);
  const width = grid.reduce((most, row) => Math.max(most, row.length), 0);
  if (grid.length > 1 && width > 1) {
    faults.push(fault(`is a block of ${grid.length} rows and ${width} columns; give one column`, argument));
    return { cells: [] };
  }
  const cells = grid.length === 1 ? (grid[0] ?? []) : grid.map((row) => row[0]);
  let end = cells.length;
  while (end > 0 && isBlank(cells[end - 1])) end--;
  return { cells: end === cells.length ? cells : cells.slice(0, end) };
}

/** A column read cell by cell, blanks kept as null. */
function readColumn<T>(reader: Reader<T>, raw: unknown, argument: string, faults: Fault[]): (T | null)[] {
  const { cells } = columnCells(raw, argument, faults);
  const values: (T | null)[] = [];
  for (let index = 0; index < cells.length; index++) {
    const raw = cells[index];
    values.push(isBlank(raw) ? null : readInto(reader, raw, faults, argument, index + 1));
  }
  return values;
}

/** A column whose rows belong to the rows of the other columns; call() makes them equally long. */
export function column<T>(reader: Reader<T>): Decoder<(T | null)[]> {
  return {
    shape: "column",
    optional: false,
    hint: reader.hint,
    decode: (raw, argument, faults) => readColumn(reader, raw, argument, faults),
  };
}

/** A column that may be left out; then every row is blank. */
export function optionalColumn<T>(reader: Reader<T>): Decoder<(T | null)[]> {
  return { ...column(reader), optional: true };
}

/** Cells in an order of their own, such as a tin's sizes; blanks inside are kept. */
export function list<T>(reader: Reader<T>): Decoder<(T | null)[]> {
  return { ...column(reader), shape: "list" };
}

export function optionalList<T>(reader: Reader<T>): Decoder<(T | null)[]> {
  return { ...column(reader), shape: "list", optional: true };
}

/** One value for every row, or a column with each row's own. */
export function either<T>(reader: Reader<T>): Decoder<T | (T | null)[]> {
  const one = cell(reader);
  return {
    shape: "either",
    optional: false,
    hint: reader.hint,
    decode: (raw, argument, faults) => {
      const grid = toGrid(raw);
      if (grid.length <= 1 && (grid[0]?.length ?? 0) <= 1) return one.decode(raw, argument, faults);
      return readColumn(reader, raw, argument, faults);
    },
  };
}

/** The same where it may be left out: null. */
export function optionalEither<T>(reader: Reader<T>): Decoder<T | null | (T | null)[]> {
  const one = optional(reader, null);
  const many = either(reader);
  return {
    ...many,
    optional: true,
    decode: (raw, argument, faults) =>
      toGrid(raw).flat().length <= 1 ? one.decode(raw, argument, faults) : many.decode(raw, argument, faults),
  };
}

/** A table as rows of raw cells, for a reader of its own; blank rows at the end cut. */
export function table<T>(
  hint: Hint,
  isOptional: boolean,
  read: (rows: readonly (readonly unknown[])[], argument: string, faults: Fault[]) => T,
): Decoder<T> {
  return {
    shape: "table",
    optional: isOptional,
    hint,
    decode: (raw, argument, faults) => {
      const rows = isBlank(raw) ? [] : [...toGrid(raw)];
      while (rows[rows.length - 1]?.every(isBlank)) rows.pop();
      return read(rows, argument, faults);
    },
  };
}
