import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Refusal } from "../../shared/base/refusal.ts";
import { expectCells, refusal, run } from "../functions/support.ts";
import { seedOf } from "../kit/scale.ts";

const SEED = seedOf(1001);
const cells = (name: string, ...args: unknown[]) => (run(name, ...args) as number[][])[0] ?? [];

describe("preferment", () => {
  test.each([
    ["prefermented flour", 400, 800],
    ["", 400, 800],
    ["weight of all flour", 200, 900],
    ["weight of added flour", 181.8, 909.1],
  ])("The Fresh Loaf node/64591, 20 %% levain as %j", (basis, levain, added) => {
    const [flour = 0, water = 0] = cells("BAKE_PREFERMENT", 1000, 0.2, 1, basis);
    expectCells([flour + water, 1000 - flour], [levain, added], 0.1);
  });
  test.each([
    ["derived: 20 % of 1000 at 100 %", [1000, 0.2, 1], [200, 200, 0, 0]],
    ["derived: 300 g of levain at 60 %", [1000, 0.3, 0.6, "weight of all flour"], [187.5, 112.5, 0, 0]],
    ["King Arthur professional formulas, biga of the ciabatta", [10, 0.3, 0.6, "", "", "", 0.001], [3, 1.8, 0, 0.003]],
    ["King Arthur professional formulas, poolish", [10, 0.33, 1, "", "", "", 0.007 / 3.3], [3.3, 3.3, 0, 0.007]],
    ["Wild Yeast blog, poolish", [1368, 468 / 1368, 1, "", "", "", 0.3 / 468], [468, 468, 0, 0.3]],
    // 200 of flour and 120 of water; 30 at 100 % bring 15 and 15, 30 at 60 % bring 18.75 and 11.25.
    ["derived: seed of its own hydration", [1000, 0.2, 0.6, "", 30, 1], [185, 105, 30, 0]],
    ["derived: seed of the preferment's hydration", [1000, 0.2, 0.6, "", 30], [181.25, 108.75, 30, 0]],
    ["derived: yeast on the seed's flour too", [1000, 0.2, 1, "", 100, 1, 0.01], [150, 150, 100, 2]],
    ["derived: all of it seed", [1000, 0.2, 1, "", 400], [0, 0, 400, 0]],
    ["derived: no flour", [0, 0.2, 1], [0, 0, 0, 0]],
  ])("%s", (_source, args, wanted) => {
    expectCells(cells("BAKE_PREFERMENT", ...args), wanted);
  });

  test("every basis closes: what was asked is the share of what it is said of", () => {
    const of = {
      "prefermented flour": (flour: number, _weight: number, all: number) => flour / all,
      "weight of all flour": (_flour: number, weight: number, all: number) => weight / all,
      "weight of added flour": (flour: number, weight: number, all: number) => weight / (all - flour),
    };
    const basis = fc.constantFrom(...(Object.keys(of) as (keyof typeof of)[]));
    const part = fc.double({ min: 0.02, max: 0.98, noNaN: true });
    const hydration = fc.double({ min: 0, max: 5, noNaN: true });
    fc.assert(
      fc.property(basis, part, hydration, part, hydration, (said, share, wet, seedPart, seedWet) => {
        const [whole = 0, water = 0] = cells("BAKE_PREFERMENT", 1000, share, wet, said);
        const most = Math.min(whole * (1 + seedWet), (water * (1 + seedWet)) / seedWet);
        const seed = seedPart * most;
        fc.pre(seed > 0.006 * (whole + water));
        const [flour = 0, rest = 0] = cells("BAKE_PREFERMENT", 1000, share, wet, said, seed, seedWet);
        const allFlour = flour + seed / (1 + seedWet);
        const allWater = rest + (seed / (1 + seedWet)) * seedWet;
        expectCells(of[said](allFlour, allFlour + allWater, 1000), share);
        expectCells(allWater, wet * allFlour, 1e-8);
      }),
      { seed: SEED },
    );
  });

  test.each([
    [[1000, 65, 1], "share is 65, which is 6500 %; enter 65% or 0.65"],
    [[1000, 1.2, 1], "share is 1.2, which is 120 %; all the flour as preferment would be 100 %"],
    [[1000, 2.2, 1, "weight of all flour"], "share is 2.2, which is 220 %; all the flour as preferment would be 200 %"],
    [[1000, 2.2, 1, "weight of added flour"], "share is 2.2, which is 220 %"],
    [[1000, 0.2, 100], "hydration is 100, which is 10000 %; enter 100% or 1"],
    [
      [1000, 0.2, 1, "20 %"],
      'basis is "20 %"; choose "prefermented flour", "weight of all flour" or "weight of added flour"',
    ],
    [
      [1000, 0.2, 1, "", 0.1],
      "seed is 0.1, below 0.5 % of the preferment's 400; was it typed as a share? Enter its weight",
    ],
    [[1000, 0.2, 1, "", 410], "seed is 410, which brings 205 of flour where 200 is wanted; at most 400 fits"],
    [[1000, 0.2, 0.5, "", 180, 2], "seed is 180, which brings 120 of water where 100 is wanted; at most 150 fits"],
    [[1000, 0.2, 1, "", "", "", 0.3], "yeast is 0.3, which is 30 %; enter 0.3% or 0.003"],
    [[1000, 0.2, 1, "", "", "", 1], "yeast is 1, which is 100 %; enter 1% or 0.01"],
    [["", 0.2, 1], "flour is blank; enter a weight such as 350"],
  ])("%j is refused", (args, because) => {
    expect(refusal("BAKE_PREFERMENT", ...args)).toContain(because);
  });
});

