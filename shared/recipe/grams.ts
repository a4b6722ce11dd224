import { quote } from "../base/show.ts";
import { type Grams, grams } from "../base/units.ts";
import type { CupSystem, EggSize } from "../base/volumes.ts";
import { SPACES } from "../base/words.ts";
import { partedEgg } from "../larder/egg-sizes.ts";
import { findIngredient, type Larder, unknownName } from "../larder/larder.ts";
import { chosen } from "./amount-choice.ts";
import { type RecipeLine, readRecipeLine } from "./line.ts";
import { preparationsIn, sizeIn } from "./measure-words.ts";
import { ingredientOfPhrases, joinPhrases, phrasesOf } from "./name.ts";
import { isFrom, namesAnother, partsOf, phraseText, toldPhrases } from "./named-parts.ts";
import { type LineRemark, noteOf, type Search } from "./weight.ts";

export type LineWeight =
  /** No amount to weigh; `says` says what the line is. */
  | { readonly is: "blank"; readonly says: string }
  /** An amount that cannot be weighed for certain. */
  | { readonly is: "unclear"; readonly says: string }
  | {
      readonly is: "weighed";
      readonly least: Grams;
      readonly most: Grams;
      readonly remarks: readonly LineRemark[];
      /** The ingredient itself weighs differently from brand to brand: a span, but no one weight. */
      readonly unsure?: string;
    };

const USED_BESIDES: LineRemark = { reason: "used besides", says: "more than this is used besides" };

/** No ingredient's name is longer. */
const MAX_NAME_LENGTH = 200;

/** Spelling takes time to compare, and only so many refusals are told in full. */
const COMPARED = 3;

/** Recipes say the same line again and again; so many different ones are remembered. */
const REMEMBERED = 1000;

/**
 * Weighs the lines of a recipe one by one, in grams. A written weight wins over a volume or a count, one in the open over one in
 * brackets. `named` is the ingredient that the sheet names beside the line.
 */
export function lineWeigher(system: CupSystem, larder: Larder): (line: string, named: string | null) => LineWeight {
  const compared = new Map<string, string>();
  // The same name is refused in the same words, however many lines there are.
  const unknown = (name: string): string => {
    const comparison = compared.get(name);
    if (comparison !== undefined) return comparison;
    if (compared.size >= COMPARED) return `is ${quote(name)}, which the larder does not know`;
    const says = unknownName(larder, name);
    compared.set(name, says);
    return says;
  };
  const before = new Map<string, LineWeight>();
  return (line, named) => {
    const known = named === null ? before.get(line) : undefined;
    if (known !== undefined) return known;
    const weight = weighLine(line, named, system, larder, unknown);
    if (named === null && before.size < REMEMBERED) before.set(line, weight);
    return weight;
  };
}

function weighLine(
  line: string,
  named: string | null,
  system: CupSystem,
  larder: Larder,
  unknown: (name: string) => string,
): LineWeight {
  const recipeLine = readRecipeLine(line);
  if (recipeLine.is !== "read") return recipeLine;
  const parts = partsOf(recipeLine);
  const size = once(
    () =>
      sizeIn(joinPhrases(phrasesOf(parts.main))) ??
      (named === null ? undefined : sizeIn(named.slice(0, MAX_NAME_LENGTH).split(/[\s-]+/))),
  );
  const ingredient = once(() => {
    const plain = named === null ? parts.main : named.slice(0, MAX_NAME_LENGTH).replace(SPACES, " ").split(" ");
    // A shop may have rows of its own for large eggs and for medium ones.
    const eggSize =
      larder.rows.length === 0 ? undefined : (countedSize(recipeLine) ?? (named === null ? size() : undefined));
    const words = eggSize === undefined || !isSized(larder, eggSize) ? plain : [...eggSize.split(" "), ...plain];
    const phrases = phrasesOf(words);
    const match = (named === null ? undefined : findIngredient(larder, named)) ?? ingredientOfPhrases(larder, phrases);
    if (match !== undefined) return match;
    const name = named ?? toldPhrases(phrases);
    if (name === "") return 'an amount without an ingredient; name it, or enter a weight such as "500 g"';
    return `its ingredient ${unknown(name)}`;
  });
  const remarks: LineRemark[] = [];
  const second =
    parts.others.length === 0 ? undefined : parts.others.find((other) => namesAnother(larder, parts.main, other.words));
  if (second && second.link !== "or") {
    const [one, two] = [parts.main, second.words].map((words) => quote(phraseText(words)));
    return { is: "unclear", says: `two ingredients in one line, ${one} and ${two}; give each a line of its own` };
  }
  if (second) remarks.push(noteOf(`${quote(phraseText(second.words))} is the other choice and is not read`));
  if (recipeLine.more) remarks.push(USED_BESIDES);
  const search: Search = { ingredient, size, preparations: () => preparationsIn(parts.main), system };
  let least = 0;
  let most = 0;
  let unsure: string | undefined;
  for (const { choices } of recipeLine.entries) {
    const usable = second ? choices.filter((choice) => !isFrom(second.choice, choice, choices)) : choices;
    const weighed = chosen(usable, search, remarks);
    if ("says" in weighed) return { is: "unclear", says: weighed.says };
    least += weighed.least;
    most += weighed.most;
    unsure = unsure ?? weighed.unsure;
    if (weighed.lacks !== undefined)
      remarks.push(noteOf(`the larder has no measure of it ${weighed.lacks}; the plain one is taken`));
  }
  if (!(least >= 0) || most < least) return { is: "unclear", says: "more is taken off than there is" };
  if (!Number.isFinite(most)) return { is: "unclear", says: "a number with too many digits" };
  const weight = { is: "weighed" as const, least: grams(least), most: grams(most), remarks };
  return unsure === undefined ? weight : { ...weight, unsure };
}

/** The size of what a line counts: "3 large". */
function countedSize({ entries }: Extract<RecipeLine, { is: "read" }>): EggSize | undefined {
  for (const { choices } of entries)
    for (const { amount } of choices) {
      const unit = amount.low[0]?.unit;
      if (unit?.of === "count" && unit.size !== undefined) return unit.size;
    }
  return undefined;
}

/** Whether a row of the shop's is named by this size. */
const isSized = ({ rows }: Larder, size: EggSize): boolean =>
  rows.some(({ keys }) => keys.some((key) => partedEgg(key)?.size === size));

function once<T>(make: () => T): () => T {
  let cache: { readonly value: T } | undefined;
  return () => {
    if (cache === undefined) cache = { value: make() };
    return cache.value;
  };
}
