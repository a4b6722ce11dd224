// What can only stand under a name.

import { isTotal } from "./clutter.ts";
import { hasAmount, isCapitals } from "./draft.ts";
import { modeOf, stageOf } from "./headings.ts";
import type { SourceLine } from "./source-lines.ts";
import { yieldIn } from "./yields.ts";

/** A line below which the one above it can only be a name: a yield, a total, another heading. */
export function opensOther(line: SourceLine): boolean {
  const { text } = line;
  if (yieldIn(text) !== undefined || isTotal(text)) return true;
  if (hasAmount(text.replace(/[([].*?[)\]]/g, " ")) || modeOf(text) !== undefined) return false;
  const found = stageOf(text, line.at, line.isMarked || /:$/.test(text) || isCapitals(text));
  return found !== undefined && "stage" in found && !found.isUnsure && !/^\d/.test(text);
}
