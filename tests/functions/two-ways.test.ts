import fc from "fast-check";
import Qty from "js-quantities";
// @ts-expect-error the package has no types for its entry
import unitMath from "unitmath";
import { describe, expect, test } from "vitest";
import { cells, column, number } from "../enrichment/support.ts";
import { seedOf, tries } from "../kit/scale.ts";
import { down, expectCells, run } from "./support.ts";

// The same answer by two independent ways: units by general libraries, scaling by exact fractions.

const RUNS = { seed: seedOf(20_261_125), numRuns: tries(300) };

describe("what a line weighs or a tin holds, against js-quantities and unitmath", () => {
  const gram = (amount: number, unit: string) => [
    Qty(amount, unit).to("g").scalar,
    unitMath(amount, unit).to("g").getValue(),
  ];
  test.each([
    ["1 oz flour", 1, "oz"],
    ["1 lb butter", 1, "lb"],
    ["1 lb 4 oz butter", 20, "oz"],
    ["12 1/2 oz sugar", 12.5, "oz"],
    ["3/4 kg rye", 0.75, "kg"],
    ["250 mg salt", 250, "mg"],
  ])("%s", (line, amount, unit) => {
    for (const one of gram(amount, unit)) expectCells(number("BAKE_GRAMS", line), one, 1e-7 * one);
  });

  /** Millilitres of water are taken as grams. */
  test.each([
    ["1 cup water", 1, "cup", "cup"],
    ["2 1/3 cups water", 7 / 3, "cup", "cup"],
    ["1 tbsp water", 1, "tablespoon", "tablespoon"],
    ["1 tsp water", 1, "teaspoon", "teaspoon"],
    ["1 fl oz water", 1, "fluid-ounce", "fluidounce"],
    ["1 pint water", 1, "pint", "pint"],
    ["1 qt water", 1, "quart", "quart"],
    ["1/2 gal water", 0.5, "gallon", "gallon"],
    ["1.5 l water", 1.5, "liter", "liter"],
    ["75 cl water", 0.75, "liter", "liter"],
    ["2 dl water", 0.2, "liter", "liter"],
  ])("%s", (line, amount, qty, math) => {
    const grams = number("BAKE_GRAMS", line);
    expectCells(grams, Qty(amount, qty).to("ml").scalar, 1e-7 * grams);
    expectCells(grams, unitMath(amount, math).to("mL").getValue(), 1e-9 * grams);
  });

  test("cubic and square inches, millimetres", () => {
    const one = (unit: string) => number("BAKE_TINCAPACITY", "box", down(1, 1, 1), unit);
    expectCells(one("in"), Qty("1 in^3").to("cm^3").scalar, 1e-6);
    expectCells(one("in"), unitMath("1 in^3").to("cm^3").getValue(), 1e-12);
    expectCells(one("mm"), Qty("1 mm^3").to("cm^3").scalar, 1e-12);
    expectCells(number("BAKE_TINAREA", "box", down(1, 1), "in"), unitMath("1 in^2").to("cm^2").getValue(), 1e-12);
  });

  test("weights out, in every unit", () => {
    for (const unit of ["g", "kg", "oz", "lb"]) {
      const dough = number("BAKE_TINDOUGH", 3400, 0.5, 3, unit);
      expectCells(dough, Qty(5100, "g").to(unit).scalar, 1e-7 * dough);
      expectCells(dough, unitMath(5100, "g").to(unit).getValue(), 1e-9 * dough);
    }
  });

  test("temperatures: °F by js-quantities gives the same ice and the same water", () => {
    const fahrenheit = (celsius: number) => Qty(celsius, "tempC").to("tempF").scalar;
    const degree = fc.double({ min: 1, max: 35, noNaN: true });
    fc.assert(
      fc.property(degree, degree, fc.double({ min: -25, max: 0, noNaN: true }), (one, other, ice) => {
        const [wanted, tap] = [Math.min(one, other), Math.max(one, other)];
        const inCelsius = cells("BAKE_ICE", 40, tap, wanted, "C", ice);
        expectCells(cells("BAKE_ICE", 40, ...[tap, wanted].map(fahrenheit), "F", fahrenheit(ice)), inCelsius, 1e-6);
        const heat = (temps: number[], unit: string) =>
          number("BAKE_HEATBALANCE", temps[0], down(1000, 650), down(temps[1], ""), down("flour", "water"), 0, unit);
        const celsius = heat([one, wanted], "C");
        expectCells(heat([one, wanted].map(fahrenheit), "F"), fahrenheit(celsius), 1e-6);
      }),
      RUNS,
    );
  });
});

/** A fraction of whole numbers, which nothing rounds. */
type Fraction = { readonly top: bigint; readonly bottom: bigint };
const fraction = (top: bigint | number, bottom: bigint | number = 1): Fraction => ({
  top: BigInt(top),
  bottom: BigInt(bottom),
});
const product = (a: Fraction, b: Fraction) => fraction(a.top * b.top, a.bottom * b.bottom);
const quotient = (a: Fraction, b: Fraction) => fraction(a.top * b.bottom, a.bottom * b.top);
const plus = (a: Fraction, b: Fraction) => fraction(a.top * b.bottom + b.top * a.bottom, a.bottom * b.bottom);
const less = (a: Fraction, b: Fraction) => plus(a, fraction(-b.top, b.bottom));
const total = (all: readonly Fraction[]) => all.reduce(plus, fraction(0));
const ceiling = ({ top, bottom }: Fraction) => Number((top + bottom - 1n) / bottom);
/** The nearest cell number, by twenty digits after the point. */
const shown = ({ top, bottom }: Fraction) => {
  const scaled = (top * 10n ** 20n) / bottom;
  return Number(`${scaled}e-20`);
};
const near = (actual: unknown, exact: Fraction) =>
  expectCells(actual, shown(exact), 1e-13 * Math.max(1e-6, Math.abs(shown(exact))) * 10);

