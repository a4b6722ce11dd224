// What a compound ingredient is made of, as its larder row says: "cocoa mass 45%, sugar 54%, emulsifier (soya lecithin) 1%".

import { readNumber } from "../base/number.ts";
import { refuse } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { shownShare } from "../base/show.ts";
import { type Ratio, ratio } from "../base/units.ts";
import { splitList } from "./read-allergens.ts";

export type Part = { readonly name: string; readonly share: Ratio | null };

const SHARE = /^(.*\S) +([\d.,]+ ?%)$|^([\d.,]+ ?%) *(\S.*)$/;

/** Percentages of a compound's parts are rounded ones. */
const PARTS_UP_TO = 1.005;

/** The parts of a compound in the order that they are typed in. */
export function partsOf(madeOf: string, row: number | null): Part[] {
  const parts = splitList(madeOf).map((part): Part => {
    const [, last, after, before, first] = SHARE.exec(part) ?? [];
    const reading = readNumber(after ?? before ?? "", { percent: true });
    return "says" in reading
      ? { name: part, share: null }
      : { name: last ?? first ?? part, share: ratio(reading.value) };
  });
  const sum = parts.reduce((all, { share }) => all + (share ?? 0), 0);
  if (!atMost(sum, PARTS_UP_TO))
    refuse(`column "made of" adds up to ${shownShare(sum)}; enter shares of the whole`, "larder", row ?? undefined);
  return parts;
}
