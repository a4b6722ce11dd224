import { readNumber } from "../base/number.ts";
import { foldText, SPACES } from "../base/words.ts";
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
const POINT_FIRST = /\.\d+/y;
/** Letters; a flour's type keeps its number ("T55"), a unit does not ("1lb4oz"). */
const WORD = /\p{L}\d+(?![\p{L}\d])|\p{L}[\p{L}\p{M}'’]*/uy;
const LETTER = /^\p{L}/u;

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
const ODD = /[^ -~]|['*@]| {2}|\d ?x|[a-z] ?x ?\d|half|stone/i;

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
  const isPlain = !ODD.test(line);
  const text = isPlain ? line : spelledPlainly(line);
  const tokens: Token[] = [];
  let spaced = true;
  for (let at = 0; at < text.length; ) {
    const code = text.charCodeAt(at);
    if (code === SPACE) {
      spaced = true;
      at += 1;
      continue;
    }
    const piece = pieceAt(text, at, code, isPlain);
    tokens.push(tokenOf(piece, code, spaced));
    at += piece.length;
    spaced = false;
  }
  return tokens;
}

const [SPACE, POINT] = [32, 46];
const isDigit = (code: number): boolean => code >= 48 && code <= 57;
/** a to z, in either case. */
const isLatin = (code: number): boolean => (code >= 65 && code <= 90) || (code >= 97 && code <= 122);

/** The number, the word or the one sign that stands here. */
function pieceAt(text: string, at: number, code: number, isPlain: boolean): string {
  if (isDigit(code)) return text.slice(at, endOfNumber(text, at));
  if (isPlain && isLatin(code)) return text.slice(at, endOfWord(text, at));
  const mayStart = code === POINT && (at === 0 || /[ (/[-]/.test(text[at - 1] ?? ""));
  const number = mayStart ? matchAt(POINT_FIRST, text, at) : undefined;
  return number ?? matchAt(WORD, text, at) ?? String.fromCodePoint(text.codePointAt(at) ?? code);
}

/** Digits, and more of them behind a single point or comma. */
function endOfNumber(text: string, start: number): number {
  let end = endOf(isDigit, text, start);
  while ((text[end] === "." || text[end] === ",") && isDigit(text.charCodeAt(end + 1)))
    end = endOf(isDigit, text, end + 1);
  return end;
}

/** What WORD finds where a line holds nothing but plain letters and signs. */
function endOfWord(text: string, start: number): number {
  const digits = endOf(isDigit, text, start + 1);
  if (digits > start + 1 && !isLatin(text.charCodeAt(digits))) return digits;
  return endOf(isLatin, text, start + 1);
}

function endOf(isOne: (code: number) => boolean, text: string, start: number): number {
  let end = start;
  while (end < text.length && isOne(text.charCodeAt(end))) end += 1;
  return end;
}

function matchAt(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}

function tokenOf(piece: string, code: number, spaced: boolean): Token {
  if (isLatin(code)) return wordToken(piece, spaced);
  if (isDigit(code) || (code === POINT && piece.length > 1) || VULGAR.test(piece)) return numberToken(piece, spaced);
  return LETTER.test(piece) ? wordToken(piece, spaced) : { is: "mark", text: piece, spaced };
}

function wordToken(word: string, spaced: boolean): Token {
  return {
    is: "word",
    text: word === HALF_AND_HALF ? "half and half" : word,
    low: LATIN.test(word) ? word.toLowerCase() : foldText(word),
    spaced,
  };
}

const LATIN = /^[a-z]+$/i;
const FIGURES = /^\d{1,15}$/;

function numberToken(text: string, spaced: boolean): Token {
  if (FIGURES.test(text))
    return { is: "number", value: Number(text), text, vulgar: false, whole: true, unclear: false, spaced };
  const strict = readNumber(text);
  const loose = readNumber(text, { threeDecimals: true });
  if ("says" in loose) return { is: "mark", text, spaced };
  const [vulgar, whole] = [VULGAR.test(text), /^\d+$/.test(text)];
  return { is: "number", value: loose.value, text, vulgar, whole, unclear: "says" in strict, spaced };
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
