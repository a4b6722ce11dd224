import { type NumberStyle, readNumber } from "./number.ts";
import { type Fault, fault } from "./refusal.ts";
import { oneOf, quoted, shown } from "./show.ts";
import { nearest, singularName } from "./words.ts";

/** What a cell cannot be read as, said as a predicate: `is "abc"; write a weight such as 350`. */
export type Problem = { readonly problem: string };
export const isProblem = (read: unknown): read is Problem =>
  typeof read === "object" && read !== null && "problem" in read;

/** What a reader takes, for the help texts and for tests that make arguments up. */
export type Hint =
  | {
      readonly of: "number";
      readonly what: string;
      readonly min?: number;
      readonly max?: number;
      readonly above?: number;
    }
  | { readonly of: "word"; readonly words: readonly string[] }
  | { readonly of: "text" | "kind" | "percent" | "any" };

/** Reads one cell that is not blank. */
export type Reader<T> = { readonly hint: Hint; readonly read: (raw: unknown) => T | Problem };

export const isBlank = (raw: unknown): boolean =>
  raw === undefined || raw === null || (typeof raw === "string" && raw.trim() === "");

/** What stands in the way of reading any cell: a date, an error, a value still on its way. */
export function trouble(raw: unknown): Problem | undefined {
  if (Object.prototype.toString.call(raw) === "[object Date]") {
    // Sheets hands a time of day over as a moment of 30 December 1899.
    if ((raw as Date).getFullYear() < 1900)
      return { problem: "is a time of day; write a number, such as 1.5 for 1:30" };
    return {
      problem: "is a date; if a fraction was typed, write 0 1/2 or '1/2 and set the cell's format back to number",
    };
  }
  if (typeof raw === "number" && !Number.isFinite(raw)) return { problem: "is not a finite number" };
  if (typeof raw !== "string") return undefined;
  const text = raw.trim();
  if (/^#[A-Z0-9/]+[!?A]$/.test(text)) return { problem: `holds the error ${text}; mend that cell first` };
  if (/^loading\s*(\.\.\.|…)$/i.test(text)) return { problem: "is still calculating; it will be read when it is done" };
  return undefined;
}

/** A cell's content as it is quoted in a sentence. */
export function found(raw: unknown): string {
  if (typeof raw === "string") return quoted(raw);
  if (typeof raw === "number") return shown(raw, 4);
  return typeof raw === "boolean" ? String(raw).toUpperCase() : "not a number or a text";
}

type Bounds = { readonly min?: number; readonly max?: number; readonly above?: number };

/** `what` names the quantity with an example: "a weight such as 350". */
export function number<T extends number>(what: string, bounds: Bounds = {}, style: NumberStyle = {}): Reader<T> {
  return {
    hint: { of: "number", what, ...bounds },
    read: (raw) => {
      const stuck = trouble(raw);
      if (stuck) return stuck;
      let value: number;
      if (typeof raw === "number") value = raw;
      else if (typeof raw === "string") {
        const read = readNumber(raw, style);
        if ("problem" in read) {
          const unit = unitBeside(raw, style);
          const says =
            unit === undefined ? `${read.problem}; write ${what}` : `is not a number; write it without ${quoted(unit)}`;
          return { problem: `is ${quoted(raw)}, which ${says}` };
        }
        value = read.value;
      } else return { problem: `is ${found(raw)}, not a number; write ${what}` };
      return (within(value, bounds, style, what) ?? value) as T | Problem;
    },
  };
}

/** The unit in "500 g", "22°C" or "17 loaves". */
function unitBeside(raw: string, style: NumberStyle): string | undefined {
  if (raw.length > 60) return undefined;
  const [, amount = "", unit] = /^(.*\d)\s*([a-z°][a-z°/³² ]*)\.?$/i.exec(raw.trim()) ?? [];
  // "7oo" is a slip of the finger, not seven of anything.
  return "problem" in readNumber(amount, style) || /^o+$/i.test(unit ?? "") ? undefined : unit;
}

function within(value: number, { min, max, above }: Bounds, style: NumberStyle, what: string): Problem | undefined {
  if (!Number.isFinite(value)) return { problem: `is not a finite number; write ${what}` };
  if (min !== undefined && value < min) return { problem: `is ${shown(value, 4)}; it cannot be below ${shown(min)}` };
  if (above !== undefined && value <= above)
    return { problem: `is ${shown(value, 4)}; it must be above ${shown(above)}` };
  if (max === undefined || value <= max) return undefined;
  if (style.percent && value / 100 <= max) {
    return {
      problem: `is ${shown(value, 4)}, which is ${shown(value * 100)} %; write ${shown(value, 4)}% or ${shown(value / 100, 6)}`,
    };
  }
  const most = style.percent ? `${shown(max * 100)} %` : shown(max);
  return { problem: `is ${shown(value, 4)}; it cannot be above ${most}` };
}

/** One of a few words, or what else the trade calls them: `word({ dough: [], flour: [] })`. */
export function word<W extends string>(options: Readonly<Record<W, readonly string[]>>): Reader<W> {
  const words = Object.keys(options) as W[];
  let known: Map<string, W> | undefined;
  return {
    hint: { of: "word", words },
    read: (raw) => {
      const stuck = trouble(raw);
      if (stuck) return stuck;
      // Made on first use: loading the script must stay cheap.
      known ??= new Map(
        words.flatMap((option) => [option, ...options[option]].map((name) => [singularName(name), option])),
      );
      const match = typeof raw === "string" ? (known.get(raw) ?? known.get(singularName(raw))) : undefined;
      if (match !== undefined) return match;
      const near = typeof raw === "string" && words.length > 8 ? nearest(raw, words) : [];
      const hint = near.length > 0 ? `perhaps ${oneOf(near)}? Known are ` : "write ";
      return { problem: `is ${found(raw)}; ${hint}${oneOf(words)}` };
    },
  };
}

/** Text as it stands; a number or a tick is taken as its text. */
export function text(): Reader<string> {
  return {
    hint: { of: "text" },
    read: (raw) =>
      trouble(raw) ??
      (typeof raw === "object"
        ? { problem: "is not a text" }
        : typeof raw === "number"
          ? shown(raw, 6)
          : String(raw).trim()),
  };
}

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
  const read = reader.read(raw);
  if (!isProblem(read)) return read;
  faults.push(fault(read.problem, argument, row));
  return nothing();
}

