// Several formulas built one after the other, with what became of each.

import { ask, failureSentence } from "../kit/ask.ts";
import { element, say } from "../kit/element.ts";
import type { Form } from "../kit/fields.ts";
import { pressButton, progressOf } from "../kit/work-in-progress.ts";
import { assess } from "./order.ts";
import { type PasteState, partKey } from "./state.ts";

const PATIENCE_MS = 90_000;

export function buildAll(state: PasteState, form: Form): HTMLElement {
  const button = pressButton("Build the ticked recipes", "build", () => void pressed());
  const progress = progressOf(() => button);
  const results = element("ul", { class: "list" });
  const node = element("section", { hidden: true }, button, progress.bar, progress.status, results);
  const ticked = () => state.parts.flatMap((_, at) => (state.left.has(partKey(state, at)) ? [] : [at]));
  form.onChange(() => {
    node.hidden = state.parts.length < 2;
    say(button, `Build the ticked recipes (${ticked().length})`);
  });
  return node;

  async function pressed(): Promise<void> {
    if (progress.isBusy()) return;
    const wanted = ticked();
    results.replaceChildren();
    if (wanted.length === 0) return progress.report("Tick a recipe first.", true);
    let built = 0;
    for (const [index, at] of wanted.entries()) {
      const { order, faults, title } = assess(state, at);
      const name = title || `Recipe ${at + 1}`;
      const [first] = faults;
      if (first !== undefined) {
        results.append(element("li", {}, `${name}: not built. ${first.says}`));
        continue;
      }
      const outcome = await progress.during(`Building ${index + 1} of ${wanted.length}: “${name}” …`, () =>
        ask("build", order, PATIENCE_MS),
      );
      if ("answer" in outcome) built += 1;
      results.append(
        element(
          "li",
          {},
          "answer" in outcome ? `Built “${outcome.answer.sheet}”.` : `${name}: ${failureSentence(outcome)}`,
        ),
      );
    }
    progress.report(`${built} of ${wanted.length} built.`, built < wanted.length);
  }
}
