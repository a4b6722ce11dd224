// Every word that a recipe line may be written with does its work: spellings of a unit, packs, numbers that are no amounts, vague ones.
import { describe, expect, test } from "vitest";
import { expectCells, refusal, run } from "../functions/support.ts";

const grams = (line: string, cups = "US") => run("BAKE_GRAMS", line, "", cups);

describe("a weight is that of its unit, however it is spelled", () => {
  // NIST SP 811 for ounce and pound; a German pound of 500 g and a Deka of 10 g are common practice, no source.
  const WEIGHTS: readonly (readonly [grams: number, spellings: string])[] = [
    [0.001, "mg milligram milligrams"],
    [1, "g g. gr gm gms gram grams gramm gramme grammes"],
    [10, "dag dkg deka"],
    [1000, "kg kg. kgs kilo kilos kilogram kilograms kilogramm kilogramme"],
    [500, "Pfund Pfd"],
    [28.349523125, "oz oz. ozs ounce ounces Unze"],
    [453.59237, "lb lb. lbs lbs. pound pounds"],
  ];
  test.each(WEIGHTS.flatMap(([each, list]) => list.split(" ").map((one) => [one, each] as const)))(
    "%s",
    (unit, each) => {
      expectCells(grams(`3 ${unit} butter`), 3 * each, 1e-9);
      expectCells(grams(`butter, 2.5 ${unit}`), 2.5 * each, 1e-9);
    },
  );
});

describe("a measure is that of its unit, however it is spelled", () => {
  const SAME: readonly (readonly [first: string, others: string])[] = [
    ["ml", "mls milliliter milliliters millilitre millilitres cc"],
    ["cl", "centiliter centiliters centilitre centilitres"],
    ["dl", "deciliter deciliters decilitre decilitres"],
    ["l", "lt ltr liter liters litre litres"],
    ["cup", "c c. cups cupful cupfuls"],
    ["tbsp", "tbsp. tbs tbl tblsp tb tbsps tablespoon tablespoons tablespoonful tablespoonfuls"],
    ["dsp", "dstspn dessertspoon dessertspoons dessertspoonful"],
    ["tsp", "tsp. tsps teasp teaspoon teaspoons teaspoonful teaspoonfuls"],
    ["pinch", "pinches Prise"],
    ["dash", "dashes"],
    ["fl oz", "floz fl.oz."],
    ["pint", "pints pt pts"],
    ["quart", "quarts qt qts"],
    ["gallon", "gallons gal gals"],
    ["gill", "gills"],
  ];
  test.each(SAME.flatMap(([first, list]) => list.split(" ").map((one) => [one, first] as const)))(
    "%s is %s",
    (one, first) => {
      const [said, wanted] = [grams(`3 ${one} whole milk`), grams(`3 ${first} whole milk`)];
      expect(wanted).toBeGreaterThan(0);
      expect(said).toBe(wanted);
    },
  );
  test.each([
    ["fluid ounce", "fl oz"],
    ["fluid ounces", "fl oz"],
    ["table spoon", "tbsp"],
    ["tea spoon", "tsp"],
    ["dessert spoon", "dsp"],
  ])("%s is %s", (one, first) => expect(grams(`3 ${one} whole milk`)).toBe(grams(`3 ${first} whole milk`)));
  // A German EL and TL, a French cuillère are 15 and 5 ml wherever the recipe is read (common practice, no source).
  test.each([
    ["EL", "tbsp"],
    ["Esslöffel", "tbsp"],
    ["c. à soupe", "tbsp"],
    ["cuillères à soupe", "tbsp"],
    ["TL", "tsp"],
    ["Teelöffel", "tsp"],
    ["c. à café", "tsp"],
    ["cuillères à café", "tsp"],
  ])("%s is the European %s in any country", (one, first) => {
    const wanted = grams(`3 ${first} whole milk`, "EU");
    for (const cups of ["US", "UK", "AU", "EU"]) expect(grams(`3 ${one} whole milk`, cups)).toBe(wanted);
  });
});

describe("a pack or a piece weighs what stands beside it", () => {
  const COUNTED =
    "stick sachet packet pkt envelope pouch cube Würfel cake package pkg pack can tin jar bottle box bag carton container tub punnet tube block bar " +
    "piece pc Stück square slice sheet";
  test.each(COUNTED.split(" "))("%s", (word) => {
    expectCells(grams(`1 ${word} (250 g) butter`), 250, 1e-9);
    expectCells(grams(`2 x 250 g ${word} butter`), 500, 1e-9);
    expectCells(grams(`2 ${word} (250 g each) butter`), 500, 1e-9);
  });
  test.each(["boxes", "pouches", "sticks", "slices", "leaves", "loaves", "bunches"])("%s", (word) => {
    expectCells(grams(`2 ${word} (250 g each) butter`), 500, 1e-9);
  });
});

describe("numbers that are no amounts leave the weight as it is", () => {
  const BESIDE = [
    ..."inch inches cm mm".split(" ").map((unit) => `cut into 2 ${unit} cubes`),
    ..."min mins minute minutes hour hours hr hrs day days".split(" ").map((unit) => `soaked for 3 ${unit}`),
    ..."people servings portions".split(" ").map((unit) => `for 4 ${unit}`),
    ...["at 30 degrees", "at 30 degree", "at 86 f", "at 30 celsius", "at 30 °C", "at 86°F", "at 30º", "at 30 C"],
    ...["82% fat", '1" thick', "1″ thick", "2-inch pieces", "2 - 3 cm long", "folded 3 times", "1/2 inch dice"],
  ];
  test.each(BESIDE)("200 g butter, %s", (words) => expectCells(grams(`200 g butter, ${words}`), 200, 1e-9));
  test.each([
    "type 55 flour",
    "Typ 550 flour",
    "tipo 00 flour",
    "no. 1 flour",
    "No 1 flour",
    "number 1 flour",
    "grade 1 flour",
  ])("500 g %s", (name) => {
    expectCells(run("BAKE_GRAMS", `500 g ${name}`, "bread flour"), 500, 1e-9);
  });
});

describe("what has no weight is never taken for any", () => {
  const VAGUE =
    "handful splash drizzle glug knob bit few some several touch drop scoop ladle mug glass spoon spoonful lot smidgen";
  test.each(VAGUE.split(" "))("%s", (word) => {
    expect(refusal("BAKE_GRAMS", `2 ${word} butter`)).toContain(word);
    expect(refusal("BAKE_GRAMS", `a ${word} of butter`)).toContain(word);
  });
  test.each(["heaped", "heaping", "rounded", "scant", "generous", "level"])("%s", (word) => {
    if (word === "level") expect(grams("1 level tsp salt")).toBe(grams("1 tsp salt"));
    else expect(refusal("BAKE_GRAMS", `1 ${word} tsp salt`)).toContain(word);
  });
});
