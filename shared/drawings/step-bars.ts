// Steps as bars on one line of time. Pure: it knows places and words, no page.

import { dayOf, MINUTES_A_DAY, shownDuration, shownTime } from "../base/clock.ts";
import { minutes } from "../base/units.ts";
import type { TimedStep } from "../formula/steps.ts";

export type StepBar = {
  readonly name: string;
  /** "05:20" */
  readonly time: string;
  /** "the day before"; "" on the day it is ready. */
  readonly day: string;
  readonly takes: string;
  readonly left: number;
  readonly width: number;
};

export type StepBars = {
  readonly bars: readonly StepBar[];
  /** Where a day ends. */
  readonly midnights: readonly number[];
  readonly ready: string;
  /** All of it as sentences, for who cannot see it. */
  readonly says: string;
};

/** A bar is never too thin to be seen. */
const MIN_WIDTH = 2;

/** The steps on a line `width` long, the first at its start and the end of the last at its end; null without any. */
export function stepBars(timed: readonly TimedStep[], width: number): StepBars | null {
  if (timed.length === 0) return null;
  const first = Math.min(...timed.map(({ start }) => start));
  const last = Math.max(...timed.map(({ start, minutes: long }) => start + long));
  if (!(last > first)) return null;
  const scale = width / (last - first);
  const bars = timed.map(({ name, start, minutes: long }): StepBar => {
    const wide = Math.max(MIN_WIDTH, long * scale);
    return {
      name,
      time: shownTime(start),
      day: shownDay(dayOf(start)),
      takes: shownDuration(long),
      left: Math.min((start - first) * scale, width - wide),
      width: wide,
    };
  });
  const midnights: number[] = [];
  for (let at = (dayOf(minutes(first)) + 1) * MINUTES_A_DAY; at < last; at += MINUTES_A_DAY)
    midnights.push((at - first) * scale);
  const end = minutes(last);
  const sentences = bars.map(({ name, time, day, takes }) => `${spaced(time, day)} ${name}, ${takes}`);
  const ready = spaced(shownTime(end), shownDay(dayOf(end)));
  return { bars, midnights, ready, says: `${sentences.join("; ")}; ready at ${ready}.` };
}

const spaced = (time: string, day: string): string => (day === "" ? time : `${time} ${day}`);

function shownDay(day: number): string {
  if (day === 0) return "";
  if (day > 0) return day === 1 ? "the day after" : `${day} days after`;
  return day === -1 ? "the day before" : `${-day} days before`;
}
