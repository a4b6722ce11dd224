// The formula sheet in front as Adjust works on it: its formula, what it costs, and what is kept of it.

import { applyAll, type Wish } from "../../shared/adjust/changes.ts";
import { contentText, tidy } from "../../shared/adjust/content.ts";
import type { Formula } from "../../shared/adjust/formula.ts";
import { formulaOf } from "../../shared/adjust/from-content.ts";
import { contentOf } from "../../shared/adjust/to-content.ts";
import { zonedTime } from "../../shared/adjust/versions.ts";
import { dayNumber } from "../../shared/base/days.ts";
import { refuse } from "../../shared/base/refusal.ts";
import { quote } from "../../shared/base/show.ts";
import type { Adjustable, TakeChangesAnswer } from "../../shared/protocol/adjust.ts";
import { readHistoryAnswer, readReviseAnswer } from "../../shared/protocol/history.ts";
import { inShort } from "../../shared/protocol/remake.ts";
import type { Options } from "../../shared/sheet/model.ts";
import { plan } from "../../shared/sheet/plan.ts";
import { LARDER_NAME, SETTINGS_NAME } from "../../shared/sheet/workbook-names.ts";
import { formulaHistory } from "../../templates/formula-history.ts";
import { aroundOf, labelFacts, larderOf, moneyOf } from "./around-formula.ts";
import { type Beside, type Changes, changesTo, contentIn, type SheetContent } from "./formula-content.ts";
import { checkFormulaSheet } from "./formula-sheet.ts";
import { look, make, type Steps } from "./steps.ts";

export type Read = Adjustable & { readonly content: SheetContent };

/** The sheet of this name, or the one in front (""). */
export function* readAdjustable(name: string): Steps<Read> {
  const { sheets, names } = yield* look({ sheet: name, formulas: true, cells: [LARDER_NAME, SETTINGS_NAME] });
  const [seen] = sheets;
  if (seen === undefined)
    return refuse(`There is no sheet ${quote(name)} any more; it was renamed or deleted. Open another one.`);
  const content = contentIn(seen);
  const { sheet } = content;
  checkFormulaSheet(sheet);
  const cellsOf = (of: string) => names.find((one) => one.name === of)?.values;
  return {
    sheet: sheet.name,
    id: seen.id,
    title: sheet.title,
    version: sheet.text("version"),
    says: [sheet.newer, sheet.text("check")].filter((one) => one !== "").join(" "),
    seen: inShort(seen),
    formula: formulaOf(content.content, aroundOf(content)),
    money: moneyOf(sheet),
    larder: larderOf(cellsOf(LARDER_NAME)),
    label: labelFacts(sheet, cellsOf(SETTINGS_NAME)),
    content,
  };
}

export function* adjustable(): Steps<Adjustable> {
  const { content: _, ...rest } = yield* readAdjustable("");
  return rest;
}

/** The changes, one after another, taken into the sheet as a new version; refuses where it is not the sheet that they were chosen for. */
export function* takeInPlace(question: Readonly<Record<string, unknown>>, now: Date): Steps<TakeChangesAnswer> {
  const read = yield* readAdjustable(String(question.sheet));
  mustBeSame(read, question);
  const { after, line } = applyWishes(read, wishesIn(question));
  const wanted = contentOf(read.content.content, read.formula, after);
  return yield* keepAndWrite(read, changesTo(read.content, wanted, orderOf(read, after)), line, now);
}

export const wishesIn = ({ wishes }: Readonly<Record<string, unknown>>): readonly Wish[] =>
  Array.isArray(wishes) ? (wishes as readonly Wish[]) : [];

export function mustBeSame({ id, seen, sheet }: Adjustable, question: Readonly<Record<string, unknown>>): void {
  if (id !== question.id || seen !== question.seen)
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
  if (changes !== null && content.sheet.newer !== "") refuse(content.sheet.newer);
  const known = readHistoryAnswer(yield { ask: "history", id });
  if (!known.isThere) yield* make(plan(formulaHistory, UNITS, {}), formulaHistory.title, [], { behind: true });
  const answer = readReviseAnswer(
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
