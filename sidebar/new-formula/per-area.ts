// A weight per area: what a round that is known to be right has on each square of its length.

import { tidy } from "../../shared/base/number.ts";
import { type Fault, isFault } from "../../shared/base/refusal.ts";
import { fromCentimetres, fromGrams, toCentimetres, toGrams } from "../../shared/base/units.ts";
import { number } from "../../shared/cells/cell.ts";

/** The units that it is in. */
type Over = { readonly weight: "g" | "oz"; readonly length: "cm" | "in" };

const BARE = number("a weight per area such as 0.40", { above: 0, max: 1000 }, { threeDecimals: true });
const PER_AREA = /^(.*?[\d½⅓⅔¼¾⅛⅜⅝⅞])\s*(g|oz)\s*\/\s*(cm|in)(?:²|2)\.?$/i;

export function readPerArea(text: string, units: Over): number | Fault {
  const [, bare = text, of = "", over = ""] = PER_AREA.exec(text.trim()) ?? [];
  const read = BARE.read(bare);
  if (isFault(read) || of === "") return read;
  const from: Over = {
    weight: of.toLowerCase() === "g" ? "g" : "oz",
    length: over.toLowerCase() === "cm" ? "cm" : "in",
  };
  return tidy(perAreaIn(read, from, units));
}

/** A length stands in it twice, under the line. */
export function perAreaIn(value: number, from: Over, to: Over): number {
  const one = fromCentimetres(toCentimetres(1, from.length), to.length);
  return fromGrams(toGrams(value, from.weight), to.weight) / one ** 2;
}
