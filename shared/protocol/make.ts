// The question that writes a planned sheet, checked at both ends.

import { refuseUnread } from "../base/refusal.ts";
import { badFormula } from "../sheet/make-formulas.ts";
import type { SheetPlan } from "../sheet/plan.ts";
import type { FormulaRectangle } from "../sheet/rectangles.ts";
import type { Tab } from "../sheet/tab.ts";
import type { Look } from "../sheet/theme.ts";
import type { Validation } from "../sheet/validation.ts";

/** What is written of a plan. */
export type Writable = Omit<SheetPlan, "names">;
/** A grid whose cells say which of `kinds` they are. */
type Palette<T> = { readonly kinds: readonly T[]; readonly cells: readonly (readonly number[])[] };
const PALETTES = ["formats", "looks", "aligned", "validations"] as const;
type Packed = { readonly [K in (typeof PALETTES)[number]]: Palette<SheetPlan[K][number][number]> };

/** What is done beside writing the sheet. */
export type Beside = {
  /** Its row in the list of formula sheets, if there is one. */
  readonly row?: readonly string[];
  /** The sheet that was in front stays there. */
  readonly behind?: boolean;
};
export type MakeAsk = Omit<Writable, (typeof PALETTES)[number]> &
  Packed & {
    readonly title: string;
    /** Sheets that the formulas read, by the names they should have. */
    readonly tabs: readonly Tab[];
  } & Beside;

/** A sheet's name takes less. */
const MAX_TITLE_LENGTH = 500;

/** A plan as it travels. */
export function makeAsk(
  { names: _, ...plan }: SheetPlan,
  title: string,
  tabs: readonly Tab[] = [],
  beside: Beside = {},
): MakeAsk {
  const { formats, looks, aligned, validations } = plan;
  return {
    ...plan,
    ...beside,
    title: title.slice(0, MAX_TITLE_LENGTH),
    tabs,
    formats: palette(formats),
    looks: palette(looks),
    aligned: palette(aligned),
    validations: palette(validations),
  };
}

function palette<T>(grid: readonly (readonly T[])[]): Palette<T> {
  const kinds: T[] = [];
  const known = new Map<string, number>();
  const cells = grid.map((row) =>
    row.map((cell) => {
      const key = JSON.stringify(cell);
      const at = known.get(key) ?? kinds.push(cell) - 1;
      known.set(key, at);
      return at;
    }),
  );
  return { kinds, cells };
}

