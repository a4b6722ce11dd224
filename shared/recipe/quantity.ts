import { isGlued } from "../base/number.ts";
import { type AmountFault, amountFault } from "./amount-faults.ts";
import { isLargeWord, isNumberWord, readFractionWords, readLarge, readNumberWords } from "./number-words.ts";
import { isAnd, isMark, isWord, type Token } from "./tokens.ts";
import { readPack, readUnit } from "./units.ts";

/** A number of a recipe line, or a range of numbers. */
export type Quantity = {
  readonly least: number;
  readonly most: number;
  readonly next: number;
  /** A separator that could mean thousands or decimals. */
  readonly unclear: boolean;
  /** A range with a dash, or a mixed number with a space: before a pack's size either may mean "times". */
  readonly timesPerhaps: boolean;
  /** What no number can mean: "1/0", "10 00", "3 to 2". */
  readonly fault: AmountFault | undefined;
};
type One = {
  readonly value: number;
  readonly next: number;
  readonly unclear?: boolean;
  readonly mixed?: true;
  readonly fault?: AmountFault;
};

/** No recipe leaves open more than that: "1 - 500 g" is number 1 of a list. */
const MAX_SPREAD = 8;
const isWhole = (token: Token | undefined): token is Extract<Token, { is: "number" }> =>
  token?.is === "number" && token.whole;

/** "3/4": no kitchen fraction has a denominator above 64. */
function readFraction(tokens: readonly Token[], at: number): One | undefined {
  const [over, slash, under] = [tokens[at], tokens[at + 1], tokens[at + 2]];
  if (over?.is === "number" && over.vulgar) return { value: over.value, next: at + 1 };
  if (!isMark(slash, "/") || !isWhole(over) || !isWhole(under) || under.value < 2 || under.value > 64) return undefined;
  // A page that lost the space of "1 1/2" says eleven halves, which nobody measures.
  const fault = isGlued(over.value, under.value) ? { fault: amountFault("lost space") } : {};
  return { value: over.value / under.value, next: at + 3, ...fault };
}

/** The fraction that follows a whole number: " 1/2", "½", "-1/2", " and a half". */
export function readRest(tokens: readonly Token[], at: number): One | undefined {
  const isLinked = isMark(tokens[at], "-&+") || isAnd(tokens[at]);
  const start = isLinked ? at + 1 : at;
  const figures = readFraction(tokens, start);
  if (figures !== undefined && figures.value < 1) return figures;
  if (!isLinked) return undefined;
  const words = readFractionWords(tokens, start);
  return words !== undefined && !isMark(tokens[at], "-") ? words : undefined;
}

function readOne(tokens: readonly Token[], at: number): One | undefined {
  const token = tokens[at];
  if (token === undefined || token.is === "mark" || (token.is === "word" && !isNumberWord(token))) return undefined;
  const fraction = readFraction(tokens, at);
  if (fraction !== undefined) return beside(tokens, fraction);
  if (token?.is === "number") return readFigures(tokens, at, token);
  const words = readFractionWords(tokens, at);
  if (words !== undefined) return words;
  if (isWord(token, "dozen")) return { value: 1, next: at };
  const spelled = readNumberWords(tokens, at);
  if (spelled === undefined) return undefined;
  // "one 1/4-oz packet" is no mixed number; only a said "and" joins a fraction to a word.
  const isJoined = isMark(tokens[spelled.next], "&") || isAnd(tokens[spelled.next]);
  const rest =
    isJoined && !isWord(tokens[spelled.next - 1], "couple", "pair") ? readRest(tokens, spelled.next) : undefined;
  return rest === undefined ? spelled : { value: spelled.value + rest.value, next: rest.next };
}

