// Labels through compounds of compounds: lists, allergens and quantities of formulas of the shop's own.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { allergenChange } from "../../shared/label/allergen-changes.ts";
import { allergenList, groupIn } from "../../shared/label/allergen-list.ts";
import { down, expectCells, refusal, run } from "../functions/support.ts";

const larder = (...rows: string[][]) => [
  ["Ingredient", "Allergens", "Label name", "Made of"],
  ...rows.map((row) => [...row, "", "", ""].slice(0, 4)),
];
const SHOP = larder(
  ["flour", "wheat", "fortified wheat flour", "wheat flour, calcium carbonate, iron, niacin, thiamin"],
  ["almonds", "almonds"],
  ["sugar", "none"],
  ["butter", "milk"],
  ["egg", "eggs"],
  ["paste", "", "almond paste", "almonds 50%, sugar 50%"],
  ["salt", "none"],
);
/** A bun of dough and filling; the filling holds a paste and a custard, and the custard loses a tenth of its weight as steam. */
const FORMULAS = [
  ["product", "ingredient", "weight", "boil-off"],
  ["filling", "paste", 400, ""],
  ["", "custard", 600, ""],
  ["custard", "water", 700, "10%"],
  ["", "sugar", 200, ""],
  ["", "egg", 100, ""],
];
const BUN = down("flour", "water", "filling", "salt");
const WEIGHTS = down(600, 360, 300, 10);

describe("lists", () => {
  test("a formula inside a formula is listed with its parts by falling weight, and water by what is left of it", () => {
    // By hand: 1170 g finished of 1270, so 260 g of water are left. In 900 g of custard 600 are water, 200 sugar, 100 egg.
    expect(run("BAKE_LABELLIST", BUN, WEIGHTS, SHOP, "UK", 1170, FORMULAS)).toBe(
      "fortified WHEAT flour (WHEAT flour, calcium carbonate, iron, niacin, thiamin), filling (custard (water, sugar, EGG), almond paste (ALMONDS, sugar)), water, salt",
    );
  });
  test("a custard boiled down lists its water behind its sugar: 700 g less 600 of 1000", () => {
    const boiled = FORMULAS.map((row) => (row[3] === "10%" ? [...row.slice(0, 3), 0.6] : row));
    expect(run("BAKE_LABELLIST", down("custard"), down(100), SHOP, "EU", 100, boiled)).toBe(
      "custard (sugar, water, EGG)",
    );
    // 21 CFR 101.4(a): in the US by what goes in.
    expect(run("BAKE_LABELLIST", down("custard"), down(100), SHOP, "US", 100, boiled)).toBe(
      "custard (water, sugar, egg). Contains: eggs.",
    );
  });
  test("US: one line names every major allergen through all compounds, nuts and fish by species, and promises nothing where there is none", () => {
    const shop = larder(
      ["flour", "wheat", "enriched flour"],
      ["pesto", "milk; pine nuts"],
      ["rouille", "fish (anchovies); crustaceans (lobster); soy"],
      ["apricots", "sulphites"],
      ["sugar", "none"],
    );
    const formulas = [
      ["topping", "pesto", 10],
      ["topping", "inner", 20],
      ["inner", "rouille", 1],
      ["inner", "apricots", 1],
    ];
    expect(run("BAKE_LABELLIST", down("flour", "topping"), down(90, 10), shop, "US", undefined, formulas)).toBe(
      "enriched flour (enrichment not known), topping (inner (rouille, apricots (sulfites)), pesto). Contains: milk, anchovies, lobster, pine nuts, wheat, soybeans.",
    );
    expect(run("BAKE_LABELLIST", down("sugar"), down(90), shop, "US")).toBe("sugar");
  });
  test.each([
    ["Strong white flour", "wheat", "wheat flour", "", "UK", "WHEAT flour (statutory additions not known)"],
    ["Strong white flour", "wheat", "wheat flour", "", "US", "wheat flour (enrichment not known)"],
    ["Strong white flour", "wheat", "wheat flour", "", "EU", "WHEAT flour"],
    ["Wholemeal flour", "wheat", "", "", "UK", "Wholemeal flour (WHEAT)"],
    ["whole wheat flour", "wheat", "", "", "US", "whole wheat flour"],
    ["rye flour", "rye", "", "", "UK", "RYE flour"],
    [
      "plain flour",
      "wheat",
      "wheat flour with calcium, iron, niacin, thiamin",
      "",
      "UK",
      "WHEAT flour with calcium, iron, niacin, thiamin",
    ],
    [
      "plain flour",
      "wheat",
      "",
      "wheat flour, calcium carbonate",
      "UK",
      "plain flour (WHEAT flour, calcium carbonate)",
    ],
  ])(
    "%s (%s, %s, %s) in the %s: %s (Bread and Flour Regulations 1998; 21 CFR 137, from memory)",
    (name, allergens, label, madeOf, law, listed) =>
      expect(
        String(run("BAKE_LABELLIST", down(name), down(10), larder([name, allergens, label, madeOf]), law)).split(
          ". ",
        )[0],
      ).toBe(listed),
  );
});

