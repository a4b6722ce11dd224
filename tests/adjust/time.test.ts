import { describe, expect, test } from "vitest";
import { amount, change, formulaOf, refusalOf } from "./support.ts";

const LEAN = formulaOf(
  [
    ["Flour", "flour", 100],
    ["Water", "water", 65],
    ["Salt", "salt", 2],
    ["Fresh yeast", "yeast", 2],
  ],
  {
    temp: 24,
    steps: [
      { name: "Mix", minutes: 15, temp: null, how: "" },
      { name: "First rise", minutes: 120, temp: null, how: "" },
      { name: "Shape", minutes: 20, temp: null, how: "" },
      { name: "Final proof", minutes: 60, temp: 27, how: "" },
      { name: "Bake", minutes: 35, temp: 230, how: "" },
    ],
  },
);

describe("yeast for another time", () => {
  test("the inverse rule is the low edge of less time (derived: 2 % for 3 h, 4 % for half of it)", () => {
    const { formula, notes, line } = change(LEAN, "time", { hours: "1.5", edge: "low" });
    expect(amount(formula, "Fresh yeast", 100)).toBeCloseTo(4, 9);
    // 2 × 2 ^ 1.3 and 2 × 2 ^ 1.7, by hand.
    expect(notes[0]).toContain("low 4 %, middle 4.92 %, high 6.5 % of flour");
    expect(line).toBe("Yeast for 3 h to 1.5 h");
  });

  // By hand: the inverse rule is hours now ÷ hours wanted; the other edges are that to the power of 1.3 and 1.7.
  test.each([
    [
      "pizza, 8 h to 6 h",
      [
        ["Flour", "flour", 100],
        ["Water", "water", 60],
        ["Salt", "salt", 2.5],
        ["Instant yeast", "yeast", 0.3],
      ],
      "8",
      "6",
      "low",
      "Instant yeast",
      0.4,
    ],
    [
      "sweet dough, 2 h to 4 h",
      [
        ["Flour", "flour", 100],
        ["Sugar", "sugar", 12],
        ["Water", "water", 50],
        ["Fresh yeast", "yeast", 5],
      ],
      "2",
      "4",
      "high",
      "Fresh yeast",
      2.5,
    ],
    [
      "rye, 2 h to 1 h",
      [
        ["Rye flour", "flour", 100],
        ["Water", "water", 72],
        ["Fresh yeast", "yeast", 1],
      ],
      "2",
      "1",
      "low",
      "Fresh yeast",
      2,
    ],
  ] as const)("%s", (_what, rows, hours_now, hours, edge, name, wanted) => {
    const { formula } = change(formulaOf(rows), "time", { hours_now, hours, temp_now: "", temp: "", edge });
    expect(amount(formula, name, 100)).toBeCloseTo(wanted, 9);
    for (const [other, type, part] of rows)
      if (type !== "yeast") expect(amount(formula, other, 100)).toBeCloseTo(part, 9);
  });

  test("three degrees warmer take 1 ÷ 1.331 of the yeast at a tenth a degree (a trade article, bakemag.com 836)", () => {
    const { formula } = change(LEAN, "time", { hours: "3", temp: "27", edge: "low" });
    expect(amount(formula, "Fresh yeast", 100)).toBeCloseTo(2 / 1.331, 9);
  });

  test("°F say the same (24 and 27 °C are 75.2 and 80.6 °F)", () => {
    const inFahrenheit = { ...LEAN, temp: 75.2, options: { ...LEAN.options, temperature: "F" as const } };
    const { formula } = change(inFahrenheit, "time", { hours: "3", temp: "80.6", edge: "low" });
    expect(amount(formula, "Fresh yeast", 100)).toBeCloseTo(2 / 1.331, 9);
  });

  test("12 hours instead of 1.5 are no matter of the rule (a blog's sixth of a spoon, A Year in Bread 2009)", () => {
    expect(refusalOf(() => change(LEAN, "time", { hours_now: "1.5", hours: "12" }))).toMatch(
      /^Hours wanted is 12, 8 times hours now\b.*retard/,
    );
    expect(refusalOf(() => change(LEAN, "time", { hours: "3", temp: "4" }))).toMatch(
      /^Dough temperature wanted \(°c\) is 4 °C/i,
    );
  });

  test("a levain's share follows as an estimate; flour and water of the whole stay", () => {
    const loaf = formulaOf(
      [
        ["Flour", "flour", 900],
        ["Water", "water", 650],
        ["Levain", "levain 100%", 200],
      ],
      { frame: "all flour" },
    );
    const { formula, notes, cautions } = change(loaf, "time", {
      hours_now: "4",
      hours: "2",
      temp_now: "",
      temp: "",
      edge: "low",
    });
    // 10 % becomes 20 % of 1000 g of flour; water is 750 g in all.
    expect(amount(formula, "Levain", 1000)).toBeCloseTo(400, 9);
    expect(amount(formula, "Flour", 1000)).toBeCloseTo(800, 9);
    expect(amount(formula, "Water", 1000)).toBeCloseTo(550, 9);
    expect(notes[0]).toMatch(/^Estimate: /);
    expect(cautions).toEqual([]);
  });

  // By hand, of 1000 g of flour: 20 % in 3 h are 30 % in 2 h, 15 % in 4 h are 20 % in 3 h; all flour and all water stay.
  test.each([
    [
      "a rye sour",
      [
        ["Rye flour", "flour", 800],
        ["Water", "water", 520],
        ["Rye sour", "levain 100%", 400],
      ],
      "3",
      "2",
      "Rye flour",
      700,
      "Rye sour",
      600,
      420,
    ],
    [
      "a stiff levain",
      [
        ["Flour", "flour", 850],
        ["Water", "water", 560],
        ["Stiff levain", "levain 60%", 240],
      ],
      "4",
      "3",
      "Flour",
      800,
      "Stiff levain",
      320,
      530,
    ],
  ] as const)("%s", (_what, rows, hours_now, hours, flour, ofFlour, levain, ofLevain, water) => {
    const loaf = formulaOf(rows, { frame: "all flour" });
    const { formula } = change(loaf, "time", { hours_now, hours, temp_now: "", temp: "", edge: "low" });
    expect(amount(formula, flour, 1000)).toBeCloseTo(ofFlour, 9);
    expect(amount(formula, levain, 1000)).toBeCloseTo(ofLevain, 9);
    expect(amount(formula, "Water", 1000)).toBeCloseTo(water, 9);
  });

  test("egg and dairy stay cold by local rule, and what nothing raises is refused", () => {
    const rich = formulaOf([
      ["Flour", "flour", 100],
      ["Milk", "dairy", 60],
      ["Instant yeast", "yeast", 1],
    ]);
    const asked = { hours_now: "3", hours: "2" };
    expect(change(rich, "time", asked).cautions[0]).toMatch(/^Keep dough with egg or dairy cold/);
    expect(refusalOf(() => change(formulaOf([["Flour", "flour", 100]]), "time", asked))).toMatch(
      /no yeast and no levain/,
    );
  });

  test("the preferment's own yeast stays, and must be there", () => {
    const poolish = { ...LEAN, setApart: { sort: "poolish" as const, share: 0.3, hydration: 1, yeast: 0.05 } };
    expect(refusalOf(() => change(poolish, "time", { hours: "6", edge: "low", temp: "24" }))).toBe(
      "The poolish takes 1.5 % of yeast, and the formula has 0.62 %. Choose less yeast for it.",
    );
  });
});

