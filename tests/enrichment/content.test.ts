import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { builtInRows } from "../../shared/larder/built-in-larder.ts";
import { down, expectCells, refusal, run } from "../functions/support.ts";
import { cells, column, LAWS, number, sum } from "./support.ts";

describe("BAKE_CONTENT", () => {
  test("a large egg (USDA SR28 01123, 50 g)", () => {
    expect(number("BAKE_CONTENT", "egg", 50, "water")).toBeCloseTo(38.075, 9);
    expect(number("BAKE_CONTENT", "egg", 50, "protein")).toBeCloseTo(6.28, 9);
    expect(number("BAKE_CONTENT", "egg", 50, "fat")).toBeCloseTo(4.755, 9);
    expect(number("BAKE_CONTENT", "egg", 50, "energy")).toBeCloseTo(71.5, 9);
    expect(number("BAKE_CONTENT", "eggs", 50, "saturated fat")).toBeCloseTo(1.563, 9);
  });

  test("an enriched dough's fat is 45.64 % of its flour (USDA SR28)", () => {
    const fat = column("BAKE_CONTENT", down("egg", "milk", "unsalted butter"), down(500, 100, 500), "fat");
    expect(sum(fat) / 1000).toBeCloseTo(0.4564, 4);
  });

  test("salt is sodium × 2.5: butter with salt has 643 mg of sodium (USDA SR28 01001)", () => {
    expect(number("BAKE_CONTENT", "salted butter", 100, "salt")).toBeCloseTo(1.6075, 9);
  });

  test("90 g of nonfat dry milk hold the protein of a litre's milk, less a little (Gisslen's exchange on SR28)", () => {
    expect(number("BAKE_CONTENT", "NFDM", 90, "protein")).toBeCloseTo(32.5, 1);
    expect(number("BAKE_CONTENT", "whole milk", 1000, "protein")).toBeCloseTo(31.5, 1);
    expect(number("BAKE_CONTENT", "whole milk", 1000, "fat")).toBeCloseTo(32.7, 1);
  });

  test("a cup of honey holds the quarter cup of water that the Honey Board's rule takes off (SR28: 58 g)", () => {
    expect(number("BAKE_CONTENT", "honey", 339, "water")).toBeCloseTo(58, 0);
  });

  test("blank rows stay blank, plain water is water alone, and a kind speaks for starters and unknown flours", () => {
    const names = down("water", "", "levain", "house flour 65", "rye");
    const kinds = down("water", "", "levain 50%", "flour", "");
    expectCells(run("BAKE_CONTENT", names, down(700, "", 150, 100, ""), "water", undefined, kinds), [
      [700],
      [""],
      [50 + 11.92],
      [11.92],
      [""],
    ]);
    expectCells(run("BAKE_CONTENT", "ice", 300, "water"), 300);
    expectCells(run("BAKE_CONTENT", "water", 300, "energy"), 0);
    expectCells(run("BAKE_CONTENT", "grey salt", 10, "salt", "", "salt"), 9.6895);
  });

  test("a starter with figures of its own in the larder goes by them", () => {
    const larder = [
      ["ingredient", "protein"],
      ["rye sour", 0.05],
    ];
    expectCells(run("BAKE_CONTENT", "rye sour", 100, "protein", larder, "sour 80%"), 5);
    expectCells(run("BAKE_CONTENT", "rye sour", 180, "carbohydrate", larder, "sour 80%"), 76.31);
  });

  test("water, protein, fat and carbohydrate of any row add up to no more than its weight and 0.2 %", () => {
    const rows = builtInRows().filter((row) => row.water !== null);
    fc.assert(
      fc.property(fc.constantFrom(...rows), fc.double({ min: 0.1, max: 1e6, noNaN: true }), (row, weight) => {
        const parts = ["water", "protein", "fat", "carbohydrate"].map((part) =>
          number("BAKE_CONTENT", row.name, weight, part),
        );
        expect(sum(parts) + (row.ash ?? 0) * weight).toBeLessThanOrEqual(weight * 1.002);
      }),
      LAWS,
    );
  });

  test.each([
    [["xylitol", 5, "water"], '"xylitol", which the larder does not know'],
    [["", 5, "water"], "ingredients row 1 is blank though the row has an amount; enter its name"],
    [["yeast", 5, "water"], "whose water is not known; say fresh, instant or active dry yeast"],
    [["psyllium", 5, "fat"], 'is "psyllium", whose fat is not known; give its larder row a figure under "fat"'],
    [["egg", -1, "fat"], "weights row 1 is -1; it cannot be below 0"],
    [["egg", 1, "cholesterol"], 'part is "cholesterol"; '],
    [["egg", 1, ""], "part is blank; choose"],
    [["egg", 1, "fat", "", "levain"], 'kinds row 1 is "levain" without its hydration'],
    [["__proto__", 1, "fat"], "which the larder does not know"],
  ])("%j is refused", (args, sentence) => {
    expect(refusal("BAKE_CONTENT", ...args)).toContain(sentence);
  });
});