describe("allergens", () => {
  const of = (names: string[], law = "EU", shop = SHOP) =>
    run("BAKE_ALLERGENS", down(...names), shop, law, undefined, FORMULAS);
  test("those of every part count, to any depth", () => {
    expect(of(["filling"])).toBe("eggs, milk, nuts (almonds)".replace("milk, ", ""));
    expect(of(["flour", "filling", "butter"], "US")).toBe("milk, eggs, tree nuts (almonds), wheat");
  });
  test("a part that nobody knows them of is named with what holds it", () => {
    const shop = SHOP.map((row) => (row[0] === "egg" ? ["egg", "", "", ""] : row));
    expect(refusal("BAKE_ALLERGENS", down("flour", "filling"), shop, "EU", undefined, FORMULAS)).toBe(
      'BAKE_ALLERGENS: ingredients row 2 is "filling", which holds "egg", whose allergens are not known; fill "allergens" in its larder row, "none" where checked.',
    );
    const paste = larder(["paste", "", "", "almonds 50%, sugar 50%"], ["almonds", "almonds"]);
    expect(refusal("BAKE_ALLERGENS", down("paste"), paste, "EU")).toContain('"paste", which holds "sugar", whose');
  });
  test("a bought compound's own word counts beside what its parts say", () => {
    const shop = larder(["chips", "soy", "", "almonds 10%, sugar 90%"], ["almonds", "almonds"]);
    expect(of(["chips"], "EU", shop)).toBe("soybeans, nuts (almonds)");
  });
});

