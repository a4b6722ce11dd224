import { isAnd, isMark, isWord, type Token } from "./tokens.ts";

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
  readonly problem?: string;
};
type One = {
  readonly value: number;
  readonly next: number;
  readonly unclear?: boolean;
  readonly mixed?: true;
  readonly problem?: string;
};

export const NO_FRACTION = 'a fraction that no kitchen has; enter one such as "1/2", or a decimal';
const DIVIDED = "digits with a space between them; enter the number without it";
export const BACKWARDS =
  'a range that runs backwards; enter the lower number first, or "1 3/4" for one and three quarters';
/** What is refused however the rest of the line may read. */
export const isNoNumber = (problem: string | undefined): boolean =>
  problem === NO_FRACTION || problem === DIVIDED || problem === BACKWARDS;

const NUMBER_WORDS: ReadonlyMap<string, number> = new Map(
  Object.entries({
    ...{ one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10, eleven: 11 },
    ...{ twelve: 12, fifteen: 15, sixteen: 16, eighteen: 18, twenty: 20, a: 1, an: 1 },
    ...{ ein: 1, eine: 1, einen: 1, un: 1, une: 1, zwei: 2, drei: 3 },
  }),
);
const FRACTION_WORDS: ReadonlyMap<string, number> = new Map(
  Object.entries({
    ...{
      half: 1 / 2,
      halves: 1 / 2,
      halbe: 1 / 2,
      halber: 1 / 2,
      halben: 1 / 2,
      demi: 1 / 2,
      third: 1 / 3,
      thirds: 1 / 3,
    },
    ...{ quarter: 1 / 4, quarters: 1 / 4, fourth: 1 / 4, fourths: 1 / 4, eighth: 1 / 8, eighths: 1 / 8 },
  }),
);

/** A word that begins a number: "two", "half", "a". */
export const isNumberWord = (token: Token | undefined): boolean =>
  token?.is === "word" && (NUMBER_WORDS.has(token.low) || FRACTION_WORDS.has(token.low) || token.low === "dozen");

const isWhole = (token: Token | undefined): token is Extract<Token, { is: "number" }> =>
  token?.is === "number" && token.whole;

/** "3/4": no kitchen fraction has a denominator above 64. */
function readFraction(tokens: readonly Token[], at: number): One | undefined {
  const [over, slash, under] = [tokens[at], tokens[at + 1], tokens[at + 2]];
  if (over?.is === "number" && over.vulgar) return { value: over.value, next: at + 1 };
  if (!isMark(slash, "/") || !isWhole(over) || !isWhole(under) || under.value < 2 || under.value > 64) return undefined;
  return { value: over.value / under.value, next: at + 3 };
}

/** The fraction that follows a whole number: " 1/2", "½", "-1/2", " and a half". */
export function readRest(tokens: readonly Token[], at: number): One | undefined {
  const joined = isMark(tokens[at], "-&+") || isAnd(tokens[at]);
  const start = joined ? at + 1 : at;
  const figures = readFraction(tokens, start);
  if (figures !== undefined && figures.value < 1) return figures;
  if (!joined) return undefined;
  const words = readFractionWords(tokens, start);
  return words !== undefined && !isMark(tokens[at], "-") ? words : undefined;
}

/** "half", "a half", "three quarters", "three-quarters". */
function readFractionWords(tokens: readonly Token[], at: number): One | undefined {
  const word = (index: number) => {
    const token = tokens[index];
    return token?.is === "word" ? token.low : "";
  };
  const alone = FRACTION_WORDS.get(word(at));
  if (alone !== undefined) return { value: alone, next: at + 1 };
  const many = NUMBER_WORDS.get(word(at));
  if (many === undefined) return undefined;
  const after = isMark(tokens[at + 1], "-") ? at + 2 : at + 1;
  const part = FRACTION_WORDS.get(word(after));
  if (part === undefined) return undefined;
  return { value: many * part, next: after + 1 };
}

function readOne(tokens: readonly Token[], at: number): One | undefined {
  const token = tokens[at];
  const fraction = readFraction(tokens, at);
  if (fraction !== undefined) return fraction;
  if (token?.is === "number") {
    const next = tokens[at + 1];
    // "1 250 g" with an ordinary space.
    if (isWhole(token) && token.text.length <= 2 && next?.is === "number" && /^\d{3}(?:[.,]\d+)?$/.test(next.text)) {
      const isThousands = isWord(tokens[at + 2], "g", "gr", "gram", "grams", "ml") && Number.isInteger(token.value);
      const decimals = Number(next.text.replace(",", "."));
      if (isThousands) return { value: token.value * 1000 + decimals, next: at + 2 };
    }
    const rest = isWhole(token) ? readRest(tokens, at + 1) : undefined;
    if (rest !== undefined) {
      const value = token.value + rest.value;
      const mixed = next?.is === "number" && next.spaced;
      return { value, next: rest.next, ...(mixed ? { mixed } : {}) };
    }
    // "1/0", "1//2": a slash without a space joins a number to something that is no fraction.
    if (isWhole(token) && isMark(next, "/") && !next?.spaced && tokens[at + 2]?.is !== "word") {
      const under = tokens[at + 2];
      const isAnother = under?.is === "number" && under.value >= token.value;
      if (under !== undefined && !under.spaced && !isAnother)
        return { value: token.value, next: at + 1, problem: NO_FRACTION };
    }
    const isGroup = isWhole(token) && next?.is === "number" && /^0\d/.test(next.text);
    if (isGroup) return { value: token.value, next: at + 2, problem: DIVIDED };
    return { value: token.value, next: at + 1, unclear: token.unclear };
  }
  if (token?.is !== "word") return undefined;
  const words = readFractionWords(tokens, at);
  if (words !== undefined) return words;
  if (token.low === "dozen") return { value: 1, next: at };
  const value = NUMBER_WORDS.get(token.low);
  if (value === undefined) return undefined;
  const couple = isWord(tokens[at + 1], "couple");
  // "one 1/4-oz packet" is no mixed number; only a said "and" joins a fraction to a word.
  const isJoined = isMark(tokens[at + 1], "&") || isAnd(tokens[at + 1]);
  const rest = isJoined && !couple ? readRest(tokens, at + 1) : undefined;
  if (rest !== undefined) return { value: value + rest.value, next: rest.next };
  return { value: couple ? 2 : value, next: couple ? at + 2 : at + 1 };
}

export const isRangeMark = (token: Token | undefined): boolean =>
  isMark(token, "-~") || isWord(token, "to", "or", "bis");

/** The number at a place of the line: "1 1/2", "2 to 3", "1/3 of 1/8", "4 x 100", "half a dozen". */
export function readQuantity(tokens: readonly Token[], at: number): Quantity | undefined {
  const one = readOne(tokens, at);
  if (one === undefined) return undefined;
  let { value: least, value: most, next, unclear = false } = one;
  let timesPerhaps = one.mixed === true;
  let problem = one.problem;
  const between = at > 0 && isWord(tokens[at - 1], "between") && isWord(tokens[next], "and");
  if (between || isRangeMark(tokens[next])) {
    const two = isWord(tokens[next + 1], "a", "an") ? undefined : readOne(tokens, next + 1);
    if (two !== undefined) {
      if (two.value < least) problem = BACKWARDS;
      problem = problem ?? two.problem;
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
  return { least, most, next, unclear, timesPerhaps, ...(problem === undefined ? {} : { problem }) };
}
