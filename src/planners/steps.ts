// What a planner asks of the add-on, step by step. A planner is a generator, so that the page waits between its steps and a test does not.

import { Refusal } from "../../shared/base/refusal.ts";
import type { StartIngredient } from "../../shared/larder/start-ingredients.ts";
import { type Calculated, type Call, readCalculated } from "../../shared/protocol/calculate.ts";
import { readIngredientsAnswer } from "../../shared/protocol/ingredients.ts";
import { type LookAsk, readSnapshot, type Snapshot } from "../../shared/protocol/look.ts";
import { type Beside, makeAsk, type NewSheet, readMakeAnswer } from "../../shared/protocol/plan-message.ts";
import { isWaitingText } from "../../shared/protocol/waiting.ts";
import type { Layout } from "../../shared/sheet/layout.ts";
import type { SheetPlan } from "../../shared/sheet/sheet-plan.ts";
import type { Tab } from "../../shared/sheet/tab.ts";

/** Where the named cells of a sheet stand. A symbol: it stays with whoever plans, and is never sent. */
export const NAMES = Symbol("names");

/** A question for the add-on, as it is sent. */
export type Step = Readonly<Record<string, unknown>> & {
  readonly ask:
    | "look"
    | "make"
    | "remake"
    | "calculate"
    | "ingredients"
    | "connect"
    | "stock"
    | "history"
    | "revise"
    | "priceList"
    | "lots";
  readonly [NAMES]?: Layout["names"];
};
/** Yields steps, takes their answers as they arrived or throws what the add-on refused, ends with its own answer; refuses with a Refusal. */
export type Steps<T> = Generator<Step, T, unknown>;

export function* look(ask: LookAsk): Steps<Snapshot> {
  return readSnapshot(yield { ...ask, ask: "look" });
}

/** The cells that may still be calculating, each by its place and its text. */
export function waitingCells({ sheets, names }: Pick<Snapshot, "sheets" | "names">): string[] {
  const grids = [
    ...sheets.map(({ id, values }) => [String(id), values] as const),
    ...names.map(({ name, values }) => [name, values] as const),
  ];
  return grids.flatMap(([of, values]) =>
    values.flatMap((row, down) =>
      row.flatMap((cell, across) => (isWaitingText(cell) ? [`${of} ${down} ${across} ${cell}`] : [])),
    ),
  );
}

/** With what else a person should know. */
export function withNotes({ sheet, note }: NewSheet, ...more: readonly (string | undefined)[]): NewSheet {
  const all = [note, ...more].filter((one) => one !== undefined && one !== "").join(" ");
  return all === "" ? { sheet } : { sheet, note: all };
}

/** The new sheet; refused where a sheet that its formulas read is not called as in `tabs`. */
export function* make(plan: SheetPlan, title: string, tabs: readonly Tab[] = [], beside: Beside = {}): Steps<NewSheet> {
  const question: Step = { ...makeAsk(plan, title, tabs, beside), ask: "make", [NAMES]: plan.names };
  return readMakeAnswer(yield question);
}

export function* calculate(calls: readonly Call[]): Steps<readonly Calculated[]> {
  return readCalculated(yield { calls, ask: "calculate" }, calls.length);
}

/** What a larder can start with. */
export function* ingredients(): Steps<readonly StartIngredient[]> {
  return readIngredientsAnswer(yield { ask: "ingredients" }).ingredients;
}

/** What the add-on refused, or what failed in it, for the steps to throw. */
export const refusalError = ({ message, because, reason }: Refused): Error =>
  because === undefined
    ? new Refusal([{ says: message, ...(reason === undefined ? {} : { reason }) }])
    : new Error(because);
type Refused = { readonly message: string; readonly because?: string; readonly reason?: string };
