import { expect, test } from "vitest";
import { batchCodes } from "../../shared/production/batch-code.ts";
import { type Change, changeFor, clashesOf } from "../../shared/production/clashes.ts";
import type { Moment } from "../../shared/production/clock.ts";
import { ordersFor } from "../../shared/production/orders.ts";
import { type PlanInput, type Production, productionOf, rawNeedsOf } from "../../shared/production/plan.ts";
import type { Task } from "../../shared/production/timetable.ts";
import { IS_LONG, seedOf, tries } from "../kit/scale.ts";
import { dice, randomWeek, type Week } from "./random-week.ts";
import { replay } from "./replay.ts";

const askedOf = (week: Week): PlanInput => ({
  ...week,
  orders: ordersFor(week.days, week.typed, week.regular),
  codeOf: batchCodes(week.formulas.map(({ name }) => ({ name, title: name }))),
  changes: [],
});
const needsOf = (production: Production) =>
  rawNeedsOf(
    production,
    new Map(production.chains.map(({ levain }) => [levain.name, { flour: "Flour", water: "Water" }])),
  );
const WEEKS = tries(10);

/** Some weeks of the seed. */
function* weeks(many: number): Generator<{ seed: number; week: Week; production: Production }> {
  for (let at = 0; at < many; at++) {
    const seed = seedOf(220_000) + at;
    const week = randomWeek(seed);
    yield { seed, week, production: productionOf(askedOf(week)) };
  }
}

test("random weeks play out minute by minute as they were planned: pieces, mixes, weights, clock, levain, needs", () => {
  let doughs = 0;
  let feeds = 0;
  let clashes = 0;
  for (const { seed, week, production } of weeks(WEEKS)) {
    expect(replay(week, production, needsOf(production)), `week ${seed}`).toEqual([]);
    doughs += production.doughs.length;
    feeds += production.chains.reduce((sum, { chain }) => sum + chain.feeds.length, 0);
    clashes += production.clashes.length;
  }
  if (IS_LONG) console.log({ doughs, feeds, clashes });
  // The weeks are worth playing.
  expect(doughs).toBeGreaterThan(5 * WEEKS);
  expect(feeds).toBeGreaterThan(WEEKS);
  expect(clashes).toBeGreaterThan(WEEKS);
});

/** Minutes in which a machine is taken more often than it is there. */
function minutesOver(tasks: readonly Task[], machines: Week["machines"]): Set<string> {
  const over = new Set<string>();
  for (const { name, number } of machines) {
    const taken = new Map<number, number>();
    for (const task of tasks)
      if (task.machine === name) for (let at = task.start; at < task.end; at++) taken.set(at, (taken.get(at) ?? 0) + 1);
    for (const [at, many] of taken) if (many > number) over.add(`${name} ${at}`);
  }
  return over;
}
const tasksIn = ({ doughs }: Production) => doughs.flatMap(({ tasks }) => tasks);

test("a change of a start that is offered ends its clash and takes no machine twice where it was not, all days and parts planned again", () => {
  let offered = 0;
  let none = 0;
  for (const { seed, week, production } of weeks(Math.ceil(WEEKS / 5))) {
    const plans = production.doughs.map(({ plan }) => plan);
    const planned = ({ dough, earlier }: Change) =>
      productionOf({
        ...askedOf(week),
        earlier: new Map(
          production.doughs.flatMap(({ formula, code }) => (formula.name === dough ? [[code, earlier]] : [])),
        ),
      });
    for (const clash of production.clashes.slice(0, 3)) {
      const change = changeFor(clash, plans, week.machines, [], (one) => planned(one).clashes);
      if (change === null) {
        none++;
        continue;
      }
      offered++;
      const known = minutesOver(tasksIn(production), week.machines);
      const now = minutesOver(tasksIn(planned(change)), week.machines);
      for (const minute of now) expect(known.has(minute), `week ${seed}: ${minute}`).toBe(true);
      for (let at = clash.from; at < clash.to; at++)
        expect(now.has(`${clash.machine} ${at}`), `week ${seed}`).toBe(false);
    }
  }
  if (IS_LONG) console.log({ offered, none });
  expect(offered).toBeGreaterThan(0);
});

test("clashes that are planted are found to the minute: whole, overlapping by a part or a minute, several days, and none that only touch", () => {
  const die = dice(seedOf(7));
  let planted = 0;
  for (const { seed, week, production } of weeks(WEEKS)) {
    const tasks = tasksIn(production);
    const taken = tasks.filter(({ machine, end, start }) => machine !== "" && end > start + 1);
    if (taken.length === 0) continue;
    const more = Array.from({ length: 6 }, (_, at): Task[] => {
      const task = die.pick(taken);
      const length = task.end - task.start;
      const number = week.machines.find(({ name }) => name === task.machine)?.number ?? 1;
      // Moved by so much: the same minutes, a part of them, the last or the first alone, and right after it.
      const shift = [0, die.whole(1, length - 1), length - 1, 1 - length, length, -length][at] ?? 0;
      const moved = { start: (task.start + shift) as Moment, end: (task.end + shift) as Moment };
      return Array.from({ length: number }, (_, one) => ({ ...task, ...moved, id: `planted ${at} ${one}` }));
    }).flat();
    const all = [...tasks, ...more];
    const over = minutesOver(all, week.machines);
    const told = new Set(
      clashesOf(all, week.machines).flatMap(({ machine, from, to }) =>
        Array.from({ length: to - from }, (_, at) => `${machine} ${from + at}`),
      ),
    );
    expect([...told].sort(), `week ${seed}`).toEqual([...over].sort());
    // Each that overlaps is in a clash, by its name.
    const named = new Set(clashesOf(all, week.machines).flatMap((clash) => clash.tasks.map(({ id }) => id)));
    for (const task of more)
      if (/^planted [0-3] /.test(task.id)) expect(named.has(task.id), `${seed} ${task.id}`).toBe(true);
    planted += more.length;
  }
  expect(planted).toBeGreaterThan(5 * WEEKS);
});
