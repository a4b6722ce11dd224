// Percentages of a stage's own flour brought to those of all flour, and stages beside an overall formula.

import { showNumber } from "../../base/show.ts";
import type { Question, Row } from "./description.ts";
import type { Draft } from "./draft.ts";
import type { Portion } from "./portions.ts";
import type { Reading } from "./row-context.ts";
import { flourOfRow, isStarter } from "./starter.ts";

const isHundred = (value: number): boolean => Math.abs(value - 100) < 0.3;
export const sumOf = (rows: readonly Row[], by: (row: Row) => number): number =>
  rows.reduce((all, row) => all + by(row), 0);

/** Percentages of each stage's own flour are brought to those of all flour. */
export function percentBases(
  draft: Draft,
  rows: readonly Row[],
  amountOf: (row: Row) => number | null,
  asks: Question[],
  reading: Reading,
): Map<number, number> {
  const bases = new Map<number, number>();
  const counted = [...new Set(rows.map((row) => row.stage))];
  const flourOf = (stage: number) =>
    sumOf(
      rows.filter((row) => row.stage === stage && row.takes === null),
      (row) => flourOfRow(row) * (amountOf(row) ?? 0),
    );
  const flour = counted.reduce((all, stage) => all + flourOf(stage), 0);
  if (counted.length === 1) {
    const whole = sumOf(rows, (row) => amountOf(row) ?? 0);
    const isOpen = rows.some((row) => row.type === "" || amountOf(row) === null);
    if (isHundred(flour) || isOpen || flour === 0) return bases;
    const added = sumOf(
      rows.filter((row) => row.type === "flour"),
      (row) => amountOf(row) ?? 0,
    );
    if (isHundred(added)) return bases;
    if (isHundred(whole)) return new Map(counted.map((stage) => [stage, 100 / flour]));
    asks.push({
      reason: "flour is not 100 %",
      line: null,
      about: [`${showNumber(flour, 2)} %`],
      choices: [],
      isOpen: true,
    });
    return bases;
  }
  if (isHundred(flour)) return bases;
  for (const stage of counted) {
    const role = draft.stages[stage]?.role;
    if (role !== "preferment" && role !== "soaker") continue;
    const taker = rows.find((row) => row.takes === stage);
    const whole = sumOf(
      rows.filter((row) => row.stage === stage && row.takes === null),
      (row) => amountOf(row) ?? 0,
    );
    const wanted = taker === undefined ? null : amountOf(taker);
    const share = shareSaid(draft, stage, reading);
    const rest = counted.filter((one) => one !== stage).reduce((all, one) => all + flourOf(one), 0);
    if (wanted !== null && whole > 0) bases.set(stage, wanted / whole);
    else if (share !== null && flourOf(stage) > 0 && isHundred(rest))
      bases.set(stage, (share / (100 - share)) * (100 / flourOf(stage)));
    else if (share !== null && flourOf(stage) > 0) bases.set(stage, share / flourOf(stage));
    else {
      bases.set(stage, 1);
      asks.push({
        reason: "share of the preferment",
        line: draft.stages[stage]?.line ?? null,
        about: [draft.stages[stage]?.name ?? ""],
        choices: [],
        isOpen: true,
      });
    }
  }
  return bases;
}

/** Stages that an overall formula says the whole of: what they take of it. */
export function setApart(
  draft: Draft,
  rows: readonly Row[],
  overall: readonly Row[],
  reading: Reading,
  asks: Question[],
): Portion[] {
  const isGrams = overall.every((row) => row.grams !== null);
  const of = (row: Row) => (isGrams ? (row.grams ?? row.percent) : (row.percent ?? row.grams)) ?? 0;
  const flourOfAll = sumOf(overall, (row) => flourOfRow(row) * of(row));
  return rows
    .filter((row) => row.takes === null)
    .map((row): Portion => {
      const mine = rows.filter((one) => one.stage === row.stage);
      const flour = sumOf(mine, (one) => flourOfRow(one) * of(one));
      const share = shareSaid(draft, row.stage, reading);
      const isOwn = !isGrams && isHundred(flour);
      const isWeighed = isGrams
        ? mine.every((one) => one.grams !== null)
        : mine.every((one) => one.percent !== null) && !isOwn;
      const factor = isWeighed || flour === 0 ? 1 : share === null ? null : ((share / 100) * flourOfAll) / flour;
      const name = draft.stages[row.stage]?.name ?? "";
      if (
        factor === null &&
        !asks.some(({ reason, about }) => reason === "share of the preferment" && about[0] === name)
      ) {
        asks.push({
          reason: "share of the preferment",
          line: draft.stages[row.stage]?.line ?? null,
          about: [name],
          choices: [],
          isOpen: true,
        });
      }
      return { row, amount: of(row) * (factor ?? 0), stage: row.stage, isSeed: isStarter(row) };
    });
}

function shareSaid(draft: Draft, stage: number, { corrections }: Reading): number | null {
  const name = draft.stages[stage]?.name ?? "";
  const answer = corrections.answers[`share of the preferment: ${name}`];
  const share =
    answer ?? /(\d+(?:[.,]\d+)?)\s?%\s*(?:of (?:the |all )?(?:total )?flour|pre-?fermented)/i.exec(name)?.[1];
  const value = share === undefined ? Number.NaN : Number(share.replace(",", ".").replace("%", ""));
  return value > 0 && value < 100 ? value : null;
}
