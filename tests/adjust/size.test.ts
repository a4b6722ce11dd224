import { describe, expect, test } from "vitest";
import { changesFor } from "../../shared/adjust/changes.ts";
import type { Formula } from "../../shared/adjust/formula.ts";
import { change, formulaOf, refusalOf } from "./support.ts";

const INCHES = { weight: "g", temperature: "C", length: "in" } as const;
const size = (name: string, pieces: number, baked: number, loss = 0.1) => ({ name, pieces, baked, loss, price: null });

const cake = (shape: "round" | "box", sizes: number[], capacity: number): Formula =>
  formulaOf(
    [
      ["Flour", "flour", 100],
      ["Water", "water", 60],
    ],
    {
      options: INCHES,
      tin: { shape, sizes, capacity },
      sizes: [size("cake", 4, 900)],
      batch: { of: "dough", amount: 4000 },
      by: "pieces",
    },
  );

/** An inch is 2.54 cm. */
const cubic = (inches: number) => inches * 2.54 ** 3;
const roundOf = (diameter: number, depth: number) => cubic((Math.PI / 4) * diameter ** 2 * depth);

describe("another tin at the same fill", () => {
  test.each([
    ["8 × 2 to 10 × 3 inches round (cocoandme.com, October 2010): 2.344 times", [8, 2], "10; 3", 2.34375],
    ["8 × 2 to 10 × 2 (the same page): 1.5625 times", [8, 2], "10; 2", 1.5625],
    ["12 to 9 inches at one depth (a parents' forum): 0.5625 times", [12, 3], "9; 3", 0.5625],
  ])("%s", (_source, now, sizes, times) => {
    const formula = cake("round", now, roundOf(now[0] ?? 0, now[1] ?? 0));
    const after = change(formula, "tin", { shape: "round", sizes }).formula;
    expect(after.sizes[0]?.baked).toBeCloseTo(900 * times, 3);
    expect(after.batch.amount).toBeCloseTo(4000 * times, 3);
    expect(after.rows).toEqual(formula.rows);
  });

  test("a square for a round of 9 inches: 8 × 8 is 0.6 % larger (64 ÷ 63.62, by area)", () => {
    const after = change(cake("round", [9, 2], roundOf(9, 2)), "tin", { shape: "box", sizes: "8; 8; 2" }).formula;
    expect(after.sizes[0]?.baked).toBeCloseTo((900 * 64) / 63.617, 1);
    expect(after.tin).toMatchObject({ shape: "box", sizes: [8, 8, 2] });
  });

  test("scaled to dough the amount stays; without a tin, or with sizes that are none, it is refused", () => {
    const scaled: Formula = { ...cake("round", [8, 2], roundOf(8, 2)), by: "dough" };
    const { formula, parts } = change(scaled, "tin", { shape: "round", sizes: "10; 2" });
    expect(formula.batch.amount).toBe(4000);
    expect(parts).toEqual(["tin", "sizes"]);
    expect(refusalOf(() => change({ ...scaled, tin: null }, "tin", { shape: "round", sizes: "10; 2" }))).toMatch(
      /no tin yet/,
    );
    expect(refusalOf(() => change(scaled, "tin", { shape: "box", sizes: "" }))).toMatch(/length; width; depth/);
    expect(refusalOf(() => change(scaled, "tin", { shape: "box", sizes: "10; x" }))).toMatch(/no length/);
    expect(refusalOf(() => change(scaled, "tin", { shape: "box", sizes: "10; 8" }))).toMatch(/depth/);
  });
});

