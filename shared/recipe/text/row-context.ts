// How a text is read, and what is read of one row.

import { Refusal } from "../../base/refusal.ts";
import type { Grams } from "../../base/units.ts";
import { type LineWeight, lineWeigher } from "../grams.ts";
import type { UnitOfColumn } from "./columns.ts";
import type { Corrections } from "./corrections.ts";
import type { AmountOf, Kitchen, Question, Remark } from "./description.ts";
import type { NumberStyle } from "./numbers.ts";

export type Reading = {
  readonly kitchen: Kitchen;
  readonly corrections: Corrections;
  readonly style: NumberStyle;
  /** The unit of bare numbers, where the text or a person says it. */
  readonly unit: UnitOfColumn;
  /** Whether percentages are amounts in this text. */
  readonly isPercents: boolean;
  /** Whether the text says that its bare numbers are percentages. */
  readonly saysPercents: boolean;
  readonly weigh: (line: string, named: string | null) => LineWeight;
  /** Rows of texts read before, the same way in the same kitchen. */
  readonly known: Map<string, RowRead>;
  /** Lines that are one row each, whatever stands around them among ingredients. */
  readonly plain: Set<string>;
};

export type Ask = Pick<Question, "reason" | "about" | "choices" | "isOpen">;

export type RowRead = {
  readonly text: string;
  readonly name: string;
  readonly readName: string;
  readonly type: string;
  readonly amountOf: AmountOf;
  readonly grams: Grams | null;
  readonly percent: number | null;
  /** A number whose unit nobody said. */
  readonly bare: number | null;
  /** A bare number that was taken for pieces. */
  readonly count: number | null;
  readonly isOptional: boolean;
  readonly isAll: boolean;
  /** Of all of it, what is kept back. */
  readonly keeps: Grams | null;
  readonly isKnown: boolean;
  readonly remarks: readonly Remark[];
  readonly asks: readonly Ask[];
};

/** What a table's other cells say of a row. */
export type Beside = {
  readonly amount?: string;
  readonly unit?: UnitOfColumn | string;
  readonly percent?: number | null;
};

export const weigherOf = ({ cups, larder }: Kitchen): Reading["weigh"] => {
  const weigh = lineWeigher(cups, larder);
  return (line, named) => {
    try {
      return weigh(line, named);
    } catch (error) {
      // Two rows of the bakery's own table that may be meant, or one that cannot be read.
      if (error instanceof Refusal) return { is: "unclear", says: error.message };
      throw error;
    }
  };
};

export const open = (reason: Ask["reason"], about: readonly string[], choices: readonly string[] = []): Ask => ({
  reason,
  about,
  choices,
  isOpen: true,
});

type Spellings = Pick<Reading, "known" | "plain">;
const spellingsByLarder = new WeakMap<Kitchen["larder"], Map<string, Spellings>>();
const MAX_WAYS = 20;
export const MAX_CACHED = 5000;

/** The rows that were read before in this way. */
export function rowsRead({
  kitchen,
  corrections,
  style,
  unit,
  isPercents,
}: Omit<Reading, "weigh" | "saysPercents" | keyof Spellings>): Spellings {
  const ways = spellingsByLarder.get(kitchen.larder) ?? new Map<string, Spellings>();
  spellingsByLarder.set(kitchen.larder, ways);
  const way = [kitchen.cups, style, unit, isPercents, JSON.stringify(corrections.names)].join(" ");
  const before = ways.get(way);
  if (before !== undefined) return before;
  if (ways.size >= MAX_WAYS) ways.clear();
  const rows: Spellings = { known: new Map(), plain: new Set() };
  ways.set(way, rows);
  return rows;
}
