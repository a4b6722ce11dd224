// What a formula costs before and after: prices of its sheet, and of the ingredient sheet for what is new.
import { weight } from "../base/units.ts";
import { nameKey } from "../larder/built-in-larder.ts";
import type { Larder } from "../larder/larder.ts";
import { costs } from "../money/cost.ts";
import { allRows, amountOf, type Formula, rollPart, type Size, scaledOf, shownName, weightsOf } from "./formula.ts";

export type Money = {
  /** Of a unit of weight, by the key of the ingredient's name. */
  readonly prices: Readonly<Record<string, number>>;
  /** What a sold piece of each size costs in all, by the sheet; null where it is not known. */
  readonly pieces: readonly (number | null)[];
  /** Tax on a price, as a share of the price without it. */
  readonly tax: number;
  /** Dough that is mixed for what one piece weighs, and pieces made for one that is sold. */
  readonly lost: number;
};

export const NO_MONEY: Money = { prices: {}, pieces: [], tax: 0, lost: 1 };

export type Bill = {
  readonly cost: number;
  /** Ingredients without a price; what they cost is not in it. */
  readonly unpriced: readonly string[];
};

/** What the ingredients of all of it cost; null where nothing has a price. */
export function billOf(formula: Formula, { prices }: Money, larder: Larder): Bill | null {
  const unit = formula.options.weight;
  const weights = weightsOf(formula);
  const unpriced: string[] = [];
  let cost = 0;
  let isAny = false;
  allRows(formula).forEach((row, at) => {
    const { name, kind, amount } = row;
    if (amount === 0) return;
    const each = prices[nameKey(name)] ?? costs([name || null], [weight(1)], larder, { unit })[0]?.[0] ?? null;
    if (name !== "" && each !== null) {
      cost += each * (weights[at] ?? 0);
      isAny = true;
    } else if (kind.word !== "water" && kind.word !== "ice") unpriced.push(shownName(row) || kind.word);
  });
  return isAny ? { cost, unpriced } : null;
}

/** What the ingredients of a sold piece cost. */
function inPiece(formula: Formula, size: Size | undefined, { lost }: Money, bill: Bill | null): number | null {
  const scaled = scaledOf(size, formula);
  const dough = doughOf(formula);
  return scaled === null || bill === null || !(dough > 0) ? null : scaled * lost * (bill.cost / dough);
}

export type PieceMoney = { readonly cost: number | null; readonly margin: number | null };

/** A piece before and after: only what its ingredients cost moves. */
export function pieceMoney(
  before: Formula,
  after: Formula,
  money: Money,
  larder: Larder,
  at: number,
): readonly [PieceMoney, PieceMoney] {
  const of = (formula: Formula) => inPiece(formula, formula.sizes[at], money, billOf(formula, money, larder));
  const [was, now] = [of(before), of(after)];
  const cost = money.pieces[at] ?? was;
  const then = cost === null || was === null || now === null ? null : cost - was + now;
  const price = after.sizes[at]?.price ?? null;
  const marginOf = (one: number | null) =>
    one === null || price === null || price <= 0 ? null : 1 - (one * (1 + money.tax)) / price;
  return [
    { cost, margin: marginOf(cost) },
    { cost: then, margin: marginOf(then) },
  ];
}

/** All that there is to divide: the dough with all that is rolled in. */
export const doughOf = (formula: Formula): number =>
  formula.batch.of === "dough"
    ? formula.batch.amount
    : formula.batch.amount * amountOf(formula.rows) * (1 + rollPart(formula));
