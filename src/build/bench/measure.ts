// Times as medians; what is printed are ratios, which hold on any machine, near enough.
import { performance } from "node:perf_hooks";
import { call } from "../../call.ts";
import type { SheetFunction } from "../../define.ts";

export const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

/** Milliseconds of one run, the median of `rounds` after three that warm up. */
export function timeOf(work: () => unknown, rounds = 15): number {
  for (let warm = 0; warm < 3; warm++) work();
  return median(Array.from({ length: rounds }, () => once(work)));
}

/** Milliseconds of one run. */
export function once(work: () => unknown): number {
  const from = performance.now();
  work();
  return performance.now() - from;
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
