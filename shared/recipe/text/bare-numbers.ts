// Numbers without a unit: percentages where the flour adds up to 100, else what a person says they are.

import { type Grams, grams } from "../../base/units.ts";
import { unitIn } from "./columns.ts";
import type { Row } from "./description.ts";
import { askOf, type Draft } from "./draft.ts";
import { gramsOf } from "./row-amount.ts";
import type { Reading } from "./row-context.ts";

const isHundred = (value: number): boolean => Math.abs(value - 100) <= 0.05;

/** Gives bare numbers their meaning, and asks once where nothing tells it. */
export function weighedBare(draft: Draft, reading: Reading): void {
  const bare = [...draft.bare];
  if (bare.length === 0) return;
  const answer = reading.corrections.answers["which unit"];
  const isPercent =
    answer === "percentages" || (answer === undefined && (reading.saysPercents || arePercents(draft, bare)));
  const unit = answer === undefined || isPercent ? "" : unitIn(answer);
  const others = draft.rows.filter((row) => !draft.bare.has(row) && row.grams !== null);
  // Where numbers are percentages, "eggs 10" are no ten eggs.
  for (const [row, number] of isPercent ? [...bare, ...draft.counts] : bare) {
    const at = draft.rows.indexOf(row);
    if (isPercent) draft.rows[at] = { ...row, grams: null, percent: number, amountOf: "percentage" };
    else if (unit !== "") draft.rows[at] = { ...row, grams: grams(number * gramsOf(unit)) as Grams };
  }
  if (isPercent || unit !== "") return;
  const isFew = others.length >= bare.length;
  if (!isFew) {
    const first = bare[0]?.[0];
    draft.questions.push({
      reason: "which unit",
      line: null,
      about: [],
      choices: ["g", "kg", "lb", "oz", "percentages"],
      isOpen: true,
    });
    if (first === undefined) return;
    return;
  }
  for (const [row, number] of bare) {
    askOf(draft, row, {
      reason: "unclear amount",
      line: row.line,
      about: ["a number without a unit", String(number)],
      choices: [],
      isOpen: true,
    });
  }
}

function arePercents(draft: Draft, bare: readonly (readonly [Row, number])[]): boolean {
  const flours = bare.filter(([row]) => row.type === "flour");
  if (flours.length === 0) return false;
  const isAll =
    bare.length + draft.counts.size >=
    draft.rows.filter(({ amountOf, percent }) => amountOf !== "nothing" && percent === null).length;
  if (!isAll) return false;
  const byStage = new Map<number, number>();
  for (const [row, number] of flours) byStage.set(row.stage, (byStage.get(row.stage) ?? 0) + number);
  const sums = [...byStage.values()];
  return isHundred(sums.reduce((all, one) => all + one, 0)) || sums.every(isHundred);
}
