// The steps of a dough, counted back from the time it must be ready: the sums that the sheet's own formulas do.
import { countDown, countUp } from "../base/scaling.ts";
import { type Minutes, minutes } from "../base/units.ts";

export type Step = { readonly name: string; readonly minutes: Minutes };
/** Minutes from midnight of the day it is ready; below 0 on a day before. */
export type TimedStep = Step & { readonly start: Minutes };

export type Oven = {
  /** The step that stands in it. */
  readonly step: string;
  /** Trays or tins; null where nobody knows how many. */
  readonly count: number | null;
  /** At a time. */
  readonly takes: number | null;
  readonly reload: Minutes;
};

/** Whether two names mean the same step; a blank one means none. */
export const sameStep = (one: string, other: string): boolean =>
  one.trim().toLowerCase() === other.trim().toLowerCase() && one.trim() !== "";

/** One load after the other, with the time to change them between. */
export function ovenMinutes(baking: Minutes, { count, takes, reload }: Oven): Minutes {
  if (count === null || takes === null || !(takes > 0)) return baking;
  const loads = countUp(count / takes);
  return minutes(loads < 2 ? baking : baking + (loads - 1) * (baking + reload));
}

/** Each step with its start; the oven's step lasts as long as all its loads. */
export function countedBack(steps: readonly Step[], ready: Minutes, oven: Oven): TimedStep[] {
  const baking = steps.reduce((sum, step) => sum + (sameStep(step.name, oven.step) ? step.minutes : 0), 0);
  const inOven = ovenMinutes(minutes(baking), oven);
  let left = 0;
  const timed: TimedStep[] = [];
  for (const step of [...steps].reverse()) {
    const long = sameStep(step.name, oven.step) ? inOven : step.minutes;
    left += long;
    timed.unshift({ name: step.name, minutes: minutes(long), start: minutes(Math.round(ready) - Math.round(left)) });
  }
  return timed;
}

/** What ripens or rests for some hours until a step begins. */
export function ripeningBefore(
  timed: readonly TimedStep[],
  step: string,
  name: string,
  hours: number,
): TimedStep | null {
  const timedStep = timed.find((one) => sameStep(one.name, step));
  if (timedStep === undefined) return null;
  const long = Math.round(hours * 60);
  return { name, minutes: minutes(long), start: minutes(timedStep.start - long) };
}

/** Whole pieces from a dough. */
export const piecesFrom = (dough: number, each: number): number | null =>
  each > 0 ? countDown(Math.round((dough / each) * 1e6) / 1e6) : null;

/** Trays that so many pieces need. */
export const traysFor = (pieces: number | null, onTray: number | null): number | null =>
  pieces === null || onTray === null || !(onTray > 0) ? null : countUp(pieces / onTray);
