// A sheet as .csv: its page with plain numbers, and in plain sight which cells only Gramwright fills.
import { expect, test } from "vitest";
import { readTable } from "../../shared/larder/larder.ts";
import { columnsIn } from "../../shared/price-list/columns.ts";
import { leftUnread, linesIn } from "../../shared/price-list/lines.ts";
import { tableOf } from "../../shared/price-list/table.ts";
import { workbookTable } from "../../shared/price-list/workbook-cells.ts";
import { openBook } from "../../src/workbook/scripted.ts";
import { csvText, KEPT_HEAD } from "../../src/workbook/xlsx/csv.ts";
import { hasOffice, inOffice } from "./support.ts";

test("an ingredient sheet: numbers that add up, a text with a comma whole, and the calls' cells named row by row", async () => {
  const book = await openBook();
  const sheet = book.build("larder", {
    ingredient: ["Whole egg", "Sugar, fine", "=Rye"],
    price: [36, 24, 30],
    pack: ["15 dozen", "25 kg", "25 kg"],
    usable: [1, 0.95, 1],
  });
  const text = csvText(book.engine, book.sheetId("Ingredients"));
  const rows = tableOf(text);
  const heads = rows.find(([name]) => name === "Ingredient") ?? [];
  const cell = (name: string, head: string) => rows.find(([one]) => one === name)?.[heads.indexOf(head)];
  // A program that opens the file would calculate what begins so.
  expect(text).toMatch(/^'=Rye,/m);
  expect(text).not.toMatch(/(?:^|,)"?[=+@]/m);
  expect([cell("Whole egg", "Price"), cell("Sugar, fine", "Usable yield"), cell("=Rye", "Pack")]).toEqual([
    "36",
    "0.95",
    "25 kg",
  ]);
  // 24 ÷ 25 ÷ 0.95.
  expect(Number(cell("Sugar, fine", "Price per kg"))).toBeCloseTo(24 / 25 / 0.95, 9);
  const last = (rows[0] ?? []).length - 1;
  expect(rows[0]?.[last]).toBe(KEPT_HEAD);
  // What a dozen eggs weigh only Gramwright knows, and the price per kilogram shows it.
  const marks = (name: string) => String(rows.find(([one]) => one === name)?.[last] ?? "").split(" ");
  expect(marks("Whole egg")).toContain(sheet.at("price_each", 1));
  expect(marks("Whole egg")).not.toContain(sheet.at("price", 1));
});

test("a formula sheet is its page alone: no helper columns, no hidden row, no error", async () => {
  const book = await openBook();
  const sheet = book.build("hearth-loaf", {
    title: "Quay loaf",
    by: "pieces",
    size_pieces: [10],
    size_weight: [800],
    size_loss: [0.1],
    ingredient: ["Flour", "Water", "Salt"],
    kind: ["flour", "water", "salt"],
    percent: [1, 0.65, 0.02],
  });
  const rows = tableOf(csvText(book.engine, book.sheetId("Quay loaf")));
  const total = rows.find(([label]) => String(label).startsWith("Total"));
  const grams = ["Flour", "Water", "Salt"].map((name) => Number(rows.find(([one]) => one === name)?.[3]));
  // 10 × 800 ÷ 0.9 of dough over 1.67.
  expect(grams[0]).toBeCloseTo(Number(sheet.value("weight", 1)), 6);
  expect(Number(total?.[3])).toBeCloseTo(8888.89, 2);
  expect(Math.max(...rows.map((row) => row.length))).toBeLessThan(16);
  expect(rows.flat().filter((one) => /^#[A-Z]/.test(String(one)))).toEqual([]);
});

test.skipIf(!hasOffice)(
  "LibreOffice opens it, calculates nothing of it, and a price list that it saves is read",
  async () => {
    const book = await openBook();
    book.build("larder", {
      ingredient: ["Sugar", "=1+1", "-2+3"],
      price: [24, 30, 9],
      pack: ["25 kg", "25 kg", "1 kg"],
    });
    const own = Buffer.from(csvText(book.engine, book.sheetId("Ingredients")));
    const supplier =
      'Tern Quay Dry Goods,,\nArticle,Pack,Price\nSugar,25 kg,"1,060.50"\n"Salt, fine",10 kg,9.5\n=1+1,5 kg,7\n=Sugar,5 kg,8\n+Butter,10 kg,86\n';
    const files = inOffice({ "own.csv": own, "list.csv": Buffer.from(supplier) }, "xlsx", ".xlsx");
    const opened = workbookTable(files["own.xlsx"] as Buffer);
    const rowOf = (name: string) => opened.find(([one]) => one === name) ?? [];
    const price = (opened.find(([one]) => one === "Ingredient") ?? []).indexOf("Price");
    expect([rowOf("Sugar")[price], rowOf("'=1+1")[price], rowOf("'-2+3")[price]]).toEqual([24, 30, 9]);
    // What it calculated of a supplier's own cells is no name, and the line is asked about.
    const list = workbookTable(files["list.xlsx"] as Buffer);
    expect(list).toEqual([
      ["Tern Quay Dry Goods"],
      ["Article", "Pack", "Price"],
      ["Sugar", "25 kg", 1060.5],
      ["Salt, fine", "10 kg", 9.5],
      [2, "5 kg", 7],
      ["", "5 kg", 8],
      ["+Butter", "10 kg", 86],
    ]);
    const columns = columnsIn(list);
    const lines = linesIn(list, columns, columns.places, readTable([["Ingredient"], ["Sugar"], ["Butter"]]));
    expect(lines.map(({ row, of, price, near }) => [row, of, price, near])).toEqual([
      [3, "Sugar", "1060.5", []],
      [4, null, "9.5", []],
      [5, null, "7", []],
      [7, null, "86", ["Butter"]],
    ]);
    expect(leftUnread(list, columns, columns.places)).toEqual(["Row 6: a price without a name, which is left out."]);
  },
);
