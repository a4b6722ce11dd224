// A pasted text, what was understood of it line by line, and the sheet that comes of it.

import { CellError, type Fault } from "../../shared/base/refusal.ts";
import type { CupSystem } from "../../shared/base/volumes.ts";
import { larder } from "../../shared/larder/larder.ts";
import { LARDER_NAME } from "../../shared/sheet/model.ts";
import { ask } from "../kit/ask.ts";
import { element, say } from "../kit/element.ts";
import { choiceField, type Form, messageLine, newId } from "../kit/fields.ts";
import { type Panel, SHOWN_AGAIN } from "../kit/panel.ts";
import { footOf } from "../new-formula/building.ts";
import { inUnit } from "../new-formula/figures.ts";
import { readShop } from "../new-formula/shop.ts";
import { buildAll } from "./build-all.ts";
import { lineList } from "./lines.ts";
import { type Assessed, assess } from "./order.ts";
import { questionNode } from "./question.ts";
import { recipeList } from "./several.ts";
import { sheetSection } from "./sheet.ts";
import { describedNow, emptyState, type PasteState, readAgain, takeText } from "./state.ts";

const PATIENCE_MS = 30_000;
const CUPS: readonly CupSystem[] = ["US", "AU", "UK", "EU"];
const CUP_WORDS: Readonly<Record<CupSystem, string>> = { US: "US", AU: "Australia", UK: "UK", EU: "Europe" };

export const readIn: Panel = { name: "Paste recipe", heading: "Paste a recipe", open };

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
  const now = () => ({ troubles: current.troubles, order: current.order });
  const foot = footOf({ form, now, title: () => current.title, figures: () => figuresOf(current) });
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
    buildAll(state, form),
    foot.node,
  );
  form.onChange(() => {
    result.hidden = state.text.trim() === "";
    say(lead, summary(state));
  });
  form.onChange(foot.update);
  form.changed();
  void look();
  const paste = element("section", {}, textArea(state, form), cupsField(state, form), note);
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
    const faults: Fault[] = [];
    const own = larder(true).decode(cells, "Ingredients", faults);
    const isRead = faults.length === 0;
    if (isRead) state.kitchen = { ...state.kitchen, larder: own };
    note.hidden = isRead;
    say(
      note,
      isRead ? "" : `Your ingredient sheet was left aside, as it cannot be read: ${new CellError(faults).message}`,
    );
  }
}

function textArea(state: PasteState, form: Form): HTMLElement {
  const id = newId();
  const message = messageLine();
  const area = element("textarea", {
    id,
    rows: 8,
    spellcheck: "false",
    "aria-describedby": message.id,
    placeholder: "Quay rolls\n500 g flour\n1 1/4 cups milk\n2 tsp salt …",
    input: () => {
      takeText(state, area.value);
      form.changed();
    },
  });
  form.places.add({ at: () => "text", control: area as unknown as HTMLInputElement, message });
  return element(
    "div",
    { class: "field" },
    element("label", { class: "label", for: id }, "The recipe, as you have it"),
    area,
    message,
  );
}

function cupsField(state: PasteState, form: Form): HTMLElement {
  return choiceField(
    form,
    { at: () => "cups", label: () => "Cups and spoons of", inline: true },
    CUPS.map((one) => ({ value: one, text: CUP_WORDS[one] })),
    {
      get: () => state.cups,
      set: (value) => {
        state.cups = CUPS.find((one) => one === value) ?? "US";
        readAgain(state);
      },
    },
  );
}

/** Questions that no one line asks. */
function wholeQuestions(state: PasteState, form: Form): HTMLElement {
  const node = element("div", { class: "whole-questions" });
  let before = "";
  form.onChange(() => {
    const { questions } = describedNow(state);
    const mine = questions.flatMap((question, at) => (question.line === null ? [{ question, at }] : []));
    const now = JSON.stringify(mine);
    if (now === before) return;
    before = now;
    for (const place of form.places) if (node.contains(place.control)) form.places.delete(place);
    const had = node.contains(document.activeElement);
    node.replaceChildren(...mine.map(({ question, at }) => questionNode(question, at, state, form, undefined, "")));
    if (had) setTimeout(() => document.activeElement === document.body && focusNext(node));
  });
  return node;
}

function focusNext(node: HTMLElement): void {
  const panel = node.parentElement;
  panel?.querySelector<HTMLElement>(".open-question button, .open-question input, .line button")?.focus();
}

function summary(state: PasteState): string {
  const { rows, steps, ignored, questions } = describedNow(state);
  const named = (many: number, one: string, more: string) => `${many} ${many === 1 ? one : more}`;
  const left = ignored.filter(
    ({ reason }) => !/^(?:heading|title|separator|column headings|yield|unit|total)$/.test(reason),
  ).length;
  const open = questions.filter(({ isOpen }) => isOpen).length;
  const parts = [
    named(rows.length, "ingredient", "ingredients"),
    ...(steps.length > 0 ? [named(steps.length, "step", "steps")] : []),
    ...(left > 0 ? [`${left} left out`] : []),
  ];
  return `${parts.join(", ")}. ${open === 0 ? "No question is open." : `${named(open, "question is", "questions are")} open.`}`;
}

function figuresOf({ dough, flour, pieces }: Assessed): Node[] {
  if (dough === null || flour === null)
    return [element("span", {}, "Dough and flour are shown once every amount is clear.")];
  const figure = (label: string, value: string) => element("span", {}, `${label} `, element("b", {}, value));
  return [
    figure("Flour", inUnit(flour, "g")),
    figure("Dough", inUnit(dough, "g")),
    ...(pieces === null ? [] : [figure("Pieces", String(pieces))]),
  ];
}
