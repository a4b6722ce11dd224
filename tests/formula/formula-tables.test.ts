import fc from "fast-check";
import { expect, test } from "vitest";
import { CellError } from "../../shared/base/refusal.ts";
import { run } from "../functions/support.ts";
import { seedOf, tries } from "../kit/scale.ts";

// Formula tables as people type them, through the formula functions, against sums done here and nowhere else.

const SPACES = ["", " ", "  ", "\u00a0", "\u2009", "\u202f", "\u3000", "\u200b", "\t"];
type Row = { readonly kind: string; readonly flour: number; readonly grams: number };
const KINDS = [
  ["flour", 1],
  ["water", 0],
  ["salt", 0],
  ["fat", 0],
  ["sugar", 0],
  ["egg", 0],
  ["other", 0],
  ["levain 100%", 1 / 2],
  ["100% levain", 1 / 2],
  ["levain (100%)", 1 / 2],
  ["poolish100%", 1 / 2],
  ["biga, 60%", 1 / 1.6],
  ["starter 125 % hydration", 1 / 2.25],
] as const;

const typedKind = (kind: string) =>
  fc
    .tuple(fc.constantFrom(...SPACES), fc.constantFrom(...SPACES), fc.constantFrom("as is", "upper", "title"))
    .map(([before, after, letters]) => {
      const text =
        letters === "upper"
          ? kind.toUpperCase()
          : letters === "title"
            ? kind.replace(/^./, (one) => one.toUpperCase())
            : kind;
      return before + text.replace(/ /g, before === "" ? " " : ` ${before}`) + after;
    });
const amount = fc.oneof(
  { weight: 8, arbitrary: fc.integer({ min: 1, max: 200_000 }).map((tenths) => tenths / 10) },
  { weight: 1, arbitrary: fc.constantFrom(0, 1e8, 123456.75) },
);
const row = fc
  .constantFrom(...KINDS)
  .chain(([kind, flour]) =>
    fc.record({ kind: fc.constant(kind), flour: fc.constant(flour), grams: amount, typed: typedKind(kind) }),
  );
const table = fc
  .tuple(
    fc.record({
      kind: fc.constant("flour"),
      flour: fc.constant(1),
      grams: fc.integer({ min: 10, max: 50_000 }),
      typed: typedKind("flour"),
    }),
    fc.record({ kind: fc.constant("water"), flour: fc.constant(0), grams: amount, typed: typedKind("water") }),
    fc.array(fc.option(row, { nil: null, freq: 5 }), { maxLength: 9 }),
  )
  .map(([flour, water, rest]) => [flour, ...rest, water]);

const typedNumber = (value: number, how: number): unknown =>
  how === 0
    ? value
    : how === 1
      ? `${value}`.replace(/^(\d{1,3})\.(\d{3})$/, "$1.$20")
      : how === 2
        ? `\u00a0${value}`.replace(".", ",")
        : ` ${value}\u2009`;
const isPlainText = (value: number) => !/e/.test(String(value));
const near = (got: unknown, want: number) => {
  expect(typeof got).toBe("number");
  expect(Math.abs((got as number) - want), `${String(got)} against ${want}`).toBeLessThanOrEqual(
    1e-9 * Math.max(Math.abs(want), 1e-3),
  );
};

let figures = 0;
let refused = 0;
/** A column of answers, or null where the call was refused. */
function column(name: string, ...args: unknown[]): unknown[] | null {
  try {
    const answer = run(name, ...args);
    return Array.isArray(answer) ? answer.map((cells) => (cells as unknown[])[0]) : [answer];
  } catch (error) {
    expect(error).toBeInstanceOf(CellError);
    refused++;
    return null;
  }
}
function same(got: unknown[] | null, want: (number | null)[]): boolean {
  if (got === null) return false;
  want.forEach((one, index) => {
    if (one === null) expect(got[index] ?? "").toBe("");
    else near(got[index], one);
    figures++;
  });
  return true;
}
const total = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0);

test("tables in every way of typing: each figure is right, or the call is refused", () => {
  fc.assert(
    fc.property(
      table,
      fc.integer({ min: 0, max: 3 }),
      fc.boolean(),
      fc.constantFrom(1, 2.5, 1e3),
      (rows, how, isPlain, times) => {
        const filled = rows.filter((one) => one !== null);
        const weights = rows.map((one) => [
          one === null ? "" : typedNumber(one.grams, isPlainText(one.grams) ? how : 0),
        ]);
        const kinds = rows.map((one) => [one === null ? "" : one.typed]);
        const sum = total(filled.map(({ grams }) => grams));
        const flour = total(filled.map((one) => one.grams * one.flour));
        const added = total(filled.filter(({ kind }) => kind === "flour").map(({ grams }) => grams));
        const each = (of: (one: Row) => number) => rows.map((one) => (one === null ? null : of(one)));
        same(
          column("BAKE_FLOURPCT", weights, kinds),
          each(({ grams }) => grams / flour),
        );
        same(
          column("BAKE_TRUEPCT", weights),
          each(({ grams }) => grams / sum),
        );
        same(
          column("BAKE_RESCALE", weights, sum * times),
          each(({ grams }) => grams * times),
        );
        // Percents of the added flour, ratio or plain, bring the weights back.
        const scale = isPlain ? 100 : 1;
        const percents = rows.map((one) => [one === null ? "" : (one.grams / added) * scale]);
        same(
          column("BAKE_WEIGHTS", percents, kinds, sum),
          each(({ grams }) => grams),
        );
        same(
          column("BAKE_WEIGHTS", percents, kinds, added, "flour"),
          each(({ grams }) => grams),
        );
        const filledIn = rows.map((one) => [one?.kind === "flour" ? one.grams : ""]);
        same(
          column("BAKE_FILLIN", percents, filledIn, kinds),
          each(({ grams }) => grams / flour),
        );
        // A weight below zero is never counted.
        const negative = weights.map((cells, index) => (index === 0 ? [-5] : cells));
        expect(column("BAKE_TRUEPCT", negative)).toBeNull();
      },
    ),
    { numRuns: tries(20), seed: seedOf(1720) },
  );
  // About 400 in npm test, 20 000 in a long run; and refusals are not what most of it is.
  expect(figures).toBeGreaterThan(tries(400));
  expect(refused).toBeLessThan(figures);
});
