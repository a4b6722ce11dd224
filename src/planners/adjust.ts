// The formula sheet in front as Adjust works on it: its formula, what it costs, and what is kept of it.
import { applyAll, type Wish } from "../../shared/adjust/changes.ts";
import { contentText, tidy } from "../../shared/adjust/content.ts";
import type { Formula } from "../../shared/adjust/formula.ts";
import { contentOf, formulaOf } from "../../shared/adjust/from-content.ts";
import type { Money } from "../../shared/adjust/money.ts";
import { zonedTime } from "../../shared/adjust/versions.ts";
import { CellError, type Fault, refuse } from "../../shared/base/refusal.ts";
import { quote } from "../../shared/base/show.ts";
import { nameKey } from "../../shared/larder/built-in-larder.ts";
import { type Larder, larder, NO_LARDER } from "../../shared/larder/larder.ts";
import type { Adjustable, TakeChangesAnswer } from "../../shared/protocol/adjust.ts";
import { readHistory, readRevised } from "../../shared/protocol/history.ts";
import { inShort } from "../../shared/protocol/remake.ts";
import { LARDER_NAME, type Options } from "../../shared/sheet/model.ts";
import { plan } from "../../shared/sheet/plan.ts";
import { formulaHistory } from "../../templates/formula-history.ts";
import { usualStyle } from "./check-sheet.ts";
import { type Beside, type Changes, changesTo, contentIn, type SheetContent } from "./formula-content.ts";
import { checkFormulaSheet, type FormulaSheet } from "./formula-sheet.ts";
import { look, make, type Steps } from "./steps.ts";

export type Read = Adjustable & { readonly content: SheetContent };

/** The sheet of this name, or the one in front (""). */
export function* readAdjustable(name: string): Steps<Read> {
  const { sheets, names } = yield* look({ sheet: name, formulas: true, cells: [LARDER_NAME] });
  const [seen] = sheets;
  if (seen === undefined)
    return refuse(`There is no sheet ${quote(name)} any more; it was renamed or deleted. Open another one.`);
  const content = contentIn(seen);
  const { sheet } = content;
  checkFormulaSheet(sheet);
  return {
    sheet: sheet.name,
    id: seen.id,
    title: sheet.title,
    version: sheet.text("version"),
    says: sheet.text("check"),
    seen: inShort(seen),
    formula: formulaOf(content.content, aroundOf(content)),
    money: moneyOf(sheet),
    larder: larderOf(names[0]?.values),
    content,
  };
}

export function* adjustable(): Steps<Adjustable> {
  const { content: _, ...rest } = yield* readAdjustable("");
  return rest;
}

export function aroundOf({ sheet, has, rows }: SheetContent): Parameters<typeof formulaOf>[1] {
  const by = sheet.text("by").toLowerCase();
  const counted = sheet.rows.filter(({ weight, share }) => weight !== null && share !== null);
  const dough = counted.reduce((sum, { weight }) => sum + (weight ?? 0), 0);
  const sizes = rows("sizes");
  const top = sheet.zone("size_name")?.row ?? 0;
  const ofSizes = (name: string) =>
    Array.from({ length: sizes?.many ?? 0 }, (_, at) => sheet.number(name, (sizes?.first ?? 0) - top + at));
  return {
    style: usualStyle(sheet.model.name),
    has,
    batch: by === "flour" ? { of: "flour", amount: sheet.number("amount") ?? 0 } : { of: "dough", amount: dough },
    by,
    mixed: sheet.model.name === "cake" ? "batter" : "dough",
    capacity: has("tin_shape") ? sheet.number("tin_capacity") : null,
    pieces: ofSizes("size_pieces"),
    prices: ofSizes("size_price"),
  };
}

