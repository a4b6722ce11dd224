import { describe, expect, test } from "vitest";
import { number } from "../enrichment/support.ts";
import { down, expectCells, refusal, run } from "../functions/support.ts";

// The sizes each shape takes, the edges of what fits, and how a fill is judged.

const capacity = (shape: string, sizes: readonly unknown[], unit = "") =>
  number("BAKE_TINCAPACITY", shape, down(...sizes), unit);
const area = (shape: string, sizes: readonly unknown[], unit = "") =>
  number("BAKE_TINAREA", shape, down(...sizes), unit);
const refused = (name: string, shape: string, ...sizes: unknown[]) => refusal(`BAKE_${name}`, shape, down(...sizes));

const ORDERS = {
  box: "length, width, depth, [base length], [base width]",
  round: "diameter, depth, [base diameter]",
  ring: "diameter, tube diameter, depth, [base diameter], [tube base diameter]",
  oval: "length, width, depth, [base length], [base width]",
  dome: "diameter, [depth]",
  wreath: "outer diameter, tube diameter",
  polygon: "sides, side length, depth",
  water: "grams of water",
};

describe("sizes", () => {
  test.each(Object.entries(ORDERS))("of a %s tin are told in their order: %s", (shape, order) => {
    const many = order.split(", ").length + 1;
    expect(refused("TINCAPACITY", shape, ...Array(many).fill(8))).toBe(
      `BAKE_TINCAPACITY: sizes are ${many}, and a ${shape} tin takes ${order}.`,
    );
  });
  test.each([
    ["TINCAPACITY", "box", [20, "", 5], "have no width: place 2 is blank"],
    ["TINCAPACITY", "round", [20, "", 18], "have no depth: place 2 is blank"],
    ["TINAREA", "box", [20], "have no width: place 2 is blank"],
    ["TINAREA", "ring", [25, "", 10], "have no tube diameter: place 2 is blank"],
    ["TINCAPACITY", "box", [20, 10, 5, 18], "have the base length without the rest"],
    ["TINCAPACITY", "box", [20, 10, 5, "", 9], "have the base width without the rest"],
  ])("%s of a %s tin %j is refused", (name, shape, sizes, says) => {
    const order = ORDERS[shape as keyof typeof ORDERS];
    expect(refused(name, shape, ...sizes)).toBe(`BAKE_${name}: sizes ${says}; a ${shape} tin takes ${order}.`);
  });
  test.each([
    ["TINCAPACITY", "box", [20, 10, 0], "have 0 as depth; it must be above 0"],
    ["TINCAPACITY", "round", [20, 5, 0], "have 0 as base diameter; it must be above 0"],
    [
      "TINCAPACITY",
      "round",
      [20, 5, 4.9],
      "have a base of 4.9, less than a quarter of the diameter of 20; the order is diameter, depth, base diameter",
    ],
    [
      "TINCAPACITY",
      "round",
      [20, 20.1],
      "have a depth of 20.1 above the diameter of 20; the order is diameter, depth, base diameter",
    ],
    [
      "TINCAPACITY",
      "ring",
      [25, 25, 10],
      "have a tube of 25 that fills the diameter of 25; the order is diameter, tube diameter, depth",
    ],
    [
      "TINCAPACITY",
      "ring",
      [25, 6, 10, 8, 8],
      "have a tube of 8 that fills the base diameter of 8; the order is diameter, tube diameter, depth",
    ],
    [
      "TINAREA",
      "ring",
      [6, 25],
      "have a tube of 25 that fills the diameter of 6; the order is diameter, tube diameter, depth",
    ],
    [
      "TINCAPACITY",
      "dome",
      [20, 10.1],
      'have a depth of 10.1 above half the diameter of 20; weigh such a tin with "water"',
    ],
    [
      "TINCAPACITY",
      "wreath",
      [22, 11.1],
      "have a tube of 11.1 above half the outer diameter of 22; the order is outer diameter, tube diameter",
    ],
    ["TINAREA", "wreath", [22, 11.1], "have a tube of 11.1 above half the outer diameter of 22"],
    ["TINCAPACITY", "polygon", [2, 4, 4], "have 2 as the number of sides; enter a whole number from 3"],
    ["TINAREA", "polygon", [6.5, 4], "have 6.5 as the number of sides; enter a whole number from 3"],
  ])("%s of a %s tin %j is refused", (name, shape, sizes, says) => {
    expect(refused(name, shape, ...sizes)).toBe(`BAKE_${name}: sizes ${says}.`);
  });
  test("what fits exactly, by the formulas of solids", () => {
    // A cone cut off at a quarter: π h (R² + R r + r²) ÷ 3.
    expectCells(capacity("round", [20, 5, 5]), (Math.PI * 5 * (100 + 25 + 6.25)) / 3);
    expectCells(capacity("round", [20, 20]), Math.PI * 2000);
    expectCells(capacity("dome", [20, 10]), (2 * Math.PI * 1000) / 3);
    // Half of a torus without a hole: π² R r², R = r = 5.
    expectCells(capacity("wreath", [20, 10]), Math.PI ** 2 * 125);
    expectCells(area("wreath", [20, 10]), Math.PI * 100);
    expectCells(capacity("polygon", [3, 10, 4]), Math.sqrt(3) * 100);
  });
  test("areas of the other rims, the depth blank or left out", () => {
    expectCells(area("oval", [30, 20, 6]), Math.PI * 150);
    expectCells(area("dome", [20, 6]), Math.PI * 100);
    expectCells(area("round", [20, "", 18]), Math.PI * 100);
    expectCells(area("round", [20, "", 18], "mm"), Math.PI);
    expectCells(area("box", [20, 10, "", 18, 9]), 200);
    expectCells(area("polygon", [6, 9, 5]), 1.5 * Math.sqrt(3) * 81);
  });
  test("grams of water and a number of sides are no lengths", () => {
    for (const unit of ["cm", "mm", "in"]) expectCells(capacity("water", [1520], unit), 1522.73, 0.005);
    expectCells(area("polygon", [4, 10], "in"), 100 * 2.54 ** 2);
    expectCells(capacity("polygon", [4, 10, 2], "in"), 200 * 16.387064, 1e-6);
  });
});

