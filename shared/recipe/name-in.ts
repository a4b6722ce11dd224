// What the words of a recipe line name: the ingredient they mean, and its name as it is written there.

import { Refusal } from "../base/refusal.ts";
import type { Ingredient } from "../larder/ingredient.ts";
import { findIngredient, type Larder } from "../larder/larder.ts";
import { readRecipeLine } from "./line.ts";
import { ingredientOf, phrasesOf } from "./name.ts";
import { partsOf } from "./named-parts.ts";
import { readPieces } from "./pieces.ts";
import { tokensOf } from "./tokens.ts";

type Larders = { readonly larder: Larder };

/** The words that name the ingredient of a line, "," where a phrase ends. */
export function wordsOf(text: string): readonly string[] {
  const recipeLine = readRecipeLine(text);
  return recipeLine.is === "read" ? partsOf(recipeLine).main : readPieces(tokensOf(text)).before;
}

export function ingredientIn(words: readonly string[], { larder }: Larders): Ingredient | undefined {
  try {
    return findIngredient(larder, words.join(" ")) ?? ingredientOf(larder, words);
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

/** The first phrase where it names the ingredient by itself, otherwise all: "flour", but "flour, bread". */
export function nameIn(
  words: readonly string[],
  text: string,
  ingredient: Ingredient | undefined,
  kitchen: Larders,
): string {
  const phrases = phrasesOf(words).map((phrase) => phrase.filter((word) => !/^\d+%$/.test(word)));
  const [first = []] = phrases;
  const isEnough = ingredient === undefined || ingredientIn(first, kitchen)?.name === ingredient.name;
  return (isEnough ? [first] : phrases)
    .map((phrase) => asWritten(phrase, text))
    .filter((phrase) => phrase !== "")
    .join(", ")
    .replace(/ and$/, "")
    .slice(0, 100);
}

/** The words with the hyphens that they have in the line: "all-purpose flour". */
function asWritten(words: readonly string[], text: string): string {
  const plain = words.map((word) => word.replace(/[^\p{L}\p{N}]/gu, "\\$&"));
  return plain.length === 0 ? "" : (new RegExp(plain.join("[\\s.\\-‐‑–]+")).exec(text)?.[0] ?? words.join(" "));
}
