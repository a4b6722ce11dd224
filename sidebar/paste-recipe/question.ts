// A question about a line or about the whole, with what answers it: a button for each choice, or a field.

import { KIND_CHOICES } from "../../shared/larder/kinds.ts";
import { questionKey } from "../../shared/recipe/text/corrections.ts";
import type { Question, Row } from "../../shared/recipe/text/description.ts";
import { questionSays } from "../../shared/recipe/text/wording.ts";
import { element, say } from "../kit/element.ts";
import { type Form, messageLine, newId } from "../kit/fields.ts";
import { AMOUNT_WANTED, amountOfText } from "./amount-text.ts";
import { answerQuestion, correctLine, describedNow, type PasteState, shownPart, teachName } from "./state.ts";
import { typeFault } from "./type-text.ts";

type Answer = (text: string) => string;

/** Does it, and nothing is wrong with it. */
function done(work: () => void): string {
  work();
  return "";
}

/** What an answer does; what it answers with is what is wrong with it. */
function answerOf(question: Question, state: PasteState, row: Row | undefined, text: string): Answer | undefined {
  const readName = row?.readName ?? "";
  switch (question.reason) {
    case "misspelt":
      return (name) => done(() => teachName(state, readName, { name }));
    case "which name":
      return (name) => (name === "" ? "Enter a name." : done(() => correctLine(state, text, { name })));
    case "which type":
    case "hydration":
      return (type) => {
        const says = typeFault(type);
        if (says !== "") return says;
        teachName(state, readName, { type });
        return "";
      };
    case "no amount":
    case "unclear amount":
    case "grams or pieces":
      return (reply) => {
        const inBrackets = /\(([^)]+)\)/.exec(reply)?.[1];
        const amount = amountOfText(inBrackets ?? reply);
        if (amount === undefined) return AMOUNT_WANTED;
        correctLine(state, text, amount);
        return "";
      };
    case "mixed amounts":
      return (reply) => weighFlour(state, reply);
    case "share of the preferment":
      return (reply) => {
        if (!/^\d+(?:[.,]\d+)?\s*%?$/.test(reply)) return "Enter a percentage such as 30 %.";
        answerQuestion(state, questionKey(question), reply);
        return "";
      };
    case "which unit":
    case "which column":
    case "thousands or decimals":
    case "part of the dough":
    case "on top or included":
    case "several recipes":
      return (choice) => done(() => answerQuestion(state, questionKey(question), choice));
    default:
      return undefined;
  }
}

/** Gives the rows of flour their weights out of that of all flour. */
function weighFlour(state: PasteState, reply: string): string {
  const amount = amountOfText(reply)?.grams;
  if (amount === undefined) return "Enter the weight of all flour, such as 10 kg.";
  const { rows } = describedNow(state);
  const flours = rows.filter(({ type, grams, percent }) => type === "flour" && grams === null && percent !== null);
  const all = flours.reduce((sum, { percent }) => sum + (percent ?? 0), 0);
  for (const { line, percent } of flours) {
    const text = shownPart(state).lines.find(({ at }) => at === line)?.text;
    if (text !== undefined) correctLine(state, text, { grams: (amount * (percent ?? 0)) / all });
  }
  return flours.length > 0 ? "" : "Correct the type of a row first: no flour has a percentage alone.";
}

const TYPED = new Set<Question["reason"]>([
  "which name",
  "which type",
  "hydration",
  "no amount",
  "unclear amount",
  "share of the preferment",
  "mixed amounts",
]);

export function questionNode(
  question: Question,
  at: number,
  state: PasteState,
  form: Form,
  row: Row | undefined,
  text: string,
): HTMLElement {
  const words = element("p", { class: question.isOpen ? "fault" : "hint told", id: newId() }, questionSays(question));
  const answer = answerOf(question, state, row, text);
  const node = element(
    "div",
    { class: question.isOpen ? "open-question" : "told-question", role: "group", "aria-labelledby": words.id },
    words,
  );
  if (answer === undefined) return node;
  const message = messageLine();
  const press = (reply: string): void => {
    const says = answer(reply);
    say(message, says);
    message.hidden = says === "";
    if (says === "") form.changed();
  };
  const buttons = question.choices.map((choice) =>
    element(
      "button",
      { type: "button", class: "quiet-button", click: () => press(choice) },
      choiceSays(question, choice),
    ),
  );
  const controls: HTMLElement[] = [...buttons];
  if (TYPED.has(question.reason)) controls.push(...typedField(question, press));
  node.append(element("div", { class: "answers" }, ...controls), message);
  const first = node.querySelector<HTMLInputElement>("button, input");
  if (first !== null) form.places.add({ at: () => `question/${at}`, control: first, message: element("p", {}) });
  return node;
}

const choiceSays = ({ reason, about }: Question, choice: string): string =>
  reason === "misspelt" && choice === about[0] ? `Keep “${choice}”` : choice;

const FIELD_NAMES: Readonly<Partial<Record<Question["reason"], string>>> = {
  "which name": "Name",
  "which type": "Type",
  hydration: "Type",
  "share of the preferment": "Percentage",
  "mixed amounts": "Weight of the flour",
};

function typedField({ reason, line }: Question, press: (reply: string) => void): HTMLElement[] {
  const list = newId();
  const input = element("input", {
    id: newId(),
    type: "text",
    class: "answer",
    autocomplete: "off",
    spellcheck: "false",
    maxlength: 100,
    change: () => press(input.value.trim()),
  });
  const place = line === null ? "" : `, line ${line + 1}`;
  const name = FIELD_NAMES[reason] ?? "Amount";
  const label = element("label", { for: input.id }, name);
  input.setAttribute("aria-label", `${name}${place}`);
  if (reason !== "which type" && reason !== "hydration") return [label, input];
  input.setAttribute("list", list);
  return [
    label,
    input,
    element("datalist", { id: list }, ...KIND_CHOICES.map((one) => element("option", { value: one }))),
  ];
}
