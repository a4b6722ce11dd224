// A pasted text, what was understood of it line by line, and the sheet that comes of it.

import { type Fault, Refusal } from "../../shared/base/refusal.ts";
import { inUnit } from "../../shared/base/show.ts";
import { fromGrams, grams } from "../../shared/base/units.ts";
import { larder } from "../../shared/larder/larder.ts";
import { makesBatter } from "../../shared/sheet/template-inputs.ts";
import { LARDER_NAME } from "../../shared/sheet/workbook-names.ts";
import { ask } from "../kit/ask.ts";
import { element, say } from "../kit/element.ts";
import type { Form } from "../kit/fields.ts";
import { type Panel, SHOWN_AGAIN } from "../kit/panel.ts";
import { footOf } from "../new-formula/build-foot.ts";
import { readShop } from "../new-formula/shop.ts";
import { buildAll } from "./build-all.ts";
import { productOffer } from "./finished-product.ts";
import { lineList } from "./lines.ts";
import { namesOn, stockOffer } from "./missing-ingredients.ts";
import { type Assessed, assess } from "./order.ts";
import { recipeList } from "./recipe-list.ts";
import { sheetSection } from "./sheet.ts";
import { describedNow, emptyState, type PasteState, readAgain } from "./state.ts";
import { CUP_WORDS, CUPS, cupsField, fileField, textArea } from "./text-fields.ts";
import { wholeQuestions } from "./whole-questions.ts";

const PATIENCE_MS = 30_000;
export const pasteRecipe: Panel = { name: "Paste recipe", heading: "Paste a recipe", open };

function open(): HTMLElement {
  const state = emptyState();
  const updates: (() => void)[] = [];
  let current: Assessed = assess(state);
  const form: Form = {
    changed: () => {
      current = assess(state);
      for (const update of updates) update();
    },
    onChange: (update) => updates.push(update),
    places: new Set(),
  };
  const note = element("p", { class: "note", hidden: true });
  const lead = element("p", { class: "status", role: "status", "aria-live": "polite" });
  const now = () => ({ faults: current.faults, order: current.order });
  const foot = footOf({ form, now, title: () => current.title, figures: () => figuresOf(current, state.units.weight) });
  const result = element(
    "div",
    { hidden: true },
    recipeList(state, form),
    element(
      "section",
      {},
      element("h2", {}, "What was understood"),
      lead,
      wholeQuestions(state, form),
      lineList(state, form),
    ),
    sheetSection(state, form, () => current),
    stockOffer(state, form, look),
    productOffer(state, form, () => current),
    buildAll(state, form),
    foot.node,
  );
  form.onChange(() => {
    result.hidden = state.text.trim() === "";
    say(lead, summary(state));
  });
  let texts = state.texts;
  form.onChange(() => {
    if (state.texts !== texts) foot.clear();
    texts = state.texts;
  });
  form.onChange(foot.showFigures);
  form.onChange(foot.update);
  form.changed();
  void look();
  const paste = element("section", {}, textArea(state, form), fileField(state, form), cupsField(state, form), note);
  return element("div", { [SHOWN_AGAIN]: () => void look() }, paste, result);

  /** The units, scales and kitchen of the bakery, and its own ingredients. */
  async function look(): Promise<void> {
    const [settings, seen] = await Promise.all([
      ask("settings", {}, PATIENCE_MS),
      ask("look", { cells: [LARDER_NAME] }, PATIENCE_MS),
    ]);
    if ("answer" in seen) takeLarder(seen.answer.names.find(({ name }) => name === LARDER_NAME)?.values ?? []);
    if ("answer" in settings && settings.answer.rows !== null) {
      const { rows } = settings.answer;
      state.shop = readShop(rows);
      if (state.text === "") {
        state.units = state.shop.units;
        const cups = rows.find(([name]) => /^cups and spoons/i.test(name.trim()))?.[1].trim() ?? "";
        state.cups =
          CUPS.find((one) => one === cups.toUpperCase() || CUP_WORDS[one].toLowerCase() === cups.toLowerCase()) ??
          state.cups;
      }
    }
    readAgain(state);
    form.changed();
  }

  function takeLarder(cells: readonly (readonly unknown[])[]): void {
    state.stocked = cells.length === 0 ? null : namesOn(cells);
    const faults: Fault[] = [];
    const rows = larder(true).decode(cells, "Ingredients", faults);
    const isRead = faults.length === 0;
    if (isRead) state.kitchen = { ...state.kitchen, larder: rows };
    note.hidden = isRead;
    say(
      note,
      isRead ? "" : `Your ingredient sheet was left aside, as it cannot be read: ${new Refusal(faults).message}`,
    );
  }
}

function summary(state: PasteState): string {
  const { rows, steps, ignored, questions } = describedNow(state);
  const named = (many: number, one: string, more: string) => `${many} ${many === 1 ? one : more}`;
  const left = ignored.filter(
    ({ reason }) => !/^(?:heading|title|separator|column headings|goes on|yield|unit|total|tin)$/.test(reason),
  ).length;
  const open = questions.filter(({ isOpen }) => isOpen).length;
  const parts = [
    named(rows.length, "ingredient", "ingredients"),
    ...(steps.length > 0 ? [named(steps.length, "step", "steps")] : []),
    ...(left > 0 ? [`${left} left out`] : []),
  ];
  return `${parts.join(", ")}. ${open === 0 ? "No question is open." : `${named(open, "question is", "questions are")} open.`}`;
}

function figuresOf({ dough, flour, pieces, model }: Assessed, unit: "g" | "oz"): Node[] {
  if (dough === null || flour === null)
    return [element("span", {}, "Dough and flour are shown once every amount is clear.")];
  const figure = (label: string, value: string) => element("span", {}, `${label} `, element("b", {}, value));
  const shown = (amount: number) => inUnit(fromGrams(grams(amount), unit), unit);
  return [
    figure("Flour", shown(flour)),
    figure(makesBatter(model) ? "Batter" : "Dough", shown(dough)),
    ...(pieces === null ? [] : [figure("Pieces", String(pieces))]),
  ];
}