describe("starter feed", () => {
  test.each([
    ["The Fresh Loaf comment/99090: firm 50 % starter for 167 g at 100 %", [167, 1, 0.5], [125.25, 0, 41.75]],
    ["derived: a build of 1 : 2 : 2", [500, 1, 1, 100], [100, 200, 200]],
    ["derived: a build of 1 : 5 : 5", [550, 1, 1, 50], [50, 250, 250]],
    // 300 at 50 % are 200 and 100; 150 at 100 % bring 75 and 75; the most is 200, when its water is all there is.
    ["derived: wet starter into a firm one", [300, 0.5, 1, 150], [150, 125, 25]],
    ["derived: wet starter into a firm one, as much as fits", [300, 0.5, 1], [200, 100, 0]],
    ["derived: nothing wanted", [0, 1, 0.5], [0, 0, 0]],
  ])("%s", (_source, args, wanted) => {
    expectCells(cells("BAKE_STARTERFEED", ...args), wanted);
  });

  test("it weighs what was wanted, at the hydration wanted, and no more starter would fit", () => {
    const hydration = fc.double({ min: 0.05, max: 5, noNaN: true });
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e5, noNaN: true }), hydration, hydration, part, (weight, to, now, some) => {
        fc.pre(Math.abs(to - now) > 1e-6);
        const [most = 0, ...rest] = cells("BAKE_STARTERFEED", weight, to, now);
        expectCells(Math.min(...rest), 0, 1e-9 * weight);
        for (const starter of [most, most * some]) {
          const [used = 0, flour = 0, water = 0] = cells("BAKE_STARTERFEED", weight, to, now, starter);
          const allFlour = flour + used / (1 + now);
          expectCells(used + flour + water, weight, 1e-8 * weight);
          expectCells((water + (used * now) / (1 + now)) / allFlour, to, 1e-7);
          expect(Math.min(flour, water)).toBeGreaterThanOrEqual(0);
        }
        expect(refusal("BAKE_STARTERFEED", weight, to, now, most * 1.001 + 1e-3)).toContain("at most");
      }),
      { seed: SEED },
    );
  });

  test.each([
    [[550, 1, 1], "starter is blank, and at equal hydrations all of it would be starter"],
    [[167, 1, 0.5, 167], "starter is 167, which brings 111.33 of flour where 83.5 is wanted; at most 125.25 fits"],
    // Without any water in it, flour alone says how much fits.
    [[100, 0, 0, 150], "starter is 150, which brings 150 of flour where 100 is wanted; at most 100 fits"],
    [[300, 0.5, 1, 250], "starter is 250, which brings 125 of water where 100 is wanted; at most 200 fits"],
    [[550, 1, 100, 50], "hydration_now is 100, which is 10000 %; enter 100% or 1"],
    [["lots", 1, 1, 50], 'wanted is "lots"'],
  ])("%j is refused", (args, because) => {
    expect(refusal("BAKE_STARTERFEED", ...args)).toContain(because);
  });
});

