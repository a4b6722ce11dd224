// What a person said of a recipe's lines, names and questions.
import type { Question } from "./description.ts";

/** What a person said of a recipe. Lines go by their own text, so that nothing is lost when others are edited. */
export type Corrections = {
  readonly lines: Readonly<Record<string, LineCorrection>>;
  /** By the name as it stands in the text: taught once, read so everywhere. */
  readonly names: Readonly<Record<string, NameCorrection>>;
  /** Answers to questions about the whole, by `questionKey`. */
  readonly answers: Readonly<Record<string, string>>;
};
export type LineCorrection = {
  readonly name?: string;
  readonly type?: string;
  readonly grams?: number;
  readonly percent?: number;
  readonly is?: "ingredient" | "not an ingredient";
};
export type NameCorrection = { readonly name?: string; readonly type?: string };

export const NO_CORRECTIONS: Corrections = { lines: {}, names: {}, answers: {} };
export const questionKey = ({ reason, about }: Pick<Question, "reason" | "about">): string =>
  reason === "which unit" || reason === "thousands or decimals" ? reason : [reason, ...about.slice(0, 1)].join(": ");
/** A line of the text as corrections know it. */
export const lineKey = (text: string): string => text.trim().replace(/\s+/g, " ");
