// All formula sheets of the workbook, and what is built over them.
import { Refusal } from "../../shared/base/refusal.ts";
import { isLeftOver } from "../../shared/protocol/left-over.ts";
import type { LookAsk, SeenName, SeenSheet, Snapshot } from "../../shared/protocol/look.ts";
import { sheetName } from "../../shared/protocol/plan-message.ts";
import type { SheetModel } from "../../shared/sheet/model.ts";
import type { Tab } from "../../shared/sheet/tab.ts";
import { LIST_NAME } from "../../shared/sheet/workbook-names.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { seenAsListed } from "./formula-sheet.ts";
import { type ListedSheet, listedSheets } from "./list-row.ts";
import { type Overview, overviewOf } from "./overview.ts";
import { look, type Steps } from "./steps.ts";

export type FormulaSheets = {
  readonly front: string;
  readonly sheets: readonly Overview[];
  /** The same as the rows of the list stand, where a new sheet comes last; those without a row after them. */
  readonly inListOrder: readonly Overview[];
  /** The names and ids of those. */
  readonly tabs: readonly Tab[];
  readonly names: ReadonlyMap<string, SeenName>;
};
type Also = Pick<LookAsk, "names" | "cells">;
type Looked = { readonly seen: Snapshot; readonly sheetsInList: ReadonlyMap<number, ListedSheet> };

/** Every formula sheet of the workbook, those that cannot be read now among them, and what else is asked for with them. */
export function* formulaSheets(also: Also = {}): Steps<FormulaSheets> {
  return asFormulaSheets(yield* lookOver(also, { list: true }));
}

/** What is asked for, and how many formula sheets there are: null where there is a list of them. */
export function* formulaSheetCount(also: Also): Steps<{ seen: Snapshot; count: number | null }> {
  const { names = [] } = also;
  const question = { ...also, names: [...names, LIST_NAME], words: heading(), unnamed: true, counted: true };
  const seen = yield* look(question);
  return { seen, count: seen.names.some(({ name }) => name === LIST_NAME) ? null : seen.sheets.length };
}

/**
 * What `build` makes of all formula sheets. A name is a call of the service for each that is not in the list, and the add-on
 * looks at the names anyway before it writes; so they are first taken to be called as their titles. Where that is not so it
 * refuses, and then all is read with the names, and built once more.
 */
export function* overAllSheets<T>(
  also: Also,
  build: (all: FormulaSheets) => Steps<T>,
  { list = true }: { readonly list?: boolean } = {},
): Steps<T> {
  const { seen, sheetsInList: listed } = yield* lookOver(also, { unnamed: true, list });
  const supposed = asFormulaSheets({ seen: { ...seen, sheets: titled(seen.sheets) }, sheetsInList: listed });
  try {
    return yield* build(supposed);
  } catch (error) {
    // A second try would hide the sheet that the first one left.
    if (error instanceof Refusal && isLeftOver(error.reason)) throw error;
    const named = asFormulaSheets(yield* lookAgain(error, lookOver(also, { list })));
    const isSame = JSON.stringify(named.tabs) === JSON.stringify(supposed.tabs);
    if (isSame) throw error;
    return yield* build(named);
  }
}

/** Where the workbook cannot be read again either, what failed first is told: it says what is left of the build. */
function* lookAgain(error: unknown, looking: Steps<Looked>): Steps<Looked> {
  try {
    return yield* looking;
  } catch {
    throw error;
  }
}

/** By the list where there is one; sheets whose rows somebody changed are read as those that have none. */
function* lookOver(also: Also, how: Pick<LookAsk, "unnamed" | "list">): Steps<Looked> {
  const question = { ...also, ...how, words: heading() };
  const seen = yield* look(question);
  const sheetsInList = listedSheets(seen.list);
  const reread = seen.sheets.flatMap(({ id, values }) => (values.length > 0 || sheetsInList.has(id) ? [] : [id]));
  return { seen: reread.length === 0 ? seen : yield* look({ ...question, reread }), sheetsInList };
}

function asFormulaSheets({ seen: { front, sheets, names }, sheetsInList: listed }: Looked): FormulaSheets {
  const results = sheets.flatMap((one) => listed.get(one.id) ?? read(one) ?? []);
  const rows = new Map([...listed.keys()].map((id, at) => [id, at]));
  const rowOf = ({ tab }: ListedSheet) => rows.get(tab.id) ?? rows.size;
  return {
    front,
    sheets: results.map(({ sheet }) => sheet),
    inListOrder: [...results].sort((a, b) => rowOf(a) - rowOf(b)).map(({ sheet }) => sheet),
    tabs: results.map(({ tab }) => tab),
    names: new Map(names.map((one) => [one.name, one])),
  };
}

function read(seen: SeenSheet): ListedSheet | null {
  const sheet = seenAsListed(seen);
  return sheet === null ? null : { sheet: overviewOf(sheet), tab: { name: sheet.name, id: seen.id } };
}

/** Named as they were when they were built: by their titles, and a second one with its number. */
function titled(sheets: Snapshot["sheets"]): Snapshot["sheets"] {
  const times = new Map<string, number>();
  return sheets.map((one) => {
    if (one.values.length === 0) return one;
    const name = sheetName(seenAsListed(one)?.title ?? "");
    const time = (times.get(name) ?? 0) + 1;
    times.set(name, time);
    return { ...one, name: time === 1 ? name : `${name} (${time})` };
  });
}

/** What stands over the weights that other sheets read: a sheet that does not show it is no formula sheet. */
const heading = (): string[] => [...new Set(TEMPLATES.flatMap(headsOf))];

const headsOf = ({ bands }: SheetModel): string[] =>
  bands
    .flat()
    .flatMap((item) => ("table" in item ? item.columns : []))
    .flatMap(({ name, role, head }) => (name === "grams" && role === "helper" ? [head] : []));
