import { describe, expect, test } from "vitest";
import { compareFormulas } from "../../shared/adjust/comparison.ts";
import type { Formula } from "../../shared/adjust/formula.ts";
import { inUnits } from "../../shared/adjust/in-units.ts";
import { NO_MONEY } from "../../shared/adjust/money.ts";
import { NO_LARDER } from "../../shared/larder/larder.ts";
import { change, formulaOf, larderOf } from "./support.ts";

const bun: Formula = formulaOf(
  [
    ["Bread flour", "flour", 1000],
    ["Whole milk", "dairy", 100],
    ["Whole egg", "egg", 500],
    ["Unsalted butter", "fat", 500],
    ["Salt", "salt", 20],
    ["Fresh yeast", "yeast", 30],
    ["Water", "water", 20],
  ],
  {
    style: "bun",
    batch: { of: "dough", amount: 2170 },
    sizes: [{ name: "bun", pieces: 20, baked: 90, loss: 0.1, price: 2 }],
  },
);
const figure = (formula: Formula, label: string, money = NO_MONEY) =>
  compareFormulas(bun, formula, money, NO_LARDER).figures.find((one) => one.label === label);

describe("before and after", () => {
  const salted = change(bun, "salt", { wanted: "1.5" }).formula;

  test("rows: what changed is marked, weights follow the dough that stays", () => {
    const { rows } = compareFormulas(bun, salted, NO_MONEY, NO_LARDER);
    expect(rows.filter(({ isChanged }) => isChanged).map(({ name }) => name)).toEqual(["Salt"]);
    // 2170 g of dough over 2.165: by hand.
    expect(rows[0]?.weights).toEqual([expect.closeTo(1000, 6), expect.closeTo(2170 / 2.165, 6)]);
    expect(rows[4]?.percents).toEqual([expect.closeTo(0.02, 12), expect.closeTo(0.015, 12)]);
  });

  test("effective hydration is 57.928 % and the water's 2 % (USDA SR28: egg 76.15, milk 88.13, butter 17.94, yeast 69 %)", () => {
    expect(figure(salted, "Effective hydration")).toEqual({
      label: "Effective hydration",
      before: "59.93 %",
      after: "59.93 %",
    });
    expect(figure(salted, "Hydration")?.before).toBe("2 %");
    expect(figure(salted, "Salt")).toMatchObject({ before: "2 %", after: "1.5 %" });
    // Bread flour, USDA SR28 20081.
    expect(figure(salted, "Flour protein, by table")?.before).toBe("11.98 %");
  });

  test("remarks come and go: 6 % of salt is far above the usual 1.7 to 2.2 %", () => {
    const salty = change(bun, "salt", { wanted: "6" }).formula;
    const there = compareFormulas(bun, salty, NO_MONEY, NO_LARDER).remarks;
    expect(there.comes.join()).toMatch(/Salt: Salt is 6 % of all flour, above the usual range/);
    expect(compareFormulas(salty, bun, NO_MONEY, NO_LARDER).remarks.goes).toEqual(there.comes);
  });

  test("allergens come and go, by nature and by the ingredient sheet", () => {
    const oil = change(bun, "swap", { swap: "Unsalted butter → Sunflower oil", part: "100" }).formula;
    // Milk stays in the whole milk.
    expect(compareFormulas(bun, oil, NO_MONEY, NO_LARDER).allergens).toEqual({ comes: [], goes: [] });
    const plain = formulaOf([
      ["Bread flour", "flour", 100],
      ["Unsalted butter", "fat", 10],
    ]);
    const own = larderOf(["ingredient", "allergens"], ["Sunflower oil", "may contain soya, sesame"]);
    const swapped = change(plain, "swap", { swap: "Unsalted butter → Sunflower oil", part: "100" }, own).formula;
    expect(compareFormulas(plain, swapped, NO_MONEY, own).allergens).toEqual({
      comes: ["may contain soya", "sesame"],
      goes: ["milk"],
    });
  });

  test("a piece costs what its ingredients cost, and the margin follows (by hand)", () => {
    const prices = {
      "bread flour": 0.001,
      "whole milk": 0.002,
      "whole egg": 0.004,
      "unsalted butter": 0.01,
      salt: 0,
      "fresh yeast": 0,
    };
    const money = { prices, pieces: [0.8], tax: 0.1, lost: 1 };
    // 1.00 + 0.20 + 2.00 + 5.00 on 2170 g; with 400 g of butter 7.20 on 2070 g; a bun is scaled at 100 g.
    const lean = change(bun, "fat", { wanted: "40" }).formula;
    expect(figure(lean, "Cost of ingredients", money)).toMatchObject({ before: "8.2", after: "7.55" });
    const per = (cost: number, dough: number) => (100 * cost) / dough;
    const after = 0.8 - per(8.2, 2170) + per(7.2, 2070);
    expect(figure(lean, "Cost of a piece", money)).toMatchObject({
      before: "0.8",
      after: after.toFixed(3).replace(/0$/, ""),
    });
    // 1 − 0.8 × 1.1 ÷ 2.
    expect(figure(lean, "Margin", money)?.before).toBe("56 %");
    expect(figure(lean, "Cost of ingredients", { ...money, prices: {} })).toBeUndefined();
  });

  test("the method where it is another: a night more, and how long all of it takes", () => {
    const steps = [
      { name: "Mix", minutes: 20, temp: null, how: "" },
      { name: "Bake", minutes: 45, temp: null, how: "" },
    ];
    const before = { ...bun, steps };
    const after = change(before, "retard", { hours: "12", temp: "4", before: "Bake" }).formula;
    const there = compareFormulas(before, after, NO_MONEY, NO_LARDER);
    expect(there.steps).toEqual([
      { name: "Mix", minutes: [20, 20] },
      { name: "Retard", minutes: [null, 720] },
      { name: "Bake", minutes: [45, 45] },
    ]);
    expect(there.figures.find(({ label }) => label === "All steps")).toMatchObject({
      before: "1 h 5 min",
      after: "13 h 5 min",
    });
    expect(compareFormulas(before, before, NO_MONEY, NO_LARDER).steps).toEqual([]);
  });

  test("the order of ingredients by weight, as a label lists them", () => {
    const { order } = compareFormulas(bun, change(bun, "fat", { wanted: "30" }).formula, NO_MONEY, NO_LARDER);
    expect(order.map((names) => names.slice(0, 3))).toEqual([
      ["Bread flour", "Whole egg", "Unsalted butter"],
      ["Bread flour", "Whole egg", "Unsalted butter"],
    ]);
    const lean = change(bun, "fat", { wanted: "5" }).formula;
    expect(compareFormulas(bun, lean, NO_MONEY, NO_LARDER).order[1].slice(1, 4)).toEqual([
      "Whole egg",
      "Whole milk",
      "Unsalted butter",
    ]);
  });

  test("two formulas of different sheets are compared by their names", () => {
    const other = formulaOf([
      ["Rye flour", "flour", 100],
      ["Salt", "salt", 2],
    ]);
    const { rows } = compareFormulas(bun, other, NO_MONEY, NO_LARDER, "name");
    expect(rows.map(({ name, percents }) => [name, percents[0] !== null, percents[1] !== null])).toEqual([
      ["Rye flour", false, true],
      ["Salt", true, true],
      ...["Bread flour", "Whole milk", "Whole egg", "Unsalted butter", "Fresh yeast", "Water"].map((name) => [
        name,
        true,
        false,
      ]),
    ]);
    expect(rows.find(({ name }) => name === "Salt")?.isChanged).toBe(false);
  });
});

