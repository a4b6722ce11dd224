import { describe, expect, test } from "vitest";
import { amount, change, formulaOf, refusalOf } from "./support.ts";

const FIGURE = "a figure of the mill";
const LABEL = "the packet's label";
const dough = formulaOf([
  ["Flour", "flour", 1000],
  ["Water", "water", 650],
  ["Salt", "salt", 20],
]);
const gluten = "Vital wheat gluten";

describe("protein with vital gluten", () => {
  // By mass balance on top of the flour: F × (wanted − now) ÷ (0.7516 − wanted), gluten as in USDA SR28 48052.
  test.each([
    ["1000 g at 10.33 to 12.5 % (USDA SR28 20081)", "10.33", "12.5", 34.631],
    ["1000 g at 10 to 12 %", "10", "12", 31.666],
    ["1000 g at 12.7 to 14 % (a forum's question)", "12.7", "14", 21.255],
  ])("%s", (_source, now, wanted, grams) => {
    const { formula } = change(dough, "protein", { known: FIGURE, now, wanted });
    expect(amount(formula, gluten, 1000)).toBeCloseTo(grams, 2);
    // Gluten takes 1.5 times its weight of water (Baker's Dictionary; a baking school's rule of 2 % gluten and 3 % water).
    expect(amount(formula, "Water", 1000)).toBeCloseTo(650 + 1.5 * amount(formula, gluten, 1000), 9);
    expect(amount(formula, "Flour")).toBe(1);
  });

  test("N × 6.25 and dry matter read as the mills' figure (12.5 % is 11.4 %; 13.953 % dry is 12 %)", () => {
    const as = (now: string, factor: string, moisture: string) =>
      amount(change(dough, "protein", { known: FIGURE, now, factor, moisture, wanted: "14" }).formula, gluten, 1000);
    const [mill, label] = ["N × 5.7 (mills, US labels)", "N × 6.25 (EU and UK labels)"];
    const [asIs, dry] = ["as it is, about 14 % moisture", "dry matter"];
    expect(as("12.5", label, asIs)).toBeCloseTo(as("11.4", mill, asIs), 6);
    expect(as("13.953488372", mill, dry)).toBeCloseTo(as("12", mill, asIs), 6);
  });

  test("an EU label counts N × 6.25 and a US label N × 5.7 where nothing else is said (Regulation (EU) 1169/2011, annex I)", () => {
    const asked = { known: LABEL, label: "11", wanted: "13" };
    // 11 × 5.7 ÷ 6.25 is 10.032: by hand, (13 − 10.032) ÷ (75.16 − 13).
    expect(amount(change(dough, "protein", { ...asked, law: "EU" }).formula, gluten)).toBeCloseTo(0.02968 / 0.6216, 9);
    expect(amount(change(dough, "protein", { ...asked, law: "UK" }).formula, gluten)).toBeCloseTo(0.02968 / 0.6216, 9);
    expect(amount(change(dough, "protein", { ...asked, law: "US", serving: "100" }).formula, gluten)).toBeCloseTo(
      0.02 / 0.6216,
      9,
    );
  });

  test("a label is a range: 11 g per 100 g is 10.5 to 11.5 g (whole grams from 10 on in the EU)", () => {
    const asked = { known: LABEL, label: "11", law: "EU", wanted: "13", factor: "N × 5.7 (mills, US labels)" };
    const { formula, notes } = change(dough, "protein", asked);
    expect(notes[2]).toMatch(/^The label allows 10.5 % to 11.5 %/);
    // (13 − 11) ÷ (75.16 − 13), the middle of the range.
    expect(amount(formula, gluten)).toBeCloseTo(0.02 / 0.6216, 9);
    expect(amount(change(dough, "protein", { ...asked, edge: "low" }).formula, gluten)).toBeCloseTo(0.025 / 0.6216, 9);
    expect(refusalOf(() => change(dough, "protein", { known: LABEL, label: "", law: "EU", wanted: "13" }))).toMatch(
      /is blank/,
    );
    expect(refusalOf(() => change(dough, "protein", { known: LABEL, label: "4", law: "US", wanted: "13" }))).toMatch(
      /serving/,
    );
  });

  test("gluten makes no flour weaker", () => {
    expect(refusalOf(() => change(dough, "protein", { known: FIGURE, now: "13", wanted: "11" }))).toMatch(
      /^Protein wanted \(%\) is 11 %; gluten can bring this flour to more than its 13 %/,
    );
  });
});

