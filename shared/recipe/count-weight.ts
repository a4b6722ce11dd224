// "3 (150 g) eggs": the brackets behind a number of things hold the weight of all, or of each.

import { showNumber } from "../base/show.ts";
import { times } from "./amount.ts";
import type { Choice } from "./line-parts.ts";
import { isPackWord } from "./units.ts";
import { type LineRemark, noteOf, type Search, type Weighed, type Weight, weightOf } from "./weight.ts";

/** Pieces of one ingredient differ by so much from what the table says. */
const ALIKE = 0.25;

const middle = ({ least, most }: Weight): number => (least + most) / 2;
const isNear = (one: number, other: number): boolean => Math.abs(one - other) <= ALIKE * other * (1 + 1e-9);

/** The weight of a choice; one in brackets behind a number of things is of each or of all, as the table of measures tells. */
export function countedWeight(choice: Choice, search: Search, remarks: LineRemark[]): Weighed {
  const { amount, counted } = choice;
  const typed = weightOf(amount, search);
  if (counted === undefined || "says" in typed) return typed;
  const { least, most, unit, isBehindName } = counted;
  if (least === 1 && most === 1) return typed;
  // "1/2 cube (21 g)" is 21 g; only "1/2 (8 oz) package" is half of what stands there.
  if (most < 1 && !counted.isBehindNumber) return typed;
  const each = () => weightOf(times(amount, least, most), search);
  const one = weightOf({ low: [{ count: 1, unit }], high: [{ count: 1, unit }] }, search);
  const count = (least + most) / 2;
  const weight = middle(typed);
  const grams = `${showNumber(weight, 1)} g`;
  if (!("says" in one) && one.unsure === undefined && middle(one) > 0) {
    const piece = middle(one);
    const isAll = isNear(weight, piece * count);
    const isEach = isNear(weight, piece);
    const nearer = Math.abs(Math.log(weight / piece)) < Math.abs(Math.log(weight / (piece * count)));
    if (isAll || isEach) return isEach && (!isAll || nearer) ? each() : typed;
    if (isBehindName && weight > 0) {
      remarks.push(noteOf(`${grams} is taken as the weight of ${nearer ? "each" : "all"}`));
      return nearer ? each() : typed;
    }
  } else if (isPackWord(unit.word)) {
    // "2 (8 oz) packages" is how packs are typed; the other orders deserve a second look.
    if (!counted.isBehindNumber) remarks.push(noteOf(`${grams} is taken as the weight of each`));
    return each();
  } else if (isBehindName) return typed;
  return {
    says: `is ${grams} the weight of each, or of all ${showNumber(most)}? Enter "${showNumber(most)} x ${grams}" or "${grams}"`,
  };
}
