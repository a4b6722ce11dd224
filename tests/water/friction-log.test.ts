import fc from "fast-check";
import { describe, test } from "vitest";
import { cells } from "../enrichment/support.ts";
import { down, expectCells } from "../functions/support.ts";
import { seedOf, tries } from "../kit/scale.ts";

const middle = (values: readonly number[]) => {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? (sorted[half] ?? 0) : ((sorted[half - 1] ?? 0) + (sorted[half] ?? 0)) / 2;
};

/** Repeated medians as they are defined (Siegel, Biometrika 69, 1982, from memory), slope by slope. */
function bySlopes(times: readonly number[], read: readonly number[]): readonly number[] {
  const points = times.map((x, row) => ({ x, y: read[row] ?? 0 }));
  const slopes = points.flatMap((one) => {
    const others = points.filter(({ x }) => x !== one.x);
    return others.length === 0 ? [] : [middle(others.map(({ x, y }) => (y - one.y) / (x - one.x)))];
  });
  const slope = slopes.length === 0 ? 0 : middle(slopes);
  const start = middle(points.map(({ x, y }) => y - slope * x));
  return [start, slope, middle(points.map(({ x, y }) => Math.abs(y - slope * x - start))), points.length];
}

const lineOf = (times: readonly number[], read: readonly number[]) =>
  cells("BAKE_FRICTIONFIT", down(...times), down(...read));

describe("a long log of mixes", () => {
  const minute = fc.oneof(
    fc.integer({ min: 1, max: 20 }),
    fc.constantFrom(4, 8),
    fc.integer({ min: 20, max: 300 }).map((tenths) => tenths / 10),
  );
  const scatter = fc.oneof(
    fc.integer({ min: -4, max: 4 }).map((halves) => halves / 2),
    fc.constantFrom(-60, 0, 0, 80),
  );

  test.each([399, 400, 401, 520, 751])("of %d is read as the definition says", (rows) => {
    const log = fc.array(fc.tuple(minute, scatter), { minLength: rows, maxLength: rows });
    fc.assert(
      fc.property(log, fc.double({ min: -1, max: 2, noNaN: true }), (mixes, slope) => {
        const times = mixes.map(([x]) => x);
        const read = mixes.map(([x, miss]) => 7 + slope * x + miss);
        expectCells(lineOf(times, read), bySlopes(times, read), 1e-8);
      }),
      { seed: seedOf(1982), numRuns: tries(8) },
    );
  });

  test("of ten thousand, with two fifths of the readings wild", () => {
    const times = Array.from({ length: 10_000 }, (_, row) => 2 + ((row * 7919) % 560) / 20);
    // Wild readings on both sides, so that neither drags.
    const read = times.map((x, row) => (row % 5 < 2 ? ([140, -120][row % 5] ?? 0) : 3 + 0.9 * x));
    const line = lineOf(times, read);
    expectCells(line, [3, 0.9, 0, 10_000], 1e-6);
  });
});
