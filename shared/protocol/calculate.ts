// The question that has sheet functions calculate, checked at both ends.

import { refuse, refuseUnread } from "../base/refusal.ts";
import { LARDER_NAME } from "../sheet/model.ts";

type Cell = string | number | boolean | null;
/** A cell, rows of cells, or the shop's larder as it stands; left out where the workbook has none. */
export type CalculateArgument = Cell | readonly (readonly Cell[])[] | { readonly cells: typeof LARDER_NAME };
export type Call = { readonly name: string; readonly args: readonly CalculateArgument[] };
export type CalculateAsk = { readonly calls: readonly Call[] };

/** What a function gives, or the sentence with which it refuses. */
export type Calculated = { readonly gives: Cell | readonly (readonly Cell[])[] } | { readonly says: string };
export type CalculateAnswer = { readonly answers: readonly Calculated[] };

const MAX_CALLS = 10;
const MAX_ARGUMENTS = 20;
const MAX_ROWS = 2000;
const MAX_COLUMNS = 60;
const MAX_TEXT_LENGTH = 2000;

const isCell = (raw: unknown): raw is Cell =>
  raw === null ||
  typeof raw === "boolean" ||
  Number.isFinite(raw) ||
  (typeof raw === "string" && raw.length <= MAX_TEXT_LENGTH);

const isRows = (raw: unknown): raw is Cell[][] =>
  Array.isArray(raw) &&
  raw.length <= MAX_ROWS &&
  raw.every(
    (row) => Array.isArray(row) && row.length === raw[0].length && row.length <= MAX_COLUMNS && row.every(isCell),
  );

export const isLarder = (raw: unknown): raw is { cells: typeof LARDER_NAME } =>
  typeof raw === "object" && raw !== null && (raw as { cells?: unknown }).cells === LARDER_NAME;

/** Calls as they arrived at the add-on; refuses what are none. */
export function calculateAsk({ calls }: Readonly<Record<string, unknown>>): CalculateAsk {
  if (!Array.isArray(calls) || calls.length > MAX_CALLS) return unclear();
  return {
    calls: calls.map((one): Call => {
      const { name, args } = (one ?? {}) as Record<string, unknown>;
      const fits = Array.isArray(args) && args.length <= MAX_ARGUMENTS;
      if (typeof name !== "string" || !fits || !args.every((arg) => isCell(arg) || isRows(arg) || isLarder(arg)))
        return unclear();
      return { name, args: args as CalculateArgument[] };
    }),
  };
}

const unclear = (): never => refuseUnread("What the sidebar wants calculated");

/** So many answers as they arrived at the bench; refuses what are none. */
export function readCalculated(raw: unknown, many: number): readonly Calculated[] {
  const { answers } = (raw ?? {}) as Record<string, unknown>;
  const fits = (one: unknown): boolean => {
    const { gives, says } = (one ?? {}) as Record<string, unknown>;
    return typeof says === "string" || isCell(gives) || isRows(gives);
  };
  if (Array.isArray(answers) && answers.length === many && answers.every(fits)) return answers as Calculated[];
  return refuse("What the add-on calculated could not be read. Reload the spreadsheet and open Gramwright again.");
}
