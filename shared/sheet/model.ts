// What a sheet is made of, as data. A template is a literal of these types; plan.ts turns it into what is written.
import type { LengthUnit, TemperatureUnit } from "../base/units.ts";

/** What the sheet's owner chose when it was built. Formulas and labels may name them: {weight}, {temperature}, {length}; formulas {cost_decimals} too. */
export type Options = {
  readonly weight: "g" | "oz";
  readonly temperature: TemperatureUnit;
  readonly length: Exclude<LengthUnit, "mm">;
  /** Parts that a sheet may do without. */
  readonly parts: readonly string[];
  /** How many decimals the bakery's currency has, where it is not two. */
  readonly moneyDecimals?: number;
};

/** A part that must be there ("tin") or must not ("!tin"), or a unit ("oz", "in", "F"); several joined by &. */
export type Condition = string;

export type Unit =
  | "text"
  | "weight"
  /** A weight rounded as a person reads it, and one that stands on the steps of the scales. */
  | "graded"
  | "amount"
  | "step"
  | "share"
  /** A share of few digits. */
  | "short rate"
  | "percent"
  | "temperature"
  | "factor"
  | "length"
  | "count"
  | "minutes"
  | "capacity"
  | "fill"
  | "per area"
  | "date"
  | "time"
  | "day"
  | "money"
  | "unit_cost"
  | "rate"
  | "figure"
  /** With the decimals that it has, thousands set apart: a figure that does not change. */
  | "exact"
  | "plain";

export type Role =
  | "title"
  | "heading"
  | "label"
  | "input"
  | "computed"
  | "remark"
  | "caution"
  | "ruled"
  | "figure"
  /** The sheet's result in words, and below it what is wrong with what was typed. */
  | "result"
  | "check"
  /** A figure that stands out among its neighbours, and one under a table. */
  | "strong"
  | "total"
  /** What the sheet only works with, beside its page. */
  | "helper";

/** One formula, or the first whose condition holds. `@name` is a cell, or a table's whole column from edge row to edge row. */
export type Formula = string | readonly { readonly when?: Condition; readonly formula: string }[];

export type CellModel = {
  /** Column, counted from the block's own left edge. */
  readonly at: number;
  readonly role: Role;
  readonly text?: string;
  readonly name?: string;
  readonly unit?: Unit;
  /** A long text that is typed has the room of so many columns, its own and blank ones. */
  readonly wide?: number;
  /** Where a label stands over numbers, or numbers beside another block. */
  readonly align?: "right" | "center";
  readonly value?: number | string;
  readonly choices?: readonly string[];
  /** Leaves out choices whose part is not built: { tins: "tin" }. */
  readonly choicesNeed?: Readonly<Record<string, Condition>>;
  readonly formula?: Formula;
  /** Names of the cells the formula fills beside its own, to the right; "" where none is needed. */
  readonly spills?: readonly string[];
  /** Those of them that are filled with a remark in words. */
  readonly worded?: readonly string[];
  readonly when?: Condition;
  /** What a form calls it, where the line's label is about several inputs. */
  readonly asks?: string;
  /** What a form says below it; otherwise the remark that stands in its line. */
  readonly hint?: string;
  /** The column whose entries it may name. */
  readonly among?: string;
  /** The least and the most that may be typed, in the sheet's own unit. */
  readonly bounds?: Bounds;
  /** Typed on the sheet alone: no form asks for it. */
  readonly onSheet?: true;
};

/** Several where they depend on the sheet's units. */
export type Bounds = readonly [least: number, most: number] | readonly BoundsWhen[];
type BoundsWhen = { readonly when?: Condition; readonly least: number; readonly most: number };

export type Line = { readonly cells: readonly CellModel[]; readonly when?: Condition; readonly height?: number };

/** Lines below each other. */
export type Block = {
  readonly block: string;
  /** Column of its left edge, A being 0. */
  readonly left: number;
  /** Lines it stands lower than the rest of its band, below a block of the same columns. */
  readonly down?: number;
  readonly when?: Condition;
  /** Cells that are not built leave no gap: those that are stand side by side, wherever `at` has them. */
  readonly close?: true;
  readonly lines: readonly Line[];
};

