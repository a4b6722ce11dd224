// Lines that are ingredients or steps, and what is neither.

import { grams } from "../../base/units.ts";
import { prefermentIn } from "../kinds.ts";
import { lineKey } from "./corrections.ts";
import {
  addRow,
  correctedRow,
  type Draft,
  hasAmount,
  ignore,
  isCapitals,
  isFirstOf,
  type Place,
  sideStage,
  stageAt,
  stageLike,
  takeYield,
} from "./draft.ts";
import { readRow } from "./row.ts";
import type { Reading, RowRead } from "./row-context.ts";
import { rowAndBeside, stageTagged } from "./row-parts.ts";
import { listedRows, roleBeside, splitRows } from "./rows-in-line.ts";
import type { SourceLine } from "./source-lines.ts";
import { namesStage } from "./stage-use.ts";
import { doughTemperatureIn, isStep, stepsIn } from "./steps.ts";
import { cachedByText } from "./text-cache.ts";
import { tinsByWeight } from "./tins.ts";
import { yieldOfStep } from "./yield-of-step.ts";
import { NO_YIELD, type YieldRead } from "./yield-words.ts";
import { yieldIn } from "./yields.ts";

/** "Bake 12 minutes. Yield: 2 dozen." */
function yieldBehind(text: string): YieldRead | undefined {
  const words = /[.!;]\s+((?:makes|yields?)\b[^.!]*)[.!]?$/i.exec(text)?.[1];
  return words === undefined ? undefined : yieldIn(words);
}

export function addSteps(draft: Draft, line: SourceLine, text: string): boolean {
  draft.doughTemperature ??= doughTemperatureIn(text);
  const stepYield = yieldOfStep(text) ?? yieldBehind(text);
  if (stepYield !== undefined) takeYield(draft, stepYield);
  const tins = draft.yield.pieces === null && !draft.yield.isSpan ? tinsByWeight(text) : undefined;
  if (tins !== undefined) takeYield(draft, { ...NO_YIELD, pieces: tins.many, tins: tins.many });
  for (const { isUnclear, ...step } of stepsIn(text)) {
    draft.steps.push({ line: line.at, ...step });
    if (!isUnclear) continue;
    draft.questions.push({
      reason: "step time",
      line: line.at,
      about: [step.text.slice(0, 80)],
      choices: [],
      isOpen: false,
    });
  }
  return true;
}

/** "30 g oil, plus 50 g for the tin", "flour (sponge) 6 kg": a line whose parts go to several places. */
function takeParted(draft: Draft, line: SourceLine, reading: Reading): boolean {
  const { text } = line;
  const parts = rowAndBeside(text, reading);
  if (parts !== undefined) {
    for (const { row, role } of parts)
      addRow(draft, line.at, row, role === undefined ? stageAt(draft) : sideStage(draft, role));
    return true;
  }
  const tagged = hasAmount(text) ? stageTagged(text, reading) : undefined;
  if (tagged === undefined || (tagged.row.grams ?? tagged.row.percent) === null) return false;
  addRow(draft, line.at, tagged.row, stageLike(draft, tagged.stage));
  return true;
}

