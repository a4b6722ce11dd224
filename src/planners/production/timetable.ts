// The timetable of a production or a shift, with what is taken twice at once and the change that ends it.

import { dayNumber } from "../../../shared/base/days.ts";
import { refuse } from "../../../shared/base/refusal.ts";
import { showNumber } from "../../../shared/base/show.ts";
import { type Change, changeFor } from "../../../shared/production/clashes.ts";
import {
  type Clock,
  changeSays,
  clockAt,
  clockText,
  dayOf,
  dayWords,
  type Moment,
} from "../../../shared/production/clock.ts";
import { unripe } from "../../../shared/production/levain.ts";
import type { Task } from "../../../shared/production/timetable.ts";
import type { NewSheet } from "../../../shared/protocol/plan-message.ts";
import type { Links, Value } from "../../../shared/sheet/model.ts";
import { plan } from "../../../shared/sheet/plan.ts";
import { linkName } from "../../../templates/production/shape.ts";
import {
  type TimetableRow,
  type TimetableShape,
  timetableSheet,
  timetableTexts,
} from "../../../templates/production/timetable.ts";
import { make, type Steps } from "../steps.ts";
import { temperatureIn } from "./day-water.ts";
import { type Night, overNight, ownTasks, sheetOf } from "./night.ts";
import type { Figure, ProductionNow } from "./production-now.ts";
import { nameOfShift, shiftSays, shiftWords } from "./tab-names.ts";

export function* buildTimetable(question: Readonly<Record<string, unknown>>, at: Date): Steps<NewSheet> {
  return yield* overNight(question, (night) => timetable(night, at));
}

function* timetable(night: Night, at: Date): Steps<NewSheet> {
  const { now, all, plan: production } = night;
  const tasks = production.doughs.flatMap((dough) => ownTasks(night, dough));
  if (tasks.length === 0)
    refuse(
      "No steps are known for this shift. Enter a method and “Ready at” on the formula sheets, or choose other hours.",
    );
  const figures = compared(night);
  const shape: TimetableShape = {
    says: shiftSays(night),
    asOf: `As of ${dayWords(dayNumber(at))} ${clockText((at.getHours() * 60 + at.getMinutes()) as Clock)}. These times stay as they are. If orders or a method change, build the timetable again: it takes the place of this one.`,
    days: daysOf(night, tasks),
    clashes: clashWords(night),
    feeds: feedRows(night),
    facts: factsOf(night),
    compared: figures.length,
  };
  const values: Record<string, Value> = { title: "Timetable", ...timetableTexts(shape) };
  const links: Record<string, string> = {};
  figures.forEach(({ value, at: link }, index) => {
    values[`planned_${index + 1}`] = value;
    links[linkName("now", index)] = link;
  });
  const temperature = temperatureIn(now.doughs.map(({ name }) => sheetOf(all, name)));
  const options = { weight: now.unit, temperature, length: "cm", parts: [] } as const;
  const title = nameOfShift("Timetable", night);
  return yield* make(plan(timetableSheet(shape), options, values, links as Links), title, [...all.tabs, now.tab], {
    renews: { cell: "A2", ...shiftWords(night) },
  });
}

/** Figures that no timetable of another plan has, as they are now and as a formula follows them. */
function compared({ now, all }: Night): Figure[] {
  const doughs = now.doughs.map(({ name, whole, wholeRow, earlier, earlierAt }): Figure => {
    const sheet = sheetOf(all, name);
    const minutes = sheet.figures("step_minutes").reduce<number>((sum, one) => sum + (one ?? 0), 0);
    const [ready, steps] = [sheet.reference("ready_minutes"), sheet.reference("step_minutes")];
    return {
      value:
        whole.reduce((sum, { value }, at) => sum + value * (now.days[at] ?? 0), 0) +
        earlier +
        (sheet.number("ready_minutes") ?? 0) +
        minutes,
      at: `SUMPRODUCT(${wholeRow}*${now.dayRow})+N(${earlierAt})${ready === undefined ? "" : `+N(${ready})`}${steps === undefined ? "" : `+SUM(${steps})`}`,
    };
  });
  const figures = [...doughs, ...now.typedRows.map(({ value, at }) => ({ value, at: `SUM(${at})` }))];
  // As many columns as a sheet has room for.
  const together = Math.ceil(figures.length / MOST_COMPARED);
  return Array.from({ length: Math.ceil(figures.length / together) }, (_, group): Figure => {
    const some = figures.slice(group * together, (group + 1) * together);
    return { value: some.reduce((sum, one) => sum + one.value, 0), at: some.map(({ at }) => at).join("+") };
  });
}
const MOST_COMPARED = 60;

