import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { down, expectCells, refusal, run } from "../functions/support.ts";
import { seedOf } from "../kit/scale.ts";

describe("average-weight limits", () => {
  // nibusinessinfo, guide for bakers, prints 388 and 376 g for a 400 g loaf. The others: by hand from the table of Directive
  // 76/211/EEC (from memory), shares rounded up to a tenth of a gram.
  test.each([
    [5, 0.5],
    [37, 3.4],
    [50, 4.5],
    [51, 4.5],
    [100, 4.5],
    [101, 4.6],
    [200, 9],
    [250, 9],
    [300, 9],
    [301, 9.1],
    [333, 10],
    [400, 12],
    [500, 15],
    [501, 15],
    [800, 15],
    [1000, 15],
    [1500, 22.5],
    [10_000, 150],
  ])("%d g may fall short by %d g", (nominal, tolerance) => {
    expectCells(run("BAKE_WEIGHTLIMITS", nominal), [[nominal, nominal - tolerance, nominal - 2 * tolerance]]);
  });

  test("the UK kept the limits; the US rule is another, and says where it stands", () => {
    for (const law of ["EU", "UK", "GB", ""]) expectCells(run("BAKE_WEIGHTLIMITS", 400, law), [[400, 388, 376]]);
    expect(refusal("BAKE_WEIGHTLIMITS", 400, "US")).toMatch(
      /NIST Handbook 133, table 2-5\. The average must reach the label\./,
    );
    expect(refusal("BAKE_WEIGHTLIMITS", down(400, 800), down("EU", "USA"))).toContain('law row 2 is "US"');
    expect(refusal("BAKE_WEIGHTLIMITS", 400, "Mars")).toMatch(/law is "Mars"/);
  });

  test("a column gives a row per weight, blank where the weight is blank", () => {
    expectCells(run("BAKE_WEIGHTLIMITS", down(400, "", 800)), [
      [400, 388, 376],
      ["", "", ""],
      [800, 785, 770],
    ]);
  });

  test("a heavier pack is never allowed less, and the limits stand one tolerance apart", () => {
    const weight = fc.integer({ min: 50, max: 100_000 }).map((tenths) => tenths / 10);
    fc.assert(
      fc.property(weight, weight, (one, other) => {
        const [light, heavy] = [one, other].sort((a, b) => a - b).map(limits);
        if (!light || !heavy) throw new Error("two weights were given");
        expect(heavy.allowed).toBeGreaterThanOrEqual(light.allowed - 1e-9);
        expect(light.absolute).toBeCloseTo(light.average - 2 * light.allowed, 9);
        expect(light.allowed).toBeLessThanOrEqual(0.09 * light.average + 0.1 + 1e-9);
      }),
      { seed: seedOf(76211) },
    );
  });

  test.each([
    [["abc"], 'BAKE_WEIGHTLIMITS: weight is "abc", which is not a number; enter a weight in grams such as 400.'],
    [[""], ""],
    [[4.9], "BAKE_WEIGHTLIMITS: weight is 4.9; it cannot be below 5."],
    [[10_001], "BAKE_WEIGHTLIMITS: weight is 10001; it cannot be above 10000."],
    [["1,250"], 'BAKE_WEIGHTLIMITS: weight is "1,250", which could be 1250 or 1.25; enter the one you mean.'],
  ])("%j", (args, because) => {
    if (because === "") expectCells(run("BAKE_WEIGHTLIMITS", ...args), [["", "", ""]]);
    else expect(refusal("BAKE_WEIGHTLIMITS", ...args)).toBe(because);
  });
});

function limits(weight: number) {
  const [[average = 0, tolerance = 0, absolute = 0] = []] = run("BAKE_WEIGHTLIMITS", weight) as number[][];
  return { average, allowed: average - tolerance, absolute };
}
