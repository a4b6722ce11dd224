import { singularName } from "../base/words.ts";
import { nameKey } from "../larder/built-in-larder.ts";
import type { Ingredient } from "../larder/ingredient.ts";
import { findByKey, findIngredient, knownWords, type Larder } from "../larder/larder.ts";

const words = (list: string): ReadonlySet<string> => new Set(list.split(" ").map(singularName));

/** What follows says what it is for or how it is cut, not what it is. */
const STOPS = words(
  "for at from to in into if or oder ou see cut until such about plus not per on as like preferably optional depending " +
    "more divided without including minus less with mit use your if i we you each up",
);
/** Words that leave an ingredient what it is. */
const HARMLESS = words(
  "a the of and de small medium large extra big jumbo whole half cold warm hot cool lukewarm tepid ice boiling room " +
    "temperature temp soft frozen beaten broken plain pure organic natural good quality best fine free range strong " +
    "size s m l xl old fashioned grind neutral us uk stoneground golden runny clear mild seedless virgin level packet package pack can tin jar box boxes bag piece stick cube " +
    "block bar slice chunk bottle carton tub container sachet envelope tap filtered iced gently well very ripe overripe " +
    "cup frische frisch lauwarm once twice",
);
/** Participles that make another product: dried fruit is not fruit. */
const PRODUCTS = words(
  "powdered dried condensed evaporated malted flaked candied crystallized crystallised cultured fermented smoked pickled " +
    "desiccated coated flavored flavoured dehydrated rolled puffed popped sugared sweetened clarified browned whipped infused " +
    "seasoned textured hulled pearled cracked sprouted refined roasted red shred jelly curly ply",
);
/** Of these kinds the fresh thing is the usual one; fresh ginger is not the ground spice. */
const USUALLY_FRESH: ReadonlySet<string | null> = new Set(["dairy", "egg", "fruit", "water", "fat"]);

const isHarmless = (word: string, { kind }: Ingredient): boolean =>
  singularName(word) === "fresh" ? USUALLY_FRESH.has(kind) : isHarmlessAnywhere(word);

function isHarmlessAnywhere(word: string): boolean {
  const plain = singularName(word);
  if (plain === "fresh") return true;
  if (HARMLESS.has(plain) || /^\d+%$/.test(plain)) return true;
  return /^[a-z]{3,}(?:ed|ly)$/.test(plain) && !PRODUCTS.has(plain) && !plain.endsWith("seed");
}

/** What "10 large whites" are. */
const ALONE: ReadonlyMap<string, string> = new Map([
  ["white", "egg white"],
  ["yolk", "egg yolk"],
]);

/** A line names its ingredient in its first words. */
const MAX_WORDS = 24;
const MAX_NAME_LENGTH = 6;

/** The phrases of the words up to where they stop being a name. */
export function phrasesOf(line: readonly string[]): string[][] {
  const phrases: string[][] = [];
  let phrase: string[] = [];
  let passing = false;
  for (const word of line.slice(0, MAX_WORDS)) {
    if (word === ",") {
      if (phrase.length > 0) phrases.push(phrase);
      phrase = [];
      passing = false;
    } else if (!passing && STOPS.has(singularName(word))) {
      // "for dusting: flour" names its ingredient after the phrase; "flour, cut in" before it.
      if (phrases.length > 0 || phrase.length > 0) break;
      passing = true;
    } else if (!passing) phrase.push(word);
  }
  if (phrase.length > 0) phrases.push(phrase);
  return phrases;
}

/** The words of all phrases. Array.flat takes ten times as long, and every line asks. */
export const joinPhrases = (phrases: readonly (readonly string[])[]): readonly string[] =>
  phrases.length === 1 ? (phrases[0] ?? []) : ([] as string[]).concat(...phrases);

/** Whether the words say anything that could be an ingredient. */
export const namesNothing = (line: readonly string[], ingredient: Ingredient | undefined): boolean =>
  joinPhrases(phrasesOf(line)).every((word) => ingredient !== undefined && isHarmless(word, ingredient));

/**
 * The ingredient a line's words name: the longest known name beside which only words stand that leave it what it is. Catalogue
 * order is understood ("flour, bread"). Undefined where a word is left that may make it another thing ("coconut flour").
 */
export const ingredientOf = (larder: Larder, line: readonly string[]): Ingredient | undefined =>
  ingredientOfPhrases(larder, phrasesOf(line));

/** The same where the phrases are known already. */
export function ingredientOfPhrases(larder: Larder, phrases: readonly (readonly string[])[]): Ingredient | undefined {
  const [first = [], ...others] = phrases;
  const alone = first.length === 1 && others.length === 0 ? ALONE.get(singularName(first[0] ?? "")) : undefined;
  if (alone !== undefined) return findIngredient(larder, alone);
  const words = named(larder, joinPhrases(phrases));
  if (words === undefined) return undefined;
  const match = longestName(larder, words);
  if (match !== undefined || others.length === 0) return match;
  return longestName(larder, [...words.slice(first.length), ...words.slice(0, first.length)]);
}

/** A word as it is typed, its key, and whether any known name holds it. */
type Word = { readonly word: string; readonly key: string; readonly isKnown: boolean };

/** Undefined where a word is of no known name and not harmless beside any: nothing is named then, whatever else is said. */
function named(larder: Larder, line: readonly string[]): Word[] | undefined {
  const known = knownWords(larder);
  const words: Word[] = [];
  let anyKnown = false;
  for (const word of line) {
    const key = nameKey(word);
    const isKnown = known.has(key) || (key.includes(" ") && key.split(" ").every((one) => known.has(one)));
    if (!isKnown && !isHarmlessAnywhere(word)) return undefined;
    anyKnown ||= isKnown;
    words.push({ word, key, isKnown });
  }
  return anyKnown ? words : undefined;
}

function longestName(larder: Larder, line: readonly Word[]): Ingredient | undefined {
  // Up to where known words follow each word.
  const ends = line.map((_, start) => {
    let end = start;
    while (line[end]?.isKnown) end += 1;
    return end;
  });
  const longest = ends.reduce((most, end, start) => Math.max(most, end - start), 0);
  for (let size = Math.min(MAX_NAME_LENGTH, longest); size > 0; size--) {
    for (let start = 0; start + size <= line.length; start++) {
      if ((ends[start] ?? 0) < start + size) continue;
      const part = line.slice(start, start + size);
      const match = findByKey(larder, part.map(({ key }) => key).join(" "), part.map(({ word }) => word).join(" "));
      if (match === undefined) continue;
      const isRestHarmless = line.every(
        ({ word }, at) => (at >= start && at < start + size) || isHarmless(word, match),
      );
      if (isRestHarmless) return match;
    }
  }
  return undefined;
}
