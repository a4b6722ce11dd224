import { refuse } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { shownApart, shownShare, shownWeight } from "../base/show.ts";
import { type Ratio, type Weight, weight } from "../base/units.ts";

/** What a share of roll-in fat is said of. */
export const ROLL_IN_BASES = {
  "base dough": ["dough", "base", "detrempe"],
  "finished dough": ["finished", "whole dough", "laminated dough", "total dough", "dough and fat"],
  flour: ["all flour", "total flour", "flour weight"],
} as const;
export type RollInBase = keyof typeof ROLL_IN_BASES;

/** More fat than this share of the finished dough is no dough that can be folded: common practice, no source. */
const MAX_OF_FINISHED = 0.6;

/**
 * Fat to roll into a base dough. Published croissant and Danish formulas: 45 to 70 % of the flour, 25 to 33 % of the base dough
 * (eoibakery.com.au, bakefromscratch.com, sweetnapa.com).
 */
export function rollIn(dough: Weight, share: Ratio, of: RollInBase | null, flour: Weight | null): Weight {
  if (of === null && flour !== null) {
    refuse(
      'is blank though a flour weight is given; enter "flour" or "base dough", so that it is clear what the share is of',
      "of",
    );
  }
  if (of === "finished dough") return ofFinished(dough, share);
  if (of !== "flour") return weight(dough * share);
  if (flour === null)
    return refuse("is blank though the share is of the flour; enter the weight of all the flour", "flour");
  if (!atMost(flour, dough)) {
    refuse(`is ${shownApart(flour, dough, 2)}, more than the dough of ${shownWeight(dough)} that it is in`, "flour");
  }
  return weight(flour * share);
}

function ofFinished(dough: Weight, share: Ratio): Weight {
  if (!atMost(share, MAX_OF_FINISHED)) {
    refuse(
      `is ${shownShare(share)} of the finished dough, more fat than dough can hold; enter at most ${shownShare(MAX_OF_FINISHED)}, or choose "base dough"`,
      "share",
    );
  }
  return weight((dough * share) / (1 - share));
}
