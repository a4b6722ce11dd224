import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { down, expectCells, refusal, run } from "../functions/support.ts";
import { seedOf } from "../kit/scale.ts";

const SEED = seedOf(4180);

describe("factor method", () => {
  test.each([
    ["T. Lehmann, Pizza Today, June 2018 (°F)", 80, [65, 75], 35, 65],
    ["baking school hand-out quoted by farine-mc (°F)", 75, [65, 65], 8, 87],
    ["eHow text: 8 minutes at 2 °F (°F)", 78, [60, 70], 16, 88],
    ["Cooking Stack Exchange 107561, by hand (°F)", 78, [72, 72], 0, 90],
    ["A treatise on baking, chestofbooks: shop 85, flour 67 (°F)", 78, [85, 67], 0, 82],
    ["A treatise on baking, chestofbooks: shop 72, flour 62 (°F)", 78, [72, 62], 0, 100],
    ["derived on the rule for four temperatures (°F)", 76, [68, 70, 72], 24, 70],
    ["derived (°C)", 25, [20, 22], 14, 19],
    ["from memory: Gisslen, Professional Baking (°F)", 80, [68, 72], 20, 80],
    ["Cook's Illustrated how-to 5818 (°F)", 75, [71, 71, 71], 20, 67],
    ["duretz.net: base temperature 48, so that 3 × 24 − factor 24 (°C)", 24, [21, 21], 24, 6],
    ["Online pastry training school: 72 − 18 − 18 − 8 (°C)", 24, [18, 18], 8, 28],
    ["The Fresh Loaf node/57180: 5 °F is 2.78 °C", 24, [20, 21], 5 / 1.8, 28.222222222],
  ])("%s", (_source, dough, temps, friction, water) => {
    expectCells(run("BAKE_WATERTEMP", dough, down(...temps), friction), water, 1e-8);
    expectCells(run("BAKE_FRICTION", dough, down(...temps), water), friction, 1e-8);
    expectCells(run("BAKE_DOUGHTEMP", water, down(...temps), friction), dough, 1e-8);
  });

  test("blanks are skipped, one temperature alone and more than three are refused", () => {
    expectCells(run("BAKE_WATERTEMP", 25, down(20, "", 22), 14), 19);
    const fits = "give two (flour, room) or three (flour, room, preferment) together, such as {20; 22}.";
    expect(refusal("BAKE_WATERTEMP", 25, down(20, ""), 14)).toBe(
      `BAKE_WATERTEMP: temps hold one temperature alone; ${fits}`,
    );
    expectCells(run("BAKE_DOUGHTEMP", 19, down(20, "", 22), 14), 25);
    expect(refusal("BAKE_FRICTION", 25, down(20, 22, 24, 26), 14)).toBe(
      `BAKE_FRICTION: temps hold 4 temperatures; ${fits}`,
    );
  });

  // Per minute: duretz.net, The Fresh Loaf node/7145, planetary from memory; by hand and processor: Cook's Illustrated how-to 5818.
  test.each([
    ["hand", [0, 1.5, 3]],
    ["folds", [0, 1.5, 3]],
    ["processor", [11, 14, 20]],
    ["stand", [4, 11, 17]],
    ["planetary", [8, 14, 19]],
    ["spiral", [6, 10, 15]],
  ])("ten minutes by %s: low, usual and high factor", (mixing, factors) => {
    expectCells(run("BAKE_FRICTIONGUIDE", mixing, 10), [factors]);
  });

  test("3 degrees more in the water give 1 in the dough (duretz.net)", () => {
    const water = (dough: number) => run("BAKE_WATERTEMP", dough, down(20, 21), 8) as number;
    expect(water(25) - water(24)).toBe(3);
  });

  test("water from friction, then friction from water", () => {
    const temp = fc.double({ min: -10, max: 55, noNaN: true });
    const friction = fc.double({ min: -50, max: 50, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: -10, max: 50, noNaN: true }),
        fc.array(temp, { minLength: 2, maxLength: 3 }),
        friction,
        (dough, temps, one) => {
          const water = run("BAKE_WATERTEMP", dough, down(...temps), one) as number;
          expectCells(run("BAKE_DOUGHTEMP", water, down(...temps), one), dough, 1e-9);
          fc.pre(water >= -40 && water <= 250);
          expectCells(run("BAKE_FRICTION", dough, down(...temps), water), one, 1e-9);
        },
      ),
      { seed: SEED },
    );
  });
});

