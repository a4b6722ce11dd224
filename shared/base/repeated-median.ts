/** A reading: how long, and what came of it. */
export type Point = { readonly x: number; readonly y: number };

/** Up to so many points all slopes are simply worked out; beyond, only those of a few points are. */
const FEW = 400;
/** Slopes this near to one another, for their size, are one slope. */
const ALIKE = 1e-12;

/** The middle value; of an even number the mean of the middle two. Needs at least one. */
export function median(values: readonly number[] | Float64Array): number {
  const sorted = Float64Array.from(values).sort();
  const half = Math.floor(sorted.length / 2);
  const upper = sorted[half] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? 0) + upper) / 2;
}

/**
 * The median over all points of the median slope to the points of another x (Siegel, Biometrika 69, 1982, from memory); 0
 * when all share one x. Near enough n · log² n steps for n points: a point's own median slope is worked out only where the
 * search for the middle one needs it.
 */
export function repeatedMedianSlope(points: readonly Point[]): number {
  const sorted = [...points].sort((a, b) => a.x - b.x);
  if (sorted.length === 0 || sorted[0]?.x === sorted[sorted.length - 1]?.x) return 0;
  const medians = ownMedians(sorted);
  if (sorted.length <= FEW) return median(sorted.map((_, at) => medians(at)));
  const middle = Math.floor(sorted.length / 2);
  const upper = nthSmallest(sorted, medians, middle);
  return sorted.length % 2 === 1 ? upper : (nthSmallest(sorted, medians, middle - 1) + upper) / 2;
}

/** The median slope from one point to those of another x, each worked out once. */
function ownMedians(points: readonly Point[]): (at: number) => number {
  const known = new Map<number, number>();
  return (at) => {
    const before = known.get(at);
    if (before !== undefined) return before;
    const from = points[at] ?? { x: 0, y: 0 };
    const slopes: number[] = [];
    for (const { x, y } of points) if (x !== from.x) slopes.push((y - from.y) / (x - from.x));
    const midSlope = median(slopes);
    known.set(at, midSlope);
    return midSlope;
  };
}

/** Of the points' own medians the nth smallest, counted from 0: those of a pivot part the others, as in quickselect. */
function nthSmallest(points: readonly Point[], slopeOf: (at: number) => number, nth: number): number {
  let left = points.map((_, at) => at);
  let rank = nth;
  while (left.length > 1) {
    const thirds = [0.21, 0.5, 0.79].map((part) => slopeOf(left[Math.floor(part * left.length)] ?? 0));
    const pivot = median(thirds);
    const margin = ALIKE * (1 + Math.abs(pivot));
    const isBelow = areBelow(points, slopeOf, pivot - margin);
    const isUpTo = areBelow(points, slopeOf, pivot + margin);
    const below = left.filter(isBelow);
    const above = left.filter((at) => !isUpTo(at));
    const notAbove = left.length - above.length;
    const next = rank < below.length ? below : rank >= notAbove ? above : [];
    // What rounding leaves undecided is the pivot to a billionth.
    if (next.length === 0 || next.length === left.length) return pivot;
    if (next === above) rank -= notAbove;
    left = next;
  }
  return slopeOf(left[0] ?? 0);
}

/**
 * Whether a point's own median is below a slope. A line of that slope through the point has the points of a lesser slope
 * under it on the right and over it on the left, so that counting residuals tells without working out any slope.
 */
function areBelow(points: readonly Point[], slopeOf: (at: number) => number, slope: number): (at: number) => boolean {
  const residuals = Float64Array.from(points, ({ x, y }) => y - slope * x);
  const order = Float64Array.from(residuals).sort();
  const under = Uint32Array.from(residuals, (one) => firstNotBelow(order, one));
  const lesser = new Uint32Array(points.length);
  const others = new Uint32Array(points.length);
  const counts = new Uint32Array(points.length + 1);
  for (let start = 0, end = 0; start < points.length; start = end) {
    while (end < points.length && points[end]?.x === points[start]?.x) end++;
    for (let at = start; at < end; at++) lesser[at] = start - countedBelow(counts, (under[at] ?? 0) + 1);
    for (let at = start; at < end; at++) count(counts, under[at] ?? 0);
    for (let at = start; at < end; at++) {
      const rank = under[at] ?? 0;
      lesser[at] = (lesser[at] ?? 0) + rank - countedBelow(counts, rank);
      others[at] = points.length - (end - start);
    }
  }
  return (at) => {
    const [less = 0, half = 0] = [lesser[at], (others[at] ?? 0) / 2];
    // Of an even number the two middle slopes may lie on either side.
    return less === half ? slopeOf(at) < slope : less > half;
  };
}

/** How many of the sorted values are below one. */
function firstNotBelow(sorted: Float64Array, value: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((sorted[middle] ?? 0) < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Binary indexed sums (Fenwick, Software: Practice and Experience 24, 1994, from memory). */
function count(sums: Uint32Array, rank: number): void {
  for (let at = rank + 1; at < sums.length; at += at & -at) sums[at] = (sums[at] ?? 0) + 1;
}

function countedBelow(sums: Uint32Array, rank: number): number {
  let total = 0;
  for (let at = rank; at > 0; at -= at & -at) total += sums[at] ?? 0;
  return total;
}
