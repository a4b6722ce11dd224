// A recipe before and after it is read, line by line.

import type { CupSystem } from "../base/volumes.ts";

/** One line as it stands now; `name` is what a person wrote for its ingredient, "" where the line says it. */
export type WrittenLine = { readonly text: string; readonly name: string };
export type WrittenRecipe = { readonly cups: CupSystem; readonly lines: readonly WrittenLine[] };

export type ReadLine = {
  /** Which of the lines asked about it comes from, counted from 0; one line may hold several ingredients. */
  readonly from: number;
  readonly text: string;
  /** An aside is kept, and does not go into the formula. */
  readonly is: "ingredient" | "heading" | "aside";
  /** "" where it has to be asked for, as with kind; grams are null then. */
  readonly name: string;
  readonly kind: string;
  readonly grams: number | null;
  /** Remarks, a sentence each. */
  readonly says: string;
  /** Why name, kind or grams are blank, and what to write. */
  readonly asks: string;
};

export type ReadRecipe = {
  /** What the recipe calls itself; "" where it does not say. */
  readonly title: string;
  readonly lines: readonly ReadLine[];
  /** About the whole, such as a larder that could not be read. */
  readonly says: string;
};
