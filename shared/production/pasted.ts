// Orders out of a table that was copied elsewhere: a list with pieces, or a grid with days or customers across.
import { type Item, itemKey } from "./orders.ts";

export type PastedOrder = Item & {
  readonly customer: string;
  readonly day: string;
  readonly pieces: number;
  readonly note: string;
};
/** Rows that could not be read, in sentences with their place. */
export type Pasted = { readonly orders: readonly PastedOrder[]; readonly faults: readonly string[] };

const MAX_ROWS = 1000;
const HEADS = {
  product: /^(?:product|item|article|bread)s?$/i,
  size: /^sizes?$/i,
  customer: /^(?:customers?|clients?|for)$/i,
  pieces: /^(?:pieces|pcs|quantity|qty|count|number|orders?)$/i,
  day: /^(?:day|date)s?$/i,
  note: /^(?:notes?|remarks?|comments?)$/i,
} as const;
type Head = keyof typeof HEADS;

/** `days` are those that headings such as Fri or 2026-12-04 may name; what names none is a customer. */
export function pastedOrders(text: string, days: readonly string[]): Pasted {
  const rows = text
    .split(/\r?\n/)
    .map((line) => line.split(line.includes("\t") ? "\t" : ";").map((cell) => cell.replace(/\u00a0/g, " ").trim()))
    .filter((cells) => cells.some((cell) => cell !== ""));
  const [first, ...others] = rows;
  if (first === undefined) return { orders: [], faults: [] };
  const hasHeads = first.some(
    (cell) => HEADS.product.test(cell) || dayNamed(cell, days) !== null || HEADS.pieces.test(cell),
  );
  const heads = hasHeads ? first.map((cell, at) => headOf(cell, at, days)) : usualHeads(first);
  const orders: PastedOrder[] = [];
  const faults: string[] = [];
  (hasHeads ? others : rows).slice(0, MAX_ROWS).forEach((cells, at) => {
    const row = at + (hasHeads ? 2 : 1);
    const cellOf = (head: Head) => cells[heads.findIndex((one) => one.is === head)] ?? "";
    const product = cellOf("product");
    if (product === "" || /^total\b/i.test(product)) return;
    heads.forEach((head, column) => {
      const cell = cells[column] ?? "";
      if (!["pieces", "column"].includes(head.is) || cell === "") return;
      const pieces = piecesIn(cell);
      if (pieces === null) {
        faults.push(`Row ${row}, ${product}: “${cell}” is no number of pieces. Enter a whole number.`);
        return;
      }
      const day = head.day ?? dayNamed(cellOf("day"), days) ?? days[0] ?? "";
      orders.push({
        product,
        size: cellOf("size"),
        customer: head.customer ?? cellOf("customer"),
        day,
        pieces,
        note: cellOf("note"),
      });
    });
  });
  return { orders, faults };
}

type Column = { readonly is: Head | "column" | "nothing"; readonly day?: string; readonly customer?: string };

function headOf(cell: string, at: number, days: readonly string[]): Column {
  for (const head of Object.keys(HEADS) as Head[]) if (HEADS[head].test(cell)) return { is: head };
  if (at === 0) return { is: "product" };
  const day = dayNamed(cell, days);
  if (day !== null) return { is: "column", day };
  return cell === "" || /^total\b/i.test(cell) ? { is: "nothing" } : { is: "column", customer: cell };
}

/** Without headings: a product, perhaps a size and a customer, and its pieces last. */
function usualHeads(cells: readonly string[]): Column[] {
  const middle: readonly Head[] = ["size", "customer"];
  return cells.map((_, at): Column => {
    if (at === 0) return { is: "product" };
    return at === cells.length - 1 ? { is: "pieces" } : { is: middle[at - 1] ?? "customer" };
  });
}

/** The day that a heading names by its date or by the weekday. */
function dayNamed(cell: string, days: readonly string[]): string | null {
  const [, iso] = /^(\d{4}-\d\d-\d\d)$/.exec(cell) ?? [];
  if (iso !== undefined) return days.includes(iso) ? iso : null;
  const word = cell.toLowerCase().slice(0, 3);
  if (!/^(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*$/i.test(cell)) return null;
  return (
    days.find((day) => {
      const weekday = new Date(`${day}T00:00:00Z`).getUTCDay();
      return ["sun", "mon", "tue", "wed", "thu", "fri", "sat"][weekday] === word;
    }) ?? null
  );
}

function piecesIn(cell: string): number | null {
  const [, digits] = /^(\d{1,3}(?:[ ,.]\d{3})*|\d+)(?: ?(?:pieces|pcs|x))?$/i.exec(cell) ?? [];
  return digits === undefined ? null : Number(digits.replace(/[ ,.]/g, ""));
}

/** Orders whose product and size are known, under those names; and for the others what is near, by row of the orders. */
export function knownOrders<T extends Item>(
  orders: readonly T[],
  items: readonly Item[],
  near: (name: string) => readonly string[],
): { readonly orders: readonly T[]; readonly faults: readonly string[] } {
  const known: T[] = [];
  const faults = new Set<string>();
  for (const order of orders) {
    const sizes = items.filter((item) => itemKey({ ...item, size: "" }) === itemKey({ ...order, size: "" }));
    const item =
      sizes.find((one) => itemKey(one) === itemKey(order)) ??
      (order.size === "" && sizes.length === 1 ? sizes[0] : undefined);
    if (item !== undefined) known.push({ ...order, product: item.product, size: item.size });
    else if (sizes.length > 0)
      faults.add(
        `“${order.product}” has the sizes ${sizes.map(({ size }) => `“${size}”`).join(", ")}. Enter one of them.`,
      );
    else {
      const names = near(order.product).map((name) => `“${name}”`);
      const perhaps = names.length === 0 ? "" : ` Perhaps ${names.join(" or ")}?`;
      faults.add(`There is no formula sheet “${order.product}”.${perhaps}`);
    }
  }
  return { orders: known, faults: [...faults] };
}
