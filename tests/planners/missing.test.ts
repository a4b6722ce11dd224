// What formula sheets use and the ingredient sheet lacks.
import { expect, test } from "vitest";
import { readTable } from "../../shared/larder/larder.ts";
import { missingFrom } from "../../src/planners/missing.ts";
import { costed, larderOf, modelNamed, SLOW } from "../money/costing-support.ts";
import { workbook } from "../templates/sheet-support.ts";

const part = (name: string, kind = "other") => ({ name, kind });
const sheet = (title: string, ...parts: ReturnType<typeof part>[]) => ({ title, parts });
const larder = (...rows: string[][]) => readTable([["Ingredient", "Also called"], ...rows]);

test("a name that no row has gets one with its type, each once; water, blanks and other formulas do not", () => {
  const { ask, notes } = missingFrom(
    [
      sheet("Bun", part("Strong flour", "flour"), part("Water", "water"), part("Quay levain", "levain 100%"), part("")),
      sheet("Quay levain", part("strong flour", "flour"), part("Crushed ice", "ice"), part("Moon dust", "nonsense")),
    ],
    larder(["Rye flour", ""]),
  );
  expect(ask).toEqual({
    ingredients: [
      { name: "Strong flour", kind: "flour" },
      { name: "Moon dust", kind: "" },
    ],
    also: [],
  });
  expect(notes).toEqual([]);
});

test("an ordinary name finds the row that it means, and is put behind it", () => {
  const { ask } = missingFrom(
    [sheet("Bun", part("salt", "salt"), part("Butter", "fat"), part("vegetable oil", "fat"), part("Yeast", "yeast"))],
    larder(
      ["Table salt", "fine salt"],
      ["Unsalted butter", ""],
      ["Soybean oil", "frying oil"],
      ["Fresh yeast", "yeast"],
    ),
  );
  expect(ask).toEqual({
    ingredients: [],
    also: [
      { name: "salt", of: "Table salt" },
      { name: "Butter", of: "Unsalted butter" },
      { name: "vegetable oil", of: "Soybean oil" },
    ],
  });
});

test("a name that may be one of two rows is left to the person", () => {
  const { ask, notes } = missingFrom(
    [sheet("Bun", part("Butter", "fat"))],
    larder(["Sweet butter", ""], ["Butter unsalted", ""]),
  );
  expect(ask).toEqual({ ingredients: [], also: [] });
  expect(notes.join()).toMatch(/"Butter" may be several of your ingredients: enter it under “Also called”/);
});

test(
  "on the sheets: rows are added, other names are put behind those that are there, and prices are found by them",
  async () => {
    const book = await workbook();
    const cookie = modelNamed("cookie");
    const sheetOf = await larderOf(book, {
      ingredient: ["Plain flour", "Unsalted butter"],
      also_called: [null, "Sheet butter"],
      price: [1, 8],
      pack: ["1 kg", "1 kg"],
    });
    const rows = { ingredient: ["Plain flour", "Butter", "Sugar"], kind: ["flour", "fat", "sugar"] };
    const biscuit = await costed(book, { title: "Biscuit", by: "dough", ...rows, weighed: [1000, 500, 300] }, cookie);
    expect(biscuit.value("unpriced")).toBe("Without a price: 2");
    expect(book.answer({ ask: "missing" })).toEqual({
      sheet: "Ingredients",
      added: ["Sugar"],
      also: ["Butter as Unsalted butter"],
    });
    expect(sheetOf.value("also_called", 2)).toBe("Sheet butter; Butter");
    expect([sheetOf.value("ingredient", 3), sheetOf.value("kind", 3)]).toEqual(["Sugar", "sugar"]);
    expect(biscuit.value("unpriced")).toBe("Without a price: 1");
    expect(biscuit.value("row_cost", 2)).toBeCloseTo(4, 9);
    expect(book.answer({ ask: "missing" })).toEqual({ sheet: "", added: [], also: [] });
  },
  SLOW,
);
