import { run } from "../functions/support.ts";
import { seedOf, tries } from "../kit/scale.ts";

/** Laws are tried on the same cases every time. */
export const LAWS = { seed: seedOf(20160531), numRuns: tries(200) };
export const number = (name: string, ...args: unknown[]): number => run(name, ...args) as number;
export const cells = (name: string, ...args: unknown[]): number[] => (run(name, ...args) as number[][])[0] ?? [];
export const column = (name: string, ...args: unknown[]): number[] =>
  (run(name, ...args) as number[][]).map(([one]) => one ?? 0);
export const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
