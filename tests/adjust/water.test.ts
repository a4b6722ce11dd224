import { describe, expect, test } from "vitest";
import { amount, change, formulaOf, larderOf, refusalOf } from "./support.ts";

const EFFECTIVE = "effective: with eggs, milk, butter";
const PLAIN = "plain: water, and that of preferments";

describe("hydration", () => {
  test("a levain's flour and water count (a forum's question on a loaf cut from 70 to 60 %: 275 g of water)", () => {
    const loaf = formulaOf([
      ["Flour", "flour", 500],
      ["Water", "water", 360],
      ["Levain", "levain 100%", 125],
    ]);
    const { formula, line } = change(loaf, "hydration", { counted: PLAIN, wanted: "60" });
    expect(amount(formula, "Water", 500)).toBeCloseTo(275, 9);
    expect(amount(formula, "Levain", 500)).toBeCloseTo(125, 9);
    expect(line).toBe("Hydration 75.1 % to 60 %");
  });

  test("doubling that levain at one hydration takes the water to 230 g (the same forum)", () => {
    const loaf = formulaOf([
      ["Flour", "flour", 450],
      ["Water", "water", 250],
      ["Levain", "levain 100%", 200],
    ]);
    // 450 + 50 of flour at 250 + 50 of water were 60 %.
    const { formula } = change(loaf, "hydration", { counted: PLAIN, wanted: "60%" });
    expect(amount(formula, "Water", 450)).toBeCloseTo(230, 9);
  });

  test("eggs bring water (a baking school's worksheet, LEH 9468: 350 oz at 56 %, 10 oz of egg at 75 %: 188.5 oz)", () => {
    const rolls = formulaOf([
      ["Flour", "flour", 350],
      ["Water", "water", 100],
      ["Whole egg", "egg", 10],
    ]);
    const own = larderOf(["ingredient", "water"], ["whole egg", 0.75]);
    const { formula } = change(rolls, "hydration", { counted: EFFECTIVE, wanted: "56" }, own);
    expect(amount(formula, "Water", 350)).toBeCloseTo(188.5, 9);
  });

  test("eggs and sour cream instead of water (a cooking forum: 388.5 g keep 65 %; egg 76, sour cream 73 % of water)", () => {
    const dough = formulaOf([
      ["Flour", "flour", 1000],
      ["Water", "water", 300],
      ["Whole egg", "egg", 200],
      ["Sour cream", "dairy", 150],
    ]);
    const own = larderOf(["ingredient", "water"], ["whole egg", 0.76], ["sour cream", 0.73]);
    const { formula } = change(dough, "hydration", { counted: EFFECTIVE, wanted: "65" }, own);
    expect(amount(formula, "Water", 1000)).toBeCloseTo(388.5, 9);
  });

  test("water and ice change in proportion, and a formula without water gets a row of it", () => {
    const iced = formulaOf([
      ["Flour", "flour", 100],
      ["Water", "water", 45],
      ["Ice", "ice", 15],
    ]);
    const { formula, rows } = change(iced, "hydration", { counted: PLAIN, wanted: "64" });
    expect(amount(formula, "Water", 100)).toBeCloseTo(48, 9);
    expect(amount(formula, "Ice", 100)).toBeCloseTo(16, 9);
    expect([...rows]).toEqual([1, 2]);
    const dry = change(formulaOf([["Flour", "flour", 100]]), "hydration", { counted: PLAIN, wanted: "60" });
    expect(dry.formula.rows.map(({ name, type }) => `${name} ${type}`)).toEqual(["Flour flour", "Water water"]);
  });

  test("what cannot be is refused with what would do", () => {
    const brioche = formulaOf([
      ["Flour", "flour", 100],
      ["Whole egg", "egg", 60],
      ["Water", "water", 5],
    ]);
    // 60 × 0.7615 = 45.69 of water in the egg (USDA SR28 01123).
    expect(refusalOf(() => change(brioche, "hydration", { counted: EFFECTIVE, wanted: "40" }))).toBe(
      "Eggs, milk, butter, fresh yeast and preferments bring 45.69 % of water by themselves, more than 40 %. Enter a higher hydration, or use less of them.",
    );
    const levain = formulaOf([
      ["Flour", "flour", 100],
      ["Levain", "levain 100%", 80],
      ["Water", "water", 20],
    ]);
    expect(refusalOf(() => change(levain, "hydration", { counted: PLAIN, wanted: "25" }))).toMatch(
      /^That hydration takes .* % of water away, and only 14.29 % is poured in/,
    );
    expect(refusalOf(() => change(levain, "hydration", { counted: PLAIN, wanted: "" }))).toBe(
      "Hydration wanted (%) is blank. Enter a percentage such as 68.",
    );
    expect(refusalOf(() => change(levain, "hydration", { counted: PLAIN, wanted: "6.5" }))).toBe(
      "Hydration wanted (%) is 6.5 %. Enter at least 20 %.",
    );
  });
});