/** Rows under the day on which they begin, in the order of the clock. */
function daysOf(night: Night, tasks: readonly Task[]): TimetableShape["days"] {
  const { changes, plan: production } = night;
  const mixes = new Map(production.doughs.map(({ code, batch }) => [code, batch.mixes]));
  const sorted = [...tasks].sort((a, b) => a.start - b.start || a.end - b.end || (a.dough < b.dough ? -1 : 1));
  const days = new Map<number, TimetableRow[]>();
  for (const task of sorted) {
    const at = clockAt(task.start, changes);
    const rows = days.get(dayOf(at)) ?? [];
    rows.push(rowOf(night, task, mixes.get(task.id) ?? 1));
    days.set(dayOf(at), rows);
  }
  return [...days].map(([day, rows]) => ({ day: dayWords(day), rows }));
}

function rowOf(night: Night, task: Task, mixes: number): TimetableRow {
  const { changes } = night;
  const shown = (at: Moment) => clockText(clockAt(at, changes));
  const isTwice = night.plan.clashes.some(
    (clash) =>
      clash.tasks.includes(task) ||
      clash.tasks.some((one) => one.id === task.id && one.step === task.step && one.start === task.start),
  );
  const part = task.mix === 0 ? (mixes > 1 ? "for all mixes" : "") : mixes > 1 ? `mix ${task.mix} of ${mixes}` : "";
  const load = task.load > 0 ? `load ${task.load}` : "";
  return {
    start: shown(task.start),
    end: shown(task.end),
    dough: task.dough,
    step: task.step,
    which: [load, part].filter((one) => one !== "").join(", "),
    on: task.machine,
    at: task.temperature,
    note: isTwice ? `taken twice: ${task.machine}` : "",
  };
}

/** What is taken twice, and what would end it; nothing is moved here. */
function clashWords({ plan: production, clashesAfter, now, changes, shift }: Night): string[] {
  // A dough without times has a plan, and no task in it.
  const plans = production.doughs.flatMap(({ plan: one, tasks }) => (tasks.length === 0 ? [] : [one]));
  return production.clashes
    .filter(({ from, to }) => {
      if (shift === null) return true;
      return clockAt(to, changes) > shift.from && clockAt(from, changes) < shift.to;
    })
    .map((clash) => {
      const when = (at: Moment): Clock => clockAt(at, changes);
      const doughs = [...new Set(clash.tasks.map(({ dough }) => dough))].join(" and ");
      const change = changeFor(clash, plans, now.machines, changes, clashesAfter);
      const way = change === null ? NO_CHANGE : startSays(change, now);
      return `${clash.machine}, ${dayWords(dayOf(when(clash.from)))} ${clockText(when(clash.from))} to ${clockText(when(clash.to))}: ${doughs}. ${way}`;
    });
}

const NO_CHANGE = "No other start of one dough alone ends it: plan another machine or another day.";

/** What to enter is counted from the dough's own time: what is entered there already is in it. */
function startSays({ dough, earlier }: Change, { doughs, tab }: ProductionNow): string {
  const entered = doughs.find(({ name }) => name === dough)?.earlier ?? 0;
  const way =
    earlier > 0
      ? `Begin ${dough} ${earlier} min earlier`
      : `Begin ${dough} ${-earlier} min later, and it is ready so much later`;
  return `${way}: enter ${entered + earlier} beside its dough on “${tab.name}” and build this again.`;
}

function feedRows({ plan: production, changes, shift }: Night): string[][] {
  const amount = (value: number) => showNumber(value, value < 100 ? 1 : 0);
  return production.chains.flatMap(({ levain, chain }) =>
    chain.feeds.flatMap((feed) => {
      const at = clockAt(feed.at, changes);
      if (shift !== null && (at < shift.from || at >= shift.to)) return [];
      const window = `${clockText(clockAt(feed.ripeFrom, changes))}–${clockText(clockAt(feed.ripeTo, changes))}`;
      const parts = [feed.seed, feed.flour, feed.water].map(amount).join(" + ");
      const rest =
        feed.setAside > 0
          ? `${feed.uses.map(({ by }) => by).join(", ")}; keep ${amount(feed.setAside)}`
          : feed.uses.map(({ by }) => by).join(", ");
      return [[`${dayWords(dayOf(at))} ${clockText(at)}`, window, levain.name, parts, "", "", "", rest]];
    }),
  );
}

function factsOf({ plan: production, changes, now }: Night): string[] {
  const short = production.chains.flatMap(({ levain, chain }) =>
    chain.seedShort > 0
      ? [
          `${levain.name}: the first feed wants ${showNumber(chain.seedShort, 0)} ${now.unit} of seed more than the mother has. Feed it up before.`,
        ]
      : [],
  );
  const outside = production.chains.flatMap(({ levain, chain }) =>
    unripe(chain.feeds).map(({ use }) => `${levain.name} is not ripe for ${use.by}.`),
  );
  const untimed = production.doughs.filter(({ tasks }) => tasks.length === 0).map(({ formula }) => `“${formula.name}”`);
  return [
    ...short,
    ...outside,
    ...(untimed.length === 0
      ? []
      : [`Not in this timetable, because its sheet has no method or time: ${[...new Set(untimed)].join(", ")}.`]),
    ...changes.map(changeSays),
  ];
}
