// What is kept of a workbook is what stands in it, though only the sheets that changed are written anew.
import { describe, expect, test } from "vitest";
import type { FormulaCell } from "../../src/workbook/engine/engine.ts";
import { openWorkbook, type WorkbookHost } from "../../src/workbook/host.ts";

type Cell = FormulaCell & { readonly id: string; readonly content?: string; readonly style?: { bold?: boolean } };
type SheetData = { id: string; name: string; cells: object; styles: Record<string, number>; formats: object };
type Kept = { sheets: SheetData[]; styles: Record<string, { bold?: boolean }>; formats: Record<string, string> };

/** Cells as the engine has them: texts, which of them are bold, and number formats, by address. */
function standing(book: WorkbookHost) {
  const { engine } = book;
  return book.sheetNames().map((name) => {
    const cells = Object.values(engine.get<Record<string, Cell>>("getCells", book.sheetId(name)));
    const by = (of: (cell: Cell) => unknown) =>
      Object.fromEntries(
        cells.flatMap((cell) => {
          const { col, row } = engine.get<{ col: number; row: number }>("getCellPosition", cell.id);
          const value = of(cell);
          return value ? [[engine.library.helpers.toXC(col, row), value]] : [];
        }),
      );
    const text = (cell: Cell) =>
      cell.isFormula ? cell.compiledFormula.toFormulaString(engine.model.getters) : cell.content;
    return { name, texts: by(text), bold: by(({ style }) => style?.bold), formats: by(({ format }) => format) };
  });
}

/** The same from what is kept. */
function kept(book: WorkbookHost) {
  const { sheets, styles, formats } = JSON.parse(book.engine.text()) as Kept;
  expect(book.engine.data()).toEqual(JSON.parse(book.engine.text()));
  const { toZone, toXC } = book.engine.library.helpers;
  const by = (zones: object, of: (id: number) => unknown) =>
    Object.fromEntries(
      Object.entries(zones).flatMap(([a1, id]) => {
        const { left, right, top, bottom } = toZone(a1);
        const value = of(id);
        const cells: [string, unknown][] = [];
        for (let col = left; col <= right; col++)
          for (let row = top; row <= bottom; row++) if (value) cells.push([toXC(col, row), value]);
        return cells;
      }),
    );
  return sheets.map(({ name, cells, styles: ofStyle, formats: ofFormat }) => ({
    name,
    texts: cells,
    bold: by(ofStyle, (id) => styles[id]?.bold),
    formats: by(ofFormat, (id) => formats[id]),
  }));
}

const SCRIPT = `function go() {
  var book = SpreadsheetApp.getActive();
  ["One", "Two", "Three"].forEach(function (name, at) {
    var sheet = book.insertSheet(name);
    sheet.getRange("A1:B3").setValues([["name", "amount"], ["flour", 100 + at], ["water", 65]]);
    sheet.getRange("A1:B1").setFontWeight("bold");
    sheet.getRange("B2:B3").setNumberFormat(at === 1 ? "0.00" : "0.0%");
  });
}
function heavy() { SpreadsheetApp.getActive().getSheetByName("Two").getRange("A3:B3").setFontWeight("bold"); }`;

describe("after each change in turn", () => {
  const book = openWorkbook({ codeJs: SCRIPT });
  book.script.run("FULL", "go");
  for (const name of ["One", "Two", "Three"]) book.type(name, "C2", "=B2*2");
  book.type("Three", "C3", "=SUM(One!B2:B3)+Two!B2");
  test.each<[string, () => void]>([
    ["built", () => {}],
    ["nothing", () => {}],
    ["a number is typed", () => book.type("Two", "B2", "7")],
    ["a formula is typed", () => book.type("Two", "C3", "=One!B3*2")],
    ["a cell is emptied", () => book.clear("One", "A3")],
    ["cells get another look", () => void book.script.run("FULL", "heavy")],
    ["a tab that other sheets read gets another name", () => book.renameSheet("One", "First one")],
    ["rows are put into it", () => book.insertRows("First one", 2, 2)],
    ["rows are taken out of it", () => book.deleteRows("First one", 1, 1)],
    ["that is undone", () => book.undo()],
    ["and the rows before", () => book.undo()],
    ["a tab is copied", () => void book.duplicateSheet("Three")],
    ["a tab that others read is deleted", () => book.deleteSheet("Two")],
    ["that is undone, too", () => book.undo()],
  ])("%s", (_says, act) => {
    act();
    expect(kept(book)).toEqual(standing(book));
    const again = openWorkbook({ codeJs: SCRIPT, data: JSON.parse(book.engine.text()) });
    expect(standing(again)).toEqual(standing(book));
  });
});
