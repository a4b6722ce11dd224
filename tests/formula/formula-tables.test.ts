import fc from "fast-check";
import { expect, test } from "vitest";
import { Refusal } from "../../shared/base/refusal.ts";
import { run } from "../functions/support.ts";
import { IS_LONG, seedOf, tries } from "../kit/scale.ts";
import { BLANKS, HOWS, percentCell, type Row, type Table, tables, typedNumber, WAYS } from "./random-tables.ts";

// Formula tables through every function that takes one, against sums done here and nowhere else.

/** Figures that were right, and calls that were refused, by function. */
const counts = new Map<string, { right: number; refused: number }>();
const countOf = (name: string) => {
  const before = counts.get(name) ?? { right: 0, refused: 0 };
  counts.set(name, before);
  return before;
};

function near(got: unknown, want: number, what: string): void {
  expect(typeof got, what).toBe("number");
  const away = Math.abs((got as number) - want);
  expect(away, `${what}: ${String(got)} against ${want}`).toBeLessThanOrEqual(1e-9 * Math.max(Math.abs(want), 1e-3));
}

/** Columns of answers that are each right, unless the call is refused. */
function holds(name: string, args: readonly unknown[], ...columns: readonly (readonly (number | null)[])[]): void {
  let rows: unknown[][];
  try {
    const answer = run(name, ...args);
    rows = (Array.isArray(answer) ? answer : [[answer]]) as unknown[][];
  } catch (error) {
    expect(error).toBeInstanceOf(Refusal);
    countOf(name).refused++;
    return;
  }
  columns.forEach((wanted, place) => {
    wanted.forEach((want, at) => {
      const got = rows[at]?.[place] ?? "";
      if (want === null) expect(got, `${name}, row ${at + 1}`).toBe("");
      else {
        near(got, want, `${name}, row ${at + 1}`);
        countOf(name).right++;
      }
    });
  });
}

const total = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0);
const each = (table: Table, of: (row: Row) => number) => table.map((row) => (row === null ? null : of(row)));
const sumOf = (table: Table, of: (row: Row) => number) => total(each(table, of).map((one) => one ?? 0));

type Typing = { readonly how: number; readonly way: string; readonly blank: unknown; readonly times: number };

/** The columns of a table as they are typed. */
function cellsOf(table: Table, { how, blank }: Typing) {
  const column = (of: (row: Row, at: number) => unknown) =>
    table.map((row, at) => [row === null ? blank : of(row, at)]);
  return {
    weights: column(({ grams }) => typedNumber(grams, how)),
    kinds: table.map((row) => [row === null ? "nobody reads this" : row.typed]),
    names: column(({ name }) => name),
    percents: (way: string, flour: number) => column(({ grams }, at) => percentCell(grams / flour, way, at)),
    plainFlours: column(({ kind, grams }) => (kind === "flour" ? grams : blank)),
  };
}

function shares(table: Table, typing: Typing): void {
  const { weights, kinds } = cellsOf(table, typing);
  const flour = sumOf(table, (row) => row.grams * row.flour);
  const sum = sumOf(table, ({ grams }) => grams);
  holds(
    "BAKE_FLOURPCT",
    [weights, kinds],
    each(table, ({ grams }) => grams / flour),
  );
  holds(
    "BAKE_TRUEPCT",
    [weights],
    each(table, ({ grams }) => grams / sum),
  );
  const target = typing.how >= 4 ? `${sum * typing.times} g` : sum * typing.times;
  if (!/e/.test(String(target)))
    holds(
      "BAKE_RESCALE",
      [weights, target],
      each(table, ({ grams }) => grams * typing.times),
    );
}

/** Percentages of the added flour, in each way of writing them, bring the weights back. */
function percentages(table: Table, typing: Typing): void {
  const { kinds, percents, plainFlours } = cellsOf(table, typing);
  const added = sumOf(table, ({ kind, grams }) => (kind === "flour" ? grams : 0));
  const all = sumOf(table, (row) => row.grams * row.flour);
  const sum = sumOf(table, ({ grams }) => grams);
  const column = percents(typing.way, added);
  const grams = each(table, (row) => row.grams);
  holds("BAKE_WEIGHTS", [column, kinds, sum], grams);
  holds("BAKE_WEIGHTS", [column, kinds, added, "flour"], grams);
  holds(
    "BAKE_FILLIN",
    [column, plainFlours, kinds],
    each(table, (row) => row.grams / all),
    grams,
  );
  holds(
    "BAKE_FILLIN",
    [column, "", kinds, sum * typing.times],
    each(table, (row) => row.grams / all),
    each(table, (row) => row.grams * typing.times),
  );
  const style = [table.map((row) => [row?.name ?? ""]), kinds];
  const review = (way: string) => {
    try {
      return run("BAKE_REVIEW", ...style, percents(way, added), "hearth");
    } catch (error) {
      expect(error).toBeInstanceOf(Refusal);
      return null;
    }
  };
  // How percentages are typed changes no remark; where a way is unclear, the rows say so.
  const [one, other] = [review("ratio"), review(typing.way)];
  if (!/meant\b/.test(JSON.stringify([one, other]))) expect(other).toEqual(one);
}