describe("several feeds", () => {
  const feeds = (...args: unknown[]) => run("BAKE_FEEDPLAN", ...args) as number[][];
  const weight = fc.double({ min: 0.5, max: 500, noNaN: true });
  const hydration = fc.double({ min: 0.4, max: 2, noNaN: true });

  test("each feed takes up all of the one before, multiplies it alike and stands at the hydration wanted", () => {
    fc.assert(
      fc.property(
        weight,
        fc.double({ min: 1.5, max: 500, noNaN: true }),
        hydration,
        fc.integer({ min: 1, max: 8 }),
        fc.double({ min: 0, max: 200, noNaN: true }),
        (start, times, wet, many, keep) => {
          const wanted = start * times;
          const rows = feeds(start, wanted, wet, many, keep);
          expect(rows).toHaveLength(many);
          expectCells(rows[many - 1]?.[3], wanted + keep);
          const ratio = ((wanted + keep) / start) ** (1 / many);
          let before = start;
          for (const [starter = 0, flour = 0, water = 0, total = 0] of rows) {
            expectCells(starter, before, 1e-9 * total);
            expectCells(starter + flour + water, total, 1e-9 * total);
            expectCells(total / starter, ratio, 1e-7 * ratio);
            expectCells(water / flour, wet, 1e-6);
            before = total;
          }
        },
      ),
      { seed: SEED },
    );
  });

  test("one feed is BAKE_STARTERFEED; of more the first corrects the hydration, or says how much starter would fit", () => {
    fc.assert(
      fc.property(
        weight,
        fc.double({ min: 1.05, max: 30, noNaN: true }),
        hydration,
        hydration,
        (start, times, to, now) => {
          const wanted = start * times;
          const one = answerOf(() => feeds(start, wanted, to, 1, "", now)[0]);
          const other = answerOf(() => cells("BAKE_STARTERFEED", wanted, to, now, start));
          if (Array.isArray(one) && Array.isArray(other)) expectCells(one.slice(0, 3), other, 1e-8 * wanted);
          else expect([typeof one, typeof other]).toEqual(["string", "string"]);
          const many = answerOf(() => feeds(start, wanted, to, 3, "", now));
          if (Array.isArray(many)) {
            const [starter = 0, flour = 0, water = 0, total = 0] = many[0] ?? [];
            expectCells((water + (starter * now) / (1 + now)) / (flour + starter / (1 + now)), to, 1e-6);
            expectCells(total / starter, times ** (1 / 3), 1e-7);
            expect(Math.min(flour, water)).toBeGreaterThanOrEqual(0);
          } else {
            // What the sentence says does fit, and hardly more.
            const most = Number(/at most ([\d.]+) fits/.exec(String(many))?.[1]);
            fc.pre(most > 0.01);
            expect(feeds(most, wanted, to, 3, "", now)).toHaveLength(3);
            expect(refusal("BAKE_FEEDPLAN", most * 1.01 + 1e-3, wanted, to, 3, "", now)).toContain(
              "too much for the first",
            );
          }
        },
      ),
      { seed: SEED },
    );
  });

  test.each([
    [[10, 90, 1, 2.5], "feeds is 2.5; enter a whole number"],
    [[10, 90, 1, 0], "feeds is 0; it cannot be below 1"],
    [[10, 90, 1, 22], "feeds is 22; it cannot be above 21"],
    [[90, 90, 1, 1], "start is 90, and a feed only adds to it; enter less than the 90 that the last feed makes"],
    [[10, 90, 100, 2], "hydration is 100, which is 10000 %"],
    [[10, 90, 0, 2, "", 1], "no dry feed does that"],
    [["", 90, 1, 2], "start is blank"],
  ])("%j is refused", (args, because) => expect(refusal("BAKE_FEEDPLAN", ...args)).toContain(because));

  test("a starter of flour alone can be fed wet", () => {
    expectCells(feeds(10, 40, 1, 1, "", 0), [[10, 10, 20, 40]]);
  });
});

/** An answer, or the sentence of a refusal. */
function answerOf<T>(ask: () => T): T | string {
  try {
    return ask();
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return error.message;
  }
}
