import { volumeOf } from "../base/volumes.ts";
import { type AmountFault, amountFault } from "./amount-faults.ts";
import { isRangeMark, readQuantity, readRest } from "./quantity.ts";
import { isAnd, isMark, isWord, lastOf, type Token } from "./tokens.ts";
import type { Unit } from "./unit-words.ts";
import { readPack, readUnit } from "./units.ts";

/** A number of a unit; an amount adds up several, so that "1 cup less 1 tbsp" holds one below 0. */
export type Term = { readonly count: number; readonly unit: Unit };
/** How much a line says: the least and the most, alike unless it gives a range. */
export type Amount = { readonly low: readonly Term[]; readonly high: readonly Term[]; readonly fault?: AmountFault };
export type AmountRead = { readonly amount: Amount; readonly next: number };

const BARE: Unit = { of: "count", word: "" };
const isMeasured = ({ of }: Unit): boolean => of === "weight" || of === "volume";

/** An amount times a number or a range: "2 (8 oz)", "50 g each". */
export function times(amount: Amount, least: number, most = least): Amount {
  const by = (terms: readonly Term[], factor: number) =>
    terms.map(({ count, unit }) => ({ count: count * factor, unit }));
  return { ...amount, low: by(amount.low, least), high: by(amount.high, most) };
}

/** The number of a count without a unit, "2 (8 oz)" or "3 large": least and most. */
export function bareCount({ low, high }: Amount): { least: number; most: number; hasSize: boolean } | undefined {
  const [first, last] = [low[0], high[0]];
  if (low.length !== 1 || high.length !== 1 || first?.unit.of !== "count" || last === undefined) return undefined;
  if (first.unit.word !== "") return undefined;
  return { least: first.count, most: last.count, hasSize: first.unit.size !== undefined };
}

/**
 * The amount at a place of the line. A sum binds tighter than a range, so that "2 1/4 cups plus 2 tbsp to 3 cups" runs from
 * the sum to 3 cups. `atHead` also takes a measure without a number: "pinch of salt".
 */
export function readAmount(tokens: readonly Token[], at: number, atHead: boolean): AmountRead | undefined {
  const low = readSum(tokens, at, atHead);
  if (low === undefined || !isRangeMark(tokens[low.next])) return low;
  const high = readSum(tokens, low.next + 1, false);
  const [from, to] = [low.amount.high[0]?.unit, high?.amount.low[0]?.unit];
  if (high === undefined || from === undefined || to === undefined || !isMeasured(from) || from.of !== to.of)
    return low;
  // "1 sachet or 2 tsp", "1 cup - 240 ml" give one amount twice; only "to" joins different units to a range.
  if (!isWord(tokens[low.next], "to", "bis") && !sameUnit(from, to)) return low;
  const isBackwards = sameUnit(from, to) && (high.amount.low[0]?.count ?? 0) < (low.amount.high[0]?.count ?? 0);
  const fault = low.amount.fault ?? high.amount.fault ?? (isBackwards ? amountFault("backwards") : undefined);
  return {
    amount: { low: low.amount.low, high: high.amount.high, ...(fault === undefined ? {} : { fault }) },
    next: high.next,
  };
}

function sameUnit(one: Unit, other: Unit): boolean {
  if (one.of === "weight" && other.of === "weight") return one.grams === other.grams;
  return one.of === "volume" && other.of === "volume" && one.unit === other.unit;
}

/** "2 tbsp plus 1 tsp", "1 lb 4 oz", "1 cup less 1 tbsp". */
function readSum(tokens: readonly Token[], at: number, atHead: boolean): AmountRead | undefined {
  const first = readMeasure(tokens, at) ?? (atHead ? readNumberless(tokens, at) : undefined);
  if (first === undefined) return undefined;
  let { amount, next } = first;
  for (;;) {
    const last = lastOf(amount.low)?.unit;
    if (last === undefined || last.of === "vague" || last === BARE) break;
    const less = isWord(tokens[next], "minus", "less");
    const isSum = less || isMark(tokens[next], "+&") || isWord(tokens[next], "plus") || isAnd(tokens[next]);
    const half = isSum && !less ? readRest(tokens, next) : undefined;
    if (half !== undefined && readUnit(tokens, half.next) === undefined) {
      amount = addAmounts(
        amount,
        { low: [{ count: half.value, unit: last }], high: [{ count: half.value, unit: last }] },
        1,
      );
      next = isWord(tokens[half.next], "of") ? half.next + 1 : half.next;
      continue;
    }
    const start = isSum || isMark(tokens[next], ",") ? next + 1 : next;
    const more = readMeasure(tokens, start);
    const unit = more?.amount.low[0]?.unit;
    if (more === undefined || unit === undefined || !isMeasured(unit)) break;
    if (!isSum && !isPartOf(unit, last)) break;
    amount = addAmounts(amount, more.amount, less ? -1 : 1);
    next = more.next;
  }
  return { amount, next };
}

