import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { down, expectCells, refusal, run } from "../functions/support.ts";

/** A larder of the shop's: name, allergens, label name, made of. */
const larder = (...rows: string[][]) => [
  ["Ingredient", "Allergens", "Label name", "Made of"],
  ...rows.map((row) => [...row, "", "", ""].slice(0, 4)),
];
const BREAD = larder(["flour", "wheat", "unfortified wheat flour"], ["salt", "none"], ["yeast", "none"]);
const DOUGH = down("flour", "water", "salt", "yeast");

describe("BAKE_LABELLIST", () => {
  const list = (weights: unknown[], law: string, finished?: number) =>
    run("BAKE_LABELLIST", DOUGH, down(...weights), BREAD, law, finished);

  test("EU: water weighs what is left of it, 400 of 1430 g (Regulation (EU) 1169/2011, annex VII A.1)", () => {
    expect(list([1000, 600, 20, 10], "EU", 1430)).toBe("unfortified WHEAT flour, water, salt, yeast");
    // 1100 of water go in, 900 are left: behind the flour, though it went in as the most.
    expect(list([1000, 1100, 20, 10], "EU", 1930)).toBe("unfortified WHEAT flour, water, salt, yeast");
    expect(list([1000, 1100, 20, 10], "US", 1930)).toBe(
      "water, unfortified wheat flour, salt, yeast. Contains: wheat.",
    );
  });
  test("EU, UK: 25 g of 1055, 2.4 %, may be left out (the same annex); the US lists what goes in (21 CFR 101.4(a))", () => {
    expect(list([1000, 60, 20, 10], "EU", 1055)).toBe("unfortified WHEAT flour, salt, yeast");
    expect(list([1000, 60, 20, 10], "UK", 1055)).toBe("unfortified WHEAT flour, salt, yeast");
    const us = "unfortified wheat flour, water, salt, yeast. Contains: wheat.";
    expect(list([1000, 60, 20, 10], "US", 1055)).toBe(us);
    expect(list([1000, 60, 20, 10], "US")).toBe(us);
  });
  test("water of exactly 5 % is left out, of more is listed; none is left where the product dried further", () => {
    expect(list([950, 200, 0, 0], "EU", 1000)).toBe("unfortified WHEAT flour");
    expect(list([950, 200, 0, 0], "EU", 1001)).toBe("unfortified WHEAT flour, water");
    expect(list([950, 200, 0, 0], "EU", 900)).toBe("unfortified WHEAT flour");
  });
  test("rows of one label name count together, ice with the water; equal weights keep their order", () => {
    const shop = larder(
      ["flour", "wheat", "wheat flour"],
      ["bread flour", "wheat", "Wheat flour"],
      ["butter", "milk"],
      ["salt", "none"],
    );
    const names = down("flour", "butter", "bread flour", "ice", "water", "salt", "sugar");
    expect(run("BAKE_LABELLIST", names, down(30, 50, 30, 20, 20, 50, 0), shop, "US")).toBe(
      "wheat flour (enrichment not known), butter, salt, water. Contains: milk, wheat.",
    );
    expect(run("BAKE_LABELLIST", names, down(30, 50, 30, 20, 20, 50, ""), shop, "EU", 195)).toBe(
      "WHEAT flour, butter (MILK), salt, water",
    );
  });
  test("a formula that is not weighed yet has no list and no share", () => {
    expect(run("BAKE_LABELLIST", DOUGH, down("", "", "", ""), BREAD, "EU", 700)).toBe("");
    expect(run("BAKE_LABELSHARE", "flour", DOUGH, down("", "", "", ""), 700)).toEqual([["", ""]]);
  });
  test("a shop's own water, by its kind, is water too", () => {
    const shop = [
      ["ingredient", "kind", "allergens", "label name"],
      ["flour", "flour", "wheat", "wheat flour with calcium"],
      ["well", "water", "none", "spring water"],
    ];
    expect(run("BAKE_LABELLIST", down("well", "flour"), down(1100, 1000), shop, "UK", 1900)).toBe(
      "WHEAT flour with calcium, spring water",
    );
    expect(run("BAKE_LABELLIST", down("well", "flour"), down(60, 1000), shop, "UK", 1025)).toBe(
      "WHEAT flour with calcium",
    );
  });
  test("a compound is listed with its parts by falling share, and its allergens are never dropped", () => {
    const shop = larder(
      ["chips", "soybeans; milk", "dark chocolate chips", "cocoa mass 45%, sugar 54%, emulsifier (soya lecithin) 1%"],
      ["mix", "wheat, barley", "seed mix", "linseed; rolled wheat; malt"],
    );
    expect(run("BAKE_LABELLIST", down("chips", "mix"), down(10, 90), shop, "EU")).toBe(
      "seed mix (linseed, rolled WHEAT, malt) (BARLEY), dark chocolate chips (sugar, cocoa mass, emulsifier (SOYA lecithin)) (MILK)",
    );
    expect(run("BAKE_LABELLIST", down("mix"), down(90), shop, "US")).toBe(
      "seed mix (linseed, rolled wheat, malt). Contains: wheat.",
    );
  });
  test.each([
    ["oil 10%, 60% sugar, salt 0,5%", "sugar, oil, salt"],
    ["palm oil 10 %; 60 % sugar; sea salt 5.5 %", "sugar, palm oil, sea salt"],
    ["oil 10%, sugar, salt 30%", "oil, sugar, salt"],
    ["oil, sugar 60%", "oil, sugar"],
    ["vitamin B12, oil", "vitamin B12, oil"],
  ])("parts %j stand by falling share where each has one, else as they were typed: %s", (madeOf, parts) => {
    expect(run("BAKE_LABELLIST", "spread", 10, larder(["spread", "none", "", madeOf]), "EU")).toBe(`spread (${parts})`);
  });
  test.each([
    ["butter", "milk", "", "butter (MILK)"],
    ["buttermilk", "milk", "", "buttermilk (MILK)"],
    ["spelt flour", "spelt", "", "spelt flour (WHEAT)"],
    ["spelt", "wheat", "spelt wheat flour", "spelt WHEAT flour"],
    ["buckwheat mix", "wheat", "", "buckwheat mix (WHEAT)"],
    ["eggs", "egg", "", "EGGS"],
    ["almond milk", "almonds", "", "ALMOND milk"],
    ["soya milk", "soy", "", "SOYA milk"],
    ["anchovy paste", "anchovies", "", "ANCHOVY paste (FISH)"],
    ["brill (skinned)", "fish: brill", "", "BRILL (skinned) (FISH)"],
    ["odd", "fish: a+b[c*", "", "odd (FISH, A+B[C*)"],
    ["shrimp paste", "shrimps", "", "SHRIMP paste (CRUSTACEANS)"],
    ["bisque", "lobster", "crustacean bisque", "CRUSTACEAN bisque (LOBSTER)"],
    ["oyster sauce", "oysters", "", "OYSTER sauce (MOLLUSCS)"],
    ["ink", "squid", "", "ink (MOLLUSCS, SQUID)"],
    ["fumet", "crustaceans; molluscs", "", "fumet (CRUSTACEANS, MOLLUSCS)"],
    ["raisins", "sulphites 12 mg/kg", "", "raisins (SULPHITES)"],
    ["raisins", "sulphites 9,5 mg/kg", "", "raisins"],
    ["oat flakes", "oats; may contain", "", ""],
  ])("%s with %s is named %s%s", (name, allergens, label, expected) => {
    const call = [down(name), down(10), larder([name, allergens, label]), "EU"];
    if (expected === "") expect(refusal("BAKE_LABELLIST", ...call)).toContain('holds "may contain"');
    else expect(run("BAKE_LABELLIST", ...call)).toBe(expected);
  });
  test("the list holds every ingredient once and falls by weight, whatever the order of the rows", () => {
    const names = Array.from({ length: 8 }, (_, index) => `spice ${String.fromCharCode(97 + index)}`);
    const shop = larder(...names.map((name) => [name, "none"]));
    const rows = fc.uniqueArray(fc.integer({ min: 1, max: 999 }), { minLength: 8, maxLength: 8 });
    fc.assert(
      fc.property(rows, fc.shuffledSubarray([0, 1, 2, 3, 4, 5, 6, 7], { minLength: 8 }), (weights, order) => {
        const listed = run(
          "BAKE_LABELLIST",
          down(...order.map((at) => names[at])),
          down(...order.map((at) => weights[at])),
          shop,
          "US",
        );
        const expected = [...names].sort((a, b) => (weights[names.indexOf(b)] ?? 0) - (weights[names.indexOf(a)] ?? 0));
        expect(listed).toBe(expected.join(", "));
      }),
    );
  });
  test.each<[unknown[], string]>([
    [
      [DOUGH, down(1000, 600, 20, 10), BREAD, "EU", 1700],
      "finished_weight is 1700, more than the ingredients' 1630; enter both in one unit.",
    ],
    [
      [DOUGH, down(1000, 600, 20, 10), BREAD, "EU"],
      "finished_weight is blank; where water goes in, EU lists need the weight of the finished product.",
    ],
    [[DOUGH, down(1000, 600, 20, 10), BREAD], 'law is missing; choose "US", "EU" or "UK".'],
    [
      [down("flour", "sugar"), down(1, 1), BREAD, "EU"],
      'ingredients row 2 is "granulated sugar", whose allergens are not known; give it a larder row with them, "none" where checked.',
    ],
    [
      [down("flour", ""), down(1, 1), BREAD, "EU"],
      "ingredients row 2 is blank though the row has an amount; enter its name.",
    ],
    [
      [down("c"), down(1), larder(["c", "none", "", "sugar 60%, fat 50%"]), "UK"],
      'larder row 2 column "made of" adds up to 110 %; enter shares of the whole.',
    ],
  ])("refuses %#", (args, says) => {
    expect(refusal("BAKE_LABELLIST", ...args)).toBe(`BAKE_LABELLIST: ${says}`);
  });
});

