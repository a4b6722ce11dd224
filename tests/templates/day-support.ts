import { expect } from "vitest";
import type { SheetModel } from "../../shared/sheet/model.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { buildSheet } from "./sheet-support.ts";

type Order = { readonly sheet: string; readonly pieces: number; readonly day?: string };

/** Builds a day sheet as the bench does, and finds its cells by their headings. */
export function day(book: WorkbookHost, orders: readonly Order[]) {
  const { sheet } = book.answer({ ask: "day", day: "2026-01-31", orders }) as { sheet: string };
  /** What is for paper: below it the sheet works things out. */
  const grid = () => {
    const rows = book.values(sheet, book.usedRange(sheet));
    return rows.slice(
      0,
      rows.findIndex(([first]) => String(first).startsWith("Worked out")),
    );
  };
  const headAt = (head: string): { row: number; column: number } => {
    const rows = grid();
    const row = rows.findIndex((line) => line.includes(head));
    return { row, column: rows[row]?.indexOf(head) ?? -1 };
  };
  const below = (head: string, by: string, name: string) => {
    const [at, key] = [headAt(head), headAt(by)];
    const line = grid().find((cells, index) => index > at.row && cells[key.column] === name);
    return line?.[at.column];
  };
  const place = (head: string, by: string, name: string) => {
    const [at, key] = [headAt(head), headAt(by)];
    const row = grid().findIndex((cells, index) => index > at.row && cells[key.column] === name);
    return `${"ABCDEFGHIJKLM"[at.column]}${row + 1}`;
  };
  const need = (name: string) => below("Weight (g)", "To get", name);
  const all = () => {
    const { row, column } = headAt("To get");
    return grid()
      .slice(row + 1, row + 40)
      .reduce((sum, line) => sum + (typeof line[column + 1] === "number" ? (line[column + 1] as number) : 0), 0);
  };
  const beside = (words: string, right = 1) => {
    const line = grid().find((cells) => cells.includes(words));
    return line?.[line.indexOf(words) + right];
  };
  const shownBeside = (words: string, right = 1) => {
    const line = book.shownTexts(sheet, book.usedRange(sheet)).find((cells) => cells.includes(words));
    return line?.[line.indexOf(words) + right];
  };
  /** Types into the first row of orders that is still blank. */
  const order = (product: string, pieces: string, date = "") => {
    const { row, column } = headAt("Product ordered");
    const at = grid().findIndex((line, index) => index > row + 1 && line.slice(0, 3).every((cell) => cell === "")) + 1;
    expect(column).toBe(1);
    if (date !== "") book.type(sheet, `A${at}`, date);
    if (product !== "") book.type(sheet, `B${at}`, product);
    if (pieces !== "") book.type(sheet, `C${at}`, pieces);
    return { note: () => book.cell(sheet, `D${at}`).value, type: (text: string) => book.type(sheet, `C${at}`, text) };
  };
  const on = (date: string) => book.type(sheet, "B2", date);
  return { sheet, grid, below, place, need, all, beside, shownBeside, order, on };
}

export const close = (found: unknown, wanted: number) => {
  expect(found, String(found)).toBeTypeOf("number");
  expect(Math.abs((found as number) - wanted), `${found} against ${wanted}`).toBeLessThanOrEqual(
    1e-6 * Math.max(1, wanted),
  );
};
export const fill = async (book: WorkbookHost, name: string, more: object = {}) => {
  const model = TEMPLATES.find((one) => one.name === name) as SheetModel;
  const parts = model.parts.filter((part) => part !== "cost" && part !== "label");
  return buildSheet({ ...model.sample, ...more }, { model, book, options: { ...METRIC_UNITS, parts } });
};
