// What a formula sheet makes of its percentages: the same sums as its own formulas, for percentages that are not written yet.

/** A row that counts: its percentage as it was typed, and the flour in it (1 flour, 1 ÷ (1 + hydration) a preferment, 0 all else). */
export type Row = { readonly percent: number; readonly flour: number };

export type Order = {
  /** "tins" are trays as well: so many of what takes as much. */
  readonly by: "pieces" | "tins" | "dough" | "flour";
  /** Of dough or flour, or how many tins; null where none is typed. */
  readonly amount: number | null;
  /** What pieces or tins make, which no percentage changes. */
  readonly ordered: number;
  /** What the mixer takes; 0 where that is not said. */
  readonly mixerLimit: number;
  /** Fat that is rolled in later and ordered with the dough: a part of what is mixed, or a share of the flour. */
  readonly rolled: { readonly ofMix: number; readonly ofFlour: number };
};

export type Scaled = {
  /** What flour of 100 % is typed as. */
  readonly whole: number;
  /** The flour that 100 % refers to: with or without the flour inside preferments. */
  readonly base: number;
  readonly isAllFlour: boolean;
  /** What the rows make up where it is ordered, together with `fat`: a row of so many percent that nobody may type. */
  readonly dough: number;
  readonly fat: number;
  /** Weight of a typed 1. */
  readonly each: number;
  readonly mixes: number;
};

/** A percentage above this is one of a formula whose flour is typed as 100. */
const MAX_AS_ONE = 10;
/** Counting mixes forgives what binary arithmetic adds. */
const SLACK = 1e-9;

export const sumOf = <T>(rows: readonly T[], part: (row: T) => number): number =>
  rows.reduce((sum, row) => sum + part(row), 0);

export function scaled(rows: readonly Row[], order: Order): Scaled {
  const { by, amount, ordered, rolled } = order;
  const all = sumOf(rows, ({ percent, flour }) => percent * flour);
  const added = sumOf(rows, ({ percent, flour }) => (flour === 1 ? percent : 0));
  const whole = all > MAX_AS_ONE ? 100 : 1;
  const isAllFlour = Math.abs(all - whole) < Math.abs(added - whole);
  const base = isAllFlour ? all : added;
  const sum = sumOf(rows, ({ percent }) => percent);
  const fat = rolled.ofFlour * base;
  const dough = (by === "dough" ? (amount ?? 0) : ordered) / (1 + rolled.ofMix);
  const each = by === "flour" ? (base > 0 ? (amount ?? 0) / base : 0) : sum > 0 ? dough / (sum + fat) : 0;
  return { whole, base, isAllFlour, dough, fat, each, mixes: mixesOf(each * sum, order.mixerLimit) };
}

const mixesOf = (mixed: number, limit: number): number =>
  limit > 0 ? Math.max(1, Math.ceil((mixed / limit) * (1 - SLACK))) : 1;
