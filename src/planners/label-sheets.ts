// The two sheets about the labels of all products, and the file that a label printer reads: they go by the list of formulas.

import { refuse } from "../../shared/base/refusal.ts";
import { batchLetters } from "../../shared/production/batch-code.ts";
import type { CellValue, SeenList } from "../../shared/protocol/look.ts";
import type { Order } from "../../shared/protocol/order.ts";
import type { NewSheet } from "../../shared/protocol/plan-message.ts";
import { isWaitingText } from "../../shared/protocol/waiting.ts";
import type { SheetModel, Values } from "../../shared/sheet/model.ts";
import { plan } from "../../shared/sheet/plan.ts";
import { LABEL_TEXT_NAME, SETTINGS_NAME } from "../../shared/sheet/workbook-names.ts";
import { allergenTable } from "../../templates/allergen-table.ts";
import { LIST_ROWS } from "../../templates/formula-list.ts";
import { labelText } from "../../templates/label-text.ts";
import { PRICES, priceLists } from "../../templates/price-lists.ts";
import { ROWS_ABOVE } from "../../templates/product-rows.ts";
import { formulaSheetCount } from "./all-sheets.ts";
import { labelHeights } from "./label-heights.ts";
import { listAll } from "./list-all.ts";
import { isCurrent, textAt } from "./list-row.ts";
import { lawIn, moneyIn, settingIn } from "./settings.ts";
import { printedOf, RENEWED, typedBefore } from "./sheet-before.ts";
import { look, make, type Steps, withNotes } from "./steps.ts";

type Ordered = Order & { readonly model: SheetModel };

/** Price lists go by the list of formulas as the sheets of labels do. */
export const LABEL_SHEETS: readonly SheetModel[] = [allergenTable, labelText, priceLists];

/** For as many products more as a bakery adds before it builds the sheet again. */
const SPARE = 10;

export function* buildLabelSheet({ model, options, values }: Ordered, title: string): Steps<NewSheet> {
  const name = model.defines?.name ?? "";
  const own = [name, ...(model.alsoDefines ?? []).map((one) => one.name)];
  const question = model === labelText ? { names: own, cells: [SETTINGS_NAME] } : { cells: [SETTINGS_NAME, ...own] };
  const { seen: first, count } = yield* formulaSheetCount(question);
  const settings = first.names.find(({ name }) => name === SETTINGS_NAME)?.values ?? [];

  const { list, note } = count === 0 ? { list: undefined, note: undefined } : yield* currentList();
  const products = rowsOf(list);
  const column = (of: string) => products.map((row) => textAt(row, of));
  const known: Values = {
    shop: settingIn(settings, "Shop"),
    ...(model === labelText
      ? { address: settingIn(settings, "Business address"), letters: lettersOf(column("title")) }
      : {}),
    ...(model === allergenTable
      ? { law: lawOf(settings, column("law")), printed: printedOf(products, first.names) }
      : {}),
    ...(model === priceLists ? typedBefore(model, first.names) : {}),
  };
  const parts = products.length === 0 ? [] : ["listed"];
  const isRenewed = products.length > 0 && first.names.some((one) => one.name === name);
  const many = model === priceLists ? PRICES : Math.min(products.length + SPARE, LIST_ROWS);
  const places = Array.from({ length: many }, (_, at) => String(at + 1));
  const sheetPlan = plan(
    model,
    { ...options, ...moneyIn(settings), parts },
    { ...known, ...values },
    { place: places },
  );
  const heights =
    model === labelText ? [...sheetPlan.heights, ...labelHeights(sheetPlan, products)] : sheetPlan.heights;
  return withNotes(yield* make({ ...sheetPlan, heights }, title), note, isRenewed ? RENEWED[name] : undefined);
}

/** The list of formulas, built where there is none or an older one. */
function* currentList(): Steps<{ readonly list: SeenList | undefined; readonly note: string | undefined }> {
  const question = { words: [], unnamed: true, list: true };
  const { list } = yield* look(question);
  if (isCurrent(list)) return { list, note: undefined };
  const { note } = yield* listAll();
  return { list: (yield* look(question)).list, note };
}

/** The rows of products, in their order. */
function rowsOf(list: SeenList | undefined): readonly (readonly CellValue[])[] {
  const rows = (list?.values ?? []).slice(ROWS_ABOVE);
  while (rows.length > 0 && textAt(rows[rows.length - 1] ?? [], "title") === "") rows.pop();
  return rows;
}

/** Each title and the letters of its batch code, as delivery notes have them. */
function lettersOf(titles: readonly string[]): (string | null)[] {
  const letters = [...batchLetters(titles.filter((title) => title !== ""))];
  return titles.map((title) => (title === "" ? null : `${title}\t${letters.shift()}`));
}

/** Of the bakery's settings, or else of its first product that has one. */
const lawOf = (settings: readonly (readonly CellValue[])[], laws: readonly string[]): string =>
  lawIn(settings) || (laws.find((law) => law !== "") ?? "");

/** Columns of the file: as on the sheet, with the day as a label printer reads it and without remarks. */
const FILE_COLUMNS = [
  "product",
  "label_name",
  "label_list",
  "label_allergens",
  "net_weight",
  "date_words",
  "day_text",
  "batch_code",
  "storage_words",
  "address_words",
] as const;
const HEADS = [
  "Product",
  "Name",
  "Ingredients",
  "Allergens",
  "Net weight",
  "Date",
  "Day",
  "Batch code",
  "Storage",
  "Business address",
];

/** The rows of the sheet of label texts that have a list, with their headings. */
export function* readLabels(): Steps<{ readonly rows: readonly (readonly string[])[]; readonly without: number }> {
  const [sheet] = (yield* look({ cells: [LABEL_TEXT_NAME] })).names;
  if (sheet === undefined) return refuse("There is no sheet of label texts yet. Build it first.");
  const table = labelText.bands.flat().find((item) => "table" in item);
  const columns = table !== undefined && "table" in table ? table.columns : [];
  const places = FILE_COLUMNS.map((name) => columns.findIndex((one) => one.name === name));
  if (columns.some(({ head }, at) => String(sheet.values[0]?.[at] ?? "") !== head))
    return refuse("The headings of the sheet of label texts were changed. Build it again.");
  const rows = sheet.values
    .slice(1)
    .map((row) => places.map((at) => String(row[at] ?? "").trim()))
    .filter(([product = ""]) => product !== "");
  // A label printer would print it.
  if (rows.flat().some(isWaitingText))
    return refuse("The label texts are still calculating. Wait until they are there, then save them again.");
  const ready = rows.filter(([, , list = ""]) => list !== "");
  return { rows: [HEADS, ...ready], without: rows.length - ready.length };
}