/** Prices of the sheet itself: those of the ingredient sheet, or as they were typed. */
function moneyOf(sheet: FormulaSheet): Money {
  const prices = sheet.rows.flatMap(({ name, weight, index }): [string, number][] => {
    const cost = sheet.number("row_cost", index);
    return name === "" || weight === null || !(weight > 0) || cost === null || !(cost > 0)
      ? []
      : [[nameKey(name), cost / weight]];
  });
  const size = sheet.zone("size_cost");
  const [handling, unsold] = [sheet.number("handling_loss") ?? 0, sheet.number("unsold") ?? 0];
  return {
    prices: Object.fromEntries(prices),
    pieces: Array.from({ length: size?.rows ?? 0 }, (_, at) => sheet.number("size_cost", at)).filter(
      (cost) => cost !== null,
    ),
    tax: sheet.number("tax") ?? 0,
    lost: 1 / (1 - handling) / (1 - unsold),
  };
}

function larderOf(table: readonly (readonly unknown[])[] | undefined): Larder {
  if (table === undefined) return NO_LARDER;
  const faults: Fault[] = [];
  const read = larder(true).decode(table, "ingredient sheet", faults);
  if (faults.length > 0) throw new CellError(faults);
  return read;
}

/** The changes, one after another, taken into the sheet as a new version; refuses where it is not the sheet that they were chosen for. */
export function* takeInPlace(asked: Readonly<Record<string, unknown>>, now: Date): Steps<TakeChangesAnswer> {
  const read = yield* readAdjustable(String(asked.sheet));
  mustBeSame(read, asked);
  const { after, line } = applyWishes(read, wishesIn(asked));
  const wanted = contentOf(read.content.content, read.formula, after);
  return yield* keepAndWrite(read, changesTo(read.content, wanted, orderOf(read, after)), line, now);
}

export const wishesIn = ({ wishes }: Readonly<Record<string, unknown>>): readonly Wish[] =>
  Array.isArray(wishes) ? (wishes as readonly Wish[]) : [];

export function mustBeSame({ id, seen, sheet }: Adjustable, asked: Readonly<Record<string, unknown>>): void {
  if (id !== asked.id || seen !== asked.seen)
    refuse(`The sheet ${quote(sheet)} was changed since you chose. Read it again: your changes stay in the panel.`);
}

export function applyWishes(
  read: Adjustable,
  wishes: readonly Wish[],
): { readonly after: Formula; readonly line: string } {
  const all = applyAll(read.formula, wishes, read.larder);
  const last = all[all.length - 1] ?? refuse("Choose a change first.");
  return { after: last.formula, line: all.map(({ line }) => line).join("; ") };
}

/** What the sheet is scaled to, where an ingredient is short. */
function orderOf({ formula, content }: Read, after: Formula): Beside[] {
  if (after.by === formula.by && (after.by !== "flour" || after.batch.amount === formula.batch.amount)) return [];
  return content.has("by")
    ? [
        { name: "by", value: after.by },
        { name: "amount", value: tidy(after.batch.amount) },
      ]
    : [];
}

const UNITS: Options = { weight: "g", temperature: "C", length: "cm", parts: [] };
const EDITED = "Edited by hand";
const FIRST = "As it stood before the first change";

/** Keeps the sheet as it is, and where `changes` say so as it becomes; the history is built first where there is none. */
export function* keepAndWrite(read: Read, changes: Changes | null, line: string, now: Date): Steps<TakeChangesAnswer> {
  const { id, sheet, seen, title, content } = read;
  const known = readHistory(yield { ask: "history", id });
  if (!known.isThere) yield* make(plan(formulaHistory, UNITS, {}), formulaHistory.title, [], { behind: true });
  const answer = readRevised(
    yield {
      ask: "revise",
      sheet,
      id,
      seen,
      title,
      when: zonedTime(now),
      day: dayNumber(now),
      before: contentText(content.content),
      beforeLine: known.versions.length === 0 ? FIRST : EDITED,
      after: changes === null ? null : changes.after,
      line: line.slice(0, MAX_LINE),
      inserts: changes?.inserts ?? [],
      writes: changes?.writes ?? [],
      stamps: changes?.stamps ?? [],
    },
  );
  return { sheet, ...answer };
}

const MAX_LINE = 400;

/** The day as the number a sheet counts in: 1 is 31 December 1899. */
const dayNumber = (now: Date): number =>
  Math.round((Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) - Date.UTC(1899, 11, 30)) / 86_400_000);
