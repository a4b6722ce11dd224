// Formulas inside formulas, four levels deep, with both losses: needs, cost, quantities and allergens against sums of fractions
// along every single path, in whole numbers without rounding and without anything of the project.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { boughtFor, readMakings } from "../../shared/money/breakdown.ts";
import { down, expectCells, refusal, run } from "../functions/support.ts";

const text = (name: string, parts: readonly (readonly [string, number])[], boil = 0, left = 0) =>
  [`${name}\t\t\t${boil * 1e6}\t${left * 1e6}`, ...parts.map(([part, weight]) => `\t${part}\t${weight}`)].join("\n");

/** All cells of an answer, one after the other. */
const cellsOf = (answer: unknown): unknown[] => [answer].flat(3);

describe("by hand", () => {
  test("1 000 g of custard, 10 % boiled off and 5 % left in the pan, are 855 g: sugar is bought over both", () => {
    const custard = readMakings([
      text(
        "Custard",
        [
          ["Milk", 800],
          ["Sugar", 200],
        ],
        10,
        5,
      ),
    ]);
    const bought = boughtFor(custard)("custard");
    expect(bought.get("sugar")?.grams).toBeCloseTo(200 / 855, 12);
    expect(bought.get("milk")?.grams).toBeCloseTo(800 / 855, 12);
  });
  test("the quantity to declare knows the boil-off alone: 22.2 % sugar; 30 g of 850 g with 400 g almonds carry 14.1 g", () => {
    const table = [
      ["Custard", "Milk", 800, "10%"],
      ["", "Sugar", 200, ""],
      ["Filling", "Almonds", 400, "15%"],
      ["", "Syrup", 600, ""],
    ];
    const shops = down("ingredient", "Milk", "Sugar", "Almonds", "Syrup");
    const share = (what: string, of: string, grams: number) =>
      Number(cellsOf(run("BAKE_LABELSHARE", what, down(of), down(grams), "", shops, table))[0]);
    expect(share("Sugar", "Custard", 855)).toBeCloseTo(200 / 900, 12);
    expect(30 * share("Almonds", "Filling", 30)).toBeCloseTo(14.1176, 4);
  });
  test("a starter that is fed with itself is made of what it is fed with", () => {
    const levain = readMakings([
      text("Levain", [
        ["Levain", 100],
        ["Flour", 300],
        ["Water", 100],
      ]),
    ]);
    expect([...boughtFor(levain)("Levain").values()]).toEqual([
      { name: "Flour", grams: 0.75 },
      { name: "Water", grams: 0.25 },
    ]);
  });
  test("a circle is named with its path", () => {
    const circle = down(text("A", [["B", 1]]), text("B", [["A", 1]]));
    expect(refusal("BAKE_COSTCHANGE", circle, [["ingredient"], ["C"]], "C", 2)).toMatch(
      /parts run in a loop: "A" → "B" → "A"; break it at one of them/,
    );
  });
  test("yeast at twice its price: 6.435 more on rolls of 13.3244 (a class worksheet, docstoc 52086225)", () => {
    const rolls: [string, number, number, string][] = [
      ["flour", 112, 2.89, "5 lb"],
      ["sugar", 16, 1.99, "5 lb"],
      ["shortening", 20, 2.89, "3 lb"],
      ["dry milk", 8, 1.89, "1 lb"],
      ["salt", 2, 0.59, "1 lb"],
      ["yeast", 6, 4.29, "4 oz"],
    ];
    const parts = text(
      "Rolls",
      rolls.map(([name, ounces]) => [name, ounces]),
    );
    const larder = [["ingredient", "price", "pack"], ...rolls.map(([name, , price, pack]) => [name, price, pack])];
    // The worksheet's eggs, 0.2225 of its 13.3244, are left out here.
    const all = 13.3244 - 0.2225;
    expectCells(run("BAKE_COSTCHANGE", down(parts), larder, "yeast", 2), (all + 6.435) / all, 1e-5);
  });
});

type Made = { parts: { of: string; weight: number }[]; boil: number; left: number };
type Tree = ReadonlyMap<string, Made>;
const LEAVES = [
  ["strong flour", 80n, "wheat", "wheat"],
  ["milk", 95n, "milk", "milk"],
  ["whole egg", 360n, "eggs", "eggs"],
  ["almonds", 1234n, "almonds", "almonds"],
  ["soy flour", 310n, "soybeans", "soybeans"],
  ["tahini", 777n, "sesame", "sesame"],
  ["sugar", 96n, "none", ""],
  ["salt", 51n, "none", ""],
] as const;
const LEVELS = 4;
const ON_A_LEVEL = 3;
const ROOT = `${LEVELS} 0`;

