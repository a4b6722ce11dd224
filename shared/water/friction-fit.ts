import { refuse } from "../base/refusal.ts";
import { median, repeatedMedianSlope } from "../base/repeated-median.ts";
import { type AnyDegrees, anyDegrees, type Minutes } from "../base/units.ts";

/** Fewer readings than this carry no line. */
const MIN_MIXES = 3;

export type FrictionLine = {
  readonly atZero: AnyDegrees;
  readonly perMinute: AnyDegrees;
  readonly miss: AnyDegrees;
  readonly mixes: number;
};

/**
 * Friction factor against minutes of mixing as a line, by repeated medians (Siegel, Biometrika 69, 1982, from memory): nearly half of
 * the readings may be wild before the line is. Rows that lack either figure are skipped. `miss` is the median distance of a
 * reading from the line.
 */
export function frictionLine(
  minutes: readonly (Minutes | null)[],
  frictions: readonly (AnyDegrees | null)[],
): FrictionLine {
  const points = minutes.flatMap((x, row) => {
    const y = frictions[row] ?? null;
    return x === null || y === null ? [] : [{ x, y }];
  });
  if (points.length < MIN_MIXES) {
    refuse(
      `at least ${MIN_MIXES} mixes with both minutes and friction are needed, and ${points.length === 1 ? "there is 1" : `there are ${points.length}`}`,
    );
  }
  const perMinute = repeatedMedianSlope(points);
  const atZero = median(points.map(({ x, y }) => y - perMinute * x));
  const miss = median(points.map(({ x, y }) => Math.abs(y - perMinute * x - atZero)));
  return {
    atZero: anyDegrees(atZero),
    perMinute: anyDegrees(perMinute),
    miss: anyDegrees(miss),
    mixes: points.length,
  };
}
