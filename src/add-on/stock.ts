// Ingredients into free rows of the ingredient sheet, and never over anything that stands there.

import { refuse } from "../../shared/base/refusal.ts";
import { foldText } from "../../shared/base/words.ts";
import { nameKey } from "../../shared/larder/built-in-larder.ts";
import type { StockAnswer, StockAsk } from "../../shared/protocol/stock.ts";
import { LARDER_NAME, NO_LARDER_SHEET } from "../../shared/sheet/workbook-names.ts";
import { activeWorkbook } from "./workbook.ts";

export function stock({ ingredients, also = [] }: StockAsk): StockAnswer {
  const range = activeWorkbook().getRangeByName(LARDER_NAME);
  if (range === null) return refuse(NO_LARDER_SHEET);
  const sheet = range.getSheet();
  const cells = range.getValues();
  const heads = (cells[0] ?? []).map((cell) => foldText(String(cell)));
  const [names, kinds] = [heads.indexOf("ingredient"), heads.findIndex((head) => head === "type" || head === "kind")];
  if (names < 0) return refuse(`“${sheet.getName()}” has no column with the heading “Ingredient”.`);
  const known = new Set(cells.slice(1).map((row) => nameKey(String(row[names] ?? ""))));
  const wanted = ingredients.filter(({ name }) => {
    const isNew = !known.has(nameKey(name));
    known.add(nameKey(name));
    return isNew;
  });
  // The row right under the headings holds the formulas of the columns, the last one ends the table.
  const isComputed = (range.getFormulas()[1] ?? []).map((formula) => formula !== "");
  const free: number[] = [];
  for (let row = 2; row < cells.length - 1 && free.length < wanted.length; row++)
    if (cells[row]?.every((cell, column) => cell === "" || isComputed[column])) free.push(row);
  if (free.length < wanted.length)
    return refuse(
      `“${sheet.getName()}” has ${free.length} free rows, and ${wanted.length} are needed. Insert rows above its last one.`,
    );
  wanted.forEach(({ name, kind }, at) => {
    const row = range.getRow() + (free[at] ?? 0);
    const cell = sheet.getRange(row, range.getColumn() + names);
    // A name such as "=A1" stays text.
    cell.setNumberFormat("@");
    cell.setValue(name);
    if (kinds >= 0 && kind !== "") sheet.getRange(row, range.getColumn() + kinds).setValue(kind);
  });
  nameAlso(range, cells, also);
  return { sheet: sheet.getName(), added: wanted.map(({ name }) => name) };
}

/** Other names behind those that stand there already. */
function nameAlso(
  range: GoogleAppsScript.Spreadsheet.Range,
  cells: readonly (readonly unknown[])[],
  also: NonNullable<StockAsk["also"]>,
): void {
  const heads = (cells[0] ?? []).map((cell) => foldText(String(cell)));
  const [names, others] = [heads.indexOf("ingredient"), heads.indexOf("also called")];
  if (others < 0) return;
  const namesByRow = new Map<number, string[]>();
  for (const { name, of } of also) {
    const row = cells.findIndex((line, at) => at > 0 && String(line[names] ?? "").trim() === of.trim());
    if (row > 0) namesByRow.set(row, [...(namesByRow.get(row) ?? []), name]);
  }
  for (const [row, more] of namesByRow) {
    const before = String(cells[row]?.[others] ?? "").trim();
    const cell = range.getSheet().getRange(range.getRow() + row, range.getColumn() + others);
    cell.setNumberFormat("@");
    cell.setValue([...(before === "" ? [] : [before]), ...more].join("; "));
  }
}
