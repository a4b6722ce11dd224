import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { down, expectCells, refusal, run } from "../functions/support.ts";
import { seedOf, tries } from "../kit/scale.ts";

const SEED = { seed: seedOf(20_261_125), numRuns: tries(500) };
const flat = (cells: unknown) => (cells as unknown[][]).map(([cell]) => cell as number);
const FOUR = down("flour", "water", "salt", "yeast");

describe("baker's percent", () => {
  test.each([
    ["10 lb flour, 5 lb water — Wikipedia, Baker percentage", [10, 5], ["flour", "water"], [1, 0.5], 1e-12],
    [
      "700/386/50/28/7 — Wild Yeast blog, exercise 1",
      [700, 386, 50, 28, 7],
      ["flour", "water", "egg", "yeast", "salt"],
      [1, 0.5514, 0.0714, 0.04, 0.01],
      5e-5,
    ],
    [
      "32 oz flour and five others — Wild Yeast blog, exercise 2",
      [32, 18, 2, 3, 0.16, 0.7],
      ["flour", "water", "dairy", "fat", "yeast", "salt"],
      [1, 0.5625, 0.0625, 0.09375, 0.005, 0.021875],
      1e-12,
    ],
    ["40 lb flour, 23 lb water — Lehmann, baker's math slides", [40, 23], ["flour", "water"], [1, 0.575], 1e-12],
    [
      "1.6 rye, 6.4 whole wheat, 8 white — foodista",
      [1.6, 6.4, 8],
      ["flour", "flour", "flour"],
      [0.1, 0.4, 0.5],
      1e-12,
    ],
    [
      "rye with a 60 % starter — The Fresh Loaf node/62948",
      [1000, 700, 20, 150],
      ["flour", "water", "salt", "starter 60%"],
      [1000 / 1093.75, 700 / 1093.75, 20 / 1093.75, 150 / 1093.75],
      1e-12,
    ],
  ] as const)("%s", (_, weights, kinds, shares, within) => {
    expectCells(run("BAKE_FLOURPCT", down(...weights), down(...kinds)), down(...shares), within);
  });

  test("final mix with a poolish — Wild Yeast blog, part 4: 34.21 % prefermented, 68.42 % water, 1.974 % salt, 0.680 % yeast", () => {
    const shares = flat(
      run(
        "BAKE_FLOURPCT",
        down(900, 468, 468, 468, 27, 9.3),
        down("flour", "flour", "water", "water", "salt", "yeast"),
      ),
    );
    expectCells(shares, [900 / 1368, 0.3421, 0.3421, 0.3421, 0.01974, 0.0068], 5e-5);
    const asRow = flat(run("BAKE_FLOURPCT", down(900, 468, 936, 27), down("flour", "water", "poolish 100%", "salt")));
    expectCells(asRow[3], 0.01974, 5e-5);
  });

  test("salt beside a levain — The Fresh Loaf node/42177: 77.27 % water with the levain's, 1.82 % salt", () => {
    const shares = flat(
      run("BAKE_FLOURPCT", down(900, 100, 200, 750, 20), down("flour", "flour", "levain 100%", "water", "salt")),
    );
    expect(((shares[3] ?? 0) + (shares[2] ?? 0) / 2) * 100).toBeCloseTo(77.27, 2);
    expect((shares[4] ?? 0) * 100).toBeCloseTo(1.82, 2);
  });

  test("blank rows stay blank, a row is read as a column, text numbers count — LibreOffice forum thread on formula blanks", () => {
    expectCells(
      run("BAKE_FLOURPCT", [[1000, "", "", 650, "20"]], [["flour", "", "", "water", "salt"]]),
      down(1, "", "", 0.65, 0.02),
    );
    expect(run("BAKE_TRUEPCT", down("", ""))).toBe("");
    expect(run("BAKE_FLOURPCT", down("", ""), down("flour", "water"))).toBe("");
  });

  test("true percent of 100/35/35/4/1.8 — Wikipedia, Baker percentage: 175.8 in all", () => {
    expectCells(
      run("BAKE_TRUEPCT", down(100, 35, 35, 4, 1.8)),
      down(0.56883, 0.19909, 0.19909, 0.02275, 0.01024),
      5e-6,
    );
  });

  test("laws: flours make 100 %, the whole makes 100 %, order does not matter", () => {
    const weights = fc.array(fc.double({ min: 0.1, max: 1e6, noNaN: true }), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(weights, (rows) => {
        const kinds = rows.map((_, row) => (row % 2 === 0 ? "flour" : "water"));
        const shares = flat(run("BAKE_FLOURPCT", down(...rows), down(...kinds)));
        const flours = shares.filter((_, row) => row % 2 === 0).reduce((total, one) => total + one, 0);
        expect(flours).toBeCloseTo(1, 12);
        expect(flat(run("BAKE_TRUEPCT", down(...rows))).reduce((total, one) => total + one, 0)).toBeCloseTo(1, 12);
      }),
      SEED,
    );
  });
});

