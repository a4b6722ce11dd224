import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { builtInRows } from "../shared/built-in-larder.ts";
import { down, expectCells, refusal, run } from "./support.ts";

const LAWS = { seed: 20160531, numRuns: 200 };
const number = (name: string, ...args: unknown[]): number => run(name, ...args) as number;
const cells = (name: string, ...args: unknown[]): number[] => (run(name, ...args) as number[][])[0] ?? [];
const column = (name: string, ...args: unknown[]): number[] =>
  (run(name, ...args) as number[][]).map(([one]) => one ?? 0);
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

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
    [["", 5, "water"], "ingredients row 1 is blank though the row has an amount; write its name"],
    [["yeast", 5, "water"], "whose water is not known; say fresh, instant or active dry yeast"],
    [["psyllium", 5, "fat"], 'is "psyllium", whose fat is not known; give its larder row a figure under "fat"'],
    [["egg", -1, "fat"], "weights row 1 is -1; it cannot be below 0"],
    [["egg", 1, "cholesterol"], 'part is "cholesterol"; '],
    [["egg", 1, ""], "part is blank; write"],
    [["egg", 1, "fat", "", "levain"], 'kinds row 1 is "levain" without its hydration'],
    [["__proto__", 1, "fat"], "which the larder does not know"],
  ])("%j is refused", (args, sentence) => {
    expect(refusal("BAKE_CONTENT", ...args)).toContain(sentence);
  });
});

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
      'BAKE_HYDRATION: larder row 2 column "water" is 76, which is 7600 %; write 76% or 0.76.',
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
    [down("", "egg"), down(1000, 100), down("flour", "egg"), 6, "hydration is 6, which is 600 %; write 6% or 0.06"],
    [down("egg"), down(100), down("egg"), 0.6, "weights hold no flour"],
  ])("%j, %j, %j, %d is refused", (names, weights, kinds, wanted, sentence) => {
    expect(refusal("BAKE_PLAINWATER", names, weights, kinds, wanted)).toContain(sentence);
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
    [[100, "sugar", "honey", "sweetness"], 'keep is "sweetness"; write "solids", "water", "fat" or "sugar"'],
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
        [47.5, 'rough figure, 0.95 g per g: try it, and write your own under "extra water" in the larder'],
      ],
    );
    expect(refusal("BAKE_EXTRAWATER", "levain", 200)).toContain(
      'ingredients row 1 is "levain", which the larder does not know',
    );
  });
});

describe("BAKE_GLUTENADD", () => {
  test.each<[string, unknown[], number, number]>([
    ["on SR28 flour and gluten, on top", [1000, 0.1033, 0.125, 0.7516], 34.631, 1e-3],
    ["on SR28 flour and gluten, replacing", [1000, 0.1033, 0.125, 0.7516, "replace"], 33.472, 1e-3],
    ["10 to 12 % with 75 %, on top", [1000, "10%", "12%", "75%"], 31.746, 1e-3],
    ["10 to 12 % with 75 %, replacing", [1000, "10%", "12%", "75%", "replace"], 30.769, 1e-3],
    ["forum.breadtopia.com/t/13403, on top", [500, 0.127, 0.14, 0.75], 10.66, 5e-3],
    ["forum.breadtopia.com/t/13403, replacing", [500, 0.127, 0.14, 0.75, "replace"], 10.43, 5e-3],
    ["ntro.it.com: 10.5 to 12.5 % of 500 g, on top", [500, 0.105, 0.125, 0.75], 16, 5e-2],
    ["ntro.it.com: 10.5 to 12.5 % of 500 g, replacing", [500, 0.105, 0.125, 0.75, "replace"], 15.5, 5e-2],
    ["1 % of gluten of 75 % on a 12 % flour gains 0.624 points", [100, 0.12, 0.12624, 0.75], 1, 1e-3],
    ["nothing to add", [1000, 0.12, 0.12], 0, 0],
  ])("%s: %j", (_, args, gluten, within) => {
    expect(Math.abs((cells("BAKE_GLUTENADD", ...args)[0] ?? Number.NaN) - gluten)).toBeLessThanOrEqual(within);
  });

  test("extra water is 1.5 × the gluten; replacing takes off what the flour would have taken", () => {
    expect(cells("BAKE_GLUTENADD", 1000, 0.1, 0.12, 0.75)[2]).toBeCloseTo(47.6, 1);
    const [gluten = 0, flour, water] = cells("BAKE_GLUTENADD", 1000, 0.1, 0.12, 0.75, "replace");
    expect(flour).toBeCloseTo(1000 - gluten, 9);
    expect(water).toBeCloseTo(0.9 * gluten, 9);
  });

  test("the mix has the protein wanted, whichever way", () => {
    const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(share(0.05, 0.15), share(0, 0.2), share(0.6, 0.9), fc.boolean(), (now, more, gluten, onTop) => {
        const wanted = now + more;
        const [added = 0, flour = 0] = cells("BAKE_GLUTENADD", 1000, now, wanted, gluten, onTop ? "on top" : "replace");
        expect((added * gluten + flour * now) / (added + flour)).toBeCloseTo(wanted, 9);
        if (!onTop) expect(added + flour).toBeCloseTo(1000, 6);
      }),
      LAWS,
    );
  });

  test("a column of flours gives a row each", () => {
    const rows = run(
      "BAKE_GLUTENADD",
      down(1000, "", 500),
      down(0.1, "", 0.127),
      down(0.12, "", 0.14),
      0.75,
    ) as unknown[][];
    expect(rows.map(([gluten]) => (gluten === "" ? "" : (gluten as number).toFixed(2)))).toEqual([
      "31.75",
      "",
      "10.66",
    ]);
  });

  test.each([
    [[1000, 0.12, 0.1], "protein_wanted is 10 %; gluten can bring this flour to more than its 12 %"],
    [
      [1000, 0.12, 0.8],
      "protein_wanted is 80 %; gluten can bring this flour to more than its 12 % and less than the gluten's own 75.16 %",
    ],
    [[1000, 0.12, 0.75, 0.75], "protein_wanted is 75 %"],
    [[1000, 12, 0.14], "protein_now is 12, which is 1200 %; write 12% or 0.12"],
    [[1000, 0.12, 0.14, 0.75, "beside"], 'mode is "beside"; write "on top" or "replace"'],
    [[-1, 0.12, 0.14], "flour is -1; it cannot be below 0"],
    [[down(1000, 1000), down(0.12, 0.12), down(0.14, 0.1)], "protein_wanted row 2 is 10 %"],
  ])("%j is refused", (args, sentence) => {
    expect(refusal("BAKE_GLUTENADD", ...args)).toContain(sentence);
  });
});

