import { describe, expect, test } from "vitest";
import { atMost, countDown, countUp } from "../../shared/base/scaling.ts";
import { cells, column } from "../enrichment/support.ts";
import { down, expectCells, refusal, run } from "../functions/support.ts";

// The edges of scaling: what binary arithmetic adds, blank rows, ties, and limits that are met exactly.

describe("a billionth is forgiven", () => {
  test("counting up: 2.1 ÷ 0.7 is 3, however large the count", () => {
    expect(countUp(2.1 / 0.7)).toBe(3);
    expect([0, 1, 1.1, 1_000_000].map(countUp)).toEqual([0, 1, 2, 1_000_000]);
    expect(countUp(1e6 * (1 + 1e-10))).toBe(1e6);
    expect(countUp(1e6 * (1 + 1e-8))).toBe(1e6 + 1);
    // A little of something is one of it.
    expect(countUp(1e-12)).toBe(1);
  });
  test("counting down: 0.3 ÷ 0.1 is 3, however large the count", () => {
    expect(countDown(0.3 / 0.1)).toBe(3);
    expect([0, 1, 1.9, 1_000_000].map(countDown)).toEqual([0, 1, 1, 1_000_000]);
    expect(countDown(1e6 * (1 - 1e-10))).toBe(1e6);
    expect(countDown(1e6 * (1 - 1e-8))).toBe(1e6 - 1);
  });
  test("comparing: a limit is met by what equals it", () => {
    expect(atMost(0, 0)).toBe(true);
    expect(atMost(0.1 + 0.2, 0.3)).toBe(true);
    expect(atMost(3e6 * (1 + 1e-10), 3e6)).toBe(true);
    expect(atMost(3e6 * (1 + 1e-8), 3e6)).toBe(false);
    expect(atMost(1e-12, 0)).toBe(false);
  });
  test("half a step: 1.005 is 100.49999… hundredths, and goes up; 0.1 below half does not", () => {
    expectCells(run("BAKE_SCALEROUND", 1.005, 0.01, 0.25), 1.01, 1e-12);
    expectCells(run("BAKE_SCALEROUND", down(2.5, 2.4), 1, 0.25), down(3, 2), 1e-12);
  });
});

test("blank rows stay blank", () => {
  expect(run("BAKE_TRUEPCT", down(1000, "", 1000))).toEqual(down(0.5, "", 0.5));
  expect(run("BAKE_RESCALE", down(10, "", 20), 60)).toEqual(down(20, "", 40));
  expect(run("BAKE_SCALEROUND", down(12, "", 3), 1)).toEqual(down(12, "", 3));
});

test("a scale's steps are tried from the coarsest, in whatever order they are typed", () => {
  for (const steps of [down(5, 1, 0.1), down(0.1, 1, 5), down(1, 5, 0.1)])
    expectCells(column("BAKE_SCALEROUND", down(104, 12.34, 0.31), steps), [105, 12.3, 0.31]);
  // What the finest step would move too far is left as it is: no scale here shows it.
  expectCells(column("BAKE_SCALEROUND", down(0.01, 0.14, 0.099), down(5, 0.1)), [0.01, 0.14, 0.1]);
});

describe("what the stock allows", () => {
  test("the first row on a tie, also where binary arithmetic sets it a hair lower", () => {
    // 0.3 ÷ 0.1 is 2.9999999999999996.
    expectCells(cells("BAKE_STOCKLIMIT", down(1, 0.1), down(3, 0.3)), [3, 1]);
    expectCells(cells("BAKE_STOCKLIMIT", down(0.1, 1), down(0.3, 3)), [3, 1]);
    expectCells(cells("BAKE_STOCKLIMIT", down(1, 1), down(3, 2.9)), [2.9, 2]);
  });
  test("a row that needs nothing, or of which no stock is told, does not limit", () => {
    expectCells(cells("BAKE_STOCKLIMIT", down(0, "", 4, 1), down(0, 5, 8, "")), [2, 3]);
    for (const [weights, stock] of [
      [down(0, 2), down(5, "")],
      [down("", 2), down(5, "")],
      [down(0, 2), down(0, "")],
    ])
      expect(refusal("BAKE_STOCKLIMIT", weights, stock)).toBe(
        "BAKE_STOCKLIMIT: stock stands only beside rows that need nothing; put it beside the ingredients it is of.",
      );
  });
});

describe("mixes at their limits", () => {
  test("a mixer that takes one size alone, and as many mixes as can be", () => {
    expectCells(cells("BAKE_MIXES", 40, 20, 20), [2, 20]);
    expectCells(cells("BAKE_MIXES", 1e6, 1), [1e6, 1]);
  });
  test.each([
    [[5, 40, 10], "dough is 5: one mix would be below the least of 10; 10 would fit."],
    [[45, 40, 25], "dough is 45: 2 equal mixes of 22.5 would be below the least of 25; 40 or 50 would fit."],
    [[2e6, 1], "mixer_limit is 1, and 2000000 of dough would be over a million mixes; are both in one unit?"],
    [
      [40, 20, 20.01],
      "mixer_least is 20.01, above the limit of 20; enter the least dough the mixer takes, or leave it out.",
    ],
  ])("%j is refused", (args, says) => expect(refusal("BAKE_MIXES", ...args)).toBe(`BAKE_MIXES: ${says}`));
});
