// A formula as it is adjusted: its rows, what is set apart to ripen, how much is made of it, its tin and its method.
import { ratio, type Weight, weight } from "../base/units.ts";
import type { Frame } from "../formula/percents.ts";
import type { Kind } from "../larder/kinds.ts";
import type { StyleName } from "../review/bands.ts";
import type { Options } from "../sheet/model.ts";
import type { TinShape } from "../tins/tin.ts";

/** `amount` is over the flour that 100 % refers to; the id stays with a row, whatever becomes of it. */
export type Row = {
  readonly id: number;
  readonly name: string;
  /** The type as it is typed, such as "levain 100%". */
  readonly type: string;
  readonly kind: Kind;
  readonly amount: number;
};

/** Preferments that Adjust tells apart; a levain lives on its own yeasts, the others on a little that is weighed in. */
export const SORTS = ["poolish", "biga", "sponge", "levain"] as const;
export type Sort = (typeof SORTS)[number];

/** Flour that ripens before the mix, where the rows hold all flour and all water; shares are of all flour, `yeast` of its own. */
export type SetApart = {
  readonly sort: Sort;
  readonly share: number;
  readonly hydration: number;
  readonly yeast: number;
};

export type MethodStep = {
  readonly name: string;
  readonly minutes: number | null;
  readonly temp: number | null;
  readonly how: string;
};

/** One size of what is sold; `baked` is its weight, `loss` what the oven takes, `price` what it is sold at; a flat round goes by its `diameter`. */
export type Size = {
  readonly name: string;
  readonly pieces: number | null;
  readonly baked: number | null;
  readonly loss: number;
  readonly price: number | null;
  readonly diameter?: number | null;
};

/** What the share of a roll-in fat is of: the dough without it, the dough with it, or the flour of 100 %. */
export const ROLLED_OF = ["base", "finished", "flour"] as const;
export type RollIn = { readonly name: string; readonly share: number; readonly of: (typeof ROLLED_OF)[number] };

export type Tin = { readonly shape: TinShape; readonly sizes: readonly (number | null)[]; readonly capacity: number };

export type Formula = {
  readonly style: StyleName;
  readonly options: Pick<Options, "weight" | "temperature" | "length">;
  /** Fat that is rolled into the dough, beside its rows; null where the sheet has no place for any. */
  readonly rollIn: RollIn | null;
  readonly rows: readonly Row[];
  readonly frame: Frame;
  /** What the sheet can set apart; null where a preferment is a row. */
  readonly block: "preferment" | "levain" | null;
  readonly setApart: SetApart | null;
  /** What stays as the percentages change: the dough with all that is rolled in, or the flour of 100 %. */
  readonly batch: { readonly of: "dough" | "flour"; readonly amount: number };
  /** What it is scaled to, in the sheet's word. */
  readonly by: string;
  /** What is mixed, in the sheet's word. */
  readonly mixed: "dough" | "batter";
  readonly sizes: readonly Size[];
  /** Weight per area of flat rounds; null where sizes go by their weight, or none is typed. */
  readonly perArea: number | null;
  readonly tin: Tin | null;
  readonly steps: readonly MethodStep[];
  /** What the dough is to come out of the mixer with, in the sheet's unit. */
  readonly temp: number | null;
};

const sumOf = <T>(all: readonly T[], part: (one: T) => number): number => all.reduce((sum, one) => sum + part(one), 0);

/** All flour, that inside preferments counted. */
export const allFlour = (rows: readonly Row[]): number => sumOf(rows, ({ amount, kind }) => amount * kind.flour);

/** The flour that 100 % refers to. */
export const baseOf = (rows: readonly Row[], frame: Frame): number =>
  frame === "all flour" ? allFlour(rows) : sumOf(rows, ({ amount, kind }) => (kind.word === "flour" ? amount : 0));

export const ofKind = (rows: readonly Row[], ...words: readonly Kind["word"][]): Row[] =>
  rows.filter(({ kind }) => words.includes(kind.word));

export const amountOf = (rows: readonly Row[]): number => sumOf(rows, ({ amount }) => amount);

/** What rows of these kinds come to, over all flour. */
export const shareOf = (rows: readonly Row[], ...words: readonly Kind["word"][]): number =>
  amountOf(ofKind(rows, ...words)) / allFlour(rows);

/** Water that is poured, and that of preferments, over all flour: what a formula calls its hydration. */
export const plainHydration = (rows: readonly Row[]): number =>
  sumOf(rows, ({ amount, kind }) => amount * kind.water) / allFlour(rows);

/** Flour that ripens before the mix, over all flour. */
export function prefermented({ rows, setApart }: Formula): number {
  const inRows = sumOf(rows, ({ amount, kind }) => (kind.word === "preferment" ? amount * kind.flour : 0));
  return inRows / allFlour(rows) + (setApart?.share ?? 0);
}

/** The finished dough is at most nine tenths fat, as its sheet counts it. */
const MAX_OF_FINISHED = 0.9;

/** Fat that is rolled in, over the dough without it. */
export function rollPart({ rows, frame, rollIn }: Pick<Formula, "rows" | "frame" | "rollIn">): number {
  if (rollIn === null) return 0;
  const { share, of } = rollIn;
  if (of === "base") return share;
  return of === "flour"
    ? (share * baseOf(rows, frame)) / amountOf(rows)
    : share / (1 - Math.min(share, MAX_OF_FINISHED));
}

const FAT: Kind = { word: "fat", flour: ratio(0), water: ratio(0) };
/** What stands for the roll-in where all that goes in is listed: no row of the table has this id. */
export const ROLL_IN = -1;

/** The rows, and what is rolled in as one more. */
export function allRows(formula: Formula): readonly Row[] {
  const { rows, rollIn } = formula;
  const amount = amountOf(rows) * rollPart(formula);
  if (rollIn === null || amount === 0) return rows;
  return [...rows, { id: ROLL_IN, name: rollIn.name, type: "fat", kind: FAT, amount }];
}

/** What is rolled in is told from a row of the same name. */
export const shownName = ({ id, name }: Row): string => (id === ROLL_IN ? `${name || "Fat"} (roll-in)` : name);

/** What a piece weighs before it is baked. */
export function scaledOf(size: Size | undefined, { perArea }: Pick<Formula, "perArea">): number | null {
  if (size === undefined) return null;
  const { baked, loss, diameter = null } = size;
  if (baked !== null) return baked / (1 - loss);
  return diameter === null || perArea === null ? null : (Math.PI / 4) * diameter ** 2 * perArea;
}

/** Weight of an amount of 1. */
export function eachOf(formula: Formula): number {
  const { rows, batch } = formula;
  if (batch.of === "flour") return batch.amount;
  const sum = amountOf(rows) * (1 + rollPart(formula));
  return sum > 0 ? batch.amount / sum : 0;
}

/** The weight of every row, and of what is rolled in behind them, in the formula's unit. */
export function weightsOf(formula: Formula): Weight[] {
  const each = eachOf(formula);
  return allRows(formula).map(({ amount }) => weight(amount * each));
}
