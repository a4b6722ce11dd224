// Weights typed over the weights of a formula sheet: the percentages, and where nothing else can follow the amount, that make them so.
import { type Order, type Row, type Scaled, scaled, sumOf } from "./scaling.ts";

/** `weight` was typed as the row's weight of the whole dough, or `perMix` as that of a mix; null where neither was. */
export type TypedRow = Row & { readonly weight: number | null; readonly perMix: number | null };

/** Why typed weights are put back. */
export type Back =
  | "no order"
  | "no flour"
  | "nothing left"
  | "flour below 0"
  | "flour at 0"
  | "only flour"
  | "mixes"
  | "too much"
  | "another flour";

export type Taken = {
  /** As they are to be typed, row by row. */
  readonly percents: readonly number[];
  /** What the sheet is scaled to; null where it stays. */
  readonly amount: number | null;
  /** A whole recipe by weights whose order stays: the weights shown are not those typed. */
  readonly isOrderKept: boolean;
};

export type Outcome = Taken | { readonly back: Back };
type Wanted = Row & { readonly weight: number | null };

/** The most that a percentage or an amount may be, as the cells have it. */
const MAX_PERCENT = 100_000;
const AMOUNTS = { least: 1 / 10, most: 10_000_000 };
const EXACT = 1e-9;
/** More mixes of as much make more dough, and that more mixes: their number settles soon, or never. */
const TRIES = 100;

/** Taken as they were typed, or put back. The last typed weight holds exactly, several typed at once hold together. */
export function takeWeights(rows: readonly TypedRow[], order: Order): Outcome {
  let { mixes } = scaled(rows, order);
  for (let tried = 0; tried < TRIES; tried++) {
    const wanted = rows.map(({ percent, flour, weight, perMix }): Wanted => {
      return { percent, flour, weight: weight ?? (perMix === null ? null : perMix * mixes) };
    });
    const outcome = held(wanted, order);
    if ("back" in outcome) return outcome;
    const after = afterwards(wanted, order, outcome).mixes;
    if (after === mixes || rows.every(({ weight, perMix }) => weight !== null || perMix === null)) return outcome;
    mixes = after;
  }
  return { back: "mixes" };
}

const afterwards = (rows: readonly Wanted[], order: Order, { percents, amount }: Taken): Scaled =>
  scaled(
    rows.map(({ flour }, at) => ({ flour, percent: percents[at] ?? 0 })),
    { ...order, amount: amount ?? order.amount },
  );

/** What was worked out is worked out again as the sheet does: it holds, or it is put back. */
function held(rows: readonly Wanted[], order: Order): Outcome {
  const outcome = taken(rows, order);
  if ("back" in outcome) return outcome;
  const { percents, amount, isOrderKept } = outcome;
  const isTyped = (value: number, most: number) => Number.isFinite(value) && value >= 0 && value <= most;
  if (!percents.every((percent) => isTyped(percent, MAX_PERCENT))) return { back: "too much" };
  if (amount !== null && !(isTyped(amount, AMOUNTS.most) && amount >= AMOUNTS.least)) return { back: "too much" };
  const { each } = afterwards(rows, order, outcome);
  const isExact = rows.every(
    ({ weight }, at) => weight === null || Math.abs((percents[at] ?? 0) * each - weight) <= EXACT * Math.max(1, weight),
  );
  return isExact || isOrderKept ? outcome : { back: "another flour" };
}

function taken(rows: readonly Wanted[], order: Order): Outcome {
  const now = scaled(rows, order);
  const isFlour = ({ flour }: Row) => flour === 1 || (now.isAllFlour && flour > 0);
  const isOther = ({ weight, percent }: Wanted) => weight === null && percent > 0;
  if (!rows.some(isOther)) return byWeights(rows, order, now);
  if (!rows.some((row) => row.weight !== null && isFlour(row))) return noFlour(rows, order, now);
  if (rows.some(({ weight, flour }) => weight === null && flour === 1)) return someFlour(rows, order, now);
  return allFlour(rows, order, now);
}

const weightOf = ({ weight }: Wanted): number => weight ?? 0;
const unless = (percents: (row: Wanted) => number, rows: readonly Wanted[], each: number): Taken => ({
  percents: rows.map((row) => (row.weight === null ? percents(row) : row.weight / each)),
  amount: null,
  isOrderKept: false,
});
/** Percentages of the rows that stay. */
const staying = (rows: readonly Wanted[], part: (row: Wanted) => number = () => 1): number =>
  sumOf(rows, (row) => (row.weight === null ? row.percent * part(row) : 0));
