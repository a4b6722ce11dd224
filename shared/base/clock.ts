// Times of day and durations, as people type and read them.

import { readNumber } from "./number.ts";
import type { Fault } from "./refusal.ts";
import { quote } from "./show.ts";
import { type Minutes, minutes } from "./units.ts";

export const MINUTES_A_DAY = 1440;

const TIME = /^(\d{1,2})(?:\s*[:.h]\s*(\d{2})?)?(?:\s*(?:o'clock|uhr))?\s*([ap])?\.?\s*(?:m\.?)?$/i;

/** "7:00", "07.30", "7h30", "6:30 pm", "7": minutes after midnight. */
export function readTime(text: string): Minutes | Fault {
  const [, hours = "", past = "0", half] = TIME.exec(text.trim()) ?? [];
  const typed = hours === "" ? Number.NaN : Number(hours);
  const isTwelve = half !== undefined;
  if (Number.isNaN(typed) || Number(past) > 59 || typed > (isTwelve ? 12 : 23) || (isTwelve && typed === 0)) {
    return { says: `is ${quote(text.trim())}, which is no time of day; enter one such as 6:30` };
  }
  const hour = !isTwelve ? typed : (typed % 12) + (/p/i.test(half) ? 12 : 0);
  return minutes(hour * 60 + Number(past));
}

const HOURS = /^(.+?)\s*h(?:ours?|rs?)?\.?\s*(?:(\d{1,2})\s*(?:min(?:utes?|s)?\.?)?)?$/i;
const CLOCK = /^(\d{1,3}):(\d{2})$/;
const MAX_MINUTES = 14 * MINUTES_A_DAY;

/** "90", "90 min", "12 h", "1 h 30", "1:30": minutes. */
export function readDuration(text: string): Minutes | Fault {
  const bare = text.trim();
  const clock = CLOCK.exec(bare);
  const hours = HOURS.exec(bare);
  const reading = clock
    ? { value: Number(clock[1]) * 60 + Number(clock[2]) }
    : hours
      ? hoursAnd(hours[1] ?? "", hours[2])
      : readNumber(bare.replace(/\s*min(?:utes?|s)?\.?$/i, ""));
  if ("says" in reading) return { says: `is ${quote(bare)}, which ${reading.says}; enter minutes such as 90` };
  if (reading.value < 0 || reading.value > MAX_MINUTES)
    return { says: `is ${quote(bare)}; it lies between 0 minutes and 14 days` };
  return minutes(reading.value);
}

function hoursAnd(hours: string, past: string | undefined) {
  const reading = readNumber(hours);
  return "says" in reading ? reading : { value: reading.value * 60 + Number(past ?? 0) };
}

/** 330 is 05:30; a day before or after wraps round. */
export function shownTime(at: Minutes): string {
  const whole = Math.round(at);
  const day = ((whole % MINUTES_A_DAY) + MINUTES_A_DAY) % MINUTES_A_DAY;
  return `${two(Math.floor(day / 60))}:${two(day % 60)}`;
}

/** 0 is the day it is ready, -1 the day before. */
export const dayOf = (at: Minutes): number => Math.floor(Math.round(at) / MINUTES_A_DAY);

/** 90 is "1 h 30 min". */
export function shownDuration(long: Minutes): string {
  const whole = Math.round(long);
  const [hours, past] = [Math.floor(whole / 60), whole % 60];
  return [hours > 0 ? `${hours} h` : "", past > 0 || hours === 0 ? `${past} min` : ""].filter(Boolean).join(" ");
}

const two = (value: number) => String(value).padStart(2, "0");
