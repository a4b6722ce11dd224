// What each row adds to the dough: a stage that is taken in part counts in part, one that is named twice counts once.

import { showNumber } from "../../base/show.ts";
import type { Question, Row } from "./description.ts";
import { type Draft, isAbout } from "./draft.ts";
import { identityOf, type Portion } from "./portions.ts";
import type { Reading } from "./row-context.ts";
import { included } from "./stage-included.ts";
import { percentBases, sumOf } from "./stage-percents.ts";
import { flourOfRow, isStarter, waterOfRow } from "./starter.ts";

export type StageShares = {
  readonly portions: Portion[];
  readonly isGrams: boolean;
  /** What was made of a stage and not used, by stage. */
  readonly stageWeights: ReadonlyMap<number, number>;
};

type Stage = {
  readonly draft: Draft;
  readonly taken: ReadonlyMap<number, number>;
  readonly rows: readonly Row[];
  readonly overall: readonly Row[];
  readonly reading: Reading;
  readonly asks: Question[];
};

/** Weights of the same thing may be rounded on the way. */
const ALIKE = 0.015;

export function stageShares({ draft, rows, overall, reading, asks }: Stage): StageShares {
  const ingredients = rows.filter((row) => row.takes === null);
  const { isGrams, amountOf } = basisOf(ingredients, draft, asks);
  const factors = new Map<number, number>();
  const stageWeights = new Map<number, number>();
  const bases = isGrams ? new Map<number, number>() : percentBases(draft, rows, amountOf, asks, reading);
  const amountIn = (row: Row): number | null => {
    const amount = amountOf(row);
    return amount === null ? null : amount * (bases.get(row.stage) ?? 1);
  };
  for (const row of rows) {
    if (row.takes === null) continue;
    const mine = ingredients.filter((one) => one.stage === row.takes);
    const whole = sumOf(mine, (one) => amountIn(one) ?? 0);
    const keeps = isGrams && row.keeps !== null ? whole - row.keeps : null;
    const wanted = amountOf(row) ?? keeps;
    const stage = draft.stages[row.takes];
    if (wanted === null || whole === 0 || stage === undefined || bases.has(row.takes)) continue;
    if (Math.abs(wanted - whole) <= Math.max(ALIKE * whole, isGrams ? 1 : 0.2)) continue;
    if (wanted < whole) {
      factors.set(row.takes, (factors.get(row.takes) ?? 0) + wanted / whole);
      stageWeights.set(row.takes, whole - wanted);
      continue;
    }
    const unit = isGrams ? "g" : "%";
    asks.push({
      reason: "more than was made",
      line: row.line,
      about: [row.name || row.text, `${showNumber(wanted, 1)} ${unit}`, stage.name, `${showNumber(whole, 1)} ${unit}`],
      choices: [],
      isOpen: true,
    });
  }
  for (const [stage, factor] of factors) if (factor > 1 - ALIKE) factors.set(stage, 1);
  included(draft, rows, ingredients, overall, reading, asks, factors);
  const portions = ingredients.map((row): Portion => {
    const amount = amountIn(row);
    const isSeed = draft.stages[row.stage]?.role === "preferment" && isStarter(row);
    return { row, amount: amount === null ? null : amount * (factors.get(row.stage) ?? 1), stage: row.stage, isSeed };
  });
  const seeded = withSeeds(portions, draft);
  const once = checkedAgainst(overall, seeded, draft, reading, asks, isGrams);
  return { portions: once, isGrams, stageWeights };
}

/** The unit that all rows share: grams, or hundredths of the flour; weights follow where only the flour is weighed. */
function basisOf(
  rows: readonly Row[],
  draft: Draft,
  asks: Question[],
): { isGrams: boolean; amountOf: (row: Row) => number | null } {
  const real = rows.filter((row) => !(row.grams === null && row.percent === null));
  const grams = real.filter((row) => row.grams !== null).length;
  const percents = real.filter((row) => row.percent !== null).length;
  if (real.length > 0 && percents === real.length && grams < real.length) {
    const flours = real.filter((row) => row.type === "flour" && row.grams !== null);
    const weighed = sumOf(flours, (row) => row.grams ?? 0);
    const share = sumOf(flours, (row) => row.percent ?? 0);
    if (grams > 0 && share > 0)
      return {
        isGrams: true,
        amountOf: (row) => row.grams ?? (row.percent === null ? null : (row.percent / share) * weighed),
      };
    return { isGrams: false, amountOf: (row) => row.percent };
  }
  if (grams === real.length || percents === 0) return { isGrams: true, amountOf: (row) => row.grams };
  // "Flour 1000 g, water 65 %": percentages of a flour that is weighed.
  const flours = real.filter((row) => row.type === "flour");
  const flour = sumOf(flours, (row) => row.grams ?? 0);
  if (flours.length > 0 && flours.every((row) => row.grams !== null)) {
    return {
      isGrams: true,
      amountOf: (row) => row.grams ?? (row.percent === null ? null : (row.percent * flour) / 100),
    };
  }
  asks.push({ reason: "mixed amounts", line: null, about: [draft.title], choices: [], isOpen: true });
  return { isGrams: true, amountOf: (row) => row.grams };
}