describe("overnight", () => {
  test("a step in the cold, no figure of yeast, and one tray first", () => {
    const { formula, notes, rows, line } = change(LEAN, "retard", { hours: "12", temp: "4" });
    expect(formula.steps.map(({ name, minutes, temp }) => [name, minutes, temp])).toEqual([
      ["Mix", 15, null],
      ["First rise", 120, null],
      ["Shape", 20, null],
      ["Retard", 720, 4],
      ["Final proof", 60, 27],
      ["Bake", 35, 230],
    ]);
    expect(formula.rows).toEqual(LEAN.rows);
    expect(rows.size).toBe(0);
    expect(notes[0]).toMatch(/Times only.*no yeast is worked out\. Bake one tray first/);
    expect(line).toBe("Retard 12 h at 4 °C");
  });

  test.each([
    [
      "pizza in balls",
      ["Mix", "Bulk fermentation", "Divide and round", "Bake"],
      "24",
      "4",
      "Mix, Bulk fermentation, Divide and round, Retard, Bake",
    ],
    [
      "buns",
      ["Mix", "Bulk fermentation", "Divide and round", "Shape", "Final proof", "Bake", "Cool"],
      "10",
      "3",
      "Mix, Bulk fermentation, Divide and round, Shape, Retard, Final proof, Bake, Cool",
    ],
  ] as const)("%s: the cold stands before the proof, or before the oven", (_what, names, hours, temp, wanted) => {
    const steps = names.map((name) => ({ name, minutes: 30, temp: null, how: "" }));
    const { formula } = change({ ...LEAN, steps }, "retard", { hours, temp });
    expect(formula.steps.map(({ name }) => name).join(", ")).toBe(wanted);
    expect(formula.steps.find(({ name }) => name === "Retard")?.minutes).toBe(Number(hours) * 60);
    expect(formula.rows).toEqual(LEAN.rows);
  });

  test("asked again it is the same step at another time; 39.2 °F is 4 °C; 12 °C is no retarder", () => {
    const first = change(LEAN, "retard", { hours: "12", temp: "4" }).formula;
    const { formula } = change(first, "retard", { hours: "16", temp: "3", before: "Bake" });
    expect(formula.steps.map(({ name }) => name).join(" ")).toBe("Mix First rise Shape Final proof Retard Bake");
    const inFahrenheit = { ...LEAN, options: { ...LEAN.options, temperature: "F" as const } };
    expect(change(inFahrenheit, "retard", { hours: "12", temp: "39" }).line).toBe("Retard 12 h at 39 °F");
    expect(refusalOf(() => change(LEAN, "retard", { hours: "12", temp: "12" }))).toBe(
      "Retarder (°C) is 12; it cannot be above 10.",
    );
    const rich = {
      ...LEAN,
      rows: [...LEAN.rows, { ...LEAN.rows[0], id: 9, type: "egg", kind: { word: "egg", flour: 0, water: 0 } } as never],
    };
    expect(change(rich, "retard", { hours: "12", temp: "4" }).cautions).toHaveLength(1);
    const bare = formulaOf([["Flour", "flour", 100]]);
    expect(change(bare, "retard", { hours: "12", temp: "4" }).formula.steps).toHaveLength(1);
  });
});
