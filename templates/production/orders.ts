// Orders as a grid: products and sizes down, days or customers across; regular orders come in where nothing is typed.
import type { Block, CellModel, ColumnModel, Line, Table } from "../../shared/sheet/model.ts";
import { SPARE } from "./orders-helpers.ts";
import { beforeDays, type ProductionShape, pageColumns, quoted, textFormula } from "./shape.ts";
import { noteColumns } from "./widths.ts";

const WEEKDAYS = "MonTueWedThuFriSatSun";
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
      { ...input("order_note", NOTE_HEAD), wide: noteColumns(shape) },
    ],
  };
}

/** What the baker or the driver is told of an order. */
export const NOTE_HEAD = "Note";

/** What comes regularly, column by column, as it is shown beside an order. */
function shownRegular(cells: readonly string[]): string {
  const pieces = cells.map((cell) => `IF(${cell}=0;"–";${cell})`).join('&" · "&');
  return `=ARRAYFORMULA(IF(${cells.join("+")}=0;"";${pieces}))`;
}
