// The whole plan: orders of some days, the doughs for them, when each is made and on what, and the levain they take.
import { amountsOf, type Taken, takersFirst } from "./amounts.ts";
import { type Clash, clashesOf, type Machine, machineFor } from "./clashes.ts";
import { type Clock, type ClockChange, clock, clockAt, clockOf } from "./clock.ts";
import { type Batch, batchFrom } from "./doughs.ts";
import type { Formula } from "./formula.ts";
import { type Chain, type Levain, type LevainUse, levainChain } from "./levain.ts";
import { type Item, itemKey, type Making, type Order, orderedByDay, piecesMade } from "./orders.ts";
import { firstStart, type PlannedDough, type Task, tasksOf } from "./timetable.ts";

export type DoughDay = {
  readonly formula: Formula;
  readonly day: number;
  readonly code: string;
  /** Of each size, in their order. */
  readonly pieces: readonly number[];
  /** What of it goes into other products. */
  readonly taken: readonly Taken[];
  readonly batch: Batch;
  readonly plan: PlannedDough;
  readonly tasks: readonly Task[];
};
export type Production = {
  readonly doughs: readonly DoughDay[];
  readonly clashes: readonly Clash[];
  readonly chains: readonly { readonly levain: Levain; readonly chain: Chain }[];
};

export type PlanInput = {
  readonly days: readonly number[];
  readonly orders: readonly Order[];
  readonly formulas: readonly Formula[];
  /** By the key of an item; what is not in it is made piece by piece. */
  readonly making: ReadonlyMap<string, Making>;
  readonly machines: readonly Machine[];
  readonly levains: readonly Levain[];
  /** The batch code of a formula on a day. */
  readonly codeOf: (formula: string, day: number) => string;
  /** Minutes that a dough of a day is begun earlier, by its code. */
  readonly earlier: ReadonlyMap<string, number>;
  readonly changes: readonly ClockChange[];
};

const PIECE_BY_PIECE: Making = { spares: 0, stock: 0, multiple: 1 };

export function productionOf(input: PlanInput): Production {
  const doughs = doughDays(input);
  return {
    doughs,
    clashes: clashesOf(
      doughs.flatMap(({ tasks }) => tasks),
      input.machines,
    ),
    chains: input.levains.map((levain) => ({ levain, chain: levainChain(levain, usesOf(levain, doughs)) })),
  };
}

function doughDays({ days, orders, formulas, making, machines, codeOf, earlier, changes }: PlanInput): DoughDay[] {
  const piecesOf = new Map<string, readonly number[]>();
  const piecesMadeOf = (item: Item) => {
    const key = itemKey(item);
    const known = piecesOf.get(key) ?? piecesMade(orderedByDay(days, orders, item), making.get(key) ?? PIECE_BY_PIECE);
    piecesOf.set(key, known);
    return known;
  };
  const amounts = amountsOf(formulas, piecesMadeOf, days.length);
  const capacity = roomiest(machines);
  const planned = new Map<Formula, DoughDay[]>();
  // What goes into other doughs has to be there when those are mixed.
  for (const formula of takersFirst(formulas))
    planned.set(
      formula,
      days.flatMap((day, at): DoughDay[] => {
        const { pieces = [], all = 0, taken = [] } = amounts.get(formula.name)?.[at] ?? {};
        const code = codeOf(formula.name, day);
        const batch = batchFrom({ ...formula, mixerLimit: lesser(formula.mixerLimit, capacity) }, all);
        if (batch.mixes === 0) return [];
        const ready = readyAt(formula, day, [...planned.values()].flat(), changes);
        const plan = plannedDough(
          formula,
          ready ?? clockOf(day, 0),
          code,
          pieces,
          taken,
          batch,
          machines,
          earlier.get(code) ?? 0,
        );
        return [
          { formula, day, code, pieces, taken, batch, plan, tasks: ready === null ? [] : tasksOf(plan, changes) },
        ];
      }),
    );
  return formulas.flatMap((formula) => planned.get(formula) ?? []);
}

