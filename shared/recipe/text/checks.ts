// Whether a text agrees with itself: totals against rows, percentages against weights, pieces against dough.

import { showNumber } from "../../base/show.ts";
import type { Formula } from "./described-formula.ts";
import { IN_DOUGH, type Question, type Row } from "./description.ts";
import type { Draft, Total } from "./draft.ts";
import type { Reading } from "./row-context.ts";

type OpenQuestion = Omit<Question, "line"> & { readonly line: number | null };
const question = (reason: Question["reason"], line: number | null, about: readonly string[]): OpenQuestion => ({
  reason,
  line,
  about,
  choices: [],
  isOpen: false,
});

export function checksOf(draft: Draft, formula: Formula, _reading: Reading): OpenQuestion[] {
  return [...totalsOf(draft, formula), ...percentsOf(draft), ...yieldOf(draft, formula)];
}

/** The last digit that the rows show. */
function resolutionOf(values: readonly number[]): number {
  for (const step of [100, 10, 1, 0.1, 0.01, 0.001]) {
    if (values.every((value) => Math.abs(value / step - Math.round(value / step)) < 1e-6)) return step;
  }
  return 0.001;
}

function totalsOf(draft: Draft, formula: Formula): OpenQuestion[] {
  const wrong: OpenQuestion[] = [];
  for (const total of draft.totals) {
    const before = draft.rows.slice(0, total.rows);
    for (const of of ["grams", "percent"] as const) {
      const stated = of === "grams" ? gramsOf(total, draft) : total.percent;
      if (stated === null || stated === 0) continue;
      const sums = sumsOf(before, draft, total, of, formula);
      if (sums.length === 0) continue;
      const values = before.flatMap((row) => (row[of] === null ? [] : [row[of] ?? 0]));
      const step = Math.min(resolutionOf(values), resolutionOf([stated]) === 100 ? 1 : resolutionOf([stated]));
      const tolerance = Math.max(0.5 * step * Math.max(1, values.length), stated * 1e-6);
      if (sums.some((sum) => Math.abs(sum - stated) <= tolerance * (1 + 1e-9))) continue;
      const nearest = sums.reduce((best, sum) => (Math.abs(sum - stated) < Math.abs(best - stated) ? sum : best));
      const unit = of === "grams" ? "g" : "%";
      wrong.push(
        question("total differs", total.line, [
          `${showNumber(stated, 2)} ${unit}`,
          `${showNumber(nearest, 2)} ${unit}`,
        ]),
      );
    }
  }
  return wrong;
}

function gramsOf(total: Total, draft: Draft): number | null {
  if (total.grams !== null) return total.grams;
  if (total.bare === null) return null;
  // Bare rows were weighed in one unit: so is their total.
  const weighed = draft.rows.find((row) => row.grams !== null && draft.bare.size === 0);
  return weighed === undefined ? null : total.bare;
}

/** All that a total may add up: its stage, everything above it, everything without what is taken twice. */
function sumsOf(
  before: readonly Row[],
  draft: Draft,
  total: Total,
  of: "grams" | "percent",
  formula: Formula,
): number[] {
  const sum = (rows: readonly Row[]) => rows.reduce((all, row) => all + (row[of] ?? 0), 0);
  const has = (rows: readonly Row[]) =>
    rows.length > 0 && rows.every((row) => row[of] !== null || row.amountOf === "nothing" || row.takes !== null);
  const here = before.filter((row) => row.stage === total.stage);
  const inDough = before.filter((row) => IN_DOUGH.has(draft.stages[row.stage]?.role ?? "dough"));
  const once = inDough.filter((row) => row.takes === null);
  const sums = [here, before, inDough, once].filter(has).map(sum);
  return of === "grams" && formula.dough !== null ? [...sums, formula.dough] : sums;
}

/** Small percentages are written as finely as the finest of their column. */
const FEW = 10;

/** Rows of a stage have one weight for each percent; those that do not are named. */
function percentsOf(draft: Draft): OpenQuestion[] {
  const wrong: OpenQuestion[] = [];
  for (const stage of draft.stages.keys()) {
    const both = draft.rows.filter(
      (row) => row.stage === stage && row.grams !== null && row.percent !== null && row.percent > 0 && row.grams > 0,
    );
    if (both.length < 2) continue;
    const rates = both.map((row) => (row.grams ?? 0) / (row.percent ?? 1)).sort((a, b) => a - b);
    const step = resolutionOf(both.map(({ percent }) => percent ?? 0));
    const rate = rates[Math.floor(rates.length / 2)] ?? 0;
    for (const row of both) {
      const [weight, percent] = [row.grams ?? 0, row.percent ?? 0];
      const expected = percent * rate;
      const rounding =
        0.5 * (percent < FEW ? step : Math.min(1, resolutionOf([percent]))) * rate +
        0.5 * Math.min(5, resolutionOf([weight]));
      if (Math.abs(weight - expected) <= Math.max(rounding, 0.006 * expected)) continue;
      wrong.push(
        question("percent and weight differ", row.line, [
          row.name,
          `${showNumber(percent, 3)} %`,
          `${showNumber(weight, 2)} g`,
          `${showNumber(weight / rate, 3)} %`,
        ]),
      );
    }
  }
  return wrong.map((one) => ({ ...one, isOpen: false }));
}

/** A dough that is too little for its pieces, or much more than they take. */
const MIN_PART = 0.92;
const MAX_PART = 1.02;

function yieldOf(draft: Draft, { dough, parts }: Formula): OpenQuestion[] {
  const { pieces, pieceWeight, isSpan } = draft.yield;
  const asks: OpenQuestion[] = isSpan && pieces === null ? [question("yield differs", null, ["a span of pieces"])] : [];
  if (dough === null || pieces === null || pieceWeight === null) return asks;
  const part = (pieces * pieceWeight) / dough;
  // Pieces of a laminated dough weigh what was rolled in as well.
  const rolledIn = parts.reduce(
    (all, one) => all + (draft.stages[one.stage]?.role === "roll-in" ? (one.grams ?? 0) : 0),
    0,
  );
  const laminated = (pieces * pieceWeight) / (dough + rolledIn);
  if ([part, laminated].some((one) => one >= MIN_PART && one <= MAX_PART)) return asks;
  return [
    ...asks,
    question("yield differs", null, [
      `${showNumber(pieces)} × ${showNumber(pieceWeight, 1)} g`,
      `${showNumber(pieces * pieceWeight, 1)} g`,
      `${showNumber(dough, 1)} g`,
    ]),
  ];
}
