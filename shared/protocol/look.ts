// The question that only looks: what stands in the workbook, so that the bench can work out what to build. Checked at both ends.
import { refuse, refuseUnread } from "../base/refusal.ts";

/** What a cell holds as far as planning needs it; null for a date, which only its display tells. */
export type Seen = string | number | boolean | null;

/** A longer text of a cell is cut. */
export const MAX_TEXT_LENGTH = 2000;

export type LookAsk = {
  /** The sheet in front (""), one by its name, or every sheet that shows one of `words`. */
  readonly sheet?: string;
  readonly words?: readonly string[];
  /** With the list of formula sheets where there is one; of sheets that it has only the number is told. */
  readonly list?: boolean;
  /** Sheets of the list whose cells are told all the same. */
  readonly reread?: readonly number[];
  /** Of sheets with `words` only their numbers are told, and none where there is a list. */
  readonly counted?: boolean;
  /** Leaves out the names of the sheets with `words`, and which is in front: each is a call of the service. */
  readonly unnamed?: boolean;
  /** With what the cells display. */
  readonly shown?: boolean;
  /** With the formulas of the page's cells. */
  readonly formulas?: boolean;
  /** Names of the workbook: whether they are there, and of `cells` what stands there, too. */
  readonly names?: readonly string[];
  readonly cells?: readonly string[];
};

export type SeenSheet = {
  readonly id: number;
  /** "" where it was left out. */
  readonly name: string;
  /** Rows from A1; a row ends with its last filled cell. */
  readonly values: readonly (readonly Seen[])[];
  readonly shown?: readonly (readonly string[])[];
  readonly formulas?: readonly (readonly string[])[];
};
/** `rows` is how many its range has; its values only where they were asked for. */
export type SeenName = {
  readonly name: string;
  readonly rows: number;
  readonly values: readonly (readonly Seen[])[];
};

/** Rows of the list of formula sheets as they are written and as they show, each up to its last filled cell. */
export type SeenList = {
  readonly formulas: readonly (readonly Seen[])[];
  readonly values: readonly (readonly Seen[])[];
};

export type Snapshot = {
  /** The sheet in front; "" where it was not asked for. */
  readonly front: string;
  readonly sheets: readonly SeenSheet[];
  readonly names: readonly SeenName[];
  readonly list?: SeenList;
};

const MAX_NAME_LENGTH = 200;
/** Each is a call of the service. */
const MAX_WORDS = 5;
const NAME = /^gramwright_[a-z]{1,20}$/;

/** A look as it arrived at the add-on; refuses what is none. */
export function lookAsk(asked: Readonly<Record<string, unknown>>): LookAsk {
  const { sheet, words, list, reread, counted, unnamed, shown, formulas, names, cells } = asked;
  if (sheet !== undefined && (typeof sheet !== "string" || sheet.length > MAX_NAME_LENGTH)) return unclear();
  return {
    ...(sheet === undefined ? {} : { sheet }),
    ...(words === undefined ? {} : { words: texts(words, MAX_WORDS, (word) => word !== "") }),
    list: list === true,
    reread: Array.isArray(reread) ? reread : [],
    counted: counted === true,
    unnamed: unnamed === true,
    shown: shown === true,
    formulas: formulas === true,
    names: texts(names ?? [], 10, (name) => NAME.test(name)),
    cells: texts(cells ?? [], 10, (name) => NAME.test(name)),
  };
}

function texts(raw: unknown, most: number, fits: (text: string) => boolean): string[] {
  const isList = Array.isArray(raw) && raw.length <= most;
  if (!isList || !raw.every((one) => typeof one === "string" && one.length <= MAX_NAME_LENGTH && fits(one)))
    return unclear();
  return raw as string[];
}

const unclear = (): never => refuseUnread("The sidebar's look at the workbook");

/** A snapshot as it arrived at the bench; refuses what is none. */
export function readSnapshot(raw: unknown): Snapshot {
  const { front, sheets, names, list } = (raw ?? {}) as Record<string, unknown>;
  if (typeof front !== "string" || !Array.isArray(sheets) || !Array.isArray(names)) return unreadable();
  return {
    front,
    sheets: sheets.map((one) => {
      const { id, name, values, shown, formulas } = (one ?? {}) as Record<string, unknown>;
      const texts = (cells: unknown) => grid(cells, (cell) => typeof cell === "string") as string[][];
      return {
        id: whole(id),
        name: text(name),
        values: grid(values, isSeen) as Seen[][],
        ...(shown === undefined ? {} : { shown: texts(shown) }),
        ...(formulas === undefined ? {} : { formulas: texts(formulas) }),
      };
    }),
    names: names.map((one) => {
      const { name, rows, values } = (one ?? {}) as Record<string, unknown>;
      return { name: text(name), rows: whole(rows), values: grid(values, isSeen) as Seen[][] };
    }),
    ...(list === undefined ? {} : { list: seenList(list) }),
  };
}

function seenList(raw: unknown): SeenList {
  const { formulas, values } = (raw ?? {}) as Record<string, unknown>;
  return { formulas: grid(formulas, isSeen) as Seen[][], values: grid(values, isSeen) as Seen[][] };
}

const isSeen = (cell: unknown): boolean =>
  cell === null || ["string", "boolean"].includes(typeof cell) || Number.isFinite(cell);
const text = (raw: unknown): string => (typeof raw === "string" ? raw : unreadable());
const whole = (raw: unknown): number => (Number.isInteger(raw) ? (raw as number) : unreadable());

function grid(raw: unknown, fits: (cell: unknown) => boolean): unknown[][] {
  if (!Array.isArray(raw) || !raw.every((row) => Array.isArray(row) && row.every(fits))) return unreadable();
  return raw as unknown[][];
}

export const unreadable = (): never =>
  refuse("What the add-on saw of the workbook could not be read. Reload the spreadsheet and open Gramwright again.");
