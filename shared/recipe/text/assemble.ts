// The dough as one formula: stages put together, what stands twice counted once, preferments as shares of flour.

import { type Grams, grams } from "../../base/units.ts";
import type { Formula, FormulaPart, FormulaRow } from "./described-formula.ts";
import type { Question, Row, Stage } from "./description.ts";
import { IN_DOUGH } from "./description.ts";
import type { Draft } from "./draft.ts";
import { merged, type Portion } from "./portions.ts";
import type { Reading } from "./row-context.ts";
import { stageShares } from "./stage-amounts.ts";
import { setApart } from "./stage-percents.ts";
import { flourOfRow, waterOfRow } from "./starter.ts";
import { mixedBefore, tied } from "./tied-preferment.ts";

export type Assembled = { readonly formula: Formula; readonly asks: readonly Question[] };

export function assembled(draft: Draft, taken: ReadonlyMap<number, number>, reading: Reading): Assembled {
  const asks: Question[] = [];
  const { stages, rows } = draft;
  const of = (role: Stage["role"]) =>
    stages.flatMap((stage, at) => (stage.role === role && rows.some((row) => row.stage === at) ? [at] : []));
  const isCounted = (row: Row) => IN_DOUGH.has(stages[row.stage]?.role ?? "dough");
  const overall = of("overall");
  const staged = stages.flatMap((stage, at) =>
    IN_DOUGH.has(stage.role) && rows.some((row) => row.stage === at) ? [at] : [],
  );
  // An overall formula without stages is the formula.
  const isWhole = overall.length > 0 && !staged.some((at) => stages[at]?.role === "dough");
  const counted = isWhole ? rows.filter((row) => row.stage === overall[0]) : rows.filter(isCounted);
  const set = isWhole
    ? setApart(
        draft,
        rows.filter(isCounted),
        rows.filter((row) => row.stage === overall[0]),
        reading,
        asks,
      )
    : [];
  const amounts = stageShares({
    draft,
    taken,
    rows: counted,
    overall: overall.map((at) => rows.filter((row) => row.stage === at))[0] ?? [],
    reading,
    asks,
  });
  const { portions, isGrams } = amounts;
  const dough = merged(withoutSeeds(portions), reading);
  const parts = partsOf(draft);
  const sum = (list: readonly Portion[], by: (portion: Portion) => number = () => 1) =>
    list.reduce((all, one) => all + (one.amount ?? 0) * by(one), 0);
  const flour = sum(portions, ({ row }) => flourOfRow(row));
  const isComplete = portions.length > 0 && portions.every(({ amount }) => amount !== null);
  const total = sum(portions);
  const water = sum(portions, ({ row }) => waterOfRow(row));
  if (isComplete && !(flour > 0) && !portions.some(({ row }) => row.type === "")) {
    asks.push({ reason: "no flour", line: null, about: [], choices: [], isOpen: false });
  }
  const scale = scaleOf(draft, isGrams, flour, total);
  const factor = isGrams ? 1 : scale;
  const preferments = staged
    .flatMap((at) =>
      stages[at]?.role === "preferment"
        ? [
            tied({
              at,
              portions: isWhole ? set : portions,
              dough,
              flourOfAll: flour,
              partWeight: amounts.stageWeights.get(at),
              draft,
              reading,
            }),
          ]
        : [],
    )
    .flat();
  const formulaRows = dough.map(
    ({ row, amount }): FormulaRow => ({
      name: row.name,
      type: row.type,
      grams: amount === null || factor === null ? null : grams(amount * factor),
      percent: amount === null || !(flour > 0) ? null : (amount / flour) * 100,
      shareInText: isGrams ? null : amount,
      isKnown: row.isKnown,
    }),
  );
  return {
    asks,
    formula: {
      rows: formulaRows,
      flour: isComplete && factor !== null ? grams(flour * factor) : null,
      dough: isComplete && factor !== null ? grams(total * factor) : null,
      hydration: isComplete && flour > 0 ? water / flour : null,
      preferments,
      before: mixedBefore(draft, isWhole ? set : portions, flour),
      parts,
      pieces: draft.yield.pieces,
    },
  };
}

/** A seed is flour and water: it goes with those of the build that it began. */
function withoutSeeds(portions: readonly Portion[]): Portion[] {
  const list = [...portions];
  for (const seed of portions.filter(({ isSeed }) => isSeed)) {
    const of = (type: string) =>
      list.findIndex(({ row, stage, isSeed }) => stage === seed.stage && !isSeed && row.type === type);
    const [flour, water] = [of("flour"), of("water")];
    const [dry, wet] = [list[flour], list[water]];
    if (dry === undefined || wet === undefined || seed.amount === null || dry.amount === null || wet.amount === null)
      continue;
    list[flour] = { ...dry, amount: dry.amount + seed.amount * flourOfRow(seed.row) };
    list[water] = { ...wet, amount: wet.amount + seed.amount * waterOfRow(seed.row) };
    list.splice(list.indexOf(seed), 1);
  }
  return list;
}

/** Grams for a hundredth of the flour in a formula of percentages, by what the text says it makes. */
function scaleOf({ yield: yieldRead }: Draft, isGrams: boolean, flour: number, total: number): number | null {
  if (isGrams) return 1;
  if (!(flour > 0) || !(total > 0)) return null;
  if (yieldRead.flour !== null) return yieldRead.flour / flour;
  const dough =
    yieldRead.total ??
    (yieldRead.pieces !== null && yieldRead.pieceWeight !== null ? yieldRead.pieces * yieldRead.pieceWeight : null);
  return dough === null ? null : dough / total;
}

function partsOf({ stages, rows }: Draft): FormulaPart[] {
  return stages.flatMap((stage, at): FormulaPart[] => {
    const mine = rows.filter((row) => row.stage === at && row.takes === null);
    if (IN_DOUGH.has(stage.role) || stage.role === "overall" || mine.length === 0) return [];
    const isWeighed = mine.every((row) => row.grams !== null);
    const weight = mine.reduce((all, row) => all + (row.grams ?? 0), 0);
    return [{ stage: at, name: stage.name || stage.role, grams: isWeighed ? (grams(weight) as Grams) : null }];
  });
}
