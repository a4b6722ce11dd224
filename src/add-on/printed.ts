// Keeps what an allergen table says now as what stands on its last print.
import { refuse } from "../../shared/base/refusal.ts";
import { PRINTED_NAME } from "../../shared/sheet/model.ts";
import { activeWorkbook } from "./active-workbook.ts";

const UNREAD = /^(?:#|Loading)/;

export function markPrinted(): { readonly products: number; readonly changed: number } {
  const range = activeWorkbook().getRangeByName(PRINTED_NAME);
  if (range === null) return refuse("There is no allergen table in this workbook yet. Build it first.");
  // The first and the last row only hold the table together.
  const rows = range.getValues().slice(1, -1);
  if (rows.some(([now]) => UNREAD.test(String(now))))
    refuse("The allergen table is still calculating, or shows an error. Wait until it is whole, then try again.");
  const changed = rows.filter(([now, printed]) => now !== printed).length;
  if (changed > 0) range.offset(1, 1, rows.length, 1).setValues(rows.map(([now]) => [now]));
  return { products: rows.filter(([now]) => now !== "").length, changed };
}