describe("BAKE_SWAP", () => {
  test.each<[string, unknown[], [number, number], number]>([
    ["derived on SR28, equal solids", [1000, "skim milk", "nonfat dry milk", "solids"], [94.59, 905.41], 5e-3],
    ["derived on SR28, equal solids", [1000, "whole milk", "whole milk powder", "solids"], [121.71, 878.29], 2e-2],
    ["derived on SR28, equal solids", [100, "whole egg", "dried whole egg", "solids"], [24.53, 75.47], 5e-3],
    ["Gisslen: 1 kg of skim milk is 910 + 90", [1000, "skim milk", "NFDM", "solids"], [90, 910], 5],
    ["Gisslen: 1 kg of whole milk is 880 + 120", [1000, "milk", "dried whole milk", "solids"], [120, 880], 3],
    ["Gisslen: 1 lb of skim milk is 14.5 oz + 1.5 oz", [16, "skim milk", "NFDM", "solids"], [1.5, 14.5], 0.05],
    ["Gisslen: 1 lb of whole milk is 14 oz + 2 oz", [16, "milk", "whole milk powder", "solids"], [2, 14], 0.06],
    ["derived on SR28, equal sugars", [100, "sugar", "honey", "sugar"], [121.53, -20.76], 5e-3],
    ["derived on SR28, equal fat: 81.11 of 100", [100, "butter", "lard", "fat"], [81.11, 17.94], 1e-9],
    ["derived on SR28, equal water", [100, "milk", "water", "water"], [88.13, 0], 1e-9],
  ])("%s: %j", (_, args, expected, within) => {
    expectCells(run("BAKE_SWAP", ...args), [expected], within);
  });

  test("what is kept is kept, and so is all the water", () => {
    const pairs = fc.constantFrom<[string, string, string]>(
      ["milk", "NFDM", "solids"],
      ["butter", "olive oil", "fat"],
      ["honey", "brown sugar", "sugar"],
      ["egg", "sour cream", "water"],
      ["heavy cream", "butter", "fat"],
    );
    fc.assert(
      fc.property(pairs, fc.double({ min: 0.1, max: 1e5, noNaN: true }), ([from, to, keep], weight) => {
        const [other = 0, water = 0] = cells("BAKE_SWAP", weight, from, to, keep);
        const held = (name: string, grams: number, part: string) => number("BAKE_CONTENT", name, grams, part);
        const kept = (name: string, grams: number) =>
          keep === "solids" ? grams - held(name, grams, "water") : held(name, grams, keep);
        expect(kept(to, other) / kept(from, weight)).toBeCloseTo(1, 9);
        expect((held(to, other, "water") + water) / weight).toBeCloseTo(held(from, weight, "water") / weight, 9);
      }),
      LAWS,
    );
  });

  test.each([
    [[100, "sugar", "butter", "sugar"], 'to is "butter", which has 0.06 % sugar'],
    [[100, "lard", "butter", "water"], 'from is "lard", which has 0 % water'],
    [[100, "soap", "butter", "fat"], 'from is "soap", which the larder does not know'],
    [[100, "semolina", "honey", "sugar"], 'from is "semolina", whose sugar is not known'],
    [[100, "sugar", "honey", "sweetness"], 'keep is "sweetness"; choose "solids", "water", "fat" or "sugar"'],
    [["", "sugar", "honey", "sugar"], "weight is blank"],
    [[100, "", "honey", "sugar"], "from is blank"],
    [[down(100, 200), "sugar", "honey", "sugar"], "weight is a range; give one cell"],
  ])("%j is refused", (args, sentence) => {
    expect(refusal("BAKE_SWAP", ...args)).toContain(sentence);
  });
});

