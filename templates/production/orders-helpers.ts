// Beside the page of a production: what of each order counts, typed or regular, and figures of its days.
import type { CellModel, Table } from "../../shared/sheet/model.ts";
import { helper, numbers } from "../formula-sheet/column-kinds.ts";
import { daysOf, helpersFrom, type ProductionShape, plainText } from "./shape.ts";

/** No blank rows that would be printed: for another order a row is inserted. */
export const SPARE = 0;

const regular = (column: string) => `INDEX(gramwright_regular;0;${column})`;
/** Column of the regular orders in which their keys stand, and of Monday. */
const KEYS = 11;
const MONDAY = 4;

/** Beside the page: what counts, typed or regular. */
export function ordersHelpers(shape: ProductionShape): Table {
  const { columns, orderRows, hasRegular, items } = shape;
  const known = `(@order_item=TRANSPOSE(@item_key_1:@item_key_${items.length}))*1`;
  return {
    table: "orders_helpers",
    left: helpersFrom(shape) + 1,
    rows: orderRows,
    spare: SPARE,
    hidden: true,
    columns: [
      helper(
        "order_item",
        "Product and size ordered",
        `=ARRAYFORMULA(IFERROR(${plainText("@order_product")}&"|"&${plainText("@order_size")};"|"))`,
      ),
      helper(
        "order_key",
        "And customer",
        shape.hasCustomers
          ? `=ARRAYFORMULA(IFERROR(@order_item&"|"&${plainText("@order_customer")};"||"))`
          : '=ARRAYFORMULA(@order_item&"|")',
      ),
      ...columns.map(({ customer, day }, at) =>
        numbers(
          `reg_${at + 1}`,
          `Regular ${at + 1}`,
          hasRegular
            ? regularPieces(customer === null ? null : `@customer_${at + 1}`, `@weekday_${day}`)
            : "=ARRAYFORMULA(0*LEN(@order_item))",
        ),
      ),
      ...columns.map((_, at) =>
        numbers(
          `e_${at + 1}`,
          `Counts ${at + 1}`,
          `=ARRAYFORMULA((LEN(@order_item)>1)*IF(ISNUMBER(@o_${at + 1});IF(@o_${at + 1}>0;@o_${at + 1};0);@reg_${at + 1}))`,
        ),
      ),
      numbers(
        "order_known",
        "Has a row under To make",
        `=ARRAYFORMULA(MMULT(${known};ROW(@item_key_1:@item_key_${items.length})^0))`,
      ),
      numbers(
        "order_wrong",
        "Pieces that are no whole number",
        `=ARRAYFORMULA(${columns.map((_, at) => isNoCount(`@o_${at + 1}`)).join("+")})`,
      ),
      helper(
        "order_says",
        "What is wrong",
        '=ARRAYFORMULA(IF(LEN(@order_item)<2;IF(@order_wrong>0;"row "&ROW(@order_item)&": enter whole pieces. ";"");IF(@order_known=0;"row "&ROW(@order_item)&": “"&@order_product&IF(LEN(@order_size)=0;"";", "&@order_size)&"” has no row under To make. ";IF(@order_wrong>0;"row "&ROW(@order_item)&": enter whole pieces. ";""))))',
      ),
    ],
  };
}

/** Single figures of the days under their headings. */
export function dayHelpers(shape: ProductionShape): { readonly heads: CellModel[]; readonly figures: CellModel[] } {
  const days = daysOf(shape);
  const n = days.length;
  const kinds = [
    { says: "Day", name: "day_number", formula: (day: number) => `=IF(LEN(@day_${day})=0;0;1*@day_${day})` },
    {
      says: "Its column of regular orders",
      name: "weekday",
      formula: (day: number) => `=IF(LEN(@day_${day})=0;${MONDAY};MOD(@day_${day}-2;7)+${MONDAY})`,
    },
    { says: "Days after the first", name: "day_offset", formula: null },
  ];
  const heads = kinds.flatMap(({ says }, kind) =>
    days.map((day, at): CellModel => ({ at: 1 + kind * n + at, role: "helper", text: `${says} ${day}` })),
  );
  const figures = kinds.flatMap(({ name, formula }, kind) =>
    days.map(
      (day, at): CellModel => ({
        at: 1 + kind * n + at,
        role: "helper",
        name: `${name}_${day}`,
        unit: "plain",
        ...(formula === null ? {} : { formula: formula(day) }),
      }),
    ),
  );
  return { heads, figures };
}

/** The regular pieces of every order's product and size on a weekday, by the order's own customer or by that of a column. */
function regularPieces(customer: string | null, weekday: string): string {
  const key = customer === null ? "@order_key" : `@order_item&"|"&${plainText(customer)}`;
  const isSame = `(${key}=TRANSPOSE(${regular(String(KEYS))}))*(LEN(@order_item)>1)`;
  const pieces = `IF(ISNUMBER(${regular(weekday)});${regular(weekday)};0)`;
  return `=ARRAYFORMULA(MMULT(${isSame};${pieces}))`;
}

/** 1 where something stands in a cell that is no whole number of pieces. */
function isNoCount(cell: string): string {
  const isFilled = `(IFERROR(LEN(${cell});1)>0)`;
  const isWrong = `(IF(ISNUMBER(${cell});(${cell}<0)+(${cell}<>ROUND(${cell};0));1)>0)`;
  return `${isFilled}*${isWrong}`;
}
