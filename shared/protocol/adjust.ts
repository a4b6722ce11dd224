// What the panel Adjust asks, and what it gets to work with.
import type { Wish } from "../adjust/changes.ts";
import type { Compared } from "../adjust/comparison.ts";
import type { Formula } from "../adjust/formula.ts";
import type { Money } from "../adjust/money.ts";
import type { LabelFacts, Printed } from "../adjust/printed.ts";
import type { Larder } from "../larder/larder.ts";

/** The formula sheet in front: all that the panel needs to work out changes by itself. */
export type Adjustable = {
  readonly sheet: string;
  readonly id: number;
  readonly title: string;
  readonly version: string;
  /** What its check line says is wrong; "" for nothing. */
  readonly says: string;
  /** What was read, in short: nothing is written where the sheet is another by then. */
  readonly seen: number;
  readonly formula: Formula;
  readonly money: Money;
  readonly larder: Larder;
  readonly label: LabelFacts;
};

/** A sheet as it was read. */
type Same = Pick<Adjustable, "sheet" | "id" | "seen">;

/** Changes taken, one after another: into the sheet, or into a new one with a title. */
export type TakeChangesAsk = Same & { readonly wishes: readonly Wish[]; readonly title: string | null };
export type TakeChangesAnswer = {
  readonly sheet: string;
  readonly number: number;
  /** Whether hand edits were kept as a version first. */
  readonly wasEdited: boolean;
  readonly note?: string;
};

/** What is kept of a formula, the newest first. */
export type Versions = Same & {
  readonly versions: readonly {
    readonly number: number;
    readonly when: string;
    readonly line: string;
    /** Whether the sheet is this version as it stands. */
    readonly isNow: boolean;
  }[];
  /** Other formula sheets of the workbook. */
  readonly others: readonly string[];
};

/** "now", a version's number, or "sheet:" and the name of another formula sheet. */
export type CompareAsk = { readonly sheet: string; readonly one: string; readonly other: string };
export type Comparison = Compared & {
  readonly names: readonly [before: string, after: string];
  readonly labels: readonly [before: Printed, after: Printed];
};

export type AdjustQuestions = {
  /** The formula sheet in front, to be adjusted. */
  adjusting: { readonly ask: Record<string, never>; readonly answer: Adjustable };
  takeChanges: { readonly ask: TakeChangesAsk; readonly answer: TakeChangesAnswer };
  versions: { readonly ask: Record<string, never>; readonly answer: Versions };
  /** The sheet as it stands, kept as a version with a line about it. */
  keepVersion: { readonly ask: { readonly sheet: string; readonly line: string }; readonly answer: TakeChangesAnswer };
  compare: { readonly ask: CompareAsk; readonly answer: Comparison };
  bringBack: { readonly ask: Same & { readonly number: number }; readonly answer: TakeChangesAnswer };
};
