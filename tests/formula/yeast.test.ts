import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { down, expectCells, refusal, run } from "../functions/support.ts";
import { seedOf } from "../kit/scale.ts";

const SEED = seedOf(4033);
const KINDS = ["fresh", "active dry", "instant"] as const;
const cells = (name: string, ...args: unknown[]) => (run(name, ...args) as number[][])[0] ?? [];

describe("yeast swap", () => {
  test.each([
    ["bread textbook on ckbk (brea32715): 20 g fresh", 20, "fresh", "active dry", 8, 12, 1e-9],
    ["bread textbook on ckbk (brea32715): 20 g fresh", 20, "fresh", "instant", 6.6, 13.4, 1e-9],
    ["bread textbook on ckbk (brea32715): 1 lb fresh", 1, "fresh", "active dry", 0.4, 0.6, 1e-9],
    ["bread textbook on ckbk (brea32715): 1 lb fresh", 1, "fresh", "instant", 0.33, 0.67, 1e-9],
    ["ehow.com 8606674 with its slip mended: 30 g fresh", 30, "fresh", "instant", 10, 20, 0.3],
    ["mybestgermanrecipes.com, half a cube of 42 g", 21, "fresh", "instant", 7, 14, 0.2],
    ["mybestgermanrecipes.com, half a cube of 42 g", 21, "fresh", "active dry", 8.4, 12.6, 1e-9],
    ["mybestgermanrecipes.com, a cube of 42 g is two sachets", 42, "fresh", "instant", 14, 28, 0.2],
    ["mybestgermanrecipes.com, a cube of 42 g", 42, "fresh", "active dry", 16.8, 25.2, 1e-9],
    ["a sachet of 7 g is 21 g fresh", 7, "instant", "fresh", 21, -14, 0.3],
    ["a sachet of 7 g is 17.5 g fresh", 7, "active dry", "fresh", 17.5, -10.5, 1e-9],
    ["derived: between dry kinds no water", 40, "active dry", "instant", 33, 0, 1e-9],
    ["derived: the same kind", 12, "instant", "instant", 12, 0, 1e-9],
  ])("%s, %d %s to %s", (_source, weight, from, to, yeast, water, within) => {
    expectCells(run("BAKE_YEASTSWAP", weight, from, to), [[yeast, water]], within);
  });

  test("equal solids agree with the ratio of instant yeast (USDA SR28: 69.0 % and 5.08 % water)", () => {
    expect(cells("BAKE_YEASTSWAP", 1, "fresh", "instant")[0]).toBeCloseTo(31 / 94.92, 2);
  });
  test("of the same kind it stays as it is, to the last digit", () => {
    for (const kind of KINDS)
      for (let grams = 1; grams <= 60; grams++) expect(run("BAKE_YEASTSWAP", grams, kind, kind)).toEqual([[grams, 0]]);
  });
  test("the trade's other words, in columns of their own", () => {
    const answer = run(
      "BAKE_YEASTSWAP",
      down(20, "", 20),
      down("Compressed", "", "cake yeast"),
      down("ADY", "", "IDY"),
    );
    expectCells(answer, [
      [8, 12],
      ["", ""],
      [6.6, 13.4],
    ]);
  });
  test("there and back again, and fresh against dry the weight stays", () => {
    const kind = fc.constantFrom(...KINDS);
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e6, noNaN: true }), kind, kind, (weight, from, to) => {
        const [yeast = 0, water = 0] = cells("BAKE_YEASTSWAP", weight, from, to);
        expectCells(cells("BAKE_YEASTSWAP", yeast, to, from), [weight, -water]);
        const dry = from !== "fresh" && to !== "fresh";
        expectCells(dry ? water : yeast + water, dry ? 0 : weight);
      }),
      { seed: SEED },
    );
  });
  test.each([
    [[20, "dry", "fresh"], 'BAKE_YEASTSWAP: from is "dry"; choose "fresh", "active dry" or "instant".'],
    [[20, "fresh", ""], 'BAKE_YEASTSWAP: to is blank; choose "fresh", "active dry" or "instant".'],
    [
      ["some", "fresh", "instant"],
      'BAKE_YEASTSWAP: weight is "some", which is not a number; enter a weight such as 350.',
    ],
    [[-1, "fresh", "instant"], "BAKE_YEASTSWAP: weight is -1; it cannot be below 0."],
  ])("%j is refused", (args, because) => {
    expect(refusal("BAKE_YEASTSWAP", ...args)).toBe(because);
  });
});

