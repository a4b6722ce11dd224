import type { Entry } from "./line-parts.ts";
import { isNumberWord } from "./number-words.ts";
import { readPieces } from "./pieces.ts";
import { isMark, isWord, lastOf, type Token, tokensOf } from "./tokens.ts";
import { readUnit } from "./units.ts";

export type RecipeLine =
  /** Nothing to weigh: a heading, "salt to taste". */
  | { readonly is: "blank"; readonly says: string }
  | { readonly is: "unclear"; readonly says: string }
  /** `before` are the words in front of the first amount; words hold "," where a phrase ends. */
  | {
      readonly is: "read";
      readonly entries: readonly Entry[];
      readonly before: readonly string[];
      readonly more: boolean;
    };

/** No line of a recipe is longer; a text that is holds something else. */
const MAX_LINE_LENGTH = 1000;

const unclear = (says: string): RecipeLine => ({ is: "unclear", says });

/** Reads one line of recipe text: its amounts and its words. Which ingredient the words name is not asked here. */
export function readRecipeLine(line: string): RecipeLine {
  if (line.length > MAX_LINE_LENGTH)
    return unclear(`${line.length} characters are no line; give each ingredient a cell of its own`);
  const strange = STRANGE.test(line) ? strangeSign(line) : undefined;
  if (strange !== undefined) return unclear(strange);
  const sum = sumRow(line);
  if (sum !== undefined) return sum;
  const tokens = juiceLast(plainCount(withoutListMark(tokensOf(line))));
  const last = lastOf(tokens);
  const isHeading = isMark(last, ":");
  if (isHeading && isWord(tokens[0], "for", "to")) return { is: "blank", says: "a heading" };
  if (isWord(tokens[0], "makes", "serves", "yield", "yields"))
    return { is: "blank", says: "says what the recipe makes" };
  if (isWord(tokens[0], "minus", "less") && (tokens[1]?.is === "number" || isNumberWord(tokens[1])))
    return unclear("an amount that is taken off; enter it behind the one that it is taken from");
  const state = readPieces(tokens);
  if (state.fault !== undefined) return unclear(state.fault.says);
  if (state.entries.length > 0) {
    return { is: "read", entries: state.entries, before: state.before, more: state.more };
  }
  if (isHeading) return { is: "blank", says: "a heading" };
  if (tokens.some(({ is, text }) => is !== "word" && /[\d¼-¾⅐-⅞]/.test(text)))
    return unclear('a number but no amount; enter "500 g" or "2 cups"');
  if (isUnitAlone(tokens)) return unclear("a unit without a number");
  return { is: "blank", says: "no amount" };
}

const STRANGE = /[\r\n_^\\]|\/\//;

function strangeSign(line: string): string | undefined {
  if (/[\r\n]/.test(line.trim())) return "several lines in one cell; give each a cell of its own";
  const isInside = /\d[_^\\]\d|\d[/_]{2,}\d/.test(line);
  return isInside ? 'a number with a sign in it; enter "1000 g", or "1/2 cup"' : undefined;
}

/** A fraction sign lost on the way leaves "tsp salt"; "another cup", "stick butter" are no more of an amount. */
function isUnitAlone(tokens: readonly Token[]): boolean {
  const start = isWord(tokens[0], "another", "additional", "extra") ? 1 : 0;
  const unitMatch = readUnit(tokens, start);
  if (unitMatch === undefined) return false;
  const { unit, next } = unitMatch;
  if (unit.of !== "count") return unit.of !== "vague";
  return (unit.word === "stick" || unit.word === "sachet") && tokens[next]?.is === "word";
}

/** A row that adds up the others is no ingredient; "total flour" may be the one row of flour, or a sum. */
function sumRow(line: string): RecipeLine | undefined {
  if (!/^\s*(?:grand|sub|total|sum|dough|batter|batch)/i.test(line)) return undefined;
  const plain = line.trim().slice(0, 60).toLowerCase();
  if (
    /^(?:grand |sub-?)?(?:total|sum)s?(?: (?:dough|batter|weight|batch|mass|dough weight))?(?![ ,]*\p{L}{3,})|^(?:dough|batter|batch) (?:weight|total|yield)\b/u.test(
      plain,
    )
  )
    return { is: "blank", says: "a sum of the other lines" };
  return /^total\s+\p{L}/u.test(plain)
    ? unclear("a sum of other lines, or an ingredient? Take the line out, or enter its name without “total”")
    : undefined;
}

/** Bullets, boxes, "1." and "2)". */
function withoutListMark(tokens: readonly Token[]): readonly Token[] {
  let at = 0;
  // ">100 g" says more than that; "> 100 g" is how some pages begin every line.
  const isBound = isMark(tokens[0], "<≤≥") || (isMark(tokens[0], ">") && tokens[1]?.spaced === false);
  while (!isBound && tokens[at]?.is === "mark" && !isMark(tokens[at], "([~") && !/\d/.test(tokens[at]?.text ?? ""))
    at += 1;
  const [number, mark, after] = [tokens[at], tokens[at + 1], tokens[at + 2]];
  const isListMark = isMark(mark, ".)") && !mark?.spaced && after?.spaced === true;
  if (isListMark && number?.is === "number" && /^\d{1,2}$/.test(number.text)) at += 2;
  while (isMark(tokens[at], "-•*")) at += 1;
  // "Two (2) cups" says its number twice.
  const again = tokens[at + 2];
  const isTwice = isNumberWord(tokens[at]) && isMark(tokens[at + 1], "(") && isMark(tokens[at + 3], ")");
  if (isTwice && again?.is === "number") return [again, ...tokens.slice(at + 4)];
  return at === 0 ? tokens : tokens.slice(at);
}

/** "2 x eggs" and "eggs x 2" are 2 eggs; where numbers stand on both sides, something is multiplied. */
function plainCount(tokens: readonly Token[]): readonly Token[] {
  const at = tokens.findIndex((token) => isWord(token, "x"));
  if (at < 1) return tokens;
  const [before, after] = [tokens.slice(0, at), tokens.slice(at + 1)];
  const isNumber = (part: readonly Token[]) =>
    part.length > 0 && part.every((token) => token.is !== "word" || isNumberWord(token));
  const isName = (part: readonly Token[]) => part[0]?.is === "word" && part.every(({ is }) => is !== "number");
  if (isNumber(before) && isName(after)) return [...before, ...after];
  return isName(before) && isNumber(after) ? [...after, ...before] : tokens;
}

/** "juice of 1 lemon" is 1 lemon juice. */
function juiceLast(tokens: readonly Token[]): readonly Token[] {
  const start = isWord(tokens[0], "the") ? 1 : 0;
  const juice = tokens[start];
  if (juice === undefined || !isWord(juice, "juice") || !isWord(tokens[start + 1], "of", "from")) return tokens;
  const fruit = tokens.findIndex((token) => isWord(token, "lemon", "lemons", "orange", "oranges"));
  return fruit < 0 ? tokens : [...tokens.slice(start + 2, fruit + 1), juice, ...tokens.slice(fruit + 1)];
}
