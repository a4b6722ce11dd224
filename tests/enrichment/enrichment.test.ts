import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { down, expectCells, refusal, run } from "../functions/support.ts";
import { LAWS, number } from "./support.ts";

describe("BAKE_HYDRATION", () => {
  const rich = down("flour", "egg", "milk", "butter");
  const richKinds = down("flour", "egg", "dairy", "fat");
  test("egg, milk and butter on SR28, with and without fresh yeast", () => {
    expect(number("BAKE_HYDRATION", rich, down(1000, 500, 100, 500), richKinds)).toBeCloseTo(0.55858, 9);
    const yeasted = number("BAKE_HYDRATION", [...rich, ["fresh yeast"]], down(1000, 500, 100, 500, 30), [
      ...richKinds,
      ["yeast"],
    ]);
    expect(yeasted).toBeCloseTo(0.57928, 9);
  });

  test.each<[string, unknown[], unknown[], unknown[], number, number]>([
    [
      "Wild Yeast blog, part 2: 5 % of milk is not 5 % of water",
      ["flour", "water", "milk"],
      [100, 70, 5],
      ["flour", "water", "dairy"],
      0.7441,
      5e-5,
    ],
    [
      "a cooking forum: 200 g of egg and 150 g of sour cream in place of water",
      ["flour", "egg", "sour cream", "water"],
      [1000, 200, 150, 300],
      ["flour", "egg", "dairy", "water"],
      0.5615,
      4e-3,
    ],
    [
      "The Fresh Loaf node/42177",
      ["", "", "", "", ""],
      [900, 100, 200, 750, 20],
      ["flour", "flour", "levain 100%", "water", "salt"],
      0.7727,
      1e-4,
    ],
    [
      "The Fresh Loaf node/62948: 15 % of a 60 % starter",
      ["rye", "water", "salt", "starter"],
      [1000, 700, 20, 150],
      ["flour", "water", "salt", "starter 60%"],
      0.6914,
      5e-4,
    ],
    [
      "Wild Yeast blog, part 4: the poolish counted",
      ["", "", "", ""],
      [900, 468, 936, 27],
      ["flour", "water", "poolish 100%", "salt"],
      0.6842,
      5e-5,
    ],
    [
      "LibreOffice forum: blanks and a number as text",
      ["flour\u00a0", "", "", "water", "salt"],
      [1000, "", "", 650, "20"],
      ["flour", "", "", "water", "salt"],
      0.65,
      1e-12,
    ],
  ])("%s", (_, names, weights, kinds, expected, within) => {
    expectCells(run("BAKE_HYDRATION", down(...names), down(...weights), down(...kinds)), expected, within);
  });

  test("an empty formula is a blank cell, though its names stand there already", () => {
    expect(run("BAKE_HYDRATION", down("flour", "water"), down("", ""), down("flour", "water"))).toBe("");
  });

  test("a dough of flour and water has its listed hydration, salt or not", () => {
    const part = fc.double({ min: 0.01, max: 5, noNaN: true });
    fc.assert(
      fc.property(part, fc.double({ min: 1, max: 1e6, noNaN: true }), (listed, flour) => {
        const weights = down(flour / 2, flour / 2, listed * flour, 0.02 * flour);
        const kinds = down("flour", true, "water", "salt");
        expect(number("BAKE_HYDRATION", down("", "", "", ""), weights, kinds)).toBeCloseTo(listed, 9);
      }),
      LAWS,
    );
  });

  test.each([
    [down("egg"), down(5), down("egg"), "weights hold no flour"],
    [down("flour", "egg"), down(5, 3), down("flour", ""), "kinds row 2 is blank though the row has an amount"],
    [
      down("flour", "eg"),
      down(5, 3),
      down("flour", "egg"),
      'ingredients row 2 is "eg", which the larder does not know; perhaps "egg"',
    ],
    [down("levain"), down(5), down("flour"), 'kinds row 1 says that "levain" is all flour'],
    [down("flour"), down("a lot"), down("flour"), 'weights row 1 is "a lot", which is not a number'],
    [down("flour"), down(new Date(2026, 1, 3)), down("flour"), "weights row 1 is a date"],
  ])("%j, %j, %j is refused", (names, weights, kinds, sentence) => {
    expect(refusal("BAKE_HYDRATION", names, weights, kinds)).toContain(sentence);
  });

  test("a slip in the larder is refused where it is used, and only there", () => {
    const larder = [
      ["ingredient", "water", "price"],
      ["egg", 76, "n/a"],
      ["milk", "lots", 1],
    ];
    expect(refusal("BAKE_HYDRATION", down("", "egg"), down(9, 1), down("flour", "egg"), larder)).toBe(
      'BAKE_HYDRATION: larder row 2 column "water" is 76, which is 7600 %; enter 76% or 0.76.',
    );
    expect(refusal("BAKE_HYDRATION", down("", "egg"), down(9, 1), down("flour", "egg"), [["egg", 0.76]])).toContain(
      'larder has no column headed "ingredient"',
    );
  });
});

