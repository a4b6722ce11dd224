import { describe, expect, test } from "vitest";
import { compareFormulas } from "../../shared/adjust/comparison.ts";
import { allRows, type Formula, ROLL_IN, weightsOf } from "../../shared/adjust/formula.ts";
import { NO_MONEY } from "../../shared/adjust/money.ts";
import { savingsOf } from "../../shared/adjust/savings.ts";
import { NO_LARDER } from "../../shared/larder/larder.ts";
import { change, formulaOf, refusalOf } from "./support.ts";

/** Flour 1000, all of it 1722: the formula of the template, whose figures were worked out by hand. */
const croissant = (rollIn: Formula["rollIn"], dough = 2204.16): Formula =>
  formulaOf(
    [
      ["Strong white flour", "flour", 1000],
      ["Water", "water", 380],
      ["Whole milk", "dairy", 150],
      ["Sugar", "sugar", 100],
      ["Unsalted butter", "fat", 60],
      ["Instant yeast", "yeast", 12],
      ["Sea salt", "salt", 20],
    ],
    { style: "laminated", by: "pieces", batch: { of: "dough", amount: dough }, rollIn },
  );
const butter = { name: "Sheet butter", share: 0.28, of: "base" } as const;
const rolled = (formula: Formula): number => weightsOf(formula)[formula.rows.length] ?? Number.NaN;

describe("roll-in", () => {
  // By hand: 0.28 × 1722 is 482.16; 1722 ÷ 0.8 − 1722 is 430.5; 0.5 × 1000.
  test.each([
    ["28 % of the base dough", 482.16, { ...butter }],
    ["20 % of the finished dough", 430.5, { ...butter, share: 0.2, of: "finished" as const }],
    ["50 % of the flour", 500, { ...butter, share: 0.5, of: "flour" as const }],
  ])("%s weighs %d g for a kilogram of flour", (_says, grams, own) => {
    const formula = croissant(own, 1722 + grams);
    expect(rolled(formula)).toBeCloseTo(grams, 6);
    expect(weightsOf(formula)[0]).toBeCloseTo(1000, 6);
  });

  // Published shares of the base dough: 32.8 % (eoibakery.com.au), 28 % (sweetnapa), 26.0 % (bakefromscratch).
  test.each([
    ["32.8", 2204.16 / 1.328],
    ["28", 1722],
    ["26", 2204.16 / 1.26],
  ])("to %s %% of the base dough: the finished dough stays, and the base dough makes room", (share, base) => {
    const { formula, parts, rows } = change(croissant({ ...butter, share: 0.3 }), "roll-in", {
      fat: "Sheet butter",
      share,
      of: "base",
    });
    const all = weightsOf(formula).reduce((sum, one) => sum + one, 0);
    expect(all).toBeCloseTo(2204.16, 6);
    expect(all - rolled(formula)).toBeCloseTo(base, 6);
    expect([parts, [...rows]]).toEqual([["roll-in"], [ROLL_IN]]);
  });

  test("butter to margarine keeps its fat (USDA SR28: 81.11 and 80.71 %, water 17.94 and 16.52 %)", () => {
    const { formula, notes, line } = change(croissant({ ...butter, name: "Unsalted butter" }), "swap", {
      swap: "Unsalted butter (roll-in) → Margarine",
      part: "100",
    });
    expect(formula.rollIn?.share).toBeCloseTo((0.28 * 81.11) / 80.71, 12);
    expect(formula.rollIn?.name).toBe("Margarine");
    expect(formula.rows).toEqual(croissant(butter).rows);
    expect(line).toBe("Roll-in Unsalted butter is Margarine, 28 % of the base dough to 28.14 % of the base dough");
    // 0.48216 × 17.94 % and 0.48455 × 16.52 %.
    expect(notes.join(" ")).toMatch(/Water in the roll-in fat: 8\.65 % to 8 % of flour/);
  });

  test.each([
    [
      "by the swap",
      () => change(croissant(butter), "swap", { swap: "Sheet butter (roll-in) → Sunflower oil", part: "100" }),
    ],
    ["by its name", () => change(croissant(butter), "roll-in", { fat: "Rapeseed oil", share: "28", of: "base" })],
    [
      "by a name of the table",
      () => change(croissant(butter), "roll-in", { fat: "Olive oil", share: "28", of: "base" }),
    ],
  ])("butter to oil is refused, and why is said, %s", (_way, work) => {
    expect(refusalOf(work)).toBe(
      "Oil cannot be rolled in: it soaks into the dough, and no layers form. Choose a fat that is firm.",
    );
  });

  test("the dough's own butter may be oil: it makes no layers", () => {
    const { formula } = change(croissant(butter), "swap", { swap: "Unsalted butter → Sunflower oil", part: "100" });
    expect(formula.rows.find(({ name }) => name === "Sunflower oil")?.amount).toBeCloseTo(0.06 * 0.8111, 12);
    expect(formula.rollIn).toEqual(butter);
  });

  test("what is no fat, a share beyond the sheet's, half a swap and a sheet without a roll-in are refused", () => {
    const asks =
      (fat: string, share: string, of = "base") =>
      () =>
        change(croissant(butter), "roll-in", { fat, share, of });
    expect(refusalOf(asks("Sugar", "28"))).toMatch(/^"Sugar" is no fat/);
    expect(refusalOf(asks("", "28"))).toMatch(/is blank/);
    expect(refusalOf(asks("Margarine", "95", "finished"))).toBe("Share (%) is 95 %. Enter at most 90 %.");
    expect(
      refusalOf(() => change(croissant(butter), "swap", { swap: "Sheet butter (roll-in) → Margarine", part: "50" })),
    ).toMatch(/one fat/);
    expect(refusalOf(() => change(croissant(null), "roll-in", {}))).toMatch(/no roll-in fat/);
  });
});

