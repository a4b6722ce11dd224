import type { Condition } from "../../shared/sheet/model.ts";

/** What cost and label need to know of a formula sheet. */
export type CostedCells = {
  /** All the dough or batter there is to divide. */
  readonly whole: string;
  /** Raw weights of a piece, a size a row, and the sizes' names. */
  readonly each: string;
  readonly names: string;
  /** The same with the part "tin": made by tins without a size, the first row is what a tin takes. */
  readonly tins?: { readonly each: string; readonly names: string };
  /** One sort of piece in one cell, and the part without which there is none; sizes are a table. */
  readonly needs?: Condition;
  /** Whether the sizes say what a piece weighs when it is sold. */
  readonly sold: boolean;
  /** Columns that hold the names and types of the rows that count alone, where the sheet has them. */
  readonly rows?: { readonly names: string; readonly kinds: string };
  /** An ingredient that is not in the table. */
  readonly extra?: { readonly name: string; readonly weight: string; readonly kind: string };
};
