import { isFault } from "../../shared/base/refusal.ts";
import type { ProductionOrder } from "../../shared/protocol/production.ts";
import type { FormulaSummary } from "../../shared/protocol/sheet-review.ts";
import { actionButton } from "../kit/action-button.ts";
import { element } from "../kit/element.ts";
import { type FieldFault, fieldFault } from "../kit/field-fault.ts";
import { type Form, forget, goTo, messageLine, newForm, newId, showFaults, textField } from "../kit/fields.ts";
import { readQuantity } from "../new-formula/quantity.ts";
import { section } from "../new-formula/sections.ts";
import { type Item, itemsOf } from "./items.ts";
import { type PastedText, pasteField, readPasted } from "./paste-orders.ts";

/** Orders of one day, of one customer or of the shop. */
type GroupTyped = { date: string; customer: string; readonly pieces: Map<string, string> };
/** What was typed; it outlives another look at the workbook. */
export type Typed = { readonly groups: GroupTyped[]; readonly pasted: PastedText };
export const nothingTyped = (): Typed => ({
  groups: [{ date: "", customer: "", pieces: new Map() }],
  pasted: { text: "" },
});

/** Pieces of each product for one day or several, and below them why others are not among them. */
export function orderForm(
  sheets: readonly FormulaSummary[],
  others: readonly string[],
  typed: Typed,
  built: (sheet: string, days: readonly string[]) => void,
): Node[] {
  let wanted = false;
  const items = itemsOf(sheets);
  const form = newForm();
  const part = (group: GroupTyped) => groupFields(form, items, typed, group, () => another.focus());
  const groups = element("div", {}, ...typed.groups.map(part));
  form.onChange(() => showFaults(form, readOrders(items, typed).faults, wanted));
  const another = element(
    "button",
    {
      type: "button",
      class: "quiet-button",
      click: () => {
        const date = dayAfter(typed.groups[typed.groups.length - 1]?.date ?? "");
        const group = { date, customer: "", pieces: new Map<string, string>() };
        typed.groups.push(group);
        const added = part(group);
        groups.append(added);
        form.changed();
        added.querySelector("input")?.focus();
      },
    },
    "Add another day or customer",
  );
  const act = actionButton({
    question: "day",
    label: "Build the production",
    request: () => {
      const { orders, days, faults } = readOrders(items, typed);
      const [first] = faults;
      wanted = first !== undefined;
      form.changed();
      if (first === undefined) return { day: days[0] ?? "", days, orders };
      goTo(form, first.at);
      return null;
    },
    busy: () => "Building the production …",
    done: ({ sheet, note }) => {
      built(sheet, readOrders(items, typed).days);
      return `Built “${sheet}”. Change orders there; mixes and weights follow.${note === undefined ? "" : ` ${note}`}`;
    },
    silent: "The sheet may still be on its way: look at the tabs under the grid before you ask again.",
  });
  const nodes = [
    section(
      "Orders",
      element("p", { class: "hint" }, "Pieces of each product. Leave blank what you are not making."),
      groups,
      another,
      pasteField(form, typed.pasted),
      ...others.map((says) => element("p", { class: "hint" }, says)),
      ...act.nodes,
    ),
  ];
  form.changed();
  return nodes;
}

/** The fields of one day and customer. */
function groupFields(
  form: Form,
  items: readonly Item[],
  typed: Typed,
  group: GroupTyped,
  afterRemoval: () => void,
): HTMLElement {
  const at = () => typed.groups.indexOf(group);
  const pieceFields = items.map(({ label }, place) =>
    textField(
      form,
      { at: () => `pieces/${at()}/${place}`, label: () => label, numeric: true, inline: true },
      {
        get: () => group.pieces.get(label) ?? "",
        set: (text) => {
          group.pieces.set(label, text);
        },
      },
    ),
  );
  const customer = textField(
    form,
    { at: () => `customer/${at()}`, label: () => "Customer", hint: "If blank, for the shop.", inline: true },
    {
      get: () => group.customer,
      set: (text) => {
        group.customer = text;
      },
    },
  );
  const remove = () => {
    typed.groups.splice(at(), 1);
    forget(form, fields);
    fields.remove();
    form.changed();
    afterRemoval();
  };
  const removal = element("button", { type: "button", class: "quiet-button", click: remove }, "Remove these orders");
  const fields = element(
    "div",
    { role: "group" },
    dateField(form, group, () => `date/${at()}`),
    customer,
    ...pieceFields,
    removal,
  );
  form.onChange(() => {
    fields.setAttribute("aria-label", `Orders ${at() + 1}`);
    removal.hidden = typed.groups.length === 1;
  });
  return fields;
}

function dateField(form: Form, group: GroupTyped, at: () => string): HTMLElement {
  const id = newId();
  const message = messageLine();
  const date = element("input", {
    id,
    type: "date",
    "aria-describedby": message.id,
    input: () => {
      group.date = date.value;
      form.changed();
    },
  });
  date.value = group.date;
  form.places.add({ at, control: date, message });
  return element("div", { class: "field inline" }, element("label", { class: "label", for: id }, "Day"), date, message);
}

const UNITS = { weight: "g", temperature: "C", length: "cm" } as const;
type Read = { readonly orders: ProductionOrder[]; readonly days: string[]; readonly faults: FieldFault[] };

function readOrders(items: readonly Item[], { groups, pasted }: Typed): Read {
  const faults: FieldFault[] = [];
  const orders = groups.flatMap(({ date, customer, pieces: typed }, at) => {
    const ordered = items.flatMap(({ sheet, size, label }, place): ProductionOrder[] => {
      const pieces = readQuantity(typed.get(label) ?? "", "count", UNITS);
      if (isFault(pieces)) faults.push(fieldFault(`pieces/${at}/${place}`, `The number of pieces ${pieces.says}.`));
      if (pieces === null || isFault(pieces)) return [];
      return [{ sheet, size, customer: customer.trim(), pieces, day: date }];
    });
    // A day without orders of its own takes the regular ones.
    if (date === "" && (ordered.length > 0 || groups.length === 1))
      faults.push(fieldFault(`date/${at}`, "Choose the day of these orders.", true));
    return ordered;
  });
  const days = [...new Set(groups.flatMap(({ date }) => (date === "" ? [] : [date])))].sort();
  const read = readPasted(pasted, items, days);
  faults.push(...read.faults.map((says) => fieldFault("pasted", says)));
  return { orders: [...orders, ...read.orders], days, faults };
}

function dayAfter(date: string): string {
  const time = Date.parse(`${date}T00:00:00Z`);
  return Number.isNaN(time) ? "" : new Date(time + 86_400_000).toISOString().slice(0, 10);
}
