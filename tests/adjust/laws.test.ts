// Formulas and changes at random: nothing moves that was not said, flours stay 100 %, and there and back is where it began.
import { describe, expect, test } from "vitest";
import type { Changed, Part } from "../../shared/adjust/change.ts";
import { applyWish, CHANGES, type Wish } from "../../shared/adjust/changes.ts";
import { compareFormulas, rowsChanged } from "../../shared/adjust/comparison.ts";
import {
  allFlour,
  allRows,
  amountOf,
  baseOf,
  eachOf,
  type Formula,
  prefermented,
  ROLL_IN,
  ROLLED_OF,
  shownName,
  weightsOf,
} from "../../shared/adjust/formula.ts";
import { doughOf, NO_MONEY } from "../../shared/adjust/money.ts";
import { partOf } from "../../shared/adjust/parts.ts";
import { offersFor } from "../../shared/adjust/swap.ts";
import { SWAPS } from "../../shared/adjust/swaps.ts";
import { effectiveHydration } from "../../shared/adjust/water.ts";
import { Refusal } from "../../shared/base/refusal.ts";
import type { SwapGoal } from "../../shared/enrichment/enrichment.ts";
import { builtInNamed } from "../../shared/larder/built-in-larder.ts";
import { NO_LARDER } from "../../shared/larder/larder.ts";
import { IS_LONG, seedOf, tries } from "../kit/scale.ts";
import { randomFrom } from "../templates/formula-sheet-slips.ts";
import { formulaOf, type Line } from "./support.ts";

/** 2 000 in a long run. */
const MANY = tries(40);
/** Each formula is asked for so many changes, one after another. */
const IN_A_ROW = 3;

type Chance = { readonly below: (limit: number) => number; readonly one: <T>(some: readonly T[]) => T };

function chanceOf(seed: number): Chance {
  const below = randomFrom(seed);
  return { below, one: (some) => some[Math.floor(below(some.length))] as (typeof some)[number] };
}

const MAY_HOLD: readonly (readonly [name: string, type: string, most: number])[] = [
  ["Salt", "salt", 3],
  ["Fresh yeast", "yeast", 5],
  ["Instant yeast", "yeast", 2],
  ["Whole milk", "dairy", 40],
  ["Skim milk powder", "dairy", 6],
  ["Whole egg", "egg", 30],
  ["Dried whole egg", "egg", 5],
  ["Unsalted butter", "fat", 40],
  ["Sunflower oil", "fat", 10],
  ["Sugar", "sugar", 25],
  ["Honey", "sugar", 10],
  ["Raisins", "fruit", 50],
  ["Ice", "ice", 10],
];

function randomFormula({ below, one }: Chance): Formula {
  const starter: Line[] =
    below(1) < 0.3 ? [["Levain", one(["levain 100%", "levain 60%", "poolish 100%"]), 5 + below(50)]] : [];
  const flours: Line[] = [["White flour", "flour", 60 + below(40)]];
  if (below(1) < 0.6) flours.push(["Wholemeal", "flour", 1 + below(39)]);
  const rest = MAY_HOLD.flatMap(([name, type, most]): Line[] => (below(1) < 0.4 ? [[name, type, below(most)]] : []));
  const water: Line[] = below(1) < 0.9 ? [["Water", "water", 20 + below(60)]] : [];
  const hasBlock = starter.length === 0 && below(1) < 0.3;
  const isRound = below(1) < 0.2;
  return formulaOf([...flours, ...water, ...starter, ...rest], {
    rollIn:
      below(1) < 0.3
        ? { name: one(["Unsalted butter", "Sheet butter", "Margarine"]), share: 0.1 + below(0.3), of: one(ROLLED_OF) }
        : null,
    perArea: isRound ? 0.2 + below(0.5) : null,
    frame: starter.length > 0 && below(1) < 0.5 ? "all flour" : "added flour",
    block: hasBlock ? one(["preferment", "levain"] as const) : null,
    batch: { of: one(["dough", "flour"] as const), amount: 1000 + below(50_000) },
    by: one(["pieces", "dough", "flour", "tins"]),
    style: one(["hearth", "bun", "pound cake"] as const),
    sizes: [
      isRound
        ? { name: "round", pieces: 10, baked: null, loss: 0, price: 3, diameter: 15 + below(30) }
        : { name: "loaf", pieces: 10, baked: 100 + below(900), loss: below(0.2), price: 3 },
    ],
    tin: below(1) < 0.5 ? { shape: "box", sizes: [25, 10, 8], capacity: 2000 } : null,
    steps: [
      { name: "First rise", minutes: 30 + Math.round(below(200)), temp: null, how: "" },
      { name: "Bake", minutes: 30, temp: null, how: "" },
    ],
    temp: 20 + below(8),
  });
}

