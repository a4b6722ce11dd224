// What counts as a workbook in a file and in a request: as much of the engine's format as a save relies on.
import * as v from "valibot";
import type { WorkbookData } from "../engine/library.ts";
import { KIND, keptText } from "./file-text.ts";

const count = v.pipe(v.number(), v.integer(), v.minValue(1));
const sheet = v.looseObject({
  id: v.pipe(v.string(), v.minLength(1)),
  name: v.pipe(v.string(), v.minLength(1)),
  colNumber: count,
  rowNumber: count,
  cells: v.record(v.pipe(v.string(), v.regex(/^[A-Z]{1,3}[1-9]\d*$/)), v.string()),
});
const isDistinct = (names: readonly string[]): boolean =>
  new Set(names.map((name) => name.toLowerCase())).size === names.length;
const workbook = v.looseObject({
  version: v.union([v.string(), v.number()]),
  sheets: v.pipe(v.array(sheet), v.minLength(1)),
});

/** Data that a workbook can be opened with, or undefined. */
export function asWorkbook(data: unknown): WorkbookData | undefined {
  if (!v.is(workbook, data)) return undefined;
  const { sheets } = data;
  return isDistinct(sheets.map(({ id }) => id)) && isDistinct(sheets.map(({ name }) => name)) ? data : undefined;
}

export const writeKept = (data: WorkbookData): string => keptText(JSON.stringify(data));

/** Throws where the text is no kept workbook. An older engine's data may look otherwise; the engine brings them up to date. */
export function readKept(text: string): WorkbookData {
  const contents = JSON.parse(text) as { kind?: unknown; data?: { sheets?: unknown } } | null;
  const sheets = contents?.data?.sheets;
  if (contents?.kind !== KIND || !Array.isArray(sheets) || sheets.length === 0)
    throw new Error("it is no kept workbook");
  return contents.data as WorkbookData;
}
