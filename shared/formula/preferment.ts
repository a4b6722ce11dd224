import { refuse } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { showNumber, shownApart, shownShare, shownWeight } from "../base/show.ts";
import { type Ratio, type Weight, weight } from "../base/units.ts";

/** Flour and water, the two parts of a preferment; hydration is water over flour. */
export type FlourAndWater = { readonly flour: Weight; readonly water: Weight };

export function flourAndWater(whole: Weight, hydration: Ratio): FlourAndWater {
  return { flour: weight(whole / (1 + hydration)), water: weight((whole * hydration) / (1 + hydration)) };
}

/** The most starter of a hydration whose flour and water both fit into these. */
export function mostInside({ flour, water }: FlourAndWater, hydration: Ratio): Weight {
  const byFlour = flour * (1 + hydration);
  const byWater = hydration > 0 ? (water * (1 + hydration)) / hydration : Number.POSITIVE_INFINITY;
  return weight(Math.min(byFlour, byWater));
}

/** What is left to weigh in beside a starter that counts inside; refuses one that brings too much of either. */
export function without(whole: FlourAndWater, starter: Weight, hydration: Ratio, argument: string): FlourAndWater {
  const brought = flourAndWater(starter, hydration);
  if (!atMost(brought.flour, whole.flour) || !atMost(brought.water, whole.water)) {
    const [what, has, takes] = atMost(brought.flour, whole.flour)
      ? ["water", brought.water, whole.water]
      : ["flour", brought.flour, whole.flour];
    const most = mostInside(whole, hydration);
    refuse(
      `is ${shownApart(starter, most, 2)}, which brings ${shownApart(Number(has), Number(takes), 2)} of ${what} where ${shownWeight(Number(takes))} is wanted; at most ${shownWeight(most, "at most")} fits`,
      argument,
    );
  }
  return { flour: left(whole.flour, brought.flour), water: left(whole.water, brought.water) };
}

/** Never a hair below 0. */
const left = (whole: number, taken: number): Weight => weight(atMost(whole, taken) ? 0 : whole - taken);

/** What a preferment's share is: "20 % levain" is said of all three. */
export const BASES = {
  "prefermented flour": ["pre-fermented flour", "flour prefermented", "prefermented flour of all flour"],
  "weight of all flour": ["weight of total flour", "weight over all flour", "weight on all flour"],
  "weight of added flour": ["weight of final flour", "weight over added flour", "weight on added flour"],
} as const;
export type Basis = keyof typeof BASES;

/** The flour inside a preferment whose share of `flour`, all flour of the dough, is told in one of the three ways. */
export function prefermentedFlour(flour: Weight, share: Ratio, hydration: Ratio, basis: Basis): Weight {
  const most = basis === "prefermented flour" ? 1 : 1 + hydration;
  if (!atMost(share, most)) {
    refuse(
      `is ${showNumber(share, 4)}, which is ${shownShare(share)}; all the flour as preferment would be ${shownShare(most)}; enter ${showNumber(share, 4)}% or ${showNumber(share / 100, 6)} if that was meant`,
      "share",
    );
  }
  switch (basis) {
    case "prefermented flour":
      return weight(share * flour);
    case "weight of all flour":
      return weight((share * flour) / (1 + hydration));
    case "weight of added flour":
      return weight((share * flour) / (1 + hydration + share));
  }
}

/** A seed below this part of its preferment reads as a share that was typed: common practice, no source. */
const MIN_SEED = 0.005;

export function refuseTinySeed(seed: Weight, total: number): void {
  if (seed > 0 && !atMost(MIN_SEED * total, seed)) {
    refuse(
      `is ${showNumber(seed, 4)}, below 0.5 % of the preferment's ${shownWeight(total)}; was it typed as a share? Enter its weight`,
      "seed",
    );
  }
}

export type Preferment = FlourAndWater & { readonly seed: Weight; readonly yeast: Weight };

/** Flour and water to weigh in beside the seed, whose own flour and water count inside; yeast goes on all its flour. */
export function preferment(
  all: Weight,
  { share, hydration, basis }: { readonly share: Ratio; readonly hydration: Ratio; readonly basis: Basis },
  seed: { readonly weight: Weight; readonly hydration: Ratio },
  yeast: Ratio,
): Preferment {
  const flour = prefermentedFlour(all, share, hydration, basis);
  const whole = { flour, water: weight(flour * hydration) };
  const total = whole.flour + whole.water;
  refuseTinySeed(seed.weight, total);
  const rest = without(whole, seed.weight, seed.hydration, "seed");
  return { ...rest, seed: seed.weight, yeast: weight(yeast * flour) };
}

/** Starter, flour and water that make up the wanted weight at the wanted hydration; without a starter, as much as fits. */
export function starterFeed(
  wanted: Weight,
  hydrationWanted: Ratio,
  hydrationNow: Ratio,
  starter: Weight | null,
): FlourAndWater & { readonly starter: Weight } {
  const whole = flourAndWater(wanted, hydrationWanted);
  if (starter === null && Math.abs(hydrationWanted - hydrationNow) <= 1e-9) {
    refuse("is blank, and at equal hydrations all of it would be starter; enter how much starter goes in", "starter");
  }
  const used = starter ?? mostInside(whole, hydrationNow);
  return { starter: used, ...without(whole, used, hydrationNow, "starter") };
}
