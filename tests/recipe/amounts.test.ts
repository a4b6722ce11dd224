// Amounts of more than one number: what is added, taken off, or lies between, against the sum of lines with one number each.
import { describe, expect, test } from "vitest";
import { expectCells, refusal, run } from "../functions/support.ts";

const grams = (line: string, cups = "US") => run("BAKE_GRAMS", line, "", cups) as number;
/** NIST SP 811. */
const [OUNCE, POUND] = [28.349523125, 453.59237];

describe("weights in two units", () => {
  test.each([
    ["1 lb 2 oz butter", POUND + 2 * OUNCE],
    ["1 lb. 2 oz. butter", POUND + 2 * OUNCE],
    ["2 lb 3 1/2 oz butter", 2 * POUND + 3.5 * OUNCE],
    ["1 kg 250 g butter", 1250],
    ["1 kg and 250 g butter", 1250],
    ["1 kg plus 250 g butter", 1250],
    ["1 kg + 250 g butter", 1250],
    ["1 lb plus 50 g butter", POUND + 50],
    ["1 kg minus 50 g butter", 950],
    ["1 kg less 50 g butter", 950],
  ])("%s", (line, wanted) => expectCells(grams(line), wanted, 1e-6));
  test.each(["2 oz 1 lb butter", "250 g 1 kg butter", "1 kg 2 oz butter", "1 lb 2 lb butter"])(
    "%s: the smaller unit has to follow the larger of its kind",
    (line) => expect(refusal("BAKE_GRAMS", line)).toMatch(/two amounts that disagree/),
  );
});

describe("measures in two units", () => {
  const sum = (name: string, cups: string, ...amounts: string[]) =>
    amounts.reduce((all, one) => all + grams(`${one} ${name}`, cups), 0);
  test.each([
    ["1 cup 2 tbsp", ["1 cup", "2 tbsp"]],
    ["1 cup plus 2 tbsp", ["1 cup", "2 tbsp"]],
    ["1 cup + 2 tbsp", ["1 cup", "2 tbsp"]],
    ["1 cup and 2 tbsp", ["1 cup", "2 tbsp"]],
    ["2 tbsp plus 1 tsp", ["2 tbsp", "1 tsp"]],
    ["2 tablespoons and 1 teaspoon", ["2 tbsp", "1 tsp"]],
    ["1 pint 2 fl oz", ["1 pint", "2 fl oz"]],
    ["1 quart 1 cup", ["1 quart", "1 cup"]],
    ["1 cup and a half", ["1 1/2 cups"]],
    ["1 and a half cups", ["1 1/2 cups"]],
    ["one and a half cups", ["1 1/2 cups"]],
    ["1½ cups", ["1 1/2 cups"]],
    ["1 ½ cups", ["1 1/2 cups"]],
    ["half a cup", ["0.5 cup"]],
    ["half cup", ["0.5 cup"]],
    ["a cup", ["1 cup"]],
    ["three quarters of a cup", ["0.75 cup"]],
    ["a dozen cups", ["12 cups"]],
  ])("%s of flour", (said, amounts) => {
    const wanted = sum("bread flour", "US", ...amounts);
    expectCells(grams(`${said} bread flour`), wanted, 1e-6);
    expectCells(grams(`${said} of bread flour`), wanted, 1e-6);
  });
  test("1 litre 250 ml of milk, in metric cups", () => {
    expectCells(grams("1 l 250 ml whole milk", "EU"), sum("whole milk", "EU", "1 l", "250 ml"), 1e-6);
  });
  test.each(["minus", "less"])("a cup %s a tablespoon", (word) => {
    expectCells(
      grams(`1 cup ${word} 1 tbsp bread flour`),
      grams("1 cup bread flour") - grams("1 tbsp bread flour"),
      1e-6,
    );
  });
});

describe("what lies between two amounts is told by its middle", () => {
  test.each([
    ["500-600 g butter", 550],
    ["500 - 600 g butter", 550],
    ["500–600 g butter", 550],
    ["500 to 600 g butter", 550],
    ["500 g to 600 g butter", 550],
    ["500 g - 600 g butter", 550],
    ["500 bis 600 g butter", 550],
    ["500 g bis 600 g butter", 550],
    ["500 g to 1 kg butter", 750],
    ["1 to 2 lb butter", 1.5 * POUND],
    ["1/2 to 1 lb butter", 0.75 * POUND],
    ["4 oz to 1 lb butter", (4 * OUNCE + POUND) / 2],
  ])("%s", (line, wanted) => expectCells(grams(line), wanted, 1e-6));
  test.each([
    ["1-2 cups", "1.5 cups"],
    ["1 to 2 cups", "1.5 cups"],
    ["1 cup to 2 cups", "1.5 cups"],
    ["1 to 1 1/2 cups", "1.25 cups"],
    ["1/4 - 1/2 tsp", "0.375 tsp"],
  ])("%s", (said, middle) => expectCells(grams(`${said} bread flour`), grams(`${middle} bread flour`), 1e-6));
  test("eggs from two to three, and sized ones", () => {
    expectCells(grams("2 to 3 large eggs"), 2.5 * grams("1 large egg"), 1e-6);
    expectCells(grams("2-3 eggs"), 2.5 * grams("1 egg"), 1e-6);
  });
});

describe("a measure without a number", () => {
  test.each(["pinch of salt", "pinch salt", "a pinch of salt", "1 pinch of salt", "salt, a pinch"])("%s", (line) => {
    expect(grams(line)).toBe(grams("1 pinch salt"));
    expect(grams(line)).toBeGreaterThan(0);
  });
  test("a dash of vinegar", () => expect(grams("dash of cider vinegar")).toBe(grams("1 dash cider vinegar")));
  test.each(["tsp salt", "cup flour", "kg flour"])("%s says that its number is missing", (line) =>
    expect(refusal("BAKE_GRAMS", line)).toContain("a unit without a number"),
  );
});
