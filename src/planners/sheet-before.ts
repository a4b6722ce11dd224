// Sheets that are built anew: what comes along from the one before, and what is said of it.
import type { CellValue, SeenName } from "../../shared/protocol/look.ts";
import type { SheetModel, Value, Values } from "../../shared/sheet/model.ts";
import { LABEL_TEXT_NAME, PRICE_LISTS_NAME, PRINTED_NAME } from "../../shared/sheet/workbook-names.ts";
import { textAt } from "./list-row.ts";

/**
 * What hangs on the wall: what the table before this one says was printed, or else what this one says, which is printed as it
 * is built. It stands with the product's name in front, because products change their rows.
 */
export function printedOf(products: readonly (readonly CellValue[])[], names: readonly SeenName[]): readonly string[] {
  const before = names.find(({ name }) => name === PRINTED_NAME)?.values;
  const known = new Map(
    (before ?? []).map(([, text]) => [String(text ?? "").split("\t")[0] ?? "", String(text ?? "")] as const),
  );
  return products.map((row) => {
    const [title, allergens] = [textAt(row, "title"), textAt(row, "allergens")];
    if (before !== undefined) return title === "" ? "" : (known.get(title) ?? "");
    return allergens === "" ? "" : `${title}\t${allergens}`;
  });
}

/** What was typed on the sheet before this one comes along, column by column. */
export function typedBefore({ defines, alsoDefines = [], bands }: SheetModel, names: readonly SeenName[]): Values {
  const columns = bands.flat().flatMap((item) => ("table" in item ? item.columns.map((one) => one.name) : []));
  const parts = [...(defines === undefined ? [] : [defines]), ...alsoDefines].map(({ name, from, to }) => {
    const rows = (names.find((one) => one.name === name)?.values ?? []).slice(1, -1);
    const filled = rows.filter((row) => row.some((cell) => String(cell ?? "").trim() !== ""));
    const own = columns.slice(columns.indexOf(from), columns.indexOf([to].flat().pop() ?? from) + 1);
    return own.map((column, at) => [column, filled.map((row) => typedValue(row[at]))] as const);
  });
  return Object.fromEntries(parts.flat());
}

const typedValue = (cell: CellValue | undefined): Value =>
  typeof cell === "number" || (typeof cell === "string" && cell !== "") ? cell : null;

/** Of these the workbook reads the one that was built last. */
export const RENEWED: Readonly<Record<string, string>> = {
  [LABEL_TEXT_NAME]:
    "The .csv comes from this sheet from now on. Enter its mark before batch codes again if you changed it, and delete the sheet before it.",
  [PRINTED_NAME]: "“Mark as printed” marks this table from now on. Delete the table before it.",
  [PRICE_LISTS_NAME]:
    "Customers and prices came along from the sheet before it, which nothing reads any more. Delete it.",
};
