import type { SheetReview } from "../../shared/protocol/sheet-review.ts";
import { actionButton } from "../kit/action-button.ts";
import { element } from "../kit/element.ts";
import { section } from "../new-formula/sections.ts";

/** Weights that stand over the sheet's own, as where it runs no trigger; `again` reads the sheet once they are taken. */
export function typedSection({ sheet, typed }: SheetReview, again: () => void): HTMLElement {
  const list = element("div", {});
  const taking = actionButton({
    question: "take",
    label: "Take the typed weights",
    request: () => ({ sheet }),
    busy: () => "Taking the typed weights …",
    done: ({ taken, notes }) => {
      list.replaceChildren(
        ...notes.map(({ cells, text }) => element("p", { class: "note" }, `${cells.join(", ")}: ${plain(text)}`)),
      );
      // What was said of cells is read here; without it the sheet is read again at once.
      if (notes.length === 0) again();
      const many = taken.length === 1 ? "1 weight" : `${taken.length} weights`;
      return taken.length === 0 ? "No weight was taken." : `Took ${many}: the percentages follow.`;
    },
    silent: "Look at the sheet before you press it again.",
  });
  const where = typed.length === 1 ? `a weight was typed in ${typed[0]}` : `weights were typed in ${cellList(typed)}`;
  return section(
    "Typed weights",
    element("p", {}, `Over the sheet's own figures ${where}. Take them, and the percentages follow.`),
    ...taking.nodes,
    list,
  );
}

/** As many as a person reads. */
const MAX_SHOWN = 6;
const cellList = (cells: readonly string[]): string =>
  cells.length <= MAX_SHOWN
    ? cells.join(", ")
    : `${cells.slice(0, MAX_SHOWN).join(", ")} and ${cells.length - MAX_SHOWN} more cells`;

/** A note on a cell begins with the product's name. */
const plain = (text: string): string => {
  const says = text.replace(/^Gramwright /, "");
  return says.slice(0, 1).toUpperCase() + says.slice(1);
};