describe("weights", () => {
  test("65, 65 % and 0.65 — Microsoft KB 215203 and Super User 1369654", () => {
    const grams = down(1000, 650, 20, 2);
    expectCells(run("BAKE_WEIGHTS", down(1, 0.65, 0.02, 0.002), FOUR, 1000, "flour"), grams);
    expectCells(run("BAKE_WEIGHTS", down(100, 65, 2, 0.2), FOUR, 1000, "flour"), grams);
    expectCells(run("BAKE_WEIGHTS", down("100%", "65%", "2%", "0.2%"), FOUR, 1000, "flour"), grams);
    expectCells(run("BAKE_WEIGHTS", down(100, "65%", 2, "0,2"), FOUR, 1000, "flour"), grams);
    expect(refusal("BAKE_WEIGHTS", down(1, 65, 2, 0.2), FOUR, 1000, "flour")).toMatch(
      /percents row 2 is 65.*enter 65% \(0\.65\).*row 3 is 2.*row 4 is 0\.2/,
    );
    expect(refusal("BAKE_WEIGHTS", down(100, 0.65, 0.02, 0.002), FOUR, 1000, "flour")).toMatch(
      /percents row 2 is 0\.65.*enter 65, or 0\.65% if that is meant. Or type every row as a share/,
    );
  });

  test.each([
    [
      "3000 g of batter, 377.5 % in all — Gisslen, Professional Baking",
      [100, 277.5],
      ["flour", "other"],
      3000,
      "dough",
      [794.7, 2205.3],
      5e-3,
    ],
    [
      "40 lb flour, salt 1.75 % — Lehmann slides: 0.70 lb",
      [100, 1.75],
      ["flour", "salt"],
      40,
      "flour",
      [40, 0.7],
      1e-12,
    ],
    [
      "100 lb dough at 162.125 % — derived: 61.6808 lb of flour, not 100 ÷ 1.62",
      [100, 62.125],
      ["flour", "water"],
      100,
      "dough",
      [61.6808, 38.3192],
      5e-5,
    ],
  ] as const)("%s", (_, percents, kinds, amount, of, weights, within) => {
    expectCells(run("BAKE_WEIGHTS", down(...percents), down(...kinds), amount, of), down(...weights), within);
  });

  test("several flours within half a point of 100 % meet the amount", () => {
    const grams = flat(
      run("BAKE_WEIGHTS", down(33.3, 33.3, 33.3, 66.6), down("flour", "flour", "flour", "water"), 1000),
    );
    expect(grams.reduce((total, one) => total + one, 0)).toBeCloseTo(1000, 9);
    expect(grams[0]).toBeCloseTo(200, 9);
  });

  test("a levain's percents in either frame, never mixed", () => {
    const kinds = down("flour", "levain 100%", "water", "salt");
    // All flour 1000: 900 added and 100 in 200 of levain. Both tables say so.
    const all = run("BAKE_WEIGHTS", down(90, 20, 60, 2), kinds, 1000, "flour");
    expectCells(all, down(900, 200, 600, 20));
    const added = run("BAKE_WEIGHTS", down(100, 20, 60, 2), kinds, 1000, "flour");
    expectCells(added, down(1000, 200, 600, 20));
    expect(refusal("BAKE_WEIGHTS", down(95, 20, 60, 2), kinds, 1000)).toMatch(
      /add up to 95; all flours together, with or without the flour inside preferments/,
    );
  });

  test("weights and percents there and back", () => {
    const rows = fc.array(fc.double({ min: 0.5, max: 2.5, noNaN: true }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(rows, fc.double({ min: 1, max: 1e6, noNaN: true }), (others, amount) => {
        const kinds = down("flour", ...others.map(() => "grain"));
        const percents = [1, ...others];
        const shares = flat(run("BAKE_FLOURPCT", run("BAKE_WEIGHTS", down(...percents), kinds, amount), kinds));
        shares.forEach((share, row) => {
          expect(share).toBeCloseTo(percents[row] ?? 0, 9);
        });
      }),
      SEED,
    );
  });
});
