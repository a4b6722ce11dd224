// The bench's questions about formula sheets that are there, and the card made from one.

import type { FormulaSummary } from "../../shared/bench.ts";
import { CARD_AMOUNTS, CARD_KINDS, type CardAsk } from "../../shared/card-data.ts";
import { cardHeights } from "../../shared/card-type.ts";
import { plan } from "../../shared/plan.ts";
import { refuse } from "../../shared/refusal.ts";
import { oneOf, quoted } from "../../shared/show.ts";
import { staffCard } from "../../shared/staff-card.ts";
import { formulaSheets } from "./all-sheets.ts";
import { cardAmount, cardData } from "./card.ts";
import { readFormulaSheet } from "./formula-sheet.ts";
import { summary } from "./overview.ts";
import { make, type Steps } from "./steps.ts";

type Asked = Readonly<Record<string, unknown>>;

/** The formula sheets of the workbook, and which of its sheets is in front. */
export function* formulas(): Steps<{ front: string; sheets: FormulaSummary[] }> {
  const { front, sheets } = yield* formulaSheets();
  return { front, sheets: sheets.map(summary) };
}

/** A new sheet with the card, dated today; the formula sheet is only read. */
export function* handOut(asked: Asked, now: Date): Steps<{ sheet: string }> {
  const ask = readCardAsk(asked);
  const data = cardData(yield* readFormulaSheet(ask.sheet, true), isoDate(now));
  const { model, values } = staffCard(data, cardAmount(data, ask), ask.kind);
  const made = plan(model, { weight: data.unit, temperature: "C", length: "cm", parts: [] }, values);
  const heights = cardHeights(made, model);
  return { sheet: yield* make({ ...made, heights }, model.title) };
}

function readCardAsk(asked: Asked): CardAsk {
  const amount = asked.amount ?? null;
  if (amount !== null && !(typeof amount === "number" && Number.isFinite(amount) && amount > 0 && amount < 1e9)) {
    refuse("The amount of the card is no number above 0; write one such as 60.");
  }
  return {
    sheet: textOf(asked.sheet),
    kind: chosen(asked.kind, CARD_KINDS, "kind of card"),
    by: chosen(asked.by, CARD_AMOUNTS, "amount of the card"),
    amount: amount as number | null,
    ingredient: textOf(asked.ingredient),
  };
}

const LONGEST = 200;
const textOf = (raw: unknown): string => (typeof raw === "string" ? raw.slice(0, LONGEST) : "");

function chosen<T extends string>(raw: unknown, choices: readonly [T, ...T[]], what: string): T {
  if (raw === undefined || raw === null) return choices[0];
  return (
    choices.find((one) => one === raw) ?? refuse(`The ${what} is ${quoted(String(raw))}; it can be ${oneOf(choices)}.`)
  );
}

const isoDate = (day: Date): string =>
  [day.getFullYear(), day.getMonth() + 1, day.getDate()].map((part) => String(part).padStart(2, "0")).join("-");