describe("what came and went since the last version, by whole declared names", () => {
  test("fish beside shellfish, and pine nuts in the EU and in the US", () => {
    expect(allergenChange("crustaceans (shrimps)", "crustaceans (shrimps), fish (cod)", "EU")).toEqual({
      came: "fish (cod)",
      gone: "",
    });
    expect(allergenChange("crustacean shellfish (shrimps)", "fish (cod)", "US")).toEqual({
      came: "fish (cod)",
      gone: "crustaceans (shrimps)",
    });
    expect(allergenChange("milk", "milk; not on the EU list: pine nuts", "EU")).toEqual({
      came: "pine nuts",
      gone: "",
    });
    expect(allergenChange("tree nuts (almonds, pine nuts)", "tree nuts (almonds)", "US")).toEqual({
      came: "",
      gone: "pine nuts",
    });
  });
  test("every allergen of every law comes, goes and stays, alone and among others", () => {
    for (const law of ["EU", "UK", "US"] as const) {
      const every = [...new Set(allergenList().known.values())];
      const typed = every.map((one) =>
        one.species === one.group && law === "US" && one.group === "fish"
          ? "fish (hake)"
          : one.species === "crustaceans" && law === "US"
            ? "crustaceans (krill)"
            : one.species,
      );
      expect(every.filter((one) => groupIn(one, law) !== undefined).length).toBeGreaterThan(15);
      const answer = (some: readonly string[]) =>
        String(
          run(
            "BAKE_ALLERGENS",
            down(...some.map((_, at) => `i${at}`)),
            larder(...some.map((one, at) => [`i${at}`, one])),
            law,
          ),
        );
      const without = (at: number) => typed.filter((_, other) => other !== at);
      typed.forEach((one, at) => {
        // A group's own name is silent beside its species.
        if (["fish", "crustaceans", "molluscs"].includes(one)) return;
        const [all, others] = [answer(typed), answer(without(at))];
        const name = changedName(one);
        expect(allergenChange(others, all, law), `${law} ${one}`).toEqual({ came: name, gone: "" });
        expect(allergenChange(all, others, law)).toEqual({ came: "", gone: name });
        expect(allergenChange(answer([one]), answer([one]), law)).toEqual({ came: "", gone: "" });
      });
    }
  });
  test("a group that is declared by its own name alone comes and goes; a species beside it is told apart", () => {
    for (const law of ["EU", "UK"] as const)
      for (const group of ["fish", "crustaceans", "molluscs"]) {
        expect(allergenChange("milk", `milk, ${group}`, law)).toEqual({ came: group, gone: "" });
        expect(allergenChange(`milk, ${group}`, "milk", law)).toEqual({ came: "", gone: group });
        expect(allergenChange("fish, crustaceans, molluscs", "fish, crustaceans, molluscs", law)).toEqual({
          came: "",
          gone: "",
        });
        const hake = `${group} (hake)`;
        expect(allergenChange(`milk, ${group}`, `milk, ${hake}`, law)).toEqual({ came: hake, gone: group });
      }
  });
  test("random lists: what came and what went are their differences", () => {
    const species = [
      "wheat",
      "rye",
      "eggs",
      "fish (cod)",
      "crustaceans (crab)",
      "milk",
      "almonds",
      "pine nuts",
      "sesame",
      "molluscs (squid)",
      "lupin",
    ];
    const some = fc.subarray(species, { minLength: 1 });
    fc.assert(
      fc.property(some, some, (before, after) => {
        const of = (names: string[]) =>
          String(run("BAKE_ALLERGENS", down(...names), larder(...names.map((one) => [one, one])), "UK"));
        const { came, gone } = allergenChange(of(before), of(after), "UK");
        const names = (text: string) => (text === "" ? [] : text.split(", ")).sort();
        expect(names(came)).toEqual(after.filter((one) => !before.includes(one)).sort());
        expect(names(gone)).toEqual(before.filter((one) => !after.includes(one)).sort());
      }),
    );
  });
  test("the call gives both beside the allergens; a last version that cannot be read is said, and the allergens stand", () => {
    const call = (last?: string) => run("BAKE_ALLERGENS", down("flour", "egg"), SHOP, "UK", last);
    const now = "cereals containing gluten (wheat), eggs";
    expect(call()).toBe(now);
    expect(call("cereals containing gluten (wheat), milk")).toEqual([[now, "eggs", "milk"]]);
    expect(call(now)).toEqual([[now, "", ""]]);
    expect(call("no declarable allergens in the ingredients as entered; cross-contact is not assessed")).toEqual([
      [now, "wheat, eggs", ""],
    ]);
    expect((call("may contain nuts") as string[][])[0]?.[1]).toMatch(
      /^not compared: the last version holds "may contain nuts"/,
    );
  });
});

const changedName = (one: string): string => {
  const [, group, species] = /^(fish|crustaceans) \((.+)\)$/.exec(one) ?? [];
  if (group !== undefined) return `${group} (${species})`;
  const open = [...allergenList().known.values()].find(({ species }) => species === one)?.group ?? "";
  return ["fish", "crustaceans", "molluscs"].includes(open) ? `${open} (${one})` : one;
};

