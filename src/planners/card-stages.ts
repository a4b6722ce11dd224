// The weights of a formula sheet's preferment and final mix, and what goes in or is made beside them, for the whole amount.

import { isFault } from "../../shared/base/refusal.ts";
import { showNumber } from "../../shared/base/show.ts";
import { type Ratio, ratio, weight } from "../../shared/base/units.ts";
import type { CardData, CardWeight } from "../../shared/card/data.ts";
import { stages } from "../../shared/formula/stages.ts";
import { kind as kindReader, kindsOf } from "../../shared/larder/kinds.ts";
import type { FormulaSheet } from "./formula-sheet.ts";

type Rows = FormulaSheet["rows"];

const hasStages = (sheet: FormulaSheet): boolean => sheet.zone("pre_scale") !== undefined;

/** One column, or the preferment's and the final mix's, for the whole amount. */
export function stagesOf(sheet: FormulaSheet, rows: Rows): CardData["stages"] {
  const weights = rows.map((row) => (row.weight === null ? null : weight(row.weight)));
  const share = sheet.number("pre_share");
  const hydration = sheet.number("pre_hydration");
  if (!hasStages(sheet) || share === null || hydration === null) {
    return [{ head: "Weight", weights }];
  }
  const reader = kindReader();
  const kinds = kindsOf(
    weights,
    rows.map(({ kind }) => {
      const cellValue = reader.read(kind);
      return isFault(cellValue) ? null : cellValue;
    }),
  );
  const only = sheet.text("pre_from");
  const flour = sheet.number("pre_flour") ?? 0;
  const ofOne = rows.reduce((sum, row) => sum + (same(row.name, only) ? (row.weight ?? 0) : 0), 0);
  const parts = rows.map((row, at): Ratio | null => {
    if (kinds[at]?.word === "flour")
      return only === "" ? ratio(share) : same(row.name, only) && ofOne > 0 ? ratio(flour / ofOne) : null;
    return kinds[at]?.word === "yeast" ? ratio(sheet.number("pre_yeast_part") ?? 0) : null;
  });
  // A levain's seed is flour and water of the levain like the rest of it.
  const split = stages(weights, kinds, parts, ratio(hydration), { weight: weight(0), hydration: ratio(hydration) });
  return [
    { head: called(sheet), weights: split.map((one) => one?.preferment || null) },
    { head: "Final mix", weights: split.map((one) => one?.finalMix || null) },
  ];
}

/** What the sheet's preferment is: Poolish, Biga, Levain. */
function called(sheet: FormulaSheet): string {
  const name = sheet.text("pre_kind") || (sheet.zone("levain") === undefined ? "preferment" : "levain");
  return name.slice(0, 1).toUpperCase() + name.slice(1);
}

export const same = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

/** What goes in beside the rows of the table, and what is made beside them. */
export function addedWeights(sheet: FormulaSheet, mixes: number): CardWeight[] {
  const each = (name: string, says: string, stage = 0): CardWeight[] => {
    const value = sheet.number(name);
    return value === null || value === 0 ? [] : [{ says, base: value * mixes, perMix: true, stage }];
  };
  const all = (name: string, says: string): CardWeight[] => {
    const value = sheet.number(name);
    return value === null || value === 0 ? [] : [{ says, base: value, perMix: false, stage: 0 }];
  };
  const isStaged = hasStages(sheet) && sheet.number("pre_weight") !== null;
  const degrees = `°${sheet.options.temperature}`;
  const water = sheet.number("water_temp");
  const ice = sheet.number("ice") ?? 0;
  const last = isStaged ? 1 : 0;
  return [
    ...(isStaged
      ? [{ says: `${called(sheet)} in each mix`, base: sheet.number("pre_weight") ?? 0, perMix: true, stage: 1 }]
      : []),
    ...(ice > 0 ? iceWeights(ice * mixes, (sheet.number("tap_water") ?? 0) * mixes, water, degrees, last) : []),
    ...each("held", "Water to hold back", last),
    ...feed(sheet),
    ...all("roll_in", `${sheet.text("roll_in_name") || "Fat"} to roll in, in all`),
    ...all("block_dough", "A block: dough"),
    ...all("block_fat", "A block: fat"),
  ];
}

/** Ice and tap water in the place of the water, for the whole amount. */
export const iceWeights = (
  ice: number,
  tap: number,
  water: number | null,
  degrees: string,
  stage: number,
): CardWeight[] => [
  { says: "Ice (part of the water)", base: ice, perMix: true, stage, isIce: true },
  {
    says: `And tap water${water === null ? "" : `, together ${showNumber(water, 1)} ${degrees}`}`,
    base: tap,
    perMix: true,
    stage,
    isIce: true,
  },
];

/** The levain to build: what is kept back does not follow the amount. */
function feed(sheet: FormulaSheet): CardWeight[] {
  const levain = sheet.number("levain") ?? 0;
  const inDough = sheet.number("pre_weight") ?? 0;
  if (!(levain > 0)) return [];
  const seed = levain - inDough;
  const part = (name: string, says: string): CardWeight[] => {
    const value = sheet.number(name);
    return value === null
      ? []
      : [
          {
            says,
            base: (value / levain) * inDough,
            fixed: (value / levain) * seed,
            perMix: false,
            stage: 0,
            isFeed: true,
          },
        ];
  };
  return [
    ...part("feed_seed", "Build levain: starter"),
    ...part("feed_flour", "Levain to build for all: flour"),
    ...part("feed_water", "Levain to build for all: water"),
    ...(seed > 0
      ? [{ says: "Keep back as starter", base: 0, fixed: seed, perMix: false, stage: 0, isFeed: true as const }]
      : []),
  ];
}
