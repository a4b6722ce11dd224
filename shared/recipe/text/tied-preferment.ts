// What ripens or soaks before the dough is mixed: as a sheet's cells take it, and as its own list.

import { grams } from "../../base/units.ts";
import type { MixedBefore, TiedPreferment } from "./described-formula.ts";
import type { Draft } from "./draft.ts";
import { identityOf, type Portion } from "./portions.ts";
import type { Reading } from "./row-context.ts";
import { flourOfRow, waterOfRow } from "./starter.ts";

type Parts = {
  readonly at: number;
  readonly portions: readonly Portion[];
  /** The whole dough, one portion an ingredient. */
  readonly dough: readonly Portion[];
  readonly flourOfAll: number;
  /** Made but not used. */
  readonly partWeight: number | undefined;
  readonly draft: Draft;
  readonly reading: Reading;
};

const sumOf = (list: readonly Portion[], by: (portion: Portion) => number = () => 1): number =>
  list.reduce((all, one) => all + (one.amount ?? 0) * by(one), 0);
const flourIn = ({ row }: Portion): number => flourOfRow(row);
const waterIn = ({ row }: Portion): number => waterOfRow(row);

/** A preferment as the sheet's cells take it. */
export function tied(parts: Parts): TiedPreferment[] {
  const { at, portions, flourOfAll, partWeight, draft } = parts;
  const stage = draft.stages[at];
  const mine = portions.filter(({ stage: takerStage }) => takerStage === at);
  const flour = sumOf(mine, flourIn);
  if (stage === undefined || !(flour > 0) || !(flourOfAll > 0)) return [];
  const [seeds, fed] = [mine.filter(({ isSeed }) => isSeed), mine.filter(({ isSeed }) => !isSeed)];
  const fedFlour = sumOf(fed, flourIn);
  const seedFlour = sumOf(seeds, flourIn);
  const hydration = sumOf(mine, waterIn) / flour;
  const { only, isAlike } = floursOf(parts, mine);
  const isPlain = fed.every(({ row, amount }) => amount === 0 || /^(?:flour|water|ice|yeast)$/.test(row.type));
  return [
    {
      stage: at,
      kind: stage.preferment === "" ? "preferment" : stage.preferment,
      share: flour / flourOfAll,
      hydration,
      yeast: sumOf(mine.filter(({ row }) => row.type === "yeast")) / flour,
      seed: fedFlour > 0 ? sumOf(seeds) / fedFlour : 0,
      seedHydration: seedFlour > 0 ? sumOf(seeds, waterIn) / seedFlour : hydration,
      isWhole: isPlain && isAlike,
      hours: stage.hours,
      temperature: stage.temperature,
      leftOver: partWeight !== undefined && partWeight > 0 ? grams(partWeight) : null,
      flour: only,
    },
  ];
}

/** Flours differ from those of the dough by more than rounding. */
const UNLIKE = 0.02;

/** The one flour that goes in where the dough has others, called as in the dough; and whether one or all alike go in. */
function floursOf({ dough, reading }: Parts, mine: readonly Portion[]): { only: string; isAlike: boolean } {
  const sharesOf = (list: readonly Portion[]): Map<string, number> => {
    const flours = list.filter(({ row }) => row.type === "flour");
    const all = sumOf(flours);
    const shares = new Map<string, number>();
    for (const { row, amount } of flours) {
      const key = identityOf(row, reading);
      shares.set(key, (shares.get(key) ?? 0) + (all > 0 ? (amount ?? 0) / all : 0));
    }
    return shares;
  };
  const [here, whole] = [sharesOf(mine), sharesOf(dough)];
  const [key] = here.keys();
  if (here.size === 1 && whole.size > 1) {
    const named = dough.find(({ row }) => row.type === "flour" && identityOf(row, reading) === key);
    return { only: named?.row.name ?? "", isAlike: true };
  }
  return {
    only: "",
    isAlike: [...whole].every(([name, share]) => Math.abs(share - (here.get(name) ?? 0)) <= UNLIKE),
  };
}

/** Preferments and soakers with what goes into each. */
export function mixedBefore({ stages }: Draft, portions: readonly Portion[], flourOfAll: number): MixedBefore[] {
  if (!(flourOfAll > 0)) return [];
  return stages.flatMap((stage, at): MixedBefore[] => {
    const mine = portions.filter((one) => one.stage === at && (one.amount ?? 0) > 0);
    if ((stage.role !== "preferment" && stage.role !== "soaker") || mine.length === 0) return [];
    const rows = mine.map(({ row, amount }) => ({ name: row.name, percent: ((amount ?? 0) / flourOfAll) * 100 }));
    return [{ stage: at, rows }];
  });
}
