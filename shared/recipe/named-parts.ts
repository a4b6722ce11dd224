// Which words of a line name its ingredient, and which another one.
import type { Larder } from "../larder/larder.ts";
import type { RecipeLine } from "./line.ts";
import type { Choice } from "./line-parts.ts";
import { ingredientOf, joinPhrases, namesNothing, phrasesOf } from "./name.ts";
import { lastOf } from "./tokens.ts";

/** The words of a name as they are quoted. */
export const phraseText = (words: readonly string[]): string => toldPhrases(phrasesOf(words));

export function toldPhrases(phrases: readonly (readonly string[])[]): string {
  const name = joinPhrases(phrases).join(" ");
  return name.endsWith(" and") ? name.slice(0, -4) : name;
}

type Part = { readonly link: Choice["link"]; readonly words: readonly string[]; readonly choice: Choice };

/** The words that name the ingredient, and those that stand at further amounts and may name another. */
export function partsOf(line: Extract<RecipeLine, { is: "read" }>): {
  main: readonly string[];
  others: readonly Part[];
} {
  let main: readonly string[] = line.before;
  const others: Part[] = [];
  const [only] = line.entries;
  const choices = only && line.entries.length === 1 ? only.choices : line.entries.flatMap((one) => one.choices);
  for (const choice of choices) {
    const last = lastOf(others);
    if (main.length === 0) main = choice.words;
    else if (choice === choices[0] || phrasesOf(main).length === 0) main = [...main, ",", ...choice.words];
    else if (!choice.bracketed) others.push({ link: choice.link, words: choice.words, choice });
    else if (last === undefined) main = [...main, ",", ...choice.words];
    else others.splice(-1, 1, { ...last, words: [...last.words, ",", ...choice.words] });
  }
  return { main, others };
}

export function namesAnother(larder: Larder, main: readonly string[], other: readonly string[]): boolean {
  const first = phrasesOf(other)[0];
  if (first === undefined) return false;
  const here = ingredientOf(larder, main);
  if (namesNothing(first, here)) return false;
  const there = ingredientOf(larder, first);
  return there === undefined || here === undefined || there.name !== here.name;
}

/** A choice of another ingredient, and the brackets behind it. */
export function isFrom(other: Choice, choice: Choice, choices: readonly Choice[]): boolean {
  const start = choices.indexOf(other);
  return start >= 0 && choices.indexOf(choice) >= start;
}
