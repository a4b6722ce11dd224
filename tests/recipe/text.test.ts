import { describe, expect, test } from "vitest";
import { down, expectCells, refusal, run } from "../functions/support.ts";
import { CASES } from "./text-cases.ts";
import { RECIPES, STYLES } from "./text-data.ts";

const grams = (line: string, ...rest: unknown[]) => run("BAKE_GRAMS", line, ...rest);
const span = (line: string, ...rest: unknown[]) => (run("BAKE_GRAMSPAN", line, ...rest) as unknown[][])[0] ?? [];

describe.each(RECIPES)("$title", ({ cups, lines }) => {
  test.each(lines)("%s", (line, ingredient, weight) => {
    const [least, most] = Array.isArray(weight) ? weight : [weight, weight];
    const answer = span(line, ingredient, cups);
    if (least === null) expect(answer.slice(0, 2)).toEqual(["", ""]);
    else {
      // SR28 prints spoons to a tenth of a gram: 4.2 g of sugar a teaspoon against 200 g a cup.
      expectCells(answer[0], least, least * 0.004);
      expectCells(answer[1], most, most * 0.004);
    }
  });
  test("comes out as one column, ranges by their middle", () => {
    const answer = run(
      "BAKE_GRAMS",
      lines.map(([line]) => [line]),
      lines.map(([, ingredient]) => [ingredient]),
      cups,
    ) as unknown[][];
    const expected = lines.map(([, , weight]) =>
      weight === null ? "" : Array.isArray(weight) ? (weight[0] + weight[1]) / 2 : weight,
    );
    answer.forEach(([cell], row) => {
      const wanted = expected[row];
      if (typeof wanted === "number") expectCells(cell, wanted, wanted * 0.004);
      else expect(cell).toBe(wanted);
    });
    expect(answer.length).toBe(lines.length);
  });
});

test.each(STYLES)("%s is %s g", (line, weight) => expectCells(grams(line), weight, weight * 0.004));

describe.each(CASES)("$source", ({ cups = "US", lines, sum }) => {
  test.each(lines)("%s", (line, weight, within) => expectCells(grams(line, "", cups), weight, within || undefined));
  if (sum === undefined) return;
  test("adds up", () => {
    const column = run("BAKE_GRAMS", down(...lines.map(([line]) => line)), "", cups) as number[][];
    const total = column.reduce((before, [cell = 0]) => before + cell, 0);
    expectCells(total, sum, 0.6);
  });
});

describe("what is printed beside a weight and does not fit it is told", () => {
  test.each([
    // Copies of the Army's cards round to whole ounces: 2.33 tbsp of salt are 42 g by SR28, the card's 2 oz 35 % more.
    ["salt 2 oz (2.33 tbsp)", /56\.7 g is taken, 41\.9 g stands beside it, 35 % apart/],
    // The Australian list's stick.
    ["1 lb (1 cup) flour", /263 % apart/],
  ])("%s", (line, remark) => expect(span(line)[2]).toMatch(remark));
  test.each([
    "500g/1lb 2oz plain flour",
    "40 oz (1 kg) flour",
    "4 ounces (1 cup) dark rye flour",
    "1 stick (1/2 cup) butter",
  ])("%s fits within 15 %%", (line) => expect(span(line)[2]).toBe(""));
  test("the tablespoon of kosher salt that was meant for one of table salt", () => {
    const shop = [
      ["ingredient", "measures"],
      ["table salt", "tbsp 15"],
      ["kosher salt", "tbsp 10"],
    ];
    // Friberg, The Professional Pastry Chef: the printed swap, 1 tbsp + 1 tsp, is 11 % short by its own figures.
    expectCells(grams("1 tablespoon plus 1 teaspoon kosher salt", "", "US", shop), 13.33, 0.005);
    expect(run("BAKE_SPOONS", 15, "kosher salt", "US", shop)).toBe("1 tbsp + 1 1/2 tsp");
  });
});

