// A sheet as .csv: its page with plain numbers, and in plain sight which cells only Gramwright fills.
import { expect, test } from "vitest";
import { tableOf } from "../../shared/price-list/table.ts";
import { openBook } from "../../src/workbook/scripted.ts";
import { csvText, KEPT_HEAD } from "../../src/workbook/xlsx/csv.ts";

test("an ingredient sheet: numbers that add up, a text with a comma whole, and the calls' cells named row by row", async () => {
  const book = await openBook();
  const sheet = book.build("larder", {
    ingredient: ["Whole egg", "Sugar, fine", "=Rye"],
    price: [36, 24, 30],
    pack: ["15 dozen", "25 kg", "25 kg"],
    usable: [1, 0.95, 1],
  });
  const rows = tableOf(csvText(book.engine, book.sheetId("Ingredients")));
  const heads = rows.find(([name]) => name === "Ingredient") ?? [];
  const cell = (name: string, head: string) => rows.find(([one]) => one === name)?.[heads.indexOf(head)];
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
