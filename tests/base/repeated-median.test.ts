// The search for the middle slope against all slopes worked out one by one, and against figures by hand.
import { describe, expect, test } from "vitest";
import { median, type Point, repeatedMedianSlope } from "../../shared/base/repeated-median.ts";

/** Numbers that look random and are the same in every run (Park and Miller, Communications of the ACM 31, 1988). */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

const middle = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const [low, high] = [Math.ceil(sorted.length / 2) - 1, Math.floor(sorted.length / 2)];
  return ((sorted[low] ?? NaN) + (sorted[high] ?? NaN)) / 2;
};

/** As the definition has it: the median of the medians of each point's slopes to points of another x. */
const byDefinition = (points: readonly Point[]): number =>
  middle(
    points.map((from) => middle(points.filter(({ x }) => x !== from.x).map(({ x, y }) => (y - from.y) / (x - from.x)))),
  );

describe("few points, by hand", () => {
  test.each<[string, Point[], number]>([
    ["none", [], 0],
    ["one", [{ x: 3, y: 5 }], 0],
    [
      "all at one x",
      [
        { x: 2, y: 1 },
        { x: 2, y: 9 },
        { x: 2, y: 4 },
      ],
      0,
    ],
    [
      "two",
      [
        { x: 4, y: 1 },
        { x: 2, y: 7 },
      ],
      -3,
    ],
    // Slopes 1 and 3 from the first, 1 and 5 from the second, 3 and 5 from the third: medians 2, 3 and 4.
    [
      "three",
      [
        { x: 0, y: 0 },
        { x: 1, y: 1 },
        { x: 2, y: 6 },
      ],
      3,
    ],
  ])("%s", (_, points, slope) => {
    expect(repeatedMedianSlope(points)).toBe(slope);
  });

  test("the median of an odd number is the middle one, of an even number the mean of two", () => {
    expect(median([9, 1, 5])).toBe(5);
    expect(median([9, 1, 5, 6])).toBe(5.5);
    expect(median([7])).toBe(7);
  });
});

describe("any points, against the definition", () => {
  // Either side of where the search begins, odd and even.
  for (const many of [2, 3, 8, 9, 399, 400, 401, 402, 403, 640, 641]) {
    test.each([1, 2, 3, 4])(`${many} points, seed %i`, (seed) => {
      const next = numbers(100 * many + seed);
      // Of every second seed many points share an x; slopes lie far apart, so that the middle two of an even number differ.
      const place = () => (seed % 2 === 0 ? Math.floor(next() * Math.sqrt(many)) : 30 * next());
      const points = Array.from({ length: many }, () => {
        const x = place();
        return { x, y: 0.4 * x + 20 * (next() - 0.5) + (next() < 0.2 ? 500 * next() : 0) };
      });
      const wanted = byDefinition(points);
      const shared = points.every(({ x }) => x === points[0]?.x);
      expect(repeatedMedianSlope(points)).toBeCloseTo(shared ? 0 : wanted, 9);
    });
  }

  test("a straight line of many points has its slope", () => {
    const points = Array.from({ length: 1001 }, (_, at) => ({ x: at / 10, y: 7 - (3 * at) / 10 }));
    expect(repeatedMedianSlope(points)).toBeCloseTo(-3, 9);
  });

  test("points that lie in steps, half of them on one slope", () => {
    const points = Array.from({ length: 501 }, (_, at) => ({
      x: at % 25,
      y: at % 2 === 0 ? 2 * (at % 25) : 1000 - at,
    }));
    expect(repeatedMedianSlope(points)).toBeCloseTo(byDefinition(points), 9);
  });
});
