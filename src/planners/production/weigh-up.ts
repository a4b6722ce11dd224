// The weigh-up of a shift, out of all orders ahead: what is mixed in it, and what of it is a preferment.
import { refuse } from "../../../shared/base/refusal.ts";
import { type Clock, changeSays, clockAt, clockText, dayOf, dayWords } from "../../../shared/production/clock.ts";
import type { DoughDay } from "../../../shared/production/plan.ts";
import { firstStart, type Task } from "../../../shared/production/timetable.ts";
import { MAX_SEEN_ROWS } from "../../../shared/protocol/look.ts";
import { type LotRow, mustFitLog, refuseUnkept } from "../../../shared/protocol/lots.ts";
import type { NewSheet } from "../../../shared/protocol/plan-message.ts";
import type { Links, Value } from "../../../shared/sheet/model.ts";
import { plan } from "../../../shared/sheet/plan.ts";
import { LOTS_NAME } from "../../../shared/sheet/workbook-names.ts";
import { linkName } from "../../../templates/production/shape.ts";
import { weighUpSheet } from "../../../templates/production/weigh-up.ts";
import type { Stage, WeighShape } from "../../../templates/production/weigh-up-helpers.ts";
import type { FormulaSheets } from "../all-sheets.ts";
import { type Overview, sizesOf } from "../overview.ts";
import { make, type Steps, withNotes } from "../steps.ts";
import { dayTemperatures, hasWater, mustCountAlike, temperatureIn } from "./day-water.ts";
import { weighUpBefore } from "./lots.ts";
import { figuresOf, type Night, overNight, ownTasks, sheetOf } from "./night.ts";
import { nameOfShift, shiftSays, shiftWords } from "./tab-names.ts";

export function* buildWeighUp(question: Readonly<Record<string, unknown>>): Steps<NewSheet> {
  return yield* overNight(question, weighUp, [LOTS_NAME]);
}

/** A dough of a day, and what of it the shift mixes. */
export type Mixing = { readonly of: DoughDay; readonly stage: Stage; readonly at: Clock | null };

/** In the order of the clock; a dough without times is mixed on the day before it is ready. */
export function mixingsOf(night: Night): Mixing[] {
  const { plan: production, changes, shift } = night;
  const mixings = production.doughs.flatMap((of): Mixing[] => {
    const has = (task: Task | undefined) => task !== undefined && ownTasks(night, of).includes(task);
    const pre = of.tasks.find(({ mix }) => mix === 0);
    const start = firstStart(of.tasks, of.formula.mixStep) ?? of.tasks.find(({ mix }) => mix > 0)?.start ?? null;
    const mix = of.tasks.find((task) => task.mix > 0 && task.start === start);
    const isBuilt = sheetOf(night.all, of.formula.name).zone("levain") !== undefined && of.formula.levains.length > 0;
    const isFinal = of.formula.preferment !== null || isBuilt;
    if (start === null) {
      const isOn = shift === null || (of.day >= dayOf(shift.from) && of.day <= dayOf(shift.to));
      if (!isOn) return [];
      const stages: Stage[] =
        of.formula.preferment !== null ? ["preferment", "final"] : isFinal ? ["final"] : ["whole"];
      return stages.map((stage) => ({ of, stage, at: null }));
    }
    return [
      ...(pre !== undefined && has(pre) ? [{ of, stage: "preferment", at: clockAt(pre.start, changes) } as const] : []),
      ...(has(mix) ? [{ of, stage: isFinal ? "final" : "whole", at: clockAt(start, changes) } as const] : []),
    ];
  });
  return mixings.sort((a, b) => (a.at ?? 0) - (b.at ?? 0));
}

