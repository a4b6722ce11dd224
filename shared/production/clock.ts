// Moments of a production plan: whole minutes of a clock on the wall, and the minutes that really pass between two of them.

/** A clock on the wall: minutes from the midnight that begins day 0 of a spreadsheet (30 December 1899). */
export type Clock = number & { readonly __clock: unique symbol };
/** Minutes on a scale that nobody puts forward or back. */
export type Moment = number & { readonly __moment: unique symbol };

export const DAY_MINUTES = 1440;
export const clock = (value: number) => value as Clock;
const moment = (value: number) => value as Moment;

/** When the clocks of a place are changed: what the wall shows just before, and by how many minutes it goes forward. */
export type ClockChange = { readonly at: Clock; readonly forward: number };

/** The clock at a time of a spreadsheet's day; the time is a part of the day, 0.25 being 06:00. */
export const clockOf = (day: number, time: number): Clock => clock(day * DAY_MINUTES + Math.round(time * DAY_MINUTES));
export const dayOf = (at: Clock): number => Math.floor(at / DAY_MINUTES);
export const timeOf = (at: Clock): number => (at - dayOf(at) * DAY_MINUTES) / DAY_MINUTES;

/** As 05:40. */
export function clockText(at: Clock): string {
  const minutes = at - dayOf(at) * DAY_MINUTES;
  return [Math.floor(minutes / 60), minutes % 60].map((part) => String(part).padStart(2, "0")).join(":");
}

/** 0 on Monday, 6 on Sunday; day 2 of a spreadsheet was 1 January 1900, a Monday. */
export const weekdayOf = (day: number): number => (((day - 2) % 7) + 7) % 7;
export const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"] as const;

/** As 2026-12-05. */
export const isoOf = (day: number): string =>
  new Date(Date.UTC(1899, 11, 30) + day * 86_400_000).toISOString().slice(0, 10);

/** As Sat 5 Dec. */
export function dayWords(day: number): string {
  const date = new Date(Date.UTC(1899, 11, 30) + day * 86_400_000);
  const month = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"][
    date.getUTCMonth()
  ];
  return `${(WEEKDAYS[weekdayOf(day)] ?? "").slice(0, 3)} ${date.getUTCDate()} ${month}`;
}

/** The moment that a clock shows. A time that the clock skips counts as if it had not been put forward yet; of one that it shows twice the first counts. */
export function momentAt(at: Clock, changes: readonly ClockChange[]): Moment {
  let shift = 0;
  for (const change of changes) if (at >= change.at + Math.max(0, change.forward)) shift += change.forward;
  return moment(at - shift);
}

/** What the clock shows at a moment. */
export function clockAt(at: Moment, changes: readonly ClockChange[]): Clock {
  let shift = 0;
  for (const change of changes) if (at + shift >= change.at) shift += change.forward;
  return clock(at + shift);
}

/** The clock so many minutes earlier; they are minutes that pass, also where the clocks are changed between. */
export const minutesEarlier = (at: Clock, minutes: number, changes: readonly ClockChange[] = []): Clock =>
  changes.length === 0 ? clock(at - minutes) : clockAt(moment(momentAt(at, changes) - minutes), changes);

/** Minutes that pass from one clock to the other. */
export const minutesBetween = (from: Clock, to: Clock, changes: readonly ClockChange[] = []): number =>
  momentAt(to, changes) - momentAt(from, changes);

/**
 * The changes within some days. `offset` tells by how many minutes the wall is ahead of the world's time at a moment of that
 * (in minutes, from the same midnight).
 */
export function clockChanges(from: number, to: number, offset: (worldMinutes: number) => number): ClockChange[] {
  const changes: ClockChange[] = [];
  const step = 30;
  let known = offset(from * DAY_MINUTES);
  for (let at = from * DAY_MINUTES + step; at <= to * DAY_MINUTES; at += step) {
    const now = offset(at);
    if (now !== known) changes.push({ at: clock(at + known), forward: now - known });
    known = now;
  }
  return changes;
}

/** Says that the clocks are changed, on which night and which way. */
export function changeSays({ at, forward }: ClockChange): string {
  const way = forward > 0 ? "forward" : "back";
  return `The clocks go ${way} by ${Math.abs(forward)} min on ${dayWords(dayOf(at))} at ${clockText(at)}. Times here are what the clock shows, and the minutes between them are minutes that pass.`;
}