describe("scaling against exact fractions", () => {
  // Hundredths of a gram and hundredths of a percent, as they are typed.
  const hundredths = fc.integer({ min: 1, max: 10_000_000 });
  const rows = fc.array(hundredths, { minLength: 2, maxLength: 10 });
  const typed = (whole: number) => whole / 100;
  const exact = (whole: number) => fraction(whole, 100);

  test("rescaled rows, from their sum or from a figure", () => {
    fc.assert(
      fc.property(rows, hundredths, hundredths, (weights, target, from) => {
        const bySum = column("BAKE_RESCALE", down(...weights.map(typed)), typed(target));
        const byFigure = column("BAKE_RESCALE", down(...weights.map(typed)), typed(target), typed(from));
        weights.forEach((one, row) => {
          near(bySum[row], quotient(product(exact(one), exact(target)), total(weights.map(exact))));
          near(byFigure[row], quotient(product(exact(one), exact(target)), exact(from)));
        });
      }),
      RUNS,
    );
  });

  test("weights of a formula, for dough, for flour, and with a levain", () => {
    const percents = fc.array(fc.integer({ min: 100, max: 9_900 }), { minLength: 1, maxLength: 6 });
    const levain = fc.integer({ min: 100, max: 8_000 });
    fc.assert(
      fc.property(percents, levain, fc.integer({ min: 4, max: 40 }), hundredths, (others, ripe, quarters, amount) => {
        const all = [fraction(10_000, 100), ...others.map(exact), exact(ripe)];
        const cellsIn = [100, ...others.map(typed), typed(ripe)];
        // Its percent is of the flour added beside it, so that the flour row alone makes 100.
        const kinds = down("flour", ...others.map(() => "grain"), `levain ${quarters * 5}%`);
        const dough = column("BAKE_WEIGHTS", down(...cellsIn), kinds, typed(amount));
        const flour = column("BAKE_WEIGHTS", down(...cellsIn), kinds, typed(amount), "flour");
        all.forEach((one, row) => {
          near(dough[row], quotient(product(one, exact(amount)), total(all)));
          near(flour[row], quotient(product(one, exact(amount)), fraction(100)));
        });
      }),
      RUNS,
    );
  });

  test("dough for pieces after two losses", () => {
    const loss = fc.integer({ min: 0, max: 3_000 });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100_000 }), hundredths, loss, loss, (pieces, each, baked, handled) => {
        const left = (part: number) => less(fraction(1), fraction(part, 10_000));
        const wanted = quotient(product(fraction(pieces), exact(each)), product(left(baked), left(handled)));
        near(number("BAKE_DOUGHFOR", pieces, typed(each), baked / 10_000, handled / 10_000), wanted);
      }),
      RUNS,
    );
  });

  test("the number of mixes, where binary arithmetic would count one too many", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5_000 }),
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: -1, max: 1 }),
        (limit, times, more) => {
          // At, one hundredth below and one above a whole number of mixes.
          const dough = limit * times + more;
          fc.pre(dough > 0);
          const [mixes, each] = cells("BAKE_MIXES", typed(dough), typed(limit));
          expect(mixes).toBe(ceiling(quotient(exact(dough), exact(limit))));
          near(each, quotient(exact(dough), fraction(mixes ?? 1)));
        },
      ),
      {
        ...RUNS,
        examples: [
          [70, 3, 0],
          [10, 3, 0],
          [30, 1, 0],
          [110, 10, 1],
        ],
      },
    );
  });

  test("how often the stock allows a formula, and a blank that limits nothing", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(hundredths, fc.option(hundredths)), { minLength: 1, maxLength: 8 }), (pairs) => {
        fc.pre(pairs.some(([, there]) => there !== null));
        const [factor, row = 0] = cells(
          "BAKE_STOCKLIMIT",
          down(...pairs.map(([needed]) => typed(needed))),
          down(...pairs.map(([, there]) => (there === null ? "" : typed(there)))),
        );
        const [needed, there] = pairs[row - 1] ?? [1, null];
        near(factor, quotient(exact(there ?? 0), exact(needed)));
        // By cross-multiplying, no other row allows less; a billionth counts as the same.
        for (const [other, stock] of pairs) {
          if (stock === null) continue;
          expect(BigInt(stock) * BigInt(needed) * 1_000_000_000n).toBeGreaterThanOrEqual(
            BigInt(there ?? 0) * BigInt(other) * 999_999_999n,
          );
        }
      }),
      RUNS,
    );
  });
});

test("a column of one formula agrees with itself row by row", () => {
  const [many] = [run("BAKE_YEASTSWAP", down(20, 30), "fresh", "instant")] as number[][][];
  expectCells(many, [cells("BAKE_YEASTSWAP", 20, "fresh", "instant"), cells("BAKE_YEASTSWAP", 30, "fresh", "instant")]);
});
