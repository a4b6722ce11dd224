import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Book, openBook, openDemo, openFile, type Sheet } from "../../src/workbook/scripted.ts";
import { TEMPLATES } from "../../templates/index.ts";

const LOAF = {
  title: "Quay test loaf",
  by: "pieces",
  size_name: ["loaf"],
  size_pieces: [100],
  size_weight: [840],
  ingredient: ["Flour", "Water", "Salt", "Yeast"],
  kind: ["flour", "water", "salt", "yeast"],
  percent: [1, 0.65, 0.02, 0.01],
};
// 100 pieces of 840 g from 168 percent: 84 000 g / 1.68 of flour.
const FLOUR = 50_000;

let start: Book;
let folder = "";
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "gramwright-scripted-"));
  start = await openBook();
  start.build("pan-loaf", LOAF, { parts: ["water"] });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Each test changes a workbook of its own. */
const loaf = (): Sheet => start.copy().sheet("Quay test loaf");
const column = ({ value }: Sheet, name: string, from = 1, to = 4): unknown[] =>
  Array.from({ length: to - from + 1 }, (_, index) => value(name, from + index));
const weights = (sheet: Sheet): number[] => column(sheet, "grams").map((one) => Math.round(Number(one)));

describe("a sheet's cells", () => {
  test("are read by name and by address", () => {
    const sheet = loaf();
    expect(sheet.value("title")).toBe("Quay test loaf");
    expect(weights(sheet)).toEqual([FLOUR, 0.65 * FLOUR, 0.02 * FLOUR, 0.01 * FLOUR]);
    expect(sheet.value(sheet.at("percent", 2))).toBe(0.65);
    expect(sheet.shown("percent", 2)).toBe("65.00%");
    expect(sheet.formula("share", 0)).toMatch(/^=.*BAKE_/);
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
    sheet.type("percent", "much", 2);
    const said = sheet.names().map((name) => sheet.message(name) ?? "");
    expect(said.join(" ")).toMatch(/much/);
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
    sheet.moveCells(sheet.at("title"), "J70");
    expect(sheet.at("title")).toBe("J70");
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

test("functions are taken away and given back", () => {
  const sheet = loaf();
  const { book } = sheet;
  const own = book.sheet("Sheet1");
  own.type("Z1", `=ERROR.TYPE('${sheet.sheet}'!${sheet.at("share", 0)})`);
  own.type("Z3", "=ERROR.TYPE(1/0)");
  expect([own.value("Z1"), own.value("Z3")]).toEqual(["#N/A", 2]);
  book.removeFunctions();
  expect(sheet.value("share", 0)).toBe("#NAME?");
  expect(own.value("Z1")).toBe(5);
  own.type("Z2", "=BAKE_TINDOUGH(1)");
  expect(own.value("Z2")).toBe("#NAME?");
  book.restoreFunctions();
  expect(weights(sheet)[0]).toBe(FLOUR);
  expect(own.value("Z2")).toBe("#ERROR!");
});

describe("a workbook", () => {
  test("answers the sidebar's questions and lists its sheets", () => {
    const { book } = loaf();
    expect(book.sheetNames()).toEqual(["Sheet1", "Quay test loaf"]);
    const { sheet } = book.answer({
      ask: "day",
      day: "2026-01-31",
      orders: [{ sheet: "Quay test loaf", pieces: 20 }],
    }) as { sheet: string };
    expect(book.sheet(sheet).names()).not.toEqual([]);
    expect(() => book.answer({ ask: "weather" })).toThrow();
  });

  test("saved as .json and opened again is the same, names as well", async () => {
    const sheet = loaf();
    sheet.insertRows(1, 2);
    sheet.type("percent", "71%", 2);
    const path = join(folder, "loaf.json");
    await sheet.book.save(path);
    await sheet.book.save(path);
    const again = await openFile(path);
    expect(again.engine.data()).toEqual(sheet.book.engine.data());
    const other = again.sheet("Quay test loaf");
    for (const name of sheet.names())
      expect([name, other.at(name), other.value(name)]).toEqual([name, sheet.at(name), sheet.value(name)]);
  });

  test("saved as .xlsx is a whole file with its sheet in it", async () => {
    const path = join(folder, "loaf.xlsx");
    await loaf().book.save(path);
    const parts = unzipSync(readFileSync(path));
    expect(new TextDecoder().decode(parts["xl/workbook.xml"])).toContain('name="Quay test loaf"');
    expect(readdirSync(folder).filter((name) => name.endsWith(".part"))).toEqual([]);
  });

  test("is saved under no other ending, and never half", async () => {
    const { book } = loaf();
    await expect(book.save(join(folder, "loaf.ods"))).rejects.toThrow(/\.xlsx or \.json/);
    await expect(book.save(join(folder, "none", "loaf.xlsx"))).rejects.toThrow(/could not be written/);
    expect(existsSync(join(folder, "none"))).toBe(false);
  });

  test("that is missing, or no kept workbook, is not opened", async () => {
    await expect(openFile(join(folder, "missing.json"))).rejects.toThrow(/could not be opened/);
    const path = join(folder, "list.json");
    writeFileSync(path, "[]");
    await expect(openFile(path)).rejects.toThrow(/it is no kept workbook/);
  });

  test("kept without names is read by the words beside its cells", async () => {
    const kept = loaf();
    const { cellNames, ...data } = kept.book.engine.data();
    expect(cellNames).toHaveLength(kept.names().length);
    const sheet = (await openBook({ data })).sheet("Quay test loaf");
    for (const name of ["title", "ingredient", "percent", "grams", "hydration", "dough"])
      expect([name, sheet.at(name)]).toEqual([name, kept.at(name)]);
    sheet.insertRows(1);
    expect(sheet.value("title")).toBe("Quay test loaf");
  });

  test("of the demo shop has its formula sheets, each with names", async () => {
    const book = await openDemo(new Date(2026, 0, 30));
    expect(book.sheet("Quay pan loaf").value("title")).toBe("Quay pan loaf");
    expect(book.sheetNames()).toEqual(expect.arrayContaining(["Ferry bun", "Harbour levain loaf", "Costs and prices"]));
    for (const name of book.sheetNames().filter((one) => one !== "Sheet1"))
      expect([name, book.sheet(name).names().length]).not.toEqual([name, 0]);
  });

  test("counts in the units of its locale", async () => {
    const sheet = (await openBook({ locale: "de_DE" })).build("pan-loaf", LOAF);
    sheet.type("percent", "66,5%", 2);
    expect(sheet.value("hydration")).toBeCloseTo(0.665, 12);
  });
});

test.each(TEMPLATES.map(({ name, sample }) => [name, sample] as const))(
  "%s: every name is a cell of its sheet",
  (name, sample) => {
    const sheet = start.copy().build(name, sample);
    for (const one of sheet.names()) expect(sheet.at(one)).toMatch(/^[A-Z]+\d+$/);
    expect(sheet.value("title")).toBe(sample.title);
  },
);

test("the lines that DEVELOPERS.md shows run", async () => {
  const [, shown = ""] =
    /```ts\n(const book = await openBook[\s\S]*?)```/.exec(readFileSync("DEVELOPERS.md", "utf8")) ?? [];
  const path = join(folder, "pier-loaf.xlsx");
  const lines = shown.replace('"pier-loaf.xlsx"', JSON.stringify(path));
  const told: unknown[] = [];
  const run = new Function("openBook", "console", `return (async () => {${lines}})()`);
  await run(openBook, { log: (...all: unknown[]) => told.push(...all) });
  // 0.68 × 5000 g / 1.68 is 2023.8 g of water, in the row below the one that was put in.
  expect(told[0]).toMatch(/^2,?02[34]/);
  expect(told.slice(1)).toEqual([undefined, ["Sheet1", "Pier loaf"]]);
  expect(existsSync(path)).toBe(true);
});