function readFigures(tokens: readonly Token[], at: number, token: Extract<Token, { is: "number" }>): One {
  const next = tokens[at + 1];
  const thousands = readThousands(tokens, at, token);
  if (thousands !== undefined) return thousands;
  const rest = isWhole(token) ? readRest(tokens, at + 1) : undefined;
  if (rest !== undefined) {
    const mixed = next?.is === "number" && next.spaced;
    return beside(tokens, { value: token.value + rest.value, next: rest.next, ...(mixed ? { mixed } : {}) });
  }
  // "1/0", "1//2", "1.1/2": a slash without a space joins a number to something that is no fraction.
  if (isMark(next, "/") && !next?.spaced && tokens[at + 2]?.is !== "word") {
    const under = tokens[at + 2];
    const isAnother = isWhole(token) && under?.is === "number" && under.value >= token.value;
    if (under !== undefined && !under.spaced && !isAnother)
      return { value: token.value, next: at + 1, fault: amountFault("no fraction") };
  }
  if (isLargeWord(next) && isWhole(token)) return readLarge(tokens, { value: token.value, next: at + 1 });
  return beside(tokens, { value: token.value, next: at + 1, unclear: token.unclear });
}

/** "1 250 g" with an ordinary space; "2 400 g tins" are two tins. */
function readThousands(tokens: readonly Token[], at: number, token: Token): One | undefined {
  const next = tokens[at + 1];
  if (!isWhole(token) || token.text.length > 2 || next?.is !== "number" || !/^\d{3}(?:[.,]\d+)?$/.test(next.text))
    return undefined;
  if (!isWord(tokens[at + 2], "g", "gr", "gram", "grams", "ml")) return undefined;
  const unit = readUnit(tokens, at + 2);
  if (unit !== undefined && readPack(tokens, unit.next) !== undefined) return undefined;
  return { value: token.value * 1000 + Number(next.text.replace(",", ".")), next: at + 2 };
}

/** A number right behind another, or with dots between them, belongs to it in no way that can be known; a pack's size is looked for first. */
function beside(tokens: readonly Token[], one: One): One {
  const after = tokens[one.next];
  if (after === undefined || after.is === "word") return one;
  if (after?.is === "number" && one.fault === undefined) return { ...one, fault: amountFault("side by side") };
  let at = one.next;
  while (isMark(tokens[at], ".…")) at += 1;
  const isDotted = at > one.next + 1 || isMark(after, "…");
  return isDotted && tokens[at]?.is === "number" ? { ...one, fault: amountFault("dotted") } : one;
}

export const isRangeMark = (token: Token | undefined): boolean =>
  isMark(token, "-~") || isWord(token, "to", "or", "bis");

/** The number at a place of the line: "1 1/2", "2 to 3", "1/3 of 1/8", "4 x 100", "half a dozen". */
export function readQuantity(tokens: readonly Token[], at: number): Quantity | undefined {
  const one = readOne(tokens, at);
  if (one === undefined) return undefined;
  let { value: least, value: most, next, unclear = false } = one;
  let timesPerhaps = one.mixed === true;
  let fault = one.fault;
  const between = at > 0 && isWord(tokens[at - 1], "between") && isWord(tokens[next], "and");
  if (between || isRangeMark(tokens[next])) {
    const two = isWord(tokens[next + 1], "a", "an") ? undefined : readOne(tokens, next + 1);
    if (two !== undefined) {
      if (two.value < least) fault = amountFault("backwards");
      else if (two.value > MAX_SPREAD * least && least > 0 && isMark(tokens[next], "-")) fault = amountFault("wide");
      // "1-2 hundred": from one, or from a hundred.
      const isLarge = isWord(tokens[two.next - 1], "hundred", "thousand") && least < 10;
      if (isLarge && isMark(tokens[next], "-")) fault = amountFault("two in words");
      fault = fault ?? two.fault;
      timesPerhaps = isMark(tokens[next], "-");
      most = two.value;
      next = two.next;
      unclear ||= two.unclear === true;
    }
  }
  // A number times a number; each turn passes over at least one piece.
  for (;;) {
    const token = tokens[next];
    if (isWord(token, "dozen", "doz")) {
      least *= 12;
      most *= 12;
      next += 1;
      if (isMark(tokens[next], ".") && !tokens[next]?.spaced) next += 1;
      if (isWord(tokens[next], "of")) next += 1;
      continue;
    }
    const isPart = least < 1 && isWord(token, "a", "an");
    const start = isWord(token, "of", "x", "times") ? next + 1 : isPart ? next : undefined;
    const times = start === undefined ? undefined : readOne(tokens, start);
    if (times === undefined) break;
    least *= times.value;
    most *= times.value;
    next = Math.max(times.next, next + 1);
    unclear ||= times.unclear === true;
  }
  return { least, most, next, unclear, timesPerhaps, fault };
}
