// Lines that are neither rows nor steps: headings of the method, totals, yields, tins, and what web pages put around a recipe.

import { clutterIn, isNutrition, isStepNumber, isTotal } from "./clutter.ts";
import { type Draft, hasAmount, ignore, isFirstOf, type Place, takeYield } from "./draft.ts";
import { isFirstDay, modeOf } from "./headings.ts";
import { readRow } from "./row.ts";
import { isSeparator } from "./source-lines.ts";
import { isStep } from "./steps.ts";
import { tinIn, tinsByWeight } from "./tins.ts";
import { NO_YIELD } from "./yield-words.ts";
import { yieldIn } from "./yields.ts";

export function takeMode({ draft, line, isSetOff }: Place): boolean {
  const mode = modeOf(line.text);
  if (mode === undefined || !(isSetOff || line.text.split(" ").length <= 4)) return false;
  draft.mode = mode;
  return ignore(draft, line, "heading");
}

export function takeAside({ draft, line }: Place): boolean {
  const { mode } = draft;
  const isAside = mode === "nutrition" || mode === "equipment" || mode === "note" || mode === "web page";
  return isAside && ignore(draft, line, mode);
}

/** A number alone under a rule adds up what stands above it. */
function isSumAlone({ draft, line, before }: Place): boolean {
  return (
    draft.rows.length > 1 &&
    /^=?\s*[\d.,]+\s?(?:%|k?g|oz|lbs?)?$/i.test(line.text) &&
    before !== undefined &&
    isSeparator(before.text)
  );
}

export function takeTotal(place: Place): boolean {
  const { draft, line, reading } = place;
  const { text } = line;
  if (!(isTotal(text) || isSumAlone(place)) || /\btime\b|\d\s*(?:min|h)/i.test(text)) return false;
  const besideRow = readRow(text.replace(/^\D*?(?=[\d.,]*\d)/, "flour "), reading);
  // "Total dough: 25 kg" over or under percentages says how much is made.
  if (besideRow.grams !== null && draft.rows.every((row) => row.grams === null))
    takeYield(draft, { ...NO_YIELD, total: besideRow.grams });
  draft.totals.push({
    line: line.at,
    grams: besideRow.grams ?? (besideRow.bare !== null && reading.unit !== "" ? besideRow.bare : null),
    bare: besideRow.bare,
    percent: besideRow.percent,
    stage: draft.stage,
    rows: draft.rows.length,
  });
  return ignore(draft, line, "total");
}

export function takeClutter({ draft, line, next, before }: Place): boolean {
  const clutter = clutterIn(line.text);
  if (clutter !== undefined) return ignore(draft, line, clutter);
  // "20 cm round tin"
  if (!isStep(line.text, false, false) && isTinAlone(draft, line.text)) return ignore(draft, line, "tin");
  const tins = isFirstOf(draft) ? undefined : tinsByWeight(line.text);
  if (tins?.isAll) {
    takeYield(draft, { ...NO_YIELD, pieces: tins.many, tins: tins.many });
    return ignore(draft, line, "tin");
  }
  const isFigures =
    isNutrition(line.text) &&
    draft.mode === "method" &&
    (isNutrition(next[0]?.text ?? line.text) ||
      clutterIn(before?.text ?? "") === "nutrition" ||
      isNutrition(before?.text ?? ""));
  return isFigures && ignore(draft, line, "nutrition");
}

const FOR_SO_MANY = /^(?:per|for|pour|para|für|voor|til|till)\s+(?:about |circa |ca\.? )?\d{1,4}\s+\p{L}{3,}/iu;

const isTinAlone = (draft: Draft, text: string): boolean =>
  draft.mode !== "method" &&
  !isFirstOf(draft) &&
  tinIn(text) !== undefined &&
  text.split(" ").length <= 12 &&
  yieldIn(text) === undefined &&
  !isStep(text, false, false) &&
  !/\d\s?(?:g|kg|oz|lbs?)(?!\p{L})/iu.test(text);

export function takeMade({ draft, line }: Place): boolean {
  const lineYield = yieldIn(line.text);
  // "Per 1 teglia 60x40": so many of a thing that nobody here knows.
  if (lineYield === undefined && draft.rows.length === 0 && FOR_SO_MANY.test(line.text) && !hasAmount(line.text))
    return ignore(draft, line, "yield");
  if (lineYield === undefined || (draft.mode === "method" && isStep(line.text, true, true))) return false;
  takeYield(draft, lineYield);
  return ignore(draft, line, "yield");
}

/** "Step 3" over a step, "Day 1" over the first stage. */
export const isNumberAlone = (draft: Draft, text: string): boolean =>
  isFirstDay(text) ? draft.stage < 0 || draft.mode === "method" : draft.mode === "method" && isStepNumber(text);
