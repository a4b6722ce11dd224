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
  // "Sour: rye flour 8 kg, water 6 kg"
  const head = /^([^:;,]{3,40}):\s+\S/.exec(text)?.[1];
  if (head !== undefined && isStage(head, line.at, true)) return true;
  if (hasAmount(text.replace(/[([].*?[)\]]/g, " ")) || modeOf(text) !== undefined) return false;
  return !/^\d/.test(text) && isStage(text, line.at, line.isMarked || /:$/.test(text) || isCapitals(text));
}

function isStage(text: string, line: number, isSetOff: boolean): boolean {
  const stage = stageOf(text, line, isSetOff);
  return stage !== undefined && "stage" in stage && !stage.isUnsure;
}
