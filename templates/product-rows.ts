// Rows for all products of the formula list, for tables that show something of each.
import type { ColumnModel, Unit } from "../shared/sheet/model.ts";
import { LIST_COLUMNS, LIST_UNIT, listColumn } from "./formula-list.ts";

const placeOf = (column: string): number => LIST_COLUMNS.findIndex(({ name }) => name === column) + 1;
/** The headings, and the row that begins a table: products stand below them. */
export const ROWS_ABOVE = 2;
const cellOf = (column: string): string => `INDEX(gramwright_formulas;[place]+${ROWS_ABOVE};${placeOf(column)})`;

/** A cell of the product's row in the list, "" where it is blank. */
export const ofProduct = (of: string): string => cellOf(listColumn(of));
export const unitOfProduct: string = cellOf(LIST_UNIT);

/** A column with a formula in every row, each about one product. */
export const productColumn = (
  name: string,
  head: string,
  formula: string,
  more: Partial<ColumnModel> = {},
  unit: Unit = "text",
): ColumnModel => ({ name, head, unit, role: "linked", formula: `=IFERROR(${formula};"")`, ...more });

export const shownOf = (of: string): string => `IF(LEN(${ofProduct(of)})=0;"";${ofProduct(of)})`;
