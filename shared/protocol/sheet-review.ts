// What the page tells its panels of the formula sheets.
import type { KindPart } from "../drawings/kind-bar.ts";
import type { TinView } from "../drawings/tin-view.ts";
import type { TimedStep } from "../formula/steps.ts";

/** What the page knows of a formula sheet; weights in its own unit, null where they are not told or not calculated yet. */
export type FormulaSummary = {
  readonly sheet: string;
  readonly title: string;
  readonly unit: "g" | "oz";
  readonly dough: number | null;
  readonly mixes: number | null;
  readonly pieces: number | null;
  readonly ingredients: readonly string[];
  /** What of it can be ordered: its sizes, "" for the only one of a sheet without names. */
  readonly sizes: readonly string[];
  /** Where it shows an error instead of its weights, and what to do; left out where it shows none. */
  readonly fault?: string;
  /** What is said where a newer Gramwright built it; left out of all others. */
  readonly newer?: string;
};

/** What can be drawn of a formula sheet: nothing of what is not there. */
export type SheetPictures = {
  readonly unit: "g" | "oz";
  readonly length: "cm" | "in";
  readonly parts: readonly KindPart[];
  readonly steps: readonly TimedStep[];
  readonly tin: TinView | null;
};

/** A formula sheet as read: remarks, the worst first, cells whose weight was typed over the sheet's, and figures in sentences. */
export type SheetReview = {
  readonly sheet: string;
  readonly title: string;
  readonly style: string;
  readonly styles: readonly string[];
  readonly remarks: readonly { readonly cell: string; readonly name: string; readonly says: string }[];
  readonly typed: readonly string[];
  /** Parts that it may have, in the order of the sheet, whether it has them, and how many typed cells go where that is changed. */
  readonly parts: readonly { readonly part: string; readonly isThere: boolean; readonly clears: number }[];
  readonly facts: readonly { readonly label: string; readonly says: string }[];
  readonly pictures: SheetPictures;
};
