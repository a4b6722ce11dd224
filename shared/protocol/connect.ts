// The question that writes what formula sheets read of each other.
import * as v from "valibot";
import { badFormula } from "../sheet/make-formulas.ts";
import { integer, list, messageReader, type Read, type Sent, text } from "./message.ts";

const MAX_SHEETS = 300;
const MAX_CELLS = 20;
const MAX_LENGTH = 1000;
const WHAT = "What the sidebar found of the formula sheets";

const tab = () => v.object({ name: text(MAX_LENGTH), id: integer(Number.MIN_SAFE_INTEGER, Number.MAX_SAFE_INTEGER) });
const place = () => integer(2, Number.MAX_SAFE_INTEGER);
const formula = () =>
  v.pipe(
    text(MAX_LENGTH),
    v.check((formula) => formula === "" || !badFormula(formula)),
  );

export const readConnectAsk = messageReader(WHAT, () =>
  v.object({
    /** Formulas for the small table of a sheet; row and column of its first cell, counted from 1. */
    connections: list(
      v.object({ tab: tab(), row: place(), column: place(), formulas: list(list(formula(), MAX_CELLS), MAX_CELLS) }),
      MAX_SHEETS,
    ),
    /** What stands over each table: without it nothing is written. */
    head: text(MAX_LENGTH),
    /** The sheets that are read. */
    tabs: list(tab(), MAX_SHEETS),
  }),
);
export type ConnectAsk = Sent<typeof readConnectAsk>;
export type Connection = ConnectAsk["connections"][number];

export const readConnectAnswer = messageReader(WHAT, () => v.object({ sheets: list(text(MAX_LENGTH), MAX_SHEETS) }));
export type ConnectAnswer = Read<typeof readConnectAnswer>;
