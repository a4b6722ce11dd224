import { describe, expect, test } from "vitest";
import type { Formula } from "../../shared/adjust/formula.ts";
import { savingsOf } from "../../shared/adjust/savings.ts";
import { offersFor } from "../../shared/adjust/swap.ts";
import { NO_LARDER } from "../../shared/larder/larder.ts";
import { amount, change, formulaOf, type Line, refusalOf } from "./support.ts";

const dough = (...lines: readonly Line[]): Formula =>
  formulaOf([["Flour", "flour", 1000], ["Water", "water", 500], ...lines]);
const swap = (formula: Formula, label: string, part = "100") => change(formula, "swap", { swap: label, part });

describe("yeast", () => {
  // A bread textbook on ckbk (brea32715): 1 of fresh is 0.40 of active dry or 0.33 of instant; the water keeps the weight.
  test.each([
    ["Fresh yeast", 20, "Active dry yeast", 8, 12],
    ["Fresh yeast", 20, "Instant yeast", 6.6, 13.4],
    ["Instant yeast", 6.6, "Fresh yeast", 20, -13.4],
    ["Active dry yeast", 40, "Instant yeast", 33, 0],
  ])("%s %d g to %s %d g, water %d g", (from, grams, to, other, water) => {
    const { formula } = swap(dough([from, "yeast", grams]), `${from} → ${to}`);
    expect(amount(formula, to, 1000)).toBeCloseTo(other, 9);
    expect(amount(formula, "Water", 1000)).toBeCloseTo(500 + water, 9);
    expect(formula.rows).toHaveLength(3);
  });

  test("that of a preferment changes with it (0.2 % of fresh is 0.066 % of instant)", () => {
    const poolish: Formula = {
      ...dough(["Fresh yeast", "yeast", 10]),
      block: "preferment",
      setApart: { sort: "poolish", share: 0.3, hydration: 1, yeast: 0.002 },
    };
    const { formula, parts } = swap(poolish, "Fresh yeast → Instant yeast");
    expect(formula.setApart?.yeast).toBeCloseTo(0.00066, 12);
    expect(parts).toEqual(["set apart"]);
    expect(refusalOf(() => swap(poolish, "Fresh yeast → Instant yeast", "50"))).toMatch(/Swap all of it/);
  });
});

describe("milk, egg, fat and sugar", () => {
  // Equal solids, fat or sugar by USDA SR28: 9.16 ÷ 96.84, 11.87 ÷ 97.53, 23.85 ÷ 97.22; 81.11 ÷ 100; 99.8 ÷ 82.12.
  test.each<[Line, string, number, number]>([
    [["Skim milk", "dairy", 1000], "Skim milk powder", 94.59, 905.41],
    [["Whole milk", "dairy", 1000], "Whole milk powder", 121.71, 878.29],
    [["Whole egg", "egg", 100], "Dried whole egg", 24.53, 75.47],
    [["Unsalted butter", "fat", 100], "Sunflower oil", 81.11, 17.94],
    [["Sugar", "sugar", 100], "Honey", 121.53, -20.76],
  ])("%s to %s: %d g and %d g of water", (line, to, grams, water) => {
    const { formula } = swap(dough(line), `${line[0]} → ${to}`);
    expect(amount(formula, to, 1000)).toBeCloseTo(grams, 2);
    expect(amount(formula, "Water", 1000)).toBeCloseTo(500 + water, 1);
    expect(amount(formula, "Flour", 1000)).toBe(1000);
  });

  test("a textbook's 90 g of powder for a kilogram of skim milk is within a twentieth (Professional Baking, chapter 2)", () => {
    const { formula } = swap(dough(["Skim milk", "dairy", 1000]), "Skim milk → Skim milk powder");
    expect(Math.abs(amount(formula, "Skim milk powder", 1000) / 90 - 1)).toBeLessThan(0.055);
  });

  test("powder becomes milk again: the water is taken from what is poured (1000 g of skim milk for 94.59 g)", () => {
    const { formula } = swap(dough(["Skim milk powder", "dairy", 47.29]), "Skim milk powder → Skim milk");
    expect(amount(formula, "Skim milk", 1000)).toBeCloseTo(500, 0);
    expect(amount(formula, "Water", 1000)).toBeCloseTo(500 - 452.7, 0);
    expect(refusalOf(() => swap(dough(["Skim milk powder", "dairy", 80]), "Skim milk powder → Skim milk"))).toMatch(
      /^Skim milk takes .* of water away, and only 50 % is poured in/,
    );
  });

  test("what else moves is said: skim milk takes the fat along", () => {
    const { notes } = swap(dough(["Whole milk", "dairy", 500]), "Whole milk → Skim milk");
    // 9.8 g in the flour and 16.35 g in the milk; 647.9 g of skim milk of equal solids hold 0.08 % (USDA SR28).
    expect(notes.find((one) => one.startsWith("Fat of the whole dough"))).toMatch(/2\.62 % to 1\.03 % of flour/);
    expect(notes[0]).toBe("The dough's water and its solids stay.");
  });

  test("half of it stays a row of its own; what is there already takes the rest in", () => {
    const half = swap(dough(["Sugar", "sugar", 100]), "Sugar → Honey", "50").formula;
    expect([amount(half, "Sugar", 1000), amount(half, "Honey", 1000)]).toEqual([
      expect.closeTo(50, 9),
      expect.closeTo(60.765, 2),
    ]);
    const whole = swap(half, "Sugar → Honey").formula;
    expect(whole.rows.map(({ name }) => name)).toEqual(["Flour", "Water", "Honey"]);
    expect(amount(whole, "Honey", 1000)).toBeCloseTo(121.53, 2);
  });

  test("oil makes no layers and takes up no air; raw egg is kept cold", () => {
    const butter = dough(["Unsalted butter", "fat", 100]);
    const rolled = { ...butter, rollIn: { name: "Unsalted butter", share: 0.25, of: "base" as const } };
    expect(refusalOf(() => swap(rolled, "Unsalted butter (roll-in) → Sunflower oil"))).toMatch(/no layers form/);
    const cake = { ...butter, style: "pound cake" as const };
    expect(swap(cake, "Unsalted butter → Sunflower oil").cautions[0]).toMatch(/^Do not cream oil/);
    expect(swap(butter, "Unsalted butter → Sunflower oil").cautions).toEqual([]);
    expect(swap(dough(["Dried whole egg", "egg", 20]), "Dried whole egg → Whole egg").cautions[0]).toMatch(
      /raw egg at 5 °C/,
    );
  });

  test("a formula of flour and water has none", () => {
    expect(offersFor(dough())).toEqual([]);
    expect(refusalOf(() => swap(dough(), ""))).toMatch(/^Nothing in this formula has a swap/);
  });
});

