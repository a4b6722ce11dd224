import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { builtInRows } from "../../shared/larder/built-in-larder.ts";
import { cells, column, LAWS } from "../enrichment/support.ts";
import { down, expectCells, refusal, run } from "./support.ts";

// Laws of water, ice and warmth, with the worked examples of ice.

/** What melting takes up, in degrees of water: 333.55 kJ/kg (CRC Handbook, from memory) over 4.186. */
const MELT = 333.55 / 4.186;

describe("ice", () => {
  test.each([
    ["from memory: Gisslen, 16 lb from 65 to 58 °F, 10 oz", [16, 65, 58, "F"], 0.6348, 5e-4],
    ["derived: 50 lb from 70 to 45 °F", [50, 70, 45, "F"], 6.89, 5e-3],
    ["derived: 10 kg from 18 to 4 °C", [10, 18, 4], 1.4332, 5e-4],
    ["derived: 40 kg from 20 to 10 °C, ice at −18 °C", [40, 20, 10, "C", -18], 3.679, 3e-3],
    ["nothing to cool", [40, 10, 15], 0, 0],
  ])("%s", (_, args, ice, within) => expectCells(cells("BAKE_ICE", ...args)[0], ice, within));

  test("mixed back, warming the ice, melting it and warming what it melts to, it lands on the temperature wanted", () => {
    const temp = fc.double({ min: 0, max: 45, noNaN: true });
    fc.assert(
      fc.property(temp, temp, fc.double({ min: -30, max: 0, noNaN: true }), (one, other, frozen) => {
        const [wanted, tap] = [Math.min(one, other), Math.max(one, other)];
        const [ice = 0, water = 0] = cells("BAKE_ICE", 1000, tap, wanted, "C", frozen);
        expectCells(ice + water, 1000, 1e-9);
        const given = water * 4.186 * (tap - wanted);
        expectCells(ice * (2.1 * -frozen + 4.186 * MELT + 4.186 * wanted), given, 1e-6 * Math.max(1, given));
      }),
      LAWS,
    );
  });

  test("all of it ice is the most; colder is refused", () => {
    expectCells(cells("BAKE_ICE", 10, 20, -79.6)[0], 10, 0.02);
    expect(refusal("BAKE_ICE", 10, 20, -80)).toMatch(/too cold/);
    // From a tap at freezing, water as cold as melting takes up is ice and nothing else.
    expect(run("BAKE_ICE", 10, 0, -MELT)).toEqual([[10, 0]]);
    expectCells(cells("BAKE_ICE", 10, 0, -MELT / 4)[0], 2.5);
  });

  test("water below freezing comes from no tap", () => {
    expect(refusal("BAKE_ICE", 10, -1, -2)).toBe("BAKE_ICE: tap is below freezing; water from a tap is not.");
  });
});

describe("what to do for a water temperature", () => {
  const note = (...args: unknown[]) => run("BAKE_WATERNOTE", ...args) as string;
  const instead = "Warm the flour or the room, or accept a cooler dough and a longer rise.";
  const scalds = " Water this hot scalds: pour and carry it with care.";
  const food = "Ice is food: drinking water, clean scoop.";

  // Yeast's limits and the scald: common practice, no source; the ice by its heat of melting, MELT.
  test.each([
    [[38, 20, "fresh"], "Warm the water to 38 °C."],
    [[38.1, 20], `Water of 38.1 °C is too hot for fresh yeast (38 °C at most). ${instead}`],
    [[49, 20, "none"], `Warm the water to 49 °C.${scalds}`],
    [[60, 20, "none"], `Water of 60 °C is too hot for dough. ${instead}${scalds}`],
    [[20.5, 20], "Use tap water as it is (20 °C)."],
    [[19.5, 20], "Use tap water as it is (20 °C)."],
    [[10, 20], `Cool the tap's water to 10 °C: about 10 % of it as ice, weighed as part of the water. ${food}`],
    [
      [-MELT / 2, 0],
      `Cool the tap's water to -39.8 °C: about 50 % of it as ice, weighed as part of the water. ${food}`,
    ],
  ])("%j", (args, says) => expect(note(...args)).toBe(says));

  test("more ice than half is warned of, and no more than all of it helps", () => {
    expect(note(-MELT * 0.51, 0)).toMatch(/about 51 % of it as ice\. That is more than half: chill flour and water/);
    expect(note(-MELT, 0)).toMatch(/about 100 % of it as ice\. That is more than half/);
    expect(note(-MELT - 1, 0)).toBe(
      "Water of -80.7 °C is colder than ice alone can make it. Cool the flour, mix for less time, or accept a warmer dough.",
    );
  });

  const temp = fc.double({ min: -70, max: 95, noNaN: true });
  const tap = fc.double({ min: 1, max: 60, noNaN: true });
  const LIMITS = { fresh: 38, instant: 40, "active dry": 43, none: 55 };
  test("no yeast meets water above its limit, no hot water goes without its caution, °F says the same", () => {
    const yeast = fc.constantFrom(...(Object.keys(LIMITS) as (keyof typeof LIMITS)[]));
    fc.assert(
      fc.property(temp, tap, yeast, (water, there, kind) => {
        const said = run("BAKE_WATERNOTE", water, there, kind) as string;
        const tooHot = water > LIMITS[kind];
        expect(/too hot for|hotter than a dough/.test(said), said).toBe(tooHot);
        expect(/scalds/.test(said), said).toBe(water >= 49);
        const isNear = Math.abs(water - there) <= 0.5;
        if (!tooHot) expect(/as it is/.test(said), said).toBe(isNear);
        if (!tooHot && !isNear) expect(/^(Warm|Cool|Water of .* colder)/.test(said), said).toBe(true);
        const share = (there - water) / (there + MELT);
        if (!tooHot && !isNear && water < there && share < 0.995)
          expect(said).toContain(`about ${Math.round(share * 100)} % of it as ice`);
        if (share > 0.51 && share < 1 && !tooHot) expect(said).toContain("more than half");
        const inF = run("BAKE_WATERNOTE", water * 1.8 + 32, there * 1.8 + 32, kind, "F") as string;
        expect(inF.split(" ")[0]).toBe(said.split(" ")[0]);
      }),
      {
        ...LAWS,
        examples: [
          [50, 50, "fresh"],
          [20.3, 20, "fresh"],
          [4, 20, "none"],
        ],
      },
    );
  });
});