/** Every field with one of its choices, or with a number of the size it is asked for. */
function randomWish(formula: Formula, { below, one }: Chance): Wish {
  const change = one(CHANGES);
  const values = change.fields(formula).map(({ name, label, choices, start, isText }): [string, string] => {
    if (choices !== undefined) return [name, choices.length === 0 ? "" : one(choices)];
    if (isText === true)
      return [name, name === "sizes" ? `${10 + below(20)}; ${8 + below(20)}; 8` : start || "Rye flour"];
    if (start !== "" && below(1) < 0.5) return [name, start];
    return [name, String(below(/%/.test(label) ? 100 : /°/.test(label) ? 30 : /h|Hours/.test(label) ? 12 : 5000))];
  });
  return { change: change.name, values: Object.fromEntries(values) };
}

/** What was refused is no change; anything but a sentence fails the test. */
function changedBy(formula: Formula, wish: Wish): Changed | null {
  try {
    return applyWish(formula, wish, NO_LARDER);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    expect(error.message, JSON.stringify(wish)).toMatch(/^[A-Z0-9].*[.?]$/s);
    expect(error.message).not.toMatch(/NaN|undefined|Infinity|_/);
    return null;
  }
}

const PARTS: Readonly<Record<Part, (formula: Formula) => unknown>> = {
  "set apart": ({ setApart }) => setApart,
  batch: ({ batch, by }) => [batch, by],
  "roll-in": ({ rollIn }) => rollIn,
  sizes: ({ sizes, perArea }) => [sizes, perArea],
  tin: ({ tin }) => tin,
  steps: ({ steps }) => steps,
};

function mustHold(before: Formula, changed: Changed, says: string): void {
  const { formula, rows, parts } = changed;
  const numbers = JSON.stringify(formula, (_key, value) =>
    typeof value === "number" && !Number.isFinite(value) ? "NaN" : value,
  );
  expect(numbers, says).not.toContain("NaN");
  for (const { name, amount } of formula.rows) expect(amount, `${says}: ${name}`).toBeGreaterThanOrEqual(0);
  for (const id of rowsChanged(before, formula)) expect(rows.has(id), `${says}: row ${id}`).toBe(true);
  for (const [part, of] of Object.entries(PARTS))
    if (!parts.includes(part as Part)) expect(of(formula), `${says}: ${part}`).toEqual(of(before));
  expect(baseOf(formula.rows, formula.frame), says).toBeCloseTo(baseOf(before.rows, before.frame), 9);
  if (formula.batch.of === "dough" && !parts.includes("batch"))
    expect(doughOf(formula), says).toBeCloseTo(doughOf(before), 9);
  // All that is weighed out, with what is rolled in, is the dough.
  expect(weightsOf(formula).reduce((sum, one) => sum + one, 0) / doughOf(formula), says).toBeCloseTo(1, 9);
  expect(Number.isFinite(eachOf(formula)), says).toBe(true);
  const beside = compareFormulas(before, formula, NO_MONEY, NO_LARDER);
  expect(JSON.stringify(beside.figures), says).not.toMatch(/NaN|Infinity/);
  // A row that is marked was announced, and so was one that is not there any more.
  expect(beside.rows.filter(({ isChanged }) => isChanged).length, says).toBeLessThanOrEqual(rows.size);
}

test(`${MANY} random formulas, ${IN_A_ROW} changes each`, () => {
  let taken = 0;
  const names = new Set<string>();
  for (let seed = 0; seed < MANY; seed++) {
    const chance = chanceOf(seedOf(2400) + seed);
    let formula = randomFormula(chance);
    for (let step = 0; step < IN_A_ROW; step++) {
      const wish = randomWish(formula, chance);
      const changed = changedBy(formula, wish);
      if (changed === null) continue;
      mustHold(formula, changed, `formula ${seed}, ${JSON.stringify(wish)}`);
      formula = changed.formula;
      taken += 1;
      names.add(wish.change);
    }
  }
  expect(taken).toBeGreaterThan(MANY / 2);
  // In a long run every change is taken, and not only refused.
  if (IS_LONG) expect([...names].sort()).toEqual(CHANGES.map(({ name }) => name).sort());
});

