import type { ColumnModel, Formula } from "../../shared/sheet/model.ts";
import { helper, numbers, outOf, typedColumn } from "./column-kinds.ts";
import { ownHelpers } from "./own.ts";

/** Where there is no sheet of ingredients, prices are typed beside them. */
export const typedPrices: readonly ColumnModel[] = [
  typedColumn("price_typed", "Price per {priced}", "money", { bounds: [0, 1_000_000], onSheet: true }),
];

/** A column of the sheet of ingredients, across: compared whole with each name, so that no sign in it is a pattern. */
const across = (column: string) => `TRANSPOSE(INDEX(gramwright_larder;0;${column}))`;
const CALLED = `(@name_plain=IFERROR(TRIM(SUBSTITUTE(${across("1")};UNICHAR(160);" "));""))`;
/** A 1 for each of its rows; a row's number is never an error, whatever stands in it. */
const EACH_ROW = "ROW(INDEX(gramwright_larder;0;1))^0";
const ALSO = `ISNUMBER(FIND(";"&@name_plain&";";";"&SUBSTITUTE(LOWER(${across("@larder_also")});"; ";";")&";"))`;

/** Rows of the sheet of ingredients that a name stands for, and their price; by its other names where none has the name itself. */
export const lookedUp: readonly ColumnModel[] = [
  helper(
    "name_plain",
    "Name, without odd spaces",
    '=ARRAYFORMULA(IFERROR(TRIM(LOWER(SUBSTITUTE(@ingredient;UNICHAR(160);" ")));""))',
  ),
  ...ownHelpers,
  numbers("rows_called", "Rows of this name", `=ARRAYFORMULA(MMULT(${CALLED}*1;${EACH_ROW}))`),
  numbers("price_called", "Price of this name", priceBy(CALLED)),
  numbers("rows_also", "Rows also called so", `=ARRAYFORMULA(MMULT(${ALSO}*1;${EACH_ROW}))`),
  numbers("price_also", "Price of those also called so", priceBy(ALSO)),
  numbers(
    "price_found",
    "Price of the one row",
    "=ARRAYFORMULA((LEN(@name_plain)>0)*IF(@own_rows=1;@own_cost*@own_factor;@larder_factor*((@rows_called=1)*@price_called+(@rows_called=0)*(@rows_also=1)*@price_also)))",
  ),
  helper("price", "Price per {priced}, or blank", '=ARRAYFORMULA(IF(@counts*@price_found>0;@price_found;""))'),
  helper(
    "price_says",
    "Price that is wrong",
    '=ARRAYFORMULA(IF(@counts*(LEN(@name_plain)>0)*(@own_rows=0)*(@rows_called+(@rows_called=0)*@rows_also>1)=1;"stands twice in Ingredients. ";""))',
  ),
];

function priceBy(found: string, column = "@larder_price"): string {
  return `=ARRAYFORMULA(MMULT(${found}*1;IFERROR(1*INDEX(gramwright_larder;0;${column});0)))`;
}

/** What is bought by the piece, such as bags and candles: its price each, by the same rows. */
export const eachPrices: readonly ColumnModel[] = [
  numbers("each_called", "Price each of this name", priceBy(CALLED, "@larder_each")),
  numbers("each_also", "Price each, by other names", priceBy(ALSO, "@larder_each")),
  numbers(
    "each_found",
    "Price each of the one row",
    "=ARRAYFORMULA((LEN(@name_plain)>0)*((@rows_called=1)*@each_called+(@rows_called=0)*(@rows_also=1)*@each_also))",
  ),
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
