// A sheet of the local workbook in a program's hands: its cells by name, and names that follow them.
import { describe, expect, test } from "vitest";
import type { Sheet } from "../../src/workbook/scripted.ts";
import { column, FLOUR, loaf, weights } from "./scripted-loaf.ts";

describe("a sheet's cells", () => {
  test("are read by name and by address", () => {
    const sheet = loaf();
    expect(sheet.value("title")).toBe("Quay test loaf");
    expect(weights(sheet)).toEqual([FLOUR, 0.65 * FLOUR, 0.02 * FLOUR, 0.01 * FLOUR]);
    expect(sheet.value(sheet.at("percent", 2))).toBe(0.65);
    expect(sheet.shown("percent", 2)).toBe("65.0%");
    expect(sheet.formula("share", 0)).toMatch(/^=ARRAYFORMULA/);
    expect(sheet.formula("percent", 2)).toBeUndefined();
    expect(sheet.message("grams", 2)).toBeUndefined();
    expect(sheet.rows("percent")).toBeGreaterThan(5);
    expect(sheet.rows("title")).toBe(1);
    expect(sheet.names()).toEqual(expect.arrayContaining(["title", "percent", "dough", "hydration"]));
  });

  test("are typed into by name and by address", () => {
    const sheet = loaf();
    sheet.type("percent", "70%", 2);
    expect(sheet.value("hydration")).toBeCloseTo(0.7, 12);
    sheet.type(sheet.at("percent", 2), "60%");
    expect(sheet.value("hydration")).toBeCloseTo(0.6, 12);
    expect(() => sheet.type("percent", "much", 2)).toThrow(/violates the data validation rules/);
    expect(sheet.value("percent", 2)).toBe(0.6);
  });

  test("take a pasted block, and refuse a text that would fill several", () => {
    const sheet = loaf();
    const block = [
      ["Strong flour", "flour", "100%"],
      ["Tap water", "water", "63%"],
    ];
    sheet.paste("ingredient", block, 1);
    expect(column(sheet, "ingredient", 1, 3)).toEqual(["Strong flour", "Tap water", "Salt"]);
    expect(sheet.value("hydration")).toBeCloseTo(0.63, 12);
    expect(() => sheet.paste("ingredient", [["a\tb"]], 1)).toThrow(/tab or a line break/);
  });

  test("have notes", () => {
    const { book } = loaf();
    const sheet = book.sheet("Sheet1");
    expect(sheet.note("Z1")).toBe("");
    const mark = { id: "n", kind: "note", text: "Kept cold", warningOnly: false, except: [] };
    const zone = { left: 25, right: 25, top: 0, bottom: 0 };
    book.engine.run("GRAMWRIGHT_ADD_MARK", { sheetId: book.sheetId(sheet.sheet), zone, mark });
    expect(sheet.note("Z1")).toBe("Kept cold");
  });
});