function* weighUp(night: Night): Steps<NewSheet> {
  const { now, all } = night;
  const mixings = mixingsOf(night);
  if (mixings.length === 0) refuse("Nothing is mixed in this shift. Choose other hours, or enter orders.");
  const renews = { cell: "A2", ...shiftWords(night) } as const;
  // What was entered on the one before is kept with the new one's making, and stands on it where it belongs there.
  const first = nameOfShift("Weigh-up", night);
  const before = yield* weighUpBefore(first, renews);
  const title = before?.name ?? first;
  const lots = before?.lots ?? [];
  mustFitLog(lots.length);
  if (lots.length > 0 && !all.names.has(LOTS_NAME)) refuseUnkept(title);
  const links: Record<string, string> = { more: moreLink(night, mixings) };
  let rowsBefore = 0;
  const blocks = mixings.map((mixing, index): WeighShape => {
    const sheet = sheetOf(all, mixing.of.formula.name);
    const shape = blockOf(sheet, mixing, index);
    addLinks(links, sheet, mixing, night, index, rowsBefore);
    rowsBefore += shape.rows;
    return shape;
  });
  const sheets = mixings.map(({ of }) => sheetOf(all, of.formula.name));
  mustCountAlike(sheets);
  const temperature = temperatureIn(sheets);
  const scales = mixings.flatMap(({ of }) => of.formula.scales);
  const entered = before?.temperatures.get(shiftSays(night));
  const values: Record<string, Value> = {
    title: "Weigh-up",
    result: shiftSays(night),
    step_coarse: Math.max(...scales),
    step_fine: Math.min(...scales),
    ...dayTemperatures(sheets, entered),
    ...lotsAgain(mixings, all, lots),
  };
  const options = { weight: now.unit, temperature, length: "cm", parts: [] } as const;
  const model = weighUpSheet({ blocks, facts: factsOf(night) });
  const drawn = plan(model, options, values, links);
  // Lots that are entered below would not be read when it is built again.
  if (drawn.rows > MAX_SEEN_ROWS)
    refuse(`${mixings.length} doughs are mixed in this shift, too many for one weigh-up. Choose shorter hours.`);
  const answer = yield* make(
    // Where one was filled in before, the cursor need not lead to what comes first: that is a call.
    before === null ? drawn : { ...drawn, start: "" },
    title,
    [...all.tabs, now.tab],
    { renews: before === null ? renews : { ...renews, known: before.id }, lots },
  );
  const untimed = mixings.filter(({ at }) => at === null).map(({ of }) => `“${of.formula.name}”`);
  return withNotes(
    answer,
    untimed.length === 0
      ? undefined
      : `No times are known for ${untimed.join(", ")}: enter a method and “Ready at” on the formula sheet.`,
  );
}

const MAX_SIZES = 10;

function blockOf(sheet: Overview, { of, stage, at }: Mixing, index: number): WeighShape {
  const kinds = waterRows(sheet);
  const isLevain = of.formula.levains.length > 0 && sheet.zone("levain") !== undefined;
  const preferment = of.formula.preferment?.name ?? (isLevain ? "Levain" : "");
  const called = preferment.slice(0, 1).toUpperCase() + preferment.slice(1);
  const time = at === null ? "" : `mix at ${clockText(at)} on ${dayWords(dayOf(at))} · `;
  return {
    title: `${index + 1}. ${stage === "preferment" ? `${called} for ${sheet.title}` : sheet.title}`,
    says: `${time}ready ${dayWords(of.day)}${takersSay(of)} · ${of.code}`,
    stage,
    rows: sheet.numbered("grams").length,
    water: kinds,
    preferment: stage === "whole" ? "" : called,
    sizes: sizesOf(sheet)
      .slice(0, MAX_SIZES)
      .map(({ size }) => size),
    hasWater: hasWater(sheet),
  };
}

/** What else takes of a dough. */
export const takersSay = ({ taken }: DoughDay): string =>
  taken.length === 0 ? "" : `, also for ${[...new Set(taken.map(({ by }) => by))].join(", ")}`;

/** Which of the rows with a weight are water. */
const waterRows = (sheet: Overview): number[] =>
  sheet.parts.flatMap(({ kind }, at) => (/^water/i.test(kind) ? [at] : []));

