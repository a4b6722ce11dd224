// What holds of every text: nothing throws, numbers are numbers, and a line means the same wherever it stands.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { larder } from "../../../shared/larder/larder.ts";
import type { Kitchen } from "../../../shared/recipe/text/description.ts";
import { describeRecipe } from "../../../shared/recipe/text/reader.ts";
import { recipesIn } from "../../../shared/recipe/text/recipes.ts";
import { someOf } from "../../kit/scale.ts";
import { SHAPES } from "./corpus.ts";

const kitchen: Kitchen = { cups: "US", larder: larder(true).decode([], "larder", []) };
const LINES = [...new Set(Object.values(SHAPES).flatMap((cases) => cases.flatMap(({ text }) => text.split("\n"))))];
const NAMES = [
  "bread flour",
  "rye flour",
  "water",
  "salt",
  "instant yeast",
  "butter",
  "sugar",
  "milk",
  "honey",
  "raisins",
];
const UNITS = ["g", "kg", "oz", "lb", "ml", "cups", "tbsp", "tsp"];

/** Every number of a description. */
function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  if (typeof value !== "object" || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
}

test("lines of all shapes in any order are described, and every number is one", () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...LINES), { maxLength: 40 }), (lines) => {
      for (const { described } of recipesIn(lines.join("\n"), kitchen)) {
        for (const number of numbersIn(described)) expect(Number.isFinite(number)).toBe(true);
        for (const { grams, percent } of described.rows) {
          expect(grams ?? 0).toBeGreaterThanOrEqual(0);
          expect(percent ?? 0).toBeGreaterThanOrEqual(0);
        }
      }
    }),
    { numRuns: 300, seed: 23 },
  );
});

test("any text at all is described", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary", maxLength: 300 }), (text) => {
      for (const number of numbersIn(describeRecipe(text, kitchen))) expect(Number.isFinite(number)).toBe(true);
    }),
    { numRuns: 500, seed: 23 },
  );
});

describe("a line alone weighs what it weighs in a recipe", () => {
  test.each(UNITS)("in %s", (unit) => {
    fc.assert(
      fc.property(
        fc.constantFrom(...NAMES),
        fc.integer({ min: 1, max: 900 }),
        fc.integer({ min: 0, max: 99 }),
        (name, whole, part) => {
          const line = `${whole}${part === 0 ? "" : `.${String(part).padStart(2, "0")}`} ${unit} ${name}`;
          // Alone it is read whole; among ingredients a known name is read once for all weights.
          const alone = describeRecipe(line, kitchen).rows[0];
          const among = describeRecipe(`Loaf\nIngredients\n500 g flour\n${line}`, kitchen).rows[1];
          expect(among?.name).toBe(alone?.name);
          expect(among?.type).toBe(alone?.type);
          expect(among?.grams ?? -1).toBeCloseTo(alone?.grams ?? -1, 6);
        },
      ),
      { numRuns: 60, seed: 23 },
    );
  });
});

describe("a comma within a number parts no columns", () => {
  test.each([
    "Mehl 6,500 kg\nMilch 3,900 kg\nSalz 0,120 kg",
    "6,500 kg flour\n3,900 kg milk\n0,120 kg salt",
    "Flour: 6,500 kg\nMilk: 3,900 kg\nSalt: 0,120 kg",
  ])("%s", (text) => {
    const { rows, questions } = describeRecipe(text, kitchen);
    expect(rows.map(({ grams }) => grams)).toEqual([6500, 3900, 120]);
    expect(questions).toEqual([]);
  });
});

describe("a grade of flour is no amount, and an amount is no grade", () => {
  test.each([
    ["Weizenmehl 550 6,5 kg", "Weizenmehl 550", 6500],
    ["Flour 812.5 g", "Flour", 812.5],
    ["Mehl 550 g", "Mehl", 550],
    ["500 g 00 flour", "00 flour", 500],
    ["Farine type 55 1 kg", "Farine type 55", 1000],
    ["Flour 1050, water 650 g, salt 20 g", "Flour", 1050],
  ])("%s", (line, name, grams) => {
    const [row] = describeRecipe(`${line}\nwater 600 g\nsalt 20 g\nall weights in grams`, kitchen).rows;
    expect(row).toMatchObject({ name, grams });
  });
});

test("what is typed at the end changes nothing above it", () => {
  const text = "Pier loaf\n500 g flour\n325 g water\n10 g salt\n5 g yeast";
  const before = describeRecipe(text, kitchen).rows;
  const added = "\n20 g butter";
  for (let end = 1; end <= added.length; end++)
    expect(describeRecipe(text + added.slice(0, end), kitchen).rows.slice(0, 4)).toEqual(before);
});

test("what was read before changes nothing", () => {
  const described = (text: string) => JSON.stringify(recipesIn(text, kitchen).map((part) => part.described));
  const texts = Object.values(SHAPES).flatMap((cases) => cases.map(({ text }) => text));
  const alone = texts.map((text) => {
    const fresh: Kitchen = { ...kitchen, larder: { ...kitchen.larder } };
    return JSON.stringify(recipesIn(text, fresh).map((part) => part.described));
  });
  for (const text of [...texts].reverse()) described(text);
  // Numbers written in other ways are remembered apart.
  for (const end of ["20 g salt", "2.5 g salt", "2,5 g salt", "Water 65%\nSalt 2%"])
    for (const line of someOf(LINES, 5)) described(`Loaf\nIngredients\n500 g flour\n${line}\n${end}`);
  expect(texts.map(described)).toEqual(alone);
});

test("a line that takes a stage and lists other ingredients asks of those whose amount nobody knows", () => {
  const text =
    "Rye\nSour: 800 g rye, 640 g water, 40 g seed\nDough: sour all, rye 1200 g, wheat 500, water 1100, salt 45";
  const { rows, questions } = describeRecipe(text, kitchen);
  expect(rows.map(({ name, grams, takes }) => [name, grams, takes])).toEqual([
    ["rye", 800, null],
    ["water", 640, null],
    ["seed", 40, null],
    ["sour", null, 0],
    ["rye", 1200, null],
    ["wheat", null, null],
    ["water", null, null],
    ["salt", null, null],
  ]);
  expect(questions.map(({ reason, line, about }) => [reason, line, about[1]])).toEqual(
    ["500", "1100", "45"].map((number) => ["unclear amount", 2, number]),
  );
});
