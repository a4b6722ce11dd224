// What a change is: the words it is asked with, what it makes of a formula, and all that it says beforehand.
import type { Larder } from "../larder/larder.ts";
import type { Formula } from "./formula.ts";

/** What a change asks; a text is kept as it was typed. */
export type Field = {
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  readonly choices?: readonly string[];
  /** What it starts with; "" for nothing. */
  readonly start: string;
  readonly isText?: boolean;
  /** Asked only while another field is one of these. */
  readonly when?: readonly [field: string, ...values: string[]];
};
export type Values = Readonly<Record<string, string>>;

/** Parts of a formula beside its rows. */
export type Part = "set apart" | "roll-in" | "batch" | "sizes" | "tin" | "steps";

export type Changed = {
  readonly formula: Formula;
  /** One line of what changed, for the history. */
  readonly line: string;
  /** What it moves: rows by their ids, and parts by their names. Nothing else is another than before. */
  readonly rows: ReadonlySet<number>;
  readonly parts: readonly Part[];
  /** What to know of it: ranges, estimates, what else it brings. */
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
};

export type Change = {
  readonly name: string;
  readonly group: string;
  readonly label: string;
  /** Words by which it is found beside its label. */
  readonly words: string;
  readonly fields: (formula: Formula) => readonly Field[];
  /** Refuses in sentences what cannot be done, and says what would do. */
  readonly apply: (formula: Formula, values: Values, larder: Larder) => Changed;
};
