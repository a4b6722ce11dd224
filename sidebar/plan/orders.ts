import { isFault } from "../../shared/base/refusal.ts";
import type { ProductionOrder } from "../../shared/protocol/production.ts";
import type { FormulaSummary } from "../../shared/protocol/sheet-review.ts";
import { actionButton } from "../kit/action-button.ts";
import { element } from "../kit/element.ts";
import { type FieldFault, fieldFault } from "../kit/field-fault.ts";
import {
  choiceField,
  type Form,
  forget,
  goTo,
  messageLine,
  newForm,
  newId,
  showFaults,
  textField,
} from "../kit/fields.ts";
import { readQuantity } from "../new-formula/quantity.ts";
import { section } from "../new-formula/sections.ts";
import { type Item, itemsOf } from "./items.ts";
import { type PastedText, pasteField, readPasted } from "./paste-orders.ts";

/** Orders of one day, of one customer or of the shop. */
type GroupTyped = { date: string; customer: string; note: string; readonly pieces: Map<string, string> };
/** What was typed; it outlives another look at the workbook. */
export type Typed = { readonly groups: GroupTyped[]; readonly pasted: PastedText; across: "days" | "customers" };
export const nothingTyped = (): Typed => ({
  groups: [{ date: "", customer: "", note: "", pieces: new Map() }],
  pasted: { text: "" },
  across: "days",
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
        const group = { date, customer: "", note: "", pieces: new Map<string, string>() };
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
      if (first === undefined) return { day: days[0] ?? "", days, orders, across: typed.across };
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
      acrossField(form, typed),
      ...others.map((says) => element("p", { class: "hint" }, says)),
      ...act.nodes,
    ),
  ];
  form.changed();
  return nodes;
}

/** What stands over the columns of the sheet. */
const acrossField = (form: Form, typed: Typed): HTMLElement =>
  choiceField(
    form,
    { at: () => "across", label: () => "Columns of the sheet", inline: true },
    [
      { value: "days", text: "days" },
      { value: "customers", text: "customers" },
    ],
    {
      get: () => typed.across,
      set: (across) => {
        typed.across = across === "customers" ? "customers" : "days";
      },
    },
  );

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
  const note = textField(
    form,
    {
      at: () => `note/${at()}`,
      label: () => "Note",
      hint: "It stands on the card and on the delivery note.",
      inline: true,
    },
    {
      get: () => group.note,
      set: (text) => {
        group.note = text;
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
    note,
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

function readOrders(items: readonly Item[], { groups, pasted, across }: Typed): Read {
  const faults: FieldFault[] = [];
  const orders = groups.flatMap(({ date, customer, note, pieces: typed }, at) => {
    const ordered = items.flatMap(({ sheet, size, label }, place): ProductionOrder[] => {
      const pieces = readQuantity(typed.get(label) ?? "", "count", UNITS);
      if (isFault(pieces)) faults.push(fieldFault(`pieces/${at}/${place}`, `The number of pieces ${pieces.says}.`));
      if (pieces === null || isFault(pieces)) return [];
      return [{ sheet, size, customer: customer.trim(), pieces, day: date, note: note.trim() }];
    });
    // A day without orders of its own takes the regular ones.
    if (date === "" && (ordered.length > 0 || groups.length === 1))
      faults.push(fieldFault(`date/${at}`, "Choose the day of these orders.", true));
    return ordered;
  });
  const days = [...new Set(groups.flatMap(({ date }) => (date === "" ? [] : [date])))].sort();
  if (across === "customers" && days.length > 1)
    faults.push(fieldFault("across", "Customers stand across for one day. Choose days, or remove the other days."));
  const pastedOrders = readPasted(pasted, items, days);
  faults.push(...pastedOrders.faults.map((says) => fieldFault("pasted", says)));
  return { orders: [...orders, ...pastedOrders.orders], days, faults };
}

function dayAfter(date: string): string {
  const time = Date.parse(`${date}T00:00:00Z`);
  return Number.isNaN(time) ? "" : new Date(time + 86_400_000).toISOString().slice(0, 10);
}