describe("friction by way of mixing", () => {
  test("low, usual and high stand in order, grow with the minutes where a machine mixes, and °F is × 1.8", () => {
    const machine = fc.constantFrom("stand", "planetary", "spiral");
    const minutes = fc.double({ min: 1, max: 40, noNaN: true });
    fc.assert(
      fc.property(machine, minutes, (mixing, long) => {
        const guide = cells("BAKE_FRICTIONGUIDE", mixing, long);
        expect([...guide].sort((a, b) => a - b)).toEqual(guide);
        expectCells(
          cells("BAKE_FRICTIONGUIDE", mixing, 2 * long),
          guide.map((one) => 2 * one),
        );
        expectCells(
          cells("BAKE_FRICTIONGUIDE", mixing, long, "F"),
          guide.map((one) => 1.8 * one),
        );
      }),
      LAWS,
    );
  });
  test("hand, folds and processor do not depend on the minutes — Cook's Illustrated how-to 5818: 5 °F by hand, 25 °F", () => {
    for (const mixing of ["hand", "folds", "processor"])
      expect(cells("BAKE_FRICTIONGUIDE", mixing, 12)).toEqual(cells("BAKE_FRICTIONGUIDE", mixing));
    const [, , byHand = 0] = cells("BAKE_FRICTIONGUIDE", "hand", "", "F");
    const [low = 0, , high = 0] = cells("BAKE_FRICTIONGUIDE", "processor", "", "F");
    expect(byHand).toBeGreaterThanOrEqual(5);
    expect(low < 25 && 25 < high).toBe(true);
  });
  test("a home stand mixer's 20 °F lies in the usual range for eight minutes; second speed is 1 °C a minute — Cook's Illustrated; duretz.net", () => {
    const [low = 0, , high = 0] = cells("BAKE_FRICTIONGUIDE", "stand", 8, "F");
    expect(low < 20 && 20 < high).toBe(true);
    expectCells(cells("BAKE_FRICTIONGUIDE", "spiral", 6)[1], 6);
  });
});

test("extra water grows with the weight and never depends on the other rows", () => {
  const dry = builtInRows().filter(({ extraWater }) => extraWater !== null);
  fc.assert(
    fc.property(fc.constantFrom(...dry), fc.double({ min: 0.1, max: 1e5, noNaN: true }), (row, weight) => {
      const [[water] = []] = run("BAKE_EXTRAWATER", down(row.name, "flour"), down(weight, 1000)) as number[][];
      expectCells(water, weight * (row.extraWater ?? 0), 1e-9 * weight);
    }),
    LAWS,
  );
});

test("a formula at the usual figure of every band of its style is not remarked, and weights say what percents say", () => {
  // Pan bread as compiled: 63 % water, 2 % salt, 2 % fresh yeast, 5 % sugar, 3 % fat, 4 % milk solids.
  const names = down("flour", "water", "salt", "fresh yeast", "sugar", "lard", "nonfat dry milk");
  const kinds = down("flour", "water", "salt", "yeast", "sugar", "fat", "dairy");
  const nudge = fc.array(fc.double({ min: 0.96, max: 1.04, noNaN: true }), { minLength: 6, maxLength: 6 });
  fc.assert(
    fc.property(nudge, fc.double({ min: 0.5, max: 5e4, noNaN: true }), (factors, flour) => {
      const weights = [63, 2, 2, 5, 3, 4].map((one, at) => (one * flour * (factors[at] ?? 1)) / 100);
      const shares = column("BAKE_FLOURPCT", down(flour, ...weights), kinds);
      const said = run("BAKE_REVIEW", names, kinds, down(...shares), "pan bread") as string[][];
      expect(said.flat()).toEqual(Array(7).fill(""));
    }),
    LAWS,
  );
});