describe("another weight of a piece", () => {
  const order: Formula = {
    ...cake("box", [8, 8, 2], 2000),
    sizes: [size("large", 10, 900), size("small", 20, 450)],
    batch: { of: "dough", amount: 20_000 },
  };

  test("the dough follows the order (by hand: 10 × 900 + 20 × 450 to 10 × 720 + 20 × 450, nine tenths)", () => {
    const { formula, line } = change(order, "piece", { size: "large", weight: "720" });
    expect(formula.batch.amount).toBeCloseTo(18_000, 6);
    expect(formula.sizes[1]).toEqual(order.sizes[1]);
    expect(line).toBe("large 900 g to 720 g baked");
  });

  test("scaled to trays it follows as well (by hand: 540 g for 450 g on 20 of them, 18 to 19.8)", () => {
    const { formula } = change({ ...order, by: "trays" }, "piece", { size: "small", weight: "540" });
    expect(formula.batch.amount).toBeCloseTo((20_000 * 19.8) / 18, 6);
  });

  test("a loaf of 300 g where 314 g of dough baked to 267 g is scaled at 352.8 g (a baker's forum)", () => {
    const loaf = {
      ...order,
      sizes: [size("loaf", 1, 267, 1 - 267 / 314)],
      batch: { of: "dough" as const, amount: 314 },
    };
    expect(change(loaf, "piece", { size: "loaf", weight: "300" }).formula.batch.amount).toBeCloseTo(352.8, 1);
  });

  test("scaled to dough only the piece changes", () => {
    expect(change({ ...order, by: "dough" }, "piece", { size: "small", weight: "400" }).formula.batch.amount).toBe(
      20_000,
    );
    expect(refusalOf(() => change({ ...order, sizes: [] }, "piece", { weight: "400" }))).toMatch(/no sizes yet/);
  });
});

describe("one ingredient is short", () => {
  const recipe = formulaOf([
    ["Flour", "flour", 10],
    ["Water", "water", 6],
    ["Butter", "fat", 2],
  ]);

  test("4 kg of butter in the place of 5 kg for 25 kg of flour make four fifths (derived)", () => {
    const { formula, line } = change({ ...recipe, batch: { of: "flour", amount: 25 } }, "short", {
      ingredient: "Butter",
      there: "4",
    });
    expect(formula.batch.amount).toBeCloseTo(20, 9);
    expect(line).toBe("As much as 4 g of Butter makes: 80 % of the order");
  });

  // By hand: what is there over what the whole takes, and that much of the order.
  test.each([
    // 17 100 of dough hold 10 000 of flour; 7 500 make three quarters.
    [
      "baguette",
      [
        ["Flour", "flour", 100],
        ["Water", "water", 68],
        ["Salt", "salt", 2],
        ["Yeast", "yeast", 1],
      ],
      "dough",
      17_100,
      "Flour",
      "7500",
      12_825,
    ],
    // 10 000 of flour are six parts of rye to four of wheat; 4 500 of 6 000 make three quarters.
    [
      "rye and wheat",
      [
        ["Rye flour", "flour", 60],
        ["White flour", "flour", 40],
        ["Water", "water", 75],
      ],
      "flour",
      10_000,
      "Rye flour",
      "4500",
      7_500,
    ],
    // 22 000 of dough are 220 parts, 45 of them egg: 4 500 of egg; 1 125 make a quarter.
    [
      "enriched bun",
      [
        ["Flour", "flour", 100],
        ["Egg", "egg", 45],
        ["Butter", "fat", 50],
        ["Water", "water", 25],
      ],
      "dough",
      22_000,
      "Egg",
      "1125",
      5_500,
    ],
  ] as const)("%s", (_what, rows, of, amount, ingredient, there, left) => {
    const whole: Formula = { ...formulaOf(rows.map((row) => [...row])), batch: { of, amount } };
    const { batch } = change(whole, "short", { ingredient, there }).formula;
    expect(batch.of).toBe(of);
    expect(batch.amount).toBeCloseTo(left, 6);
  });

  test("an order of pieces becomes one of dough; what is enough is refused", () => {
    const order: Formula = { ...recipe, by: "pieces", batch: { of: "dough", amount: 18 } };
    expect(change(order, "short", { ingredient: "Flour", there: "5" }).formula).toMatchObject({
      by: "dough",
      batch: { of: "dough", amount: expect.closeTo(9, 9) },
    });
    expect(refusalOf(() => change(order, "short", { ingredient: "Flour", there: "12" }))).toBe(
      "Flour is enough: the dough takes 10 g, and there is 12 g.",
    );
  });
});

test.each([
  ["too fast", "time"],
  ["overnight", "retard,preferment"],
  ["weaker", "hydration,protein,blend"],
  ["milk powder", "swap"],
  ["poolish", "preferment"],
  ["smaller", "tin,piece,round"],
  ["pizza", "round"],
  ["croissant", "roll-in"],
  ["cheaper", "swap"],
  ["eggs", "swap"],
  ["saltier", "salt"],
])("“%s” finds %s", (search, names) => {
  expect(
    changesFor(search)
      .map(({ name }) => name)
      .join(","),
  ).toBe(names);
});