describe("BAKE_LABELSHARE", () => {
  const CAKE = down("dough", "Sultanas", "dough");
  const share = (...args: unknown[]): number => (run("BAKE_LABELSHARE", ...args) as [[number, string]])[0][0];
  const says = (...args: unknown[]): string => (run("BAKE_LABELSHARE", ...args) as [[number, string]])[0][1];
  test("200 g of sultanas in a cake of 800 g are 25 % (a council's leaflet, paperzz 8931015), 20 % of what goes in", () => {
    const weights = down(500, 200, 300);
    expectCells(run("BAKE_LABELSHARE", "sultana", CAKE, weights, 800), [[0.25, "of the finished weight (800)"]]);
    expectCells(run("BAKE_LABELSHARE", "sultanas", CAKE, weights), [[0.2, "of the weight as mixed (1000)"]]);
    expectCells(share("dough", CAKE, weights), 0.8);
  });
  test("more than goes into 100 g stays above 1: made with 120 g per 100 g (Regulation (EU) 1169/2011, annex VIII)", () => {
    expectCells(run("BAKE_LABELSHARE", "butter", down("butter", "flour"), down(120, 30), 100), [
      [1.2, "of the finished weight (100); declare it as 120 g per 100 g"],
    ]);
    expect(says("butter", down("butter"), down(100), 100)).toBe("of the finished weight (100)");
  });
  test("a row without its name or its weight may be of the ingredient: refused by row", () => {
    expect(refusal("BAKE_LABELSHARE", "a", down("b", "a", ""), down(1, 1, 1))).toBe(
      "BAKE_LABELSHARE: ingredients row 3 is blank though the row has an amount; enter its name.",
    );
    expect(refusal("BAKE_LABELSHARE", "a", down("b", "a"), down(1, ""))).toBe(
      'BAKE_LABELSHARE: weights row 2 is blank beside "a"; enter its weight, or 0 where none goes in.',
    );
    expect(share("a", down("b", "a"), down(1, 0))).toBe(0);
    expect(share("a", down("b", "a", "c", ""), down(1, 1, "", 0))).toBe(0.5);
  });
  test("without loss the shares of all ingredients make 1", () => {
    const weights = fc.array(fc.integer({ min: 1, max: 1e6 }), { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(weights, (three) => {
        const parts = ["a1", "b2", "c3"].map((name) => share(name, down("a1", "b2", "c3"), down(...three)));
        expectCells(
          parts.reduce((all, one) => all + one, 0),
          1,
        );
      }),
    );
  });
  describe("inside compounds", () => {
    const shop = larder(
      ["mix", "none", "", "sultanas 60%; 40 % candied peel (lemon)"],
      ["chips", "milk", "dark chocolate chips", "sugar 54,5%, cocoa mass 44.5%, emulsifier (soya lecithin) 1%"],
      ["filling", "milk", "", "chips 50%, icing sugar 20%, sugar 30%"],
      ["spread", "none", "", "oil, nuts (hazelnuts, almonds) 20%"],
    );
    const names = down("flour", "mix", "sultanas", "filling");
    const weights = down(600, 100, 100, 200);
    test("the row and what the compounds hold of it count together, to any depth", () => {
      // By hand: 60 + 100 of 1000; 200 × (0.5 × 0.545 + 0.3) of sugar; 200 × 0.5 × 0.01 of lecithin; 200 × 0.5 of chips.
      expectCells(run("BAKE_LABELSHARE", "sultanas", names, weights, undefined, shop), [
        [0.16, 'of the weight as mixed (1000); 60 % of "mix" counted'],
      ]);
      expectCells(run("BAKE_LABELSHARE", "sugar", names, weights, 900, shop), [
        [114.5 / 900, 'of the finished weight (900); 57.25 % of "filling" counted; "icing sugar" not counted'],
      ]);
      expectCells(share("soya lecithin", names, weights, undefined, shop), 0.001);
      expectCells(share("candied peel", names, weights, undefined, shop), 0.04);
      for (const name of ["chips", "dark chocolate chips"])
        expectCells(share(name, names, weights, undefined, shop), 0.1);
    });
    test("spaces of every sort in what it is made of are spaces", () => {
      const odd = larder(["mix", "none", "", "sultanas\u00a060\u202f%,\u2009candied\u00a0peel 40\u200b%"]);
      expectCells(share("sultanas", names.slice(1, 2), down(100), undefined, odd), 0.6);
    });
    test("what was not looked into is not counted in silence: without a larder no compound is", () => {
      expectCells(run("BAKE_LABELSHARE", "sultanas", names, weights), [[0.1, "of the weight as mixed (1000)"]]);
      expect(says("sugar", down("sugar", "brown sugar"), down(1, 1), undefined, shop)).toBe(
        'of the weight as mixed (2); "brown sugar" not counted',
      );
    });
    test.each<[string, string]>([
      ["oil", 'larder row 5 column "made of" has "oil" without its share; enter it with one, such as "oil 20%".'],
      [
        "almonds",
        'larder row 5 column "made of" has "almonds" in brackets beside others; give "nuts" a row with its own "made of".',
      ],
    ])("%s, whose share nobody knows, is asked about", (name, because) =>
      expect(refusal("BAKE_LABELSHARE", name, down("spread"), down(5), undefined, shop)).toBe(
        `BAKE_LABELSHARE: ${because}`,
      ),
    );
    test("what is made of itself is refused", () => {
      const circle = larder(["a", "none", "", "b 50%"], ["b", "none", "", "a 50%"]);
      expect(refusal("BAKE_LABELSHARE", "c", down("a"), down(5), undefined, circle)).toBe(
        'BAKE_LABELSHARE: larder row 2 is made of itself: "a".',
      );
    });
  });
  test.each<[unknown[], string]>([
    [
      ["saltanas", CAKE, down(1, 1, 1)],
      'ingredient is "saltanas", which is none of the ingredients; perhaps "Sultanas"?',
    ],
    [
      ["sultanas", CAKE, down(1, 1, 1), 4],
      "finished_weight is 4, more than the ingredients' 3; enter both in one unit.",
    ],
    [["sultanas", CAKE, down(1, 1, 1), 0], "finished_weight is 0; it must be above 0."],
    [["sultanas", CAKE, down(0, 0, 0)], "weights add up to 0; a share of nothing cannot be declared."],
  ])("refuses %#", (args, says) => {
    expect(refusal("BAKE_LABELSHARE", ...args)).toBe(`BAKE_LABELSHARE: ${says}`);
  });
});
