// What every function is, found by what somebody wants to know.

import { foldText, singularName } from "../../shared/base/words.ts";
import type { FunctionHelp } from "../../shared/protocol/function-help.ts";

import { answersTradeWord, notHere, tradeWordsOf } from "./trade-words.ts";

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

type Placed = { readonly help: FunctionHelp; readonly places: readonly Weighed[]; readonly inName: string };

const placesOf = (help: FunctionHelp): Placed => ({
  help,
  inName: help.name.toLowerCase().replace("bake_", ""),
  places: [
    { words: wordsOf(help.name.replace("BAKE_", "")), weight: 6 },
    { words: wordsOf(tradeWordsOf(help.name)), weight: 5 },
    { words: wordsOf(help.summary), weight: 4 },
    { words: wordsOf(help.family), weight: 3 },
    { words: wordsOf(help.returns), weight: 2 },
    { words: help.args.flatMap(({ name, says }) => wordsOf(`${name.replace(/_/g, " ")} ${says}`)), weight: 1 },
  ],
});

/** How well a function's help meets one word. */
function meeting({ places, inName }: Placed, word: string): number {
  const best = (question: string) =>
    Math.max(
      ...places.map(({ words, weight }) => weight * Math.max(0, ...words.map((one) => meets(one, question)))),
      question.length >= MIN_LETTERS && inName.includes(question) ? 5 : 0,
    );
  return Math.max(best(word), ...(ALSO[word] ?? []).map((other) => 0.8 * best(other)));
}

/** The functions that answer a question, the best first; all of them, in their own order, for an empty one. */
export function findFunctions(all: readonly FunctionHelp[], question: string): readonly FunctionHelp[] {
  const words = question.replace(/bake_/gi, "");
  if (notHere(words) !== undefined) return [];
  const wanted = wordsOf(words).filter((word) => !EMPTY.has(word) && !/^\d+$/.test(word));
  if (wanted.length === 0) return all;
  const scores = all.map(placesOf).map((places) => ({
    help: places.help,
    met: wanted.map((word) => meeting(places, word)),
    named: places.inName === foldText(words) ? 100 : 0,
  }));
  // A word that few functions know says more than "dough", "weight" or "flour".
  const rare = wanted.map((_, at) => {
    const known = scores.filter(({ met }) => (met[at] ?? 0) >= 2).length;
    return Math.log(1 + all.length / (1 + known));
  });
  const scored = scores.map(({ help, met, named }) => ({
    help,
    score:
      named +
      answersTradeWord(help.name, words) +
      met.reduce((sum, one, at) => sum + (one > 0 ? one + 3 : 0) * (rare[at] ?? 0), 0),
  }));
  const most = Math.max(...scored.map(({ score }) => score));
  return scored
    .filter(({ score }) => score > 0 && score >= most / 3)
    .sort((one, other) => other.score - one.score)
    .map(({ help }) => help);
}
