// Numbers that recipes write in words: "two", "twenty-five", "two hundred and fifty", "a couple", "three quarters".
import { isAnd, isMark, type Token } from "./tokens.ts";

type NumberRead = { readonly value: number; readonly next: number };

const NUMBER_WORDS: ReadonlyMap<string, number> = new Map(
  Object.entries({
    ...{ one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10, eleven: 11 },
    ...{ twelve: 12, thirteen: 13, fourteen: 14, fifteen: 15, sixteen: 16, seventeen: 17, eighteen: 18, nineteen: 19 },
    ...{ twenty: 20, thirty: 30, forty: 40, fourty: 40, fifty: 50, sixty: 60, seventy: 70, eighty: 80, ninety: 90 },
    ...{ a: 1, an: 1, ein: 1, eine: 1, einen: 1, un: 1, une: 1, zwei: 2, drei: 3 },
  }),
);
const LARGE: ReadonlyMap<string, number> = new Map(Object.entries({ hundred: 100, thousand: 1000 }));
const TWO = new Set(["couple", "pair"]);
const FRACTION_WORDS: ReadonlyMap<string, number> = new Map(
  Object.entries({
    ...{ half: 1 / 2, halves: 1 / 2, halbe: 1 / 2, halber: 1 / 2, halben: 1 / 2, demi: 1 / 2 },
    ...{ third: 1 / 3, thirds: 1 / 3, quarter: 1 / 4, quarters: 1 / 4, fourth: 1 / 4, fourths: 1 / 4 },
    ...{ eighth: 1 / 8, eighths: 1 / 8 },
  }),
);

const wordAt = (tokens: readonly Token[], at: number): string => {
  const token = tokens[at];
  return token?.is === "word" ? token.low : "";
};

const FIRST: ReadonlySet<string> = new Set([
  ...NUMBER_WORDS.keys(),
  ...FRACTION_WORDS.keys(),
  ...TWO,
  "dozen",
  "hundred",
]);

/** A word that begins a number: "two", "half", "a". */
export const isNumberWord = (token: Token | undefined): boolean => token?.is === "word" && FIRST.has(token.low);

/** "two", "twenty-five", "a hundred", "two hundred and fifty", "a couple". */
export function readNumberWords(tokens: readonly Token[], at: number): NumberRead | undefined {
  const first = wordAt(tokens, at);
  if (TWO.has(first)) return { value: 2, next: at + 1 };
  const small = first === "hundred" ? { value: 1, next: at } : readSmall(tokens, at);
  if (small === undefined) return undefined;
  if (TWO.has(wordAt(tokens, small.next))) return { value: 2 * small.value, next: small.next + 1 };
  return readLarge(tokens, small);
}

/** "hundred", "thousand". */
export const isLargeWord = (token: Token | undefined): boolean => token?.is === "word" && LARGE.has(token.low);

/** What multiplies a number and is added to it: "hundred", "thousand two hundred", "hundred and fifty". */
export function readLarge(tokens: readonly Token[], start: NumberRead): NumberRead {
  let { value, next } = start;
  for (let last = Number.POSITIVE_INFINITY; ; ) {
    const by = LARGE.get(wordAt(tokens, next));
    if (by === undefined || by >= last) return { value, next };
    const head = Number.isFinite(last) ? value % last : value;
    value += head * (by - 1);
    next += 1;
    last = by;
    const more = readSmall(tokens, isAnd(tokens[next]) ? next + 1 : next);
    if (more === undefined || /^an?$/.test(wordAt(tokens, more.next - 1))) return { value, next };
    value += more.value;
    next = more.next;
  }
}

/** Up to ninety-nine. */
function readSmall(tokens: readonly Token[], at: number): NumberRead | undefined {
  const value = NUMBER_WORDS.get(wordAt(tokens, at));
  if (value === undefined) return undefined;
  if (value < 20) return { value, next: at + 1 };
  const isHyphened = isMark(tokens[at + 1], "-") && !tokens[at + 1]?.spaced && !tokens[at + 2]?.spaced;
  const one = NUMBER_WORDS.get(wordAt(tokens, isHyphened ? at + 2 : at + 1)) ?? 0;
  const next = isHyphened ? at + 3 : at + 2;
  // "twenty five-ounce cans" are twenty of them.
  const isOfPack = !isHyphened && isMark(tokens[next], "-");
  const isOne = one > 0 && one < 10 && !/^(?:an?|eine?n?|une?)$/.test(wordAt(tokens, next - 1)) && !isOfPack;
  return isOne ? { value: value + one, next } : { value, next: at + 1 };
}

/** "half", "a half", "three quarters", "three-quarters". */
export function readFractionWords(tokens: readonly Token[], at: number): NumberRead | undefined {
  const alone = FRACTION_WORDS.get(wordAt(tokens, at));
  if (alone !== undefined) return { value: alone, next: at + 1 };
  const many = NUMBER_WORDS.get(wordAt(tokens, at));
  if (many === undefined) return undefined;
  const after = isMark(tokens[at + 1], "-") ? at + 2 : at + 1;
  const part = FRACTION_WORDS.get(wordAt(tokens, after));
  return part === undefined ? undefined : { value: many * part, next: after + 1 };
}