describe("a flat round", () => {
  // Breakwater flat of the template: 25 and 32 cm across at 0.4 g/cm², 196.350 and 321.699 g by hand.
  const flat = (more: Partial<Formula> = {}): Formula => {
    const round = (name: string, pieces: number, diameter: number) => ({
      ...size(name, pieces, 0, 0),
      baked: null,
      diameter,
    });
    return formulaOf(
      [
        ["Flour", "flour", 100],
        ["Water", "water", 60],
      ],
      {
        by: "pieces",
        perArea: 0.4,
        sizes: [round("small", 30, 25), round("large", 20, 32)],
        batch: { of: "dough", amount: 30 * 196.349541 + 20 * 321.699088 },
        ...more,
      },
    );
  };

  // By hand: the area grows with the square of the diameter.
  test.each([
    ["small", "30", 30 * 282.743339 + 20 * 321.699088],
    ["large", "28", 30 * 196.349541 + 20 * 246.300864],
    ["large", "40", 30 * 196.349541 + 20 * 502.654825],
  ])("%s of %s cm at the same weight per area, and back", (name, diameter, dough) => {
    const there = change(flat(), "round", { size: name, diameter, area: "" }).formula;
    expect(there.batch.amount).toBeCloseTo(dough, 3);
    expect(there.perArea).toBe(0.4);
    expect(there.rows).toEqual(flat().rows);
    const was = name === "small" ? "25" : "32";
    const back = change(there, "round", { size: name, diameter: was, area: "" }).formula;
    expect(back.batch.amount / flat().batch.amount).toBeCloseTo(1, 9);
    expect(back.sizes).toEqual(flat().sizes);
  });

  // Lehmann, Pizza Today, October 2019, and a trade forum's thread 13466, both with π as it is.
  test.each([
    [11, 12, "14", 14.972],
    [11, 12, "16", 19.556],
    [10, 12, "16", 17.778],
    [10, 12, "10", 6.944],
  ])("%d oz at %d inches: at %s inches %d oz", (ounces, diameter, other, wanted) => {
    const inches: Formula = flat({
      options: { weight: "oz", temperature: "F", length: "in" },
      perArea: ounces / ((Math.PI / 4) * diameter ** 2),
      sizes: [{ ...size("pie", 1, 0, 0), baked: null, diameter }],
      batch: { of: "dough", amount: ounces },
    });
    const { formula, line } = change(inches, "round", { size: "pie", diameter: other, area: "" });
    expect(formula.batch.amount).toBeCloseTo(wanted, 3);
    expect(line).toBe(`pie 12 to ${other} in across`);
  });

  test("thicker: all sizes weigh more; scaled to dough the amount stays", () => {
    const { formula, line } = change(flat(), "round", { size: "small", diameter: "", area: "0.5" });
    expect(formula.batch.amount / flat().batch.amount).toBeCloseTo(1.25, 9);
    expect(line).toBe("0.4 to 0.5 g/cm²");
    const kept = change(flat({ by: "dough" }), "round", { size: "small", diameter: "30", area: "" });
    expect([kept.formula.batch, kept.parts]).toEqual([flat().batch, ["sizes"]]);
  });

  test("a piece by weight and a round by diameter are told apart; nothing asked is refused", () => {
    expect(refusalOf(() => change(flat(), "piece", { weight: "90" }))).toMatch(/^These rounds go by their diameter/);
    expect(refusalOf(() => change(flat(), "tin", {}))).toMatch(/^These rounds go by their diameter and have no tin/);
    expect(refusalOf(() => change(cake("box", [8, 8, 2], 2000), "round", {}))).toMatch(
      /^These pieces go by their weight/,
    );
    expect(refusalOf(() => change(flat({ perArea: null }), "round", { diameter: "30" }))).toMatch(/not known yet/);
    expect(refusalOf(() => change(flat(), "round", { size: "small" }))).toBe(
      "Enter a diameter, a weight per area, or both.",
    );
    expect(refusalOf(() => change(flat(), "round", { size: "small", diameter: "2" }))).toMatch(/^Diameter \(cm\)/);
  });
});
