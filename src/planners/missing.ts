// Brings into the ingredient sheet what formula sheets use and it lacks: a row for each, or another name of a row that is there.

import { Refusal, refuse } from "../../shared/base/refusal.ts";
import { quote } from "../../shared/base/show.ts";
import { plainName } from "../../shared/formula/uses.ts";
import { KIND_WORDS } from "../../shared/larder/kind-words.ts";
import { findIngredient, type Larder, readTable } from "../../shared/larder/larder.ts";
import { readStockAnswer, type StockAsk } from "../../shared/protocol/stock.ts";
import { LARDER_NAME, NO_LARDER_SHEET } from "../../shared/sheet/workbook-names.ts";
import { formulaSheets } from "./all-sheets.ts";
import type { Overview } from "./overview.ts";
import type { Steps } from "./steps.ts";

/** What came in, and which names were put behind which ingredient. */
export type Missing = {
  readonly sheet: string;
  readonly added: readonly string[];
  readonly also: readonly string[];
  readonly note?: string;
};

export function* addMissing(): Steps<Missing> {
  const { sheets, names } = yield* formulaSheets({ cells: [LARDER_NAME] });
  const table = names.get(LARDER_NAME)?.values;
  if (table === undefined) return refuse(NO_LARDER_SHEET);
  const { ask, notes } = missingFrom(sheets, readTable(table));
  const note = notes.length === 0 ? {} : { note: notes.join(" ") };
  if (ask.ingredients.length + (ask.also ?? []).length === 0) return { sheet: "", added: [], also: [], ...note };
  const answer = readStockAnswer(yield { ...ask, ask: "stock" });
  const also = (ask.also ?? []).map(({ name, of }) => `${name} as ${of}`);
  return { sheet: answer.sheet, added: answer.added, also, ...note };
}

const MAX_ADDED = 200;

/** Names that the sheet's own formulas would not find: they compare whole names, and what rows are also called. */
export function missingFrom(
  sheets: readonly Pick<Overview, "title" | "parts">[],
  larder: Larder,
): { readonly ask: StockAsk; readonly notes: readonly string[] } {
  const there = new Set(larder.rows.flatMap(({ name, alsoCalled }) => [name, ...alsoCalled]).map(plainName));
  const titles = new Set(sheets.map(({ title }) => plainName(title)));
  const notes: string[] = [];
  const ingredients: StockAsk["ingredients"][number][] = [];
  const also: { name: string; of: string }[] = [];
  for (const { name, kind } of sheets.flatMap(({ parts }) => parts)) {
    const key = plainName(name);
    if (key === "" || there.has(key) || titles.has(key) || /^(?:water|ice)\b/i.test(kind)) continue;
    there.add(key);
    const row = rowFor(name, larder, notes);
    if (row === undefined) ingredients.push({ name, kind: KIND_WORDS.find((word) => word === plainName(kind)) ?? "" });
    else if (row !== null && !name.includes(";")) also.push({ name, of: row });
  }
  const more = ingredients.length + also.length - MAX_ADDED;
  if (more > 0) notes.push(`${more} more are missing: press the button again.`);
  const first = ingredients.slice(0, MAX_ADDED);
  return { ask: { ingredients: first, also: also.slice(0, MAX_ADDED - first.length) }, notes };
}

/** The shop's row that an ordinary name means; null where it may be one of several, undefined where there is none. */
function rowFor(name: string, larder: Larder, notes: string[]): string | null | undefined {
  try {
    const match = findIngredient(larder, name);
    return match === undefined || match.row === null ? undefined : match.name;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    notes.push(
      `${quote(name)} may be several of your ingredients: enter it under “Also called” in the one that is meant.`,
    );
    return null;
  }
}
