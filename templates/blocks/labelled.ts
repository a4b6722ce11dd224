/** What a label needs to know of a formula sheet. */
export type Labelled = {
  /** All that there is to divide. */
  readonly whole: string;
  /** Raw weights of a piece, a size a row. */
  readonly each: string;
  /** Whether the sizes say what a piece weighs when it is sold. */
  readonly sold: boolean;
  /** Columns that hold the names and types of the rows that count alone. */
  readonly rows: { readonly names: string; readonly kinds: string };
  /** An ingredient that is not in the table. */
  readonly extra?: { readonly name: string; readonly weight: string; readonly kind: string };
};