export function takeBody({ draft, line, reading }: Place): boolean {
  const { text } = line;
  const isInMethod = draft.mode === "method";
  // What stands in brackets makes no sentence of a row.
  const words = text.replace(/\([^)]*\)|\.{2,}/g, " ").split(/\s+/).length;
  if (isStep(text, hasAmount(text), isInMethod)) return addSteps(draft, line, text);
  const rows = isInMethod ? undefined : listedRows(text, reading);
  if (rows !== undefined) {
    for (const listRow of rows) addRow(draft, line.at, listRow, stageAt(draft));
    return true;
  }
  if (!isInMethod && takeParted(draft, line, reading)) return true;
  const row = readRow(text, reading);
  const isAmount = row.grams !== null || row.percent !== null || row.bare !== null;
  const isUnclear = row.asks.some(({ reason }) => reason === "unclear amount" || reason === "grams or pieces");
  const isNamed = row.isKnown || row.type !== "" || prefermentIn(row.name) !== undefined;
  const isSentence = words > 9 && !(row.isKnown && isAmount);
  if (isInMethod && (!isAmount || !isNamed || words > 9 || /[.!]$/.test(text))) return addSteps(draft, line, text);
  const role = roleBeside(text);
  const several = isUnclear || isSentence ? splitRows(text, reading) : undefined;
  if (
    (isAmount || isUnclear) &&
    (!isSentence || several !== undefined) &&
    (isNamed || draft.mode !== "start" || words <= 5)
  ) {
    const isSure = isNamed && row.name !== "" && row.asks.length === 0;
    if (isSure && role === undefined && several === undefined && draft.mode === "ingredients" && isPlain(line))
      reading.plain.add(text);
    for (const one of several ?? [row])
      addRow(draft, line.at, one, role === undefined ? stageAt(draft) : sideStage(draft, role));
    return true;
  }
  if (role !== undefined && !isAmount) return ignore(draft, line, "beside the dough");
  const isOf = draft.stages.some(({ preferment, role: one }) => (preferment !== "" || one === "soaker") && words <= 6);
  const isLoose =
    /\b(?:to taste|as (?:needed|required|desired)|q\.?s\.?|if needed)\b/i.test(text) && draft.mode === "ingredients";
  if (
    (isNamed || row.isAll || namesStage(text, draft)) &&
    (words <= 7 || (row.keeps !== null && words <= 12)) &&
    (row.isKnown || isOf || namesStage(text, draft) || row.isAll || isLoose) &&
    !/[.!?]$/.test(text)
  ) {
    addRow(draft, line.at, row, stageAt(draft));
    return true;
  }
  const isMeant = row.asks.some(({ reason }) => reason === "misspelt") && words <= 5 && draft.mode === "ingredients";
  if (isMeant) {
    addRow(draft, line.at, row, stageAt(draft));
    return true;
  }
  // "for Saturday we need the oat loaf, 24 x 650 g": a sentence that says how many.
  const times =
    draft.rows.length > 0 ? undefined : /(?<![\d.,])\d{1,4}\s*[x×@]\s*\d[\d.,]*\s?(?:k?g|oz|lbs?)(?!\p{L})/iu;
  const wanted = yieldIn(times?.exec(text)?.[0] ?? "");
  if (wanted === undefined) return ignore(draft, line, "no ingredient");
  takeYield(draft, wanted);
  return ignore(draft, line, "yield");
}

/** Nothing sets it off, so that no other line decides what it is. */
const isPlain = ({ isMarked, text }: SourceLine): boolean =>
  !isMarked && /\d/.test(text) && !text.endsWith(":") && !isCapitals(text);

/** "250 g bread flour": a weight and a name, and nothing beside them. Spoons and cups weigh differently by the number. */
const SIMPLE = /^(\d{1,6}(?:\.\d{1,2})?)\s?((?:k?g|oz|lbs?)\s+\p{L}[\p{L} -]*)$/u;

/** A row that was one before, or that can be nothing else: lines come again with every keystroke. */
export function takePlain(draft: Draft, line: SourceLine, reading: Reading): boolean {
  const { text } = line;
  if (draft.mode !== "ingredients" || line.isMarked || isFirstOf(draft)) return false;
  const row = reading.plain.has(text) ? reading.known.get(text) : simpleRow(text, reading);
  if (row === undefined) return false;
  addRow(draft, line.at, row, stageAt(draft));
  return true;
}

/** So much of a thing is so many times one of it: what is read of "1 g bread flour" goes for every weight. */
function simpleRow(text: string, reading: Reading): RowRead | undefined {
  const [, number = "", rest = ""] = SIMPLE.exec(text) ?? [];
  const amount = Number(number);
  if (rest === "" || !(amount > 0)) return undefined;
  const one = readRow(`1 ${rest}`, reading);
  const isSure = one.isKnown && one.type !== "" && one.grams !== null && one.remarks.length + one.asks.length === 0;
  if (!isSure || one.grams === null || roleOf(rest) !== undefined) return undefined;
  return { ...one, text, grams: grams(one.grams * amount) };
}

const roleOf = cachedByText((text) => roleBeside(text));

export function takeCorrected({ draft, line, reading }: Place): boolean {
  const correction = reading.corrections.lines[lineKey(line.text)];
  if (correction === undefined) return false;
  if (correction.is === "not an ingredient") return ignore(draft, line, "not an ingredient");
  const row = correctedRow(readRow(line.text, reading), correction, reading);
  const role = roleBeside(line.text);
  addRow(draft, line.at, row, role === undefined ? stageAt(draft) : sideStage(draft, role));
  return true;
}
