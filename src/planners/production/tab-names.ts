// What the tabs of a production are called: no two productions or shifts share a name, so that none takes another's place.
import { clockText, dayOf, dayWords } from "../../../shared/production/clock.ts";
import type { Night } from "./night.ts";
import type { ProductionNow } from "./production-now.ts";

/** By its production's tab, which no other sheet is called: "By customer Sat 5 Dec", or "By customer, Wholesale". */
export function nameOf(kind: string, { tab }: Pick<ProductionNow, "tab">): string {
  const days = daysIn(tab.name);
  return days === undefined ? `${kind}, ${tab.name}` : `${kind} ${days}`;
}

/** By the beginning of its shift and its production: "Weigh-up Fri 4 Dec 20.00 for Sat 5 Dec". */
export function nameOfShift(kind: string, { now, shift }: Pick<Night, "now" | "shift">): string {
  if (shift === null) return nameOf(kind, now);
  const begins = `${kind} ${dayWords(dayOf(shift.from))} ${clockText(shift.from).replace(":", ".")}`;
  return nameOf(daysIn(now.tab.name) === undefined ? begins : `${begins} for`, now);
}

/** Behind the word that a production's name begins with, unless somebody called it otherwise. */
const daysIn = (name: string): string | undefined => /^Production (.+)$/.exec(name)?.[1];

/** The words by which a sheet of a shift says whose it is, at its beginning and at its end: a later end of the shift takes its place. */
export function shiftWords({ now, shift }: Pick<Night, "now" | "shift">): { begins: string; ends: string } {
  if (shift === null) return { begins: "For ", ends: now.tab.name };
  return { begins: `Shift from ${momentWords(shift.from)}`, ends: `out of “${now.tab.name}”` };
}

export function shiftSays(night: Pick<Night, "now" | "shift">): string {
  const { begins, ends } = shiftWords(night);
  return night.shift === null ? `${begins}${ends}` : `${begins} to ${momentWords(night.shift.to)}, ${ends}`;
}

const momentWords = (at: NonNullable<Night["shift"]>["from"]): string => `${dayWords(dayOf(at))} ${clockText(at)}`;
