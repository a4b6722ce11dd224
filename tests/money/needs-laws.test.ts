import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { expectCells, run } from "../functions/support.ts";
import { tries } from "../kit/scale.ts";

type Row = [string, number | string];
type Line = [string, string, number | string];
const needs = (orders: unknown, formulas: unknown, onHand?: unknown) =>
  run("BAKE_RAWNEEDS", orders, formulas, onHand) as Row[];

/** Exact fractions of whole numbers. */
type Fraction = { over: bigint; under: bigint };
const gcd = (a: bigint, b: bigint): bigint => (b === 0n ? (a < 0n ? -a : a) : gcd(b, a % b));
const fraction = (over: bigint, under = 1n): Fraction => {
  const shared = gcd(over, under) || 1n;
  return { over: over / shared, under: under / shared };
};
const plus = (a: Fraction, b: Fraction) => fraction(a.over * b.under + b.over * a.under, a.under * b.under);
const times = (a: Fraction, b: Fraction) => fraction(a.over * b.over, a.under * b.under);
const asNumber = ({ over, under }: Fraction) => Number((over * 10n ** 30n) / under) / 1e30;

type Day = { formulas: Line[]; orders: Row[]; onHand: Row[] };

/** What is wanted of one item, asked from the item up to the orders: the other way round than the function goes. */
function wantedOf(item: string, { formulas, orders, onHand }: Day, known = new Map<string, Fraction>()): Fraction {
  const before = known.get(item);
  if (before) return before;
  let wanted = fraction(0n);
  for (const [name, weight] of orders) if (name === item) wanted = plus(wanted, fraction(BigInt(weight)));
  for (const [product, part, weight] of formulas) {
    if (part !== item) continue;
    const sum = formulas.reduce((all, [name, , one]) => all + (name === product ? BigInt(one) : 0n), 0n);
    wanted = plus(
      wanted,
      times(lackingOf(product, { formulas, orders, onHand }, known), fraction(BigInt(weight), sum)),
    );
  }
  known.set(item, wanted);
  return wanted;
}

function lackingOf(item: string, day: Day, known: Map<string, Fraction>): Fraction {
  const stock = day.onHand.reduce((all, [name, weight]) => all + (name === item ? BigInt(weight) : 0n), 0n);
  const lacking = plus(wantedOf(item, day, known), fraction(-stock));
  return lacking.over > 0n ? lacking : fraction(0n);
}

/** Products p0… of which each may hold later ones and the raw r0…r4; every order and stock row in whole grams. */
const days: fc.Arbitrary<Day> = fc.integer({ min: 1, max: 7 }).chain((count) => {
  const weight = fc.integer({ min: 1, max: 900 });
  const part = (from: number) =>
    fc.constantFrom(
      ...Array.from({ length: count - from - 1 }, (_, at) => `p${from + 1 + at}`),
      "r0",
      "r1",
      "r2",
      "r3",
      "r4",
    );
  const formula = (at: number) =>
    fc.array(fc.tuple(fc.constant(`p${at}`), part(at), weight), { minLength: 1, maxLength: 5 });
  const product = fc.nat({ max: count - 1 }).map((at) => `p${at}`);
  return fc.record({
    formulas: fc.tuple(...Array.from({ length: count }, (_, at) => formula(at))).map((all) => all.flat() as Line[]),
    orders: fc.array(fc.tuple(product, fc.integer({ min: 0, max: 5000 })), {
      minLength: 1,
      maxLength: 6,
    }) as fc.Arbitrary<Row[]>,
    onHand: fc.array(fc.tuple(fc.oneof(product, fc.constantFrom("r0", "r3")), fc.integer({ min: 0, max: 2000 })), {
      maxLength: 4,
    }) as fc.Arbitrary<Row[]>,
  });
});

describe("laws of a day's needs", () => {
  test("an exact reckoning from the raw ingredient upwards gives the same", () => {
    fc.assert(
      fc.property(days, (day) => {
        const known = new Map<string, Fraction>();
        for (const [name, weight] of needs(day.orders, day.formulas, day.onHand)) {
          const exact = asNumber(lackingOf(name, day, known));
          expectCells(weight, exact, 1e-8 * Math.max(1, exact));
        }
      }),
      { numRuns: tries(400) },
    );
  });
  test("with nothing on hand the raw ingredients weigh what was ordered", () => {
    fc.assert(
      fc.property(days, ({ orders, formulas }) => {
        const sum = (rows: Row[]) => rows.reduce((all, [, weight]) => all + Number(weight), 0);
        expectCells(sum(needs(orders, formulas)), sum(orders));
      }),
    );
  });
  test("neither the order of orders and stock nor that of the formulas changes a weight", () => {
    fc.assert(
      fc.property(days, ({ orders, formulas, onHand }) => {
        const straight = new Map(needs(orders, formulas, onHand));
        const turned = needs([...orders].reverse(), [...formulas].reverse(), [...onHand].reverse());
        expect(turned.length).toBe(straight.size);
        for (const [name, weight] of turned) expectCells(weight, straight.get(name), 1e-6);
      }),
    );
  });
  test("raw ingredients come in the order the formulas first name them", () => {
    fc.assert(
      fc.property(days, ({ orders, formulas }) => {
        const named = [...new Set(formulas.map(([, part]) => part))];
        const places = needs(orders, formulas).map(([name]) => named.indexOf(name));
        expect(places).toEqual([...places].sort((a, b) => a - b));
        expect(Math.min(...places)).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});
