// Plays a planned week out minute by minute and piece by piece, without a line of the planner: what it finds wrong, in words.
import type { Production } from "../../shared/production/plan.ts";
import type { Week } from "./random-week.ts";

type Told = (says: string) => void;

export function replay(week: Week, production: Production, needs: ReadonlyMap<string, number>): string[] {
  const wrong: string[] = [];
  const told: Told = (says) => wrong.push(says);
  const { dough, inOthers } = replayAmounts(week, production, told);
  replayClock(week, production, inOthers, told);
  replayLevain(production, told);
  replayNeeds(week, production, needs, dough, told);
  return wrong;
}

const near = (one: number, other: number, slack = 1e-9) =>
  Math.abs(one - other) <= slack * Math.max(1, Math.abs(other));

type Amounts = {
  /** What is mixed, by the code of a batch. */
  readonly dough: Map<string, number>;
  /** Pieces of other products that take some of it. */
  readonly inOthers: Map<string, number>;
};

/** Pieces that a shop has to make, customer by customer and tray by tray; what goes into other products is mixed with them. */
function replayAmounts(week: Week, { doughs }: Production, told: Told): Amounts {
  const weights = new Map<string, number>();
  const inOthers = new Map<string, number>();
  const madeOf = new Map<string, number>();
  const mixed = new Map<string, number>();
  for (const formula of week.formulas) {
    const byDay = new Map<number, number>(week.days.map((day) => [day, 0]));
    const made = formula.sizes.map(() => new Map<number, number>());
    formula.sizes.forEach(({ size, scaling }, which) => {
      const making = week.making.get(`${formula.name.toLowerCase()}|${size}`);
      let freezer = making?.stock ?? 0;
      for (const day of week.days) {
        let wanted = 0;
        for (const customer of ["", "Café Mole", "Harbour inn", "Pier school"]) {
          const isHis = (one: { product: string; size: string; customer: string }) =>
            one.product === formula.name && one.size === size && one.customer === customer;
          const typed = week.typed.find((line) => isHis(line) && line.day === day)?.pieces;
          // 1 January 1900 was day 2, a Monday.
          wanted += typed ?? week.regular.find(isHis)?.week[(day - 2) % 7] ?? 0;
        }
        if (wanted > 0) wanted += making?.spares ?? 0;
        let pieces = 0;
        for (let piece = 0; piece < wanted; piece++) {
          if (freezer > 0) freezer--;
          else pieces++;
        }
        let trays = 0;
        while (trays * (making?.multiple ?? 1) < pieces) trays++;
        const all = trays * (making?.multiple ?? 1);
        made[which]?.set(day, all);
        madeOf.set(`${formula.name} ${size} ${day}`, all);
        byDay.set(day, (byDay.get(day) ?? 0) + (all * scaling) / (1 - formula.handlingLoss));
      }
    });
    for (const day of week.days) {
      let wanted = byDay.get(day) ?? 0;
      let others = 0;
      // Takers stand before it in the week.
      for (const use of formula.uses ?? []) {
        if ("dough" in use) wanted += (mixed.get(`${use.dough} ${day}`) ?? 0) * use.part;
        else {
          const many = madeOf.get(`${use.product} ${use.size} ${day}`) ?? 0;
          wanted += many * use.perPiece;
          others += many;
        }
      }
      mixed.set(`${formula.name} ${day}`, wanted);
      const planned = doughs.filter((one) => one.formula.name === formula.name && one.day === day);
      if (planned.length !== (wanted > 0 ? 1 : 0)) told(`${formula.name} ${day}: planned ${planned.length} times`);
      const [one] = planned;
      if (one === undefined) continue;
      weights.set(one.code, wanted);
      inOthers.set(one.code, others);
      formula.sizes.forEach((_, which) => {
        if (one.pieces[which] !== made[which]?.get(day)) told(`${one.code}: ${one.pieces[which]} pieces`);
      });
      if (!near(one.batch.dough, wanted)) told(`${one.code}: ${one.batch.dough} of dough, not ${wanted}`);
      const most = Math.min(formula.mixerLimit ?? Number.POSITIVE_INFINITY, week.machines[0]?.capacity ?? 0);
      let mixes = 1;
      while (wanted / mixes > most * (1 + 1e-9)) mixes++;
      if (one.batch.mixes !== mixes) told(`${one.code}: ${one.batch.mixes} mixes, not ${mixes}`);
      replayScales(one, wanted / mixes, formula.scales, told);
    }
  }
  return { dough: weights, inOthers };
}

