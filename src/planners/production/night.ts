// What a production sheet and its formula sheets say together: doughs by day, their steps by the clock, machines and levain.
import { refuse } from "../../../shared/base/refusal.ts";
import { batchCodes } from "../../../shared/production/batch-code.ts";
import type { Change, Clash } from "../../../shared/production/clashes.ts";
import { type Clock, type ClockChange, clockChanges, clockOf } from "../../../shared/production/clock.ts";
import { type DoughDay, type Production, productionOf } from "../../../shared/production/plan.ts";
import { inShift, type Task } from "../../../shared/production/timetable.ts";
import { type FormulaSheets, overAllSheets } from "../all-sheets.ts";
import type { Overview } from "../overview.ts";
import type { Steps } from "../steps.ts";
import { levainsOf } from "./formula.ts";
import { doughsFor, type OwnPart, plannedAll, takerOf } from "./parts.ts";
import { readDay } from "./production-ask.ts";
import type { DoughNow, ProductionNow } from "./production-now.ts";
import { readProduction } from "./read.ts";

export type Night = {
  readonly now: ProductionNow;
  readonly all: FormulaSheets;
  readonly plan: Production;
  /** What would be taken twice if a dough began earlier by so many minutes than it does, on all days. */
  readonly clashesAfter: (change: Change) => readonly Clash[];
  readonly parts: readonly OwnPart[];
  /** From one clock to just before the other; null where the whole production is meant. */
  readonly shift: { readonly from: Clock; readonly to: Clock } | null;
  readonly changes: readonly ClockChange[];
};

type Raw = Readonly<Record<string, unknown>>;

/** Reads all of it, and whether there are ranges of these names, and makes something of it. */
export function* overNight<T>(
  question: Raw,
  build: (night: Night) => Steps<T>,
  names: readonly string[] = [],
): Steps<T> {
  const now = yield* readProduction(typeof question.sheet === "string" ? question.sheet : "");
  const shift = readShift(question);
  return yield* overAllSheets({ names }, (all) => build(nightOf(now, all, shift)));
}

function nightOf(now: ProductionNow, all: FormulaSheets, shift: Night["shift"]): Night {
  const sheets = now.doughs.map(({ name }) => sheetOf(all, name));
  const { doughs, parts } = doughsFor(
    now.items.map(({ product }) => sheetOf(all, product)),
    all.sheets,
  );
  mustPlan(now, doughs, parts, all.sheets);
  const formulas = plannedAll(sheets, all.sheets, parts);
  const [first, last] = [now.days[0] ?? 0, now.days[now.days.length - 1] ?? 0];
  const changes = clockChanges(first - 7, last + 2, offsetHere);
  const codeOf = batchCodes(all.inListOrder);
  const earlierBy = (change: Change | null) =>
    new Map(
      now.doughs.flatMap(({ name, earlier }) =>
        now.days.map((day): [string, number] => [
          codeOf(name, day),
          earlier + (change?.dough === name ? change.earlier : 0),
        ]),
      ),
    );
  const input = {
    days: now.days,
    orders: now.orders,
    formulas,
    making: now.making,
    machines: now.machines,
    codeOf,
    levains: now.levains.map(({ levain }) => levain),
    changes,
  };
  const plan = productionOf({ ...input, earlier: earlierBy(null) });
  const clashesAfter = (change: Change) => productionOf({ ...input, earlier: earlierBy(change) }).clashes;
  mustAgree(now, plan);
  return { now, all, plan, clashesAfter, parts, shift, changes };
}

export function sheetOf(all: FormulaSheets, name: string): Overview {
  const sheet = all.sheets.find((one) => one.name === name);
  return sheet ?? refuse(`There is no formula sheet “${name}” any more. Build the production again.`);
}

/** A formula may have got an ingredient with a sheet of its own since the production was built. */
export function mustPlan(
  { tab, doughs: planned, levains }: ProductionNow,
  doughs: readonly Overview[],
  parts: readonly OwnPart[],
  all: readonly Overview[],
): void {
  const other = doughs.find(({ name }) => !planned.some((one) => one.name === name));
  if (other !== undefined)
    refuse(`“${takerOf(other, parts)}” is made of “${other.name}”, which “${tab.name}” does not plan. Build it again.`);
  for (const sheet of doughs)
    for (const { from } of levainsOf(sheet, all))
      if (!levains.some(({ levain }) => levain.name === from))
        refuse(`“${sheet.name}” takes “${from}”, which “${tab.name}” does not feed. Build it again.`);
}

/** By how many minutes the wall is ahead of the world's time where the page is open. */
function offsetHere(worldMinutes: number): number {
  const date = new Date((worldMinutes - 25_569 * 1440) * 60_000);
  return -date.getTimezoneOffset();
}

/** The sheet's own sums and the plan's are the same, or one of them is still being worked out. */
function mustAgree({ tab, doughs, days }: ProductionNow, { doughs: plan }: Production): void {
  for (const { name, mixed } of doughs)
    days.forEach((day, at) => {
      const planned = plan.find((one) => one.formula.name === name && one.day === day)?.batch.dough ?? 0;
      const shown = mixed[at]?.value ?? 0;
      if (Math.abs(planned - shown) > 1e-4 * Math.max(1, shown))
        refuse(
          `“${tab.name}” shows ${Math.round(shown)} of dough for “${name}”, and its orders ask for ${Math.round(planned)}. Wait until it is calculated, or undo what was typed over its formulas.`,
        );
    });
}

/** Times such as 2026-01-01T22:00. */
export function readShift({ from, to }: Raw): Night["shift"] {
  if (from === undefined && to === undefined) return null;
  const [start, end] = [readClock(from), readClock(to)];
  if (start === null || end === null)
    return refuse("Enter the day and the time from which and until which the shift works.");
  if (end <= start) return refuse("The shift ends before it begins. Enter a later end.");
  return { from: start, to: end };
}

function readClock(raw: unknown): Clock | null {
  const [, day, hours, minutes] = /^(\d{4}-\d\d-\d\d)T(\d\d):(\d\d)/.exec(String(raw)) ?? [];
  const at = readDay(day);
  const time = Number(hours) * 60 + Number(minutes);
  return at === null || !(time < 1440) ? null : clockOf(at, time / 1440);
}

/** Steps of a dough that begin in the shift. */
export const ownTasks = ({ shift, changes }: Night, { tasks }: DoughDay): readonly Task[] =>
  shift === null ? tasks : inShift(tasks, shift.from, shift.to, changes);

/** Figures of the production sheet for a dough of a day. */
export function figuresOf({ now }: Night, { formula, day }: Pick<DoughDay, "formula" | "day">) {
  const at = now.days.indexOf(day);
  const dough = now.doughs.find(({ name }) => name === formula.name) as DoughNow;
  return { mixes: dough.mixes[at], each: dough.each[at], mixed: dough.mixed[at] };
}
