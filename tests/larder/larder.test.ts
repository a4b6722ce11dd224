import { describe, expect, test } from "vitest";
import { type Fault, Refusal, refuseAll } from "../../shared/base/refusal.ts";
import { findIngredient, type Larder, larder, requireIngredients } from "../../shared/larder/larder.ts";
import { readMeasures } from "../../shared/larder/measures.ts";

/** The larder argument as a formula cell reads it. */
function given(rows?: unknown): Larder {
  const faults: Fault[] = [];
  const read = larder(true).decode(rows, "larder", faults);
  refuseAll(faults);
  return read;
}

function said(run: () => unknown): string {
  try {
    run();
  } catch (error) {
    expect(error).toBeInstanceOf(Refusal);
    return (error as Refusal).message;
  }
  throw new Error("was not refused");
}

describe("a shop's larder", () => {
  const head = [
    "Price",
    "Ingredient",
    "Also called",
    "Water",
    "Saturated fat",
    "Fiber",
    "Measures",
    "Allergens",
    "Shelf",
  ];
  const shop = given([
    head,
    [4.2, "Flour", "house flour", "", "", "", "cup 140", "wheat", "A3"],
    [6.5, "Egg", "", 0.74, "", "", "", "", ""],
    ["", "", "", "", "", "", "", "", ""],
    [9, "Sea buckthorn purée", "buckthorn; Sanddorn", "83%", 0.01, 0.02, "", "none", ""],
  ]);
  const find = (name: string) => findIngredient(shop, name);

  test("columns are found by their headings, in any order", () => {
    expect(find("sea  buckthorn puree")).toMatchObject({ water: 0.83, saturates: 0.01, fibre: 0.02, price: 9, row: 5 });
    expect(find("sanddorn")?.name).toBe("Sea buckthorn purée");
  });

  test("a blank composition or measure cell takes the built-in figure, a filled measures cell replaces all of them", () => {
    expect(find("egg")).toMatchObject({ water: 0.74, protein: 0.1256, fat: 0.0951 });
    expect(find("egg")?.measures?.get("large")?.least).toBe(50);
    expect([...(find("flour")?.measures?.entries() ?? [])]).toEqual([["cup", { least: 140, most: 140 }]]);
    expect(find("flour")).toMatchObject({ ownMeasures: true, protein: 0.1033 });
  });

  test("the built-in table's other names find the shop's row", () => {
    expect(find("whole eggs")?.row).toBe(3);
    expect(find("AP flour")?.row).toBe(2);
    expect(find("bread flour")?.row).toBeNull();
  });

  test("price, label name, made of and allergens are never filled in", () => {
    expect(find("egg")).toMatchObject({ allergens: null, labelName: null, madeOf: null });
    expect(find("butter")).toMatchObject({ price: null, allergens: null, pack: null });
    expect(find("buckthorn")?.allergens).toBe("none");
  });

  test("what neither table knows is null", () => {
    expect(find("buckthorn")).toMatchObject({ protein: null, energy: null, measures: null, kind: null });
    expect(find("sourdough crumbs")).toBeUndefined();
    expect(find("__proto__")).toBeUndefined();
  });

  test("a cell that cannot be read waits until it is asked for", () => {
    const slipped = given([
      ["ingredient", "price", "water", "measures", "kind", "energy"],
      ["custard", "n/a", 72, "cup", "custard", 364],
    ]);
    const custard = findIngredient(slipped, "custard");
    expect(custard?.protein).toBeNull();
    expect(said(() => custard?.water)).toBe('larder row 2 column "water" is 72, which is 7200 %; enter 72% or 0.72.');
    expect(said(() => custard?.price)).toContain('larder row 2 column "price" is "n/a", which is not a number');
    expect(said(() => custard?.measures)).toContain('larder row 2 column "measures" holds "cup"; enter measures');
    expect(said(() => custard?.kind)).toContain('larder row 2 column "kind" is "custard"');
    expect(said(() => custard?.energy)).toBe('larder row 2 column "energy" is 364; it cannot be above 10.');
  });

  test.each([
    [
      [
        ["name", "water"],
        ["egg", 0.7],
      ],
      'larder has no column headed "ingredient"; its first row holds the headings.',
    ],
    [
      [["ingredient"], ["Egg"], ["milk"], ["eggs "]],
      'larder row 4 is called "eggs", as is row 2; give one of them another name.',
    ],
    [
      [
        ["ingredient", "also called"],
        ["plain flour", ""],
        ["strong flour", "Plain  Flour"],
      ],
      'larder row 3 is called "Plain Flour", as is row 2; give one of them another name.',
    ],
    [
      [
        ["ingredient", "water", "Water"],
        ["egg", 1, 1],
      ],
      'larder has two columns headed "water"; keep one.',
    ],
    [[["ingredient"], ["Loading..."]], "larder row 2 is still calculating; wait a moment."],
    [[["ingredient"], ["#REF!"]], "larder row 2 holds the error #REF!; correct that cell first."],
  ])("%j is refused", (rows, sentence) => {
    expect(said(() => given(rows))).toBe(sentence);
  });

  test("two rows that may both be meant are refused, unless one has the built-in row's own name", () => {
    const two = given([["ingredient"], ["plain flour"], ["white flour"]]);
    expect(said(() => findIngredient(two, "AP flour"))).toBe(
      'larder rows 2 and 3 could each be meant by "AP flour"; enter it under "also called" in the one that is meant.',
    );
    const own = given([["ingredient"], ["plain flour"], ["All-purpose flour"]]);
    expect(findIngredient(own, "AP flour")?.row).toBe(3);
  });

  test("unknown names are refused together, with the nearest known ones", () => {
    const names = ["buter", "egg", null, "xyzzy", "flor", "qqqq", "wwww"];
    const sentence = said(() => requireIngredients(given(), names, (index) => index !== 1));
    expect(sentence).toContain('ingredients row 1 is "buter", which the larder does not know; perhaps "butter"');
    expect(sentence).toContain("ingredients row 3 is blank though the row has an amount");
    expect(sentence).toContain("and 3 more of the kind (row 5, row 6, row 7)");
  });

  test("ten thousand rows are read, and each is found by its other name", () => {
    const rows = Array.from({ length: 10_000 }, (_, index) => [`item ${index}`, `thing ${index}`, 0.5]);
    const large = given([["ingredient", "also called", "water"], ...rows]);
    const found = requireIngredients(
      large,
      rows.map((_, index) => `Thing ${9_999 - index}`),
      () => true,
    );
    expect(found[0]?.row).toBe(10_001);
    expect(found[9_999]?.water).toBe(0.5);
  });

  test("a blank table is no table", () => {
    expect(
      findIngredient(
        given([
          ["", ""],
          ["", ""],
        ]),
        "egg",
      )?.row,
    ).toBeNull();
    expect(findIngredient(given(""), "egg")?.water).toBe(0.7615);
  });
});

describe("a measures cell", () => {
  const read = (text: unknown) => {
    const measures = readMeasures(text);
    return "says" in measures
      ? measures.says
      : Object.fromEntries([...measures].map(([k, v]) => [k, [v.least, v.most]]));
  };
  test.each([
    ["cup 125; tbsp 8; piece 50", { cup: [125, 125], tbsp: [8, 8], piece: [50, 50] }],
    ["Cups = 125 g;tablespoon: 7,5", { cup: [125, 125], tbsp: [7.5, 7.5] }],
    ["tsp 2.8 to 5", { tsp: [2.8, 5] }],
    ["extra large 56;", { "extra large": [56, 56] }],
    ["packet 7", { sachet: [7, 7] }],
  ])("%s", (text, measures) => {
    expect(read(text)).toEqual(measures);
  });
  test.each(["cup", "125", "cup 1,250", "cup 0", "cup -5", "extra-large", "cup 120; Cups 125", "tsp 5 to 2", 125])(
    "%s is refused",
    (text) => {
      expect(typeof read(text)).toBe("string");
    },
  );
});
