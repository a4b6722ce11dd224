import type { FormulaSummary } from "../shared/bench.ts";
import type { CardAsk } from "../shared/card-data.ts";
import { isProblem } from "../shared/cell.ts";
import { type Acting, acting } from "./act.ts";
import { element } from "./element.ts";
import { choiceField, type Form, goTo, newId, radioField, showTroubles, textField } from "./form.ts";
import { inUnit } from "./make/figures.ts";
import { type Quantity, readQuantity, type Units } from "./make/quantity.ts";
import { section } from "./make/sections.ts";
import { type Trouble, trouble } from "./make/trouble.ts";
import { unitSign } from "./make/unit-change.ts";
import type { Panel } from "./panel.ts";

/** Makes a staff card from a formula sheet. */
export const handOut: Panel = {
  name: "Hand out",
  heading: "Hand out a staff card",
  open: () => {
    const body = element("div", {});
    const reading: Acting = acting(
      {
        question: "formulas",
        label: "Look again",
        asked: () => ({}),
        busy: () => "Reading the workbook …",
        done: ({ front, sheets }) => {
          body.replaceChildren(...(sheets.length === 0 ? [] : cardForm(sheets, front)));
          return sheets.length === 0
            ? "There is no formula sheet in this workbook yet. Build one under Make, then look again."
            : "";
        },
        silent: "Wait until the sheets are calculated, then look again.",
      },
      "quiet-button",
    );
    void reading.run();
    return element("div", {}, ...reading.nodes, body);
  },
};

type Draft = { sheet: string; kind: CardAsk["kind"]; by: CardAsk["by"]; amount: string; ingredient: string };

const WAYS: readonly { readonly value: CardAsk["by"]; readonly text: string }[] = [
  { value: "sheet", text: "as on the formula sheet" },
  { value: "pieces", text: "pieces" },
  { value: "mixes", text: "mixes" },
  { value: "dough", text: "dough" },
  { value: "ingredient", text: "an ingredient that is short" },
];
const ASKED: Readonly<Record<Exclude<CardAsk["by"], "sheet">, { label: string; quantity: Quantity; missing: string }>> =
  {
    pieces: { label: "Pieces wanted", quantity: "count", missing: "Write how many pieces you want." },
    mixes: { label: "Mixes wanted", quantity: "count", missing: "Write how many mixes you want." },
    dough: { label: "Dough wanted", quantity: "weight", missing: "Write how much dough you want." },
    ingredient: { label: "There is", quantity: "weight", missing: "Write how much of it there is." },
  };

