import { inUnit } from "../../shared/base/show.ts";
import type { FormulaSummary } from "../../shared/protocol/sheet-review.ts";
import { type Acting, actionButton } from "../kit/action-button.ts";
import { element } from "../kit/element.ts";
import { choiceField, type Form, goTo, newForm, radioField, showFaults } from "../kit/fields.ts";
import { type Panel, SHOWN_AGAIN } from "../kit/panel.ts";
import type { Units } from "../new-formula/quantity.ts";
import { section } from "../new-formula/sections.ts";
import { amountFields, type CardDraft, readCard } from "./amount.ts";

/** Makes a staff card from a formula sheet. */
export const handOut: Panel = {
  name: "Staff card",
  heading: "Staff card",
  open: () => {
    const body = element("div", {});
    let shownFor = "";
    const reading: Acting = actionButton(
      {
        question: "formulas",
        label: "Refresh",
        request: () => ({}),
        busy: () => "Reading the workbook …",
        done: ({ front, sheets }) => {
          // The same workbook as before: what was typed stays.
          const contents = JSON.stringify([front, sheets]);
          if (contents !== shownFor) body.replaceChildren(...(sheets.length === 0 ? [] : cardForm(sheets, front)));
          shownFor = contents;
          return sheets.length === 0
            ? "There is no formula sheet in this workbook yet. Build one under New formula, then refresh."
            : "";
        },
        silent: "Wait until the sheets are calculated, then refresh.",
      },
      "quiet-button",
    );
    void reading.run();
    return element("div", { [SHOWN_AGAIN]: () => void reading.run() }, ...reading.nodes, body);
  },
};

const NONE = "This sheet shows no dough yet: type on it how much to make, and the percentages.";

function cardForm(sheets: readonly FormulaSummary[], front: string): Node[] {
  const first = sheets.find(({ sheet }) => sheet === front) ?? sheets[0];
  const draft: CardDraft = { sheet: first?.sheet ?? "", kind: "values", by: "sheet", amount: "", ingredient: "" };
  let wanted = false;
  const chosen = () => sheets.find(({ sheet }) => sheet === draft.sheet);
  const units = (): Units => ({ weight: chosen()?.unit ?? "g", temperature: "C", length: "cm" });
  const form = newForm();
  const figures = element("p", { class: "figures" });
  form.onChange(() => {
    const { dough = null, mixes = null, pieces = null, unit = "g", fault = NONE } = chosen() ?? {};
    const figureTexts = [
      ...(dough === null ? [] : [["Dough", inUnit(dough, unit)]]),
      ...(mixes === null ? [] : [["Mixes", String(mixes)]]),
      ...(pieces === null || pieces === 0 ? [] : [["Pieces", String(pieces)]]),
    ];
    figures.replaceChildren(
      ...(figureTexts.length === 0
        ? [element("span", {}, fault)]
        : figureTexts.map(([label = "", value = ""]) => element("span", {}, `${label} `, element("b", {}, value)))),
    );
    showFaults(form, readCard(draft, chosen(), units()).faults, wanted);
  });
  const act = actionButton({
    question: "card",
    label: "Make the card",
    request: () => {
      const { ask, faults } = readCard(draft, chosen(), units());
      const [fault] = faults;
      wanted = fault !== undefined;
      form.changed();
      if (fault === undefined) return ask;
      goTo(form, fault.at);
      return null;
    },
    busy: () => `Making the card of “${chosen()?.title ?? ""}” …`,
    done: ({ sheet, note }) =>
      `Made “${sheet}”, a sheet of its own.${note === undefined ? "" : ` ${note}`} To print it: File, Print, A4 upright, fit to the page.`,
    silent: "The card may still be on its way: look at the tabs under the grid before you ask again.",
  });
  const nodes = [
    section("From", sheetChoice(sheets, form, draft), figures),
    section(
      "Kind of card",
      radioField(
        form,
        "What staff may change",
        [
          { value: "values", text: "nothing (fixed card)" },
          { value: "living", text: "the amount (recalculating card)" },
        ],
        {
          get: () => draft.kind,
          set: (value) => {
            draft.kind = value === "living" ? "living" : "values";
          },
        },
      ),
      element(
        "p",
        { class: "hint" },
        "A recalculating card has one cell to type in, and calculates without the add-on. Neither follows the formula sheet: hand out a new one when the formula changes.",
      ),
    ),
    section("Amount", ...amountFields(form, draft, chosen, units)),
    element("footer", {}, ...act.nodes),
  ];
  form.changed();
  return nodes;
}

function sheetChoice(sheets: readonly FormulaSummary[], form: Form, draft: CardDraft): HTMLElement {
  return choiceField(
    form,
    { at: () => "sheet", label: () => "Formula sheet" },
    sheets.map(({ sheet }) => ({ value: sheet, text: sheet })),
    {
      get: () => draft.sheet,
      set: (sheet) => {
        draft.sheet = sheet;
        draft.ingredient = "";
      },
    },
  );
}
