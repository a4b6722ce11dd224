import type { CupSystem } from "../../shared/base/volumes.ts";
import { CUP_CHOICES, readAnswer } from "../../shared/protocol/read-in.ts";
import type { ReadRecipe } from "../../shared/recipe/read-line.ts";
import { recipeYield } from "../../shared/recipe/yield.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { ask, told } from "../kit/ask.ts";
import { element, say } from "../kit/element.ts";
import { choiceField, type Form } from "../kit/fields.ts";
import { type Panel, SHOWN_AGAIN } from "../kit/panel.ts";
import { pressButton, progressOf } from "../kit/work-in-progress.ts";
import { footOf } from "../new-formula/building.ts";
import { readShop } from "../new-formula/shop.ts";
import type { ReadDraft } from "./draft.ts";
import { askedOf, type Line, lineOf, merged } from "./lines.ts";
import { lineList } from "./list.ts";
import { assessLines, type ReadState } from "./order.ts";
import { pasteField } from "./paste.ts";
import { figures, sheetSection } from "./sheet.ts";

const PATIENCE_MS = 30_000;

/** A pasted recipe becomes rows that can be corrected, and then a formula sheet. */
export const readIn: Panel = { name: "Paste recipe", heading: "Paste a recipe", open };

function open(): HTMLElement {
  const draft: ReadDraft = {
    title: "",
    template: TEMPLATES[0]?.name ?? "",
    columns: "weighed",
    units: { weight: "g", temperature: "C", length: "cm" },
    cups: "US",
    shop: null,
    make: { recipe: "", pieces: "", weight: "", loss: "" },
    lines: [],
  };
  const updates: (() => void)[] = [];
  const model = () => TEMPLATES.find(({ name }) => name === draft.template) ?? TEMPLATES[0];
  const assess = (): ReadState => {
    const chosen = model();
    if (chosen === undefined) throw new Error("there is no template");
    return assessLines(draft, chosen);
  };
  let current = assess();
  const form: Form = {
    changed: () => {
      current = assess();
      // Lines made by an update add updates of their own, which this loop still reaches.
      for (const update of updates) update();
    },
    onChange: (update) => updates.push(update),
    places: new Set(),
  };
  const pasted = pasteField(form);
  const cups = cupsField();
  const note = element("p", { class: "note" });
  const button = pressButton("Read it", "build", () => void pressed());
  const progress = progressOf(() => button);
  const heading = element("h2", { tabindex: -1 }, "What was read");
  const reading = { draft, form, now: () => current, again: (line: Line) => void readLineAgain(line) };
  const foot = footOf({ form, now: () => current, title: () => draft.title.trim(), figures: () => figures(current) });
  const result = element(
    "div",
    { hidden: true },
    element(
      "section",
      {},
      heading,
      note,
      element(
        "p",
        { class: "hint" },
        "Each line can be corrected: its text, name, kind and grams. % is the share of the flour. To read all anew would replace what you correct here.",
      ),
      lineList(reading),
    ),
    sheetSection({ draft, form, model }),
    foot.node,
  );
  form.onChange(foot.update);
  let isTold = false;
  form.onChange(() => {
    if (isTold) progress.report(summary(draft.lines, current), false);
  });
  form.changed();
  void look();
  const paste = element("section", {}, pasted.node, cups, button, progress.bar, progress.status);
  return element("div", { [SHOWN_AGAIN]: () => void look() }, paste, result);

  /** The units, scales and kitchen of the shop, as long as nothing is read. */
  async function look(): Promise<void> {
    const outcome = await ask("settings", {}, PATIENCE_MS);
    if (!("answer" in outcome) || draft.lines.length > 0) return;
    const { rows } = outcome.answer;
    draft.shop = rows === null ? null : readShop(rows);
    if (draft.shop !== null) draft.units = draft.shop.units;
    form.changed();
  }

  function cupsField(): HTMLElement {
    const words: Readonly<Record<CupSystem, string>> = { US: "US", AU: "Australia", UK: "UK", EU: "Europe" };
    return choiceField(
      form,
      { at: () => "cups", label: () => "Cups and spoons of", inline: true },
      CUP_CHOICES.map((one) => ({ value: one, text: words[one] })),
      {
        get: () => draft.cups,
        set: (value) => {
          draft.cups = value;
          if (draft.lines.length > 0) void readAll(draft.lines);
        },
      },
    );
  }

  async function pressed(): Promise<void> {
    if (progress.isBusy()) return;
    const { lines, trouble } = pasted.lines();
    pasted.say(trouble);
    if (trouble !== "") return;
    draft.title = "";
    const makes = recipeYield(lines);
    draft.make.recipe = makes === null ? "" : String(makes);
    if (!(await readAll(lines.map((text) => lineOf({ ...BLANK, text }))))) return;
    heading.focus();
  }

  async function readAll(lines: readonly Line[]): Promise<boolean> {
    if (progress.isBusy()) return false;
    isTold = false;
    const { answer, failed } = await progress.during("Reading …", () => answerFor(lines));
    if (answer === null) {
      progress.report(`${failed} What you pasted is still here.`, true);
      return false;
    }
    draft.lines = merged(lines, answer.lines);
    if (draft.title === "") draft.title = answer.title;
    say(note, answer.says);
    result.hidden = false;
    isTold = true;
    form.changed();
    return true;
  }

  async function readLineAgain(line: Line): Promise<void> {
    const asked = askedOf(line);
    if (line.text.trim() === "" || (asked.text === line.read && line.failed === "" && asked.name === "")) return;
    line.busy = true;
    line.failed = "";
    form.changed();
    const { answer, failed } = await answerFor([line]);
    const at = draft.lines.indexOf(line);
    // Taken out or changed once more meanwhile: that reading is on its way.
    if (at < 0 || line.text.trim() !== asked.text) return;
    line.busy = false;
    if (answer === null) line.failed = `${failed} Change the line once more to read it again.`;
    else draft.lines.splice(at, 1, ...merged([line], answer.lines));
    form.changed();
  }

  async function answerFor(lines: readonly Line[]): Promise<{ answer: ReadRecipe | null; failed: string }> {
    const outcome = await ask("read", { cups: draft.cups as CupSystem, lines: lines.map(askedOf) }, PATIENCE_MS);
    if (!("answer" in outcome)) return { answer: null, failed: told(outcome) };
    const answer = readAnswer(outcome.answer);
    return { answer, failed: told({ how: "failed", message: "the answer could not be read" }) };
  }
}

const BLANK = { from: 0, is: "aside", name: "", kind: "", grams: null, says: "", asks: "" } as const;

function summary(lines: readonly Line[], { troubles }: ReadState): string {
  const count = (is: Line["is"]) => lines.filter((line) => line.is === is).length;
  const ofLines = troubles.flatMap(({ at }) => /^(?:text|name|kind|grams)\/(\d+)$/.exec(at)?.[1] ?? []);
  const open = new Set(ofLines).size;
  const named = (many: number, one: string, more: string) => `${many} ${many === 1 ? one : more}`;
  const parts = [
    named(count("ingredient"), "ingredient", "ingredients"),
    ...(count("heading") > 0 ? [named(count("heading"), "heading", "headings")] : []),
    ...(count("aside") > 0 ? [`${count("aside")} kept aside`] : []),
  ];
  const asked = open === 0 ? "No question is open." : `${named(open, "question is", "questions are")} open below.`;
  return `Read: ${parts.join(", ")}. ${asked}`;
}