describe("BAKE_EXTRAWATER", () => {
  test("low-heat dry milk: 3.5 parts of water for 6 (J. Dairy Sci. 34:1092)", () => {
    expect(cells("BAKE_EXTRAWATER", "nonfat dry milk", 6)[0]).toBeCloseTo(3.5, 1);
  });

  test("15 % of defatted soy flour lifts absorption from 60.4 to 67.2 % (a published study of buns)", () => {
    const soy = cells("BAKE_EXTRAWATER", "defatted soy flour", 15)[0] ?? 0;
    expect(0.604 * 85 + soy).toBeCloseTo(67.2, 1);
  });

  test("gluten takes one and a half times its weight: 2 % asks for 3 % (a pizza trade forum)", () => {
    expect(cells("BAKE_EXTRAWATER", "vital wheat gluten", 20)[0]).toBeCloseTo(30, 9);
  });

  test("psyllium takes 4.5 times its weight (US patent 8075938)", () => {
    expect(cells("BAKE_EXTRAWATER", "psyllium husk", 10)).toEqual([45, ""]);
  });

  test("low-confidence figures are marked; wet, fat, sugar, salt and flour rows take none; the rest has no figure", () => {
    const names = down("flour", "milk", "butter", "sugar", "salt", "cocoa", "", "rolled oats", "water", "fresh yeast");
    const weights = down(1000, 100, 100, 100, 20, 50, "", 80, 500, 20);
    const answer = run("BAKE_EXTRAWATER", names, weights) as [number | string, string][];
    expect(answer.map(([water]) => water)).toEqual([0, 0, 0, 0, 0, 50, "", "", 0, 0]);
    expect(answer[5]?.[1]).toContain("rough figure");
    expect(answer[7]?.[1]).toBe("no figure");
    expect(answer[6]?.[1]).toBe("");
  });

  test("the shop's own figure goes before a rough one and is not remarked, and may lower the water", () => {
    const larder = [
      ["ingredient", "extra water"],
      ["wheat bran", 1.1],
      ["inulin", -0.3],
      ["apple fibre", ""],
    ];
    expectCells(run("BAKE_EXTRAWATER", down("wheat bran", "inulin", "apple fibre"), down(100, 20, 20), larder), [
      [110, ""],
      [-6, ""],
      ["", "no figure"],
    ]);
  });

  test("kinds spare flour, salt and starters a larder row", () => {
    expectCells(
      run(
        "BAKE_EXTRAWATER",
        down("house flour", "levain", "grey salt", "bran"),
        down(1000, 200, 20, 50),
        "",
        down("flour", "levain 100%", "salt", "grain"),
      ),
      [
        [0, ""],
        [0, ""],
        [0, ""],
        [47.5, 'rough figure, 0.95 g per g: try it, and enter your own under "extra water" in the larder'],
      ],
    );
    expect(refusal("BAKE_EXTRAWATER", "levain", 200)).toContain(
      'ingredients row 1 is "levain", which the larder does not know',
    );
  });
});
