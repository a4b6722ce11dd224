// Amounts of ingredients in the one unit of a formula, and the same ingredient of several stages put together.

import { singularName } from "../../base/words.ts";
import { ingredientIn } from "../name-in.ts";
import type { Row } from "./description.ts";
import type { Reading } from "./row-context.ts";

/** An amount of one row that goes into the dough: grams, or hundredths of the flour. */
export type Portion = {
  readonly row: Row;
  readonly amount: number | null;
  readonly stage: number;
  /** Ripe starter that a preferment is built from. */
  readonly isSeed: boolean;
};

const identities = new WeakMap<Reading["kitchen"]["larder"], Map<string, string>>();
const MAX_KNOWN = 3000;

/** What makes two rows the same ingredient: the tables' name for both, else their own. */
export function identityOf({ type, name }: Row, { kitchen }: Reading): string {
  const known = identities.get(kitchen.larder) ?? new Map<string, string>();
  identities.set(kitchen.larder, known);
  const key = `${type}\n${name}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const usual = ingredientIn(name.split(/\s+/), kitchen)?.name;
  const identity = `${type} ${singularName(usual ?? name)}`;
  if (known.size >= MAX_KNOWN) known.clear();
  known.set(key, identity);
  return identity;
}

/** One portion an ingredient, in the order of their first rows; "yeast" alone is the one kind of yeast that is named beside it. */
export function merged(portions: readonly Portion[], reading: Reading): Portion[] {
  const keys = portions.map(({ row }) => identityOf(row, reading));
  // Where one kind of yeast has a name, "yeast" alone means it.
  const meant = new Map<string, string>();
  for (const type of ["yeast", "salt", "water"]) {
    const plain = `${type} ${type}`;
    const named = new Set(keys.filter((key) => key.startsWith(`${type} `) && key !== plain));
    const [only] = named;
    if (only !== undefined && named.size === 1) meant.set(plain, only);
  }
  const known = keys.map((key) => meant.get(key) ?? key);
  const byKey = new Map<string, Portion>();
  portions.forEach((portion, at) => {
    const key = known[at] ?? "";
    const before = byKey.get(key);
    if (before === undefined) byKey.set(key, portion);
    else {
      const amount = before.amount === null || portion.amount === null ? null : before.amount + portion.amount;
      byKey.set(key, { ...before, amount });
    }
  });
  return [...byKey.values()];
}
