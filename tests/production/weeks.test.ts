import { expect, test } from "vitest";
import { changeFor, clashesOf } from "../../shared/production/clashes.ts";
import { ordersFor } from "../../shared/production/orders.ts";
import { type PlanInput, type Production, productionOf, rawNeedsOf } from "../../shared/production/plan.ts";
import { tasksOf } from "../../shared/production/timetable.ts";
import { IS_LONG, seedOf, tries } from "../kit/scale.ts";
import { dice, randomWeek, type Week } from "./random-week.ts";
import { replay } from "./replay.ts";

const askedOf = (week: Week): PlanInput => ({
  ...week,
  orders: ordersFor(week.days, week.typed, week.regular),
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

test("a change of a start that is offered ends its clash and takes no machine twice where it was not", () => {
  let offered = 0;
  let none = 0;
  for (const { seed, week, production } of weeks(Math.ceil(WEEKS / 5))) {
    const plans = production.doughs.map(({ plan }) => plan);
    for (const clash of production.clashes.slice(0, 3)) {
      const change = changeFor(clash, plans, week.machines);
      if (change === null) {
        none++;
        continue;
      }
      offered++;
      const moved = plans.map((plan) => (plan.id === change.id ? { ...plan, earlier: change.earlier } : plan));
      const isOver = (some: typeof plans) => {
        const over = new Set<string>();
        for (const { name, number } of week.machines) {
          const taken = new Map<number, number>();
          for (const task of some.flatMap((plan) => tasksOf(plan)))
            if (task.machine === name)
              for (let at = task.start; at < task.end; at++) taken.set(at, (taken.get(at) ?? 0) + 1);
          for (const [at, many] of taken) if (many > number) over.add(`${name} ${at}`);
        }
        return over;
      };
      const [known, now] = [isOver(plans), isOver(moved)];
      for (const minute of now) expect(known.has(minute), `week ${seed}: ${minute}`).toBe(true);
      for (let at = clash.from; at < clash.to; at++)
        expect(now.has(`${clash.machine} ${at}`), `week ${seed}`).toBe(false);
    }
  }
  if (IS_LONG) console.log({ offered, none });
  expect(offered).toBeGreaterThan(0);
});

test("a clash that is planted is found", () => {
  const die = dice(seedOf(7));
  for (const { seed, week, production } of weeks(WEEKS)) {
    const plans = production.doughs.map(({ plan }) => plan);
    const tasks = plans.flatMap((plan) => tasksOf(plan));
    const taken = tasks.filter(({ machine, end, start }) => machine !== "" && end > start);
    if (taken.length === 0) continue;
    const task = die.pick(taken);
    const number = week.machines.find(({ name }) => name === task.machine)?.number ?? 1;
    // So many more of the same task as there are machines of the name.
    const planted = [...tasks, ...Array.from({ length: number }, (_, at) => ({ ...task, id: `planted ${at}` }))];
    const found = clashesOf(planted, week.machines).some(
      (clash) => clash.machine === task.machine && clash.from <= task.start && clash.to >= task.end,
    );
    expect(found, `week ${seed}`).toBe(true);
  }
});