describe("there and back", () => {
  /** A row of 0 is none: water that was poured in for a while may leave one. */
  const amounts = (formula: Formula) => ({
    rows: Object.fromEntries(
      allRows(formula).flatMap((row) => (row.amount < 1e-11 ? [] : [[shownName(row), Number(row.amount.toFixed(10))]])),
    ),
    sizes: formula.sizes.map(({ baked, diameter = null }) => [baked, diameter].map((one) => one?.toFixed(9))),
    area: formula.perArea?.toFixed(9),
    batch: formula.batch.amount.toFixed(6),
  });
  const both = (formula: Formula, there: Wish, back: Wish): number => {
    const first = changedBy(formula, there);
    const second = first === null ? null : changedBy(first.formula, back);
    if (second === null) return 0;
    expect(amounts(second.formula), `${JSON.stringify(there)} and back`).toEqual(amounts(formula));
    return 1;
  };
  const tried = (each: (formula: Formula, chance: Chance) => number): number => {
    let count = 0;
    for (let seed = 0; seed < MANY; seed++) {
      const chance = chanceOf(seedOf(4200) + seed);
      count += each(randomFormula(chance), chance);
    }
    return count;
  };

  test("yeast by the middle figure, for another time and room", () => {
    const count = tried((formula, { below }) => {
      const [now, then] = [2 + below(3), 2 + below(3)].map(String) as [string, string];
      const [cool, warm] = [18 + below(5), 22 + below(6)].map(String) as [string, string];
      const wish = (from: string, to: string, at: string, then: string): Wish => ({
        change: "time",
        values: { hours_now: from, hours: to, temp_now: at, temp: then, edge: "middle" },
      });
      // A levain's share must leave flour in the rows, so only yeast is asked.
      if (!formula.rows.some(({ kind, amount }) => kind.word === "yeast" && amount > 0)) return 0;
      return both(formula, wish(now, then, cool, warm), wish(then, now, warm, cool));
    });
    expect(count).toBeGreaterThan(MANY / 5);
  });

  test("hydration, salt and fat", () => {
    const count = tried((formula, { below }) => {
      const counted = "plain: water, and that of preferments";
      const now = formula.rows.reduce((sum, { amount, kind }) => sum + amount * kind.water, 0) / allFlour(formula.rows);
      const wish = (share: number): Wish => ({ change: "hydration", values: { counted, wanted: `${share * 100}%` } });
      return now >= 0.2 ? both(formula, wish(0.6 + below(0.3)), wish(now)) : 0;
    });
    expect(count).toBeGreaterThan(MANY / 2);
  });

  /** What a formula holds of a part, over all flour; of solids, all but its flour's own water. */
  const keptIn = (formula: Formula, kept: SwapGoal, isRolled: boolean): number => {
    const { rows } = formula;
    // Butter for rolling is counted as the butter that the table has.
    const named = (isRolled ? allRows(formula) : rows).map((row) =>
      row.name === "Sheet butter" ? { ...row, name: "Butter" } : row,
    );
    return kept === "solids"
      ? amountOf(rows) / allFlour(rows) - effectiveHydration(rows, NO_LARDER)
      : (partOf(named, kept, NO_LARDER) ?? Number.NaN);
  };

  test("every swap that both ways are offered for, and the dough's water with it", () => {
    const count = tried((formula, { one }) => {
      const offers = offersFor(formula);
      if (offers.length === 0) return 0;
      const { label, row } = one(offers);
      const to = label.split(" → ")[1] ?? "";
      // Where the formula has that one already, the two become one.
      if (row.id !== ROLL_IN && formula.rows.some(({ name }) => name === to)) return 0;
      const there = { change: "swap", values: { swap: label, part: "100" } };
      const changed = changedBy(formula, there);
      if (changed === null) return 0;
      const [was, now] = [
        effectiveHydration(formula.rows, NO_LARDER),
        effectiveHydration(changed.formula.rows, NO_LARDER),
      ];
      if (row.kind.word !== "yeast") expect(now, label).toBeCloseTo(was, 9);
      const { preserved: kept } =
        SWAPS.find((one) => one.name === to && builtInNamed(row.name)?.name === one.from) ?? {};
      if (kept !== undefined) {
        const isRolled = row.id === ROLL_IN;
        expect(keptIn(changed.formula, kept, isRolled), `${label}, ${kept}`).toBeCloseTo(
          keptIn(formula, kept, isRolled),
          9,
        );
      }
      // Butter for rolling comes back under the name that the swap has for it.
      if (row.name === "Sheet butter") return 1;
      const back = row.id === ROLL_IN ? `${to} (roll-in)` : to;
      return both(formula, there, { change: "swap", values: { swap: `${back} → ${row.name}`, part: "100" } });
    });
    expect(count).toBeGreaterThan(MANY / 5);
  });

  test("a roll-in and a round", () => {
    const count = tried((formula, { below }) => {
      const { rollIn, perArea, sizes } = formula;
      const roll = (share: number): Wish => ({
        change: "roll-in",
        values: { fat: rollIn?.name ?? "", share: `${100 * share}`, of: rollIn?.of ?? "base" },
      });
      const round = (diameter: number, area: number): Wish => ({
        change: "round",
        values: { size: "round", diameter: String(diameter), area: String(area) },
      });
      return (
        (rollIn === null ? 0 : both(formula, roll(0.2 + below(0.4)), roll(rollIn.share))) +
        (perArea === null
          ? 0
          : both(formula, round(20 + below(20), perArea * (0.5 + below(1))), round(sizes[0]?.diameter ?? 0, perArea)))
      );
    });
    expect(count).toBeGreaterThan(MANY / 5);
  });

  test("a preferment larger, wetter and back; put in and taken out", () => {
    const count = tried((formula, { below }) => {
      if (formula.block !== null || formula.rows.some(({ kind }) => kind.word === "preferment")) return 0;
      const wish = (share: number, hydration: number): Wish => ({
        change: "preferment",
        values: { sort: "levain", share: String(share), hydration: String(hydration) },
      });
      const first = changedBy(formula, wish(20, 100));
      if (first === null) return 0;
      expect(prefermented(first.formula)).toBeCloseTo(0.2, 12);
      both(first.formula, wish(25, 60 + Math.round(below(60))), wish(20, 100));
      return both(formula, wish(20, 100), { change: "preferment", values: { sort: "none: all in one mix" } });
    });
    expect(count).toBeGreaterThan(MANY / 10);
  });
});
