// A sheet as it is written: grids of one size, and what is done to them.
import type { Zone } from "./a1.ts";
import { BUILT_CELL } from "./built-by.ts";
import type { Layout } from "./layout.ts";
import type { FormulaAt, FormulaRectangle } from "./rectangles.ts";
import type { DefinedName } from "./table-lengths.ts";
import type { Appearance } from "./theme.ts";
import type { Validation } from "./validation.ts";

/** All that is written to a sheet; every grid has `rows` × `page` cells, which is what a person sees of its `columns`. */
export type SheetPlan = {
  readonly rows: number;
  readonly columns: number;
  /** Columns that are not folded away. */
  readonly page: number;
  /** Words beside the page, in runs of cells, and how its cells show numbers. */
  readonly aside: {
    readonly words: readonly {
      readonly row: number;
      readonly column: number;
      readonly cells: readonly (string | number)[];
    }[];
    readonly formats: readonly { readonly format: string; readonly ranges: readonly string[] }[];
  };
  readonly widths: readonly number[];
  /** Rows that grow become higher where what stands in them needs it. */
  readonly heights: readonly {
    readonly row: number;
    readonly rows?: number;
    readonly height: number;
    readonly grows?: boolean;
  }[];
  /** Rows that are not shown. */
  readonly hidden: readonly number[];
  /** Rows at the top that stay in sight. */
  readonly frozen: number;
  /** The first cell to fill in, where the cursor stands when the sheet is built; "" where it stays. */
  readonly start: string;
  /** Texts and numbers as typed; "" where a cell is blank or holds a formula. */
  readonly values: readonly (readonly (string | number)[])[];
  readonly formats: readonly (readonly string[])[];
  readonly appearances: readonly (readonly Appearance[])[];
  readonly aligned: readonly (readonly ("left" | "right" | "center")[])[];
  readonly validations: readonly (readonly (Validation | null)[])[];
  /** Rectangles of formulas, ";" between arguments. */
  readonly formulas: readonly FormulaRectangle[];
  /** Headings of tables, which may need two lines. */
  readonly wrapped: readonly string[];
  readonly borders: Readonly<Record<"box" | "under" | "rule" | "over", readonly string[]>>;
  /** Everything but edge rows, formulas and what they fill, weights left out: a warning is shown where somebody types there. */
  readonly unprotected: readonly string[];
  readonly names: Layout["names"];
  /** Where it says which version built it; null where there is no room for it. */
  readonly builtBy: Zone | null;
  /** Names that the whole workbook is to know. */
  readonly defines: readonly DefinedName[];
};

export type Draft = {
  readonly values: (string | number)[][];
  readonly formats: string[][];
  readonly appearances: Appearance[][];
  readonly aligned: ("left" | "right" | "center")[][];
  readonly validations: (Validation | null)[][];
  readonly formulas: FormulaAt[];
};

/** Where a named cell or column of it stands. */
export const planZone =
  ({ names, builtBy }: Pick<SheetPlan, "names" | "builtBy">) =>
  (name: string): Zone | undefined =>
    name === BUILT_CELL ? (builtBy ?? undefined) : names.get(name);
