// A heading with its rows on the same line.

import { prefermentIn } from "../kinds.ts";
import { isTotal } from "./clutter.ts";
import { IN_DOUGH, type StageRole } from "./description.ts";
import { addRow, addStage, type Draft, type Place, stageAt } from "./draft.ts";
import { isFirstDay, modeOf, stageOf } from "./headings.ts";
import { readRow } from "./row.ts";
import type { Reading, RowRead } from "./row-context.ts";
import { listedRows, splitRows } from "./rows-in-line.ts";
import { isStep } from "./steps.ts";
import { titleIn } from "./titles.ts";
import { yieldIn } from "./yields.ts";

export function askPart(draft: Draft, name: string, line: number): void {
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
  const row = readRow(rest, reading);
  return row.name !== "" && (row.grams ?? row.percent) !== null && row.type !== "" ? [row] : undefined;
}

/** "Pier bread: 500 g flour, 325 g water, 10 g salt": a name that is no stage's, and no ingredient. */
function isTitleOver(head: string, rest: string, reading: Reading): boolean {
  const stage = stageOf(head, 0, false);
  const row = readRow(head, reading);
  const isName = stage === undefined && modeOf(head) === undefined && !row.isKnown && !/\d/.test(head);
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

/** "As asked, the dinner roll: 3 kg flour, …": a letter's words before the name. */
function letterHead(text: string, isFirst: boolean): readonly string[] | undefined {
  const [, head = "", rest = ""] =
    (isFirst && /^[^:;()\d]*,\s*(?:the |our |my )?([^:;,()\d]{3,40}?)\s?:\s+(\d.*)$/i.exec(text)) || [];
  return head === "" ? undefined : [text, head, rest];
}

/** "Egg wash: 1 egg, 1 tbsp milk": a heading with its rows beside it. */
export function takeHeadingWithRows({ draft, line, reading, isFirst }: Place): boolean {
  const [, headText = "", rest = ""] =
    /^((?:[^:;,()]|\([^()]{1,40}\)){3,50}?)\s?:\s+(\S.*)$/.exec(line.text) ??
    letterHead(line.text, isFirst) ??
    headOfList(line.text, reading);
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
    for (const row of listedRows(rest, reading) ?? []) addRow(draft, line.at, row, stageAt(draft));
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
  for (const listRow of rows) addRow(draft, line.at, listRow, stage);
  // What a line says whole is not gone on with below it.
  if (rows.length === 1 || match.stage.role === "dough") draft.stage = stage;
  return true;
}
