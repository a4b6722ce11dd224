// Prices of a price list into the ingredient sheet: what each was before stands beside it afterwards.
import { refuse } from "../../shared/base/refusal.ts";
import { quote } from "../../shared/base/show.ts";
import type { PriceListAnswer, PriceListAsk } from "../../shared/protocol/price-list.ts";
import { LARDER_NAME, NO_LARDER_SHEET } from "../../shared/sheet/workbook-names.ts";
import { comparePrices } from "./prices.ts";
import { activeWorkbook } from "./workbook.ts";

const HEADS = { ingredient: "Ingredient", price: "Price", pack: "Pack", supplier: "Supplier" } as const;

export function writePriceList({ day, rows }: PriceListAsk): PriceListAnswer {
  const range = activeWorkbook().getRangeByName(LARDER_NAME);
  if (range === null) return refuse(NO_LARDER_SHEET);
  const sheet = range.getSheet();
  const cells = range.getValues();
  const column = (head: string) => (cells[0] ?? []).findIndex((cell) => String(cell).trim() === head);
  const at = Object.fromEntries(Object.entries(HEADS).map(([name, head]) => [name, column(head)])) as Record<
    keyof typeof HEADS,
    number
  >;
  if (at.ingredient < 0 || at.price < 0 || at.pack < 0)
    return refuse(
      `“${sheet.getName()}” has no columns “Ingredient”, “Price” and “Pack”: an earlier Gramwright built it.`,
    );
  const places = rows.map((row) => ({ ...row, place: rowOf(cells, at.ingredient, row.name) }));
  const gone = places.find(({ place }) => place < 0);
  if (gone !== undefined)
    return refuse(
      `${quote(gone.name)} is no longer on “${sheet.getName()}”, and nothing was written. Read the list again.`,
    );
  const formulas = range.getFormulas();
  const isFormula = (place: number) => (formulas[place]?.[at.price] ?? "") !== "";
  const wanted = places.filter(({ place }) => !isFormula(place));
  // What stands there is kept as seen before anything is written over it.
  comparePrices({ day });
  for (const { place, price, pack, supplier } of wanted) {
    const cell = (name: keyof typeof HEADS) => sheet.getRange(range.getRow() + place, range.getColumn() + at[name]);
    cell("price").setValue(price);
    // A pack such as "1/2" stays the text it is.
    if (pack !== "") cell("pack").setNumberFormat("@").setValue(pack);
    if (supplier !== "" && at.supplier >= 0) cell("supplier").setNumberFormat("@").setValue(supplier);
  }
  SpreadsheetApp.flush();
  return {
    sheet: sheet.getName(),
    written: wanted.length,
    formulas: places.flatMap(({ place, name }) => (isFormula(place) ? [name] : [])),
    changes: comparePrices({ day }).changes,
  };
}

/** The row of an ingredient in the range; -1 where it is not there any more, or stands there twice. */
function rowOf(cells: readonly (readonly unknown[])[], column: number, name: string): number {
  const rows = cells.flatMap((row, at) => (at > 0 && String(row[column] ?? "").trim() === name ? [at] : []));
  return rows.length === 1 ? (rows[0] ?? -1) : -1;
}
