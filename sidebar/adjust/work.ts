// What the panel Adjust works on: the sheet as it was read, changes already added, and the one that is being chosen.
import type { Changed, Field, Values } from "../../shared/adjust/change.ts";
import { applyAll, applyWish, changeNamed, type Wish } from "../../shared/adjust/changes.ts";
import { type Compared, compareFormulas } from "../../shared/adjust/comparison.ts";
import type { Formula } from "../../shared/adjust/formula.ts";
import { printedList, printedSays } from "../../shared/adjust/printed.ts";
import { Refusal } from "../../shared/base/refusal.ts";
import type { Adjustable } from "../../shared/protocol/adjust.ts";
import { NOW_AND_THEN } from "./comparison.ts";

export type Work = {
  readonly data: Adjustable;
  /** Added one after another; the last one is taken back first. */
  readonly added: Wish[];
  chosen: string | null;
  values: Record<string, string>;
};

export const newWork = (data: Adjustable): Work => ({ data, added: [], chosen: null, values: {} });

export type AdjustView = {
  readonly compared: Compared;
  /** What a label lists, as far as it is known. */
  readonly printed: readonly string[];
  readonly changes: readonly Changed[];
  /** Why the change that is being chosen cannot be done; "" where it can, or where none is. */
  readonly refusal: string;
};

/** The formula with all that was added. */
export function formulaNow({ data, added }: Work): Formula {
  const all = applyAll(data.formula, added, data.larder);
  return all[all.length - 1]?.formula ?? data.formula;
}

export function fieldsOf(work: Work): readonly Field[] {
  return work.chosen === null ? [] : changeNamed(work.chosen).fields(formulaNow(work));
}

/** A field that another one makes needless is not asked. */
export const isAsked = ({ when }: Field, fields: readonly Field[], values: Values): boolean =>
  when === undefined ||
  when.slice(1).includes(values[when[0]] ?? fields.find(({ name }) => name === when[0])?.start ?? "");

/** What is being chosen, with what its fields begin with. */
export function wishNow(work: Work): Wish | null {
  if (work.chosen === null) return null;
  const started = Object.fromEntries(fieldsOf(work).map(({ name, start }) => [name, work.values[name] ?? start]));
  return { change: work.chosen, values: started };
}

/** Before and after, with the change that is being chosen as far as it can be done. */
export function seenNow(work: Work): AdjustView {
  const { data, added } = work;
  const changes = applyAll(data.formula, added, data.larder);
  const before = changes[changes.length - 1]?.formula ?? data.formula;
  const wish = wishNow(work);
  const { changed, refusal } = tried(before, wish, work);
  const after = changed === null ? before : changed.formula;
  return {
    compared: compareFormulas(data.formula, after, data.money, data.larder),
    printed: printedNow(data, after),
    changes: changed === null ? changes : [...changes, changed],
    refusal,
  };
}

/** Where no label can be listed the panel says nothing of it: who compares two versions is told why. */
function printedNow({ formula, label, larder }: Adjustable, after: Formula): string[] {
  const [was, now] = [printedList(formula, label, larder), printedList(after, label, larder)];
  return "list" in was || "list" in now ? printedSays([was, now], NOW_AND_THEN) : [];
}

function tried(before: Formula, wish: Wish | null, { data }: Work): { changed: Changed | null; refusal: string } {
  if (wish === null) return { changed: null, refusal: "" };
  try {
    return { changed: applyWish(before, wish, data.larder), refusal: "" };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { changed: null, refusal: error.message };
  }
}

/** Takes what is being chosen among the changes; false where it cannot be done. */
export function addChosen(work: Work): boolean {
  const wish = wishNow(work);
  if (wish === null || seenNow(work).refusal !== "") return false;
  work.added.push(wish);
  work.chosen = null;
  work.values = {};
  return true;
}
