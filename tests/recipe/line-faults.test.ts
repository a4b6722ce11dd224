// Every kind of fault that a recipe line may have: no weight, neither from the strict function nor from the lenient one, and a
// sentence that says which fault it is.
import { describe, expect, test } from "vitest";
import { refusal, run } from "../functions/support.ts";

const FAULTS: readonly (readonly [kind: string, says: RegExp, lines: readonly string[]])[] = [
  [
    "a range that runs backwards",
    /runs backwards/,
    [
      "1 to 3/4 cup sugar",
      "3-2 eggs",
      "½ to ¼ cup oil",
      "10 - 8 g salt",
      "300 g to 200 g flour",
      "two to one cups sugar",
    ],
  ],
  [
    "a range too wide",
    /range too wide/,
    ["1 - 500 g flour", "1-10 cups sugar", "2–250 g butter", "1-30 ml milk", "3-30 eggs", "12 - 500 g flour"],
  ],
  [
    "a number in front of another amount",
    /two numbers side by side/,
    [
      "1 ,5 cups flour",
      "1·5 cups sugar",
      "2 half cups flour",
      "3 quarter cups sugar",
      "1; 5 cups sugar",
      "1: 500 g flour",
    ].concat([
      "1 .5 cups sugar",
      "1 , 250 g sugar",
      "10 00 g flour",
      "sugar 12 34 g",
      "1 1 cups sugar",
      "2½ 3 kg flour",
      "1/100 cup sugar",
      "100/120 g sugar",
      "2/250 g butter",
    ]),
  ],
  ["dots between numbers", /dots between them/, ["1 ... 2 cups sugar", "1…2 cups sugar", "100..200 g flour"]],
  ["no fraction", /no kitchen has/, ["1/0 cup sugar", "1.1/2 cup flour", "1,1/2 cup flour"]],
  ["a fraction that lost its space", /without its space/, ["11/2 cups sugar", "21/4 tsp salt", "13/4 cups flour"]],
  [
    "a sign in a number",
    /a sign in it|no kitchen has/,
    ["10_00 g flour", "1^2 cups sugar", "1\\2 cup sugar", "1__2 cup sugar", "3//4 cup sugar"],
  ],
  [
    "thousands or decimals",
    /thousands or decimals/,
    ["1,250 g flour", "1.250 g flour", "1,500 ml milk", "sugar 1,250 g", "1,250 to 1,500 g flour"],
  ],
  [
    "one amount or packs",
    /a number of packs/,
    ["2-250 g packs butter", "2 1/2 lb bags flour", "1-8 oz package cream cheese"],
  ],
  [
    "a number without its unit behind an amount",
    /without its unit behind an amount/,
    [
      "1 kg 500 flour",
      "1kg500 flour",
      "2 lb 4 flour",
      "1 l 250 water",
      "2 cups 2 flour",
      "1 kg 550 flour",
      "100 g 5 salt",
    ],
  ],
  ["a number of times", /a number of times/, ["3 x salt 5 g", "1.5x flour 100 g", "2 times sugar 1 cup"]],
  ["each or all", /of each, or of all/, ["2 (113 g) butter", "3 (10 g) honey"]],
  ["each of how many", /"each" without a number/, ["eggs, 50 g each", "sugar 20 g each"]],
  ["multiplied behind", /Enter "2 x 100 g"/, ["twice 100 g sugar", "double 1 cup flour", "flour 500 g, x 2"]],
  ["taken off", /taken off/, ["minus 10 g salt", "less 2 tbsp flour", "1 tbsp minus 1 cup flour"]],
  [
    "how full is left open",
    /leaves open how much/,
    [
      "1 heaped tbsp sugar",
      "1 scant cup flour",
      "about a rounded tsp salt",
      "a generous cup sugar",
      "up to 2 cups flour",
      "<100 g flour",
      "≥ 2 cups sugar",
      "max. 100 g flour",
      "min 100 g flour",
      ">3 tbsp oil",
    ],
  ],
  [
    "no weight at all",
    /has no weight; enter grams/,
    ["1 handful raisins", "a splash of milk", "some flour", "a few raisins", "a glass of milk", "a knob of butter"],
  ],
  [
    "a unit without a number",
    /unit without a number/,
    ["tsp salt", "cups flour", "g sugar", "another cup flour", "stick butter"],
  ],
  ["a number without a unit", /number without a unit/, ["500 flour", "3 sugar", "2 salt"]],
  ["a number but no amount", /number but no amount/, ["flour 2%", "12 inch tin", "bake 20 min"]],
  ["an amount without an ingredient", /without an ingredient/, ["2 cups", "3 tbsp", "1 1/2 tsp"]],
  ["an unknown ingredient", /does not know/, ["2 cups unobtainium", "1 tbsp flour of nowhere", "3 large gizmos"]],
  ["a measure that is not known", /no weight for a/, ["1 stick flour", "2 sheets sugar", "1 clove butter"]],
  [
    "two ingredients",
    /two ingredients in one line/,
    ["1 cup sugar and 2 tbsp flour", "2 eggs plus 1 yolk", "1 egg + 50 g milk"],
  ],
  ["two amounts that disagree", /disagree/, ["3 lb flour 2 oz", "1 kg - 100 g flour", "flour 500 g 2 kg"]],
  ["two sizes", /large or medium|medium or large/, ["3 large eggs (medium)", "3 medium eggs, large"]],
  ["from brand to brand", /from one brand to the next/, ["1 tsp kosher salt", "2 tbsp flaky salt"]],
  ["a sum or an ingredient", /sum of other lines/, ["Total flour 1000 g", "total sugars 50 g"]],
  ["several lines", /several lines in one cell/, ["100 g flour\n50 g sugar", "1 egg\r\n2 cups flour"]],
  ["no line at all", /characters are no line/, ["500 g flour ".repeat(100)]],
];

