// What the local workbook does when one sheet of many changes: nothing with the others, and all the same with what reaches into it.
import { expect, test, vi } from "vitest";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { withScript } from "./support.ts";

const idOf = (book: WorkbookHost, name: string) => book.engine.get<string>("getSheetIdByName", name);

/** The sheets that the engine asks a getter about while work is done. */
function askedAbout(book: WorkbookHost, getter: string, work: () => void): Set<unknown> {
  const { getters } = book.engine.model;
  const ask = getters[getter];
  if (ask === undefined) throw new Error(`no ${getter}`);
  const sheets = new Set<unknown>();
  getters[getter] = (...args: unknown[]) => {
    sheets.add(args[0]);
    return ask(...args);
  };
  work();
  getters[getter] = ask;
  return sheets;
}

const PAINTED =
  'var made = book.insertSheet("Rye"); made.deleteRows(101, 900); made.deleteColumns(11, 16); made.getRange("A1:A3").setBackgrounds([["#123456"], ["#654321"], ["#123456"]]).setValues([[1], [2], [3]]);';

test.each([
  ["the cells", "getCells"],
  ["the borders", "getBordersColors"],
  ["the rows and columns", "isHeaderHidden"],
])("a new sheet, cut, painted and filled, asks for %s of no other sheet", (_, getter) => {
  const book = withScript(
    `sheet; if (book.getSheetByName("Oats") === null) { book.insertSheet("Oats"); return; } ${PAINTED}`,
  );
  book.type("Sheet1", "A1", "7");
  // Oats is looked at from now on.
  book.go();
  const other = idOf(book, "Sheet1");
  expect(askedAbout(book, getter, () => book.go())).not.toContain(other);
  expect(book.values("Rye", "A1:A3")).toEqual([[1], [2], [3]]);
});

test("the palette has the colours of all sheets when it is opened", () => {
  const book = withScript(`sheet.getRange("B2").setBackground("#abcdef"); ${PAINTED}`);
  book.go();
  const colours = book.engine.get<readonly string[]>("getCustomColors").map((one) => one.toLowerCase());
  expect(colours).toEqual(expect.arrayContaining(["#abcdef", "#123456", "#654321"]));
});

test("cutting a new sheet to size goes over no formula, cutting it once it is named does", () => {
  const book = withScript(
    'var made = book.insertSheet("Rye"); made.deleteRows(101, 900); sheet.getRange("A1").setFormula("=Rye!B90"); book.setNamedRange("spot", made.getRange("B80")); made.getRange("C1").setFormula("=B70"); made.deleteRows(11, 20); made.insertRowsAfter(2, 5);',
  );
  const { range } = book.engine.model as unknown as { range: { executeOnAllRanges(how: object): void } };
  const walk = vi.spyOn(range, "executeOnAllRanges");
  book.go();
  expect(walk).toHaveBeenCalledTimes(2);
  expect(book.cell("Sheet1", "A1").formula).toBe("=Rye!B75");
  expect(book.cell("Rye", "C1").formula).toBe("=B55");
  book.type("Rye", "B65", "8");
  book.type("Sheet1", "A2", "=spot");
  expect(book.cell("Sheet1", "A2").value).toBe(8);
});

test("a formula that names a sheet before there is one keeps what it says when that sheet comes and is cut", () => {
  const book = withScript('sheet; var made = book.insertSheet("Oats"); made.deleteRows(2, 3);');
  book.type("Sheet1", "A1", "=Oats!A9");
  book.go();
  expect(book.cell("Sheet1", "A1").formula).toBe("=Oats!A9");
});

test("where rows lie and which are seen is right on a sheet that was changed while another was looked at", () => {
  const book = withScript('var made = book.insertSheet("Rye"); sheet.setRowHeights(1, 3, 100); made.activate();');
  book.go();
  const { run, get } = book.engine;
  const [other, rye] = [idOf(book, "Sheet1"), idOf(book, "Rye")];
  const hide = (row: number) => run("HIDE_COLUMNS_ROWS", { sheetId: other, dimension: "ROW", elements: [row] });
  const firstSeen = () => get<readonly number[]>("getSheetViewVisibleRows").slice(0, 3);
  const fourth = () => get<{ start: number }>("getRowDimensions", other, 3).start;
  run("RESIZE_SHEETVIEW", { width: 500, height: 250, gridOffsetX: 0, gridOffsetY: 0 });
  expect(fourth()).toBe(300);
  hide(1);
  expect(fourth()).toBe(200);
  run("ACTIVATE_SHEET", { sheetIdFrom: rye, sheetIdTo: other });
  expect(firstSeen()).toEqual([0, 2, 3]);
  run("ACTIVATE_SHEET", { sheetIdFrom: other, sheetIdTo: rye });
  hide(2);
  // The sheet that is left is looked at without being asked for.
  run("DELETE_SHEET", { sheetId: rye, sheetName: "Rye" });
  expect(get("getActiveSheetId")).toBe(other);
  expect(firstSeen()).toEqual([0, 3, 4]);
});
