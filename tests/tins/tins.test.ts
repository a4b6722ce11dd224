import Qty from "js-quantities";
import { describe, expect, test } from "vitest";
import { down, expectCells, refusal, run } from "../functions/support.ts";

/** Capacity by adding up thin slices of the tin, its walls narrowing evenly: independent of the closed formulas. */
function sliced(depth: number, areaAt: (height: number) => number, slices = 20_000): number {
  let sum = 0;
  for (let slice = 0; slice < slices; slice++) sum += areaAt((slice + 0.5) / slices);
  return (sum * depth) / slices;
}
const between = (base: number, top: number, height: number) => base + (top - base) * height;

describe("capacity — published sizes and exact volumes (NIST SP 811: 16.387064 cm³ in a cubic inch)", () => {
  test.each([
    ["lidded 9 × 4 × 4 in — Wordloaf", "box", [9, 4, 4], "in", 2359.737],
    [
      "loaf tin 8.5 × 4.5 over 7.5 × 3.5, 2.6 in — Wordloaf sizes, Simpson's rule",
      "box",
      [8.5, 4.5, 2.6, 7.5, 3.5],
      "in",
      1366.954,
    ],
    ["24 × 12 over 20 × 9, 8 deep — derived", "box", [24, 12, 8, 20, 9], "cm", 1856],
    ["AACC 10-10.03 pound pan 22.9 × 11.4 over 21 × 9.6, 7 deep", "box", [22.9, 11.4, 7, 21, 9.6], "cm", 1615.32],
    [
      "24.5 × 12 over 22.5 × 10, 7.5 deep — The Fresh Loaf node/42795, sized from there",
      "box",
      [24.5, 12, 7.5, 22.5, 10],
      "cm",
      1941.25,
    ],
    ["16 × 11 × 7 — breadpages.org.uk: 1232 ml, not 1.5 l", "box", [16, 11, 7], "cm", 1232],
    ["13 × 9 × 2 in", "box", [13, 9, 2], "in", 3834.573],
    ["round 20 × 5", "round", [20, 5], "cm", 1570.796],
    ["round 8 × 2 in", "round", [8, 2], "in", 1647.407],
    ["round 23 over 20, 7.5 deep", "round", [23, 7.5, 20], "cm", 2727.295],
    ["ring 25 with a tube of 6, 10 deep", "ring", [25, 6, 10], "cm", 4625.995],
    ["ring 25 over 22, tube 6 over 8, 10 deep", "ring", [25, 6, 10, 22, 8], "cm", 3955.789],
    ["oval 30 × 20 × 6", "oval", [30, 20, 6], "cm", 2827.433],
    ["dome of 20", "dome", [20], "cm", 2094.395],
    ["dome of 20, 6 deep", "dome", [20, 6], "cm", 1055.575],
    ["wreath 22 with a tube of 6", "wreath", [22, 6], "cm", 710.612],
    ["octagon of side 5, 5 deep", "polygon", [8, 5, 5], "cm", 603.553],
    ["1520 g of water at 20 °C", "water", [1520], "cm", 1522.73],
    ["in millimetres", "round", [200, 50], "mm", 1570.796],
  ] as const)("%s", (_, shape, sizes, unit, expected) => {
    expectCells(run("BAKE_TINCAPACITY", shape, down(...sizes), unit), expected, expected * 4e-6);
  });

  test("agrees with adding up slices, whatever the shape", () => {
    const half = Math.PI / 4;
    const cases: [string, number[], number][] = [
      ["box", [24.5, 12, 7.5, 22.5, 10], sliced(7.5, (h) => between(22.5, 24.5, h) * between(10, 12, h))],
      ["round", [23, 7.5, 20], sliced(7.5, (h) => half * between(20, 23, h) ** 2)],
      ["oval", [30, 20, 6, 26, 17], sliced(6, (h) => half * between(26, 30, h) * between(17, 20, h))],
      ["ring", [25, 6, 10, 22, 8], sliced(10, (h) => half * (between(22, 25, h) ** 2 - between(8, 6, h) ** 2))],
      [
        "dome",
        [20, 6],
        sliced(6, (h) => Math.PI * (100 - ((100 - 36) / 12 + 6 * (1 - h)) ** 2 + ((100 - 36) / 12) ** 2)),
      ],
      ["wreath", [22, 6], sliced(3, (h) => 2 * Math.PI * 8 * 2 * Math.sqrt(9 - (3 * (1 - h)) ** 2))],
      ["polygon", [6, 9, 5], sliced(5, () => 1.5 * Math.sqrt(3) * 81)],
    ];
    for (const [shape, sizes, expected] of cases)
      expectCells(run("BAKE_TINCAPACITY", shape, down(...sizes)), expected, expected * 1e-5);
  });

  test("inches against a general library of units", () => {
    const cm3 = Qty("1 in^3").to("cm^3").scalar;
    expectCells(run("BAKE_TINCAPACITY", "box", down(13, 4, 4), "in"), 208 * cm3, 1e-6);
  });

  test.each([
    ["a blank depth", ["box", down(23, 13, "")], /no depth: place 3 is blank/],
    ["a base without its width", ["box", down(23, 13, 7, 20, "")], /have the base length without the rest/],
    ["a size of 0", ["oval", down(30, 0, 6)], /0 as width; it must be above 0/],
    ["depth and diameter swapped", ["round", down(7, 23)], /the order is diameter, depth, base diameter/],
    ["a base too narrow", ["round", down(23, 7, 5)], /less than a quarter/],
    ["a tube wider than the ring", ["ring", down(20, 25, 8)], /fills the diameter/],
    ["too many sizes", ["dome", down(20, 6, 3)], /are 3, and a dome tin takes diameter, \[depth\]/],
    ["a polygon of two and a half sides", ["polygon", down(2.5, 4, 4)], /whole number from 3/],
    ["a shape nobody knows", ["heart", down(20, 5)], /shape is "heart"; choose "box"/],
  ])("%s is refused", (_, args, sentence) => {
    expect(refusal("BAKE_TINCAPACITY", ...args)).toMatch(sentence);
  });

  test("trade words for shapes and units are read", () => {
    expectCells(run("BAKE_TINCAPACITY", "Loaf tin", down(9, 4, 4), "inches"), 2359.737, 0.01);
    expectCells(run("BAKE_TINCAPACITY", "square", down(20, 20, 5), "CM"), 2000);
  });
});