function cardForm(sheets: readonly FormulaSummary[], front: string): Node[] {
  const first = sheets.find(({ sheet }) => sheet === front) ?? sheets[0];
  const draft: Draft = { sheet: first?.sheet ?? "", kind: "values", by: "sheet", amount: "", ingredient: "" };
  const updates: (() => void)[] = [];
  let wanted = false;
  const chosen = () => sheets.find(({ sheet }) => sheet === draft.sheet);
  const units = (): Units => ({ weight: chosen()?.unit ?? "g", temperature: "C", length: "cm" });
  const form: Form = {
    changed: () => {
      for (const update of updates) update();
    },
    onChange: (update) => updates.push(update),
    places: new Set(),
  };
  const figures = element("p", { class: "figures" });
  form.onChange(() => {
    const { dough = null, mixes = null, pieces = null, unit = "g" } = chosen() ?? {};
    const told = [
      ...(dough === null ? [] : [["Dough", inUnit(dough, unit)]]),
      ...(mixes === null ? [] : [["Mixes", String(mixes)]]),
      ...(pieces === null ? [] : [["Pieces", String(pieces)]]),
    ];
    figures.replaceChildren(
      ...(told.length === 0
        ? [element("span", {}, "This sheet shows no dough yet: it may still be calculating.")]
        : told.map(([label = "", value = ""]) => element("span", {}, `${label} `, element("b", {}, value)))),
    );
    showTroubles(form, read(draft, chosen(), units()).troubles, wanted);
  });
  const act = acting({
    question: "card",
    label: "Make the card",
    asked: () => {
      const { ask, troubles } = read(draft, chosen(), units());
      const [trouble] = troubles;
      wanted = trouble !== undefined;
      form.changed();
      if (trouble === undefined) return ask;
      goTo(form, trouble.at);
      return null;
    },
    busy: () => `Making the card of “${chosen()?.title ?? ""}” …`,
    done: ({ sheet }) => `Made “${sheet}”, a sheet of its own. To print it: File, Print, A4 upright, fit to the page.`,
    silent: "The card may still be on its way: look at the tabs under the grid before you ask again.",
  });
  const nodes = [
    section("From", sheetChoice(sheets, form, draft), figures),
    section(
      "Kind of card",
      radioField(
        form,
        "What may be changed on it",
        [
          { value: "values", text: "nothing: values only" },
          { value: "living", text: "the amount: a living card" },
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
        "A living card has one cell to type in, and reckons without the add-on. Neither follows the formula sheet: hand out a new one when the formula changes.",
      ),
    ),
    section("Amount", ...amountFields(form, draft, chosen, units)),
    element("footer", {}, ...act.nodes),
  ];
  form.changed();
  return nodes;
}

function sheetChoice(sheets: readonly FormulaSummary[], form: Form, draft: Draft): HTMLElement {
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

function amountFields(
  form: Form,
  draft: Draft,
  chosen: () => FormulaSummary | undefined,
  units: () => Units,
): HTMLElement[] {
  const way = choiceField(form, { at: () => "by", label: () => "Made for" }, WAYS, {
    get: () => draft.by,
    set: (by) => {
      draft.by = WAYS.find(({ value }) => value === by)?.value ?? "sheet";
      draft.amount = "";
    },
  });
  const id = newId();
  const select = element("select", {
    id,
    change: () => {
      draft.ingredient = select.value;
      form.changed();
    },
  });
  const which = element("div", { class: "field" }, element("label", { class: "label", for: id }, "Ingredient"), select);
  const asked = () => (draft.by === "sheet" ? undefined : ASKED[draft.by]);
  const amount = textField(
    form,
    {
      at: () => "amount",
      label: () => asked()?.label ?? "Amount",
      unit: () => {
        const quantity = asked()?.quantity;
        return quantity === undefined ? "" : unitSign(quantity, units());
      },
      numeric: true,
      inline: true,
    },
    {
      get: () => draft.amount,
      set: (text) => {
        draft.amount = text;
      },
    },
  );
  form.onChange(() => {
    const names = chosen()?.ingredients ?? [];
    if (draft.ingredient === "") draft.ingredient = names[0] ?? "";
    if ([...select.options].map(({ value }) => value).join("\n") !== names.join("\n")) {
      select.replaceChildren(...names.map((name) => element("option", { value: name }, name)));
    }
    select.value = draft.ingredient;
    which.hidden = draft.by !== "ingredient";
    amount.hidden = draft.by === "sheet";
  });
  return [way, which, amount];
}

function read(draft: Draft, sheet: FormulaSummary | undefined, units: Units): { ask: CardAsk; troubles: Trouble[] } {
  const ask: CardAsk = {
    sheet: draft.sheet,
    kind: draft.kind,
    by: draft.by,
    amount: null,
    ingredient: draft.ingredient,
  };
  if (draft.by === "sheet") return { ask, troubles: [] };
  const { label, quantity, missing } = ASKED[draft.by];
  if (draft.by === "pieces" && sheet !== undefined && sheet.pieces === null) {
    const says = "This formula sheet does not say how many pieces it makes; choose mixes or dough.";
    return { ask, troubles: [trouble("by", says)] };
  }
  const amount = readQuantity(draft.amount, quantity, units);
  if (isProblem(amount)) return { ask, troubles: [trouble("amount", `${label} ${amount.problem}.`)] };
  if (amount === null) return { ask, troubles: [trouble("amount", missing, true)] };
  return { ask: { ...ask, amount }, troubles: [] };
}
