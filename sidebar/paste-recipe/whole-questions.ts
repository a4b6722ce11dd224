// Questions that no one line asks.

import { element } from "../kit/element.ts";
import type { Form } from "../kit/fields.ts";
import { questionNode } from "./question.ts";
import { describedNow, type PasteState } from "./state.ts";

export function wholeQuestions(state: PasteState, form: Form): HTMLElement {
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
