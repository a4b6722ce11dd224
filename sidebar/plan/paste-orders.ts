// Orders pasted as a table: read at once, with what could not be read below it.
import { nearest } from "../../shared/base/words.ts";
import { knownOrders, pastedOrders } from "../../shared/production/pasted.ts";
import type { ProductionOrder } from "../../shared/protocol/production.ts";
import { element } from "../kit/element.ts";
import { type Form, messageLine, newId } from "../kit/fields.ts";
import type { Item } from "./items.ts";

export type PastedText = { text: string };

export function pasteField(form: Form, pasted: PastedText): HTMLElement {
  const [id, hint] = [newId(), newId()];
  const message = messageLine();
  const area = element("textarea", {
    id,
    rows: 4,
    spellcheck: "false",
    "aria-describedby": `${hint} ${message.id}`,
    input: () => {
      pasted.text = area.value;
      form.changed();
    },
    blur: () => form.changed(),
  });
  area.value = pasted.text;
  form.places.add({ at: () => "pasted", control: area as unknown as HTMLInputElement, message });
  return element(
    "details",
    {},
    element("summary", {}, "Paste orders from a table"),
    element("label", { class: "label", for: id }, "Copied cells"),
    area,
    element(
      "p",
      { class: "hint", id: hint },
      "Columns product, size, customer, pieces and note, or a grid with days or customers across. The days are those above.",
    ),
    message,
  );
}

export function readPasted(
  { text }: PastedText,
  items: readonly Item[],
  days: readonly string[],
): { readonly orders: ProductionOrder[]; readonly faults: readonly string[] } {
  if (text.trim() === "") return { orders: [], faults: [] };
  const orderLines = pastedOrders(text, days);
  const products = [...new Set(items.map(({ sheet }) => sheet))];
  const known = knownOrders(
    orderLines.orders,
    items.map(({ sheet, size }) => ({ product: sheet, size })),
    (name) => nearest(name, products),
  );
  return {
    orders: known.orders.map(({ product, size, customer, day, pieces, note }) => ({
      sheet: product,
      size,
      customer,
      day,
      pieces,
      note,
    })),
    faults: [...orderLines.faults, ...known.faults],
  };
}
