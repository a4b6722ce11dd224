// The steps of every mix and oven load by the clock, counted back from when each dough must be ready.
import { sameStep } from "../formula/steps.ts";
import { type Clock, type ClockChange, clockAt, type Moment, momentAt } from "./clock.ts";

export type PlanStep = { readonly name: string; readonly minutes: number; readonly temperature: number | null };

/** All of one dough for one day. */
export type PlannedDough = {
  readonly id: string;
  readonly dough: string;
  readonly ready: Clock;
  readonly steps: readonly PlanStep[];
  readonly mixes: number;
  /** Trays, tins or pieces in all, and how many of them go into the oven at a time; null where nobody knows. */
  readonly holders: number | null;
  readonly ovenTakes: number | null;
  readonly reload: number;
  /** Names of its steps at the mixer and in the oven; "" where it has none. */
  readonly mixStep: string;
  readonly ovenStep: string;
  /** A poolish, biga or sponge: so long before the start of a step. */
  readonly preferment: { readonly name: string; readonly minutes: number; readonly step: string } | null;
  /** Machines it is made on; "" where none is planned. */
  readonly mixer: string;
  readonly oven: string;
  /** Minutes that everything is begun earlier, as a person typed; below 0 later. */
  readonly earlier: number;
};

export type Task = {
  readonly id: string;
  readonly dough: string;
  readonly step: string;
  /** Counted from 1; 0 for what is done once for all mixes. */
  readonly mix: number;
  /** Counted from 1 over the whole dough; 0 where it is no load. */
  readonly load: number;
  readonly start: Moment;
  readonly end: Moment;
  readonly temperature: number | null;
  /** "" where it takes no machine. */
  readonly machine: string;
};

/** How often the oven is filled for each mix; mixes share the trays alike. */
export function loadsOf({ mixes, holders, ovenTakes }: PlannedDough): number[] {
  if (holders === null || ovenTakes === null || !(ovenTakes > 0)) return Array<number>(mixes).fill(1);
  const each = holders / mixes;
  return Array.from({ length: mixes }, () => Math.max(1, Math.ceil((each / ovenTakes) * (1 - 1e-9))));
}

/** Steps of a dough in the order of the clock: those of a mix follow each other, and the mixes each other at mixer and oven. */
export function tasksOf(plan: PlannedDough, changes: readonly ClockChange[] = []): Task[] {
  const loads = loadsOf(plan);
  const end = momentAt(plan.ready, changes) - plan.earlier;
  const tasks: Task[] = [];
  let later = 0;
  let load = loads.reduce((sum, one) => sum + one, 0);
  // From the last mix to the first: each is begun so much earlier that the next finds mixer and oven free.
  for (let mix = plan.mixes; mix >= 1; mix--) {
    const many = loads[mix - 1] ?? 1;
    if (mix < plan.mixes) later += gap(plan, many);
    load -= many;
    tasks.unshift(...mixTasks(plan, mix, many, load, end - later));
  }
  return [...prefermentTask(plan, tasks), ...tasks].sort((a, b) => a.start - b.start || a.mix - b.mix);
}

/** Minutes that a mix is ahead of the next one. */
function gap(plan: PlannedDough, loads: number): number {
  const mixing = stepMinutes(plan, plan.mixStep);
  const baking = stepMinutes(plan, plan.ovenStep);
  return Math.max(mixing, baking === 0 ? 0 : loads * (baking + plan.reload));
}

const stepMinutes = ({ steps }: PlannedDough, name: string): number =>
  steps.reduce((sum, step) => sum + (sameStep(step.name, name) ? step.minutes : 0), 0);

function mixTasks(plan: PlannedDough, mix: number, loads: number, before: number, end: number): Task[] {
  const tasks: Task[] = [];
  let until = end;
  const add = (step: PlanStep, minutes: number, load: number, machine: string): void => {
    const { id, dough } = plan;
    const [start, finish] = [(until - minutes) as Moment, until as Moment];
    tasks.unshift({
      id,
      dough,
      step: step.name,
      mix,
      load,
      start,
      end: finish,
      temperature: step.temperature,
      machine,
    });
    until = start;
  };
  for (const step of [...plan.steps].reverse()) {
    if (sameStep(step.name, plan.ovenStep)) {
      for (let load = loads; load >= 1; load--) {
        add(step, step.minutes, before + load, plan.oven);
        if (load > 1) until -= plan.reload;
      }
    } else add(step, step.minutes, 0, sameStep(step.name, plan.mixStep) ? plan.mixer : "");
  }
  return tasks;
}

/** Mixed once for all mixes, so long before the first of them wants it. */
function prefermentTask({ id, dough, preferment }: PlannedDough, tasks: readonly Task[]): Task[] {
  if (preferment === null) return [];
  const first = tasks.find(({ step }) => sameStep(step, preferment.step)) ?? tasks[0];
  if (first === undefined) return [];
  const start = (first.start - preferment.minutes) as Moment;
  const rest = { id, dough, mix: 0, load: 0, temperature: null, machine: "" };
  return [{ ...rest, step: `Mix the ${preferment.name}`, start, end: first.start }];
}

/** When a step of a dough begins first; null where it has no such step. */
export const firstStart = (tasks: readonly Task[], step: string): Moment | null =>
  tasks.reduce<Moment | null>(
    (first, task) => (sameStep(task.step, step) && (first === null || task.start < first) ? task.start : first),
    null,
  );

/** What begins in a shift, from one clock to just before the other. */
export function inShift(
  tasks: readonly Task[],
  from: Clock,
  to: Clock,
  changes: readonly ClockChange[] = [],
): readonly Task[] {
  return tasks.filter(({ start }) => {
    const at = clockAt(start, changes);
    return at >= from && at < to;
  });
}