function addAmounts(one: Amount, other: Amount, sign: 1 | -1): Amount {
  const [low, high] = sign === 1 ? [other.low, other.high] : [times(other, -1).high, times(other, -1).low];
  const fault = one.fault ?? other.fault;
  return {
    low: [...one.low, ...low],
    high: [...one.high, ...high],
    ...(fault === undefined ? {} : { fault }),
  };
}

/** "1 lb 4 oz": the second is a smaller unit of the same sort; "1 lb 450 g" says the same thing twice. */
function isPartOf(small: Unit, large: Unit): boolean {
  if (small.of === "weight" && large.of === "weight") {
    const metric = (grams: number) => Number.isInteger(grams);
    return small.grams < large.grams && metric(small.grams) === metric(large.grams);
  }
  if (small.of !== "volume" || large.of !== "volume") return false;
  const [held, holds] = [volumeOf(small.unit, "US"), volumeOf(large.unit, "US")];
  const metric = (unit: string) => /^[cd]?m?l$/.test(unit);
  return held !== undefined && holds !== undefined && held < holds && metric(small.unit) === metric(large.unit);
}

/** One number with its unit: "2 to 3 tbsp", "1 14-oz can", "3 large". */
function readMeasure(tokens: readonly Token[], at: number): AmountRead | undefined {
  const quantity = readQuantity(tokens, at);
  if (quantity === undefined) return undefined;
  const { least, most, unclear, timesPerhaps } = quantity;
  const unitMatch = readUnit(tokens, quantity.next);
  const pack = unitMatch === undefined ? readPackSize(tokens, quantity.next) : undefined;
  if (pack !== undefined) return { amount: times(pack.amount, least, most), next: pack.next };
  const unit = unitMatch?.unit ?? BARE;
  let next = unitMatch?.next ?? quantity.next;
  let fault = quantity.fault;
  if ((unit.of === "weight" || unit.of === "volume") && unit.fine && unclear) {
    fault = fault ?? amountFault("thousands or decimals");
  }
  if (isMeasured(unit)) {
    const after = readPack(tokens, next);
    if (after !== undefined && timesPerhaps) fault = amountFault("packs");
    next = after ?? next;
  }
  // "100 g x 2" are two of 100 g.
  const repeat = isMeasured(unit) && isWord(tokens[next], "x", "times") ? readQuantity(tokens, next + 1) : undefined;
  const isRepeated = repeat !== undefined && !isMeasuredAt(tokens, repeat.next);
  const low = [{ count: least * (isRepeated ? repeat.least : 1), unit }];
  const amount = { low, high: most === least ? low : [{ count: most * (isRepeated ? repeat.most : 1), unit }] };
  if (isRepeated) next = repeat.next;
  return { amount: fault === undefined ? amount : { ...amount, fault }, next };
}

function isMeasuredAt(tokens: readonly Token[], at: number): boolean {
  const unit = readUnit(tokens, at)?.unit;
  return unit !== undefined && isMeasured(unit);
}

/** "pinch of salt", "stick of butter", "some flour" at the head of a line. */
function readNumberless(tokens: readonly Token[], at: number): AmountRead | undefined {
  const unitMatch = readUnit(tokens, at);
  if (unitMatch === undefined || unitMatch.unit.of === "weight") return undefined;
  const { unit, next } = unitMatch;
  const needsNone = unit.of === "vague" || (unit.of === "volume" && (unit.unit === "pinch" || unit.unit === "dash"));
  if (!needsNone && !isWord(tokens[next - 1], "of")) return undefined;
  const terms = [{ count: 1, unit }];
  return { amount: { low: terms, high: terms }, next };
}

/** "14-oz can" after a number of them. */
function readPackSize(tokens: readonly Token[], at: number): AmountRead | undefined {
  const size = readQuantity(tokens, isMark(tokens[at], "-") ? at + 1 : at);
  const unitMatch = size && readUnit(tokens, size.next);
  if (size === undefined || unitMatch === undefined || !isMeasured(unitMatch.unit)) return undefined;
  const next = readPack(tokens, unitMatch.next);
  if (next === undefined) return undefined;
  const term = (count: number) => [{ count, unit: unitMatch.unit }];
  return { amount: { low: term(size.least), high: term(size.most) }, next };
}
