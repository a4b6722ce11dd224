import { describe, expect, test } from "vitest";
import { cells, column, number, sum } from "../enrichment/support.ts";
import { CASES } from "../recipe/text-cases.ts";
import { down, expectCells, run } from "./support.ts";

// Published formulas from their measures to the oven: recipe text to grams, grams to shares, shares to stages, pieces and pans.

const POUND = 453.59237;
const OUNCE = POUND / 16;

/** The lines of a published recipe, weighed, with what each row is. */
function weighed(source: RegExp, kinds: readonly string[], larder: unknown = "") {
  const lines = CASES.find((one) => source.test(one.source))?.lines.map(([line]) => line) ?? [];
  expect(lines.length, String(source)).toBe(kinds.length);
  const weights = column("BAKE_GRAMS", down(...lines), "", "US", larder);
  const shares = column("BAKE_FLOURPCT", down(...weights), down(...kinds)).map((one) => 100 * one);
  return { weights, shares, total: sum(weights) };
}

/** Pieces or pans a batch gives: what it is over what one takes. */
const given = (batch: number, each: number) => number("BAKE_RESCALE", 1, batch, each);

describe("USDA Quantity Recipes for School Food Service (1988), yeast rolls", () => {
  const kinds = ["yeast", "water", "flour", "dairy", "sugar", "salt", "fat"];
  // The recipe measures its yeast; USDA SR28 has 192 g in a cup of it, though a packet says 3.1 g a teaspoon.
  const sr28 = [
    ["ingredient", "measures"],
    ["active dry yeast", "cup 192"],
  ];
  const { weights, shares, total } = weighed(/yeast rolls/, kinds, sr28);
  test("weighs 3137.8 g, and its shares are those of a soft roll", () => {
    // Printed with a cup of water at 237 g and oil by the spoon: 1.3 g apart.
    expectCells(total, 3137.8, 1.4);
    expectCells(shares, [3.9, 57.7, 100, 5.6, 9.9, 2.2, 11.6], 0.19);
    expectCells(weights[2], 1644.27, 5e-3);
  });
  test("its 50 rolls of 2 oz use 100 of 110.7 oz: yield and dough disagree by 9.7 %, more than a bench loses", () => {
    const needed = number("BAKE_DOUGHFOR", 50, 2 * OUNCE);
    expectCells(needed / OUNCE, 100);
    expectCells(100 * (1 - needed / total), 9.7, 0.1);
    expect(number("BAKE_DOUGHFOR", 50, 2 * OUNCE, 0, 0.055)).toBeLessThan(total);
    expectCells(Math.floor(given(total, 2 * OUNCE)), 55);
    expectCells(number("BAKE_DOUGHFOR", 50, 2 * OUNCE, 0, 1 - needed / total), total, 1e-6);
  });
});

describe("USDA Quantity Recipes for School Food Service (1988), royal brownies", () => {
  const kinds = ["fat", "sugar", "salt", "other", "fruit", "egg", "flour", "other", "other"];
  const { shares, total } = weighed(/royal brownies/, kinds);
  const pan = number("BAKE_GRAMS", "batter 5 lb 3 oz = 2 qt 1 1/2 cups");
  test("2422.0 g of lines and 2353.0 g in the pan: the bowl keeps 2.85 %", () => {
    expectCells([total, pan], [2422, 2353], 0.1);
    expectCells(100 * (1 - pan / total), 2.85, 5e-3);
    expectCells(number("BAKE_DOUGHFOR", 1, pan, 0, 0.0285), total, 0.1);
    // 1 lb 10 oz of sugar on 15 oz of flour.
    expectCells(shares[1], (100 * 26) / 15, 1e-6);
  });
  test("one 13 × 18 × 1 inch sheet: 1.559 g a cm², 0.614 g a cm³, a brownie's usual fill; 1.047 by its own 9.5 cups", () => {
    const [area, capacity] = [
      number("BAKE_TINAREA", "box", down(13, 18), "in"),
      number("BAKE_TINCAPACITY", "box", down(13, 18, 1), "in"),
    ];
    expectCells([area, pan / area, pan / capacity], [1509.67, 1.559, 0.614], 5e-3);
    expect((run("BAKE_TINNOTE", pan, capacity, "brownie") as string[][])[0]?.[0]).toMatch(/^Fill 0\.61 .*usual/);
    expectCells(pan / number("BAKE_GRAMS", "2 qt plus 1 1/2 cups water"), 1.0469, 1e-3);
  });
});

