// The arithmetic of typed weights, held against what a sheet shows: shares of a fixed dough, or multiples of the flour.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Order } from "../../shared/typing/scaling.ts";
import { type Outcome, type TypedRow, takeWeights } from "../../shared/typing/typed-weights.ts";
import { seedOf, tries } from "../kit/scale.ts";

const row = (percent: number, flour = 0, weight: number | null = null, perMix: number | null = null): TypedRow => ({
  percent,
  flour,
  weight,
  perMix,
});
const order = (by: Order["by"], amount: number, more: Partial<Order> = {}): Order => ({
  by,
  amount: by === "pieces" ? null : amount,
  ordered: by === "pieces" || by === "tins" ? amount : 0,
  mixerLimit: 0,
  rolled: { ofMix: 0, ofFlour: 0 },
  ...more,
});
const taken = (outcome: Outcome) => {
  if ("back" in outcome) throw new Error(outcome.back);
  return outcome;
};

/** An own sum, row by row: what each row weighs once the percentages stand there. */
function weighed(
  rows: readonly TypedRow[],
  { percents, amount }: ReturnType<typeof taken>,
  { by, amount: was, ordered, rolled }: Order,
): number[] {
  const flours = percents.filter((_, at) => rows[at]?.flour === 1).reduce((sum, one) => sum + one, 0);
  const inStarters = percents.reduce(
    (sum, one, at) => sum + ((rows[at]?.flour ?? 0) < 1 ? one * (rows[at]?.flour ?? 0) : 0),
    0,
  );
  const hundred = flours + inStarters > 10 ? 100 : 1;
  const base = Math.abs(flours + inStarters - hundred) < Math.abs(flours - hundred) ? flours + inStarters : flours;
  const sum = percents.reduce((all, one) => all + one, 0);
  const whole = (by === "dough" ? (amount ?? was ?? 0) : ordered) / (1 + rolled.ofMix);
  const each = by === "flour" ? (amount ?? was ?? 0) / base : whole / (sum + rolled.ofFlour * base);
  return percents.map((one) => one * each);
}

