import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { down, expectCells, refusal, run } from "../functions/support.ts";
import { cells, LAWS } from "./support.ts";

describe("BAKE_GLUTENADD", () => {
  test.each<[string, unknown[], number, number]>([
    ["on SR28 flour and gluten, on top", [1000, 0.1033, 0.125, 0.7516], 34.631, 1e-3],
    ["on SR28 flour and gluten, replacing", [1000, 0.1033, 0.125, 0.7516, "replace"], 33.472, 1e-3],
    ["10 to 12 % with 75 %, on top", [1000, "10%", "12%", "75%"], 31.746, 1e-3],
    ["10 to 12 % with 75 %, replacing", [1000, "10%", "12%", "75%", "replace"], 30.769, 1e-3],
    ["forum.breadtopia.com/t/13403, on top", [500, 0.127, 0.14, 0.75], 10.66, 5e-3],
    ["forum.breadtopia.com/t/13403, replacing", [500, 0.127, 0.14, 0.75, "replace"], 10.43, 5e-3],
    ["ntro.it.com: 10.5 to 12.5 % of 500 g, on top", [500, 0.105, 0.125, 0.75], 16, 5e-2],
    ["ntro.it.com: 10.5 to 12.5 % of 500 g, replacing", [500, 0.105, 0.125, 0.75, "replace"], 15.5, 5e-2],
    ["1 % of gluten of 75 % on a 12 % flour gains 0.624 points", [100, 0.12, 0.12624, 0.75], 1, 1e-3],
    ["nothing to add", [1000, 0.12, 0.12], 0, 0],
  ])("%s: %j", (_, args, gluten, within) => {
    expect(Math.abs((cells("BAKE_GLUTENADD", ...args)[0] ?? Number.NaN) - gluten)).toBeLessThanOrEqual(within);
  });

  test("extra water is 1.5 × the gluten; replacing takes off what the flour would have taken", () => {
    expect(cells("BAKE_GLUTENADD", 1000, 0.1, 0.12, 0.75)[2]).toBeCloseTo(47.6, 1);
    const [gluten = 0, flour, water] = cells("BAKE_GLUTENADD", 1000, 0.1, 0.12, 0.75, "replace");
    expect(flour).toBeCloseTo(1000 - gluten, 9);
    expect(water).toBeCloseTo(0.9 * gluten, 9);
  });

  test("the mix has the protein wanted, whichever way", () => {
    const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(share(0.05, 0.15), share(0, 0.2), share(0.6, 0.9), fc.boolean(), (now, more, gluten, onTop) => {
        const wanted = now + more;
        const [added = 0, flour = 0] = cells("BAKE_GLUTENADD", 1000, now, wanted, gluten, onTop ? "on top" : "replace");
        expect((added * gluten + flour * now) / (added + flour)).toBeCloseTo(wanted, 9);
        if (!onTop) expect(added + flour).toBeCloseTo(1000, 6);
      }),
      LAWS,
    );
  });

  test("a column of flours gives a row each", () => {
    const rows = run(
      "BAKE_GLUTENADD",
      down(1000, "", 500),
      down(0.1, "", 0.127),
      down(0.12, "", 0.14),
      0.75,
    ) as unknown[][];
    expect(rows.map(([gluten]) => (gluten === "" ? "" : (gluten as number).toFixed(2)))).toEqual([
      "31.75",
      "",
      "10.66",
    ]);
  });

  test.each([
    [[1000, 0.12, 0.1], "protein_wanted is 10 %; gluten can bring this flour to more than its 12 %"],
    [
      [1000, 0.12, 0.8],
      "protein_wanted is 80 %; gluten can bring this flour to more than its 12 % and less than the gluten's own 75.16 %",
    ],
    [[1000, 0.12, 0.75, 0.75], "protein_wanted is 75 %"],
    [[1000, 12, 0.14], "protein_now is 12, which is 1200 %; enter 12% or 0.12"],
    [[1000, 0.12, 0.14, 0.75, "beside"], 'mode is "beside"; choose "on top" or "replace"'],
    [[-1, 0.12, 0.14], "flour is -1; it cannot be below 0"],
    [[down(1000, 1000), down(0.12, 0.12), down(0.14, 0.1)], "protein_wanted row 2 is 10 %"],
  ])("%j is refused", (args, sentence) => {
    expect(refusal("BAKE_GLUTENADD", ...args)).toContain(sentence);
  });
});

