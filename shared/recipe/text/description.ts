// A recipe as it was understood: what its text says, what was left aside and why, and what only a person can tell.

import type { Celsius, Grams, Minutes } from "../../base/units.ts";
import type { CupSystem } from "../../base/volumes.ts";
import type { Larder } from "../../larder/larder.ts";
import type { Formula } from "./described-formula.ts";
import type { TinRead } from "./tins.ts";

/** What reading needs to know of the bakery. */
export type Kitchen = { readonly cups: CupSystem; readonly larder: Larder };

/** What a stage is to the dough. Preferments and soakers are part of it; an overall formula says all of it once more. */
export type StageRole =
  | "dough"
  | "preferment"
  | "soaker"
  | "overall"
  | "filling"
  | "topping"
  | "egg wash"
  | "icing"
  | "roll-in"
  | "dusting"
  | "part";
/** What goes into the mixer, and so into the sums. */
export const IN_DOUGH: ReadonlySet<StageRole> = new Set(["dough", "preferment", "soaker"]);

export type Stage = {
  readonly role: StageRole;
  /** As its heading says it; "" for the rows before any heading. */
  readonly name: string;
  /** The line of its heading, null where it has none. */
  readonly line: number | null;
  /** "poolish", "levain" and so on; "" where it is no preferment. */
  readonly preferment: string;
  readonly hours: number | null;
  readonly temperature: Celsius | null;
};

/** What was said of a row beside its name and amount, and how its amount was chosen. */
export type Remark = {
  readonly reason:
    | "temperature"
    | "middle of a range"
    | "note"
    | "used besides"
    | "divided"
    | "unit of the text"
    | "of the total"
    | "other column"
    | "left over"
    | "seed as wet as its build";
  readonly says: string;
};

/** How the text gives an amount. */
export type AmountOf = "weight" | "percentage" | "measure" | "count" | "nothing";

export type Row = {
  readonly line: number;
  /** The part of its line that it was read from. */
  readonly text: string;
  readonly name: string;
  /** The name as it stands in the text, whatever a person made of it. */
  readonly readName: string;
  /** A type of ingredient, or a preferment with its hydration; "" where it has to be asked for. */
  readonly type: string;
  readonly amountOf: AmountOf;
  readonly grams: Grams | null;
  /** In hundredths: 65 for 65 %. */
  readonly percent: number | null;
  readonly stage: number;
  readonly optional: boolean;
  readonly remarks: readonly Remark[];
  /** The stage that it takes, or a part of it, whole; it adds nothing of its own. */
  readonly takes: number | null;
  /** What is kept back of a stage that it takes otherwise whole. */
  readonly keeps: Grams | null;
  /** Whether the ingredient tables know the name. */
  readonly isKnown: boolean;
};

export type IgnoredReason =
  | "heading"
  | "title"
  | "separator"
  | "web page"
  | "nutrition"
  | "equipment"
  | "tin"
  | "note"
  | "total"
  | "column headings"
  | "goes on"
  | "beside the dough"
  | "no ingredient"
  | "not an ingredient"
  | "yield"
  | "unit"
  | "other recipe";
export type Ignored = { readonly line: number; readonly text: string; readonly reason: IgnoredReason };

export type Step = {
  readonly line: number;
  readonly text: string;
  readonly minutes: Minutes | null;
  readonly temperature: Celsius | null;
};

export type Yield = {
  readonly pieces: number | null;
  readonly pieceWeight: Grams | null;
  readonly tins: number | null;
  /** Dough or batter in all. */
  readonly total: Grams | null;
};

export type QuestionReason =
  | "which unit"
  | "which column"
  | "thousands or decimals"
  | "grams or pieces"
  | "no amount"
  | "unclear amount"
  | "which name"
  | "misspelt"
  | "which type"
  | "hydration"
  | "total differs"
  | "percent and weight differ"
  | "flour is not 100 %"
  | "overall and stages differ"
  | "more than was made"
  | "part of the dough"
  | "on top or included"
  | "share of the preferment"
  | "mixed amounts"
  | "several recipes"
  | "several doughs"
  | "yield differs"
  | "step time"
  | "no flour"
  | "left out"
  | "no ingredient";

export type Question = {
  readonly reason: QuestionReason;
  /** The line it is about; null where it is about the whole. */
  readonly line: number | null;
  /** What is asked about, and the figures that the sentence names. */
  readonly about: readonly string[];
  /** What may be chosen; empty where something is typed. */
  readonly choices: readonly string[];
  /** Whether a sheet may be built before it is answered. */
  readonly isOpen: boolean;
  /** The text of the row it is about, where its line holds several. */
  readonly part?: string;
};

export type Described = {
  readonly title: string;
  readonly yield: Yield;
  readonly stages: readonly Stage[];
  readonly rows: readonly Row[];
  readonly ignored: readonly Ignored[];
  readonly steps: readonly Step[];
  readonly doughTemperature: Celsius | null;
  /** The tin that it names with its sizes, where it names one alone. */
  readonly tin: TinRead | null;
  readonly questions: readonly Question[];
  readonly formula: Formula;
};
