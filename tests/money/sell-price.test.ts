import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { down, expectCells, refusal, run } from "../functions/support.ts";

describe("BAKE_SELLPRICE", () => {
  test.each<[number, number | string, string, number, number, string]>([
    [0.99, 0.36, "food cost", 2.75, 1e-9, "a food cost lesson, toprecipes"],
    [3.5, "35%", "food cost", 10, 1e-9, "a course note: at a price of 10 and 35 % the cost is 3.50"],
    [1.2, 0.3, "food cost", 4, 1e-9, "derived: 1.20 ÷ 0.30"],
    [1.2, 0.7, "margin", 4, 1e-9, "derived: a cost share of 30 % is a margin of 70 %"],
    [1.2, 2.3333333333, "markup", 4, 1e-9, "derived: and a markup of 233.33 %"],
    [
      1.65,
      0.35,
      "margin",
      2.5385,
      5e-5,
      "derived: 0.80 + 0.50 + 0.30 + 0.05 of materials, labour, overhead and packing",
    ],
    [1.65, 0.35, "markup", 2.2275, 1e-9, "derived: the same as a markup"],
    [4, 0.25, "margin", 5.3333, 5e-5, "gauthmath 1813177295442949, its slip mended"],
    [4, 1 / 3, "mark-up", 5.3333, 5e-5, "gauthmath 1813177295442949: a third of markup is a quarter of margin"],
    [75, 0.25, "profit margin", 100, 1e-9, "seedingthegoodlife: $75 to $100 is a margin of 25 %"],
    [75, 1 / 3, "markup", 100, 1e-9, "seedingthegoodlife: and a markup of 33.3 %"],
  ])("%d at %s as %s is %d", (cost, share, meaning, price, within) => {
    expectCells(run("BAKE_SELLPRICE", cost, share, meaning), price, within);
  });
  test("a margin of 40 % is a markup of 66.667 %, a markup of 50 % a margin of 33.333 % (derived)", () => {
    expectCells(
      run("BAKE_SELLPRICE", 1, down(0.4, 0.6666667, 0.5, 0.3333333), down("margin", "markup", "markup", "margin")),
      down(1 / 0.6, 1 / 0.6, 1.5, 1.5),
      1e-6,
    );
  });
  test("margin m, markup m ÷ (1 − m) and cost share 1 − m are one price", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1e6, noNaN: true }),
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        (cost, margin) => {
          const prices = run(
            "BAKE_SELLPRICE",
            cost,
            down(margin, margin / (1 - margin), 1 - margin),
            down("margin", "markup", "food cost"),
          );
          const price = cost / (1 - margin);
          expectCells(prices, down(price, price, price), 1e-9 * price);
        },
      ),
    );
  });
  test("tax comes on top, then the step rounds up and never down", () => {
    expectCells(
      run("BAKE_SELLPRICE", 4, 0.25, "margin", down("", "20%", 0.2, 0.2), down("", "", 0.5, 0.05)),
      down(16 / 3, 6.4, 6.5, 6.4),
    );
    expectCells(run("BAKE_SELLPRICE", 2.1, 0, "markup", 0, down(0.7, 0.05, 1)), down(2.1, 2.1, 3));
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 99_999 }),
        fc.constantFrom(0.01, 0.05, 0.1, 0.25, 0.5, 1, 5),
        (cents, step) => {
          const price = run("BAKE_SELLPRICE", cents / 100, 0.3, "food cost", "", step) as number;
          const exact = cents / 30;
          expect(price).toBeGreaterThanOrEqual(exact * (1 - 1e-9));
          expect(price - exact).toBeLessThan(step * (1 + 1e-9));
          expect(Math.abs(price / step - Math.round(price / step))).toBeLessThan(1e-6);
        },
      ),
    );
  });
  test.each<[unknown[], string]>([
    [[4, 1, "margin"], "share is 100 %; a margin must be below 100 % of the price."],
    [[4, 5, "margin"], "share is 500 %; a margin must be below 100 % of the price; if 5 % is meant, enter 5%."],
    [
      [4, 1.5, "food cost"],
      "share is 150 %; a food cost cannot be above 100 % of the price; if 1.5 % is meant, enter 1.5%.",
    ],
    [[4, 0, "food cost"], "share is 0; a food cost must be above 0 %."],
    [[4, 11, "markup"], "share is 11, which is 1100 %; enter 11% or 0.11."],
    [[4, 0.3, "profit"], 'meaning is "profit"; choose "food cost", "margin" or "markup".'],
    [[4, 0.3], 'meaning is missing; choose "food cost", "margin" or "markup".'],
    [[4, 0.3, "margin", 20], "tax is 20, which is 2000 %; enter 20% or 0.2."],
    [[4, 0.3, "margin", 0, 0], "step is 0; it cannot be below 0.0001."],
    [[-1, 0.3, "margin"], "cost is -1; it cannot be below 0."],
  ])("refuses %j", (args, says) => {
    expect(refusal("BAKE_SELLPRICE", ...args)).toBe(`BAKE_SELLPRICE: ${says}`);
  });
  test("a cost share of 100 % sells at cost", () => {
    expectCells(run("BAKE_SELLPRICE", 4, 1, "food cost"), 4);
  });
});