// A file holds ten million cells; a sheet of ours has a few thousand.
const MAX_ROWS = 20_000;
const MAX_COLUMNS = 140;
const MAX_CELLS = 500_000;
const MAX_PIXELS = 2000;
const MAX_TABS = 300;
/** What a cell takes. */
const MAX_TEXT_LENGTH = 50_000;
const MAX_CHOICES = 500;
const A1 = /^[A-Z]{1,3}[1-9]\d{0,4}(?::[A-Z]{1,3}[1-9]\d{0,4})?$/;
const FORMAT = /^(?:@|General|yyyy-mm-dd|hh:mm|(?:\[>=\d{2,4}\][#,]*0(?:\.0)?;){0,2}[#,]*0(?:\.[0#]{1,6})?%?)$/;
const COLOUR = /^#[0-9a-f]{6}$/;
const DEFINED = /^gramwright_[a-z]{1,20}$/;

type Raw = Readonly<Record<string, unknown>>;

/** A plan as it arrived at the add-on, every part of it checked; refuses what is none. */
export function readMake(
  raw: Raw,
): { readonly title: string; readonly tabs: readonly Tab[]; readonly plan: Writable } & Required<Beside> {
  const { title } = raw;
  if (typeof title !== "string" || title.length > MAX_TITLE_LENGTH) return unclear();
  const [rows, columns] = [whole(raw.rows, 1, MAX_ROWS), whole(raw.columns, 1, MAX_COLUMNS)];
  if (rows * columns > MAX_CELLS) return unclear();
  const page = whole(raw.page, 1, columns);
  const grid = <T>(cells: unknown, of: (cell: unknown) => T): T[][] => {
    if (!isList(cells, rows, rows)) return unclear();
    return cells.map((row) => (isList(row, page, page) ? row.map(of) : unclear()));
  };
  const painted = <T>(packed: unknown, of: (kind: unknown) => T): T[][] => {
    const { kinds, cells } = record(packed);
    const read = list(kinds, MAX_CELLS, of);
    return grid(cells, (at) => read[whole(at, 0, read.length - 1)] as T);
  };
  const formats = painted(raw.formats, (kind) => matching(kind, FORMAT));
  const values = grid(raw.values, cellOf);
  if (values.some((row, down) => row.some((value, across) => turnsIntoFormula(value, formats[down]?.[across]))))
    unclear();
  const borders = record(raw.borders);
  const ranges = (names: unknown) => list(names, MAX_CELLS, (name) => matching(name, A1));
  return {
    title,
    tabs: list(raw.tabs, MAX_TABS, (tab) => {
      const { name, id } = record(tab);
      return { name: words(name), id: whole(id, 0, Number.MAX_SAFE_INTEGER) };
    }),
    row: list(raw.row ?? [], MAX_COLUMNS, (text) => (badFormula(words(text)) ? unclear() : (text as string))),
    behind: raw.behind === true,
    plan: {
      rows,
      columns,
      page,
      aside: asideOf(raw.aside, rows, columns),
      widths: list(raw.widths, columns, (width) => whole(width, 2, MAX_PIXELS), columns),
      heights: list(raw.heights, rows, (one) => {
        const { row, rows: many = 1, height } = record(one);
        return { row: whole(row, 0, rows - 1), rows: whole(many, 1, rows), height: whole(height, 2, MAX_PIXELS) };
      }),
      values,
      formats,
      looks: painted(raw.looks, lookOf),
      aligned: painted(raw.aligned, (side) => one(side, ["left", "right", "center"])),
      validations: painted(raw.validations, validationOf),
      formulas: list(raw.formulas, MAX_CELLS, (rectangle) => formulasOf(rectangle, values, { page, columns })),
      wrapped: ranges(raw.wrapped),
      hidden: list(raw.hidden, rows, (row) => whole(row, 0, rows - 1)),
      frozen: whole(raw.frozen, 0, rows - 1),
      start: raw.start === "" ? "" : matching(raw.start, A1),
      borders: {
        box: ranges(borders.box),
        under: ranges(borders.under),
        rule: ranges(borders.rule),
        over: ranges(borders.over),
      },
      unprotected: ranges(raw.unprotected),
      defines: list(raw.defines, 5, (known) => {
        const { name, range } = record(known);
        return { name: matching(name, DEFINED), range: matching(range, A1) };
      }),
    },
  };
}

const unclear = (): never => refuseUnread("The plan of the sheet");

const record = (raw: unknown): Raw =>
  typeof raw === "object" && raw !== null && !Array.isArray(raw) ? (raw as Raw) : unclear();
const isList = (raw: unknown, least: number, most: number): raw is unknown[] =>
  Array.isArray(raw) && raw.length >= least && raw.length <= most;
const list = <T>(raw: unknown, most: number, of: (one: unknown) => T, least = 0): T[] =>
  isList(raw, least, most) ? raw.map(of) : unclear();
const whole = (raw: unknown, least: number, most: number): number =>
  typeof raw === "number" && Number.isInteger(raw) && raw >= least && raw <= most ? raw : unclear();
const matching = (raw: unknown, pattern: RegExp): string =>
  typeof raw === "string" && pattern.test(raw) ? raw : unclear();
const one = <T extends string>(raw: unknown, choices: readonly T[]): T =>
  choices.find((choice) => choice === raw) ?? unclear();
const words = (raw: unknown): string => (typeof raw === "string" && raw.length <= MAX_TEXT_LENGTH ? raw : unclear());

const cellOf = (raw: unknown): string | number => (typeof raw === "number" && Number.isFinite(raw) ? raw : words(raw));

/** In a cell that is not one of text. */
const turnsIntoFormula = (value: string | number, format: string | undefined): boolean =>
  typeof value === "string" && format !== "@" && /^\s*[=+\-@]/.test(value);

function lookOf(raw: unknown): Look {
  const { ground, ink, weight, style, size, border } = record(raw);
  return {
    ground: matching(ground, COLOUR),
    ink: matching(ink, COLOUR),
    weight: one(weight, ["bold", "normal"]),
    style: one(style, ["italic", "normal"]),
    size: whole(size, 6, 72),
    ...(border === undefined ? {} : { border: one(border, ["box", "under", "rule", "over"]) }),
  };
}

/** Words beside the page become no formula, and its formats are those that a page has. */
function asideOf(raw: unknown, rows: number, columns: number): Writable["aside"] {
  const { words: runs, formats } = record(raw);
  return {
    words: list(runs, MAX_CELLS, (run) => {
      const { row, column, cells } = record(run);
      const from = whole(column, 0, columns - 1);
      const read = list(cells, columns - from, cellOf, 1);
      return read.some((cell) => turnsIntoFormula(cell, undefined))
        ? unclear()
        : { row: whole(row, 0, rows - 1), column: from, cells: read };
    }),
    formats: list(formats, 100, (one) => {
      const { format, ranges } = record(one);
      return { format: matching(format, FORMAT), ranges: list(ranges, MAX_CELLS, (name) => matching(name, A1), 1) };
    }),
  };
}

function validationOf(raw: unknown): Validation | null {
  if (raw === null) return null;
  const { is, values, least, most, help, isStrict } = record(raw);
  const strict = isStrict === true ? { isStrict: true as const } : {};
  if (is === "nothing") return { is, help: words(help) };
  if (is === "list") return { is, values: list(values, MAX_CHOICES, words, 1), help: words(help), ...strict };
  if (is !== "between" || !Number.isFinite(least) || !Number.isFinite(most)) return unclear();
  return { is, least: least as number, most: most as number, help: words(help), ...strict };
}

/** A rectangle within the sheet, of formulas and blanks, over nothing that is typed. */
function formulasOf(
  raw: unknown,
  values: readonly (readonly unknown[])[],
  { page, columns }: { readonly page: number; readonly columns: number },
): FormulaRectangle {
  const { row, column, cells } = record(raw);
  const [top, left] = [whole(row, 0, MAX_ROWS), whole(column, 0, MAX_COLUMNS)];
  const width = isList(cells, 1, MAX_ROWS) && isList(cells[0], 1, MAX_COLUMNS) ? cells[0].length : unclear();
  const read = list(cells, MAX_ROWS, (line) => list(line, width, words, width));
  const isBeside = (at: number, across: number) => at < values.length && across >= page && across < columns;
  const fits = read.every((line, down) =>
    line.every(
      (text, across) =>
        (isBeside(top + down, left + across) || values[top + down]?.[left + across] === "") &&
        (text === "" || !badFormula(text)),
    ),
  );
  return fits ? { row: top, column: left, cells: read } : unclear();
}