describe("quantities", () => {
  const share = (asked: string, names: unknown, weights: unknown, finished: number, formulas: unknown[][] = FORMULAS) =>
    (run("BAKE_LABELSHARE", asked, names, weights, finished, SHOP, formulas) as [[number, string]])[0][0];
  test("through two formulas and a paste: almonds are 50 % of 40 % of the filling", () => {
    expectCells(share("almonds", BUN, WEIGHTS, 1170), (0.5 * 0.4 * 300) / 1170);
    // Sugar: half of the paste, and 200 g in 900 g of custard.
    expectCells(share("sugar", BUN, WEIGHTS, 1170), (300 * (0.4 * 0.5 + (0.6 * 200) / 900)) / 1170);
  });
  test("1 000 g of custard with 200 g of sugar, 10 % boiled off: 22.2 % sugar, whatever is left in the pan", () => {
    const custard = [
      ["custard", "milk", 800, 0.1],
      ["", "sugar", 200, ""],
    ];
    for (const made of [855, 900]) expectCells(share("sugar", down("custard"), down(made), made, custard), 200 / 900);
  });
  test("400 g of almonds in 1 000 g cooked to 850 g: 30 g of filling carry 14.1 g", () => {
    const filling = [
      ["filling", "almonds", 400, "15%"],
      ["", "syrup", 600, ""],
    ];
    expectCells(30 * share("almonds", down("filling"), down(30), 30, filling), 14.1, 0.05);
  });
  test("a levain that is fed with itself has the flour of its feed", () => {
    const levain = [
      ["levain", "levain", 50],
      ["", "flour", 100],
      ["", "water", 100],
    ];
    expectCells(share("flour", down("levain", "flour"), down(200, 100), 300, levain), 200 / 300);
  });
  test("a sheet tells all of it in one cell, the sheets inside below each other, each once", () => {
    const whole =
      "Filling\t\t\t15000000\n\tAlmond paste\t50000000\n\tsyrup\t50000000\nAlmond paste\t\t\t0\n\talmonds\t80000000\n\tsugar\t20000000";
    const other = "Glaze\t\t\t0\n\tAlmond paste\t100000000\n\nAlmond paste\t\t\t0\n\talmonds\t10000000";
    const texts = [[""], [whole], [other], [""]];
    expectCells(share("almonds", down("filling", "glaze"), down(170, 100), 270, texts), (100 * 0.8 + 80) / 270);
  });
  test("a circle is named with its path", () => {
    const circle = [
      ["a", "b", 1],
      ["b", "c", 1],
      ["c", "a", 1],
    ];
    const says = 'formulas run in a loop: "a" → "b" → "c" → "a"; break it at one of them.';
    expect(refusal("BAKE_LABELSHARE", "x", down("a"), down(1), 1, SHOP, circle)).toBe(`BAKE_LABELSHARE: ${says}`);
    expect(refusal("BAKE_ALLERGENS", down("a"), SHOP, "EU", undefined, circle)).toBe(`BAKE_ALLERGENS: ${says}`);
    expect(
      refusal("BAKE_NUTRITION", down("a"), down(1), 1, "EU", undefined, SHOP, undefined, "g", "exact", circle),
    ).toBe(`BAKE_NUTRITION: ${says}`);
  });
  test("forty formulas that each hold the next twice are answered at once", () => {
    const chain = Array.from({ length: 40 }, (_, at) => [`f${at}`, at === 39 ? "almonds" : `f${at + 1}`, 1]);
    expectCells(share("almonds", down("f0"), down(7), 7, [...chain, ...chain]), 1);
    expect(run("BAKE_ALLERGENS", down("f0"), SHOP, "EU", undefined, [...chain, ...chain])).toBe("nuts (almonds)");
  });
  test.each<[unknown[][], string]>([
    [[["", "sugar", 1]], "formulas row 1 has no product in its row or above it."],
    [
      [["a", "", 1]],
      'formulas row 1 has a weight and no ingredient; enter its name; formulas make "a" of nothing; enter its weights.',
    ],
    [[["a", "sugar", 0]], 'formulas make "a" of nothing; enter its weights.'],
    [[["a", "sugar", 1, 1]], "formulas row 1 is 1; it cannot be above 90 %."],
  ])("refuses %j", (formulas, says) => {
    expect(refusal("BAKE_LABELSHARE", "sugar", down("a"), down(1), 1, SHOP, formulas)).toBe(`BAKE_LABELSHARE: ${says}`);
  });
});
