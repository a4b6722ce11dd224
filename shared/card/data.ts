// What a staff card is asked with, and what it is made from.
import type { Value } from "../sheet/model.ts";

/** A weight that follows the amount: `base` with it, `fixed` whatever is made; divided by the mixes where it goes into each. */
export type CardWeight = {
  readonly says: string;
  readonly base: number;
  readonly fixed?: number;
  readonly perMix: boolean;
  /** Which of the stages' columns it stands in. */
  readonly stage: number;
  /** Part of the levain's feed, which a shift takes from the production's own chain of feeds. */
  readonly isFeed?: true;
  /** Ice, or tap water beside it: a shift has them for the temperatures of its day. */
  readonly isIce?: true;
};

export type CardData = {
  readonly title: string;
  /** Version, date and shop in one line. */
  readonly from: string;
  readonly unit: "g" | "oz";
  /** What is mixed. */
  readonly what: "Dough" | "Batter";
  /** Of the whole amount on the formula sheet. */
  readonly dough: number;
  readonly pieces: number | null;
  readonly mixes: number;
  readonly mixerLimit: number | null;
  /** Of the shop's scales, the coarsest first. */
  readonly steps: readonly number[];
  /** The last of two is the whole mix on the scale less the first on the scale, as the formula sheet has it. */
  readonly lastIsRest: boolean;
  readonly stages: readonly { readonly head: string; readonly weights: readonly (number | null)[] }[];
  readonly ingredients: readonly string[];
  readonly added: readonly CardWeight[];
  /** Weight of all egg, and of one without its shell. */
  readonly eggs: { readonly weight: number; readonly each: number } | null;
  /** What the dough is divided into; the pieces of each of several sizes. */
  readonly sizes: readonly { readonly name: string; readonly weight: number; readonly pieces: number | null }[];
  /** What pieces are baked on: how many a tray or tin holds, and how many of those are an oven load. */
  readonly oven: {
    readonly on: "trays" | "tins" | "pieces";
    readonly holds: number;
    readonly takes: number | null;
  } | null;
  /** The temperature of the water in a sentence; "" where the sheet has none. */
  readonly water: string;
  readonly facts: readonly string[];
  readonly timed: readonly {
    readonly step: string;
    readonly minutes: Value;
    readonly start: string;
    readonly day: string;
  }[];
  readonly cautions: readonly string[];
};

/** What one open cell of a living card asks for, or how much a card of values is made for. */
export type CardAmount = {
  readonly by: "pieces" | "mixes" | "dough" | "ingredient";
  readonly says: string;
  /** What the formula sheet has of it. */
  readonly base: number;
  readonly wanted: number;
};

export const CARD_KINDS = ["values", "living"] as const;
export type CardKind = (typeof CARD_KINDS)[number];
/** "sheet" is the amount as it stands on the formula sheet. */
export const CARD_AMOUNTS = ["sheet", "pieces", "mixes", "dough", "ingredient"] as const;
