import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ALLERGENS } from "../../src/functions/planning/ALLERGENS.ts";
import { LABELLIST } from "../../src/functions/planning/LABELLIST.ts";
import { down, refusal, run } from "../functions/support.ts";

/** A larder of the shop's: name, allergens, label name, made of. */
const larder = (...rows: string[][]) => [
  ["Ingredient", "Allergens", "Label name", "Made of"],
  ...rows.map((row) => [...row, "", "", ""].slice(0, 4)),
];

/** Regulation (EU) 1169/2011, annex II, and the FDA's list of nine, in their order, with the species each names. */
const EU: [string, string[]][] = [
  ["cereals containing gluten", ["wheat", "rye", "barley", "oats"]],
  ["crustaceans", []],
  ["eggs", []],
  ["fish", []],
  ["peanuts", []],
  ["soybeans", []],
  ["milk", []],
  ["nuts", ["almonds", "hazelnuts", "walnuts", "cashews", "pecans", "Brazil nuts", "pistachios", "macadamias"]],
  ["celery", []],
  ["mustard", []],
  ["sesame", []],
  ["sulphites", []],
  ["lupin", []],
  ["molluscs", []],
];
const allOf = (groups: [string, string[]][]) =>
  groups.map(([group, species]) => (species.length > 0 ? `${group} (${species.join(", ")})` : group)).join(", ");
const SINGLE = EU.flatMap(([group, species]) => (species.length > 0 ? species : [group]));

const NONE = "no declarable allergens in the ingredients as entered; cross-contact is not assessed";

const UNLISTED_IN_US =
  "rye, barley, oats, celery, mustard, sulphites (US labels declare them from 10 mg/kg), lupin, molluscs";

test("before anything is entered there is no promise either", () =>
  expect(run("BAKE_ALLERGENS", down("", " "), larder(["flour", "wheat"]), "EU")).toBe(""));

// Regulation (EU) 1169/2011, annex II, 12: more than 10 mg/kg; 21 CFR 101.100(a)(4), from memory: 10 parts per million or more.
test.each([
  ["EU", ["none", "none", "sulphites"]],
  ["UK", ["none", "none", "sulphites"]],
  ["US", ["none", "from 10 mg", "from 10 mg"]],
])("%s: sulphites below, at and above 10 mg/kg", (law, wanted) =>
  ["9.99", "10", "10.01"].forEach((amount, at) => {
    const said = String(run("BAKE_ALLERGENS", down("raisins"), larder(["raisins", `sulphites ${amount} mg/kg`]), law));
    if (wanted[at] === "none") expect(said).toBe(NONE);
    else expect(said).toContain(wanted[at]);
  }),
);

