// The question that turns pasted recipe text into rows, checked at both ends.
import { refuse, refuseUnread } from "../base/refusal.ts";
import type { CupSystem } from "../base/volumes.ts";

/** One line as it stands now; `name` is what a person wrote for its ingredient, "" where the line says it. */
export type LineAsked = { readonly text: string; readonly name: string };
export type ReadAsk = { readonly cups: CupSystem; readonly lines: readonly LineAsked[] };

export type ReadLine = {
  /** Which of the lines asked about it comes from, counted from 0; one line may hold several ingredients. */
  readonly from: number;
  readonly text: string;
  /** An aside is kept, and does not go into the formula. */
  readonly is: "ingredient" | "heading" | "aside";
  /** "" where it has to be asked for, as with kind; grams are null then. */
  readonly name: string;
  readonly kind: string;
  readonly grams: number | null;
  /** Remarks, a sentence each. */
  readonly says: string;
  /** Why name, kind or grams are blank, and what to write. */
  readonly asks: string;
};
export type ReadAnswer = {
  /** What the recipe calls itself; "" where it does not say. */
  readonly title: string;
  readonly lines: readonly ReadLine[];
  /** About the whole, such as a larder that could not be read. */
  readonly says: string;
};

export const CUP_CHOICES: readonly CupSystem[] = ["US", "AU", "UK", "EU"];
/** More than any recipe has; a text that is longer is something else. */
export const MOST_LINES = 150;
export const LONGEST_LINE = 1000;

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null;
const isText = (value: unknown): value is string => typeof value === "string" && value.length <= LONGEST_LINE;

/** The question as it arrived at the add-on, or a refusal. */
export function readAsk({ cups, lines }: Readonly<Record<string, unknown>>): ReadAsk {
  const system = CUP_CHOICES.find((one) => one === cups);
  if (system === undefined || !Array.isArray(lines)) {
    return refuseUnread("The lines from the bench");
  }
  if (lines.length > MOST_LINES) {
    return refuse(`That is ${lines.length} lines; paste one recipe at a time, ${MOST_LINES} lines at most.`);
  }
  return {
    cups: system,
    lines: lines.map((line: unknown, at) => {
      if (isRecord(line) && isText(line.text) && isText(line.name)) return { text: line.text, name: line.name };
      return refuse(`Line ${at + 1} is no line of a recipe: ${LONGEST_LINE} characters are the most.`);
    }),
  };
}

/** The answer as it arrived in the bench; null where it is none. */
export function readAnswer(raw: unknown): ReadAnswer | null {
  if (!isRecord(raw) || typeof raw.title !== "string" || typeof raw.says !== "string") return null;
  if (!Array.isArray(raw.lines) || !raw.lines.every(isLine)) return null;
  return { title: raw.title, says: raw.says, lines: raw.lines };
}

function isLine(raw: unknown): raw is ReadLine {
  if (!isRecord(raw)) return false;
  const { from, is, grams } = raw;
  const texts = [raw.text, raw.name, raw.kind, raw.says, raw.asks].every((one) => typeof one === "string");
  const known = is === "ingredient" || is === "heading" || is === "aside";
  return texts && known && Number.isInteger(from) && (grams === null || Number.isFinite(grams));
}