function addLinks(
  links: Record<string, string>,
  sheet: Overview,
  { of }: Mixing,
  night: Night,
  index: number,
  before: number,
): Links {
  const cell = (name: string) => sheet.reference(name) ?? '""';
  const { mixes, each } = figuresOf(night, of);
  const single = {
    coarse: "coarse",
    fine: "fine",
    target: "dough_target",
    friction: "friction_own",
    preferment_at: "preferment_temp",
    held: "held_share",
  };
  for (const [link, name] of Object.entries(single)) links[linkName(link, index)] = cell(name);
  links[linkName("mixes", index)] = mixes?.at ?? "0";
  links[linkName("each", index)] = each?.at ?? "0";
  sheet.numbered("grams").forEach((row, at) => {
    links[linkName("name", before + at)] = sheet.row("ingredient", row) ?? '""';
    links[linkName("part", before + at)] = sheet.row("whole_part", row) ?? "0";
    links[linkName("pre_part", before + at)] = sheet.row("pre_part", row) ?? "0";
  });
  const items = night.now.items.filter(({ product }) => product === sheet.name);
  const day = night.now.days.indexOf(of.day);
  sizesOf(sheet)
    .slice(0, MAX_SIZES)
    .forEach(({ size, row }, at) => {
      const item = items.find((one) => one.size === size);
      links[linkName("pieces", 10 * index + at)] = item?.made[day]?.at ?? "0";
      links[linkName("scaling", 10 * index + at)] =
        row === null ? `N(${cell("dough")})/MAX(1;N(${cell("pieces")}))` : `N(${sheet.row("size_scaled", row) ?? "0"})`;
    });
  return links;
}

/** Mixes of doughs that could be ordered for this shift and are not. */
function moreLink(night: Night, mixings: readonly Mixing[]): string {
  const { now, plan: production } = night;
  // Another day's mixing begins at the same time of its day, so that a dough that is here on one day may come on another.
  const cells = now.doughs.flatMap(({ name, mixes }) =>
    now.days.flatMap((day, at) => {
      const planned = production.doughs.some((one) => one.formula.name === name && one.day === day);
      const isHere = mixings.some(({ of }) => of.formula.name === name && of.day === day);
      const same = mixings.some(({ of }) => of.day === day);
      return !planned && !isHere && same ? [mixes[at]?.at ?? "0"] : [];
    }),
  );
  return cells.length === 0 ? "0" : cells.join("+");
}

/** Lots that were entered for a batch stand beside its ingredients again. */
function lotsAgain(mixings: readonly Mixing[], all: FormulaSheets, lots: readonly LotRow[]): Record<string, Value> {
  const rows = mixings.flatMap(({ of, stage }) => {
    const sheet = sheetOf(all, of.formula.name);
    const names = sheet.column("ingredient");
    return sheet.numbered("grams").map((row) => ({ batch: of.code, stage, name: names[row] ?? "" }));
  });
  return Object.fromEntries(
    rows.flatMap(({ batch, stage, name }, at) => {
      const entered = lots.filter(
        (one) =>
          one.batch === batch &&
          one.ingredient === name &&
          one.mix.startsWith("preferment") === (stage === "preferment"),
      );
      return entered.length === 0 ? [] : [[`lot_${at}`, [...new Set(entered.map(({ lot }) => lot))].join("; ")]];
    }),
  );
}

/** Feeds that begin in the shift, and clocks that are changed. */
function factsOf({ plan: production, shift, changes, now }: Night): string[] {
  const unit = now.unit;
  const amount = (value: number) => `${Math.round(value).toLocaleString("en").replace(/,/g, " ")} ${unit}`;
  const feeds = production.chains.flatMap(({ levain, chain }) =>
    chain.feeds.flatMap((feed) => {
      const at = clockAt(feed.at, changes);
      if (shift !== null && (at < shift.from || at >= shift.to)) return [];
      return [
        `Feed ${levain.name} at ${clockText(at)} on ${dayWords(dayOf(at))}: ${amount(feed.seed)} seed, ${amount(feed.flour)} flour, ${amount(feed.water)} water. Ripe ${clockText(clockAt(feed.ripeFrom, changes))} to ${clockText(clockAt(feed.ripeTo, changes))}.`,
      ];
    }),
  );
  const near = changes.filter(({ at }) => shift === null || (at >= shift.from - 1440 && at <= shift.to + 1440));
  return [...feeds, ...near.map(changeSays)];
}
