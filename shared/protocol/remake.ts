// A formula sheet built anew in the place of another: where what was typed goes, and where other sheets find what they read.
import * as v from "valibot";
import type { SeenSheet } from "./look.ts";
import { type MakeOrder, readMakeAsk } from "./make.ts";
import { id, integer, list, type MessageReader, messageReader, type Read } from "./message.ts";
import type { MakeAsk } from "./plan-message.ts";

const MAX_ENTRIES = 5000;
const MAX_ROWS = 20_000;
const MAX_COLUMNS = 1000;

const zone = () =>
  v.object({
    row: integer(0, MAX_ROWS),
    column: integer(0, MAX_COLUMNS),
    rows: integer(1, MAX_ROWS),
    columns: integer(1, MAX_COLUMNS),
  });
/** From where to where; of the same size. */
const move = () =>
  v.pipe(
    v.tuple([zone(), zone()]),
    v.check(([from, to]) => from.rows === to.rows && from.columns === to.columns),
  );

/** What a remade sheet needs beside its plan. */
const readRemade = messageReader("The plan of the sheet", () =>
  v.object({
    sheet: v.pipe(v.string(), v.nonEmpty()),
    id: id(),
    /** What was seen of it, in short: nothing is built where it was changed meanwhile. */
    seen: integer(0, 0xffffffff),
    /** What was typed, cell by cell or column by column. */
    typed: list(move(), MAX_ENTRIES),
    /** Where everything else stands that formulas of other sheets may read. */
    moves: list(move(), MAX_ENTRIES),
    /** For rows from the first: where each stands now, -1 where it is gone. */
    rowsNow: list(integer(-1, MAX_ROWS), MAX_ENTRIES),
  }),
);
export type Remade = Read<typeof readRemade>;
export type Move = Remade["moves"][number];
export type RemakeOrder = MakeOrder & Remade;
export const readRemakeAsk: MessageReader<MakeAsk & Remade, RemakeOrder> = (raw) => ({
  ...readMakeAsk(raw),
  ...readRemade(raw),
});

/** The same for what is the same, and hardly ever for anything else (FNV-1a, from memory). */
export function inShort({ values, formulas }: Pick<SeenSheet, "values" | "formulas">): number {
  const text = JSON.stringify([values, formulas]);
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193) >>> 0;
  return hash;
}
