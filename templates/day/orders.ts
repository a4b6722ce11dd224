import type { ColumnModel } from "../../shared/sheet/model.ts";
import { computedColumn, input, remark } from "./column.ts";

/** Pieces of a product in the orders of the sheet's day. */
export const ORDERED = "SUMIF(@order_counts;@day_product;@order_pieces)";

/** What is no date is never the day; a date may have a time of day in it. */
const ORDER_DAY = "IF(ISNUMBER(@order_date);INT(@order_date);0-1)";
const ON_THE_DAY = `IF(LEN(@order_date)=0;1;IF(${ORDER_DAY}=IF(COUNT(@day)=0;0-2;INT(@day));1;0))`;

/** What keeps an order from being made, in words: none may be lost in silence. */
const NOTE = [
  'IF(LEN(@order_product)+LEN(@order_pieces)=0;""',
  'IF(LEN(@order_product)=0;"which product?"',
  'IF(COUNTIF(@day_product;@order_product)=0;"no formula sheet of this name"',
  'IF(LEN(@order_pieces)=0;"how many pieces?"',
  'IF(ISNUMBER(@order_pieces)*1=0;"pieces are no number"',
  'IF(@order_pieces<0;"pieces below 0"',
  'IF(IF(LEN(@order_date)=0;0;IF(ISNUMBER(@order_date);0;1))=1;"the date is no date"',
  'IF(IF(LEN(@order_date)=0;0;IF(COUNT(@day)=0;1;0))=1;"no day is chosen above"',
  'IF(IF(ISNUMBER(@order_pieces);@order_pieces-INT(@order_pieces);0)=0;"";"not whole: counted as it is"',
].join(";");

/** One order a row; a blank date is the sheet's own day. */
export const orders: readonly ColumnModel[] = [
  input("order_date", "Ordered for", "date"),
  input("order_product", "Product ordered", "text"),
  { ...input("order_pieces", "Pieces ordered", "count"), align: "center" },
  remark("order_note", "Remark", `=ARRAYFORMULA(${NOTE}${")".repeat(9)})`),
];

/** The product of an order that counts for the day: a sum of several conditions fills no column, one of names does. */
export const countedOrderColumns: readonly ColumnModel[] = [
  computedColumn(
    "order_counts",
    "Counts",
    "text",
    `=ARRAYFORMULA(IF(LEN(@order_product)*LEN(@order_pieces)=0;"";IF(ISNUMBER(@order_pieces)*${ON_THE_DAY}=0;"";IF(@order_pieces<0;"";@order_product))))`,
  ),
];