describe("US Army recipe card G007, brown sugar cake", () => {
  const kinds = ["flour", "salt", "other", "dairy", "sugar", "water", "other", "other", "fat", "egg"];
  const { shares, total } = weighed(/card G007/, kinds);
  test("15.75 lb in equal shares, its rounded ounces read as they are printed", () => {
    expectCells(total / POUND, 15.75, 1e-9);
    expectCells(shares, [100, 3.125, 4.6875, 9.375, 100, 76.5625, 1.5625, 1.5625, 46.875, 50], 1e-9);
  });
  test("two 18 × 26 inch pans at 7 lb 10 oz (a gallon): the bowl keeps 3.2 %, and the fill is a layer cake's", () => {
    const pan = number("BAKE_GRAMS", "7 lb 10 oz batter (1 gal)");
    expectCells(100 * (1 - (2 * pan) / total), 3.2, 0.05);
    expectCells(pan / number("BAKE_GRAMS", "1 gal water"), 0.91369, 5e-5);
    const capacity = number("BAKE_TINCAPACITY", "box", down(18, 26, 1), "in");
    expectCells([pan / capacity, pan / number("BAKE_TINAREA", "box", down(18, 26), "in")], [0.451, 1.145], 1e-3);
    const [low = 0, , high = 0] = cells("BAKE_TINGUIDE", "layer cake");
    expect(low < pan / capacity && pan / capacity < high).toBe(true);
    expectCells(cells("BAKE_MIXES", total, pan), [3, total / 3]);
  });
});

describe("US Army recipe card D036, sweet dough", () => {
  const kinds = ["yeast", "water", "sugar", "salt", "fat", "egg", "flour", "dairy"];
  const { shares, total } = weighed(/card D036/, kinds);
  test("19.875 lb, 198.75 %", () => {
    expectCells(total / POUND, 19.875, 1e-9);
    expectCells(shares, [5, 37.5, 17.5, 1.875, 16.25, 17.5, 100, 3.125], 1e-9);
    expectCells(sum(shares), 198.75, 1e-9);
  });
  test("its percents give the card's weights back", () => {
    expectCells(
      column("BAKE_WEIGHTS", down(...shares), down(...kinds), 19.875),
      [0.5, 3.75, 1.75, 0.1875, 1.625, 1.75, 10, 0.3125],
    );
  });
});

const FOUR = ["flour", "water", "salt", "yeast"];
const kilograms = (...weights: number[]) =>
  column("BAKE_GRAMS", down(...weights.map((one, row) => `${one} kg ${FOUR[row]}`))).map((one) => one / 1000);

