import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { down, expectCells, refusal, run } from "../functions/support.ts";
import { seedOf, tries } from "../kit/scale.ts";

const SEED = seedOf(1368);
const split = (weights: unknown[], kinds: unknown[], share: unknown, ...rest: unknown[]) =>
  run("BAKE_STAGES", down(...weights), down(...kinds), share, ...rest) as number[][];

describe("stages of published formulas", () => {
  const kinds = ["flour", "water", "yeast", "salt"];
  test.each([
    [
      "Wild Yeast blog, baker's percentage part 4: poolish baguette",
      [1368, 936, 9.3, 27],
      [468 / 1368, "", 0.3 / 9.3, ""],
      1,
      [468, 468, 0.3, 0],
      [900, 468, 9, 27],
    ],
    [
      "King Arthur professional formulas: ciabatta with biga",
      [10, 7.6, 0.12, 0.2],
      [0.3, "", 0.003 / 0.12, ""],
      0.6,
      [3, 1.8, 0.003, 0],
      [7, 5.8, 0.117, 0.2],
    ],
    [
      "King Arthur professional formulas: French with poolish",
      [10, 6.7, 0.11, 0.2],
      [0.33, "", 0.007 / 0.11, ""],
      1,
      [3.3, 3.3, 0.007, 0],
      [6.7, 3.4, 0.103, 0.2],
    ],
  ])("%s", (_source, weights, share, hydration, preferment, finalMix) => {
    const rows = split(weights, kinds, down(...share), hydration);
    expectCells(
      rows,
      preferment.map((one, row) => [one, finalMix[row] ?? 0]),
    );
    const sum = (column: number) => rows.reduce((total, row) => total + (row[column] ?? 0), 0);
    expectCells(
      sum(0) + sum(1),
      weights.reduce((total, one) => total + one, 0),
    );
  });

  test("derived: 1000 at 70 %, 20 % as levain at 100 %", () => {
    expectCells(split([1000, 700], ["flour", "water"], 0.2, 1), [
      [200, 800],
      [200, 500],
    ]);
  });
  test("derived: 40 % at 125 % out of 45 % is refused", () => {
    expect(refusal("BAKE_STAGES", down(1000, 450), down("flour", "water"), 0.4, 1.25)).toMatch(
      /hydration is 125 %, which takes 500 of water, and the water rows hold 450/,
    );
  });
});

describe("stages, row by row", () => {
  test("each row's own part: rye 46 %, no wheat, 3.2 % of the yeast", () => {
    const rows = split(
      [500, 500, 700, 10, 20],
      ["flour", "flour", "water", "yeast", "salt"],
      down(0.46, 0, "", 0.032, ""),
      0.8,
    );
    expectCells(rows, [
      [230, 270],
      [0, 500],
      [184, 516],
      [0.32, 9.68],
      [0, 20],
    ]);
  });
  test("one share goes for every flour row, and only for those", () => {
    expectCells(split([600, 400, 700, 20], ["flour", "flour", "water", "salt"], 0.5, 0.6), [
      [300, 300],
      [200, 200],
      [300, 400],
      [0, 20],
    ]);
  });
  test("several water rows give in proportion, ice stays in the final mix, blank rows stay blank", () => {
    expectCells(split([1000, 300, "", 100, 250], ["flour", "water", "", "water", "ice"], 0.2, 1), [
      [200, 800],
      [150, 150],
      ["", ""],
      [50, 50],
      [0, 250],
    ]);
  });
  test("a seed comes off in the flours' proportion, at its own hydration", () => {
    // 200 and 100 of flour, 300 of water; 90 at 50 % bring 60 (40 and 20) of flour and 30 of water.
    expectCells(split([400, 200, 500], ["flour", "flour", "water"], 0.5, 1, 90, 0.5), [
      [160, 200],
      [80, 100],
      [270, 200],
    ]);
  });
  test("no part prefermented leaves everything in the final mix", () => {
    expectCells(split([1000, 700], ["flour", "water"], 0, 1), [
      [0, 1000],
      [0, 700],
    ]);
  });
  test("milk may stand beside water, and moves only when its own part is given", () => {
    expectCells(split([1000, 300, 300], ["flour", "water", "dairy"], 0.3, 1), [
      [300, 700],
      [300, 0],
      [0, 300],
    ]);
  });
});