/** A starter that a build begins with is as wet as the build, unless its type says more. */
function withSeeds(portions: readonly Portion[], draft: Draft): Portion[] {
  return portions.map((portion) => {
    if (!portion.isSeed || portion.row.type !== "") return portion;
    const mine = portions.filter((one) => one.stage === portion.stage && !one.isSeed);
    const flour = mine.reduce((all, { row, amount }) => all + flourOfRow(row) * (amount ?? 0), 0);
    const water = mine.reduce((all, { row, amount }) => all + waterOfRow(row) * (amount ?? 0), 0);
    const at = draft.rows.indexOf(portion.row);
    if (!(flour > 0) || at < 0) return portion;
    const hydration = Math.round((water / flour) * 1000) / 10;
    const row: Row = {
      ...portion.row,
      type: `levain ${hydration}%`,
      remarks: [...portion.row.remarks, { reason: "seed as wet as its build", says: `${hydration} %` }],
    };
    draft.rows[at] = row;
    for (let place = draft.questions.length - 1; place >= 0; place--) {
      const question = draft.questions[place];
      if (question === undefined || !isAbout(draft, question, row)) continue;
      if (/^(?:hydration|which type)$/.test(question.reason)) draft.questions.splice(place, 1);
    }
    return { ...portion, row };
  });
}

/** An overall formula says the sums of the stages; what differs is told. */
function checkedAgainst(
  overall: readonly Row[],
  portions: Portion[],
  draft: Draft,
  reading: Reading,
  asks: Question[],
  isGrams: boolean,
): Portion[] {
  const of = (row: Row) => (isGrams ? row.grams : row.percent);
  if (overall.length === 0 || portions.some(({ row }) => overall.includes(row))) return portions;
  const sums = new Map<string, number>();
  const starters = portions.filter(({ row }) => isStarter(row));
  const seeds = {
    flour: starters.reduce((all, { row, amount }) => all + flourOfRow(row) * (amount ?? 0), 0),
    water: starters.reduce((all, { row, amount }) => all + waterOfRow(row) * (amount ?? 0), 0),
  };
  for (const { row, amount } of portions) {
    if (isStarter(row)) continue;
    const key = identityOf(row, reading);
    sums.set(key, (sums.get(key) ?? 0) + (amount ?? 0));
  }
  // An overall formula in percent beside stages that are weighed, or the other way round, has its own check by shares.
  const isSameUnit = overall.every((row) => of(row) !== null || row.takes !== null);
  const flour = portions.reduce((all, { row, amount }) => all + flourOfRow(row) * (amount ?? 0), 0);
  for (const row of overall) {
    if (row.takes !== null || isStarter(row)) continue;
    const gramsOf = isSameUnit ? of(row) : row.percent === null ? null : (row.percent * flour) / 100;
    const sum = sums.get(identityOf(row, reading));
    if (gramsOf === null || sum === undefined) continue;
    const step = Math.max(0.02 * gramsOf, isGrams ? 1 : 0.15);
    // What the starters hold of it is in the overall formula, too.
    const held = row.type === "flour" ? seeds.flour : row.type === "water" ? seeds.water : 0;
    if (Math.abs(sum - gramsOf) <= step || (sum < gramsOf && gramsOf - sum <= held)) continue;
    const unit = isGrams ? "g" : "%";
    asks.push({
      reason: "overall and stages differ",
      line: row.line,
      about: [row.name, `${showNumber(gramsOf, 2)} ${unit}`, `${showNumber(sum, 2)} ${unit}`],
      choices: [],
      isOpen: false,
    });
  }
  void draft;
  return portions;
}
