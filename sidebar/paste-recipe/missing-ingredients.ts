// What the ingredient sheet lacks of a recipe, offered to be added.

import { quote } from "../../shared/base/show.ts";
import { nameKey } from "../../shared/larder/built-in-larder.ts";
import { KIND_WORDS } from "../../shared/larder/kind-words.ts";
import type { NewSheet } from "../../shared/protocol/plan-message.ts";
import type { StockAnswer, StockAsk } from "../../shared/protocol/stock.ts";
import type { Described } from "../../shared/recipe/text/description.ts";
import { ask, failureSentence, type Outcome } from "../kit/ask.ts";
import { element, say } from "../kit/element.ts";
import type { Form } from "../kit/fields.ts";
import { pressButton, progressOf } from "../kit/work-in-progress.ts";
import { describedNow, type PasteState } from "./state.ts";

const PATIENCE_MS = 90_000;
type Lacking = StockAsk["ingredients"][number];

/**
 * Ingredients of the dough and of what is kept apart that the sheet has under no name; all of them without a sheet. A formula
 * sheet finds prices by the names entered there alone, so a name that only the built-in table knows is missing, too.
 */
export function lackingIn({ rows }: Described, { stocked }: PasteState): Lacking[] {
  const seen = new Set<string>();
  return rows.flatMap(({ name, type, takes }): Lacking[] => {
    const key = nameKey(name);
    if (takes !== null || key === "" || seen.has(key) || /^(?:water|ice)$/.test(type)) return [];
    seen.add(key);
    return stocked?.has(key) ? [] : [{ name, kind: KIND_WORDS.find((word) => word === type) ?? "" }];
  });
}

export function stockOffer(state: PasteState, form: Form, refresh: () => Promise<void>): HTMLElement {
  const words = element("p", { class: "hint" });
  const button = pressButton("Add them to Ingredients", "quiet-button", () => void pressed());
  const progress = progressOf(() => button);
  const node = element("div", { hidden: true }, words, button, progress.bar, progress.status);
  const lacking = () => lackingIn(describedNow(state), state);
  form.onChange(() => {
    const names = lacking().map(({ name }) => name);
    node.hidden = names.length === 0 && progress.status.textContent === "";
    button.hidden = names.length === 0;
    const list = names.slice(0, 8).join(", ") + (names.length > 8 ? ` and ${names.length - 8} more` : "");
    const lead =
      state.stocked === null
        ? "There is no Ingredients sheet yet. It can begin with"
        : "Not on your Ingredients sheet yet:";
    say(words, names.length === 0 ? "" : `${lead} ${list}. Costs and labels need them.`);
    say(button, state.stocked === null ? "Build the Ingredients sheet" : "Add them to Ingredients");
  });
  return node;

  async function pressed(): Promise<void> {
    const ingredients = lacking();
    if (progress.isBusy() || ingredients.length === 0) return;
    const isNew = state.stocked === null;
    const outcome: Outcome<"stock"> | Outcome<"build"> = await progress.during("Adding the ingredients …", () =>
      isNew ? ask("build", larderOrder(ingredients, state), PATIENCE_MS) : ask("stock", { ingredients }, PATIENCE_MS),
    );
    progress.report(
      "answer" in outcome ? addedSentence(outcome.answer, ingredients) : failureSentence(outcome),
      !("answer" in outcome),
    );
    if ("answer" in outcome) await refresh();
  }
}

const larderOrder = (ingredients: readonly Lacking[], { units }: PasteState) => ({
  template: "larder",
  options: { ...units, parts: [] },
  values: { ingredient: ingredients.map(({ name }) => name), kind: ingredients.map(({ kind }) => kind || null) },
});

function addedSentence(answer: StockAnswer | NewSheet, ingredients: readonly Lacking[]): string {
  const sheet = quote(answer.sheet);
  if ("added" in answer) return `Added to ${sheet}: ${answer.added.join(", ")}. Enter prices and allergens there.`;
  return `Built ${sheet} with ${ingredients.length} ingredients. Enter prices and allergens there.`;
}

/** Every name on the ingredient sheet, and what each is also called. */
export function namesOn([heads = [], ...rows]: readonly (readonly unknown[])[]): ReadonlySet<string> {
  const places = ["ingredient", "also called"].map((head) =>
    heads.findIndex((cell) => String(cell).trim().toLowerCase() === head),
  );
  return new Set(
    rows.flatMap((row) =>
      places.flatMap((place) =>
        String(row[place] ?? "")
          .split(";")
          .map(nameKey)
          .filter((name) => name !== ""),
      ),
    ),
  );
}