describe("BAKE_PLAINWATER", () => {
  test.each<[string, unknown[], unknown[], unknown[], number, number]>([
    ["r/Sourdough: 0.60 × 562.5 − 62.5", ["", "", ""], [500, 360, 125], ["flour", "water", "levain 100%"], 0.6, 275],
    [
      "The Fresh Loaf comment/299010: the starter doubled",
      ["", "", "", ""],
      [450, 250, 200, 10],
      ["flour", "water", "starter 100%", "salt"],
      0.6,
      230,
    ],
    ["percents do as well", ["", "", ""], [1, 0.72, 0.25], ["flour", "water", "levain 100%"], 0.6, 0.55],
    ["ice is part of the water", ["", "", ""], [1000, 300, 100], ["flour", "water", "ice"], 0.6, 600],
  ])("%s", (_, names, weights, kinds, wanted, expected) => {
    expectCells(run("BAKE_PLAINWATER", down(...names), down(...weights), down(...kinds), wanted), expected);
  });

  test("a cooking forum's egg and sour cream leave 388.5 g of water at 65 %, within the sour cream's 71 to 75 %", () => {
    const water = number(
      "BAKE_PLAINWATER",
      down("", "egg", "sour cream"),
      down(1000, 200, 150),
      down("flour", "egg", "dairy"),
      0.65,
    );
    expect(Math.abs(water - 388.5)).toBeLessThanOrEqual(4);
  });

  test("with its answer in the water row the dough has the hydration wanted", () => {
    const weight = fc.double({ min: 0, max: 300, noNaN: true });
    const names = down("flour", "water", "egg", "milk", "butter", "levain", "fresh yeast", "honey");
    const kinds = down("flour", "water", "egg", "dairy", "fat", "levain 80%", "yeast", "sugar");
    fc.assert(
      fc.property(
        fc.array(weight, { minLength: 6, maxLength: 6 }),
        fc.double({ min: 1, max: 4, noNaN: true }),
        (others, wanted) => {
          const water = number("BAKE_PLAINWATER", names, down(1000, 0, ...others), kinds, wanted);
          expect(number("BAKE_HYDRATION", names, down(1000, water, ...others), kinds)).toBeCloseTo(wanted, 9);
        },
      ),
      LAWS,
    );
  });

  test.each([
    [down("", "egg"), down(1000, 800), down("flour", "egg"), 0.5, "109.2 too much"],
    [down("", "egg"), down(1000, 100), down("flour", "egg"), 6, "hydration is 6, which is 600 %; enter 6% or 0.06"],
    [down("egg"), down(100), down("egg"), 0.6, "weights hold no flour"],
  ])("%j, %j, %j, %d is refused", (names, weights, kinds, wanted, sentence) => {
    expect(refusal("BAKE_PLAINWATER", names, weights, kinds, wanted)).toContain(sentence);
  });
});
