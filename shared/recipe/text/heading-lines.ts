// Lines that head what follows: a stage of the dough, a part beside it, or a heading with its rows on the same line.

import { singularName } from "../../base/words.ts";
import { prefermentIn } from "../kinds.ts";
import { isTotal } from "./clutter.ts";
import { IN_DOUGH, type Stage, type StageRole } from "./description.ts";
import {
  addRow,
  addStage,
  type Draft,
  hasAmount,
  ignore,
  isCapitals,
  looksLikeRow,
  type Place,
  stageAt,
} from "./draft.ts";
import { headingCore, isFirstDay, modeOf, prefermentWordIn, stageOf } from "./headings.ts";
import { readRow } from "./row.ts";
import type { Reading, RowRead } from "./row-context.ts";
import { rowText } from "./row-text.ts";
import { listedRows, splitRows } from "./rows-in-line.ts";
import type { SourceLine } from "./source-lines.ts";
import { isStep } from "./steps.ts";
import { titleIn } from "./titles.ts";
import { opensOther } from "./under-heading.ts";
import { yieldIn } from "./yields.ts";

/** "LIQUID LEVAIN 8:00pm", "Dough, 7 am": when a stage is made. */
const CLOCK =
  /(?:@|\bat\b)?\s*(?<![\d.,])\d{1,2}(?:[:.]\d{2}\s*(?:[ap]\.?m\b\.?|uhr\b|h\b)?|\s*(?:[ap]\.?m\b\.?|uhr\b))/gi;

/** Opens a stage, where the line is a heading. */
export function takeHeading({ draft, line, reading, next, isFirst, isSetOff }: Place): boolean {
  const { text, at } = line;
  if (text.length > 70) return false;
  const open = text
    .replace(/[([{][^)\]}]*[)\]}]/g, " ")
    .replace(/\d+(?:[.,]\d+)?\s?%\s*(?:hydration|of (?:the )?(?:total )?flour|pre-?fermented(?: flour)?)/gi, " ");
  const isColon = /:$/.test(text);
  if (hasAmount(open) && !isColon && !line.isMarked) return false;
  const numbered = open.replace(/\b(?:stage|step|part|phase|day|build|feed)\s*\d+|^\s*\d+[.)]/gi, " ");
  const timed = numbered
    .replace(CLOCK, " ")
    .replace(/\d[\d.,/ ½¼¾–-]*\s*(?:h(?:ou)?rs?|h|min(?:ute)?s?|days?|°\s*[CF]?|[CF]|%)(?!\p{L})/giu, " ");
  if (/\d/.test(timed) && (!isSetOff || isRowInCapitals(line, timed, reading))) return false;
  if (rowText(text).isAll && !isColon) return false;
  if (isStep(text, false, false) && !isColon && !line.isMarked) return false;
  const match = stageOf(text, at, isSetOff || (line.isMarked && !hasAmount(open)));
  if (match === undefined || !("stage" in match)) return false;
  const { stage, isUnsure } = match;
  const following = next.find(({ text: one }) => one !== "");
  if (isFirst && (isUnsure || stage.role === "part")) return false;
  if (isFirst && stage.role === "overall") {
    draft.title = "";
  }
  if (draft.mode === "method" && !looksLikeRow(following) && !(isSetOff && !isUnsure)) return false;
  if (draft.mode === "method" && following !== undefined && isStep(following.text, hasAmount(following.text), true)) {
    // "Final dough" over steps of the method heads no ingredients.
    ignore(draft, line, "heading");
    return true;
  }
  if (!isSetOff && (stage.preferment !== "" || stage.role === "soaker")) {
    const isThere = draft.stages.some(
      (one, index) =>
        one.role === stage.role && one.preferment === stage.preferment && draft.rows.some((row) => row.stage === index),
    );
    if (isThere || line.isListed || !looksLikeRow(following)) return false;
  }
  if (!isSetOff && isFirst && stage.role !== "preferment" && stage.role !== "overall" && stage.role !== "soaker") {
    // "Brioche dough" on top is the recipe's name.
    if (!/^(?:(?:final|main) )?(?:dough|mix)$/.test(headingCore(text))) draft.title = titleIn(text);
  }
  if (isFirst && !isColon && !line.isMarked && following !== undefined && opensOther(following)) return false;
  if (
    isFirst &&
    stage.role === "preferment" &&
    !next.some(({ text: one, at: where }) => {
      const later = stageOf(one, where, /:$/.test(one) || isCapitals(one));
      return (
        later !== undefined && "stage" in later && (later.stage.role === "dough" || later.stage.role === "overall")
      );
    }) &&
    next.length < 11 &&
    !prefermentAgain(next, stage)
  )
    return false;
  const answer = reading.corrections.answers[`part of the dough: ${stage.name}`];
  const isFirstPart =
    answer === undefined && draft.rows.length === 0 && isLikeDough(isUnsure, stage.role, next, reading);
  const role: StageRole = answer === "dough" || isFirstPart ? "dough" : answer === "kept apart" ? "part" : stage.role;
  draft.stage = addStage(draft, { ...stage, role });
  draft.mode = "ingredients";
  if (isUnsure && answer === undefined && !isFirstPart) {
    askPart(draft, stage.name, at);
  }
  ignore(draft, line, "heading");
  return true;
}

function askPart(draft: Draft, name: string, line: number): void {
  const choices = ["dough", "kept apart"];
  draft.questions.push({ reason: "part of the dough", line, about: [name], choices, isOpen: true });
}

/** Several rows whose names all tell what they are. */
const isListOfKnown = (rest: string, reading: Reading): boolean =>
  (listedRows(rest, reading) ?? splitRows(rest, reading) ?? namedRow(rest, reading))?.every(
    ({ isKnown, type, isAll }) => isKnown || isAll || type !== "",
  ) ?? false;

