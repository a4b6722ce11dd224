// The questions about the formula history: what is kept, and a sheet that goes on as a new version.
import * as v from "valibot";
import { id, integer, list, messageReader, type Read, type Sent, text } from "./message.ts";

const MAX_TEXT = 300_000;
const MAX_SHORT = 500;
const MAX_CELL_TEXT = 2000;
const MAX_WRITES = 500;
const MAX_CELLS = 300;
const MAX_ROWS = 20_000;
const MAX_COLUMNS = 1000;
const MAX_BLANK_ROWS = 200;
const MAX_DAY = 100_000;
const MAX_STAMPS = 10;

const WHAT = "The change of the formula";
const short = () => text(MAX_SHORT);
const row = () => integer(0, MAX_ROWS);
const column = () => integer(0, MAX_COLUMNS);
const cell = () => v.union([v.pipe(v.number(), v.finite()), text(MAX_CELL_TEXT)]);

/** Versions of one formula sheet, or those of all without what is kept of them. */
export const readHistoryAsk = messageReader(WHAT, () => v.object({ id: v.optional(v.nullable(id()), null) }));
export type HistoryAsk = Sent<typeof readHistoryAsk>;

export const readReviseAsk = messageReader(WHAT, () =>
  v.object({
    sheet: short(),
    id: id(),
    /** What was seen of it, in short: nothing is written where it was changed meanwhile. */
    seen: integer(0, 0xffffffff),
    title: short(),
    when: short(),
    /** The day as a sheet counts it. */
    day: integer(0, MAX_DAY),
    /** What is typed now, kept first where the history has another. */
    before: text(MAX_TEXT),
    beforeLine: short(),
    /** What will be typed, and what changed; null where only what is there is kept. */
    after: v.nullable(text(MAX_TEXT)),
    line: short(),
    /** Blank rows below one, both counted from 0 as the sheet is after those before. */
    inserts: list(v.object({ after: row(), many: integer(0, MAX_BLANK_ROWS) }), MAX_WRITES),
    /** Cells side by side from one on, rows counted from 0; "" empties a cell. */
    writes: list(
      v.object({ row: row(), column: column(), cells: list(list(cell(), MAX_CELLS), MAX_CELLS) }),
      MAX_WRITES,
    ),
    /** Where a version's number, its day and what changed stand on the sheet. */
    stamps: list(v.object({ row: row(), column: column(), is: v.picklist(["number", "day", "line"]) }), MAX_STAMPS),
  }),
);
export type ReviseAsk = Sent<typeof readReviseAsk>;
export type CellsWrite = ReviseAsk["writes"][number];
export type RowsInsert = ReviseAsk["inserts"][number];
export type Stamp = ReviseAsk["stamps"][number];

const BROKEN = "What the add-on said of the formula history";

export const readHistoryAnswer = messageReader(BROKEN, () =>
  v.object({
    isThere: v.boolean(),
    versions: v.array(
      v.object({
        when: v.string(),
        sheet: v.number(),
        title: v.string(),
        number: v.number(),
        line: v.string(),
        content: v.string(),
      }),
    ),
  }),
);
export type HistoryAnswer = Read<typeof readHistoryAnswer>;

export const readReviseAnswer = messageReader(BROKEN, () =>
  v.object({
    /** The number of the version that the sheet is now. */
    number: v.number(),
    /** Whether hand edits were kept first. */
    wasEdited: v.boolean(),
  }),
);
export type ReviseAnswer = Read<typeof readReviseAnswer>;
