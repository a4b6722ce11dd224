// The questions that the page answers itself.

import type { Larder } from "../larder/larder.ts";
import type { SheetRow } from "../price-list/lines.ts";
import type { AdjustQuestions } from "./adjust.ts";
import type { CardAsk } from "./card.ts";
import type { LotsAnswer } from "./lots.ts";
import type { Order } from "./order.ts";
import type { PriceListAnswer, PriceListAsk } from "./price-list.ts";
import type { NightPage, ProductionOrder, ShiftAsk } from "./production.ts";
import type { FormulaSummary, SheetReview } from "./sheet-review.ts";

/** What the page works out itself from looks and calculations of the add-on, which then makes the sheet. */
export type PlannedQuestions = AdjustQuestions & {
  /** A sheet, please; `note` says what a person should know of it, `listDue` that a list of all formulas is to be built next. */
  build: {
    readonly ask: Order;
    readonly answer: { readonly sheet: string; readonly note?: string; readonly listDue?: boolean };
  };
  /** A list of all formula sheets, please; the sheet in front stays there. */
  list: {
    readonly ask: Record<string, never>;
    readonly answer: { readonly sheet: string; readonly note?: string };
  };
  /** The formula sheets of the workbook, and the name of the sheet in front. */
  formulas: {
    readonly ask: Record<string, never>;
    readonly answer: { readonly front: string; readonly sheets: readonly FormulaSummary[] };
  };
  /** A staff card from a formula sheet, please. */
  card: { readonly ask: CardAsk; readonly answer: { readonly sheet: string; readonly note?: string } };
  /** What can be said of the formula sheet in front, for a style ("" for the usual one). */
  review: { readonly ask: { readonly style: string }; readonly answer: SheetReview };
  /** A part, please put into the formula sheet in front, or taken out; all that was typed elsewhere stays. */
  change: {
    readonly ask: { readonly sheet: string; readonly part: string; readonly isWanted: boolean };
    readonly answer: { readonly sheet: string; readonly note?: string };
  };
  /** The shop's settings as they stand in their sheet, a name and a text each; null without such a sheet. */
  settings: {
    readonly ask: Record<string, never>;
    readonly answer: { readonly rows: readonly (readonly [name: string, value: string])[] | null };
  };
  /** Ingredients with a formula sheet of their own, please read there; the sheets that were changed. */
  link: {
    readonly ask: Record<string, never>;
    readonly answer: { readonly sheets: readonly string[]; readonly note?: string };
  };
  /** What formula sheets use and the ingredient sheet lacks, please into it. */
  missing: {
    readonly ask: Record<string, never>;
    readonly answer: {
      readonly sheet: string;
      readonly added: readonly string[];
      readonly also: readonly string[];
      readonly note?: string;
    };
  };
  /** The ingredient sheet as it stands, for a price list to be read beside it. */
  priceSheet: {
    readonly ask: Record<string, never>;
    readonly answer: { readonly rows: readonly SheetRow[]; readonly larder: Larder };
  };
  /** What was taken of a price list, please into the ingredient sheet. */
  takePrices: { readonly ask: TakePricesAsk; readonly answer: TakePricesAnswer };
  /** The rows of the sheet of label texts, headings first; `without` is how many products have no list. */
  labels: {
    readonly ask: Record<string, never>;
    readonly answer: { readonly rows: readonly (readonly string[])[]; readonly without: number };
  };
  /** A production sheet, please; days are such as 2026-01-31. With one day its customers may stand across. */
  day: {
    readonly ask: {
      readonly day: string;
      readonly days?: readonly string[];
      readonly across?: "days" | "customers";
      readonly orders: readonly ProductionOrder[];
    };
    readonly answer: { readonly sheet: string; readonly note?: string };
  };
  /** The production sheets of the workbook with their days, the newest first. */
  productions: {
    readonly ask: Record<string, never>;
    readonly answer: {
      /** `newer` is said of one that a newer Gramwright built, and left out of all others. */
      readonly sheets: readonly { readonly sheet: string; readonly days: readonly string[]; readonly newer?: string }[];
    };
  };
  /** What a shift weighs, please, and the timetable of one or of all. */
  weighUp: { readonly ask: ShiftAsk; readonly answer: { readonly sheet: string; readonly note?: string } };
  timetable: { readonly ask: ShiftAsk; readonly answer: { readonly sheet: string; readonly note?: string } };
  /** A card for each dough that a shift mixes, please, as sheets or as pages to print. */
  cards: { readonly ask: ShiftAsk; readonly answer: { readonly sheet: string; readonly note?: string } };
  night: { readonly ask: ShiftAsk; readonly answer: { readonly pages: readonly NightPage[] } };
  /** Lots that were entered on weigh-ups, please into the lot log. */
  keepLots: { readonly ask: Record<string, never>; readonly answer: LotsAnswer };
  /** Delivery notes, please. */
  customers: {
    readonly ask: { readonly sheet: string };
    readonly answer: { readonly sheet: string; readonly note?: string };
  };
  /** What to order for a production sheet, please. */
  purchases: {
    readonly ask: { readonly sheet: string };
    readonly answer: { readonly sheet: string; readonly note?: string };
  };
};

/** `added` are names of new ingredients, `also` other names of ingredients that are there. */
export type TakePricesAsk = Pick<PriceListAsk, "rows"> & {
  readonly added: readonly string[];
  readonly also: readonly { readonly name: string; readonly of: string }[];
};
export type TakePricesAnswer = PriceListAnswer & { readonly added: readonly string[] };

export type PlannedQuestion = keyof PlannedQuestions;
