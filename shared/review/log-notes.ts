// What a shop's own logs taught, in a sentence each: with how far the readings lie apart, and where they are too few to go by.
import { showNumber, shownShare } from "../base/show.ts";

/** The line through the mixes of a log, on three temperatures. */
export type FrictionLine = {
  readonly zero: number;
  readonly perMinute: number;
  /** Typical distance of a mix from the line. */
  readonly miss: number;
  readonly mixes: number;
  readonly unit: "C" | "F";
};

/** Below so many a single bad reading can still tip the line. */
const ENOUGH_MIXES = 5;
/** A friction factor is read off thermometers of half a degree, three or four of them (common practice, no source). */
const SCATTERED = { C: 3, F: 5.4 } as const;

/** For a dough that is mixed so long and weighed by so many temperatures. */
export function frictionSays(line: FrictionLine, minutes: number | null, temperatures: 3 | 4): string {
  const { zero, perMinute, miss, mixes, unit } = line;
  const times = temperatures / 3;
  const factor = minutes === null ? null : (zero + perMinute * minutes) * times;
  const value =
    factor === null
      ? `${showNumber(zero, 1)}, and ${showNumber(perMinute, 2)} more for each minute of mixing`
      : `${showNumber(factor, 1)} °${unit} at ${showNumber(minutes ?? 0, 1)} min`;
  const figure = `${value}, from ${mixes} mixes that lie ${showNumber(miss * times, 1)} °${unit} off it typically.`;
  if (mixes < ENOUGH_MIXES) return `${figure} That is too few to go by: log ${ENOUGH_MIXES} mixes.`;
  if (miss > SCATTERED[unit])
    return `${figure} They lie too far apart to go by: check the thermometers and the minutes.`;
  return figure;
}

/** Weights or counts before and after, of one bake each. */
export type Loss = { readonly before: number; readonly after: number };
const ENOUGH_BAKES = 3;
/** Losses of one product that lie further apart than this are more likely slips than bakes (common practice, no source). */
const WIDE = 0.06;

/** The loss over all bakes, as the log has it, and those of single bakes that lie furthest apart. */
export function lossSays(losses: readonly Loss[]): string | null {
  const usable = losses.filter(({ before, after }) => before > 0 && after >= 0);
  if (usable.length === 0) return null;
  const sum = (of: (one: Loss) => number) => usable.reduce((all, one) => all + of(one), 0);
  const overall = 1 - sum(({ after }) => after) / sum(({ before }) => before);
  const each = usable.map(({ before, after }) => 1 - after / before);
  const [least, most] = [Math.min(...each), Math.max(...each)];
  const bakes =
    usable.length === 1 ? "one bake" : `${usable.length} bakes, from ${shownShare(least, 1)} to ${shownShare(most, 1)}`;
  const loss = `${shownShare(overall, 1)} over ${bakes}.`;
  if (usable.length < ENOUGH_BAKES) return `${loss} That is too few to go by: log ${ENOUGH_BAKES} bakes.`;
  if (most - least > WIDE) return `${loss} They lie too far apart to go by: look for a slip in the log.`;
  return loss;
}
