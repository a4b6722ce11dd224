// The orders of a production sheet as it stands, and the columns that count them.
import type { CellValue } from "../../../shared/protocol/look.ts";
import { absolute, zoneA1 } from "../../../shared/sheet/a1.ts";
import { quotedTab } from "../../../shared/sheet/tab.ts";
import { NOTE_HEAD } from "../../../templates/production/orders.ts";
import type { OrderNow } from "./production-now.ts";

/** What counts of the orders, with the customer that the row or the column says. */
export function ordersNow(
  values: readonly (readonly CellValue[])[],
  dayNumbers: readonly number[],
  reference: (row: number, column: number) => string,
): OrderNow[] {
  const head = values.findIndex((row) => row.includes("Product and size ordered"));
  const ready = values.findIndex(([first]) => first === "Ready on");
  const heads = values[head] ?? [];
  const columns = heads.flatMap((text, at) => (/^Counts \d+$/.test(String(text)) ? [at] : []));
  const text = (row: number, column: number) => (column < 0 ? "" : String(values[row]?.[column] ?? "").trim());
  const [customer, note] = [heads.indexOf("Customer"), heads.indexOf(NOTE_HEAD)];
  const pieces = heads.indexOf("Pieces");
  const regular = heads.indexOf("Regular 1");
  const isAcross = dayNumbers.length === 1 && columns.length > 1;
  const orders: OrderNow[] = [];
  const key = heads.indexOf("Product and size ordered");
  for (let row = head + 1; String(values[row]?.[key] ?? "").includes("|"); row++)
    columns.forEach((column, at) => {
      const amount = values[row]?.[column];
      if (typeof amount !== "number" || amount <= 0) return;
      orders.push({
        product: text(row, 0),
        size: text(row, 1),
        customer: isAcross ? text(ready - 1, pieces + at) : text(row, customer),
        day: dayNumbers[isAcross ? 0 : at] ?? 0,
        pieces: amount,
        isRegular: typeof values[row]?.[pieces + at] !== "number" && (values[row]?.[regular + at] ?? 0) !== 0,
        note: text(row, note),
        at: reference(row, column),
      });
    });
  return orders;
}

/** From their headings to the row above what is made. */
export function countedColumns(values: readonly (readonly CellValue[])[], name: string): string[] {
  const row = values.findIndex((line) => line.includes("Product and size ordered"));
  const end = values.findIndex(([first]) => first === "To make (pieces)");
  return (values[row] ?? []).flatMap((text, column) =>
    /^Counts \d+$/.test(String(text))
      ? [
          `${quotedTab(name)}${absolute(zoneA1({ row: row + 1, column, rows: Math.max(1, end - row - 1), columns: 1 }))}`,
        ]
      : [],
  );
}
