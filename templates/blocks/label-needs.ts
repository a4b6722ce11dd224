import { LABELS_NAME } from "../../shared/sheet/workbook-names.ts";

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
  /** The column of their weights, where it is not that of all that is weighed out. */
  readonly weights?: string;
  /** The cell with what a piece weighs when it is sold: then the weights are those of a piece, and there are no sizes. */
  readonly finished?: string;
  /** An ingredient that is not in the table. */
  readonly extra?: { readonly name: string; readonly weight: string; readonly kind: string };
};

/** What labels read of the sheet of ingredients. */
export const SHOP_ROWS = LABELS_NAME;
/** What goes into ingredients that have a formula sheet of their own. */
export const OWN_PARTS = "@own_parts";

/** What is weighed out: the table's rows, and what goes in beside them. */
export function rowsOf({ extra, rows, weights = "@grams" }: Labelled): {
  names: string;
  weights: string;
  kinds: string;
} {
  if (extra === undefined) return { ...rows, weights };
  return {
    names: `{${rows.names};${extra.name}}`,
    weights: `{@grams;${extra.weight}}`,
    kinds: `{${rows.kinds};"${extra.kind}"}`,
  };
}

/** A last argument that many places on, where there is one. */
export const after = (places: number, argument: string): string =>
  argument === "" ? "" : `${";".repeat(places)}${argument}`;
