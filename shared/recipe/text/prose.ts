// A recipe told in sentences: "mix 1 kg flour with 650 g water, 20 g salt and 10 g yeast" as rows, and its sentences as the method.

import { singularName } from "../../base/words.ts";
import { prefermentWordIn } from "./headings.ts";
import type { SourceLine } from "./source-lines.ts";
import { yieldIn } from "./yields.ts";

const UNIT =
  "(?:kg|kilos?|g|gr|grams?|oz|ounces?|lbs?|pounds?|ml|cl|dl|l|lit(?:re|er)s?|cups?|tsp|tbsp|teaspoons?|tablespoons?)";
const AMOUNT = `(?:\\d[\\d.,]*(?:\\s\\d/\\d)?|\\d/\\d|[½¼¾⅓⅔])[½¼¾⅓⅔]?\\s?${UNIT}`;
const HAS_AMOUNT = new RegExp(`${AMOUNT}(?![\\p{L}])`, "iu");
const END = "(?=[,;.()]|\\s(?:and|with|plus|in|into|at|to|then|for|until|over|on|as|from|&|–|-)\\s|$)";
const ITEM = new RegExp(
  `(?<![\\p{L}\\d.,/])(${AMOUNT})\\s+(?:of\\s+)?(?:the\\s+)?((?:\\p{L}[\\p{L}'’-]*\\s?){1,4}?)${END}|\\b(all (?:of )?the \\p{L}+)`,
  "giu",
);
/** What makes a sentence of a line with amounts. */
const VERB =
  /\b(?:mix|add|stir|knead|combine|feed|refresh|dissolve|whisk|work|blend|make|take|use|build|rub|cream|beat|melt|start|pour|put|weigh)\b/i;
const FEEDS = /\b(?:feed|refresh|build)\b/i;
/** "Divide into 500 g pieces" weighs no ingredient. */
const OF_THE_WHOLE =
  /\b(?:dough|batter|loaf|loaves|rolls?|buns?|balls?|pieces?|pcs|each|portions?|tins?|rounds?|mixture)\b/i;
/** Fewer ingredients are a remark. */
const FEWEST = 3;

type Sentence = { readonly items: readonly string[]; readonly stage: string };

function sentencesOf(text: string): Sentence[] {
  return text.split(/(?<=\p{L}{2}[.!;])\s+(?=\p{Lu})/u).map((sentence) => {
    const items = [...sentence.matchAll(ITEM)].flatMap(([, amount = "", name = "", whole = ""]) => {
      if (whole !== "") return [whole];
      const plain = name.trim();
      return OF_THE_WHOLE.test(plain) ? [] : [`${amount} ${plain}`];
    });
    const open = sentence.replace(ITEM, " ");
    const named = prefermentWordIn(singularName(open.replace(/[^\p{L} ]/gu, " ")));
    return { items, stage: FEEDS.test(sentence) ? named || "levain" : named };
  });
}

/** Letters of a sentence that says what is mixed with what. */
const SHORTEST = 30;

const isSentence = ({ text, isListed }: SourceLine): boolean =>
  text.length >= SHORTEST && !isListed && text.split(" ").length >= 6 && VERB.test(text) && HAS_AMOUNT.test(text);

const lineOf = (line: SourceLine, text: string, isMarked = false): SourceLine => ({
  ...line,
  raw: text,
  text,
  isMarked,
});

/** The same lines; of a text that weighs nothing but in sentences, its rows above them. */
export function toldApart(lines: readonly SourceLine[]): readonly SourceLine[] {
  const told = lines.filter(isSentence);
  const [first] = told;
  if (first === undefined) return lines;
  const others = lines.filter((line) => !told.includes(line) && HAS_AMOUNT.test(line.text));
  if (others.some(({ text }) => yieldIn(text) === undefined && !/\d\s*[x×@]\s*\d/.test(text))) return lines;
  const rows: SourceLine[] = [];
  let stage = "";
  for (const line of told) {
    for (const sentence of sentencesOf(line.text)) {
      if (sentence.items.length === 0) continue;
      const next = sentence.stage !== "" ? sentence.stage : stage === "" ? "" : "dough";
      if (next !== stage) rows.push(lineOf(line, next, true));
      stage = next;
      rows.push(...sentence.items.map((item) => lineOf(line, item)));
    }
  }
  const many = rows.filter(({ isMarked }) => !isMarked).length;
  if (many < FEWEST) return lines;
  const place = lines.indexOf(first);
  return [...lines.slice(0, place), ...rows, lineOf(first, "Method", true), ...lines.slice(place)];
}
