// Formula sheets and the cards made from them, as tests read both.
import type { CardAsk } from "../../shared/protocol/card.ts";
import type { Options, SheetModel, Values } from "../../shared/sheet/model.ts";
import { asFormulaSheet, type FormulaSheet } from "../../src/planners/formula-sheet.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { buildSheet } from "../templates/sheet-support.ts";

export const partsOf = (model: SheetModel) => model.parts.filter((part) => part !== "cost" && part !== "label");

export async function formulaSheet(
  model: SheetModel,
  values: Values,
  options: Omit<Options, "parts"> = METRIC_UNITS,
  book?: WorkbookHost,
) {
  const built = await buildSheet(values, {
    model,
    options: { ...options, parts: partsOf(model) },
    ...(book ? { book } : {}),
  });
  const { book: open, sheet } = built;
  const range = open.usedRange(sheet);
  const read = asFormulaSheet(sheet, open.values(sheet, range), open.shownTexts(sheet, range));
  if (read === null) throw new Error("the formula sheet was not found again");
  return { ...built, read };
}

/** Builds a card by the bench's question; its cells by what stands in the second (or first) column of their row. */
export function card(book: WorkbookHost, ask: Partial<CardAsk>) {
  const { sheet } = book.answer({ ask: "card", ...ask }) as { sheet: string };
  const range = book.usedRange(sheet);
  const rows = () => book.values(sheet, range);
  const line = (name: string) => rows().find((row) => row[0] === name || row[1] === name);
  return {
    sheet,
    rows,
    figure: (name: string, column = 2) => line(name)?.[column],
    place: (name: string) => `C${rows().findIndex((row) => row[0] === name || row[1] === name) + 1}`,
    formulas: () =>
      book
        .formulas(sheet, range)
        .flat()
        .filter((one) => one !== undefined),
  };
}

export const column = (sheet: FormulaSheet, name: string) => sheet.rows.map(({ index }) => sheet.number(name, index));

/** The columns of what is weighed. */
export const STAGES = [["pre_scale", "final"], ["mix_scale"]];
