// Compares the prices of the ingredient sheet with those last seen, and keeps what it saw beside them.

import { refuse } from "../../shared/base/refusal.ts";
import { PRICE_KEPT, type PriceChange, priceChanges } from "../../shared/money/price-changes.ts";
import { LARDER_NAME, NO_LARDER_SHEET } from "../../shared/sheet/workbook-names.ts";
import { activeWorkbook } from "./workbook.ts";

type PriceDay = { readonly day: string; readonly unasked?: boolean | undefined };

/** `unasked` by a person, it says nothing of what is missing. */
export function comparePrices({ day, unasked }: PriceDay): { changes: readonly PriceChange[] } {
  const range = activeWorkbook().getRangeByName(LARDER_NAME);
  if (range === null && unasked) return { changes: [] };
  if (range === null) return refuse(NO_LARDER_SHEET);
  const sheet = range.getSheet();
  const all = sheet.getRange(range.getRow(), 1, range.getNumRows(), sheet.getMaxColumns());
  const values = all.getValues();
  const at = (head: string) => (values[0] ?? []).findIndex((cell) => String(cell).trim() === head);
  const [name, price, seen] = [at("Ingredient"), at("Price"), at(PRICE_KEPT)];
  const isThere = name >= 0 && price >= 0 && seen >= 0;
  if (!isThere && unasked) return { changes: [] };
  if (!isThere)
    return refuse(`“${sheet.getName()}” has no columns “Price” and “${PRICE_KEPT}”: an earlier Gramwright built it.`);
  // Under the headings stands the row of the columns' formulas, and the last row ends the table.
  const rows = values.slice(2, -1);
  const read = priceChanges(
    rows.map((row) => ({ name: row[name], price: row[price], kept: row.slice(seen, seen + 3) })),
    day,
  );
  if (read.isNew)
    sheet.getRange(range.getRow() + 2, seen + 1, rows.length, 3).setValues(read.kept.map((row) => [...row]));
  return { changes: read.changes };
}