/** Every formula is made of leaves and of formulas of lower levels. */
const trees: fc.Arbitrary<Tree> = fc
  .tuple(
    ...Array.from({ length: LEVELS * ON_A_LEVEL }, (_, at) => {
      const level = Math.floor(at / ON_A_LEVEL) + 1;
      const below = Array.from({ length: (level - 1) * ON_A_LEVEL }, (__, one) => nameOf(one));
      const of = fc.constantFrom(...LEAVES.map(([name]) => name), ...below, ...below);
      return fc.record({
        parts: fc.array(fc.record({ of, weight: fc.integer({ min: 1, max: 900 }) }), { minLength: 1, maxLength: 4 }),
        boil: fc.integer({ min: 0, max: 60 }),
        left: fc.integer({ min: 0, max: 30 }),
      });
    }),
  )
  .map((all) => new Map(all.map((made, at) => [nameOf(at), made])));
function nameOf(at: number): string {
  return `${Math.floor(at / ON_A_LEVEL) + 1} ${at % ON_A_LEVEL}`;
}

type Fraction = readonly [bigint, bigint];
const plus = ([a, b]: Fraction, [c, d]: Fraction): Fraction => [a * d + c * b, b * d];
const times = ([a, b]: Fraction, [c, d]: Fraction): Fraction => [a * c, b * d];
const asNumber = ([a, b]: Fraction): number => Number((a * 10n ** 18n) / b) / 1e18;

/** Along every path from a formula to an ingredient: its part of the whole at each step, over what is left there. */
function exact(tree: Tree, name: string, leaf: string, isBought: boolean): Fraction {
  const made = tree.get(name);
  if (made === undefined) return name === leaf ? [1n, 1n] : [0n, 1n];
  const all = made.parts.reduce((sum, { weight }) => sum + BigInt(weight), 0n);
  const kept: Fraction = [10_000n, BigInt((100 - made.boil) * (isBought ? 100 - made.left : 100))];
  return made.parts
    .map(({ of, weight }): Fraction => times(times([BigInt(weight), all], kept), exact(tree, of, leaf, isBought)))
    .reduce(plus, [0n, 1n]);
}

test("1 000 random trees of products", () => {
  const larder = [
    ["ingredient", "price", "pack", "allergens"],
    ...LEAVES.map(([name, price, allergens]) => [name, Number(price) / 100, "1 kg", allergens]),
  ];
  fc.assert(
    fc.property(trees, fc.constantFrom(...LEAVES.map(([name]) => name)), (tree, dear) => {
      const texts = [...tree].map(([name, { parts, boil, left }]) =>
        text(
          name,
          parts.map(({ of, weight }) => [of, weight]),
          boil,
          left,
        ),
      );
      const cells = texts;
      const own = [...tree.keys()].indexOf(ROOT);
      const bought = boughtFor(readMakings(cells))(ROOT);
      const needs = LEAVES.map(([name]) => exact(tree, ROOT, name, true));
      LEAVES.forEach(([name], at) => {
        const need = asNumber(needs[at] ?? [0n, 1n]);
        const grams = [...bought.values()].find((one) => one.name === name)?.grams ?? 0;
        expect(Math.abs(grams - need)).toBeLessThanOrEqual(1e-9 * Math.max(1, need));
      });
      // Cost, and what twice the price of one ingredient does to it.
      const costOf = (factor: bigint) =>
        LEAVES.map(([name, price], at) =>
          times(needs[at] ?? [0n, 1n], [price * (name === dear ? factor : 1n), 1n]),
        ).reduce(plus, [0n, 1n]);
      const [now, then] = [costOf(1n), costOf(2n)];
      const changes = cellsOf(run("BAKE_COSTCHANGE", down(...cells), larder, dear, 2));
      expectCells(changes[own], asNumber(times(then, [now[1], now[0]])), 1e-9);
      // What a label says of it.
      const table = [...tree].flatMap(([name, { parts, boil }]) =>
        parts.map(({ of, weight }, at) => (at === 0 ? [name, of, weight, boil / 100] : ["", of, weight, ""])),
      );
      const declared = String(cellsOf(run("BAKE_ALLERGENS", down(ROOT), larder, "EU", "", table))[0]);
      LEAVES.forEach(([name, , , word]) => {
        const [inside] = exact(tree, ROOT, name, false);
        if (word !== "") expect(declared.includes(word), `${word} in ${declared}`).toBe(inside > 0n);
      });
      const share = exact(tree, ROOT, dear, false);
      if (share[0] === 0n) return;
      const [quantity] = cellsOf(run("BAKE_LABELSHARE", dear, down(ROOT), down(1000), "", larder, table));
      expectCells(quantity, asNumber(share), 1e-9);
    }),
    { numRuns: 1000 },
  );
});