const asTyped = ({ percent }: Wanted): number => percent;

/** No flour among them: by flour the rows alone change, otherwise all others share what is left of the dough. */
function noFlour(rows: readonly Wanted[], { by, amount }: Order, { base, dough, fat }: Scaled): Outcome {
  if (by === "flour" && base === 0) return { back: "no flour" };
  if (by === "flour")
    return amount === null || amount <= 0 ? { back: "no order" } : unless(asTyped, rows, amount / base);
  if (dough <= 0) return { back: "no order" };
  const left = dough - sumOf(rows, weightOf);
  return left > EXACT * dough ? unless(asTyped, rows, left / (staying(rows) + fat)) : { back: "nothing left" };
}

/** A flour among them, and another that was not typed: flours stay 100 %, the others give way in proportion. */
function someFlour(rows: readonly Wanted[], { by, amount }: Order, { base, dough, fat, isAllFlour }: Scaled): Outcome {
  if (base === 0) return { back: "flour at 0" };
  const flourOf = ({ flour }: Row) => (flour === 1 ? 1 : isAllFlour ? flour : 0);
  const inside = sumOf(rows, (row) => weightOf(row) * flourOf(row));
  const ofStarters = staying(rows, (row) => (row.flour === 1 ? 0 : flourOf(row)));
  const others = staying(rows, ({ flour }) => (flour === 1 ? 0 : 1));
  const flours = staying(rows, ({ flour }) => (flour === 1 ? 1 : 0));
  const each =
    by === "flour"
      ? (amount ?? 0) / base
      : (dough - sumOf(rows, weightOf) + inside) / (others + fat + base - ofStarters);
  if (!(by === "flour" ? (amount ?? 0) > 0 : dough > 0)) return { back: "no order" };
  if (!(each > 0)) return { back: "nothing left" };
  const exactly = each * (base - ofStarters) - inside;
  const left = Math.abs(exactly) <= EXACT * each * base ? 0 : exactly;
  if (left < 0) return { back: "flour below 0" };
  if (flours === 0 && left > 0) return { back: "flour at 0" };
  const factor = flours === 0 ? 0 : left / each / flours;
  return unless(({ percent, flour }) => (flour === 1 ? percent * factor : percent), rows, each);
}

/** Every flour among them: the other percentages stay, and the amount follows. */
function allFlour(rows: readonly Wanted[], { by, rolled }: Order, { base, whole, isAllFlour }: Scaled): Outcome {
  if (by === "pieces" || by === "tins") return { back: "only flour" };
  const flourOf = ({ flour }: Row) => (flour === 1 ? 1 : isAllFlour ? flour : 0);
  const inside = sumOf(rows, (row) => weightOf(row) * flourOf(row));
  const of = base > 0 ? base : staying(rows) > MAX_AS_SHARES ? 100 : whole;
  const each = inside / (of - staying(rows, flourOf));
  if (!(each > 0) || !Number.isFinite(each)) return { back: inside > 0 ? "flour below 0" : "no flour" };
  const amount = by === "flour" ? each * of : withFat(sumOf(rows, weightOf) + each * staying(rows), each * of, rolled);
  return { ...unless(asTyped, rows, each), amount };
}

/** What is ordered, with the fat that is rolled in. */
const withFat = (mixed: number, flour: number, { ofMix, ofFlour }: Order["rolled"]): number =>
  mixed * (1 + ofMix) + flour * ofFlour;

/** Where no flour has a percentage yet, the others' tell how it will be typed. */
const MAX_AS_SHARES = 10;

/** Every row that has an amount among them, a recipe by weights: its percentages are made of them. */
function byWeights(
  rows: readonly Wanted[],
  { by, amount, ordered, rolled }: Order,
  { base, whole, isAllFlour }: Scaled,
): Outcome {
  const added = sumOf(rows, (row) => (row.flour === 1 ? weightOf(row) : 0));
  const all = sumOf(rows, (row) => weightOf(row) * row.flour);
  const flour = (base > 0 ? isAllFlour : added === 0) ? all : added;
  if (!(flour > 0)) return { back: "no flour" };
  const percents = rows.map((row) => (weightOf(row) / flour) * whole);
  const sum = withFat(sumOf(rows, weightOf), flour, rolled);
  if (by === "pieces" || by === "tins")
    return { percents, amount: null, isOrderKept: Math.abs(ordered - sum) > EXACT * sum };
  const now = by === "dough" ? sum : flour;
  return { percents, amount: now === amount ? null : now, isOrderKept: false };
}