describe("BAKE_ALLERGENS", () => {
  const of = (law: string, ...cells: string[]) =>
    run(
      "BAKE_ALLERGENS",
      down(...cells.map((_, at) => `item ${at}`)),
      larder(...cells.map((cell, at) => [`item ${at}`, cell])),
      law,
    );
  const refused = (law: string, cell: string) => refusal("BAKE_ALLERGENS", down("item"), larder(["item", cell]), law);

  test("EU and UK: all fourteen with their species, in the annex's order (Regulation (EU) 1169/2011, annex II)", () => {
    for (const law of ["EU", "UK"]) expect(of(law, [...SINGLE].reverse().join("; "))).toBe(allOf(EU));
  });
  test("US: the nine in the FDA's order; barley, rye, oats, celery, mustard, lupin, sulphites and molluscs are not among them", () => {
    const cells = SINGLE.map((one) => ({ crustaceans: "shrimps", fish: "cod" })[one] ?? one).reverse();
    expect(of("US", ...cells)).toBe(
      `milk, eggs, fish (cod), crustacean shellfish (shrimps), tree nuts (${EU[7]?.[1].join(", ")}), peanuts, wheat, soybeans, sesame; not on the US list: ${UNLISTED_IN_US}`,
    );
    expect(of("US", "barley; rye; oats; celery; mustard; lupin; sulphites; molluscs")).toBe(
      `${NONE}; not on the US list: ${UNLISTED_IN_US}`,
    );
    expect([of("US", "pine nuts"), of("EU", "pine nuts")]).toEqual([
      "tree nuts (pine nuts)",
      `${NONE}; not on the EU list: pine nuts`,
    ]);
  });
  test("what this law does not list is said (US: coconut, chestnuts and others until FDA guidance of January 2025, from memory)", () => {
    expect(of("US", "coconut; milk", "chestnut", "rye")).toBe(
      "milk; not on the US list: rye; not on the US list since January 2025: coconut, chestnuts",
    );
    for (const law of ["EU", "UK"])
      expect(of(law, "eggs; coconut", "coconut")).toBe(`eggs; not on the ${law} list: coconut`);
    // Nothing that a list holds is ever said to be missing on it.
    for (const one of SINGLE) expect(of("EU", one)).not.toContain("not on");
    // The ingredient list marks what the law lists alone.
    const shop = larder(["cream", "milk; coconut", "coconut cream"], ["nuts", "coconut", "coconut"]);
    expect(run("BAKE_LABELLIST", down("cream", "nuts"), down(2, 1), shop, "US")).not.toContain("COCONUT");
  });
  test.each([
    ["Wheat (such as spelt and khorasan wheat)", "cereals containing gluten (wheat)"],
    [
      "Cereals containing gluten, namely: wheat (such as spelt and khorasan wheat), rye, barley, oats",
      "cereals containing gluten (wheat, rye, barley, oats)",
    ],
    ["durum; einkorn; emmer; kamut; spelt; khorasan wheat", "cereals containing gluten (wheat)"],
    ["triticale", "cereals containing gluten (wheat, rye)"],
    ["Crustaceans and products thereof", "crustaceans"],
    ["Soybeans and products thereof; Eggs and products thereof", "eggs, soybeans"],
    ["Milk and products thereof (including lactose)", "milk"],
    ["Nuts, namely: almonds (Amygdalus communis L.), hazelnuts (Corylus avellana)", "nuts (almonds, hazelnuts)"],
    [
      "pecan nuts (Carya illinoinensis (Wangenh.) K. Koch); macadamia or Queensland nuts (Macadamia ternifolia)",
      "nuts (pecans, macadamias)",
    ],
    [
      "cashews (Anacardium occidentale), Brazil nuts (Bertholletia excelsa), pistachio nuts (Pistacia vera)",
      "nuts (cashews, Brazil nuts, pistachios)",
    ],
    ["Sesame seeds and products thereof", "sesame"],
    [
      "Sulphur dioxide and sulphites at concentrations of more than 10 mg/kg or 10 mg/litre in terms of the total SO2",
      "sulphites",
    ],
    ["Lupin and products thereof; Molluscs and products thereof", "lupin, molluscs"],
  ])("reads the annex's own words: %s (Regulation (EU) 1169/2011, annex II)", (cell, told) => {
    expect(of("EU", cell)).toBe(told);
  });
  test("triticale is wheat in the US, and rye on no list there", () => {
    expect(of("US", "triticale")).toBe("wheat; not on the US list: rye");
  });
  test("the order of rows, and of words in a cell, does not matter", () => {
    const words = [...SINGLE, "fish (turbot)", "fish (brill)", "squid", "none of this kind"].slice(0, -1);
    fc.assert(
      fc.property(fc.shuffledSubarray(words, { minLength: 1 }), fc.constantFrom("EU", "UK", "US"), (some, law) => {
        const species = law === "US" ? some.filter((one) => one !== "fish" && one !== "crustaceans") : some;
        if (species.length === 0) return;
        const straight = of(law, species.join("; "));
        expect(of(law, ...[...species].reverse())).toBe(straight);
        expect(of(law, ...[...species].sort(), ...species)).toBe(straight);
      }),
    );
  });
  test("what it answers can be written in a larder", () => {
    expect(of("EU", of("EU", SINGLE.join("; ")) as string)).toBe(allOf(EU));
  });
  test("spelt and khorasan are wheat, lactose is milk, other spellings are read", () => {
    expect(of("EU", "Spelt; khorasan", "WHEAT")).toBe("cereals containing gluten (wheat)");
    expect(of("US", "spelt", "soya, lactose", "Groundnuts; filberts")).toBe(
      "milk, tree nuts (hazelnuts), peanuts, wheat, soybeans",
    );
    expect(of("UK", "fish (Turbot); nuts: almonds, pecan nuts")).toBe("fish (turbot), nuts (almonds, pecans)");
    expect(of("EU", "sesame seeds", "molluscs (whelk)")).toBe("sesame, molluscs (whelk)");
    expect(of("US", "crustaceans (krill)")).toBe("crustacean shellfish (krill)");
    expect(of("UK", "wheat (rye)")).toBe("cereals containing gluten (wheat, rye)");
    expect(of("UK", "fish (turbot, brill)", "cod")).toBe("fish (cod, brill, turbot)");
  });
  test.each([
    ["sulphites 10.0 mg/kg", NONE],
    ["sulphites 10.1 mg/kg", "sulphites"],
    ["sulphites 2000 mg/kg", "sulphites"],
    ["sulphite 2000ppm", "sulphites"],
    ["sulfur dioxide: 9.9 ppm; milk", "milk"],
    ["sulphites 10,5 mg/kg", "sulphites"],
    ["Sulfites (12 ppm)", "sulphites"],
    ["SO2 9 mg/l; milk", "milk"],
    ["sulphites", "sulphites"],
  ])("%s: more than 10 mg/kg is declared, %s (Regulation (EU) 1169/2011, annex II, 12)", (cell, told) => {
    expect(of("EU", cell)).toBe(told);
  });
  test("none was checked, plain water needs no row, and a built-in figure is no specification", () => {
    expect(of("EU", "none", "None")).toBe(NONE);
    expect(run("BAKE_ALLERGENS", down("water", "", "ice"), larder(["flour", "wheat"]), "EU")).toBe(NONE);
    expect(run("BAKE_ALLERGENS", down("water", "flour"), larder(["flour", "wheat"], ["water", ""]), "US")).toBe(
      "wheat",
    );
    expect(
      refusal("BAKE_ALLERGENS", down("flour", "milk", "x"), larder(["flour", "wheat"], ["butter", ""]), "EU"),
    ).toMatch(/^BAKE_ALLERGENS: ingredients row 3 is "x", which the larder does not know/);
    expect(
      refusal("BAKE_ALLERGENS", down("flour", "milk", "butter"), larder(["flour", "wheat"], ["butter", ""]), "EU"),
    ).toBe(
      'BAKE_ALLERGENS: ingredients row 2 is "whole milk", whose allergens are not known; give it a larder row with them, "none" where checked; ' +
        'ingredients row 3 is "butter", whose allergens are not known; fill "allergens" in its larder row, "none" where checked.',
    );
  });
  test.each([
    ["gluten", 'holds "gluten"; name the cereal: "wheat", "rye", "barley" or "oats".'],
    ["cereals containing gluten", 'name the cereal: "wheat", "rye", "barley" or "oats".'],
    [
      "milk; nuts",
      'holds "nuts"; name the nut: "almonds", "hazelnuts", "walnuts", "cashews", "pecans", "Brazil nuts", "pistachios" or "macadamias".',
    ],
    ["Tree nuts", 'holds "Tree nuts"; name the nut: "almonds"'],
    ["tree nuts (conkers)", 'holds "conkers"; enter species or groups such as "wheat"'],
    ["shellfish", 'holds "shellfish"; name the crustacean or mollusc.'],
    ["contains milk", 'holds "contains milk"; enter species'],
    ["none; milk", 'holds "none"; enter species'],
    // Dried apricots may hold 2000 mg/kg (Regulation (EC) 1333/2008, from memory); 2 mg/kg would not be declared.
    ["sulphites 2,000 mg/kg", 'holds "sulphites 2,000 mg/kg", whose amount could be 2000 or 2; enter the one you mean'],
    ["sulphites 2.000 mg/kg", 'holds "sulphites 2.000 mg/kg", whose amount could be 2000 or 2; enter the one you mean'],
    ["sulphites 1,2,3 mg/kg", 'holds "sulphites 1,2,3 mg/kg", whose amount is not a number'],
    ["-", 'holds "-"; enter species'],
    ["fish (milk)", 'holds "milk"; enter species'],
    ["fish (,)", 'holds ""; enter species'],
    ["butter (milk)", 'holds "butter (milk)"; enter species'],
  ])("refuses %s", (cell, says) => {
    for (const law of ["EU", "UK", "US"]) expect(refused(law, cell)).toContain(says);
    expect(refused("EU", cell)).toMatch(/^BAKE_ALLERGENS: larder row 2 column "allergens" holds /);
  });
  test("US labels name the species of fish and shellfish", () => {
    expect(refused("US", "fish")).toBe(
      'BAKE_ALLERGENS: larder row 2 column "allergens" holds "fish"; US labels name the species, such as "fish (cod)".',
    );
    expect(refused("US", "crustaceans")).toContain('such as "shrimps".');
    expect(of("EU", "fish; crustaceans")).toBe("crustaceans, fish");
  });
  test("wrong labels are the main cause of bakery recalls (Gendel & Zhu 2013): both functions ask for a check", () => {
    for (const { summary } of [ALLERGENS, LABELLIST])
      expect(summary).toContain("heck against your supplier's specification and local law");
  });
});
