import type { ColumnModel, Formula } from "../../shared/sheet/model.ts";
import { helper, numbers, outOf, typedColumn } from "./column-kinds.ts";
import { ownHelpers } from "./own-formulas.ts";

/** Where there is no sheet of ingredients, prices are typed beside them. */
export const typedPrices: readonly ColumnModel[] = [
  typedColumn("price_typed", "Price per {priced}", "money", { bounds: [0, 1_000_000], onSheet: true }),
];

/** A column of names of the sheet of ingredients, across: compared whole with each name, so that no sign in it is a pattern. */
const across = (column: string) => `TRANSPOSE(INDEX(gramwright_labels;0;${column}))`;
const CALLED = `(@name_plain=IFERROR(TRIM(SUBSTITUTE(${across("@larder_names")};UNICHAR(160);" "));""))`;
const ALSO = `ISNUMBER(FIND(";"&@name_plain&";";";"&SUBSTITUTE(LOWER(${across("@larder_also")});"; ";";")&";"))`;
/** The rows of the sheet; a row's number is never an error, whatever stands in it. */
const ROWS_OF_NAMES = "ROW(INDEX(gramwright_labels;0;1))";

/**
 * The row of the sheet of ingredients that a name stands for, by its other names where none has the name itself; and what stands
 * there. Names are looked for apart from prices: a price typed anew looks for none.
 */
export const lookedUp: readonly ColumnModel[] = [
  helper(
    "name_plain",
    "Name, without odd spaces",
    '=ARRAYFORMULA(IFERROR(TRIM(LOWER(SUBSTITUTE(@ingredient;UNICHAR(160);" ")));""))',
  ),
  ...ownHelpers,
  numbers("rows_called", "Rows of this name", sumOver(CALLED, `${ROWS_OF_NAMES}^0`)),
  numbers("row_called", "Row of this name", sumOver(CALLED, ROWS_OF_NAMES)),
  numbers("rows_also", "Rows also called so", sumOver(ALSO, `${ROWS_OF_NAMES}^0`)),
  numbers("row_also", "Row also called so", sumOver(ALSO, ROWS_OF_NAMES)),
  numbers(
    "larder_row",
    "Row in Ingredients",
    "=ARRAYFORMULA((LEN(@name_plain)>0)*((@rows_called=1)*@row_called+(@rows_called=0)*(@rows_also=1)*@row_also))",
  ),
  numbers("price_there", "Price in Ingredients", priceIn("@larder_price")),
  numbers(
    "price_found",
    "Price that counts",
    "=ARRAYFORMULA((LEN(@name_plain)>0)*IF(@own_rows=1;@own_cost*@own_factor;@larder_factor*@price_there))",
  ),
  helper("price", "Price per {priced}, or blank", '=ARRAYFORMULA(IF(@counts*@price_found>0;@price_found;""))'),
  helper(
    "price_says",
    "Price that is wrong",
    '=ARRAYFORMULA(IF(@counts*(LEN(@name_plain)>0)*(@own_rows=0)*(@rows_called+(@rows_called=0)*@rows_also>1)=1;"stands twice in Ingredients. ";""))',
  ),
];

function sumOver(rows: string, figures: string): string {
  return `=ARRAYFORMULA(MMULT(${rows}*1;${figures}))`;
}

function priceIn(column: string): string {
  return sumOver(
    "(@larder_row=TRANSPOSE(ROW(INDEX(gramwright_prices;0;1))))",
    `IFERROR(1*INDEX(gramwright_prices;0;${column});0)`,
  );
}

/** What is bought by the piece, such as bags and candles: its price each, by the same rows. */
export const eachPrices: readonly ColumnModel[] = [
  numbers("each_found", "Price each in Ingredients", priceIn("@larder_each")),
];

const fromPage: readonly ColumnModel[] = [
  helper(
    "price",
    "Price per {priced}, or blank",
    '=ARRAYFORMULA(IF(ISNUMBER(@price_typed)*@counts=1;@price_typed;""))',
  ),
  outOf("price_says", "Price that is wrong", "price_typed", "price", [0, 1_000_000]),
];

/** 16 oz are a pound. */
const COST: Formula = [
  { when: "oz", formula: "=ARRAYFORMULA(IF(ISNUMBER(@price)*@weighable=1;@exact*@price/16;0))" },
  { formula: "=ARRAYFORMULA(IF(ISNUMBER(@price)*@weighable=1;@exact*@price/1000;0))" },
];

/** What a row costs. Water is not paid for by weight. */
export function priceHelpers(isPriced: boolean): readonly ColumnModel[] {
  return [
    ...(isPriced ? lookedUp : fromPage),
    numbers("row_cost", "Cost, as numbers", COST),
    numbers("cost_told", "Cost is known", "=ARRAYFORMULA(ISNUMBER(@price)*@counts*@weighable)"),
    numbers(
      "cost_missing",
      "Price is missing",
      '=ARRAYFORMULA(IF((@counts=1)*(ISNUMBER(@price)=FALSE())*(@type_word<>"water")*(@type_word<>"ice")=1;1;0))',
    ),
  ];
}