describe("yeast for another time", () => {
  test("half the time, 2 %: 4 % by the inverse rule is the low edge", () => {
    expectCells(cells("BAKE_YEASTTIME", 0.02, 3, 1.5)[0], 0.04);
    expectCells(cells("BAKE_YEASTTIME", "2%", 3, 1.5)[0], 0.04);
  });
  test("A Year in Bread, 2009: 6 tsp for 1.5 h to 12 h is refused, the rule does not reach that far", () => {
    expect(refusal("BAKE_YEASTTIME", 6, 1.5, 12)).toMatch(/8 times hours_now.*retard.*two steps/);
  });
  test("bakemag.com 836: 2.5 h at 24 °C are 1.878 h at 27 °C", () => {
    // The same yeast in 2.5 ÷ 1.331 h: what the shorter time asks for by the inverse rule, the warmth saves.
    expectCells(cells("BAKE_YEASTTIME", 10, 2.5, 2.5, 24, 27)[0], 10 / 1.331);
    expectCells(cells("BAKE_YEASTTIME", 10, 2.5, 1.8783, 24, 27)[0], 10, 1e-3);
  });
  test("artisanbreads123: twice per 17 °F lies between the edges for 24 to 27 °C", () => {
    const [low = 0, , high = 0] = cells("BAKE_YEASTTIME", 1, 2, 2, 24, 27);
    expect(low).toBeLessThan(2 ** (-5.4 / 17));
    expect(high).toBeGreaterThan(2 ** (-5.4 / 17));
  });
  test("published points of no-sugar doughs at about 24 °C lie between the edges", () => {
    // King Arthur: French dough, 1.1 % for 3 h; back-cafe-wedel: 2 % for 2 h (fresh yeast).
    const [low = 0, , high = 0] = cells("BAKE_YEASTTIME", 1.1, 3, 2);
    expect(low).toBeLessThan(2);
    expect(high).toBeGreaterThan(2);
  });
  test("time and temperature are sorted apart, then multiplied", () => {
    // Longer: less yeast, so k = 1.7 is lowest; colder: more yeast, so 1.07 is lowest.
    expectCells(cells("BAKE_YEASTTIME", 10, 2, 4, 26, 24), [
      10 * 0.5 ** 1.7 * 1.07 ** 2,
      10 * 0.5 ** 1.3 * 1.08 ** 2,
      10 * 0.5 * 1.1 ** 2,
    ]);
  });
  test("°F and °C agree", () => {
    expectCells(cells("BAKE_YEASTTIME", 10, 2, 3, 75.2, 80.6, "F"), cells("BAKE_YEASTTIME", 10, 2, 3, 24, 27));
  });
  test("the limits themselves are inside", () => {
    expectCells(cells("BAKE_YEASTTIME", 1, 0.9, 0.3)[0], 3);
    expectCells(cells("BAKE_YEASTTIME", 1, 0.3, 0.6)[2], 0.5);
    expectCells(cells("BAKE_YEASTTIME", 1, 2, 2, 15, 15), [1, 1, 1]);
    expectCells(cells("BAKE_YEASTTIME", 1, 2, 2, 89.6, 89.6, "F"), [1, 1, 1]);
  });
  test("low, middle and high stand in order, and nothing changed changes nothing", () => {
    const temp = fc.double({ min: 15, max: 32, noNaN: true });
    const change = fc.double({ min: 0.51, max: 2.99, noNaN: true });
    fc.assert(
      fc.property(change, fc.double({ min: 0.5, max: 24, noNaN: true }), temp, temp, (times, hours, now, wanted) => {
        const [low = 0, middle = 0, high = 0] = cells("BAKE_YEASTTIME", 10, hours * times, hours, now, wanted);
        expect(low).toBeLessThanOrEqual(middle);
        expect(middle).toBeLessThanOrEqual(high);
        expectCells(cells("BAKE_YEASTTIME", 10, hours, hours, now, now), [10, 10, 10]);
      }),
      { seed: SEED },
    );
  });
  test.each([
    [[1, 3, 0.99], "hours_wanted is 0.99, hours_now divided by 3.03. The rule holds down to a third"],
    [[1, 1, 2.01], "hours_wanted is 2.01, 2.01 times hours_now. The rule holds up to twice"],
    [[1, 3, 3, 24], "temp_wanted is blank though temp_now is given"],
    [[1, 3, 3, "", 24], "temp_now is blank though temp_wanted is given"],
    [[1, 3, 3, 14.9, 24], "temp_now is 14.9 °C, and the rule holds from 15 to 32 °C"],
    [[1, 3, 3, 75, 41, "F"], "temp_wanted is 41 °F, and the rule holds from 59 to 89.6 °F"],
    // Only what would be a dough in °F is taken for one: 15 to 32 °C are 59 to 89.6 °F.
    [[1, 3, 3, 59, 24], 'hotter dough by trial; for °F choose "F" as the unit.'],
    [[1, 3, 3, 24, 89.6], 'hotter dough by trial; for °F choose "F" as the unit.'],
    [[1, 3, 3, 58.9, 24], "hotter dough by trial."],
    [[1, 3, 3, 24, 89.7], "hotter dough by trial."],
    [[1, 3, 3, 160, 75, "F"], "hotter dough by trial."],
    [[1, 3, 0], "hours_wanted is 0; it cannot be below 0.01"],
    [["", 3, 3], "yeast is blank; enter an amount of yeast"],
    [[1, 3, 3, 24, 24, "K"], 'unit is "K"; choose "C" or "F"'],
  ])("%j is refused", (args, because) => {
    expect(refusal("BAKE_YEASTTIME", ...args)).toContain(because);
  });
});
