import { type Amount, bareCount, readAmount, times } from "./amount.ts";
import { amountFault, isNoNumber, looseFault } from "./amount-faults.ts";
import { type Choice, type Counted, type Pieces, textOf, wordsOf } from "./line-parts.ts";
import { readWord } from "./line-words.ts";
import { LOOSE } from "./measure-words.ts";
import { passNeutral } from "./no-amounts.ts";
import { isNumberWord } from "./number-words.ts";

import { isMark, isWord, lastOf, type Token } from "./tokens.ts";
import { readUnit } from "./units.ts";

/** The amounts and the words of a line, in one walk over its pieces. */
export function readPieces(tokens: readonly Token[], inBrackets = false): Pieces {
  const state: Pieces = {
    inBrackets,
    entries: [],
    before: [],
    more: false,
    fault: undefined,
    link: undefined,
    loose: undefined,
  };
  for (let at = 0; at < tokens.length; ) {
    const close = isMark(tokens[at], "([") ? closingOf(tokens, at) : -1;
    const passed = passNeutral(tokens, at);
    if (close > 0) at = readBracket(state, tokens, at, close);
    else if (passed !== undefined) {
      if (isMark(tokens[at + 1], "%")) wordsOf(state).push(`${textOf(tokens[at])}%`);
      at = passed;
    } else at = readAmountAt(state, tokens, at) ?? readWord(state, tokens, at);
  }
  return state;
}

/** Brackets do not nest: the first closing one closes all. */
const closingOf = (tokens: readonly Token[], open: number): number =>
  tokens.findIndex((token, at) => at > open && isMark(token, ")]"));

/** Reads an amount where one may stand; undefined where none does. */
function readAmountAt(state: Pieces, tokens: readonly Token[], at: number): number | undefined {
  const token = tokens[at];
  const atHead = state.before.length === 0 && state.entries.length === 0;
  if (token?.is === "mark") return undefined;
  // Behind an amount only a number begins another.
  if (token?.is === "word" && state.entries.length > 0 && !isNumberWord(token)) return undefined;
  const words = wordsOf(state);
  const before = lastOf(words);
  const fresh = atHead || before === "," || before === "of" || state.link !== undefined;
  const numberless = atHead || (fresh && state.entries.length === 0);
  if (token?.is === "word" && !numberless && !(isNumberWord(token) && (fresh || isMeasureAt(tokens, at))))
    return undefined;
  const amountReading = readAmount(tokens, at, numberless);
  if (amountReading === undefined) return undefined;
  const bare = bareCount(amountReading.amount);
  const closes = amountReading.next >= tokens.length || isMark(tokens[amountReading.next], "([,.");
  // A bare number counts something only at the head, at the end after a name, or after "plus".
  const counts = atHead || state.link === "plus" || (state.entries.length === 0 && (closes || fresh));
  if (amountReading.amount.fault?.reason === "no fraction") state.fault = amountFault("no fraction");
  // "sugar 10 00 g"; the number of "flour 550" and the name of "00" are no part of an amount.
  const isName = () => /^0\d/.test(textOf(token)) || /^(?:flours?|mehl|farine)$/i.test(before ?? "");
  if (amountReading.amount.fault?.reason === "side by side" && !isName()) state.fault = amountFault("side by side");
  if (isTail(tokens, at, state)) state.fault = state.fault ?? amountFault("no unit");
  if (bare && !bare.hasSize && !counts) return undefined;
  if (amountReading.amount.low[0]?.unit.of === "vague" && state.entries.length > 0) {
    // "plus a little more"
    state.more = true;
    return amountReading.next;
  }
  push(state, loosened(amountReading.amount, state.loose), false);
  return !state.inBrackets && isEach(tokens[amountReading.next])
    ? applyEach(state, amountReading.next)
    : amountReading.next;
}

/** "1 kg 500", "1kg500", "2 lb 4": a number right behind an amount; behind grams three or four digits are a flour's type. */
function isTail(tokens: readonly Token[], at: number, { entries, link }: Pieces): boolean {
  const token = tokens[at];
  const last = lastOf(lastOf(entries)?.choices ?? NO_CHOICES);
  if (token?.is !== "number" || last === undefined || last.words.length > 0 || last.bracketed || link !== undefined)
    return false;
  const unit = lastOf(last.amount.low)?.unit;
  if (unit === undefined || (unit.of !== "weight" && unit.of !== "volume") || !token.whole || /^0/.test(token.text))
    return false;
  const isType = unit.of === "weight" && unit.grams === 1 && /^\d{3,4}$/.test(token.text);
  return !isType && readUnit(tokens, at + 1) === undefined && !isWord(tokens[at + 1], "percent", "grain", "seed");
}

function isMeasureAt(tokens: readonly Token[], at: number): boolean {
  const amount = readAmount(tokens, at, false)?.amount;
  return amount !== undefined && bareCount(amount) === undefined;
}

const isEach = (token: Token | undefined) => isWord(token, "each", "apiece", "per");