describe("heat balance, worked examples", () => {
  const pair = (weights: [number, number], flour: number, target: number, rise?: number, unit?: string) =>
    run("BAKE_HEATBALANCE", target, down(...weights), down(flour, ""), down("flour", "water"), rise ?? "", unit ?? "");
  const CAPACITY = 2 * 1.76 + 4.18;

  test("Çengel & Boles, Thermodynamics, 5-157: 15 kJ per kg of dough, tap's water chilled to 4.2 °C", () => {
    expectCells(pair([2, 1], 15, 15, 45 / CAPACITY), 4.2, 0.05);
  });
  test("the same with 15 kJ per kg of flour: 7.82 °C", () => {
    expectCells(pair([2, 1], 15, 15, 30 / CAPACITY), 7.82, 5e-3);
  });
  test("derived: 65 %, flour 20, dough 26, no heat: 29.887 °C", () => {
    expectCells(pair([1, 0.65], 20, 26, 0), 29.887, 5e-4);
  });
  test("derived: the same with 15.1 kJ per kg of flour and 11 kJ of work per kg of dough: 17.649 °C", () => {
    expectCells(pair([1, 0.65], 20, 26, (15.1 + 11 * 1.65) / (1.76 + 0.65 * 4.18)), 17.649, 5e-4);
  });
  test("derived: flour 5, dough 24: 36.31 °C, where the factor method says 47", () => {
    expectCells(pair([1, 0.65], 5, 24, 0), 36.31, 5e-3);
    expectCells(run("BAKE_WATERTEMP", 24, down(5, 20), 0), 47);
  });
  test("derived: all at 20, dough 24: 26.59 °C, where the factor method says 32", () => {
    expectCells(pair([1, 0.65], 20, 24, 0), 26.59, 5e-3);
    expectCells(run("BAKE_WATERTEMP", 24, down(20, 20), 0), 32);
  });
  test("Cooking Stack Exchange 107561: 82 °F, and water of 90 °F makes 82.8 °F", () => {
    expectCells(pair([1000, 650], 72, 78, 0, "F"), 82, 0.5);
    expectCells(pair([1000, 650], 72, 82.8, 0, "F"), 90, 0.5);
  });
  test("Cooking Stack Exchange 107561: 5 g of flour in 100 g of water at 90 °F make 89.6 °F", () => {
    expectCells(pair([5, 100], 72, 89.6, 0, "F"), 90, 0.05);
  });
  test("Baker's Dictionary, heat of hydration: 3.37 K at 65 % unless a rise is given", () => {
    expectCells(pair([1, 0.65], 20, 20 + 3.3728), 20, 5e-3);
  });

  const iced = (target: number, water: number, ice: number, at: number | "") =>
    run("BAKE_HEATBALANCE", target, down(water, ice), down("", at), down("water", "ice"), 0);
  test("a published ice formula (LinkedIn, 'A simple calculation'), mended: 36 kg at 20 °C and 4 kg of ice make 10 °C", () => {
    expectCells(iced(10, 36, 4, 0), 20, 0.1);
    expectCells(iced(9, 35.6, 4.4, ""), 20, 0.1);
  });
  test("derived: 10 kg from 18 to 4 °C hold 1.4332 kg of ice; 40 kg from 20 to 10 °C hold 3.679 kg at −18 °C", () => {
    expectCells(iced(4, 8.5668, 1.4332, ""), 18, 0.03);
    expectCells(iced(10, 36.321, 3.679, -18), 20, 0.03);
  });
});

