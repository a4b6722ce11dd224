import { describe, expect, test } from "vitest";
import { cells, column, number } from "../enrichment/support.ts";
import { down, expectCells, refusal, run } from "./support.ts";

// Questions that bakers asked in public, each with the figure asked for and the slip that was made or printed. A figure a
// question leaves out is filled in and marked "supplied".

const round = (...sizes: number[]) => number("BAKE_TINCAPACITY", "round", down(...sizes), "in");
const box = (sizes: readonly unknown[], unit = "cm") => number("BAKE_TINCAPACITY", "box", down(...sizes), unit);
const factor = (to: number, from: number) => number("BAKE_RESCALE", 1, to, from);
const apart = (right: number, wrong: number) => Math.abs(right - wrong) / right;

describe("T2: a 12 inch round recipe in a 9 inch tin — Mumsnet, Making cake in smaller tins (1769010)", () => {
  const area = (inches: number) => number("BAKE_TINAREA", "round", down(inches), "in");
  test("of one depth it is (9 ÷ 12)², by area and by capacity", () => {
    expectCells(factor(area(9), area(12)), 0.5625, 5e-4);
    expectCells(factor(round(9, 3), round(12, 3)), 0.5625, 5e-4);
    expectCells(factor(area(6), area(9)), 0.444, 5e-4);
  });
  test("the cube, 42 %, holds only where the depth goes down too; the plain ratio 0.75 never", () => {
    expectCells(factor(round(9, 2.25), round(12, 3)), 0.4219, 5e-4);
    expect(factor(round(9, 3), round(12, 3))).not.toBeCloseTo(0.75, 1);
  });
});

describe("T4: 8 × 2 to 10 × 3 inch round — cocoandme.com, cake pan size conversion", () => {
  test("2.344 times with the depths, 1.5625 at one depth, neither rounded on the way", () => {
    expectCells(factor(round(10, 3), round(8, 2)), 2.344, 1e-3);
    expectCells(factor(round(10, 2), round(8, 2)), 1.5625, 1e-3);
    expectCells([round(10, 3), round(8, 2)], [3861, 1647], 0.5);
  });
  test("a depth left out of one tin is asked for, never taken as 0 or as the other's", () => {
    expect(refusal("BAKE_TINCAPACITY", "round", down(10, ""), "in")).toMatch(/no depth/);
    expect(refusal("BAKE_TINCAPACITY", "round", down(10), "in")).toMatch(/no depth/);
  });
});

describe('T7: "2 lb" loaf tins — The Fresh Loaf node/42795; breadpages.org.uk C-04', () => {
  test("a tapered tin is less than the box of its rim, the difference shown", () => {
    const tapered = box([24.5, 12, 7.5, 22.5, 10]);
    expectCells(tapered, 1941.3, 1.9413);
    expectCells(box([24.5, 12, 7.5]), 2205);
    expectCells(box([21.5, 11.25, 6.5]), 1572, 0.5);
    // The mean-box and square-frustum shortcuts print 1938.8 and 1940.5.
    expect(apart(tapered, box([23.5, 11, 7.5]))).toBeGreaterThan(1e-3);
  });
  test("weighed full of water the two are 2.0 and 1.4 l, 1.43 times", () => {
    const water = (grams: number) => number("BAKE_TINCAPACITY", "water", down(grams));
    expectCells(factor(water(2000), water(1400)), 1.43, 5e-3);
  });
  test("the name of a tin is no size: it is refused, not looked up", () => {
    expect(refusal("BAKE_TINCAPACITY", "2 lb loaf", down(24.5, 12, 7.5))).toMatch(/shape is "2 lb loaf"; choose "box"/);
  });
  test("16 × 11 × 7 cm and 6 × 4 × 2 in differ by more than a third, and neither holds 1.5 l", () => {
    const [metric, inches] = [box([16, 11, 7]), box([6, 4, 2], "in")];
    expectCells([metric, inches], [1232, 787], 0.5);
    expect(apart(metric, inches)).toBeGreaterThan(0.05);
    // 1500 g of dough in it is beyond what an open white loaf is ever given.
    expect(cells("BAKE_TINNOTE", 1500, metric, "white")[3]).toBeLessThan(1500);
  });
});

describe("T8: dough for a lidded 13 × 4 × 4 inch tin — toolntricks.com, cookingexpertise.com", () => {
  const capacity = () => box([13, 4, 4], "in");
  test("5 to 6 g per cubic inch, 1144 g in the middle, flour 702 g of it at 60 % (percents supplied)", () => {
    const at = (perInch: number) => number("BAKE_TINDOUGH", capacity(), perInch / 16.387064);
    expectCells([at(5), at(5.5), at(6)], [1040, 1144, 1248], 5);
    const [flour] = column(
      "BAKE_WEIGHTS",
      down(100, 60, 2, 1),
      down("flour", "water", "salt", "yeast"),
      number("BAKE_TINDOUGH", capacity(), 0.336),
    );
    expectCells(flour, 702, 5);
    expectCells(number("BAKE_TINDOUGH", box([9, 4, 4], "in"), 5 / 16.387064), 720, 5);
  });
  test("1144 g lies in the guide's lidded band; as flour it would not, and the open band is another", () => {
    const note = (dough: number) => (run("BAKE_TINNOTE", dough, capacity(), "lidded white") as string[][])[0]?.[0];
    expect(note(1144)).toMatch(/^Fill 0\.34 g\/cm³, the usual one for lidded white/);
    expect(note(1144 * 1.63)).toMatch(/^Fill 0\.55 g\/cm³, above the usual range for lidded white/);
    expect(cells("BAKE_TINGUIDE", "white")[1]).toBeGreaterThan(cells("BAKE_TINGUIDE", "lidded white")[2] ?? 0);
  });
});