describe("salt, sugar and fat", () => {
  const tartine = formulaOf([
    ["White flour", "flour", 900],
    ["Wholemeal", "flour", 100],
    ["Levain", "levain 100%", 200],
    ["Water", "water", 750],
    ["Salt", "salt", 20],
  ]);

  test("2 % of all flour, the levain's counted (a forum's question on a levain loaf: 22.0 g, not 20)", () => {
    const { formula, line } = change(tartine, "salt", { wanted: "2" });
    expect(amount(formula, "Salt", 1000)).toBeCloseTo(22, 9);
    expect(amount(formula, "Water", 1000)).toBeCloseTo(750, 9);
    expect(line).toBe("Salt 1.82 % to 2 %");
  });

  test("salt of 1.75 % on 40 lb of flour is 0.7 lb (a baking school's worksheet, LEH)", () => {
    const dough = formulaOf([
      ["Flour", "flour", 40],
      ["Water", "water", 24],
      ["Salt", "salt", 0.8],
    ]);
    expect(amount(change(dough, "salt", { wanted: "1.75" }).formula, "Salt", 40)).toBeCloseTo(0.7, 9);
  });

  // By hand: so many per cent of all flour, that inside a levain counted.
  test.each([
    [
      "sugar",
      "a lean dough",
      [
        ["Flour", "flour", 500],
        ["Sugar", "sugar", 10],
      ],
      "4",
      20,
    ],
    [
      "sugar",
      "a sweet dough of two flours",
      [
        ["Flour", "flour", 600],
        ["Rye", "flour", 200],
        ["Sugar", "sugar", 80],
      ],
      "12.5",
      100,
    ],
    [
      "sugar",
      "a levain dough",
      [
        ["Flour", "flour", 900],
        ["Levain", "levain 100%", 200],
        ["Sugar", "sugar", 50],
      ],
      "8",
      80,
    ],
    [
      "fat",
      "a lean dough",
      [
        ["Flour", "flour", 500],
        ["Butter", "fat", 10],
      ],
      "6",
      30,
    ],
    [
      "fat",
      "a brioche",
      [
        ["Flour", "flour", 800],
        ["Butter", "fat", 400],
      ],
      "35",
      280,
    ],
    [
      "fat",
      "a levain dough",
      [
        ["Flour", "flour", 950],
        ["Levain", "levain 100%", 100],
        ["Butter", "fat", 60],
      ],
      "10",
      100,
    ],
  ] as const)("%s of %s", (name, _of, lines, wanted, grams) => {
    const before = formulaOf(lines);
    const { formula, rows } = change(before, name, { wanted });
    const row = lines.length - 1;
    expect((formula.rows[row]?.amount ?? 0) * before.batch.amount).toBeCloseTo(grams, 9);
    expect([...rows]).toEqual([row]);
  });

  test("several rows of one kind change in proportion, and a missing one comes in (by hand)", () => {
    const sweet = formulaOf([
      ["Flour", "flour", 100],
      ["Sugar", "sugar", 6],
      ["Honey", "sugar", 2],
    ]);
    const { formula } = change(sweet, "sugar", { wanted: "12" });
    expect([amount(formula, "Sugar", 100), amount(formula, "Honey", 100)]).toEqual([
      expect.closeTo(9, 9),
      expect.closeTo(3, 9),
    ]);
    const rich = change(sweet, "fat", { wanted: "10", ingredient: "Unsalted butter" }).formula;
    expect(rich.rows[3]).toMatchObject({ name: "Unsalted butter", type: "fat", amount: 0.1 });
    expect(change(rich, "fat", { wanted: "0" }).formula.rows[3]?.amount).toBe(0);
  });
});