/** When its formula has it ready, or the first dough that takes it is mixed, whichever is first; null where nobody knows. */
function readyAt(
  { ready, uses = [] }: Formula,
  day: number,
  others: readonly DoughDay[],
  changes: readonly ClockChange[],
): Clock | null {
  const takers = uses.flatMap((use) =>
    "dough" in use ? others.filter((one) => one.formula.name === use.dough && one.day === day) : [],
  );
  const starts = takers.flatMap(({ tasks, formula }) => {
    const start = firstStart(tasks, formula.mixStep) ?? tasks.find(({ mix }) => mix > 0)?.start;
    return start === undefined || start === null ? [] : [clockAt(start, changes)];
  });
  const deadline = ready === null ? [] : [clockOf(day, ready)];
  const all = [...deadline, ...starts];
  return all.length === 0 ? null : clock(Math.min(...all));
}

/** What the largest mixer takes; null where nobody said. */
function roomiest(machines: readonly Machine[]): number | null {
  const mixers = machines.filter(({ kind, number }) => kind === "mixer" && number > 0);
  if (mixers.length === 0 || mixers.some(({ capacity }) => capacity === null)) return null;
  return Math.max(...mixers.map(({ capacity }) => capacity ?? 0));
}

const lesser = (one: number | null, other: number | null): number | null =>
  one === null || one <= 0 ? other : other === null || other <= 0 ? one : Math.min(one, other);

function plannedDough(
  formula: Formula,
  ready: Clock,
  id: string,
  pieces: readonly number[],
  taken: readonly Taken[],
  batch: Batch,
  machines: readonly Machine[],
  earlier: number,
): PlannedDough {
  const { name: dough, steps, mixStep, ovenStep, holds, ovenTakes, reload, preferment } = formula;
  // Pieces that go into other products lie on trays like the others.
  const all = [...pieces, ...taken.map((one) => one.pieces ?? 0)].reduce((sum, one) => sum + one, 0);
  const holders = holds === null || !(holds > 0) ? null : Math.ceil((all / holds) * (1 - 1e-9));
  const heat = steps.find(({ name }) => name.trim().toLowerCase() === ovenStep.trim().toLowerCase())?.temperature;
  const load = ovenTakes === null || holders === null ? null : Math.min(ovenTakes, Math.ceil(holders / batch.mixes));
  return {
    id,
    dough,
    ready,
    steps,
    mixes: batch.mixes,
    holders,
    ovenTakes,
    reload,
    mixStep,
    ovenStep,
    preferment,
    mixer: machineFor("mixer", machines, batch.each, null)?.name ?? "",
    oven: machineFor("oven", machines, load, heat ?? null)?.name ?? "",
    earlier,
  };
}

/** What the doughs take of a levain, each when its step begins first. */
function usesOf({ name }: Levain, doughs: readonly DoughDay[]): LevainUse[] {
  return doughs.flatMap(({ formula, batch, tasks, code }) =>
    formula.levains.flatMap(({ from, part, step }): LevainUse[] => {
      const at = firstStart(tasks, step) ?? tasks.find(({ mix }) => mix > 0)?.start;
      return from !== name || at === undefined || !(part > 0) ? [] : [{ at, weight: part * batch.dough, by: code }];
    }),
  );
}

/**
 * Raw ingredients of the doughs and the feeds, by name: a levain that a chain builds gives way to what is fed, the mother is
 * stock, and what is kept is made like the rest.
 */
export function rawNeedsOf(
  { doughs, chains }: Production,
  fedWith: ReadonlyMap<string, { readonly flour: string; readonly water: string }>,
): Map<string, number> {
  const needs = new Map<string, number>();
  const add = (name: string, amount: number) => needs.set(name, (needs.get(name) ?? 0) + amount);
  for (const { formula, batch } of doughs)
    for (const { name, part, fromChain = 0 } of formula.rows) add(name, part * (1 - fromChain) * batch.dough);
  for (const { levain, chain } of chains) {
    const names = fedWith.get(levain.name);
    if (names === undefined) continue;
    for (const { flour, water } of chain.feeds) {
      add(names.flour, flour);
      add(names.water, water);
    }
  }
  return needs;
}
