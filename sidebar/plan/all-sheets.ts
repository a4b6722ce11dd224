// All formula sheets of the workbook, and what is built over them.
import type { LookAsk, SeenName, Snapshot } from "../../shared/look.ts";
import type { Tab } from "../../shared/make.ts";
import { sheetName } from "../../shared/sheet-name.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { type FormulaSheet, seenAs } from "./formula-sheet.ts";
import { look, type Steps } from "./steps.ts";

export type FormulaSheets = {
  readonly front: string;
  readonly sheets: readonly FormulaSheet[];
  /** The names and ids of those. */
  readonly tabs: readonly Tab[];
  readonly names: ReadonlyMap<string, SeenName>;
};
type Also = Pick<LookAsk, "names" | "cells">;

/** Every formula sheet of the workbook, those that cannot be read now among them, and what else is asked for with them. */
export function* formulaSheets(also: Also = {}): Steps<FormulaSheets> {
  return asFormulaSheets(yield* look({ ...also, words: heading() }));
}

/**
 * What `build` makes of all formula sheets. A name is a call of the service for each of them, and the add-on looks at the names
 * anyway before it writes; so they are first taken to be called as their titles. Where that is not so it refuses, and then all
 * is read with the names, and built once more.
 */
export function* overAllSheets<T>(also: Also, build: (found: FormulaSheets) => Steps<T>): Steps<T> {
  const seen = yield* look({ ...also, words: heading(), unnamed: true });
  const supposed = asFormulaSheets({ ...seen, sheets: titled(seen.sheets) });
  try {
    return yield* build(supposed);
  } catch (error) {
    const named = yield* formulaSheets(also);
    const isSame = JSON.stringify(named.tabs) === JSON.stringify(supposed.tabs);
    if (isSame) throw error;
    return yield* build(named);
  }
}

function asFormulaSheets({ front, sheets, names }: Snapshot): FormulaSheets {
  const found = sheets.flatMap((seen) => {
    const sheet = seenAs(seen);
    return sheet === null ? [] : [{ sheet, tab: { name: sheet.name, id: seen.id } }];
  });
  return {
    front,
    sheets: found.map(({ sheet }) => sheet),
    tabs: found.map(({ tab }) => tab),
    names: new Map(names.map((one) => [one.name, one])),
  };
}

/** Named as they were when they were built: by their titles, and a second one with its number. */
function titled(sheets: Snapshot["sheets"]): Snapshot["sheets"] {
  const times = new Map<string, number>();
  return sheets.map((one) => {
    const name = sheetName(seenAs(one)?.title ?? "");
    const time = (times.get(name) ?? 0) + 1;
    times.set(name, time);
    return { ...one, name: time === 1 ? name : `${name} (${time})` };
  });
}

/** What stands over a column of every formula's table, in whichever unit: a sheet that does not show it holds no such table. */
function heading(): string[] {
  const tables = TEMPLATES.map(({ bands }) =>
    bands.flat().flatMap((item) => ("table" in item && item.table === "formula" ? item.columns : [])),
  );
  // Found as a formula sheet it must have every computed column.
  const heads = (tables[0] ?? []).filter(({ role }) => role === "computed").map(({ head }) => head);
  return heads
    .filter((head) => !head.includes("{") && tables.every((columns) => columns.some((one) => one.head === head)))
    .slice(0, 1);
}
