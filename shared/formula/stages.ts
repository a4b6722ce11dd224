import { type Fault, fault, refuse, refuseAll } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { shownShare, shownWeight } from "../base/show.ts";
import { type Ratio, type Weight, weight } from "../base/units.ts";
import { isFlour, type Kind } from "../larder/kinds.ts";
import { sum } from "./formula.ts";
import { refuseTinySeed, without } from "./preferment.ts";

type Weights = readonly (Weight | null)[];
type Kinds = readonly (Kind | null)[];

export type Stage = { readonly preferment: Weight; readonly finalMix: Weight } | null;

/**
 * Splits a formula of plain rows into a preferment and a final mix. `share` is each flour row's part that is prefermented, or
 * every row's own part; water follows at hydration × flour, from the water rows in proportion (ice stays in the final mix).
 * A seed's flour and water are inside the weights and come off the preferment, so that preferment, final mix and the seed's
 * part make up every row.
 */
export function stages(
  weights: Weights,
  kinds: Kinds,
  share: Ratio | readonly (Ratio | null)[],
  hydration: Ratio,
  seed: { readonly weight: Weight; readonly hydration: Ratio },
): Stage[] {
  refuseRows(kinds, share);
  const moved = weights.map((row, index) => (row ?? 0) * partOf(kinds[index] ?? null, share, index));
  const flour = sum(moved.map((row, index) => (kinds[index]?.word === "flour" ? row : 0)));
  const water = flour * hydration;
  const waterRows = sum(weights.map((row, index) => (kinds[index]?.word === "water" ? row : 0)));
  refuseWater(water, waterRows, hydration, kinds);
  refuseTinySeed(seed.weight, flour + water);
  const { flour: restFlour, water: restWater } = without(
    { flour: weight(flour), water: weight(water) },
    seed.weight,
    seed.hydration,
    "seed",
  );
  return weights.map((row, index) => {
    if (row === null) return null;
    const { word } = kinds[index] ?? {};
    const share = moved[index] ?? 0;
    if (word === "flour") return stage(row, share, flour > 0 ? (share / flour) * restFlour : 0);
    if (word !== "water") return stage(row, share, share);
    const part = waterRows > 0 ? row / waterRows : 0;
    return stage(row, part * water, part * restWater);
  });
}

/** One row, of which `taken` is the preferment's, the seed's part counted, and `weighed` goes into it beside the seed. */
function stage(row: number, taken: number, weighed: number): Stage {
  return { preferment: weight(weighed), finalMix: weight(atMost(row, taken) ? 0 : row - taken) };
}

function partOf(kind: Kind | null, share: Ratio | readonly (Ratio | null)[], index: number): number {
  if (typeof share === "number") return kind?.word === "flour" ? share : 0;
  return share[index] ?? 0;
}

function refuseRows(kinds: Kinds, share: Ratio | readonly (Ratio | null)[]): void {
  const faults: Fault[] = [];
  // A loop, not a list of lists: ten thousand rows without a fault make nothing.
  for (const [index, kind] of kinds.entries()) {
    if (kind === null) continue;
    const typedShare = typeof share === "number" ? null : (share[index] ?? null);
    if (kind.word === "preferment") {
      const says = "is a preferment. Enter its flour and water in rows of their own, and a ripe starter as the seed";
      faults.push(fault(says, "kinds", index + 1));
    } else if (typedShare !== null && (kind.word === "water" || kind.word === "ice")) {
      const says = `is ${shownShare(typedShare)} beside ${kind.word}; leave it blank, the water follows from the hydration`;
      faults.push(fault(says, "share", index + 1));
    }
  }
  refuseAll(faults);
  if (!kinds.some(isFlour)) refuse("have no flour row, and a preferment begins with flour", "kinds");
}

/** Milk is not divided: its share of water is not known here, and it does not keep through a preferment's hours. */
function refuseWater(needed: number, there: number, hydration: Ratio, kinds: Kinds): void {
  if (atMost(needed, there)) return;
  if (there === 0 && kinds.some((kind) => kind?.word === "dairy")) {
    refuse(
      "have milk as the only liquid. It is only partly water, and it spoils while a preferment stands. Enter part of it as water and milk powder",
      "kinds",
    );
  }
  if (there === 0) refuse("have no water row, and the preferment takes its water from there", "kinds");
  refuse(
    `is ${shownShare(hydration)}, which takes ${shownWeight(needed)} of water, and the water rows hold ${shownWeight(there)}. Preferment less flour, or at a lower hydration`,
    "hydration",
  );
}