describe("names follow their cells", () => {
  test.each([1, 2, 4])("rows are put in %i above the table", (many) => {
    const sheet = loaf();
    const [dough, percent] = [sheet.rowOf("dough"), sheet.rowOf("percent", 1)];
    sheet.insertRows(1, many);
    expect([sheet.rowOf("dough"), sheet.rowOf("percent", 1)]).toEqual([dough + many, percent + many]);
    sheet.type("percent", "67%", 2);
    expect(sheet.value("hydration")).toBeCloseTo(0.67, 12);
    sheet.deleteRows(1, many);
    expect([sheet.rowOf("dough"), sheet.rowOf("percent", 1)]).toEqual([dough, percent]);
  });

  test.each([1, 3, 5])("a row put in at row %i of the table is counted", (at) => {
    const sheet = loaf();
    const rows = sheet.rows("percent");
    sheet.insertRows(sheet.rowOf("percent", at));
    expect(sheet.rows("percent")).toBe(rows + 1);
    expect(sheet.value("ingredient", at)).toBe("");
    sheet.type("ingredient", "Oil", at);
    sheet.type("kind", "fat", at);
    sheet.type("percent", "12%", at);
    // 84 000 g / 1.80
    expect(sheet.value("grams", at)).toBeCloseTo((0.12 * 84_000) / 1.8, 6);
    sheet.deleteRows(sheet.rowOf("percent", at));
    expect(weights(sheet)).toEqual([FLOUR, 0.65 * FLOUR, 0.02 * FLOUR, 0.01 * FLOUR]);
  });

  test.each([
    ["up", 4, 2, ["Flour", "Yeast", "Water", "Salt"]],
    ["down", 1, 4, ["Water", "Salt", "Flour", "Yeast"]],
  ])("a row is moved %s", (_, from, before, order) => {
    const sheet = loaf();
    const hydration = sheet.at("hydration");
    sheet.moveRows(sheet.rowOf("ingredient", from), 1, sheet.rowOf("ingredient", before));
    expect(column(sheet, "ingredient")).toEqual(order);
    expect(sheet.at("hydration")).toBe(hydration);
    expect(sheet.value("hydration")).toBeCloseTo(0.65, 12);
  });

  test("a cell is cut and pasted elsewhere", () => {
    const sheet = loaf();
    sheet.moveCells(sheet.at("title"), "J60");
    expect(sheet.at("title")).toBe("J60");
    expect(sheet.value("title")).toBe("Quay test loaf");
  });

  test("rows are sorted by a named column and by a letter", () => {
    const sheet = loaf();
    const range = `${sheet.at("ingredient", 1)}:${sheet.at("percent", 4)}`;
    sheet.sortRows(range, "percent");
    expect(column(sheet, "ingredient")).toEqual(["Yeast", "Salt", "Water", "Flour"]);
    expect(weights(sheet)).toEqual([0.01 * FLOUR, 0.02 * FLOUR, 0.65 * FLOUR, FLOUR]);
    sheet.sortRows(range, sheet.at("ingredient").replace(/\d/g, ""), false);
    expect(column(sheet, "ingredient")).toEqual(["Yeast", "Water", "Salt", "Flour"]);
  });

  test("a tab is renamed, copied and deleted", () => {
    const sheet = loaf();
    const { book } = sheet;
    book.renameSheet("Quay test loaf", "Pier loaf");
    expect(sheet.sheet).toBe("Pier loaf");
    expect(sheet.value("hydration")).toBeCloseTo(0.65, 12);
    const copy = book.sheet(book.duplicateSheet("Pier loaf", "Second"));
    copy.type("percent", "50%", 2);
    expect(copy.value("hydration")).toBeCloseTo(0.5, 12);
    expect(sheet.value("hydration")).toBeCloseTo(0.65, 12);
    book.deleteSheet("Pier loaf");
    expect(() => sheet.value("hydration")).toThrow(/was deleted; there are Sheet1, Second/);
  });
});

test.each([
  [
    "an unknown name",
    (sheet: Sheet) => sheet.value("crumb"),
    /"Quay test loaf" has no cell called "crumb"; its names are title/,
  ],
  [
    "a row that a column has not",
    (sheet: Sheet) => sheet.value("percent", 99),
    /"percent" .* has rows 0 to \d+; there is no row 99/,
  ],
  ["a row that is none", (sheet: Sheet) => sheet.value("percent", 1.5), /there is no row 1\.5/],
  ["a row of an address", (sheet: Sheet) => sheet.value("B7", 2), /no cell called "B7"/],
  ["row 0", (sheet: Sheet) => sheet.value("A0"), /has no cell A0; its last cell is [A-Z]+\d+/],
  ["a column outside", (sheet: Sheet) => sheet.type("ZZZ1", "1"), /has no cell ZZZ1/],
  [
    "a name on a sheet without any",
    ({ book }: Sheet) => book.sheet("Sheet1").value("title"),
    /its cells have no names/,
  ],
  [
    "an unknown sheet",
    ({ book }: Sheet) => book.sheet("Rye"),
    /There is no sheet "Rye"; there are Sheet1, Quay test loaf/,
  ],
  ["rows outside", (sheet: Sheet) => sheet.deleteRows(1, 99_999), /has rows 1 to \d+; there is no row 99999/],
  ["no row at all", (sheet: Sheet) => sheet.insertRows(1, 0), /whole number from 1, not 0/],
  ["a row in front of row 0", (sheet: Sheet) => sheet.insertRows(0), /there is no row 0/],
  ["rows moved in front of themselves", (sheet: Sheet) => sheet.moveRows(3, 2, 4), /cannot be moved/],
  ["a sort by a column outside", (sheet: Sheet) => sheet.sortRows("A1:B3", "D"), /not in A1:B3/],
  ["an unknown template", ({ book }: Sheet) => book.build("stone"), /There is no template/],
  ["an input that is none", ({ book }: Sheet) => book.build("pan-loaf", { crumb: 1 }), /no input/],
])("%s is refused in words", (_, act, says) => {
  expect(() => act(loaf())).toThrow(says);
});
