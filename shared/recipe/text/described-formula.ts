// The dough of a recipe as one formula, in shares of all flour.
import type { Celsius, Grams } from "../../base/units.ts";

/** One ingredient of the dough, however many stages it goes into. */
export type FormulaRow = {
  readonly name: string;
  readonly type: string;
  readonly grams: Grams | null;
  /** Of all flour, preferments' included. */
  readonly percent: number | null;
  /** As the text's percentages have it; null where it has weights. */
  readonly shareInText: number | null;
  readonly isKnown: boolean;
};

/** A stage that ripens first, as shares of flour. */
export type TiedPreferment = {
  readonly stage: number;
  readonly kind: string;
  /** Of all flour. */
  readonly share: number;
  readonly hydration: number;
  /** Yeast of its own, of its flour. */
  readonly yeast: number;
  /** Ripe starter that it is built from, of the flour that is fed to it. */
  readonly seed: number;
  /** Water of that starter, of its flour. */
  readonly seedHydration: number;
  /** Whether flour, water, yeast and seed say all of it, and its flour is all kinds alike or one alone. */
  readonly isWhole: boolean;
  readonly hours: number | null;
  readonly temperature: Celsius | null;
  /** Made but not used, in grams. */
  readonly leftOver: Grams | null;
  /** The one flour that goes in, where the dough has others; "" for all. */
  readonly flour: string;
};

/** What is mixed before the dough, each ingredient in hundredths of all flour. */
export type MixedBefore = {
  readonly stage: number;
  readonly rows: readonly { readonly name: string; readonly percent: number }[];
};

export type FormulaPart = { readonly stage: number; readonly name: string; readonly grams: Grams | null };

/** The dough as one formula: what is kept apart is not in it, and what stands twice is counted once. */
export type Formula = {
  readonly rows: readonly FormulaRow[];
  readonly flour: Grams | null;
  readonly dough: Grams | null;
  /** Water over flour, preferments counted in; null without flour. */
  readonly hydration: number | null;
  readonly preferments: readonly TiedPreferment[];
  readonly before: readonly MixedBefore[];
  readonly parts: readonly FormulaPart[];
  readonly pieces: number | null;
};
