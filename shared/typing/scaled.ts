// What a formula sheet makes of its percentages: the same sums as its own formulas, for percentages that are not written yet.

/** A row that counts: its percentage as it was typed, and the flour in it (1 flour, 1 ÷ (1 + hydration) a preferment, 0 all else). */
export type Row = { readonly percent: number; readonly flour: number };

export type Order = {
  readonly by: "pieces" | "tins" | "dough" | "flour";
  /** Of dough or flour, or how many tins; null where none is typed. */
  readonly amount: number | null;
  /** The dough of pieces or tins, which no percentage changes. */
  readonly dough: number;
  /** What the mixer takes; 0 where that is not said. */
  readonly mixerLimit: number;
};

export type Scaled = {
  /** What flour of 100 % is typed as. */
  readonly whole: number;
  /** The flour that 100 % refers to: with or without the flour inside preferments. */
  readonly base: number;
  readonly isAllFlour: boolean;
  readonly dough: number;
  /** Weight of a typed 1. */
  readonly each: number;
  readonly mixes: number;
};

/** A percentage above this is one of a formula whose flour is typed as 100. */
const MOST_AS_ONE = 10;
/** Counting mixes forgives what binary arithmetic adds. */
const SLACK = 1e-9;

export const sumOf = <T>(rows: readonly T[], part: (row: T) => number): number =>
  rows.reduce((sum, row) => sum + part(row), 0);

export function scaled(rows: readonly Row[], order: Order): Scaled {
  const all = sumOf(rows, ({ percent, flour }) => percent * flour);
  const added = sumOf(rows, ({ percent, flour }) => (flour === 1 ? percent : 0));
  const whole = all > MOST_AS_ONE ? 100 : 1;
  const isAllFlour = Math.abs(all - whole) < Math.abs(added - whole);
  const base = isAllFlour ? all : added;
  const sum = sumOf(rows, ({ percent }) => percent);
  const dough = doughOf(order, sum, base);
  return { whole, base, isAllFlour, dough, each: sum > 0 ? dough / sum : 0, mixes: mixesOf(dough, order.mixerLimit) };
}

function doughOf({ by, amount, dough }: Order, sum: number, base: number): number {
  if (by === "dough") return amount ?? 0;
  if (by === "flour") return base > 0 ? ((amount ?? 0) * sum) / base : 0;
  return dough;
}

const mixesOf = (dough: number, limit: number): number =>
  limit > 0 ? Math.max(1, Math.ceil((dough / limit) * (1 - SLACK))) : 1;