/** "3 eggs, 50 g each": the amount just read belongs to each of those counted before it. */
function applyEach(state: Pieces, at: number): number {
  const choices = lastOf(state.entries)?.choices ?? [];
  const each = choices.pop();
  const counted = choices[0]?.amount;
  const [least, most] = [counted?.low[0], counted?.high[0]];
  if (each === undefined || least === undefined || most === undefined || counted?.low.length !== 1) {
    state.fault = amountFault("each");
    return at + 1;
  }
  choices.push({ ...each, amount: times(each.amount, least.count, most.count) });
  return at + 1;
}

function push(state: Pieces, amount: Amount, bracketed: boolean, counted?: Counted): void {
  if (isNoNumber(amount.fault)) state.fault = amount.fault;
  const link = state.link ?? (bracketed ? "same" : "unsaid");
  const choice: Choice = { amount, bracketed, link, words: [], counted };
  const lastEntry = lastOf(state.entries);
  const last = lastOf(lastEntry?.choices ?? NO_CHOICES);
  // "1 ,5 cups", "1/100 cup", "2 half cups": the first number is no amount of its own.
  const isJoined = link === "plus" || link === "or" || link === "with";
  if (!bracketed && !isJoined && last !== undefined && !last.bracketed) {
    if (isBareBefore(last)) state.fault = state.fault ?? amountFault("side by side");
    if (isMultiplier(last)) state.fault = state.fault ?? amountFault("times");
  }
  if (lastEntry === undefined || link === "plus") state.entries.push({ choices: [choice] });
  else lastEntry.choices.push(choice);
  state.link = undefined;
  state.loose = undefined;
}

const NO_CHOICES: readonly Choice[] = [];
/** A number without a unit and without a name behind it. */
const isBareBefore = ({ amount, words }: Choice): boolean =>
  bareCount(amount)?.hasSize === false && words.every((word) => word === ",");

/** "3 x salt 5 g". */
const isMultiplier = ({ amount, words }: Choice): boolean =>
  bareCount(amount) !== undefined && /^(?:x|times)$/i.test(words[0] ?? "");

function loosened(amount: Amount, word: string | undefined): Amount {
  return word === undefined ? amount : { ...amount, fault: looseFault(word) };
}

function readBracket(state: Pieces, tokens: readonly Token[], open: number, close: number): number {
  const inside = tokens.slice(open + 1, close);
  const within = readPieces(inside, true);
  if (within.fault !== undefined) state.fault = within.fault;
  const allChoices = within.entries.flatMap(({ choices }) => choices);
  const main = lastOf(state.entries)?.choices[0];
  const first = allChoices[0];
  if (first === undefined) {
    const loose = inside.find((token) => token.is === "word" && LOOSE.has(token.low));
    if (main && loose)
      lastOf(state.entries)?.choices.splice(0, 1, { ...main, amount: loosened(main.amount, textOf(loose)) });
    // "(packed)", "(unsalted)": words like any other, in a phrase of their own.
    wordsOf(state).push(",", ...within.before, ",");
    return close + 1;
  }
  const isNext = main?.words.length === 0;
  // "flour (bread, 2 cups)": words in front of the amount name it too.
  if (within.before.length > 0) wordsOf(state).push(",", ...within.before, ",");
  const adds = isWord(inside[0], "plus") || isMark(inside[0], "+");
  if (adds) {
    state.entries.push(...within.entries);
    return close + 1;
  }
  const isAlone = lastOf(state.entries)?.choices.length === 1;
  const isOfEach = inside.some(isEach) || isEach(tokens[close + 1]);
  const isOfAll = inside.some((token) => isWord(token, "total", "together", "altogether", "all"));
  const behind = main && isAlone ? countBefore(main.amount, tokens, close, isNext) : undefined;
  const counted = isOfEach || isOfAll ? undefined : behind?.counted;
  for (const { amount } of allChoices) push(state, amount, true, isMeasure(amount) ? counted : undefined);
  if (isOfEach && allChoices.length === 1) applyEach(state, close);
  return isNext ? (behind?.next ?? close + 1) : close + 1;
}

const isMeasure = ({ low }: Amount): boolean => low.every(({ unit }) => unit.of === "weight" || unit.of === "volume");

/** What is counted before brackets that close at `close`: eggs, sticks, or the packs that are named behind them. */
function countBefore(
  { low, high }: Amount,
  tokens: readonly Token[],
  close: number,
  isNext: boolean,
): { readonly counted: Counted; readonly next: number } | undefined {
  const [first, last] = [low[0], high[0]];
  if (low.length !== 1 || first?.unit.of !== "count" || last === undefined) return undefined;
  const isBare = isNext && first.unit.word === "";
  const after = isBare ? readUnit(tokens, close + 1) : undefined;
  const isPack = after?.unit.of === "count" && after.unit.word !== "";
  const unit = isPack && after.unit.of === "count" ? after.unit : first.unit;
  const counted = { least: first.count, most: last.count, unit, isBehindNumber: isPack, isBehindName: !isNext };
  return { counted, next: isPack ? after.next : close + 1 };
}
