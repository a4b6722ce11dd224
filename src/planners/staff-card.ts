// The sidebar's questions about formula sheets that are there, and the card made from one.

import { Refusal } from "../../shared/base/refusal.ts";
import { staffCard } from "../../shared/card/staff-card.ts";
import { cardHeights } from "../../shared/card/type-size.ts";
import { readCardAsk } from "../../shared/protocol/card.ts";
import type { NewSheet } from "../../shared/protocol/plan-message.ts";
import type { FormulaSummary } from "../../shared/protocol/sheet-review.ts";
import { isWaitingText } from "../../shared/protocol/waiting.ts";
import { plan } from "../../shared/sheet/plan.ts";
import { formulaSheets } from "./all-sheets.ts";
import { cardAmount, cardData } from "./card-data.ts";
import { checkFormulaSheet, readFormulaSheet, seenAs } from "./formula-sheet.ts";
import { summary } from "./overview.ts";
import { look, make, type Steps, withNotes } from "./steps.ts";

type Question = Readonly<Record<string, unknown>>;

/** The formula sheets of the workbook, and which of its sheets is in front. */
export function* formulas(): Steps<{ front: string; sheets: FormulaSummary[] }> {
  const { front, sheets } = yield* formulaSheets();
  const summaries: FormulaSummary[] = [];
  let looks = 0;
  for (const one of sheets.map(summary)) {
    const isBroken = one.dough === null && looks < MAX_LOOKS;
    if (isBroken) looks += 1;
    summaries.push(isBroken ? { ...one, ...(yield* faultOf(one.sheet)) } : one);
  }
  return { front, sheets: summaries };
}

/** Each broken sheet is looked at once more, which takes calls of the service. */
const MAX_LOOKS = 5;

/** What a cell shows while the file does not know the add-on's functions. */
const NO_NAME = "#NAME?";
const UNKNOWN = `${NO_NAME} is not available in this file: open Gramwright from the file's own menu, then reload.`;

/** Why a sheet shows no dough. */
function* faultOf(name: string): Steps<{ fault?: string }> {
  const [seen] = (yield* look({ sheet: name })).sheets;
  const sheet = seen === undefined ? null : seenAs(seen);
  if (sheet === null) return {};
  const rows = Array.from({ length: sheet.zone("share")?.rows ?? 0 }, (_, at) => at);
  const texts = rows.flatMap((at) => ["share", "grams"].map((column) => sheet.text(column, at)));
  const isTold = texts.some((text) => text.startsWith("#") || isWaitingText(text)) || sheet.text("check") !== "";
  // One that is still to be filled in has nothing wrong with it.
  if (!isTold) return {};
  try {
    checkFormulaSheet(sheet);
    return {};
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { fault: texts.includes(NO_NAME) ? `${error.message} ${UNKNOWN}` : error.message };
  }
}

/** A new sheet with the card, dated today; the formula sheet is only read. */
export function* handOut(question: Question, now: Date): Steps<NewSheet> {
  const ask = readCardAsk(question);
  const sheet = yield* readFormulaSheet(ask.sheet, true);
  const data = cardData(sheet, isoDate(now));
  const { model, values } = staffCard(data, cardAmount(data, ask), ask.kind);
  const cardPlan = plan(model, { weight: data.unit, temperature: "C", length: "cm", parts: [] }, values);
  const heights = cardHeights(cardPlan, model);
  return withNotes(yield* make({ ...cardPlan, heights }, model.title), sheet.newer);
}

const isoDate = (day: Date): string =>
  [day.getFullYear(), day.getMonth() + 1, day.getDate()].map((part) => String(part).padStart(2, "0")).join("-");
