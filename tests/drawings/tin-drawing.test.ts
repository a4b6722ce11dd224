import { describe, expect, test } from "vitest";
import { type Centimetres, centimetres, cubicCentimetres } from "../../shared/base/units.ts";
import { apart, below, capacityBelow, levelOf, type Point, tinSection } from "../../shared/drawings/tin-drawing.ts";
import { type TinShape, tinCapacity } from "../../shared/tins/tin.ts";

const TINS: readonly [TinShape, readonly number[]][] = [
  ["box", [24.5, 12, 7.5, 22.5, 10]],
  ["box", [21, 11, 9]],
  ["round", [23, 7, 20]],
  ["round", [20, 10]],
  ["ring", [24, 8, 9, 20, 6]],
  ["oval", [30, 20, 6, 26, 16]],
  ["dome", [20]],
  ["dome", [20, 6]],
  ["wreath", [24, 8]],
  ["polygon", [6, 10, 5]],
  ["water", [1520]],
];
const cm = (sizes: readonly number[]) => sizes.map(centimetres) as Centimetres[];

describe.each(TINS)("%s %j", (shape, numbers) => {
  const sizes = cm(numbers);
  const { depth, width, hollows } = tinSection(shape, sizes);

  test("is full at the rim and empty at the bottom", () => {
    expect(capacityBelow(shape, sizes, centimetres(depth))).toBeCloseTo(tinCapacity(shape, sizes), 6);
    expect(capacityBelow(shape, sizes, centimetres(0))).toBe(0);
  });

  test("a level holds its volume", () => {
    for (const part of [0.1, 0.35, 0.5, 0.9]) {
      const volume = cubicCentimetres(part * tinCapacity(shape, sizes));
      expect(capacityBelow(shape, sizes, levelOf(shape, sizes, volume))).toBeCloseTo(volume, 4);
    }
    expect(levelOf(shape, sizes, cubicCentimetres(1e6))).toBeCloseTo(depth, 9);
  });

  test("its section reaches from edge to edge and from bottom to rim", () => {
    const points = hollows.flat();
    const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
    expect([Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)].map((one) => one + 0)).toEqual(
      [0, width, 0, depth].map((one) => expect.closeTo(one, 9)),
    );
  });
});

// A tin's volume up to a height by slices, from the shape alone.
const slices = (height: number, area: (at: number) => number) => {
  const many = 4000;
  return (
    Array.from({ length: many }, (_, at) => area(((at + 0.5) * height) / many)).reduce((a, b) => a + b, 0) *
    (height / many)
  );
};

test.each<[string, TinShape, number[], number, number]>([
  ["tapered box", "box", [24.5, 12, 7.5, 22.5, 10], 3, slices(3, (h) => (22.5 + (2 * h) / 7.5) * (10 + (2 * h) / 7.5))],
  ["tapered round", "round", [23, 7, 20], 2, slices(2, (h) => (Math.PI / 4) * (20 + (3 * h) / 7) ** 2)],
  [
    "tapered ring",
    "ring",
    [24, 8, 9, 20, 6],
    4,
    slices(4, (h) => (Math.PI / 4) * ((20 + (4 * h) / 9) ** 2 - (6 + (2 * h) / 9) ** 2)),
  ],
  ["half a sphere at half its height holds 5/16", "dome", [20], 5, (5 / 16) * (2 / 3) * Math.PI * 1000],
  ["flat dome", "dome", [20, 6], 2, slices(2, (h) => Math.PI * h * (2 * ((100 + 36) / 12) - h))],
  ["half a torus", "wreath", [24, 8], 2, slices(2, (h) => 2 * Math.PI * 8 * 2 * Math.sqrt(16 - (4 - h) ** 2))],
  ["hexagon", "polygon", [6, 10, 5], 2, 2 * ((3 * Math.sqrt(3)) / 2) * 100],
])("%s", (_, shape, sizes, height, expected) => {
  expect(capacityBelow(shape, cm(sizes), centimetres(height)) / expected).toBeCloseTo(1, 5);
});

test("a section cut at a level keeps what is below", () => {
  const square: Point[] = [
    [0, 4],
    [0, 0],
    [4, 0],
    [4, 4],
  ];
  expect(below(square, 1)).toEqual([
    [0, 1],
    [0, 0],
    [4, 0],
    [4, 1],
  ]);
  expect(below(square, 4)).toEqual(square);
  expect(below(square, -1)).toEqual([]);
});

test("labels move apart, in their order and inside", () => {
  expect(apart([10, 12, 40], 14, 100)).toEqual([10, 24, 40]);
  expect(apart([90, 95, 99], 14, 100)).toEqual([72, 86, 100]);
  expect(apart([10, 40, 80], 14, 100)).toEqual([10, 40, 80]);
});
