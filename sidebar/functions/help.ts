// What every function is, found by what somebody wants to know.

import { foldText, singularName } from "../../shared/base/words.ts";
import type { FunctionHelp } from "../../shared/protocol/function-help.ts";

import { answersTradeWord, notHere } from "./trade-words.ts";

/** The build puts it here. */
declare const FUNCTION_HELP: readonly FunctionHelp[];

export const functionHelp = (): readonly FunctionHelp[] => FUNCTION_HELP;

/** Words of a question that say nothing about the sum. */
const EMPTY = new Set(
  "a an the how much many do does i we you my our is are be to of for in on at with and or it get find what which can need want from by if when long".split(
    " ",
  ),
);
/** What people say for what the functions say. */
const ALSO: Readonly<Record<string, readonly string[]>> = {
  overnight: ["hour", "time", "retard"],
  slower: ["time"],
  faster: ["time"],
  pan: ["tin"],
  mould: ["tin"],
  mold: ["tin"],
  cold: ["ice", "temperature"],
  hot: ["temperature"],
  warm: ["temperature"],
  sourdough: ["levain", "starter"],
  price: ["cost", "price", "sell"],
  charge: ["price"],
  expensive: ["cost"],
  spoon: ["spoon", "cup"],
  volume: ["cup", "capacity"],
  percentage: ["percent", "share"],
  percent: ["share"],
  scale: ["rescale", "scale", "step"],
  double: ["rescale"],
  half: ["rescale"],
  batch: ["mix", "dough"],
  shopping: ["need", "stock"],
  order: ["need"],
  nut: ["allergen"],
  gram: ["gram", "weight"],
};

/** Words of the trade that begin alike mean the same: "hydrat" finds "hydration". */
const MIN_LETTERS = 3;

const wordsOf = (text: string): string[] =>
  singularName(foldText(text))
    .split(/[^\p{L}\d%]+/u)
    .filter((word) => word !== "");

type Weighed = { readonly words: readonly string[]; readonly weight: number };

const meets = (word: string, wanted: string): number => {
  if (word === wanted) return 1;
  return wanted.length >= MIN_LETTERS && (word.startsWith(wanted) || (word.length > 4 && wanted.startsWith(word)))
    ? 0.7
    : 0;
};

/** The functions that answer a question, the best first; all of them, in their own order, for an empty one. */
export function findFunctions(all: readonly FunctionHelp[], question: string): readonly FunctionHelp[] {
  const asked = question.replace(/bake_/gi, "");
  if (notHere(asked) !== undefined) return [];
  const wanted = wordsOf(asked).filter((word) => !EMPTY.has(word));
  if (wanted.length === 0) return all;
  const scored = all.map((help) => {
    const places: Weighed[] = [
      { words: wordsOf(help.name.replace("BAKE_", "")), weight: 6 },
      { words: wordsOf(help.family), weight: 3 },
      { words: wordsOf(help.summary), weight: 4 },
      { words: wordsOf(help.returns), weight: 2 },
      { words: help.args.flatMap(({ name, says }) => wordsOf(`${name.replace(/_/g, " ")} ${says}`)), weight: 1 },
    ];
    const inName = help.name.toLowerCase().replace("bake_", "");
    const score = wanted.map((word) => {
      const best = (asked: string) =>
        Math.max(
          ...places.map(({ words, weight }) => weight * Math.max(0, ...words.map((one) => meets(one, asked)))),
          asked.length >= MIN_LETTERS && inName.includes(asked) ? 5 : 0,
        );
      return Math.max(best(word), ...(ALSO[word] ?? []).map((other) => 0.8 * best(other)));
    });
    // Every word that is met counts for more than one word met well.
    const met = score.filter((one) => one > 0).length;
    const named = inName === foldText(asked) ? 100 : 0;
    return {
      help,
      score: score.reduce((sum, one) => sum + one, 0) + 10 * met + named + answersTradeWord(help.name, asked),
    };
  });
  const most = Math.max(...scored.map(({ score }) => score));
  return scored
    .filter(({ score }) => score > 0 && score >= most / 2)
    .sort((one, other) => other.score - one.score)
    .map(({ help }) => help);
}
