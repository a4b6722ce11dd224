// Lines that are ingredients or steps, and what is neither.

import { prefermentIn } from "../kinds.ts";
import { lineKey } from "./described.ts";
import {
  addRow,
  correctedRead,
  type Draft,
  hasAmount,
  ignore,
  type Place,
  sideStage,
  stageAt,
  takeYield,
} from "./draft.ts";
import { listedRows, roleBeside, splitRows } from "./inline.ts";
import { readRow } from "./row.ts";
import type { SourceLine } from "./source-lines.ts";
import { doughTemperatureIn, isStep, stepsIn } from "./steps.ts";
import { namesStage } from "./taken.ts";
import { yieldOfStep } from "./yields.ts";

function addSteps(draft: Draft, line: SourceLine, text: string): boolean {
  draft.doughTemperature ??= doughTemperatureIn(text);
  const made = yieldOfStep(text);
  if (made !== undefined) takeYield(draft, made);
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

export function takeBody({ draft, line, reading }: Place): boolean {
  const { text } = line;
  const isInMethod = draft.mode === "method";
  const words = text.split(" ").length;
  if (isStep(text, hasAmount(text), isInMethod)) return addSteps(draft, line, text);
  const listed = isInMethod ? undefined : listedRows(text, reading);
  if (listed !== undefined) {
    for (const read of listed) addRow(draft, line.at, read, stageAt(draft));
    return true;
  }
  const read = readRow(text, reading);
  const isAmount = read.grams !== null || read.percent !== null || read.bare !== null;
  const isUnclear = read.asks.some(({ reason }) => reason === "unclear amount" || reason === "grams or pieces");
  const isNamed = read.isKnown || read.type !== "" || prefermentIn(read.name) !== undefined;
  const isSentence = words > 9 && !(read.isKnown && isAmount);
  if (isInMethod && (!isAmount || !isNamed || words > 9 || /[.!]$/.test(text))) return addSteps(draft, line, text);
  const role = roleBeside(text, reading.kitchen);
  if ((isAmount || isUnclear) && !isSentence && (isNamed || draft.mode !== "start" || words <= 5)) {
    const several = isUnclear ? splitRows(text, reading) : undefined;
    for (const one of several ?? [read])
      addRow(draft, line.at, one, role === undefined ? stageAt(draft) : sideStage(draft, role));
    return true;
  }
  if (role !== undefined && !isAmount) return ignore(draft, line, "beside the dough");
  const isOf = draft.stages.some(({ preferment, role: one }) => (preferment !== "" || one === "soaker") && words <= 6);
  const isLoose =
    /\b(?:to taste|as (?:needed|required|desired)|q\.?s\.?|if needed)\b/i.test(text) && draft.mode === "ingredients";
  if (
    (isNamed || read.isAll || namesStage(text, draft)) &&
    (words <= 7 || (read.keeps !== null && words <= 12)) &&
    (read.isKnown || isOf || namesStage(text, draft) || read.isAll || isLoose) &&
    !/[.!?]$/.test(text)
  ) {
    addRow(draft, line.at, read, stageAt(draft));
    return true;
  }
  const isMeant = read.asks.some(({ reason }) => reason === "misspelt") && words <= 5 && draft.mode === "ingredients";
  if (isMeant) {
    addRow(draft, line.at, read, stageAt(draft));
    return true;
  }
  return ignore(draft, line, "no ingredient");
}

export function takeCorrected({ draft, line, reading }: Place): boolean {
  const correction = reading.corrections.lines[lineKey(line.text)];
  if (correction === undefined) return false;
  if (correction.is === "not an ingredient") return ignore(draft, line, "not an ingredient");
  const read = correctedRead(readRow(line.text, reading), correction, reading);
  const role = roleBeside(line.text, reading.kitchen);
  addRow(draft, line.at, read, role === undefined ? stageAt(draft) : sideStage(draft, role));
  return true;
}