function scales(table: Table, typing: Typing): void {
  const { weights } = cellsOf(table, { ...typing, how: typing.how % 4 });
  const steps = [5, 1, 0.1].slice(typing.how % 3);
  const onScale = (grams: number): number => {
    for (const step of steps) {
      const count = Math.floor(grams / step + 0.5 + 1e-9);
      if (Math.abs(count * step - grams) <= 0.02 * grams * (1 + 1e-9)) return count * step;
    }
    return grams;
  };
  holds(
    "BAKE_SCALEROUND",
    [weights, steps.map((step) => [step])],
    each(table, ({ grams }) => onScale(grams)),
  );
  // Every row but the first has a tenth more than it needs.
  const stock = table.map((row, at) => [row === null ? typing.blank : row.grams * (at === 0 ? typing.times : 1.1)]);
  const needed = table.flatMap((row, at) => (row !== null && row.grams > 0 ? [at] : []));
  const factors = needed.map((at) => (at === 0 ? typing.times : 1.1));
  const limit = Math.min(...factors);
  holds("BAKE_STOCKLIMIT", [weights, stock], [limit], [(needed[factors.indexOf(limit)] ?? 0) + 1]);
}

function stages(table: Table, typing: Typing): void {
  const { weights, kinds } = cellsOf(table, typing);
  const [share, hydration] = [0.2, typing.times / 2];
  const moved = share * sumOf(table, ({ kind, grams }) => (kind === "flour" ? grams : 0));
  const water = sumOf(table, ({ kind, grams }) => (kind === "water" ? grams : 0));
  const taken = ({ kind, grams }: Row) =>
    kind === "flour" ? share * grams : kind === "water" ? (grams / water) * moved * hydration : 0;
  holds(
    "BAKE_STAGES",
    [weights, kinds, share, hydration],
    each(table, taken),
    each(table, (row) => row.grams - taken(row)),
  );
}

function waters(table: Table, typing: Typing): void {
  const { weights, kinds, names } = cellsOf(table, typing);
  const flour = sumOf(table, (row) => row.grams * row.flour);
  const water = sumOf(table, (row) => row.grams * row.moisture);
  const plain = sumOf(table, ({ kind, grams }) => (/^(water|ice)$/.test(kind) ? grams : 0));
  holds("BAKE_HYDRATION", [names, weights, kinds], [water / flour]);
  const wanted = Math.ceil((10 * (water - plain)) / flour) / 10 + 0.5;
  holds("BAKE_PLAINWATER", [names, weights, kinds, wanted], [wanted * flour - (water - plain)]);
}

test("tables in every way of typing: each figure is right, or the call is refused", () => {
  const typings = fc.record({ how: HOWS, way: WAYS, blank: BLANKS, times: fc.constantFrom(0.5, 1, 2.5) });
  fc.assert(
    fc.property(tables, typings, (table, typing) => {
      shares(table, typing);
      percentages(table, typing);
      scales(table, typing);
      stages(table, typing);
      waters(table, typing);
      // A weight below zero is never counted.
      const negative = cellsOf(table, typing).weights.map((cells, at) => (at === 0 ? [-5] : cells));
      expect(() => run("BAKE_TRUEPCT", negative)).toThrow(Refusal);
    }),
    { numRuns: tries(20), seed: seedOf(1720) },
  );
  const figures = total([...counts.values()].map(({ right }) => right));
  if (IS_LONG) console.log(figures, Object.fromEntries(counts));
  // About 400 in npm test, 20 000 in a long run, of every function some; and refusals are not what most of it is.
  expect(figures).toBeGreaterThan(tries(400));
  expect([...counts.keys()].length).toBe(10);
  for (const [name, { right, refused }] of counts)
    expect(right, `${name}: ${refused} refused`).toBeGreaterThan(refused);
});
