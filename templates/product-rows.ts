// Rows for all products of the formula list, for tables that show something of each.
import type { ColumnModel, Line, Unit } from "../shared/sheet/model.ts";
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

const TITLES = `INDEX(gramwright_formulas;0;${placeOf(listColumn("title"))})`;
/** Products below the last row that the table has. */
const LEFT_OUT = `SUMPRODUCT((LEN(${TITLES})>0)*(ROW(${TITLES})-MIN(ROW(${TITLES}))>ROWS(@product)-${ROWS_ABOVE}+${ROWS_ABOVE - 1}))`;

/** Says when more formulas were built than the table has rows for. */
export const leftOutLine: Line = {
  when: "listed",
  cells: [
    {
      at: 0,
      role: "check",
      name: "check",
      unit: "text",
      formula: `=IF(${LEFT_OUT}=0;"";${LEFT_OUT}&" more than there are rows for: build this sheet again and delete this one.")`,
    },
  ],
};
