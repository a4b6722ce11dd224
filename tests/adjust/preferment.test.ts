import { describe, expect, test } from "vitest";
import { prefermented } from "../../shared/adjust/formula.ts";
import { amount, change, formulaOf, refusalOf } from "./support.ts";

const NONE = "none: all in one mix";

/** The whole dough of a poolish baguette: 900 + 468 of flour, 468 + 468 of water, 9.3 of yeast, 27 of salt (Wheat Montana, part 4 of a course). */
const baguette = formulaOf([
  ["Flour", "flour", 1368],
  ["Water", "water", 936],
  ["Instant yeast", "yeast", 9.3],
  ["Salt", "salt", 27],
]);

describe("a preferment in a row of its own", () => {
  test("the poolish of a published baguette is 936 g, and 900 and 468 g are left for the mix", () => {
    const asked = { sort: "poolish", share: String((100 * 468) / 1368), hydration: "100", yeast: "0.0641" };
    const { formula, notes, line } = change(baguette, "preferment", asked);
    expect(amount(formula, "Poolish", 1368)).toBeCloseTo(936, 6);
    expect(amount(formula, "Flour", 1368)).toBeCloseTo(900, 6);
    expect(amount(formula, "Water", 1368)).toBeCloseTo(468, 6);
    expect(amount(formula, "Salt", 1368)).toBeCloseTo(27, 9);
    expect(formula.frame).toBe("all flour");
    expect(formula.rows[4]?.type).toBe("poolish 100%");
    expect(line).toBe("Poolish with 34.2 % of the flour put in");
    expect(notes.some((one) => one.includes("goes into the poolish"))).toBe(true);
  });

  test("a levain of 20 % at 100 % in a dough of 70 %: 800 g of flour and 500 g of water stay (derived)", () => {
    const dough = formulaOf([
      ["Flour", "flour", 1000],
      ["Water", "water", 700],
    ]);
    const { formula, notes } = change(dough, "preferment", { sort: "levain", share: "20", hydration: "100" });
    expect([amount(formula, "Flour", 1000), amount(formula, "Water", 1000), amount(formula, "Levain", 1000)]).toEqual([
      expect.closeTo(800, 9),
      expect.closeTo(500, 9),
      expect.closeTo(400, 9),
    ]);
    expect(notes).toEqual([]);
  });

  test("20 % levain as prefermented flour (a forum's three meanings, the third): 400, 800 and 580 g", () => {
    const dough = formulaOf([
      ["Bread flour", "flour", 800],
      ["Wholemeal", "flour", 200],
      ["Water", "water", 780],
      ["Salt", "salt", 20],
    ]);
    const { formula } = change(dough, "preferment", { sort: "levain", share: "20", hydration: "100" });
    expect(amount(formula, "Levain", 1000)).toBeCloseTo(400, 9);
    expect(amount(formula, "Bread flour", 1000)).toBeCloseTo(640, 9);
    expect(amount(formula, "Wholemeal", 1000)).toBeCloseTo(160, 9);
    expect(amount(formula, "Water", 1000)).toBeCloseTo(580, 9);
  });

  test("out of a loaf in the frame of added flour: 1100 g of flour at 77.27 % (a forum's levain loaf)", () => {
    const loaf = formulaOf([
      ["White flour", "flour", 900],
      ["Wholemeal", "flour", 100],
      ["Levain", "levain 100%", 200],
      ["Water", "water", 750],
      ["Salt", "salt", 22],
    ]);
    const { formula } = change(loaf, "preferment", { sort: NONE });
    expect(formula.rows.map(({ name }) => name)).toEqual(["White flour", "Wholemeal", "Water", "Salt"]);
    expect(amount(formula, "Water")).toBeCloseTo(850 / 1100, 9);
    expect(amount(formula, "Salt")).toBeCloseTo(0.02, 9);
    expect(amount(formula, "White flour")).toBeCloseTo(0.9, 9);
  });

  test("a preferment that takes more water than there is (derived: 40 % at 125 % in a dough of 45 %)", () => {
    const stiff = formulaOf([
      ["Flour", "flour", 1000],
      ["Water", "water", 450],
    ]);
    expect(refusalOf(() => change(stiff, "preferment", { sort: "levain", share: "40", hydration: "125" }))).toBe(
      "A levain of that size and hydration takes 50 % of water away, and only 45 % is poured in. Ask for less of it.",
    );
    expect(refusalOf(() => change(stiff, "preferment", { sort: NONE }))).toMatch(/no preferment/);
  });

  test("another sort, share and hydration keep flour and water of the whole", () => {
    const first = change(baguette, "preferment", { sort: "poolish", share: "30" }).formula;
    const { formula, line } = change(first, "preferment", { sort: "biga", share: "40", hydration: "55" });
    // 1368 × 0.4 × 1.55, by hand.
    expect(amount(formula, "Biga", 1368)).toBeCloseTo(848.16, 6);
    expect(formula.rows).toHaveLength(5);
    expect(prefermented(formula)).toBeCloseTo(0.4, 9);
    expect(line).toBe("Poolish of 30 % at 100 % to biga of 40 % at 55 %");
    const { notes } = change(first, "preferment", { sort: "biga", share: "40", hydration: "90" });
    expect(notes[0]).toBe("A biga is usually made at 50 to 60 %.");
  });
});

describe("a preferment that a sheet sets apart", () => {
  const sheet = { ...baguette, block: "preferment" as const };

  test("the rows stay, and hold what goes into it", () => {
    const { formula, rows, parts } = change(sheet, "preferment", { sort: "poolish", share: "33.3" });
    expect(formula.setApart).toEqual({ sort: "poolish", share: 0.333, hydration: 1, yeast: 0.002 });
    expect(formula.rows).toEqual(baguette.rows);
    expect([rows.size, parts]).toEqual([0, ["set apart"]]);
    expect(prefermented(formula)).toBeCloseTo(0.333, 12);
    expect(change(formula, "preferment", { sort: NONE }).formula.setApart).toBeNull();
  });

  test("what the sheet cannot set apart, or the rows do not hold, is refused", () => {
    expect(refusalOf(() => change(sheet, "preferment", { sort: "levain", share: "20" }))).toMatch(
      /sets apart a poolish/,
    );
    expect(refusalOf(() => change(sheet, "preferment", { sort: "poolish", share: "80" }))).toBe(
      "The poolish takes 80 % of water, and the formula has 68.42 %. Choose a smaller share, or a stiffer preferment.",
    );
    expect(
      refusalOf(() => change({ ...baguette, block: "levain" }, "preferment", { sort: "biga", share: "20" })),
    ).toMatch(/sets a levain apart/);
  });
});