describe("B1: salt beside a levain — The Fresh Loaf node/42177", () => {
  const kinds = down("flour", "flour", "levain 100%", "water", "salt");
  const weights = [900, 100, 200, 750, 20];
  test("77.27 % water, 1.82 % salt, 9.09 % prefermented, 22 g for 2 % of all flour", () => {
    const shares = column("BAKE_FLOURPCT", down(...weights), kinds).map((one) => 100 * one);
    expectCells([(shares[2] ?? 0) / 2, shares[4]], [9.09, 1.82], 0.01);
    expectCells(100 * number("BAKE_HYDRATION", down("", "", "", "", ""), down(...weights), kinds), 77.27, 0.01);
    const percents = [...weights.slice(0, 4).map((one) => one / 11), 2];
    expectCells(column("BAKE_WEIGHTS", down(...percents), kinds, 1100, "flour")[4], 22, 0.1);
  });
  test("the book's frame, 75 % and 2 % of the added flour, makes the same 1970 g and is not mixed with the other", () => {
    expectCells(column("BAKE_WEIGHTS", down(90, 10, 20, 75, 2), kinds, 1970), weights, 1e-9);
    expect(refusal("BAKE_WEIGHTS", down(90, 5, 20, 75, 2), kinds, 1970)).toMatch(
      /with or without the flour inside preferments/,
    );
  });
});

describe("B2: rye with 15 % of a 60 % starter — The Fresh Loaf node/62948", () => {
  const at = (starter: string) =>
    number("BAKE_HYDRATION", down("", "", "", ""), down(1000, 700, 20, 150), down("flour", "water", "salt", starter));
  const percents = down(100, 70, 2, 15);
  const kinds = down("flour", "water", "salt", "starter 60%");
  test("69.14 % overall; 72.1 % is a 100 % starter's, and 60 % is not the water's share", () => {
    expectCells(100 * at("starter 60%"), 69.14, 0.05);
    expectCells(100 * at("starter 100%"), 72.1, 0.05);
    expect(at("starter 60%")).not.toBeCloseTo((700 + 90) / 1060, 2);
  });
  test("salt stays 20 g (1.83 % overall), dough 1870 g", () => {
    const weights = column("BAKE_WEIGHTS", percents, kinds, 1000, "flour");
    expectCells(
      weights.reduce((sum, one) => sum + one, 0),
      1870,
      1,
    );
    expectCells(weights[2], 20, 0.05);
    expectCells(100 * (column("BAKE_FLOURPCT", down(...weights), kinds)[2] ?? 0), 1.83, 0.05);
  });
});

describe('B3: "20 % levain" of what? — The Fresh Loaf node/64591', () => {
  test.each([
    ["weight of added flour", 181.8, 909.1, 689.1, 9.09],
    ["weight of all flour", 200, 900, 680, 10],
    ["prefermented flour", 400, 800, 580, 20],
  ])("%s: levain %d, flour %d, water %d, 1800 g of dough each time", (basis, levain, added, water, prefermented) => {
    const [flour = 0, wet = 0] = cells("BAKE_PREFERMENT", 1000, 0.2, 1, basis);
    expectCells([flour + wet, 1000 - flour], [levain, added], 0.1);
    expectCells(flour / 10, prefermented, 0.01);
    const rows = run("BAKE_STAGES", down(1000, 780, 20), down("flour", "water", "salt"), flour / 1000, 1) as number[][];
    expectCells([rows[0]?.[1], rows[1]?.[1]], [added, water], 0.1);
    expectCells(
      rows.flat().reduce((sum, one) => sum + one, 0),
      1800,
      1e-9,
    );
  });
});

describe("S1: firm 50 % starter for 167 g at 100 % — The Fresh Loaf comment/99090", () => {
  test("125.25 g and 41.75 g of water; 167 g as it is would bring 27.8 g too much flour, and is refused", () => {
    expectCells(run("BAKE_STARTERFEED", 167, 1, 0.5), [[125.25, 0, 41.75]], 0.1);
    expect(refusal("BAKE_STARTERFEED", 167, 1, 0.5, 167)).toMatch(/brings 111\.33 of flour where 83\.5 is wanted/);
  });
});

describe("S4: from 70 % to 60 %, the starter forgotten — r/Sourdough 1jlrxje; The Fresh Loaf comment/299010", () => {
  const none = down("", "", "");
  const kinds = down("flour", "water", "levain 100%");
  test("75.1 % before, 64.4 % as planned, 275 g of water for 60 %", () => {
    const at = (water: number) => 100 * number("BAKE_HYDRATION", none, down(500, water, 125), kinds);
    expectCells([at(360), at(300), at(275)], [75.1, 64.4, 60], 0.1);
    const water = number("BAKE_PLAINWATER", none, down(500, 300, 125), kinds, 0.6);
    expectCells(water, 275, 0.5);
    expect(water).not.toBeCloseTo(0.6 * 500, 0);
  });
  test("a doubled starter at one hydration: 230 g of water, and the salt falls to 1.82 %", () => {
    const more = down("flour", "water", "starter 100%", "salt");
    expectCells(number("BAKE_PLAINWATER", [...none, [""]], down(450, 250, 200, 10), more, 0.6), 230, 0.5);
    const salt = (starter: number) => 100 * (column("BAKE_FLOURPCT", down(450, 250, starter, 10), more)[3] ?? 0);
    expectCells([salt(100), salt(200)], [2, 1.82], 0.01);
  });
});
