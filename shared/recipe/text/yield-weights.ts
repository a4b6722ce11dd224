// The weights that a text of a yield names.

import { type Grams, grams } from "../../base/units.ts";
import { gramsOfMatch, WEIGHT } from "./yield-words.ts";

/** The weights of a text, the same one in two units once; and what is left of it. */
export function weightsIn(text: string): { all: Grams[]; rest: string } {
  const all: number[] = [];
  const rest = text.replace(WEIGHT, (...match) => {
    const weight = gramsOfMatch(match.slice(0, 4));
    if (weight > 0 && !all.some((one) => Math.abs(one - weight) < 0.06 * weight)) all.push(weight);
    return " ";
  });
  return { all: all.map(grams), rest };
}