describe("friction fit", () => {
  const lineOf = (minutes: unknown[], frictions: unknown[]) => {
    const [row = []] = run("BAKE_FRICTIONFIT", down(...minutes), down(...frictions)) as number[][];
    const [atZero = 0, perMinute = 0, miss = 0, mixes = 0] = row;
    return { atZero, perMinute, miss, mixes };
  };

  test("by hand: repeated medians of four mixes", () => {
    // Slopes from (4, 6): 1, 1.5, 2; (6, 8): 1, 2, 2.5; (8, 12): 1.5, 2, 3; (10, 18): 2, 2.5, 3. Medians 1.5, 2, 2, 2.5.
    // What is left at slope 2: −2, −4, −4, −2, median −3; from it 1, −1, −1, 1.
    expect(lineOf([4, 6, 8, 10], [6, 8, 12, 18])).toEqual({ atZero: -3, perMinute: 2, miss: 1, mixes: 4 });
  });
  test("mixes of the same minutes: the median and 0 per minute", () => {
    expect(lineOf([8, 8, 8, 8], [10, 12, 14, 90])).toEqual({ atZero: 13, perMinute: 0, miss: 2, mixes: 4 });
  });
  test("half-filled rows are skipped, wherever they stand", () => {
    expect(lineOf(["", 4, 6, 8, "", 10], [50, 7, 9, 11, "", ""])).toEqual({
      atZero: 3,
      perMinute: 1,
      miss: 0,
      mixes: 3,
    });
  });

  const minutes = fc.uniqueArray(fc.integer({ min: 1, max: 30 }), { minLength: 5, maxLength: 12 });
  const atZero = fc.double({ min: -5, max: 15, noNaN: true });
  const perMinute = fc.double({ min: -1, max: 2, noNaN: true });
  const wild = fc.double({ min: -150, max: 150, noNaN: true });

  test("among five mixes or more one wild reading leaves the line as it is", () => {
    fc.assert(
      fc.property(minutes, atZero, perMinute, wild, fc.nat(), (times, start, slope, reading, at) => {
        const read = times.map((one) => start + slope * one);
        read[at % times.length] = reading;
        const line = lineOf(times, read);
        expectCells([line.atZero, line.perMinute, line.miss], [start, slope, 0], 1e-9);
      }),
      { seed: SEED },
    );
  });

  test("with scatter, a wild reading keeps the slope among the slopes of the good pairs", () => {
    const scatter = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 12, maxLength: 12 });
    fc.assert(
      fc.property(minutes, perMinute, scatter, wild, fc.nat(), (times, slope, noise, reading, at) => {
        const bad = at % times.length;
        const read = times.map((one, index) => (index === bad ? reading : 8 + slope * one + (noise[index] ?? 0)));
        const good = times.map((x, index) => ({ x, y: read[index] ?? 0 })).filter((_, index) => index !== bad);
        const slopes = good.flatMap((a) => good.filter((b) => b.x > a.x).map((b) => (b.y - a.y) / (b.x - a.x)));
        const found = lineOf(times, read).perMinute;
        expect(found).toBeGreaterThanOrEqual(Math.min(...slopes) - 1e-9);
        expect(found).toBeLessThanOrEqual(Math.max(...slopes) + 1e-9);
      }),
      { seed: SEED },
    );
  });

  test.each([
    [[4, ""], [7, 8], "there is 1."],
    [[4, 6, ""], [7, 8, 9], "there are 2."],
    [[4, 6, 8], ["", "", ""], "there are 0."],
    [[4, 600, 8], [7, 8, 9], "minutes row 2 is 600; it cannot be above 120."],
    [[4, 6, 8], [7, "warm", 9], 'frictions row 2 is "warm"'],
  ])("%j with %j is refused", (times, read, because) => {
    expect(refusal("BAKE_FRICTIONFIT", down(...times), down(...read))).toContain(because);
  });
});
