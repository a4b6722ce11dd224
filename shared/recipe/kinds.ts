// What kind of ingredient a line holds: by the larder, else by a word of its name, else it is asked.

import { Refusal } from "../base/refusal.ts";
import { quote } from "../base/show.ts";
import { singularName } from "../base/words.ts";
import type { Ingredient } from "../larder/ingredient.ts";
import { type KindWord, PREFERMENT_WORDS } from "../larder/kind-words.ts";

/** A kind, "" where it has to be asked for; `says` is a remark, `asks` the question. */
export type KindRead = { readonly word: string; readonly says: string; readonly asks: string };

const PREFERMENT = new RegExp(`\\b(${PREFERMENT_WORDS.join("|")})\\b`);
/** "sourdough bread", "starter flour", "sour cream": not the preferment itself. */
const NOT_ITSELF =
  /\b(?:flour|bread|loaf|loave|roll|bun|baguette|boule|pizza|cake|cracker|crumb|culture|cream|milk|cherr(?:y|ie))\b/;

/** The preferment that a text names: "levain" in "200 g ripe levain". */
export function prefermentIn(text: string): string | undefined {
  const plain = singularName(text);
  return NOT_ITSELF.test(plain) ? undefined : PREFERMENT.exec(plain)?.[1];
}

/** Words that tell a kind where the larder has no row, in a few languages; the last in a name decides. */
const TELLING: readonly (readonly [kind: KindWord, words: RegExp])[] = [
  ["flour", /^(flour|semolina|maida|atta|farine|farina|farinha|harina|\w*mehl|\w*bloem|\w*mjol|hvedemel|rugmel)$/],
  ["water", /^(water|wasser|eau|acqua)$/],
  ["salt", /^(salt|salz|sel|sale)$/],
  ["yeast", /^(yeast|levure|\w*hefe)$/],
  ["sugar", /^(sugar|syrup|honey|treacle|molasse|sucre|honig|\w*zucker)$/],
  ["fat", /^(butter|oil|lard|shortening|margarine|marg|ghee|beurre|huile|\w*schmalz)$/],
  ["egg", /^(egg|yolk|eier|ei|oeuf|œuf|huevo|uovo|uova)$/],
  ["dairy", /^(milk|cream|yogurt|yoghurt|quark|cheese|buttermilk|lait|\w*milch)$/],
  ["grain", /^(seed|oat|bran|flake|grain|groat)$/],
  ["fruit", /^(raisin|sultana|currant|cherry|apricot|fig|apple|fruit|rosinen)$/],
  ["ice", /^ice$/],
];

export function kindOf(ingredient: Ingredient | undefined, text: string): KindRead {
  const known = knownKind(ingredient);
  if (known !== null) return { word: known, says: "", asks: "" };
  const preferment = prefermentIn(text);
  if (preferment !== undefined) return prefermentKind(preferment, text);
  const words = singularName(text)
    .split(/[^\p{L}]+/u)
    .reverse();
  for (const word of words) {
    const kind = TELLING.find(([, telling]) => telling.test(word))?.[0];
    if (kind === undefined) continue;
    const isGuess = ingredient === undefined && word !== kind;
    const says = `the larder has no row for it; its type is a guess from the word ${quote(word)}`;
    return { word: kind, says: isGuess ? says : "", asks: "" };
  }
  return { word: "", says: "", asks: 'what type is it: flour, water, fat …? Choose "other" for none of these' };
}

function knownKind(ingredient: Ingredient | undefined): KindWord | null {
  try {
    return ingredient?.kind ?? null;
  } catch (error) {
    // The shop's own cell cannot be read: the person is asked.
    if (error instanceof Refusal) return null;
    throw error;
  }
}

function prefermentKind(word: string, text: string): KindRead {
  const percent = /(\d+(?:[.,]\d+)?)\s*%/.exec(text)?.[1];
  if (percent !== undefined) return { word: `${word} ${percent}%`, says: "", asks: "" };
  return {
    word: "",
    says: "",
    asks: `how wet is it? Enter its type with its water as a share of its flour, such as "${word} 100%" for equal parts`,
  };
}