const NEVER_DROPPED: readonly (readonly [line: string, sentence: string])[] = [
  ["a handful of raisins", '"handful" has no weight; enter grams, or a measure'],
  ["a little flour", '"little" has no weight; enter grams, or a measure'],
  ["1 heaped tsp baking powder", '"heaped" leaves open how much; enter a level measure or grams'],
  ["scant 1/2 tsp salt", '"scant" leaves open how much; enter a level measure or grams'],
  [
    "1,250 g flour",
    "a number that could mean thousands or decimals; enter thousands without the separator, decimals with two digits",
  ],
  ["1 - 14 oz can condensed milk", 'one amount, or a number of packs? Enter "2 x 8 oz" for packs'],
  ["1 1/4-ounce envelope dry yeast", 'one amount, or a number of packs? Enter "2 x 8 oz" for packs'],
  ["1 cup flour and 1 tsp salt", 'two ingredients in one line, "flour" and "salt"; give each a line of its own'],
  ["3 lbs flour 2 oz", "two amounts that disagree, 1360.8 g and 56.7 g; keep one"],
  ["65% water", 'a number but no amount; enter "500 g" or "2 cups"'],
  ["tsp salt", "a unit without a number"],
  ["1 cup", 'an amount without an ingredient; name it, or enter a weight such as "500 g"'],
  ["1 teaspoon each cinnamon and nutmeg", '"each" without a number of them'],
  ["2 cups flour\n1 tsp salt", "several lines in one cell; give each a cell of its own"],
  [
    "flour 550",
    'a number without a unit, and the larder has no weight for a piece of "all-purpose flour"; enter "500 g" or "2 cups"',
  ],
  [
    "1 can condensed milk",
    'the larder has no weight for a can of "sweetened condensed milk"; enter grams, or add the measure to the larder',
  ],
  [
    "zest of 1 lemon",
    'its ingredient is "zest of lemon", which the larder does not know; enter a name it knows, or give the larder a row for it',
  ],
  ["1/2 tsp flaky sea salt", "a tsp of it weighs 2 g to 3 g from one brand to the next. Weigh it, or say which"],
  ["1/2 tsp sea salt", "a tsp of it weighs 2 g to 6 g from one brand to the next. Weigh it, or say which"],
];

describe("a line that cannot be weighed for certain refuses the column and is told", () => {
  test.each(NEVER_DROPPED)("%s", (line, sentence) => {
    const said = refusal("BAKE_GRAMS", down("2 cups flour", line));
    expect(said.startsWith("BAKE_GRAMS: lines row 2 is ")).toBe(true);
    expect(said.replace(/"[^"]*…?": /, "")).toContain(sentence);
    const [least, , remark] = span(line);
    if (!/brand/.test(sentence)) expect(least).toBe("");
    expect(remark).toBe(`${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`);
  });
  test.each([
    ["1 cup coconut flour", "coconut flour"],
    ["1 cup almond milk", "almond milk"],
    ["2 cups flour, teff", "flour teff"],
    ["1 tsp fresh ginger", "fresh ginger"],
  ])("%s is not weighed as the known word in it", (line, name) => {
    expect(refusal("BAKE_GRAMS", line)).toContain(`its ingredient is "${name}", which the larder does not know`);
  });
  test("three are told in full, the others by row", () => {
    expect(refusal("BAKE_GRAMS", down(...Array(5).fill("some flour")))).toMatch(
      /; and 2 more of the kind \(row 4, row 5\)\.$/,
    );
  });
  test.each([
    ["2 fl oz milk", "EU", 'a fl oz is no measure of the EU; say "US" or "UK" before it, or enter millilitres'],
    ["1 pint milk", "EU", 'a pint is no measure of the EU; say "US" or "UK" before it, or enter millilitres'],
    ["1 small egg", "UK", 'the larder has no weight for a small piece of "whole egg"'],
    ["2 boxes flour", "US", 'the larder has no weight for a box of "all-purpose flour"'],
    ["1 cake fresh yeast", "EU", 'the larder has no weight for a cake of "fresh yeast"'],
  ])("%s in %s measures", (line, cups, sentence) => expect(refusal("BAKE_GRAMS", line, "", cups)).toContain(sentence));
  test("a fraction that the sheet made a date", () => {
    expect(refusal("BAKE_GRAMS", down("2 cups flour", new Date(2026, 1, 3)))).toContain("lines row 2 is a date");
  });
  test("an error cell and one still loading", () => {
    expect(refusal("BAKE_GRAMS", down("#REF!", "Loading..."))).toMatch(
      /row 1 holds the error #REF!.*row 2 is still calculating/,
    );
  });
  test("words for cups that are none", () => {
    expect(refusal("BAKE_GRAMS", "1 cup flour", "", "NZ")).toBe(
      'BAKE_GRAMS: cups is "NZ"; choose "US", "AU", "UK" or "EU".',
    );
  });
});

describe("the columns beside the lines", () => {
  test("ingredients name the row's ingredient, blank ones leave it to the line", () => {
    const lines = down("1 cup", "3", "2 cups flour", "", "salt to taste");
    expectCells(run("BAKE_GRAMS", lines, down("sugar", "eggs", "", "", "")), down(200, 150, 250, "", ""));
  });
  test("an unknown ingredient is refused with the nearest", () => {
    expect(refusal("BAKE_GRAMS", "1 cup", "suger")).toMatch(/its ingredient is "suger", .* perhaps "sugar"/);
  });
  test("a shop's own cup is the cup of the call, the built-in one a US cup", () => {
    const shop = [
      ["ingredient", "measures"],
      ["house flour", "cup 150"],
    ];
    expectCells(grams("2 cups house flour", "", "AU", shop), 300);
    expectCells(grams("2 tbsp house flour", "", "AU", shop), (2 * 150 * 20) / 250);
    expectCells(grams("2 cups flour", "", "AU", shop), (2 * 125 * 250) / 236.5882365);
  });
  test("a fresh sheet stays blank", () => expect(run("BAKE_GRAMS", down("", ""))).toBe(""));
});