/** Rows of cells, whatever came: one cell, a row, a column, a block. */
export function toGrid(raw: unknown): readonly (readonly unknown[])[] {
  if (!Array.isArray(raw)) return [[raw]];
  return raw.map((row: unknown) => (Array.isArray(row) ? row : [row]));
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
  if (hint.of === "number") return `write ${hint.what}`;
  if (hint.of === "word") return `write ${oneOf(hint.words)}`;
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

/** A column (or a row) read cell by cell, blanks kept as null, blank rows at the end cut. */
function readColumn<T>(reader: Reader<T>, raw: unknown, argument: string, faults: Fault[]): (T | null)[] {
  const grid = toGrid(raw);
  const width = grid.reduce((most, row) => Math.max(most, row.length), 0);
  if (grid.length > 1 && width > 1) {
    faults.push(fault(`is a block of ${grid.length} rows and ${width} columns; give one column`, argument));
    return [];
  }
  const cells = grid.length === 1 ? (grid[0] ?? []) : grid.map((row) => row[0]);
  let end = cells.length;
  while (end > 0 && isBlank(cells[end - 1])) end--;
  const values: (T | null)[] = [];
  for (let index = 0; index < end; index++) {
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
      while (rows.length > 0 && rows[rows.length - 1]?.every(isBlank)) rows.pop();
      return read(rows, argument, faults);
    },
  };
}
