// A preferment that the dough does not name: on top of it, or a part of its amounts.

import type { Question, Row } from "./description.ts";
import type { Draft } from "./draft.ts";
import { identityOf } from "./portions.ts";
import type { Reading } from "./row-context.ts";
import { sumOf } from "./stage-percents.ts";
import { flourOfRow, waterOfRow } from "./starter.ts";

const ADDED = /\b(?:add|with|into|to|pour|combine|mix|dissolve|all)\b/i;

/** "Next day add 700 g flour" adds to what stood over night. */
const LATER_ADDED = /\b(?:next (?:day|morning)|in the morning|day (?:2|two))\b[^.]*\badd\b/i;

/** A preferment that the dough does not name is on top of it where anything says so, and is asked about otherwise. */
export function included(
  draft: Draft,
  rows: readonly Row[],
  ingredients: readonly Row[],
  overall: readonly Row[],
  reading: Reading,
  asks: Question[],
  factors: Map<number, number>,
): void {
  if (overall.length > 0) return;
  const hasDough = ingredients.some((row) => draft.stages[row.stage]?.role === "dough");
  draft.stages.forEach((stage, at) => {
    const mine = ingredients.filter((row) => row.stage === at);
    if (stage.role !== "preferment" || mine.length === 0 || !hasDough || rows.some((row) => row.takes === at)) return;
    const dough = ingredients.filter((row) => draft.stages[row.stage]?.role === "dough");
    const flour = sumOf(dough, (row) => flourOfRow(row) * (row.grams ?? row.percent ?? 0));
    const water = sumOf(dough, (row) => waterOfRow(row) * (row.grams ?? row.percent ?? 0));
    const isNamed = draft.steps.some(
      ({ text }) => ADDED.test(text) && new RegExp(`\\b${stage.preferment || "preferment"}\\b`, "i").test(text),
    );
    const isAddedTo = draft.steps.some(({ text }) => LATER_ADDED.test(text));
    const isDry = flour > 0 && water / flour < 0.5;
    const hasLess = mine.some((row) => {
      const same = dough.filter((one) => identityOf(one, reading) === identityOf(row, reading));
      return sumOf(same, (one) => one.grams ?? one.percent ?? 0) < (row.grams ?? row.percent ?? 0);
    });
    // A column that says of each row where it goes leaves none to be in two places.
    const isColumn = draft.byColumn.has(at);
    const answer = reading.corrections.answers[`on top or included: ${stage.name}`];
    if (answer === "included") {
      factors.set(at, 0);
      return;
    }
    if (
      answer !== undefined ||
      isNamed ||
      isAddedTo ||
      isDry ||
      hasLess ||
      isColumn ||
      rows.every((row) => row.percent !== null)
    )
      return;
    asks.push({
      reason: "on top or included",
      line: stage.line,
      about: [stage.name],
      choices: ["on top", "included"],
      isOpen: true,
    });
  });
}
