// Formulas to be adjusted, put together from rows as a sheet has them.
import { expect } from "vitest";
import { applyWish, type Wish } from "../../shared/adjust/changes.ts";
import { kindOf } from "../../shared/adjust/edit.ts";
import { baseOf, type Formula, type Row } from "../../shared/adjust/formula.ts";
import { type Fault, Refusal } from "../../shared/base/refusal.ts";
import { type Larder, larder, NO_LARDER } from "../../shared/larder/larder.ts";

/** Name, type, and weight or percentage in any unit. */
export type Line = readonly [name: string, type: string, amount: number];

export function formulaOf(lines: readonly Line[], more: Partial<Formula> = {}): Formula {
  const rows = lines.map(([name, type, amount], id): Row => ({ id, name, type, kind: kindOf(type), amount }));
  const frame = more.frame ?? "added flour";
  const base = baseOf(rows, frame);
  return {
    style: "hearth",
    options: { weight: "g", temperature: "C", length: "cm" },
    rollIn: null,
    perArea: null,
    frame,
    block: null,
    setApart: null,
    batch: { of: "flour", amount: base },
    by: "flour",
    mixed: "dough",
    sizes: [],
    tin: null,
    steps: [],
    temp: null,
    ...more,
    rows: rows.map((row) => ({ ...row, amount: row.amount / base })),
  };
}

/** An ingredient sheet of name and columns. */
export function larderOf(...table: readonly (readonly unknown[])[]): Larder {
  const faults: Fault[] = [];
  const read = larder(true).decode(table, "larder", faults);
  if (faults.length > 0) throw new Refusal(faults);
  return read;
}

export const change = (
  formula: Formula,
  name: string,
  values: Wish["values"],
  own: Larder = NO_LARDER,
): ReturnType<typeof applyWish> => applyWish(formula, { change: name, values }, own);

/** A row over the flour of 100 %, times `of`: the weight where `of` is that flour's. */
export function amount({ rows }: Formula, name: string, of = 1): number {
  const row = rows.find((one) => one.name === name);
  return row === undefined ? Number.NaN : row.amount * of;
}

export const refusalOf = (work: () => unknown): string => {
  try {
    work();
  } catch (error) {
    if (error instanceof Refusal) return error.message;
    throw error;
  }
  return expect.fail("nothing was refused") as never;
};