describe.each([
  {
    title: "ciabatta",
    overall: [10, 7.6, 0.2, 0.12],
    sum: [17.92, 179.2],
    share: 0.3,
    hydration: 0.6,
    // 0.003 of yeast on 3 of flour, 0.1 %.
    preferment: [3, 1.8, 0, 0.003],
    final: [7, 5.8, 0.2, 0.117],
    set: 4.803,
  },
  {
    title: "French bread with poolish",
    overall: [10, 6.7, 0.2, 0.11],
    sum: [17.01, 170.1],
    share: 0.33,
    hydration: 1,
    preferment: [3.3, 3.3, 0, 0.007],
    final: [6.7, 3.4, 0.2, 0.103],
    set: 6.607,
  },
])("King Arthur professional formulas, $title", ({ overall, sum: whole, share, hydration, ...printed }) => {
  const weights = kilograms(...overall);
  const yeastMoved = (printed.preferment[3] ?? 0) / (overall[3] ?? 1);
  test("adds up, splits into its two stages, and the stages make it up again", () => {
    expectCells(weights, overall);
    const shares = column("BAKE_FLOURPCT", down(...weights), down(...FOUR));
    expectCells([sum(weights), 100 * sum(shares)], whole, 1e-9);
    const rows = run(
      "BAKE_STAGES",
      down(...weights),
      down(...FOUR),
      down(share, "", "", yeastMoved),
      hydration,
    ) as number[][];
    expectCells(
      rows,
      printed.preferment.map((one, row) => [one, printed.final[row] ?? 0]),
    );
    expectCells(sum(rows.map(([preferment = 0]) => preferment)), printed.set, 1e-9);
    expectCells(sum(rows.flat()), whole[0], 1e-9);
  });
  test("the final mix with the preferment as one row has the same shares", () => {
    const word = hydration === 1 ? "poolish 100%" : "biga 60%";
    const kinds = down("flour", "water", "salt", "yeast", word);
    // The row's own yeast, a thousandth of it, is left out: its kind tells flour and water.
    const wet = (printed.preferment[0] ?? 0) + (printed.preferment[1] ?? 0);
    const shares = column("BAKE_FLOURPCT", down(...printed.final, wet), kinds);
    expectCells(shares.slice(2, 4), [0.02, (printed.final[3] ?? 0) / 10]);
    expectCells(
      number("BAKE_HYDRATION", down("", "", "", "fresh yeast", ""), down(...printed.final.slice(0, 3), 0, wet), kinds),
      (overall[1] ?? 0) / 10,
    );
  });
});

test("King Arthur's ciabatta gives 31.44 pieces of 0.57 kg, so 31 whole ones", () => {
  expectCells(given(17.92, 0.57), 31.44, 5e-3);
  expect(number("BAKE_DOUGHFOR", 31, 0.57)).toBeLessThan(17.92);
  expect(number("BAKE_DOUGHFOR", 32, 0.57)).toBeGreaterThan(17.92);
});

describe("anonymous US trade formula of a layer cake, haisendata.com 11538", () => {
  const kinds = ["flour", "sugar", "fat", "fat", "egg", "water", "dairy", "other", "salt", "other"];
  const { shares, total } = weighed(/layer cake, haisendata/, kinds);
  test("42 lb 7 oz exactly, 424.375 %", () => {
    expectCells(total, number("BAKE_GRAMS", "42 lb 7 oz"), 1e-6);
    expectCells(sum(shares), 424.375, 1e-9);
    expectCells(shares, [100, 125, 25, 25, 50, 75, 15.625, 5, 3.125, 0.625], 1e-9);
  });
  test("75 tins at 9 oz, 75.44 to the last gram", () => {
    expectCells(given(total, 9 * OUNCE), 75.44, 5e-3);
    expect(number("BAKE_DOUGHFOR", 75, 9 * OUNCE)).toBeLessThan(total);
    expect(number("BAKE_DOUGHFOR", 76, 9 * OUNCE)).toBeGreaterThan(total);
  });
});

describe("A treatise on baking (chestofbooks), home-made bread", () => {
  const { shares, total } = weighed(/home-made bread/, ["flour", "yeast", "salt", "sugar", "fat", "water"]);
  test("336.7 lb from 196 lb of flour; 60 qt of water are the 125.2 lb printed beside them", () => {
    expectCells(total / POUND, 336.7, 0.05);
    expectCells(shares, [100, 1.02, 1.53, 2.68, 2.68, 63.9], 0.05);
    expectCells(number("BAKE_GRAMS", "60 qt water"), 125.2 * POUND, 0.002 * 125.2 * POUND);
  });
  test.each([
    [300, 17, 5.33],
    [318, 16, 5.55],
  ])("the book's %d loaves of %d oz lose %d % of it", (pieces, ounces, loss) => {
    const dough = number("BAKE_DOUGHFOR", pieces, ounces / 16);
    expectCells(100 * (1 - dough / 336.7), loss, 5e-3);
    expectCells(number("BAKE_DOUGHFOR", pieces, ounces / 16, 0, loss / 100), 336.7, 0.02);
  });
});
