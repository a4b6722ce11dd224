// The orders of a new production as a grid: a row for each product and size, a column for each day or customer.
import { dayWords } from "../../../shared/production/clock.ts";
import { itemKey, type OrderLine, type RegularOrder } from "../../../shared/production/orders.ts";
import type { OrderColumn, ProductionShape } from "../../../templates/production/shape.ts";
import type { Overview, SizeRow } from "../overview.ts";
import { rowNote } from "./note.ts";
import type { AskedProduction } from "./production-ask.ts";

/** A product and size that may be ordered. */
export type Item = { readonly sheet: Overview; readonly product: string; readonly size: string; readonly row: SizeRow };

export function columnsOf({ days, isAcross }: AskedProduction, customers: readonly string[]): OrderColumn[] {
  if (!isAcross) return days.map((_, at) => ({ day: at + 1, customer: null }));
  return ["", ...customers].map((customer) => ({ day: 1, customer }));
}

type GridRow = {
  readonly item: Item;
  readonly customer: string;
  readonly typed: readonly (number | null)[];
  readonly note: string;
};

/** Letters of what is longest in these rows: columns are that wide. */
export function longestOf(grid: readonly GridRow[]): ProductionShape["longest"] {
  const most = (lettersOf: (row: GridRow) => string) => Math.max(0, ...grid.map((row) => lettersOf(row).length));
  return {
    product: most(({ item }) => item.product),
    size: most(({ item }) => item.size),
    customer: most(({ customer }) => customer),
    note: most(({ note }) => note),
  };
}

/** A row for each item, and for each customer who orders it. */
export function gridRows(
  items: readonly Item[],
  { days, isAcross }: AskedProduction,
  lines: readonly OrderLine[],
  regular: readonly RegularOrder[],
  columns: readonly OrderColumn[],
): GridRow[] {
  const piecesOf = (item: Item, customer: string, day: number | undefined): number | null => {
    const some = lines.filter(
      (line) =>
        itemKey(line) === itemKey(item) && line.day === day && line.customer === customer && line.pieces !== null,
    );
    return some.length === 0 ? null : some.reduce((sum, { pieces }) => sum + (pieces ?? 0), 0);
  };
  return items.flatMap((item): GridRow[] => {
    const customerLines = [...lines, ...regular]
      .filter((line) => itemKey(line) === itemKey(item))
      .map(({ customer }) => customer);
    const customers = isAcross ? [""] : ["", ...new Set(customerLines.filter((customer) => customer !== ""))];
    return customers.map((customer) => ({
      item,
      customer,
      typed: columns.map((column) => piecesOf(item, column.customer ?? customer, days[column.day - 1])),
      note: notesOf(
        lines.filter((line) => itemKey(line) === itemKey(item) && (isAcross || line.customer === customer)),
        { days: days.length, isAcross },
      ),
    }));
  });
}

/** Notes of one row's orders, with the day or the customer where the row has several. */
function notesOf(lines: readonly OrderLine[], { days, isAcross }: { days: number; isAcross: boolean }): string {
  const notes = new Map<string, string[]>();
  for (const { note = "", day, customer } of lines) {
    const whose = isAcross ? customer : days > 1 ? dayWords(day) : "";
    if (note !== "") notes.set(note, [...(notes.get(note) ?? []), ...(whose === "" ? [] : [whose])]);
  }
  return rowNote(notes);
}