describe("fat to a share of flour", () => {
  const OWN = "fat in the dough: the roll-in is left out";
  const ALL = "all fat: the roll-in is counted, and changes";

  // 6 % of the dough's own: 54, 44 and 64 % are left for the roll-in, over 1.722 of dough.
  test.each([
    ["60", 0.54 / 1.722],
    ["50", 0.44 / 1.722],
    ["70", 0.64 / 1.722],
  ])("all of it %s %%: the roll-in makes it up", (wanted, share) => {
    const { formula } = change(croissant(butter), "fat", { which: ALL, wanted });
    expect(formula.rollIn?.share).toBeCloseTo(share, 12);
    expect(allRows(formula).reduce((sum, { kind, amount }) => sum + (kind.word === "fat" ? amount : 0), 0)).toBeCloseTo(
      Number(wanted) / 100,
      12,
    );
  });

  test("the dough's own alone: the roll-in keeps its share of the base dough, and what that is of flour is said", () => {
    const { formula, notes, rows, line } = change(croissant(butter), "fat", { which: OWN, wanted: "10" });
    expect(formula.rollIn).toBe(croissant(butter).rollIn);
    expect(line).toBe("Fat in the dough 6 % to 10 %");
    expect(rows.has(ROLL_IN)).toBe(true);
    // 0.28 × 1.722 and 0.28 × 1.762.
    expect(notes.at(-1)).toBe("The roll-in fat stays 28 % of the base dough, which is 48.22 % to 49.34 % of flour.");
    expect(refusalOf(() => change(croissant(butter), "fat", { which: ALL, wanted: "5" }))).toMatch(
      /^The dough has 6 % of fat without the roll-in/,
    );
  });
});

test("before and after: the roll-in is a row, and counts in fat, cost, allergens and bars", () => {
  const before = croissant(butter);
  const after = change(before, "roll-in", { fat: "Margarine", share: "25", of: "base" }).formula;
  const money = { ...NO_MONEY, prices: { "sheet butter": 0.01, margarine: 0.004 } };
  const { rows, figures, parts } = compareFormulas(before, after, money, NO_LARDER);
  expect(rows.at(-1)).toMatchObject({ name: "Margarine (roll-in) (was Sheet butter)", isChanged: true });
  const figure = (label: string) => figures.find((one) => one.label === label);
  expect(figure("All fat, of flour")).toMatchObject({ before: "54.22 %", after: "49.05 %" });
  expect(figure("Fat in the dough")).toMatchObject({ before: "6 %", after: "6 %" });
  // 482.16 g at 0.01; 2204.16 ÷ 1.25 × 0.25 g at 0.004.
  expect(figure("Cost of ingredients")).toMatchObject({ before: "4.82", after: "1.76" });
  expect(parts[0].find(({ word }) => word === "fat")?.weight).toBeCloseTo(542.16, 6);
});

test("what margarine to roll in would bring (by hand: 998.917 g of flour and 484.025 g of margarine)", () => {
  const prices = { "strong white flour": 0.001, "sheet butter": 0.01, margarine: 0.004 };
  const saving = savingsOf(croissant(butter), { ...NO_MONEY, prices }, NO_LARDER).find(({ label }) =>
    label.startsWith("Sheet butter (roll-in) → "),
  );
  // 28 % × 81.11 ÷ 80.71 of the base dough; 2204.16 g stay.
  expect(saving).toMatchObject({ label: "Sheet butter (roll-in) → Margarine", before: expect.closeTo(5.8216, 9) });
  expect(saving?.after).toBeCloseTo(0.998917 + 484.025 * 0.004, 4);
});