/** What is weighed is off by half a step at most, and by 2 % at most unless the finest scale cannot tell. */
function replayScales(
  { code, batch, formula }: Production["doughs"][number],
  each: number,
  scales: readonly number[],
  told: Told,
) {
  let sum = 0;
  batch.rows.forEach((row, at) => {
    const exact = (formula.rows[at]?.part ?? 0) * each;
    sum += row.exact;
    const half = Math.max(...scales) / 2;
    if (Math.abs(row.perMix - exact) > half + 1e-6)
      told(`${code}: ${row.name} of ${exact} is weighed as ${row.perMix}`);
    if (Math.abs(row.perMix - exact) > 0.02 * exact * (1 + 1e-6)) told(`${code}: ${row.name} moves by over 2 %`);
    if (!near(row.preferment + row.finalMix, row.perMix)) told(`${code}: ${row.name} does not add up`);
  });
  if (!near(sum, each)) told(`${code}: the rows weigh ${sum}, the mix ${each}`);
}

/** Every minute of the week: who stands at a machine, and what is told of it. */
function replayClock(
  { machines, days }: Week,
  { doughs, clashes }: Production,
  inOthers: Amounts["inOthers"],
  told: Told,
): void {
  // A dough in a dough in a dough begins days before.
  const from = (Math.min(...days) - 12) * 1440;
  const long = (days.length + 14) * 1440;
  for (const machine of machines) {
    const taken = new Uint8Array(long);
    for (const { tasks } of doughs)
      for (const task of tasks)
        if (task.machine === machine.name)
          for (let at = task.start; at < task.end; at++) taken[at - from] = (taken[at - from] ?? 0) + 1;
    const said = new Uint8Array(long);
    for (const clash of clashes)
      if (clash.machine === machine.name) for (let at = clash.from; at < clash.to; at++) said[at - from] = 1;
    for (let at = 0; at < long; at++)
      if ((taken[at] ?? 0) > machine.number !== (said[at] === 1)) {
        told(`${machine.name} at minute ${at}: taken ${taken[at]} times of ${machine.number}, told ${said[at]}`);
        break;
      }
  }
  for (const { code, formula, batch, tasks, day, pieces } of doughs) {
    let trays = 0;
    for (
      let left = pieces.reduce((sum, one) => sum + one, inOthers.get(code) ?? 0);
      left > 0;
      left -= formula.holds ?? 1
    )
      trays++;
    for (let mix = 1; mix <= batch.mixes; mix++) {
      const mine = tasks.filter((task) => task.mix === mix);
      const names = formula.steps.map(({ name }) => name);
      const seen = mine.map(({ step }) => step).filter((name, at, all) => name !== all[at - 1]);
      if (seen.join() !== names.join()) told(`${code}, mix ${mix}: ${seen.join()}`);
      mine.slice(1).forEach((task, at) => {
        const pause = task.start - (mine[at]?.end ?? 0);
        if (pause !== (task.step === mine[at]?.step ? formula.reload : 0))
          told(`${code}, mix ${mix}: a pause of ${pause}`);
      });
      if (formula.ovenTakes !== null) {
        const loads = mine.filter(({ step }) => step === "Bake").length;
        if (loads * formula.ovenTakes < trays / batch.mixes - 1e-9)
          told(`${code}, mix ${mix}: ${loads} loads are too few`);
        if ((loads - 1) * formula.ovenTakes >= trays / batch.mixes && loads > 1)
          told(`${code}, mix ${mix}: ${loads} loads are too many`);
      }
    }
    const loads = tasks.filter(({ load }) => load > 0).map(({ load }) => load);
    if (loads.some((load, at) => load !== at + 1)) told(`${code}: loads ${loads.join()}`);
    const ends = Math.max(...tasks.map(({ end }) => end));
    // What goes into another dough is there when that is mixed.
    let ready = day * 1440 + Math.round((formula.ready ?? 0) * 1440);
    for (const use of formula.uses ?? [])
      for (const taker of doughs)
        if ("dough" in use && taker.formula.name === use.dough && taker.day === day)
          for (const task of taker.tasks) if (task.step === "Mix") ready = Math.min(ready, task.start);
    if (ends !== ready) told(`${code} is ready at ${ends}, not ${ready}`);
    const own = tasks.filter(({ machine }) => machine !== "");
    own.forEach((task, at) => {
      for (const other of own.slice(at + 1))
        if (other.machine === task.machine && other.start < task.end && task.start < other.end)
          told(`${code} is in its own way`);
    });
    const pre = tasks.filter(({ mix }) => mix === 0);
    if (pre.length !== (formula.preferment === null ? 0 : 1)) told(`${code}: ${pre.length} preferments`);
  }
}