describe("a fill", () => {
  const dough = (fill: unknown) => run("BAKE_TINDOUGH", 1000, fill);
  test("as a number, as text, as a kind of dough; its bounds are inside", () => {
    expectCells([0.34, "0.34", "0,34", "lidded white", 0.05, 2].map(dough), [340, 340, 340, 340, 50, 2000]);
  });
  const other = "it lies between 0.05 and 2 g of dough per cm³ of tin";
  test.each([
    [0.04, `is 0.04; ${other}`],
    [2.5, `is 2.5; ${other}`],
    [34, `is 34; ${other}: enter 0.34, say`],
    [5, `is 5; ${other}: enter 0.05, say`],
    [200, `is 200; ${other}: enter 2, say`],
    [201, `is 201; ${other}`],
    [true, "is TRUE, not a number; enter a fill in g/cm³ such as 0.34, or a kind of dough such as lidded white"],
    [
      "1/0",
      'is "1/0", which is not a number; enter a fill in g/cm³ such as 0.34, or a kind of dough such as lidded white',
    ],
  ])("%j is refused", (fill, says) => {
    expect(refusal("BAKE_TINDOUGH", 1000, fill)).toBe(`BAKE_TINDOUGH: fill ${says}.`);
  });

  const note = (grams: number, kind = "lidded white") => (run("BAKE_TINNOTE", grams, 1000, kind) as string[][])[0]?.[0];
  const usual = "; usual here is 340 g (300 g to 370 g).";
  const lidded = "the usual range for lidded white (0.3 to 0.37)";
  // The exact fill is compared, and told with as many places as keep it from reading as the limit.
  test.each([
    [376, `Fill 0.38 g/cm³, above ${lidded}: expect dough over the rim, or a dense loaf${usual}`],
    [370.4, `Fill 0.3704 g/cm³, above ${lidded}: expect dough over the rim, or a dense loaf${usual}`],
    [370, `Fill 0.37 g/cm³, within ${lidded}, on the full side${usual}`],
    [368, `Fill 0.37 g/cm³, within ${lidded}, on the full side${usual}`],
    [346, `Fill 0.35 g/cm³, within ${lidded}, on the full side${usual}`],
    [345, `Fill 0.35 g/cm³, the usual one for lidded white (0.3 to 0.37)${usual}`],
    [335, `Fill 0.34 g/cm³, the usual one for lidded white (0.3 to 0.37)${usual}`],
    [334, `Fill 0.33 g/cm³, within ${lidded}, on the light side${usual}`],
    [302, `Fill 0.3 g/cm³, within ${lidded}, on the light side${usual}`],
    [300, `Fill 0.3 g/cm³, within ${lidded}, on the light side${usual}`],
    [299, `Fill 0.299 g/cm³, below ${lidded}: expect a low loaf that does not fill the tin${usual}`],
    [294, `Fill 0.29 g/cm³, below ${lidded}: expect a low loaf that does not fill the tin${usual}`],
  ])("%d g in a litre", (grams, says) => expect(note(grams)).toBe(says));
  test("batters run over or dry out", () => {
    expect(note(400, "sponge")).toMatch(/: it may run over the rim and sink;/);
    expect(note(150, "sponge")).toMatch(/: expect a low cake that dries out;/);
  });
  test("in ounces and pounds hundredths are told", () => {
    const [[says, , usually] = []] = run("BAKE_TINNOTE", 40, 3408.509, "lidded white", "oz") as [
      string,
      number,
      number,
    ][];
    expect(says).toMatch(/; usual here is 40\.88 oz \(36\.07 oz to 44\.49 oz\)\.$/);
    expectCells(usually, (3408.509 * 0.34) / 28.349523125);
  });
  test("from 0.05 to 2, else a unit was mistaken", () => {
    expect([50, 2000].map((grams) => note(grams)?.slice(0, 9))).toEqual(["Fill 0.05", "Fill 2 g/"]);
    for (const [grams, fill] of [
      [49, "0.05"],
      [2010, "2.01"],
    ])
      expect(refusal("BAKE_TINNOTE", grams, 1000, "white")).toBe(
        `BAKE_TINNOTE: dough makes a fill of ${fill} g/cm³; it lies between 0.05 and 2. Is the capacity in cm³ and the dough in g?`,
      );
  });
});
