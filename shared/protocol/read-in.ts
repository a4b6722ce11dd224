// The question that turns pasted recipe text into rows, checked at both ends.
import { refuse, refuseUnread } from "../base/refusal.ts";
import type { CupSystem } from "../base/volumes.ts";
import type { ReadLine, ReadRecipe, WrittenRecipe } from "../recipe/read-line.ts";

export const CUP_CHOICES: readonly CupSystem[] = ["US", "AU", "UK", "EU"];
/** More than any recipe has; a text that is longer is something else. */
export const MOST_LINES = 150;
export const LONGEST_LINE = 1000;

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null;
const isText = (value: unknown): value is string => typeof value === "string" && value.length <= LONGEST_LINE;

/** The question as it arrived at the add-on, or a refusal. */
export function readAsk({ cups, lines }: Readonly<Record<string, unknown>>): WrittenRecipe {
  const system = CUP_CHOICES.find((one) => one === cups);
  if (system === undefined || !Array.isArray(lines)) {
    return refuseUnread("The lines from the sidebar");
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
export function readAnswer(raw: unknown): ReadRecipe | null {
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