// Worked out by hand, each beside its rule.
describe("by hand", () => {
  const loaf = [row(1, 1), row(0.65), row(0.02), row(0.01)];
  const over = (at: number, weight: number, rows = loaf) =>
    rows.map((one, index) => (index === at ? { ...one, weight } : one));

  test("by flour the row alone changes: 6 200 g of water to 10 000 g of flour are 62 %", () => {
    expect(taken(takeWeights(over(1, 6200), order("flour", 10_000))).percents).toEqual([1, 0.62, 0.02, 0.01]);
  });
  test("of 16 800 g of dough 6 500 g are water: the rest, 10 300 g, is 103 % of 10 000 g", () => {
    const { percents, amount } = taken(takeWeights(over(1, 6500), order("dough", 16_800)));
    expect(percents.map((one) => Math.round(1e9 * one) / 1e9)).toEqual([1, 0.65, 0.02, 0.01]);
    expect(amount).toBeNull();
  });
  test("the only flour by dough: 6 500 g of flour in a formula of 168 % make 10 920 g of dough", () => {
    const outcome = taken(takeWeights(over(0, 6500), order("dough", 16_800)));
    expect(outcome.amount).toBeCloseTo(10_920, 9);
    expect(outcome.percents).toEqual([1, 0.65, 0.02, 0.01]);
  });
  test("the only flour by pieces or tins is put back", () => {
    for (const by of ["pieces", "tins"] as const)
      expect(takeWeights(over(0, 6500), order(by, 16_800))).toEqual({ back: "only flour" });
  });
  test("one of two flours: the other gives way, flours stay 100 %", () => {
    const two = [row(0.9, 1), row(0.1, 1), row(0.7)];
    expect(
      taken(takeWeights(over(1, 2000, two), order("flour", 10_000))).percents.map((one) => Math.round(1e9 * one) / 1e9),
    ).toEqual([0.8, 0.2, 0.7]);
    expect(takeWeights(over(1, 11_000, two), order("flour", 10_000))).toEqual({ back: "flour below 0" });
  });
  test("a whole recipe by weights: 500, 325, 10 and 5 g are 100, 65, 2 and 1 %, and the dough is their sum", () => {
    const all = [row(0, 1, 500), row(0, 0, 325), row(0, 0, 10), row(0, 0, 5)];
    const none = { ...order("dough", 1), amount: null };
    expect(taken(takeWeights(all, none))).toEqual({ percents: [1, 0.65, 0.02, 0.01], amount: 840, isOrderKept: false });
    expect(taken(takeWeights(all, { ...none, by: "flour" })).amount).toBe(500);
    expect(taken(takeWeights(all, order("pieces", 1000)))).toMatchObject({ amount: null, isOrderKept: true });
  });
  test("per mix: 3 000 g of water in each of two mixes are 6 000 g", () => {
    const rows = loaf.map((one, at) => (at === 1 ? { ...one, perMix: 3000 } : one));
    expect(taken(takeWeights(rows, order("flour", 10_000, { mixerLimit: 9000 }))).percents[1]).toBeCloseTo(0.6, 12);
  });
  test("per mix where more water makes a third mix, each with as much: it stays at three", () => {
    // 16 800 g are two mixes of 9 000 g; 4 000 g of water in two make 18 300 g, which are three, and then 12 000 g of water.
    const rows = loaf.map((one, at) => (at === 1 ? { ...one, perMix: 4000 } : one));
    expect(taken(takeWeights(rows, order("flour", 10_000, { mixerLimit: 9000 }))).percents[1]).toBeCloseTo(1.2, 12);
  });
  test("per mix more than the mixer takes: every mix more would need as much again, and it is put back", () => {
    const rows = [row(1, 1), row(0.65, 0, null, 9500)];
    expect(takeWeights(rows, order("flour", 10_000, { mixerLimit: 9000 }))).toEqual({ back: "mixes" });
  });
  test("fat that is rolled in: of 1 960 g ordered at 40 % of the base dough, or 50 % of the flour, the mix is what is left", () => {
    // 1 960 ÷ 1.4 are 1 400 g of dough: 600 g of water leave 800 of flour, 75 %.
    const dough = [row(1, 1), row(0.4)];
    const ofMix = order("dough", 1960, { rolled: { ofMix: 0.4, ofFlour: 0 } });
    expect(taken(takeWeights(over(1, 600, dough), ofMix)).percents[1]).toBeCloseTo(0.75, 12);
    // 600 g of water leave 1 360 g of flour and of fat, half as much: 906.67 g of flour.
    const ofFlour = order("dough", 1960, { rolled: { ofMix: 0, ofFlour: 0.5 } });
    expect(taken(takeWeights(over(1, 600, dough), ofFlour)).percents[1]).toBeCloseTo((600 * 1.5) / 1360, 12);
    // All flour typed: 1 000 g, 400 of water, and 560 or 500 g of fat.
    expect(taken(takeWeights(over(0, 1000, dough), ofMix)).amount).toBeCloseTo(1960, 9);
    expect(taken(takeWeights(over(0, 1000, dough), ofFlour)).amount).toBeCloseTo(1900, 9);
    const all = [row(0, 1, 1000), row(0, 0, 400)];
    expect(taken(takeWeights(all, ofFlour))).toMatchObject({ percents: [1, 0.4], amount: 1900 });
  });
  test.each([
    ["no order", [row(1, 1), row(0.6, 0, 500)], order("dough", 0)],
    ["no order", [row(1, 1), row(0.6, 0, 500)], order("pieces", 0)],
    ["no flour", [row(0.6), row(0.02, 0, 500)], order("flour", 1000)],
    ["nothing left", [row(1, 1), row(0.6, 0, 2000)], order("dough", 1600)],
    ["flour at 0", [row(1, 1, 900), row(0, 1), row(0.6)], order("flour", 1000)],
    ["no flour", [row(0, 0, 900), row(0, 0, 30)], order("dough", 1000)],
    ["no flour", [row(1, 1, 0), row(0.6)], order("flour", 1000)],
  ] as const)("%s", (back, rows, wanted) => {
    expect(takeWeights(rows, wanted)).toEqual({ back });
  });
});

