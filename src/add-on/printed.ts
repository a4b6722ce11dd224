// Keeps what an allergen table says now as what stands on its last print.
import { refuse } from "../../shared/base/refusal.ts";
import { isWaitingText } from "../../shared/protocol/waiting.ts";
import { PRINTED_NAME } from "../../shared/sheet/workbook-names.ts";
import { activeWorkbook } from "./workbook.ts";

const isUnread = (cell: unknown): boolean => isWaitingText(cell) || String(cell).startsWith("#");

/** `unknown` products show no allergens now: what stood on their last print stays known. */
export function markPrinted(): { readonly products: number; readonly changed: number; readonly unknown: number } {
  const range = activeWorkbook().getRangeByName(PRINTED_NAME);
  if (range === null) return refuse("There is no allergen table in this workbook yet. Build it first.");
  // The first and the last row only hold the table together.
  const [, ...below] = range
    .getSheet()
    .getRange(range.getRow(), 1, range.getNumRows(), range.getLastColumn())
    .getValues();
  const rows = below.slice(0, -1).map((row) => {
    const [now, printed] = row.slice(range.getColumn() - 1);
    const isProduct = row.slice(0, range.getColumn() - 1).some((cell) => cell !== "");
    return { product: String(row[0]), now, printed, isProduct };
  });
  if (rows.some(({ now }) => isUnread(now)))
    refuse("The allergen table is still calculating, or shows an error. Wait until it is whole, then try again.");
  // A call that has no answer yet is a blank in this column, as is a formula with an unknown ingredient.
  const isUnknown = ({ now, isProduct }: (typeof rows)[number]) => now === "" && isProduct;
  const texts = rows.map(({ printed }) => String(printed));
  // A product may stand in another row by now; in a table of an older version no text names its product.
  const lastOf = ({ product, printed }: (typeof rows)[number]) =>
    texts.some((text) => text.includes("\t")) ? (texts.find((text) => text.startsWith(`${product}\t`)) ?? "") : printed;
  const wanted = rows.map((row) => (isUnknown(row) ? lastOf(row) : row.now));
  const changed = rows.filter(({ printed }, at) => wanted[at] !== printed).length;
  if (changed > 0) range.offset(1, 1, rows.length, 1).setValues(wanted.map((text) => [text]));
  return { products: rows.filter(({ now }) => now !== "").length, changed, unknown: rows.filter(isUnknown).length };
}