export type ColumnModel = {
  readonly name: string;
  readonly head: string;
  readonly unit: Unit;
  /** A linked column has a formula in every row, which points into another sheet. */
  readonly role: "input" | "computed" | "remark" | "linked" | "ruled" | "figure" | "strong" | "helper";
  /** A heading that follows other cells. */
  readonly headFormula?: Formula;
  /** No row of it is ever blank or an error, so that formulas may calculate with it. */
  readonly numbers?: true;
  /** Typed on the sheet alone: no form asks for it. */
  readonly onSheet?: true;
  readonly bounds?: Bounds;
  /** A long text that is typed has the room of so many columns, its own and blank ones. */
  readonly wide?: number;
  readonly choices?: readonly string[];
  /** Stands in the edge row above the first row and fills the column. */
  readonly formula?: Formula;
  /** Names of the columns the formula fills beside its own. */
  readonly spills?: readonly string[];
  /** Weights may be typed over it: no warning comes first. */
  readonly takesWeights?: true;
  /** Long texts take several lines. */
  readonly wraps?: true;
  /** Where texts stand beside numbers, or few digits before a text. */
  readonly align?: "right" | "center";
};

/** Rows of one kind between two edge rows, so that a row may be inserted first, in the middle or last. */
export type Table = {
  readonly table: string;
  readonly left: number;
  readonly when?: Condition;
  readonly rows: number;
  /** Where more rows are typed it is longer: as many as are typed, and these to spare. */
  readonly spare?: number;
  /** Its formula makes a list that begins in the upper edge row, not a figure for every row: that row looks like the others. */
  readonly list?: true;
  /** The row of its formulas is hidden, and nothing may be typed there. */
  readonly hidden?: true;
  /** Its headings are formulas whose words may take several lines. */
  readonly tallHead?: true;
  /** What stands in the last row, under the columns: the columns' formulas reach it. */
  readonly total?: readonly CellModel[];
  readonly columns: readonly ColumnModel[];
};

/** Blocks and tables side by side. */
export type Band = readonly (Block | Table)[];

export type Value = number | string | null;
/** What was typed in the sidebar, by the name of the cell or of the table's column. */
export type Values = Readonly<Record<string, Value | readonly Value[]>>;

/** References into other sheets, written where a formula says [name], or as the formulas of a linked column. */
export type Links = Readonly<Record<string, string | readonly string[]>>;

/** A name the whole workbook knows, for the tables from one to the last that is built. */
export type Definition = { readonly name: string; readonly from: string; readonly to: string | readonly string[] };

export type PlaceModel = {
  readonly name: string;
  readonly row: number;
  readonly column: number;
  readonly rows?: number;
  readonly columns?: number;
};

/** Begins what a sheet only needs to work with: rows from here down, or columns from here on, are not on its pages. */
export const WORKED_OUT = "Worked out here";

export type SheetModel = {
  readonly name: string;
  readonly title: string;
  /** What a person finds in the list of templates. */
  readonly says: string;
  /** Under which heading it stands there. */
  readonly group?: string;
  readonly widths: readonly number[];
  readonly bands: readonly Band[];
  /** Rows at the top that stay in sight. */
  readonly frozen?: number;
  /** Cells and columns that are filled in first, in this order. */
  readonly fillsFirst?: readonly string[];
  /** The first column of those that the sheet only works with; they are folded away. */
  readonly foldedFrom?: number;
  /** A text that stands on every sheet built from it, whatever its parts, and on no other. */
  readonly mark?: string;
  /** Names of places that are no cell or column of a block; without `rows` or `columns` they reach the sheet's end. */
  readonly places?: readonly PlaceModel[];
  /** Height of the blank row between bands, where it is not a usual row. */
  readonly gap?: number;
  /** How large everything is written, 1 being the size of a formula sheet. */
  readonly type?: number;
  /** Parts that are built unless told otherwise, and all there are. */
  readonly parts: readonly string[];
  readonly defines?: Definition;
  /** Names that come and go with it, for other parts of the same tables. */
  readonly alsoDefines?: readonly Definition[];
  /** Sample inputs in grams, °C and cm, in the invented shop. */
  readonly sample: Values;
  /** What the sample must compute to, by cell name or "column/row" of a table. */
  readonly expects: Readonly<Record<string, number | string>>;
};
