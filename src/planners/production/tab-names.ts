// What the tabs of a production are called, and how a sheet says whose it is, so that none takes the place of another's.
// A name has 31 characters at most where nobody called a sheet otherwise: an .xlsx file takes no more.
import { clockText, dayOf, dayWords } from "../../../shared/production/clock.ts";
import type { Night } from "./night.ts";
import type { ProductionNow } from "./production-now.ts";

/** By its production's tab, which no other sheet is called: "By customer Sat 5 Dec", or "By customer, Wholesale". */
export function nameOf(kind: string, { tab }: Pick<ProductionNow, "tab">): string {
  const days = daysIn(tab.name);
  return days === undefined ? `${kind}, ${tab.name}` : `${kind} ${days}`;
}

/** By the beginning of its shift, with the number of its production's tab: "Weigh-up Fri 4 Dec 20.00 (2)". */
export function nameOfShift(kind: string, { now, shift }: Pick<Night, "now" | "shift">): string {
  if (shift === null) return nameOf(kind, now);
  const [number = ""] = / \(\d+\)$/.exec(now.tab.name) ?? [];
  return `${kind} ${momentWords(shift.from).replace(":", ".")}${number}`;
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
