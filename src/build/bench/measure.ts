// Times as medians; what is printed are ratios, which hold on any machine, near enough.
import { call } from "../../call.ts";
import type { SheetFunction } from "../../define.ts";

export const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

/** Milliseconds of one run, the median of `rounds` after three that warm up; of fewer where they would take seconds. */
export function timeOf(work: () => unknown, rounds = 15): number {
  const warm = median(Array.from({ length: 3 }, () => once(work)));
  const most = Math.max(3, Math.floor(PATIENCE / warm));
  return median(Array.from({ length: Math.min(rounds, most) }, () => once(work)));
}

const PATIENCE = 300;

/** Milliseconds of processor time of one run, which other work on the computer sways least. */
export function once(work: () => unknown): number {
  const from = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(from);
  return (user + system) / 1000;
}

/** The first example with its columns repeated to so many rows, where that still makes sense. */
export function longer(made: SheetFunction, rows: number): unknown[] | undefined {
  const example = made.examples[0];
  if (example === undefined) return undefined;
  const shapes = Object.values(made.args).map(({ is }) => is.shape);
  if (!made.rowwise && !shapes.includes("column")) return undefined;
  const args = example.call.map((arg, index) => {
    const isColumn = made.rowwise || shapes[index] === "column";
    if (!isColumn || (!made.rowwise && !Array.isArray(arg))) return arg;
    const cells = Array.isArray(arg) ? arg : [[arg]];
    return Array.from({ length: rows }, (_, row) => cells[row % cells.length]);
  });
  try {
    call(made, args);
    return args;
  } catch {
    // Some formulas cannot be repeated (flours would no longer make 100 %); they are left out of the table.
    return undefined;
  }
}
