// Mixers and ovens that are taken twice at once, and the change of a start that resolves it.
import type { ClockChange, Moment } from "./clock.ts";
import { type PlannedDough, type Task, tasksOf } from "./timetable.ts";

export type Machine = {
  readonly name: string;
  readonly kind: "mixer" | "oven";
  readonly number: number;
  /** Dough for a mixer; trays, tins or pieces for an oven. */
  readonly capacity: number | null;
  readonly temperature: number | null;
};

/** More tasks at once than there are machines of a name. */
export type Clash = {
  readonly machine: string;
  readonly from: Moment;
  readonly to: Moment;
  readonly tasks: readonly Task[];
};
/** Every batch of one dough so many minutes earlier than it is planned; below 0 later. */
export type Change = { readonly dough: string; readonly earlier: number };

/** Stretches of time in which a machine is taken more often than it is there, in the order of the clock. */
export function clashesOf(tasks: readonly Task[], machines: readonly Machine[]): Clash[] {
  return machines
    .flatMap(({ name, number }) => clashesOn(name, number, tasks))
    .sort((a, b) => a.from - b.from || (a.machine < b.machine ? -1 : 1));
}

function clashesOn(machine: string, number: number, all: readonly Task[]): Clash[] {
  const tasks = all.filter((task) => task.machine === machine && task.end > task.start);
  const times = [...new Set(tasks.flatMap(({ start, end }) => [start, end]))].sort((a, b) => a - b);
  const clashes: { machine: string; from: Moment; to: Moment; tasks: Task[] }[] = [];
  times.forEach((from, at) => {
    const to = times[at + 1];
    if (to === undefined) return;
    const taken = tasks.filter((task) => task.start <= from && task.end >= to);
    if (taken.length <= number) return;
    const last = clashes[clashes.length - 1];
    if (last !== undefined && last.to === from) {
      last.to = to;
      last.tasks.push(...taken.filter((task) => !last.tasks.includes(task)));
    } else clashes.push({ machine, from, to, tasks: [...taken] });
  });
  return clashes;
}

const STEP = 5;
const MAX_EARLIER = 360;
const MAX_LATER = 180;

/**
 * The smallest change of one dough's start that ends the clash and begins no other; earlier before later, because later is
 * not ready in time. The dough starts so on each of its days. `clashesAfter` plans all again, where others move along with it.
 * Null where no change of one dough does.
 */
export function changeFor(
  clash: Clash,
  plans: readonly PlannedDough[],
  machines: readonly Machine[],
  changes: readonly ClockChange[] = [],
  clashesAfter: (change: Change) => readonly Clash[] = () => [],
): Change | null {
  const involved = [...new Set(clash.tasks.map(({ dough }) => dough))];
  const tasks = plans.map((plan) => ({ plan, tasks: tasksOf(plan, changes) }));
  const known = clashesOf(
    tasks.flatMap((one) => one.tasks),
    machines,
  );
  for (const [most, way] of [
    [MAX_EARLIER, 1],
    [MAX_LATER, -1],
  ] as const) {
    for (let minutes = STEP; minutes <= most; minutes += STEP) {
      for (const dough of involved) {
        const change = { dough, earlier: way * minutes };
        const moved = tasks.flatMap(({ plan, tasks: planned }) =>
          plan.dough === dough ? tasksOf({ ...plan, earlier: plan.earlier + change.earlier }, changes) : planned,
        );
        if (isResolved(clash, known, clashesOf(moved, machines)) && isResolved(clash, known, clashesAfter(change)))
          return change;
      }
    }
  }
  return null;
}

/** Nothing is taken twice in the time of the clash, and elsewhere only where it was before. */
const isResolved = (clash: Clash, known: readonly Clash[], now: readonly Clash[]): boolean =>
  now.every(
    (one) =>
      (one.machine !== clash.machine || one.from >= clash.to || one.to <= clash.from) &&
      known.some((old) => old.machine === one.machine && old.from <= one.from && old.to >= one.to),
  );

/** The machine of a kind that a task goes to: one that takes the amount and is at its temperature, the smallest first. */
export function machineFor(
  kind: Machine["kind"],
  machines: readonly Machine[],
  amount: number | null,
  temperature: number | null,
): Machine | null {
  const fitting = machines.filter(
    (one) =>
      one.kind === kind &&
      one.number > 0 &&
      (one.capacity === null || amount === null || amount <= one.capacity * (1 + 1e-9)) &&
      (one.temperature === null || temperature === null || Math.abs(one.temperature - temperature) <= MAX_OFF),
  );
  const size = ({ capacity }: Machine) => capacity ?? Number.POSITIVE_INFINITY;
  return fitting.reduce<Machine | null>((best, one) => (best === null || size(one) < size(best) ? one : best), null);
}

/** Degrees that an oven may be off what a dough is baked at (common practice, no source). */
const MAX_OFF = 10;
