// Words beside a unit: the size of an egg, the country of a cup, how full it is and in what form.
import type { CupSystem, EggSize } from "../base/volumes.ts";
import { SIZES } from "../larder/egg-sizes.ts";
import type { Preparation } from "../larder/measures.ts";

const LETTERS: ReadonlyMap<string, EggSize> = new Map(Object.entries({ s: "small", m: "medium", l: "large" } as const));

/** The size that words behind a number name: "eggs (medium)", "eggs, size M". */
export function sizeIn(words: readonly string[]): EggSize | undefined {
  const low = words.map((word) => word.toLowerCase());
  const at = low.findIndex(
    (word, index) => SIZES.has(word) || isSizeLetter(words[index] ?? "", words[index - 1] ?? ""),
  );
  const word = low[at] ?? "";
  return word === "large" && low[at - 1] === "extra" ? "extra large" : (SIZES.get(word) ?? LETTERS.get(word));
}

/** A size letter stands in capitals: "3 eggs (M)". */
const isSizeLetter = (word: string, before: string): boolean =>
  /^[SML]$/.test(word) || (LETTERS.has(word) && before.toLowerCase() === "size");

export const SYSTEMS: ReadonlyMap<string, CupSystem> = new Map(
  Object.entries({
    ...{ us: "US", american: "US", uk: "UK", imperial: "UK", british: "UK", australian: "AU", metric: "EU" },
  } as const),
);
/** Words that leave open how much: no rule says what a heaped spoon holds. */
export const LOOSE: ReadonlySet<string> = new Set(
  "heaped;heaping;rounded;scant;generous;good;barely;nearly;almost;short;overflowing;mounded;gehauft;gehaufte;gehaufter".split(
    ";",
  ),
);
export const EXACT = new Set(
  "level;flat;full;whole;packed;unpacked;sifted;unsifted;firmly;tightly;lightly;loosely;well;gestrichen;gestrichene;gestrichener".split(
    ";",
  ),
);

const PREPARATION_WORDS: ReadonlyMap<string, Preparation> = new Map(
  Object.entries({
    ...{ sifted: "sifted", unsifted: "unsifted", unpacked: "unpacked", whole: "whole", slivered: "slivered" },
    ...{ sliced: "sliced", slice: "sliced", slices: "sliced", strips: "sliced", diced: "diced", cubed: "diced" },
    ...{ chopped: "chopped", shredded: "shredded", grated: "grated", mashed: "mashed", ground: "ground" },
  } as const),
);
const NOT_PACKED = new Set(["loosely", "lightly", "not", "un"]);

/** The forms that words name, "loosely packed" as unpacked. */
export const preparationsIn = (words: readonly string[]): Preparation[] =>
  words.flatMap((word, at): Preparation[] => {
    const low = word.toLowerCase();
    if (low === "packed") return [NOT_PACKED.has((words[at - 1] ?? "").toLowerCase()) ? "unpacked" : "packed"];
    const preparation = PREPARATION_WORDS.get(low);
    return preparation === undefined ? [] : [preparation];
  });