describe("stages, laws", () => {
  const part = fc.double({ min: 0.01, max: 1, noNaN: true });
  const amount = fc.double({ min: 1, max: 5000, noNaN: true });
  const flours = fc.array(fc.tuple(amount, part), { minLength: 1, maxLength: 4 });
  const waters = fc.array(amount, { minLength: 1, maxLength: 3 });
  const hydration = fc.double({ min: 0.2, max: 2, noNaN: true });

  test("preferment, final mix and the seed's part make up every row, at the hydration asked for", () => {
    fc.assert(
      fc.property(
        flours,
        waters,
        amount,
        part,
        hydration,
        hydration,
        part,
        (dry, wet, salt, salted, h, seedH, some) => {
          const moved = dry.map(([weight, share]) => weight * share);
          const flour = moved.reduce((total, one) => total + one, 0);
          const there = wet.reduce((total, one) => total + one, 0);
          fc.pre(flour * h <= there);
          const seed = some * Math.min(flour, (flour * h) / seedH) * (1 + seedH);
          // A smaller seed reads as a share that was typed, and is refused.
          fc.pre(seed >= 0.006 * flour * (1 + h));
          const [seedFlour, seedWater] = [seed / (1 + seedH), (seed * seedH) / (1 + seedH)];
          const rows = split(
            [...dry.map(([weight]) => weight), ...wet, salt],
            [...dry.map(() => "flour"), ...wet.map(() => "water"), "salt"],
            down(...dry.map(([, share]) => share), ...wet.map(() => ""), salted),
            h,
            seed,
            seedH,
          );
          let [weighedFlour, weighedWater] = [0, 0];
          rows.forEach(([preferment = 0, finalMix = 0], row) => {
            expect(Math.min(preferment, finalMix)).toBeGreaterThanOrEqual(0);
            const one = dry[row];
            const water = wet[row - dry.length];
            if (one) {
              weighedFlour += preferment;
              expectCells(preferment + finalMix + (seedFlour * (moved[row] ?? 0)) / flour, one[0], 1e-8 * one[0]);
            } else if (water !== undefined) {
              weighedWater += preferment;
              expectCells(preferment + finalMix + (seedWater * water) / there, water, 1e-7 * water);
            } else expectCells([preferment, preferment + finalMix], [salt * salted, salt], 1e-8 * salt);
          });
          expectCells((weighedWater + seedWater) / (weighedFlour + seedFlour), h, 1e-7);
        },
      ),
      { seed: SEED, numRuns: tries(300) },
    );
  });

  test("a single share agrees with the preferment worked out from all flour", () => {
    fc.assert(
      fc.property(part, hydration, fc.double({ min: 0.01, max: 0.9, noNaN: true }), (share, h, some) => {
        const seed = some * 1000 * share * (1 + h);
        const [flour, water] = (run("BAKE_PREFERMENT", 1000, share, h, "", seed) as number[][])[0] ?? [];
        const rows = split([600, 400, 1000 * h], ["flour", "flour", "water"], share, h, seed);
        expectCells((rows[0]?.[0] ?? 0) + (rows[1]?.[0] ?? 0), flour, 1e-8);
        expectCells(rows[2]?.[0], water, 1e-8);
      }),
      { seed: SEED },
    );
  });
});

describe("stages refused", () => {
  const pair = ["flour", "water"];
  test.each([
    ["a starter row", [900, 700, 200], [...pair, "levain 100%"], 0.2, [1], /kinds row 3 is a preferment/],
    [
      "a share beside water",
      [1000, 700],
      pair,
      down(0.2, 0.2),
      [1],
      /share row 2 is 20 % beside water; leave it blank/,
    ],
    ["a share beside ice", [1000, 700, 50], [...pair, "ice"], down(0.2, "", 1), [1], /share row 3 is 100 % beside ice/],
    ["even a share of 0", [1000, 700], pair, down(0.2, 0), [1], /share row 2 is 0 % beside water/],
    [
      "a seed too large",
      [1000, 700],
      pair,
      0.2,
      [1, 500],
      /seed is 500, which brings 250 of flour where 200 is wanted; at most 400 fits/,
    ],
    ["too little water", [1000, 150], pair, 0.2, [1], /which takes 200 of water, and the water rows hold 150/],
    ["milk as the only liquid", [1000, 650], ["flour", "dairy"], 0.3, [1], /It is only partly water/],
    ["no liquid at all", [1000, 650], ["flour", "egg"], 0.3, [1], /kinds have no water row/],
    ["no flour", [700, 20], ["water", "salt"], 0.3, [1], /kinds have no flour row/],
    [
      "a seed typed as a share",
      [1000, 700],
      pair,
      0.2,
      [1, 0.05],
      /seed is 0\.05, below 0\.5 % of the preferment's 400/,
    ],
    ["a share typed plain", [1000, 700], pair, 20, [1], /share is 20, which is 2000 %; enter 20% or 0.2/],
    ["a share in the column typed plain", [1000, 700], pair, down(20, ""), [1], /share row 1 is 20, which is 2000 %/],
    ["a hydration typed plain", [1000, 700], pair, 0.2, [100], /hydration is 100, which is 10000 %; enter 100% or 1/],
    ["a blank share", [1000, 700], pair, "", [1], /share is blank; enter a share/],
    ["a kind without its word", [1000, 700], ["flour", "wet"], 0.2, [1], /kinds row 2 is "wet"/],
  ])("%s", (_what, weights, kinds, share, rest, because) => {
    expect(refusal("BAKE_STAGES", down(...weights), down(...kinds), share, ...rest)).toMatch(because);
  });
});