describe("areas", () => {
  test.each([
    ["11 oz at 12 in to 14 — Pizza Today, October 2019: 14.972 oz", 11, 12, 14, 14.972],
    ["11 oz at 12 in to 16: 19.556 oz", 11, 12, 16, 19.556],
    ["10 oz at 12 in to 10 — Pizza Today, September 2012: 6.9444 oz", 10, 12, 10, 6.9444],
    ["10 oz at 12 in to 16: 17.7778 oz", 10, 12, 16, 17.7778],
  ])("%s", (_, dough, from, to, expected) => {
    const area = (diameter: number) => run("BAKE_TINAREA", "round", down(diameter), "in");
    expectCells(run("BAKE_RESCALE", down(dough), area(to), area(from)), expected, 1e-3);
  });

  test("13 oz at 12 in to an 18 × 26 in sheet — Pizza Today, October 2013: 53.79 oz with an exact π", () => {
    const from = run("BAKE_TINAREA", "round", down(12), "in");
    expectCells(run("BAKE_RESCALE", down(13), run("BAKE_TINAREA", "box", down(18, 26), "in"), from), 53.794, 1e-3);
  });

  test("23 to 28 cm: 1.4820 — baking-forums, printed 1.48; ring and wreath count the ring alone", () => {
    const area = (diameter: number) => run("BAKE_TINAREA", "round", down(diameter)) as number;
    expect(area(28) / area(23)).toBeCloseTo(1.482, 4);
    expectCells(run("BAKE_TINAREA", "ring", down(25, 6, 10)), (Math.PI / 4) * (625 - 36));
    expectCells(run("BAKE_TINAREA", "wreath", down(22, 6)), Math.PI * (11 ** 2 - 5 ** 2));
  });
});

describe("dough in tins", () => {
  test.each([
    ["lidded white, 27 × 10 × 9 cm, 830 g — tutti-sandwiches.fr", "lidded white", 2430, 830, 0.01],
    ["lidded white, 13 × 4 × 4 in, 40.7 oz — yumarama.com/3919", "lidded white", 3408.5, 1154, 0.01],
    ["dense rye, 9 × 4 × 4 in, 1350.6 g — The Fresh Loaf node/22023", "rye", 2359.7, 1350.6, 0.01],
    ["brownie, 5 lb 3 oz in 13 × 18 × 1 in — USDA quantity recipes 1988", "brownie", 3834.57, 2353, 0.02],
  ])("%s: the guide's usual is within a hundredth or two", (_, kind, capacity, grams, within) => {
    expect(Math.abs((run("BAKE_TINDOUGH", capacity, kind) as number) / grams - 1)).toBeLessThan(within);
  });

  test("the range of a rule: 5 to 6 g per cubic inch of a lidded tin — toolntricks.com, 1040 to 1248 g", () => {
    const [[, low, usual, high]] = run("BAKE_TINNOTE", 1144, 3408.5, "lidded white") as [
      [string, number, number, number],
    ];
    expect(low).toBeGreaterThan(1010);
    expect(low).toBeLessThan(1144);
    expect(usual).toBeGreaterThan(1040);
    expect(usual).toBeLessThan(1248);
    expect(high).toBeLessThan(1275);
  });

  test.each([
    [1500, "lidded white", /above the usual range .*dense loaf/],
    [700, "lidded white", /below the usual range .*low loaf/],
    [1159, "lidded white", /the usual one/],
    [1060, "lidded white", /light side/],
    [2400, "sponge", /run over the rim/],
  ])("%d g in 3408.5 cm³ of %s", (dough, kind, sentence) => {
    expect((run("BAKE_TINNOTE", dough, 3408.5, kind) as string[][])[0]?.[0]).toMatch(sentence);
  });

  test("a kind without a source is refused with the list, trade words are read", () => {
    expect(refusal("BAKE_TINGUIDE", "multigrain")).toMatch(/choose "lidded white"/);
    expectCells(run("BAKE_TINGUIDE", "Brioche"), run("BAKE_TINGUIDE", "enriched"));
    expectCells(run("BAKE_TINGUIDE", "whole wheat"), run("BAKE_TINGUIDE", "wholemeal"));
    expect(refusal("BAKE_TINDOUGH", 1900, 0.01)).toMatch(/between 0.05 and 2/);
  });

  test("ounces and pounds", () => {
    expectCells(run("BAKE_TINDOUGH", 3408.509, 0.34, 2, "oz"), (2 * 0.34 * 3408.509) / 28.349523125);
  });
});
