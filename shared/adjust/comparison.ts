// Two formulas side by side: rows, figures, what comes and goes of remarks and allergens.

import { ratio } from "../base/units.ts";
import { type KindPart, kindParts } from "../drawings/kind-bar.ts";
import { builtInNamed, nameKey } from "../larder/built-in-larder.ts";
import { findIngredient, type Larder } from "../larder/larder.ts";
import { review } from "../review/review.ts";
import { type Figure, figuresOf } from "./figures.ts";
import { allFlour, allRows, eachOf, type Formula, ROLL_IN, type Row, shownName, weightsOf } from "./formula.ts";
import type { Money } from "./money.ts";
import { orNull } from "./parts.ts";

/** Percentages are in the formula's own frame, weights in its unit; null where a formula has no such row. */
export type ComparedRow = {
  readonly name: string;
  readonly percents: readonly [before: number | null, after: number | null];
  readonly weights: readonly [before: number | null, after: number | null];
  readonly isChanged: boolean;
};
export type ComparedStep = {
  readonly name: string;
  readonly minutes: readonly [before: number | null, after: number | null];
};
export type Compared = {
  readonly rows: readonly ComparedRow[];
  readonly figures: readonly Figure[];
  /** The method, where the two differ in it: minutes of each step, null where one has no such step. */
  readonly steps: readonly ComparedStep[];
  readonly remarks: { readonly comes: readonly string[]; readonly goes: readonly string[] };
  readonly allergens: { readonly comes: readonly string[]; readonly goes: readonly string[] };
  /** Ingredients by their weight, the most first, as a label lists them; the same list twice where they are in one order. */
  readonly order: readonly [before: readonly string[], after: readonly string[]];
  readonly parts: readonly [before: readonly KindPart[], after: readonly KindPart[]];
};

/** Rows are paired by their ids, or by their names where the two are of different sheets. */
export function compareFormulas(
  before: Formula,
  after: Formula,
  money: Money,
  larder: Larder,
  by: "id" | "name" = "id",
  otherMoney: Money = money,
): Compared {
  const remarks = (formula: Formula) => remarksOf(formula, larder);
  const allergens = (formula: Formula) => allergensOf(allRows(formula), larder);
  return {
    rows: rowsOf(before, after, by),
    figures: figuresOf(before, after, money, larder, otherMoney),
    steps: stepsOf(before, after),
    remarks: { comes: without(remarks(after), remarks(before)), goes: without(remarks(before), remarks(after)) },
    allergens: {
      comes: without(allergens(after), allergens(before)),
      goes: without(allergens(before), allergens(after)),
    },
    order: [orderOf(before), orderOf(after)],
    parts: [partsOf(before), partsOf(after)],
  };
}

const without = (some: readonly string[], others: readonly string[]): string[] =>
  [...new Set(some)].filter((one) => !others.includes(one));

const orderOf = (formula: Formula): string[] =>
  allRows(formula)
    .filter(({ amount, name }) => amount > 0 && name !== "")
    .sort((one, other) => other.amount - one.amount)
    .map(shownName);

const partsOf = (formula: Formula): readonly KindPart[] =>
  kindParts(
    weightsOf(formula),
    allRows(formula).map(({ kind }) => kind),
  );

function rowsOf(before: Formula, after: Formula, by: "id" | "name"): ComparedRow[] {
  // What is rolled in stays the roll-in, whatever it is called.
  const key = (row: Row) => (by === "id" || row.id === ROLL_IN ? String(row.id) : nameKey(row.name));
  const [olds, news] = [allRows(before), allRows(after)];
  const [was, now] = [eachOf(before), eachOf(after)];
  const paired = news.map((row) => [olds.find((one) => key(one) === key(row)), row] as const);
  const gone = olds.filter((row) => !news.some((one) => key(one) === key(row)));
  return [...paired, ...gone.map((row) => [row, undefined] as const)].map(([old, row]): ComparedRow => {
    const isRenamed = old !== undefined && row !== undefined && old.name !== row.name;
    const shown = (one: Row | undefined) => one?.amount ?? null;
    const weighs = (one: Row | undefined, each: number) => (one === undefined ? null : one.amount * each);
    return {
      name: isRenamed ? `${shownName(row)} (was ${old.name})` : nameOf(row ?? old),
      percents: [shown(old), shown(row)],
      weights: [weighs(old, was), weighs(row, now)],
      isChanged: isRenamed || !isSame(shown(old), shown(row)),
    };
  });
}

const nameOf = (row: Row | undefined): string => (row === undefined ? "" : shownName(row));

const isSame = (one: number | null, other: number | null): boolean =>
  one === other || (one !== null && other !== null && Math.abs(one - other) <= 1e-9 * Math.max(one, other));

/** In the order of the method as it is then; what went stands at the end. */
function stepsOf(before: Formula, after: Formula): ComparedStep[] {
  const minutesIn = ({ steps }: Formula, name: string) => {
    const step = steps.find((one) => one.name === name);
    return step === undefined ? null : (step.minutes ?? 0);
  };
  const names = [...new Set([...after.steps, ...before.steps].map(({ name }) => name))];
  const all = names.map((name): ComparedStep => ({ name, minutes: [minutesIn(before, name), minutesIn(after, name)] }));
  return all.some(({ minutes: [was, now] }) => was !== now) ? all : [];
}

/** What is unusual for the style, each with the row it is said of. */
function remarksOf(formula: Formula, larder: Larder): string[] {
  const rows = allRows(formula);
  const all = allFlour(rows);
  const answer = orNull(() =>
    review(
      rows.map(({ name }) => name),
      rows.map(({ kind }) => kind),
      rows.map(({ amount }) => ratio(amount / all)),
      formula.style,
      larder,
    ),
  );
  return (answer ?? []).map(({ row, says }) => `${rows[row]?.name ?? "Formula"}: ${says}.`);
}

/** Allergens that the ingredient sheet names, and those that an ingredient has by its nature. */
function allergensOf(rows: readonly Row[], larder: Larder): string[] {
  return rows.flatMap(({ name, kind, amount }): string[] => {
    if (amount === 0) return [];
    const known = orNull(() => findIngredient(larder, name))?.allergens;
    const typed = known === null || known === undefined || /^none$/i.test(known.trim()) ? [] : known.split(/[,;]/);
    const byNature = builtInNamed(name)?.allergensByNature ?? (kind.word === "egg" ? ["egg"] : []);
    return [...typed, ...byNature].map((one) => one.trim().toLowerCase()).filter((one) => one !== "");
  });
}

/** Rows that are another than before, by their ids: what a change must have said. */
export function rowsChanged(before: Formula, after: Formula): number[] {
  const [olds, news] = [allRows(before), allRows(after)];
  const now = new Map(news.map((row) => [row.id, row]));
  const same = (one: Row, other: Row | undefined) =>
    other !== undefined && one.name === other.name && one.type === other.type && isSame(one.amount, other.amount);
  const then = new Set(olds.map(({ id }) => id));
  return [
    ...olds.flatMap((row) => (same(row, now.get(row.id)) ? [] : [row.id])),
    ...news.flatMap(({ id }) => (then.has(id) ? [] : [id])),
  ];
}
