// What a text keeps apart from its dough, offered as a finished product: dough and parts on one sheet, with cost and label.

import { ask, failureSentence } from "../kit/ask.ts";
import { element, say } from "../kit/element.ts";
import { type Form, goTo, textField } from "../kit/fields.ts";
import { pressButton, progressOf } from "../kit/work-in-progress.ts";
import { afterwards } from "../new-formula/after-build.ts";
import type { Assessed } from "./order.ts";
import { productOrder, productParts, productTitle } from "./product-order.ts";
import { describedNow, ownOf, type PasteState } from "./state.ts";

const PATIENCE_MS = 90_000;
const LISTED = 8;

export function productOffer(state: PasteState, form: Form, now: () => Assessed): HTMLElement {
  const words = element("p", { class: "hint" });
  const button = pressButton("Build the finished product", "quiet-button", () => void pressed());
  const progress = progressOf(() => button);
  const node = element(
    "section",
    { hidden: true },
    element("h2", {}, "Finished product"),
    words,
    textField(
      form,
      { at: () => "product", label: () => "Name of the finished product" },
      {
        get: () => productTitle(state, now()),
        set: (text) => {
          ownOf(state).product = text;
        },
      },
    ),
    button,
    progress.bar,
    progress.status,
  );
  let texts = state.texts;
  form.onChange(() => {
    if (state.texts !== texts && !progress.isBusy()) progress.clear();
    texts = state.texts;
    const names = productParts(describedNow(state), now()).map(({ name }) => name);
    node.hidden = names.length === 0;
    const list =
      names.slice(0, LISTED).join(", ") + (names.length > LISTED ? ` and ${names.length - LISTED} more` : "");
    say(
      words,
      `A sheet with “${now().title}” and what goes with it for each piece: ${list}. It takes the dough from the formula sheet, so build that as well.`,
    );
  });
  return node;

  async function pressed(): Promise<void> {
    if (progress.isBusy()) return;
    const { order, faults, title } = productOrder(state, now());
    const [first] = faults;
    if (first !== undefined) {
      progress.report(first.says, true);
      return goTo(form, first.at);
    }
    if (state.stocked === null)
      return progress.report("Build the Ingredients sheet first: prices and label names come from it.", true);
    const outcome = await progress.during(`Building “${title}” …`, () => ask("build", order, PATIENCE_MS));
    if (!("answer" in outcome)) return progress.report(failureSentence(outcome), true);
    const { sheet, note } = outcome.answer;
    progress.report(
      `Built “${sheet}”. Weigh a finished piece and enter its weight there.${note ? ` ${note}` : ""}`,
      false,
    );
    void afterwards(progress.status, outcome.answer.listDue === true);
  }
}
