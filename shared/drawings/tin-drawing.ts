// The upright section of a tin, in centimetres: pure numbers, drawn elsewhere.

import { type Centimetres, type CubicCentimetres, centimetres, cubicCentimetres } from "../base/units.ts";
import { type TinShape, tinCapacity } from "../tins/tin.ts";

/** A point of a section: x from its left edge, y from its bottom, cm. */
export type Point = readonly [x: number, y: number];

export type TinSection = {
  readonly width: number;
  readonly depth: number;
  /** The hollow as one polygon, or as two either side of a tube. */
  readonly hollows: readonly (readonly Point[])[];
  /** False where only the capacity is known. */
  readonly toScale: boolean;
};

type Sizes = readonly (Centimetres | null)[];

const trapezoid = (left: number, width: number, depth: number, base: number, shift = (width - base) / 2): Point[] => [
  [left, depth],
  [left + shift, 0],
  [left + shift + base, 0],
  [left + width, depth],
];

/** The bottom of a circle of this radius up to `depth`, its lowest point at (middle, 0), from the left rim to the right. */
function bowl(middle: number, radius: number, depth: number): Point[] {
  const steps = 32;
  const half = Math.acos(Math.max(-1, 1 - depth / radius));
  return Array.from({ length: steps + 1 }, (_, step) => {
    const angle = -half + (2 * half * step) / steps;
    return [middle + radius * Math.sin(angle), radius * (1 - Math.cos(angle))];
  });
}

/** The section along a tin's length or through its middle; sizes as tinCapacity takes them, which has checked them. */
export function tinSection(shape: TinShape, sizes: Sizes): TinSection {
  const [a = 0, b = 0, c = 0, d = a, e = b] = sizes.map((size) => size ?? 0);
  const solid = (width: number, depth: number, ...hollows: Point[][]) => ({ width, depth, hollows, toScale: true });
  switch (shape) {
    case "box":
    case "oval": {
      const width = Math.max(a, d);
      return solid(width, c, trapezoid((width - a) / 2, a, c, d));
    }
    case "round": {
      const base = sizes.length > 2 ? c : a;
      const width = Math.max(a, base);
      return solid(width, b, trapezoid((width - a) / 2, a, b, base));
    }
    case "ring": {
      const width = Math.max(a, d);
      const trough = { rim: (a - b) / 2, base: (d - e) / 2 };
      const left = trapezoid((width - a) / 2, trough.rim, c, trough.base, (a - d) / 2);
      return solid(width, c, left, mirrored(left, width));
    }
    case "dome": {
      const rim = a / 2;
      const depth = sizes.length > 1 ? b : rim;
      return solid(a, depth, bowl(rim, (rim ** 2 + depth ** 2) / (2 * depth), depth));
    }
    case "wreath": {
      const left = bowl(b / 2, b / 2, b / 2);
      return solid(a, b / 2, left, mirrored(left, a));
    }
    case "polygon": {
      const across = a % 2 === 0 ? b / Math.sin(Math.PI / a) : b / (2 * Math.sin(Math.PI / (2 * a)));
      return solid(across, c, trapezoid(0, across, c, across));
    }
    case "water":
      return { width: 16, depth: 9, hollows: [trapezoid(0, 16, 9, 16)], toScale: false };
  }
}

const mirrored = (points: readonly Point[], width: number): Point[] =>
  points.map(([x, y]): Point => [width - x, y]).reverse();

/** What the tin holds up to a height, as a tin cut off there holds it. */
export function capacityBelow(shape: TinShape, sizes: Sizes, height: Centimetres): CubicCentimetres {
  const { depth } = tinSection(shape, sizes);
  const part = Math.min(1, Math.max(0, height / depth));
  if (part === 0) return cubicCentimetres(0);
  const h = centimetres(part * depth);
  const [a = 0, b = 0, c = 0, d = a, e = b] = sizes.map((size) => size ?? 0);
  const at = (base: number, rim: number) => centimetres(base + (rim - base) * part);
  const cut = (...rest: number[]) => tinCapacity(shape, rest.map(centimetres));
  switch (shape) {
    case "box":
    case "oval":
      return cut(at(d, a), at(e, b), h, d, e);
    case "round": {
      const base = sizes.length > 2 ? c : a;
      return cut(at(base, a), h, base);
    }
    case "ring":
      return cut(at(d, a), at(e, b), h, d, e);
    case "dome": {
      const radius = ((a / 2) ** 2 + depth ** 2) / (2 * depth);
      return cut(2 * Math.sqrt(h * (2 * radius - h)), h);
    }
    case "wreath": {
      const angle = Math.acos(1 - part);
      const share = (angle - Math.sin(angle) * Math.cos(angle)) / (Math.PI / 2);
      return cubicCentimetres(tinCapacity(shape, sizes) * share);
    }
    case "polygon":
      return cut(a, b, h);
    case "water":
      return cubicCentimetres(tinCapacity(shape, sizes) * part);
  }
}

/** How high a volume stands in the tin; what does not fit stands at the rim. */
export function levelOf(shape: TinShape, sizes: Sizes, volume: CubicCentimetres): Centimetres {
  const { depth } = tinSection(shape, sizes);
  let [low, high] = [0, depth];
  for (let step = 0; step < 48; step++) {
    const middle = (low + high) / 2;
    if (capacityBelow(shape, sizes, centimetres(middle)) < volume) low = middle;
    else high = middle;
  }
  return centimetres(high);
}

/** The part of a polygon at or below a height. */
export function below(points: readonly Point[], height: number): Point[] {
  return points.flatMap((from, index) => {
    const to = points[(index + 1) % points.length] ?? from;
    const corners: Point[] = from[1] <= height ? [from] : [];
    if (from[1] <= height !== to[1] <= height) {
      const part = (height - from[1]) / (to[1] - from[1]);
      corners.push([from[0] + (to[0] - from[0]) * part, height]);
    }
    return corners;
  });
}

/** Heights of labels beside their marks, in order from the top, moved apart to at least `gap`, between 0 and `most`. */
export function apart(wanted: readonly number[], gap: number, most: number): number[] {
  const positions = wanted.map((one) => Math.min(most, Math.max(0, one)));
  for (let index = 1; index < positions.length; index++) {
    positions[index] = Math.max(positions[index] ?? 0, (positions[index - 1] ?? 0) + gap);
  }
  let limit = most;
  for (let index = positions.length - 1; index >= 0; index--) {
    positions[index] = Math.min(positions[index] ?? 0, limit);
    limit = (positions[index] ?? 0) - gap;
  }
  return positions;
}