test("what changes would bring, the cheapest first; one without a price is left out (by hand)", () => {
  const rich = dough(["Unsalted butter", "fat", 100], ["Sugar", "sugar", 100], ["Honey", "sugar", 0]);
  const money = {
    prices: { flour: 0.001, "unsalted butter": 0.01, sugar: 0.001, honey: 0.01, "sunflower oil": 0.002 },
  };
  const savings = savingsOf(rich, { ...money, pieces: [], tax: 0, lost: 1 }, NO_LARDER);
  expect(savings.map(({ label }) => label)).toEqual([
    "Unsalted butter → Sunflower oil",
    "A tenth less fat",
    "2 % more water",
    "A tenth less sugar",
    "Sugar → Honey",
  ]);
  // 2.00 on 1690 g, 2.10 on 1720 g and 2.09 on 1690 g, for 1700 g.
  expect(savings.slice(1, 4).map(({ after }) => after)).toEqual(
    [(2 * 1700) / 1690, (2.1 * 1700) / 1720, (2.09 * 1700) / 1690].map((cost) => expect.closeTo(cost, 6)),
  );
  // 1000 g of flour 1.00, butter 1.00, sugar 0.10; 81.11 g of oil cost 0.162, and the dough weighs 0.95 g less.
  expect(savings[0]?.before).toBeCloseTo(2.1, 9);
  expect(savings[0]?.after).toBeCloseTo(1.2622 * (1700 / 1699.05), 3);
});

test("dearer as well, in a lean dough (by hand: 20 g of fresh yeast at 0.004 for 6.6 g of instant at 0.01)", () => {
  const lean = dough(["Instant yeast", "yeast", 6.6]);
  const prices = { flour: 0.001, "instant yeast": 0.01, "fresh yeast": 0.004 };
  const savings = savingsOf(lean, { prices, pieces: [], tax: 0, lost: 1 }, NO_LARDER);
  // Active dry yeast has no price, and 20 g more of water are 1526.6 g of dough.
  expect(savings.map(({ label, after }) => [label, after])).toEqual([
    ["2 % more water", expect.closeTo((1.066 * 1506.6) / 1526.6, 6)],
    ["Instant yeast → Fresh yeast", expect.closeTo(1.08, 6)],
  ]);
  expect(savings[0]?.before).toBeCloseTo(1.066, 9);
});
