// Orders as a grid: products and sizes down, days or customers across; regular orders come in where nothing is typed.
import type { Block, CellModel, ColumnModel, Line, Table } from "../../shared/sheet/model.ts";
import { helper, numbers } from "../formula-sheet/column-kinds.ts";
import {
  beforeDays,
  daysOf,
  helpersFrom,
  type ProductionShape,
  pageColumns,
  plainText,
  quoted,
  textFormula,
} from "./shape.ts";

const WEEKDAYS = "MonTueWedThuFriSatSun";
/** No blank rows that would be printed: for another order a row is inserted. */
const SPARE = 0;

/** The days over their columns; the first is typed, the others follow it. */
export function daysBlock(shape: ProductionShape): Block {
  const { columns, hasRegular } = shape;
  const head = (at: number, formula: string): CellModel => ({
    at,
    role: "label",
    unit: "text",
    align: "right",
    formula,
  });
  const before = beforeDays(shape);
  const hint = hasRegular
    ? "A blank takes the regular order; 0 cancels it."
    : "Pieces, under the names of the formula sheets";
  const lines: Line[] = [
    // As formulas the words go out in one call with what stands around them.
    { cells: ruledAcross(pageColumns(shape), textFormula("Orders")) },
    {
      cells: [
        { at: 0, role: "remark", unit: "text", formula: textFormula(hint) },
        ...columns.map(({ day, customer }, at) =>
          customer === null
            ? head(before + at, `=IF(LEN(@day_${day})=0;"";MID("${WEEKDAYS}";3*MOD(@day_${day}-2;7)+1;3))`)
            : customer === ""
              ? // A formula, also of no text, would cut the words before it.
                ({ at: before + at, role: "label", name: `customer_${at + 1}`, unit: "text" } as const)
              : { ...head(before + at, quoted(customer)), name: `customer_${at + 1}` },
        ),
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Ready on" },
        ...columns.map(
          ({ day }, at): CellModel =>
            firstOf(columns, day) === at
              ? day === 1
                ? { at: before + at, role: "input", name: "day_1", unit: "date", align: "right" }
                : dayCell(before + at, `day_${day}`, `=IF(LEN(@day_1)=0;"";@day_1+@day_offset_${day})`)
              : dayCell(before + at, undefined, `=IF(LEN(@day_${day})=0;"";@day_${day})`),
        ),
      ],
    },
    {
      cells: [
        {
          at: 0,
          role: "remark",
          unit: "text",
          formula: textFormula("For another order, insert a row above the last one of these."),
        },
      ],
    },
  ];
  return { block: "days", left: 0, lines };
}

const ruledAcross = (columns: number, formula: string): CellModel[] =>
  Array.from({ length: columns }, (_, at) => ({ at, role: "heading", ...(at === 0 ? { unit: "text", formula } : {}) }));
const firstOf = (columns: ProductionShape["columns"], day: number): number =>
  columns.findIndex((column) => column.day === day);
const dayCell = (at: number, name: string | undefined, formula: string): CellModel => ({
  at,
  role: "label",
  ...(name === undefined ? {} : { name }),
  unit: "date",
  align: "right",
  formula,
});

export function ordersTable(shape: ProductionShape): Table {
  const { columns, hasCustomers, orderRows, hasRegular } = shape;
  const input = (name: string, head: string): ColumnModel => ({ name, head, unit: "text", role: "input" });
  return {
    table: "orders",
    left: 0,
    rows: orderRows,
    spare: SPARE,
    hidden: true,
    columns: [
      input("order_product", "Product"),
      input("order_size", "Size"),
      ...(hasCustomers ? [input("order_customer", "Customer")] : []),
      ...columns.map(
        (_, at): ColumnModel => ({
          name: `o_${at + 1}`,
          head: at === 0 ? "Pieces" : "",
          unit: "count",
          role: "input",
          bounds: [0, 100_000],
        }),
      ),
      ...(hasRegular
        ? [
            {
              name: "regular_shown",
              head: "Regular",
              unit: "text",
              role: "remark",
              formula: shownRegular(columns.map((_, at) => `@reg_${at + 1}`)),
            } as const,
          ]
        : []),
      { ...input("order_note", NOTE_HEAD), wide: hasRegular ? 2 : 3 },
    ],
  };
}

/** What the baker or the driver is told of an order. */
export const NOTE_HEAD = "Note";

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

/** What comes regularly, column by column, as it is shown beside an order. */
function shownRegular(cells: readonly string[]): string {
  const pieces = cells.map((cell) => `IF(${cell}=0;"–";${cell})`).join('&" · "&');
  return `=ARRAYFORMULA(IF(${cells.join("+")}=0;"";${pieces}))`;
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