describe.each(FAULTS)("%s", (_, says, lines) => {
  test.each(lines)("%j", (line) => {
    expect(refusal("BAKE_GRAMS", line)).toMatch(says);
    const [least, most, remark] = (run("BAKE_GRAMSPAN", line) as unknown[][])[0] ?? [];
    // Where only the brand is open, the span is the answer.
    if (!/brand/.test(String(remark))) expect([least, most]).toEqual(["", ""]);
    expect(String(remark).toLowerCase()).toMatch(new RegExp(says.source.toLowerCase()));
  });
  test("beside good lines its row is told", () => {
    const [line = ""] = lines;
    expect(refusal("BAKE_GRAMS", [["100 g flour"], [line], ["2 eggs"]])).toMatch(/row 2/);
  });
});

test("what the second thoughts must not catch", () => {
  for (const [line, grams] of [
    ["1 to 12 tsp sugar", 27.3],
    ["1-8 tsp sugar", 18.9],
    ["1-2 kg flour", 1500],
    ["3 eggs, 150 g", 150],
    ["2 packages (8 oz) cream cheese", 453.59],
    ["1. 500 g flour", 500],
    ["1) 2 cups sugar", 400],
    ["1 large egg (50 g)", 50],
    ["1 (250 g) pack butter", 250],
    ["half a cup sugar", 100],
    ["1 and a half cups sugar", 300],
    ["flour 550 500 g", 500],
    ["2 x 7 g sachets yeast", 14],
    ["500 g 550 flour", 500],
    ["500 g 00 flour", 500],
    ["> 100 g flour", 100],
    ["1 kg 500 g flour", 1500],
  ] as const)
    expect(run("BAKE_GRAMS", line), line).toBeCloseTo(grams, 0);
});

// USDA SR28's household measures: a large egg 50 g (01123), its yolk 17 g (01125), a medium onion 110 g (11282), a medium banana 118 g (09040).
test.each([
  ["2 x eggs", 100],
  ["2x eggs", 100],
  ["3 × large eggs", 150],
  ["1½ x eggs", 75],
  ["half x egg", 25],
  ["one x egg", 50],
  ["4 x egg yolks", 68],
  ["2 X onions", 220],
  ["3x bananas", 354],
  ["eggs x 2", 100],
  ["eggs, x 2", 100],
])("a count with a times sign: %s", (line, grams) => {
  expect(run("BAKE_GRAMS", line)).toBeCloseTo(grams, 6);
});

test.each(["3 x salt 5 g", "flour 500 g, x 2", "2 x butter", "butter x 2", "x 2", "2 x"])(
  "what is multiplied by no count stays refused: %s",
  (line) => {
    expect(refusal("BAKE_GRAMS", line)).toMatch(/row 1 is/);
  },
);
