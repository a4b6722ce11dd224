// For how much a card is: as on its sheet, or pieces, mixes, dough, or what there is of one ingredient.

import { isFault } from "../../shared/base/refusal.ts";
import type { CardAsk } from "../../shared/protocol/card.ts";
import type { FormulaSummary } from "../../shared/protocol/sheet-review.ts";
import { element } from "../kit/element.ts";
import { type FieldFault, fieldFault } from "../kit/field-fault.ts";
import { choiceField, type Form, newId, textField } from "../kit/fields.ts";
import { type Quantity, readQuantity, type Units } from "../new-formula/quantity.ts";
import { unitSign } from "../new-formula/unit-change.ts";

export type CardDraft = { sheet: string; kind: CardAsk["kind"]; by: CardAsk["by"]; amount: string; ingredient: string };

const WAYS: readonly { readonly value: CardAsk["by"]; readonly text: string }[] = [
  { value: "sheet", text: "as on the formula sheet" },
  { value: "pieces", text: "pieces" },
  { value: "mixes", text: "mixes" },
  { value: "dough", text: "dough" },
  { value: "ingredient", text: "an ingredient that is short" },
];
const ASKED: Readonly<Record<Exclude<CardAsk["by"], "sheet">, { label: string; quantity: Quantity; missing: string }>> =
  {
    pieces: { label: "Pieces wanted", quantity: "count", missing: "Enter how many pieces you want." },
    mixes: { label: "Mixes wanted", quantity: "count", missing: "Enter how many mixes you want." },
    dough: { label: "Dough to make", quantity: "weight", missing: "Enter how much dough you want." },
    ingredient: { label: "Available", quantity: "weight", missing: "Enter how much of it there is." },
  };

export function amountFields(
  form: Form,
  draft: CardDraft,
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
  const field = () => (draft.by === "sheet" ? undefined : ASKED[draft.by]);
  const amount = textField(
    form,
    {
      at: () => "amount",
      label: () => field()?.label ?? "Amount",
      unit: () => {
        const quantity = field()?.quantity;
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

export function readCard(
  draft: CardDraft,
  sheet: FormulaSummary | undefined,
  units: Units,
): { ask: CardAsk; faults: FieldFault[] } {
  const ask: CardAsk = {
    sheet: draft.sheet,
    kind: draft.kind,
    by: draft.by,
    amount: null,
    ingredient: draft.ingredient,
  };
  if (draft.by === "sheet") return { ask, faults: [] };
  const { label, quantity, missing } = ASKED[draft.by];
  if (draft.by === "pieces" && sheet !== undefined && !((sheet.pieces ?? 0) > 0)) {
    const says =
      "This formula sheet does not say how many pieces it makes. Type pieces and their weight on it and refresh, or choose mixes or dough.";
    return { ask, faults: [fieldFault("by", says)] };
  }
  const amount = readQuantity(draft.amount, quantity, units);
  if (isFault(amount)) return { ask, faults: [fieldFault("amount", `${label} ${amount.says}.`)] };
  if (amount === null) return { ask, faults: [fieldFault("amount", missing, true)] };
  return { ask: { ...ask, amount }, faults: [] };
}
