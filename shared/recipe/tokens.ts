import { folded, SPACES } from "../base/words.ts";
import { readNumber } from "../cells/number.ts";
import { BY_SPELLING, isPackSpelling } from "./unit-words.ts";

/** A recipe line in pieces. Numbers and signs such as ½ carry a value; words are kept as typed and folded. */
export type Token =
  | {
      readonly is: "number";
      readonly value: number;
      readonly text: string;
      /** A sign such as ½. */
      readonly vulgar: boolean;
      /** Digits alone. */
      readonly whole: boolean;
      /** "1,250": thousands or decimals, as the unit will tell. */
      readonly unclear: boolean;
      readonly spaced: boolean;
    }
  | { readonly is: "word"; readonly text: string; readonly low: string; readonly spaced: boolean }
  | { readonly is: "mark"; readonly text: string; readonly spaced: boolean };

const VULGAR = /[¼-¾⅐-⅞]/;
const DIGITS = /\d+(?:[.,]\d+)*/y;
const POINT_FIRST = /\.\d+/y;
/** Letters; a flour's type keeps its number ("T55"), a unit does not ("1lb4oz"). */
const WORD = /\p{L}\d+(?![\p{L}\d])|\p{L}[\p{L}\p{M}'’]*/uy;
const ANY = /[\s\S]/uy;

/** The cream of that name is a word, no number. */
const HALF_AND_HALF = "halfandhalf";

/** What joins thousands: "1 250 g" with a no-break or thin space is one number, and so is the Swiss "1'250 g". */
const THIN_THOUSANDS = /(\d)[\u00a0\u2009\u202f'’](?=\d{3}(?!\d))/g;

let packs: RegExp | undefined;
/** "2 400 g tins", whatever its spaces, are no 2400 g. */
function isPack(rest: string): boolean {
  const words = () =>
    [...BY_SPELLING].flatMap(([word, { of }]) => (of === "count" && isPackSpelling(word) ? [word] : []));
  packs ??= new RegExp(`^\\d{3}[\\s-]?(?:g|gr|grams?|ml)[\\s-]+(?:${words().join("|")})(?:e?s)?(?!\\p{L})`, "iu");
  return packs.test(rest);
}

/** What most lines do not have, and what they would be made plainer for. */
const ODD = /[^ -~]|['*@]| {2}|\d ?x|\p{L} ?x ?\d|half|stone/iu;

/** Signs of no width that web pages leave between and inside words. */
const UNSEEN = /[\u200b-\u200f\u2060\ufeff\u00ad]/g;

/** One sign for each kind of space, dash and "times". */
const spelledPlainly = (line: string): string =>
  line
    .replace(UNSEEN, "")
    .replace(THIN_THOUSANDS, (whole, digit: string, at: number, text: string) =>
      isPack(text.slice(at + whole.length)) ? `${digit} ` : digit,
    )
    .replace(SPACES, " ")
    .replace(/[‐‑‒–—−]/g, "-")
    .replace(/[⁄∕]/g, "/")
    .replace(/×/g, " x ")
    .replace(/(\d) ?[x*@] ?(?=\d)/gi, "$1 x ")
    .replace(/(\p{L}) [x*] ?(?=\d)/giu, "$1 x ")
    .replace(/\bstone[ -]ground\b/gi, "stoneground")
    .replace(/\bhalf[ -](?:and|&)[ -]half\b/gi, HALF_AND_HALF)
    .normalize("NFC");

/**
 * The pieces of one line, in one pass over it. A number that no spelling allows ("1.2.3") comes back as a mark, which no
 * amount contains.
 */
export function tokensOf(line: string): Token[] {
  const text = ODD.test(line) ? spelledPlainly(line) : line;
  const tokens: Token[] = [];
  let at = 0;
  let spaced = true;
  const take = (pattern: RegExp): string | undefined => {
    pattern.lastIndex = at;
    const found = pattern.exec(text)?.[0];
    if (found !== undefined) at += found.length;
    return found;
  };
  while (at < text.length) {
    if (text[at] === " ") {
      spaced = true;
      at += 1;
      continue;
    }
    const pointFirst = spaced || /[(/[-]/.test(text[at - 1] ?? "");
    const digits = take(DIGITS) ?? (pointFirst ? take(POINT_FIRST) : undefined);
    if (digits !== undefined) tokens.push(numberToken(digits, spaced));
    else {
      const word = take(WORD);
      if (word !== undefined) tokens.push(wordToken(word, spaced));
      else {
        const sign = take(ANY) ?? "";
        tokens.push(VULGAR.test(sign) ? numberToken(sign, spaced) : { is: "mark", text: sign, spaced });
      }
    }
    spaced = false;
  }
  return tokens;
}

function wordToken(word: string, spaced: boolean): Token {
  return { is: "word", text: word === HALF_AND_HALF ? "half and half" : word, low: folded(word), spaced };
}

const FIGURES = /^\d{1,15}$/;

function numberToken(text: string, spaced: boolean): Token {
  if (FIGURES.test(text))
    return { is: "number", value: Number(text), text, vulgar: false, whole: true, unclear: false, spaced };
  const strict = readNumber(text);
  const loose = readNumber(text, { threeDecimals: true });
  if ("problem" in loose) return { is: "mark", text, spaced };
  const [vulgar, whole] = [VULGAR.test(text), /^\d+$/.test(text)];
  return { is: "number", value: loose.value, text, vulgar, whole, unclear: "problem" in strict, spaced };
}

/** Whether one of these signs stands here. */
export const isMark = (token: Token | undefined, signs: string): boolean =>
  token?.is === "mark" && signs.includes(token.text);
export const isAnd = (token: Token | undefined): boolean => isWord(token, "and", "und", "et");

/** The last of a list; an index of -1 is many times slower than asking first. */
export const lastOf = <T>(list: readonly T[]): T | undefined => (list.length === 0 ? undefined : list[list.length - 1]);

/** Whether one of these words stands here. Asked many times a line, and so without a list. */
export const isWord = (
  token: Token | undefined,
  one: string,
  two?: string,
  three?: string,
  four?: string,
  five?: string,
) => {
  if (token?.is !== "word") return false;
  const { low } = token;
  return low === one || low === two || low === three || low === four || low === five;
};