/** Formulas of one to four flours, water, salt and more, with or without a preferment of 50 to 150 % hydration. */
const formulas = fc
  .record({
    flours: fc.array(fc.double({ min: 0.05, max: 1, noNaN: true }), { minLength: 1, maxLength: 4 }),
    others: fc.array(fc.double({ min: 0.001, max: 1.2, noNaN: true }), { minLength: 1, maxLength: 6 }),
    starter: fc.option(
      fc.record({
        percent: fc.double({ min: 0.05, max: 0.5, noNaN: true }),
        hydration: fc.integer({ min: 50, max: 150 }),
      }),
    ),
    isAll: fc.boolean(),
    hundred: fc.constantFrom(1, 100),
  })
  .map(({ flours, others, starter, isAll, hundred }) => {
    const inside = starter === null ? 0 : starter.percent / (1 + starter.hydration / 100);
    const sum = flours.reduce((all, one) => all + one, 0);
    const room = isAll ? 1 - inside : 1;
    return [
      ...flours.map((one) => row(((one * room) / sum) * hundred, 1)),
      ...others.map((one) => row(one * hundred)),
      ...(starter === null ? [] : [row(starter.percent * hundred, 1 / (1 + starter.hydration / 100))]),
    ];
  });
const orders = fc.record({
  by: fc.constantFrom("pieces", "tins", "dough", "flour"),
  amount: fc.double({ min: 500, max: 90_000, noNaN: true }),
  rolled: fc.constantFrom({ ofMix: 0, ofFlour: 0 }, { ofMix: 0.28, ofFlour: 0 }, { ofMix: 0, ofFlour: 0.5 }),
});
const chosen = fc.array(fc.record({ at: fc.nat(20), factor: fc.double({ min: 0.3, max: 2, noNaN: true }) }), {
  minLength: 1,
  maxLength: 12,
});

const run = { seed: seedOf(20), numRuns: tries(400) };

test("typed weights hold to 1e-9, and flours stay 100 %", () => {
  let held = 0;
  fc.assert(
    fc.property(formulas, orders, chosen, (rows, { by, amount, rolled }, edits) => {
      const wanted = order(by, amount, { rolled });
      const now = weighed(
        rows,
        { percents: rows.map(({ percent }) => percent), amount: null, isOrderKept: false },
        wanted,
      );
      const typed = rows.map((one, at) => {
        const edit = edits.find((each) => each.at % rows.length === at);
        return edit === undefined ? one : { ...one, weight: (now[at] ?? 0) * edit.factor };
      });
      const outcome = takeWeights(typed, wanted);
      if ("back" in outcome) return;
      held += 1;
      const after = weighed(typed, outcome, wanted);
      const hundred = rows.reduce((sum, one) => sum + one.percent * one.flour, 0) > 10 ? 100 : 1;
      if (!outcome.isOrderKept)
        typed.forEach(({ weight }, at) => {
          if (weight !== null) expect(Math.abs((after[at] ?? 0) - weight) / weight).toBeLessThan(1e-9);
        });
      const added = outcome.percents.reduce((sum, one, at) => sum + (rows[at]?.flour === 1 ? one : 0), 0);
      const all = outcome.percents.reduce((sum, one, at) => sum + one * (rows[at]?.flour ?? 0), 0);
      expect(Math.min(Math.abs(added - hundred), Math.abs(all - hundred)) / hundred).toBeLessThan(1e-9);
      expect(Math.min(...outcome.percents)).toBeGreaterThanOrEqual(0);
    }),
    run,
  );
  expect(held).toBeGreaterThan(run.numRuns / 2);
});

test("by rules 1 and 2 the old weight typed again gives the old formula", () => {
  let tried = 0;
  fc.assert(
    fc.property(
      formulas,
      orders,
      fc.nat(20),
      fc.double({ min: 0.3, max: 1.6, noNaN: true }),
      (rows, { by, amount, rolled }, at, factor) => {
        const wanted = order(by, amount, { rolled });
        const asIs = { percents: rows.map(({ percent }) => percent), amount: null, isOrderKept: false };
        const index = at % rows.length;
        const old = weighed(rows, asIs, wanted)[index] ?? 0;
        const once = takeWeights(
          rows.map((one, each) => (each === index ? { ...one, weight: old * factor } : one)),
          wanted,
        );
        if ("back" in once || once.amount !== null || once.percents.some((one) => one === 0)) return;
        const between = rows.map((one, each) => row(once.percents[each] ?? 0, one.flour, each === index ? old : null));
        const again = taken(takeWeights(between, wanted));
        tried += 1;
        for (const [each, { percent }] of rows.entries())
          expect(Math.abs((again.percents[each] ?? 0) - percent) / percent).toBeLessThan(1e-9);
      },
    ),
    run,
  );
  expect(tried).toBeGreaterThan(run.numRuns / 3);
});
