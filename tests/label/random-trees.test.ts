// Products of formulas inside formulas, four levels deep, against an expansion in exact fractions that shares no code with the labels.
import fc from "fast-check";
import { expect, test } from "vitest";
import { down, expectCells, run } from "../functions/support.ts";
import { tries } from "../kit/scale.ts";

const LEAVES = [
  { name: "oak flour", allergens: ["wheat"], fat: 1 },
  { name: "curd", allergens: ["milk"], fat: 12 },
  { name: "paste", allergens: ["almonds", "pine nuts"], fat: 50 },
  { name: "roe", allergens: ["cod"], fat: 7 },
  { name: "bisque", allergens: ["shrimps"], fat: 3 },
  { name: "syrup", allergens: [], fat: 0 },
] as const;
const TYPED: Readonly<Record<string, string>> = { cod: "fish (cod)" };
const LARDER = [
  [
    "ingredient",
    "allergens",
    "fat",
    "saturates",
    "carbohydrate",
    "sugar",
    "fibre",
    "protein",
    "protein factor",
    "salt",
  ],
  ...LEAVES.map(({ name, allergens, fat }) => [
    name,
    allergens.map((one) => TYPED[one] ?? one).join("; ") || "none",
    fat / 100,
    ...[0, 0.1, 0.05, 0.01, 0.08, 5.7, 0.02],
  ]),
];

/** An exact fraction. */
type Exact = readonly [bigint, bigint];
const plus = ([a, b]: Exact, [c, d]: Exact): Exact => [a * d + c * b, b * d];
const times = ([a, b]: Exact, [c, d]: Exact): Exact => [a * c, b * d];
const over = (one: Exact, [c, d]: Exact): Exact => times(one, [d, c]);
const asNumber = ([a, b]: Exact): number => Number((a * 10n ** 18n) / b) / 1e18;

type Part = { readonly of: number; readonly grams: number };
/** Percent that boils off, and that is left in the pan: only the first changes what a gram holds. */
type Formula = { readonly parts: readonly Part[]; readonly boiled: number; readonly left: number };

const LEVELS = 4;
const EACH = 2;
const formulaAt = (level: number): fc.Arbitrary<Formula> =>
  fc.record({
    parts: fc.array(
      fc.record({ of: fc.nat({ max: LEAVES.length + EACH * level - 1 }), grams: fc.integer({ min: 1, max: 5000 }) }),
      { minLength: 1, maxLength: 4 },
    ),
    boiled: fc.constantFrom(0, 0, 5, 10, 25),
    left: fc.constantFrom(0, 3, 10),
  });
const tree = fc.tuple(...Array.from({ length: LEVELS * EACH }, (_, at) => formulaAt(Math.floor(at / EACH))));
const product = fc.record({
  tree,
  parts: fc.array(
    fc.record({ of: fc.nat({ max: LEAVES.length + LEVELS * EACH - 1 }), grams: fc.integer({ min: 1, max: 900 }) }),
    {
      minLength: 1,
      maxLength: 4,
    },
  ),
  baked: fc.integer({ min: 80, max: 100 }),
});

const nameOf = (of: number): string => LEAVES[of]?.name ?? `filling ${of}`;

/** Grams of every leaf in a gram of one of them, written without the code under test. */
function leavesIn(of: number, formulas: readonly Formula[]): Exact[] {
  if (of < LEAVES.length) return LEAVES.map((_, at): Exact => [at === of ? 1n : 0n, 1n]);
  const { parts, boiled } = formulas[of - LEAVES.length] as Formula;
  const raw = parts.reduce((sum, { grams }) => sum + BigInt(grams), 0n);
  const finished: Exact = [raw * BigInt(100 - boiled), 100n];
  return LEAVES.map((_, leaf) =>
    parts.reduce<Exact>(
      (sum, part) => {
        const inside = leavesIn(part.of, formulas)[leaf] as Exact;
        return plus(sum, over(times(inside, [BigInt(part.grams), 1n]), finished));
      },
      [0n, 1n],
    ),
  );
}

test("quantities, allergens and nutrition of random products, four levels deep", () => {
  fc.assert(
    fc.property(product, ({ tree: formulas, parts, baked }) => {
      const table = formulas.flatMap((formula, at) =>
        formula.parts.map((part, row) => [
          row === 0 ? nameOf(at + LEAVES.length) : "",
          nameOf(part.of),
          part.grams,
          row === 0 ? formula.boiled / 100 : "",
        ]),
      );
      const names = down(...parts.map(({ of }) => nameOf(of)));
      const weights = down(...parts.map(({ grams }) => grams));
      const sum = parts.reduce((all, { grams }) => all + grams, 0);
      const finished = (sum * baked) / 100;
      const held = LEAVES.map((_, leaf) =>
        parts.reduce<Exact>(
          (all, { of, grams }) => plus(all, times(leavesIn(of, formulas)[leaf] as Exact, [BigInt(grams), 1n])),
          [0n, 1n],
        ),
      );
      const exact: Exact = [BigInt(sum * baked), 100n];
      const inIt = LEAVES.flatMap((leaf, at) =>
        (held[at] as Exact)[0] > 0n ? [{ ...leaf, share: asNumber(over(held[at] as Exact, exact)) }] : [],
      );
      for (const { name, share } of inIt) {
        const [row] = run("BAKE_LABELSHARE", name, names, weights, finished, LARDER, table) as [[number, string]];
        expectCells(row[0], share, 1e-9);
      }
      const declared = String(run("BAKE_ALLERGENS", names, LARDER, "US", undefined, table));
      const listed = String(run("BAKE_LABELLIST", names, weights, LARDER, "US", finished, table));
      for (const { name, allergens } of LEAVES) {
        const isIn = inIt.some((one) => one.name === name);
        for (const one of allergens) {
          expect(declared.includes(one), `${one} in ${declared}`).toBe(isIn);
          expect(listed.split("Contains: ")[1]?.includes(one) ?? false).toBe(isIn);
        }
        expect(listed.includes(name)).toBe(isIn);
      }
      const lines = run(
        "BAKE_NUTRITION",
        names,
        weights,
        finished,
        "EU",
        undefined,
        LARDER,
        undefined,
        "g",
        "exact",
        table,
      ) as [string, number][];
      const fat = inIt.reduce((all, { share, fat }) => all + share * fat, 0);
      expectCells(lines[2]?.[1], fat, 1e-7);
    }),
    { numRuns: tries(20) },
  );
});
