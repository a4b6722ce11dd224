// The questions about the formula history: what is kept, and a sheet that goes on as a new version. Checked at both ends.

import type { Version } from "../adjust/versions.ts";
import { refuseUnread } from "../base/refusal.ts";

/** Versions of one formula sheet, or those of all without what is kept of them. */
export type HistoryAsk = { readonly id: number | null };
export type HistoryAnswer = { readonly isThere: boolean; readonly versions: readonly Version[] };

/** Cells side by side from one on, rows counted from 0; "" empties a cell. `isText` where a text stays one, whatever it begins with. */
export type CellsWrite = {
  readonly row: number;
  readonly column: number;
  readonly cells: readonly (readonly (string | number)[])[];
};
/** Blank rows below one, both counted from 0 as the sheet is after those before. */
export type RowsInsert = { readonly after: number; readonly many: number };
/** Where a version's number, its day and what changed stand on the sheet. */
export type Stamp = { readonly row: number; readonly column: number; readonly is: "number" | "day" | "line" };

export type ReviseAsk = {
  readonly sheet: string;
  readonly id: number;
  /** What was seen of it, in short: nothing is written where it was changed meanwhile. */
  readonly seen: number;
  readonly title: string;
  readonly when: string;
  /** The day as a sheet counts it. */
  readonly day: number;
  /** What is typed now, kept first where the history has another. */
  readonly before: string;
  readonly beforeLine: string;
  /** What will be typed, and what changed; null where only what is there is kept. */
  readonly after: string | null;
  readonly line: string;
  readonly inserts: readonly RowsInsert[];
  readonly writes: readonly CellsWrite[];
  readonly stamps: readonly Stamp[];
};
export type ReviseAnswer = {
  /** The number of the version that the sheet is now. */
  readonly number: number;
  /** Whether hand edits were kept first. */
  readonly wasEdited: boolean;
};

const MAX_TEXT = 300_000;
const MAX_SHORT = 500;
const MAX_WRITES = 500;
const MAX_CELLS = 300;

type Raw = Readonly<Record<string, unknown>>;
const unclear = (): never => refuseUnread("The change of the formula");
const record = (raw: unknown): Raw =>
  typeof raw === "object" && raw !== null && !Array.isArray(raw) ? (raw as Raw) : unclear();
const words = (raw: unknown, most = MAX_SHORT): string =>
  typeof raw === "string" && raw.length <= most ? raw : unclear();
const whole = (raw: unknown, most: number): number =>
  typeof raw === "number" && Number.isInteger(raw) && raw >= 0 && raw <= most ? raw : unclear();
const list = <T>(raw: unknown, most: number, of: (one: unknown) => T): T[] =>
  Array.isArray(raw) && raw.length <= most ? raw.map(of) : unclear();

export function historyAsk({ id }: Raw): HistoryAsk {
  return { id: id === null || id === undefined ? null : whole(id, Number.MAX_SAFE_INTEGER) };
}

export function reviseAsk(raw: Raw): ReviseAsk {
  return {
    sheet: words(raw.sheet),
    id: whole(raw.id, Number.MAX_SAFE_INTEGER),
    seen: whole(raw.seen, 0xffffffff),
    title: words(raw.title),
    when: words(raw.when),
    day: whole(raw.day, 100_000),
    before: words(raw.before, MAX_TEXT),
    beforeLine: words(raw.beforeLine),
    after: raw.after === null ? null : words(raw.after, MAX_TEXT),
    line: words(raw.line),
    inserts: list(raw.inserts, MAX_WRITES, (one) => {
      const { after, many } = record(one);
      return { after: whole(after, 20_000), many: whole(many, 200) };
    }),
    writes: list(raw.writes, MAX_WRITES, (one) => {
      const { row, column, cells } = record(one);
      return {
        row: whole(row, 20_000),
        column: whole(column, 1000),
        cells: list(cells, MAX_CELLS, (line) => list(line, MAX_CELLS, cell)),
      };
    }),
    stamps: list(raw.stamps, 10, (one) => {
      const { row, column, is } = record(one);
      if (is !== "number" && is !== "day" && is !== "line") return unclear();
      return { row: whole(row, 20_000), column: whole(column, 1000), is };
    }),
  };
}

const cell = (raw: unknown): string | number =>
  typeof raw === "number" && Number.isFinite(raw) ? raw : words(raw, 2000);

const broken = (): never => refuseUnread("What the add-on said of the formula history");

export function readHistory(raw: unknown): HistoryAnswer {
  const { isThere, versions } = (raw ?? {}) as Raw;
  if (typeof isThere !== "boolean" || !Array.isArray(versions)) return broken();
  const text = (one: unknown): string => (typeof one === "string" ? one : broken());
  const count = (one: unknown): number => (typeof one === "number" ? one : broken());
  return {
    isThere,
    versions: versions.map((one: unknown): Version => {
      const { when, sheet, title, number, line, content } = (one ?? {}) as Raw;
      return {
        when: text(when),
        sheet: count(sheet),
        title: text(title),
        number: count(number),
        line: text(line),
        content: text(content),
      };
    }),
  };
}

export function readRevised(raw: unknown): ReviseAnswer {
  const { number, wasEdited } = (raw ?? {}) as Raw;
  return typeof number === "number" && typeof wasEdited === "boolean" ? { number, wasEdited } : broken();
}