test("two sheets are compared each with its own prices and its own cost of a piece (by hand)", () => {
  const rye = formulaOf([["Rye flour", "flour", 100]], {
    batch: { of: "dough", amount: 2170 },
    sizes: [{ name: "loaf", pieces: 2, baked: 900, loss: 0.1, price: 4 }],
  });
  const money = { ...NO_MONEY, prices: { "bread flour": 0.001 }, pieces: [0.8], tax: 0.1 };
  const others = { ...NO_MONEY, prices: { "rye flour": 0.002 }, pieces: [1], tax: 0 };
  const { figures } = compareFormulas(bun, rye, money, NO_LARDER, "name", others);
  const of = (label: string) => figures.find((one) => one.label === label);
  // 1000 g at 0.001 and 2170 g at 0.002; 1 − 0.8 × 1.1 ÷ 2 and 1 − 1 ÷ 4.
  expect(of("Cost of ingredients")).toMatchObject({ before: "1", after: "4.34" });
  expect(of("Cost of a piece")).toMatchObject({ before: "0.8", after: "1" });
  expect(of("Margin")).toMatchObject({ before: "56 %", after: "75 %" });
});

test("a formula of another sheet is read in the units of the first (an ounce is 28.349523125 g, an inch 2.54 cm)", () => {
  const round = { name: "pie", pieces: 1, baked: null, loss: 0, price: null, diameter: 10 };
  const ounces = formulaOf([["Flour", "flour", 16]], {
    options: { weight: "oz", temperature: "F", length: "in" },
    batch: { of: "dough", amount: 16 },
    sizes: [{ name: "loaf", pieces: 1, baked: 2, loss: 0.1, price: null }, round],
    perArea: 0.1,
  });
  const money = { ...NO_MONEY, prices: { flour: 0.028349523125 }, pieces: [1] };
  const read = inUnits({ formula: ounces, money }, bun.options);
  expect(read.formula.batch.amount).toBeCloseTo(453.59237, 9);
  expect(read.formula.sizes.map(({ baked }) => baked)).toEqual([expect.closeTo(56.69904625, 9), null]);
  expect(read.formula.sizes[1]?.diameter).toBeCloseTo(25.4, 12);
  // 1 oz/in² is 4.39418 g/cm².
  expect(read.formula.perArea).toBeCloseTo(0.439418, 6);
  expect(read.money.prices.flour).toBeCloseTo(0.001, 12);
  expect(read.money.pieces).toEqual([1]);
  expect(inUnits({ formula: bun, money: NO_MONEY }, bun.options).formula).toBe(bun);
});