describe("two flours", () => {
  test("a blend of 13.07 and 8.20 % to 11 % is 57.49 and 42.51 % (by mass balance, USDA SR28)", () => {
    const asked = { from: "Flour", a: "13.07", to: "Cake flour", b: "8.2", wanted: "11" };
    const { formula } = change(dough, "blend", asked);
    expect(amount(formula, "Flour", 100)).toBeCloseTo(57.49, 2);
    expect(amount(formula, "Cake flour", 100)).toBeCloseTo(42.51, 2);
    expect(refusalOf(() => change(dough, "blend", { ...asked, wanted: "14" }))).toMatch(
      /a blend lies between its flours/,
    );
  });

  // By mass balance: (12 − 9) ÷ (13 − 9) and the like; a third flour of the formula stays.
  test.each([
    ["three quarters of a strong flour", [["Strong", "flour", 100]], "13", "9", "12", [75, 25]],
    [
      "a half, beside rye that stays",
      [
        ["Strong", "flour", 80],
        ["Rye", "flour", 20],
      ],
      "14",
      "10",
      "12",
      [40, 40],
    ],
    ["a weak flour made stronger", [["Strong", "flour", 100]], "10", "15", "11", [80, 20]],
  ] as const)("%s", (_says, lines, a, b, wanted, [from, to]) => {
    const { formula } = change(formulaOf(lines), "blend", { from: "Strong", a, to: "Other flour", b, wanted });
    expect([amount(formula, "Strong", 100), amount(formula, "Other flour", 100)]).toEqual([
      expect.closeTo(from, 9),
      expect.closeTo(to, 9),
    ]);
  });

  test.each([
    [
      "10 % rye into a lean dough",
      [
        ["White", "flour", 100],
        ["Water", "water", 62],
      ],
      "10",
      "",
      [90, 10, 62],
    ],
    [
      "30 % spelt with water of its own",
      [
        ["White", "flour", 100],
        ["Water", "water", 60],
      ],
      "30",
      "5",
      [70, 30, 61.5],
    ],
    [
      "of 90 % white another 15 %",
      [
        ["White", "flour", 90],
        ["Rye", "flour", 10],
        ["Water", "water", 70],
      ],
      "15",
      "20",
      [75, 15, 73],
    ],
  ] as const)("%s (by hand)", (_says, lines, share, extra, [white, other, water]) => {
    const { formula } = change(formulaOf(lines), "flour", { from: "White", to: "Spelt", share, extra });
    expect(["White", "Spelt", "Water"].map((name) => amount(formula, name, 100))).toEqual(
      [white, other, water].map((one) => expect.closeTo(one, 9)),
    );
  });

  test("a fifth of wholemeal with water of its own (by hand: 200 g and 20 g of water)", () => {
    const asked = { from: "Flour", to: "Wholemeal", share: "20", extra: "10" };
    const { formula } = change(dough, "flour", asked);
    expect([
      amount(formula, "Flour", 1000),
      amount(formula, "Wholemeal", 1000),
      amount(formula, "Water", 1000),
    ]).toEqual([expect.closeTo(800, 9), expect.closeTo(200, 9), expect.closeTo(670, 9)]);
    const back = change(formula, "flour", { from: "Wholemeal", to: "Flour", share: "20", extra: "-10" }).formula;
    expect(back.rows.map(({ name, amount: of }) => [name, Number(of.toFixed(9))])).toEqual(
      dough.rows.map(({ name, amount: of }) => [name, of]),
    );
    expect(refusalOf(() => change(formula, "flour", { ...asked, share: "90" }))).toBe(
      "Of Flour there is 80 % of flour, less than 90 %. Enter at most 80 %.",
    );
    expect(refusalOf(() => change(dough, "flour", { ...asked, to: "Salt" }))).toMatch(/is no flour/);
  });
});
