// What a recipe line is taken apart into: amounts, what they hang on, and words.

import type { Amount } from "./amount.ts";
import type { AmountFault } from "./amount-faults.ts";
import { lastOf, type Token } from "./tokens.ts";
import type { Unit } from "./unit-words.ts";

/** How an amount hangs on what stands before it: added, said to be the same, another to choose, taken along, or unsaid. */
export type Link = "plus" | "same" | "or" | "with" | "unsaid";
/** One way the line says an amount, and the words that follow it. */
export type Choice = {
  readonly amount: Amount;
  readonly bracketed: boolean;
  readonly link: Link;
  readonly words: string[];
  /** What stands before these brackets: a number of things, whose weight each or all together the amount is. */
  readonly counted: Counted | undefined;
};
export type CountUnit = Extract<Unit, { of: "count" }>;
export type Counted = {
  readonly least: number;
  readonly most: number;
  readonly unit: CountUnit;
  /** "2 (8 oz) packages", with nothing between. */
  readonly isBehindNumber: boolean;
  /** "3 eggs (150 g)". */
  readonly isBehindName: boolean;
};
/** Amounts that say the same thing; the entries of a line are added up. */
export type Entry = { readonly choices: Choice[] };
export type Pieces = {
  /** Inside brackets "each" speaks of what stands before them. */
  readonly inBrackets: boolean;
  readonly entries: Entry[];
  readonly before: string[];
  /** "plus more for dusting". */
  more: boolean;
  fault: AmountFault | undefined;
  /** What the next amount would hang on. */
  link: Link | undefined;
  /** A word such as "scant" directly before an amount. */
  loose: string | undefined;
};

export const textOf = (token: Token | undefined): string => token?.text ?? "";
export const wordsOf = ({ entries, before }: Pieces): string[] =>
  lastOf(lastOf(entries)?.choices ?? NONE)?.words ?? before;
const NONE: readonly Choice[] = [];
