// A larder, formula sheets with cost and label over it, and the price sheet over those.
import type { Options, SheetModel, Values } from "../../shared/sheet/model.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { SHEETS } from "../../templates/index.ts";
import { METRIC } from "../functions/support.ts";
import { type Built, buildSheet } from "../templates/sheet-support.ts";

export const SLOW = 120_000;

export const modelNamed = (name: string): SheetModel => {
  const found = SHEETS.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no template ${name}`);
  return found;
};
export const larderSheet = modelNamed("larder");
export const panLoaf = modelNamed("pan-loaf");
export const priceSheet = modelNamed("prices");

/** A sheet with all that a larder makes possible. */
export const costed = (book: WorkbookHost, values: Values, model = panLoaf, units: Partial<Options> = {}) =>
  buildSheet(values, {
    book,
    model,
    options: { ...METRIC, ...units, parts: ["cost", "label", ...(model === panLoaf ? ["tin", "water"] : model.parts)] },
  });
export const larderOf = (book: WorkbookHost, values: Values = larderSheet.sample) =>
  buildSheet(values, { book, model: larderSheet, options: METRIC });
export const pricesOf = (book: WorkbookHost) =>
  buildSheet({ title: "Costs and prices" }, { book, model: priceSheet, options: { ...METRIC, parts: ["products"] } });

export function callsOn({ book, sheet }: Pick<Built, "book" | "sheet">): number {
  const formulas = book.formulas(sheet, book.usedRange(sheet)).flat();
  return formulas.reduce((sum, formula) => sum + (formula?.match(/BAKE_[A-Z]+\(/g)?.length ?? 0), 0);
}
