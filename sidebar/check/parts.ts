import type { SheetReview } from "../../shared/protocol/sheet-review.ts";
import { ask, failureSentence } from "../kit/ask.ts";
import { element } from "../kit/element.ts";
import { pressButton, progressOf } from "../kit/work-in-progress.ts";
import { foldedSection } from "../new-formula/sections.ts";

/** As a person calls the blocks of a formula sheet. */
const NAMES: Readonly<Record<string, string>> = {
  tin: "tin",
  preferment: "preferment or levain",
  water: "dough temperature",
  steps: "method and oven",
  cost: "prices from the ingredient sheet",
  label: "label and nutrition",
};
const PATIENCE_MS = 90_000;

/** Each block that the sheet may have, with a button that adds it or takes it out; `again` reads the sheet once that is done, and shows its blocks anew. */
export function partsSection({ sheet, parts }: SheetReview, again: (part: string) => void): HTMLElement {
  let armed = "";
  let pressed: HTMLElement | undefined;
  const progress = progressOf(() => pressed ?? element("span", {}));
  const run = async ({ part, isThere, clears }: SheetReview["parts"][number]): Promise<void> => {
    if (progress.isBusy()) return;
    if (clears > 0 && armed !== part) {
      armed = part;
      progress.report(lost(part, isThere, clears), false);
      return;
    }
    armed = "";
    const outcome = await progress.during("Changing the sheet …", () =>
      ask("change", { sheet, part, isWanted: !isThere }, PATIENCE_MS),
    );
    if (!("answer" in outcome)) {
      const silent = "No answer for 90 seconds. Look at the sheet before you press the button again.";
      return progress.report(outcome.how === "silent" ? silent : failureSentence(outcome), true);
    }
    again(part);
  };
  const rows = parts.map((one) => {
    const { part, isThere } = one;
    const name = NAMES[part] ?? part;
    const button = pressButton(`${isThere ? "Take out" : "Add"} ${name}`, "quiet-button", () => {
      pressed = button;
      void run(one);
    });
    button.dataset.part = part;
    return element("li", {}, button);
  });
  return foldedSection(
    "Add to this sheet",
    element(
      "p",
      { class: "hint" },
      "All that you entered elsewhere on the sheet stays. Colours you set yourself do not.",
    ),
    element("ul", { class: "list" }, ...rows),
    progress.bar,
    progress.status,
  );
}

function lost(part: string, isThere: boolean, clears: number): string {
  const cells = clears === 1 ? "1 cell that you entered goes" : `${clears} cells that you entered go`;
  const again = `Press the button again to ${isThere ? "take it out" : "add it"}.`;
  if (part === "cost" && !isThere) return `${cells}: the ingredient sheet's prices take their place. ${again}`;
  return `${cells} with it. ${again}`;
}