/** "Lucidatura: 75 g burro": one row with a name of its own, so that the words before the colon are no ingredient. */
function namedRow(rest: string, reading: Reading): RowRead[] | undefined {
  const read = readRow(rest, reading);
  return read.name !== "" && (read.grams ?? read.percent) !== null && read.type !== "" ? [read] : undefined;
}

/** "FLOUR 1000": capitals alone make no heading of a row. */
function isRowInCapitals(line: SourceLine, text: string, reading: Reading): boolean {
  if (line.isMarked || /:$/.test(text.trim()) || !/\d\s*$/.test(text)) return false;
  const read = readRow(line.text, reading);
  return (read.bare ?? read.grams ?? read.percent) !== null && (read.isKnown || read.type !== "");
}

/** What comes first and has flour and something wet is the dough, whatever it is called: "BUNS", "For the crust". */
function isLikeDough(isUnsure: boolean, role: StageRole, next: readonly SourceLine[], reading: Reading): boolean {
  if (!isUnsure && role !== "topping") return false;
  const isOther = (text: string, at: number) => {
    const stage = /\d/.test(text) ? undefined : stageOf(text, at, /:$/.test(text) || isCapitals(text));
    return stage !== undefined && "stage" in stage && stage.stage.role === "dough";
  };
  if (next.some(({ text, at }) => isOther(text, at))) return false;
  const end = next.findIndex(({ text }, at) => text === "" && at > 0);
  const types = next.slice(0, end < 0 ? next.length : end).map(({ text }) => readRow(text, reading).type);
  return types.slice(0, 3).includes("flour") && types.some((type) => /^(?:water|dairy|yeast|egg|fat)$/.test(type));
}

/** "Pier bread: 500 g flour, 325 g water, 10 g salt": a name that is no stage's, and no ingredient. */
function isTitleOver(head: string, rest: string, reading: Reading): boolean {
  const stage = stageOf(head, 0, false);
  const read = readRow(head, reading);
  const isName = stage === undefined && modeOf(head) === undefined && !read.isKnown && !/\d/.test(head);
  return isName && listedRows(rest, reading) !== undefined;
}

/** "Pastry 1 1/4 c flour, 1/2 c butter": the word that surely heads a list of amounts needs no colon. */
function headOfList(text: string, reading: Reading): readonly string[] {
  const match = /^((?:\p{L}+ ){1,3}?)(?=[\d½¼¾⅓⅔])(.*)$/u.exec(text);
  const [, head = "", rest = ""] = match ?? [];
  if (head === "" || !/[,;/]/.test(rest) || readRow(head, reading).isKnown) return [];
  const stage = stageOf(head, 0, false);
  const isSure = stage !== undefined && "stage" in stage && !stage.isUnsure;
  return isSure && listedRows(rest, reading) !== undefined ? (match ?? []) : [];
}

/** "Egg wash: 1 egg, 1 tbsp milk": a heading with its rows beside it. */
export function takeHeadingWithRows({ draft, line, reading, isFirst }: Place): boolean {
  const [, headText = "", rest = ""] =
    /^((?:[^:;,()]|\([^()]{1,40}\)){3,50}?)\s?:\s+(\S.*)$/.exec(line.text) ?? headOfList(line.text, reading);
  const head = headText.trim();
  if (rest === "" || isStep(line.text, false, draft.mode === "method")) return false;
  if (yieldIn(line.text) !== undefined || isTotal(head)) return false;
  const match = isFirstDay(head)
    ? {
        stage: { role: "dough" as const, name: head, line: line.at, preferment: "", hours: null, temperature: null },
        isUnsure: false,
      }
    : stageOf(head, line.at, true);
  if (isFirst && isTitleOver(head, rest, reading)) {
    draft.title = titleIn(head);
    for (const read of listedRows(rest, reading) ?? []) addRow(draft, line.at, read, stageAt(draft));
    return true;
  }
  if (match === undefined || !("stage" in match)) return false;
  if (match.isUnsure && (readRow(head, reading).isKnown || !isListOfKnown(rest, reading) || isFirst)) return false;
  const rows = listedRows(rest, reading) ?? splitRows(rest, reading) ?? [readRow(rest, reading)];
  const isNamed = (one: RowRead) => one.isAll || one.isKnown || one.type !== "" || prefermentIn(one.name) !== undefined;
  const isRows =
    rows.every(
      (one) =>
        one.name !== "" &&
        (one.isAll || (one.grams ?? one.percent ?? one.bare) !== null || (rows.length > 1 && one.asks.length > 0)),
    ) &&
    // Of several that a heading lists, one may be a thing that nobody knows.
    ((rows.length === 1 && !match.isUnsure) ||
      rows.filter(isNamed).length >= (rows.length > 2 ? rows.length - 1 : rows.length) ||
      (rows.length > 1 && !match.isUnsure && !IN_DOUGH.has(match.stage.role)));
  if (!isRows) return false;
  const answer = reading.corrections.answers[`part of the dough: ${head}`];
  const role: StageRole = answer === "dough" ? "dough" : match.stage.role;
  const stage = addStage(draft, { ...match.stage, name: head, role });
  if (match.isUnsure && answer === undefined) askPart(draft, head, line.at);
  for (const read of rows) addRow(draft, line.at, read, stage);
  // What a line says whole is not gone on with below it.
  if (rows.length === 1 || match.stage.role === "dough") draft.stage = stage;
  return true;
}

const prefermentAgain = (next: readonly SourceLine[], stage: Stage): boolean =>
  next.some(({ text }) => prefermentWordIn(singularName(text)) === stage.preferment);