/** One crock for each levain: what is in it, and how wet it is. */
function replayLevain({ doughs, chains }: Production, told: Told): void {
  for (const { levain, chain } of chains) {
    const wanted = new Map<string, number>();
    for (const { formula, batch, code } of doughs)
      for (const one of formula.levains)
        if (one.from === levain.name) wanted.set(code, (wanted.get(code) ?? 0) + one.part * batch.dough);
    let inCrock = levain.mother;
    let wet = levain.motherHydration / (1 + levain.motherHydration);
    let at = Number.NEGATIVE_INFINITY;
    for (const feed of chain.feeds) {
      if (feed.at < at) told(`${levain.name} is fed before the feed before`);
      at = feed.at;
      if (feed.seed > inCrock * (1 + 1e-9) + chain.seedShort)
        told(`${levain.name}: ${feed.seed} of seed out of ${inCrock}`);
      if (feed.flour < -1e-6 || feed.water < -1e-6) told(`${levain.name}: less than nothing is fed`);
      if (!near(feed.seed + feed.flour + feed.water, feed.total)) told(`${levain.name}: a feed of ${feed.total}`);
      const water = feed.seed * wet + feed.water;
      if (!near(water / (feed.total - water), levain.hydration, 1e-6))
        told(`${levain.name}: ${water / (feed.total - water)} wet`);
      wet = levain.hydration / (1 + levain.hydration);
      inCrock = feed.total;
      for (const use of feed.uses) {
        inCrock -= use.weight;
        const task = doughs.find(({ code }) => code === use.by)?.tasks.find(({ step }) => step === "Mix");
        if (task?.start !== use.at) told(`${levain.name}: ${use.by} takes it at ${use.at}, mixes at ${task?.start}`);
        const age = use.at - feed.at;
        if (age < levain.ripeFrom || age > levain.ripeTo) told(`${levain.name}: ${use.by} gets it ${age} minutes old`);
        wanted.set(use.by, (wanted.get(use.by) ?? 0) - use.weight);
      }
      if (inCrock < -1e-6) told(`${levain.name} runs out`);
    }
    for (const [code, left] of wanted) if (Math.abs(left) > 1e-6) told(`${levain.name}: ${code} lacks ${left}`);
    if (chain.feeds.length > 0 && !near(inCrock, levain.keep, 1e-6))
      told(`${levain.name}: ${inCrock} are left, not ${levain.keep}`);
  }
}

/** Flour, water, salt and yeast that leave the store: for the doughs whole, less what came out of crocks, and for the crocks. */
function replayNeeds(
  { formulas }: Week,
  { doughs, chains }: Production,
  needs: ReadonlyMap<string, number>,
  dough: ReadonlyMap<string, number>,
  told: Told,
): void {
  const store = new Map<string, number>();
  const take = (name: string, amount: number) => store.set(name, (store.get(name) ?? 0) + amount);
  for (const { code, formula } of doughs) {
    const all = dough.get(code) ?? 0;
    for (const { name, part } of formula.rows) take(name, part * all);
    for (const one of formula.levains) {
      const chain = chains.find(({ levain }) => levain.name === one.from);
      if (chain === undefined) continue;
      const flour = (one.part * all) / (1 + chain.levain.hydration);
      take("Flour", -flour);
      take("Water", flour - one.part * all);
    }
  }
  for (const { levain, chain } of chains) {
    // What went in and out of the crock: uses and what is left, less the mother that was in it.
    const out = chain.feeds.reduce((sum, { uses }) => sum + uses.reduce((all, { weight }) => all + weight, 0), 0);
    if (chain.feeds.length === 0) continue;
    const seed = chain.feeds[0]?.seed ?? 0;
    const flour = (out + levain.keep) / (1 + levain.hydration) - seed / (1 + levain.motherHydration);
    take("Flour", flour);
    take("Water", out + levain.keep - seed - flour);
  }
  for (const name of new Set(formulas.flatMap(({ rows }) => rows.map((row) => row.name))))
    if (!near(needs.get(name) ?? 0, store.get(name) ?? 0, 1e-9))
      told(`${name}: ${needs.get(name)} needed, ${store.get(name)} taken`);
}
