// The question that has sheet functions calculate.
import * as v from "valibot";
import { refuse } from "../base/refusal.ts";
import { LARDER_NAME } from "../sheet/workbook-names.ts";
import { list, messageReader, type Read, type Sent } from "./message.ts";

type Cell = string | number | boolean | null;
type Rows = readonly (readonly Cell[])[];

const MAX_CALLS = 10;
const MAX_ARGUMENTS = 20;
const MAX_ROWS = 2000;
const MAX_COLUMNS = 60;
const MAX_TEXT_LENGTH = 2000;

const isCell = (raw: unknown): boolean =>
  raw === null ||
  typeof raw === "boolean" ||
  Number.isFinite(raw) ||
  (typeof raw === "string" && raw.length <= MAX_TEXT_LENGTH);

const isRows = (raw: unknown): boolean =>
  Array.isArray(raw) &&
  raw.length <= MAX_ROWS &&
  raw.every(
    (row) => Array.isArray(row) && row.length === raw[0].length && row.length <= MAX_COLUMNS && row.every(isCell),
  );

/** A cell, or rows of cells of one width. */
const cells = () => v.custom<Cell | Rows>((raw) => isCell(raw) || isRows(raw));
/** The shop's larder as it stands; left out where the workbook has none. */
const larder = () => v.object({ cells: v.literal(LARDER_NAME) });

export const readCalculateAsk = messageReader("What the sidebar wants calculated", () =>
  v.object({
    calls: list(v.object({ name: v.string(), args: list(v.union([cells(), larder()]), MAX_ARGUMENTS) }), MAX_CALLS),
  }),
);
export type CalculateAsk = Sent<typeof readCalculateAsk>;
export type Call = CalculateAsk["calls"][number];
export type CalculateArgument = Call["args"][number];

export const isLarder = (argument: CalculateArgument): argument is { readonly cells: typeof LARDER_NAME } =>
  typeof argument === "object" && argument !== null && "cells" in argument;

/** For each call what the function gives, or the sentence with which it refuses. */
export const readCalculateAnswer = messageReader(refuseCalculated, () =>
  v.object({ answers: v.array(v.union([v.object({ says: v.string() }), v.object({ gives: cells() })])) }),
);
export type CalculateAnswer = Read<typeof readCalculateAnswer>;
export type Calculated = CalculateAnswer["answers"][number];

/** So many answers as they arrived at the page. */
export function readCalculated(raw: unknown, many: number): readonly Calculated[] {
  const { answers } = readCalculateAnswer(raw);
  return answers.length === many ? answers : refuseCalculated();
}

function refuseCalculated(): never {
  return refuse("What the add-on calculated could not be read. Reload the spreadsheet and open Gramwright again.");
}