describe("BAKE_FLOURBLEND", () => {
  test("13.07 and 8.20 % to 11 % are 57.49 and 42.51 % (derived on SR28 20640 and 20084)", () => {
    expectCells(run("BAKE_FLOURBLEND", 0.1307, 0.082, 0.11, 100), [[57.49, 42.51]], 5e-3);
    expectCells(run("BAKE_FLOURBLEND", 0.1307, 0.082, 0.1307, 100), [[100, 0]]);
  });

  test("the blend has its weight and its protein", () => {
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        part,
        fc.double({ min: 0.05, max: 0.09, noNaN: true }),
        fc.double({ min: 0.1, max: 0.2, noNaN: true }),
        (at, low, high) => {
          const wanted = low + at * (high - low);
          const [a = 0, b = 0] = cells("BAKE_FLOURBLEND", low, high, wanted, 1000);
          expect(a + b).toBeCloseTo(1000, 8);
          expect((a * low + b * high) / 1000).toBeCloseTo(wanted, 9);
        },
      ),
      LAWS,
    );
  });

  test.each([
    [[0.13, 0.08, 0.14, 100], "wanted is 14 %; a blend lies between its flours, 8 % and 13 %"],
    [[0.12, 0.12, 0.12, 100], "protein_b is 12 %, the same as the other flour"],
    [[13, 0.08, 0.1, 100], "protein_a is 13, which is 1300 %"],
    [[0.13, 0.08, 0.1, ""], "total is blank"],
  ])("%j is refused", (args, sentence) => {
    expect(refusal("BAKE_FLOURBLEND", ...args)).toContain(sentence);
  });
});

describe("BAKE_LABELPROTEIN", () => {
  const bounds = (...args: unknown[]) => cells("BAKE_LABELPROTEIN", ...args).slice(0, 2);
  test.each<[string, unknown[], [number, number]]>([
    ["21 CFR 101.9: 3 g in 30 g", [3, 30], [2.5 / 30, 3.5 / 30]],
    ["21 CFR 101.9: 4 g in 30 g", [4, 30, "US"], [3.5 / 30, 4.5 / 30]],
    ["21 CFR 101.9: under half a gram may be 0", [0, 30], [0, 0.5 / 30]],
    ["a decimal is a decimal", [3.5, 30], [3.45 / 30, 3.55 / 30]],
    ["a typed 3.0 is a decimal", ["3.0", 30], [2.95 / 30, 3.05 / 30]],
    ["EU guidance 2012 (from memory): whole grams from 10", [12, "", "EU"], [0.115, 0.125]],
    ["EU guidance 2012 (from memory): tenths below 10", [9, 100, "UK"], [0.0895, 0.0905]],
    ["a decimal above 10 is a decimal", ["12,5", "", "EU"], [0.1245, 0.1255]],
  ])("%s: %j", (_, args, expected) => {
    expectCells([bounds(...args)], [expected], 1e-12);
  });

  test("80 to 85 % of it can form gluten: 9.6 to 10.2 g of a 12 % flour (from memory: Shewry; Wieser)", () => {
    const [low = 0, high = 0, glutenLow, glutenHigh] = cells("BAKE_LABELPROTEIN", "12.0", 100, "EU");
    expect(glutenLow).toBeCloseTo(low * 0.8, 12);
    expect(glutenHigh).toBeCloseTo(high * 0.85, 12);
    expect(glutenLow).toBeCloseTo(0.096, 3);
    expect(glutenHigh).toBeCloseTo(0.102, 3);
  });

  test("every share within the bounds is printed as the label's figure", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 25, max: 100 }),
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        (grams, serving, at) => {
          const [low = 0, high = 0] = bounds(grams, serving);
          expect(Math.round((low + at * (high - low)) * serving)).toBe(grams);
        },
      ),
      LAWS,
    );
  });

  test.each([
    [[3], "serving is blank; a US label gives protein per serving"],
    [[12, 30, "EU"], "serving is 30; EU labels give protein per 100 g, so leave it blank or enter 100"],
    [[40, 30], "protein is 40 g, more than the 30 g it is said to be in"],
    [["some", 30], 'protein is "some", which is not a number'],
    [[3, 0], "serving is 0; it must be above 0"],
    [[3, 30, "JP"], 'law is "JP"; choose "US", "EU" or "UK"'],
  ])("%j is refused", (args, sentence) => {
    expect(refusal("BAKE_LABELPROTEIN", ...args)).toContain(sentence);
  });
});
