// The question that only looks: what stands in the workbook, so that the page can work out what to build.
import * as v from "valibot";
import { refuse } from "../base/refusal.ts";
import { id, integer, list, matching, messageReader, type Read, rowsOf, type Sent, text } from "./message.ts";

/** What a cell holds as far as planning needs it; null for a date, which only its display tells. */
export type CellValue = string | number | boolean | null;

/** No sheet that is read again is longer; what stands below does not travel. */
export const MAX_SEEN_ROWS = 1500;
/** A longer text of a cell is cut. */
export const MAX_TEXT_LENGTH = 2000;

const MAX_NAME_LENGTH = 200;
/** Each is a call of the service. */
const MAX_WORDS = 5;
const MAX_NAMES = 10;
const MAX_SHEETS = 1000;
const names = () => v.optional(list(matching(/^gramwright_[a-z]{1,20}$/), MAX_NAMES), []);
const flag = () => v.optional(v.boolean(), false);

export const readLookAsk = messageReader("The sidebar's look at the workbook", () =>
  v.object({
    /** The sheet in front (""), one by its name, or every sheet that shows one of `words`. */
    sheet: v.exactOptional(text(MAX_NAME_LENGTH)),
    words: v.exactOptional(list(text(MAX_NAME_LENGTH, 1), MAX_WORDS)),
    /** With the list of formula sheets where there is one; of sheets that it has only the number is told. */
    list: flag(),
    /** Sheets of the list whose cells are told all the same. */
    reread: v.optional(list(id(), MAX_SHEETS), []),
    /** Of sheets with `words` only their numbers are told, and none where there is a list. */
    counted: flag(),
    /** Leaves out the names of the sheets with `words`, and which is in front: each is a call of the service. */
    unnamed: flag(),
    /** With what the cells display. */
    shown: flag(),
    /** With the formulas of the page's cells. */
    formulas: flag(),
    /** Names of the workbook: whether they are there, and of `cells` what stands there, too. */
    names: names(),
    cells: names(),
  }),
);
export type LookAsk = Sent<typeof readLookAsk>;

const isSeen = (cell: unknown): boolean =>
  cell === null || typeof cell === "string" || typeof cell === "boolean" || Number.isFinite(cell);
const seenRows = () => rowsOf<CellValue>(isSeen);
const textRows = () => rowsOf<string>((cell) => typeof cell === "string");
const anyId = () => integer(Number.MIN_SAFE_INTEGER, Number.MAX_SAFE_INTEGER);

/** What was seen, as it arrived at the page. */
export const readSnapshot = messageReader(refuseSnapshot, () =>
  v.object({
    /** The sheet in front; "" where it was not asked for. */
    front: v.string(),
    sheets: v.array(
      v.object({
        id: anyId(),
        /** "" where it was left out. */
        name: v.string(),
        /** Rows from A1; a row ends with its last filled cell. */
        values: seenRows(),
        shown: v.exactOptional(textRows()),
        formulas: v.exactOptional(textRows()),
      }),
    ),
    names: v.array(
      v.object({
        name: v.string(),
        /** How many its range has; its values only where they were asked for. */
        rows: anyId(),
        values: seenRows(),
      }),
    ),
    /** Rows of the list of formula sheets as they are written and as they show, each up to its last filled cell. */
    list: v.exactOptional(v.object({ formulas: seenRows(), values: seenRows() })),
  }),
);
export type Snapshot = Read<typeof readSnapshot>;
export type SeenSheet = Snapshot["sheets"][number];
export type SeenName = Snapshot["names"][number];
export type SeenList = NonNullable<Snapshot["list"]>;

function refuseSnapshot(): never {
  return refuse(
    "What the add-on saw of the workbook could not be read. Reload the spreadsheet and open Gramwright again.",
  );
}
