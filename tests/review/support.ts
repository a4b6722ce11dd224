import { down, run } from "../functions/support.ts";

export type Row = readonly [name: string, kind: string, percent: number | string];

/** The remarks of a formula, row by row. */
export function remarks(style: string, rows: readonly Row[], larder?: unknown): string[] {
  const columns = [0, 1, 2].map((at) => down(...rows.map((row) => row[at])));
  const answer = run("BAKE_REVIEW", columns[0], columns[1], columns[2], style, larder);
  return (Array.isArray(answer) ? answer : [[answer]]).map(([remark]) => remark as string);
}

export const FLOUR: Row = ["flour", "flour", 100];
