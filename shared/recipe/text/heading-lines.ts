// Lines that head what follows: a stage of the dough, or a part beside it.

import { singularName } from "../../base/words.ts";
import type { Stage, StageRole } from "./description.ts";
import { addStage, hasAmount, ignore, isCapitals, looksLikeRow, type Place } from "./draft.ts";
import { askPart } from "./heading-with-rows.ts";
import { headingCore, prefermentWordIn, stageOf } from "./headings.ts";
import { readRow } from "./row.ts";
import type { Reading } from "./row-context.ts";
import { rowText } from "./row-text.ts";
import type { SourceLine } from "./source-lines.ts";
import { isStep } from "./steps.ts";
import { titleIn } from "./titles.ts";
import { opensOther } from "./under-heading.ts";

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
  const numbered = open.replace(
    /\b(?:stage|step|part|phase|day|tag|jour|giorno|d[ií]a|dag|stufe|build|feed)\s*\d+|^\s*\d+[.)]/gi,
    " ",
  );
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
  // "Roll-in butter 30 % of the dough" over nothing is itself what is weighed.
  if (/\d\s?%/.test(open) && !looksLikeRow(following)) return false;
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

/** "FLOUR 1000": capitals alone make no heading of a row. */
function isRowInCapitals(line: SourceLine, text: string, reading: Reading): boolean {
  if (line.isMarked || /:$/.test(text.trim()) || !/\d\s*$/.test(text)) return false;
  const row = readRow(line.text, reading);
  return (row.bare ?? row.grams ?? row.percent) !== null && (row.isKnown || row.type !== "");
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

const prefermentAgain = (next: readonly SourceLine[], stage: Stage): boolean =>
  next.some(({ text }) => prefermentWordIn(singularName(text)) === stage.preferment);
