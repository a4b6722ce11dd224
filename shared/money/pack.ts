import { type Fault, isFault } from "../base/refusal.ts";
import { showNumber } from "../base/show.ts";
import { type Grams, grams, gramsIn, type WeightUnit } from "../base/units.ts";
import type { CupSystem } from "../base/volumes.ts";
import { SPACES } from "../base/words.ts";
import { number, type Reader, text, unreadable } from "../cells/cell.ts";
import { findIngredient, type Larder, unknownName } from "../larder/larder.ts";
import { spelledPack } from "./pack-text.ts";

/** A pack as it is typed: a number in the unit of the call, or text such as "5 lb". */
export const packCell = (): Reader<number | string> => ({
  hint: { of: "any" },
  read: (raw) => {
    if (typeof raw === "number") return unreadable(raw) ?? raw;
    const packText = text().read(raw);
    return isFault(packText) ? packText : (tooLong(packText) ?? packText);
  },
});

/** What one pack is never longer than; a whole page in a cell is a slip. */
const MAX_PACK_LENGTH = 200;
const tooLong = (pack: string): Fault | undefined =>
  pack.length > MAX_PACK_LENGTH
    ? { says: `has ${pack.length} characters: enter only the pack, such as "12 x 750 ml"` }
    : undefined;

const bareNumber = number<number>('a pack such as "25 kg" or "5 lb"', { above: 0, max: 1e9 });

/** Measures by which a larder says that an ingredient is counted. */
const PIECES = ["piece", "small", "medium", "large"];

/** What a call says beside the pack: the unit of a bare number, and whose eggs, cups and spoons. */
export type PackTerms = { readonly unit?: WeightUnit | null; readonly cups?: CupSystem };

/**
 * Grams in a pack of an ingredient, or what stands in the way, as a predicate. The ingredient is asked for only where a
 * volume or a number of pieces needs it.
 */
export function packWeight(
  pack: number | string,
  name: string | null,
  larder: Larder,
  { unit = null, cups = "US" }: PackTerms = {},
): Grams | Fault {
  if (typeof pack === "number") return barePack(pack, name, larder, unit);
  const long = tooLong(pack);
  if (long !== undefined) return long;
  const line = pack.replace(SPACES, " ").trim();
  if (/^[-+]?[\d., ]+$/.test(line)) return barePack(line, name, larder, unit);
  // A price list says the same few packs over and over.
  const key = [cups, name ?? "", line].join("\n");
  const before = remembered(larder);
  const known = before.get(key);
  if (known !== undefined) return known;
  const weight = spelledPack(line, name, larder, cups);
  if (before.size < MAX_CACHED) before.set(key, weight);
  return weight;
}

const MAX_CACHED = 2000;
const packsOf = new WeakMap<Larder, Map<string, Grams | Fault>>();

function remembered(larder: Larder): Map<string, Grams | Fault> {
  const before = packsOf.get(larder);
  if (before !== undefined) return before;
  const cache = new Map<string, Grams | Fault>();
  packsOf.set(larder, cache);
  return cache;
}

/** A number alone, in the unit of the call. */
function barePack(pack: number | string, name: string | null, larder: Larder, unit: WeightUnit | null): Grams | Fault {
  const ingredient = name === null ? undefined : findIngredient(larder, name);
  if (name !== null && ingredient === undefined)
    return { says: `belongs to an ingredient that ${unknownName(larder, name)}` };
  const amount = bareNumber.read(pack);
  if (isFault(amount)) return amount;
  const isCounted = PIECES.some((one) => ingredient?.measures?.has(one));
  if (unit !== null && !isCounted) return grams(amount * gramsIn(unit));
  const size = showNumber(amount, 4);
  return unit === null
    ? { says: `is ${size} of what? Enter "${size} kg", "${size} g", "${size} lb" or "${size} each"` }
    : { says: `is ${size}, ${unit} or pieces? Enter "${size} ${unit}" or "${size} each"` };
}