describe("BAKE_FLOURBLEND", () => {
  test("13.07 and 8.20 % to 11 % are 57.49 and 42.51 % (derived on SR28 20640 and 20084)", () => {
    expectCells(run("BAKE_FLOURBLEND", 0.1307, 0.082, 0.11, 100), [[57.49, 42.51]], 5e-3);
    expectCells(run("BAKE_FLOURBLEND", 0.1307, 0.082, 0.1307, 100), [[100, 0]]);
  });

  test("the blend has its weight and its protein", () => {
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        part,
        fc.double({ min: 0.05, max: 0.09, noNaN: true }),
        fc.double({ min: 0.1, max: 0.2, noNaN: true }),
        (at, low, high) => {
          const wanted = low + at * (high - low);
          const [a = 0, b = 0] = cells("BAKE_FLOURBLEND", low, high, wanted, 1000);
          expect(a + b).toBeCloseTo(1000, 8);
          expect((a * low + b * high) / 1000).toBeCloseTo(wanted, 9);
        },
      ),
      LAWS,
    );
  });

  test.each([
    [[0.13, 0.08, 0.14, 100], "wanted is 14 %; a blend lies between its flours, 8 % and 13 %"],
    [[0.12, 0.12, 0.12, 100], "protein_b is 12 %, the same as the other flour"],
    [[13, 0.08, 0.1, 100], "protein_a is 13, which is 1300 %"],
    [[0.13, 0.08, 0.1, ""], "total is blank"],
  ])("%j is refused", (args, sentence) => {
    expect(refusal("BAKE_FLOURBLEND", ...args)).toContain(sentence);
  });
});

describe("BAKE_LABELPROTEIN", () => {
  const bounds = (...args: unknown[]) => cells("BAKE_LABELPROTEIN", ...args).slice(0, 2);
  test.each<[string, unknown[], [number, number]]>([
    ["21 CFR 101.9: 3 g in 30 g", [3, 30], [2.5 / 30, 3.5 / 30]],
    ["21 CFR 101.9: 4 g in 30 g", [4, 30, "US"], [3.5 / 30, 4.5 / 30]],
    ["21 CFR 101.9: under half a gram may be 0", [0, 30], [0, 0.5 / 30]],
    ["a decimal is a decimal", [3.5, 30], [3.45 / 30, 3.55 / 30]],
    ["a typed 3.0 is a decimal", ["3.0", 30], [2.95 / 30, 3.05 / 30]],
    ["EU guidance 2012 (from memory): whole grams from 10", [12, "", "EU"], [0.115, 0.125]],
    ["EU guidance 2012 (from memory): tenths below 10", [9, 100, "UK"], [0.0895, 0.0905]],
    ["a decimal above 10 is a decimal", ["12,5", "", "EU"], [0.1245, 0.1255]],
  ])("%s: %j", (_, args, expected) => {
    expectCells([bounds(...args)], [expected], 1e-12);
  });

  test("80 to 85 % of it can form gluten: 9.6 to 10.2 g of a 12 % flour (from memory: Shewry; Wieser)", () => {
    const [low = 0, high = 0, glutenLow, glutenHigh] = cells("BAKE_LABELPROTEIN", "12.0", 100, "EU");
    expect(glutenLow).toBeCloseTo(low * 0.8, 12);
    expect(glutenHigh).toBeCloseTo(high * 0.85, 12);
    expect(glutenLow).toBeCloseTo(0.096, 3);
    expect(glutenHigh).toBeCloseTo(0.102, 3);
  });

  test("every share within the bounds is printed as the label's figure", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 25, max: 100 }),
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        (grams, serving, at) => {
          const [low = 0, high = 0] = bounds(grams, serving);
          expect(Math.round((low + at * (high - low)) * serving)).toBe(grams);
        },
      ),
      LAWS,
    );
  });

  test.each([
    [[3], "serving is blank; a US label gives protein per serving"],
    [[12, 30, "EU"], "serving is 30; EU labels give protein per 100 g, so leave it blank or write 100"],
    [[40, 30], "protein is 40 g, more than the 30 g it is said to be in"],
    [["some", 30], 'protein is "some", which is not a number'],
    [[3, 0], "serving is 0; it must be above 0"],
    [[3, 30, "JP"], 'law is "JP"; write "US", "EU" or "UK"'],
  ])("%j is refused", (args, sentence) => {
    expect(refusal("BAKE_LABELPROTEIN", ...args)).toContain(sentence);
  });
});
