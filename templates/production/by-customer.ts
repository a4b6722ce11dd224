// What each customer gets, as a delivery note: products, sizes, batch codes, prices.
import type { Block, CellModel, Line, SheetModel } from "../../shared/sheet/model.ts";
import { EXCLUDED, INCLUDED } from "./price-for.ts";
import { linkName, quoted, textFormula } from "./shape.ts";

export type CustomerShape = {
  readonly heading: string;
  readonly rows: readonly {
    readonly product: string;
    readonly size: string;
    readonly code: string;
    readonly note: string;
  }[];
};
/** Columns that a note has only where some order has something in them. */
export type CustomerColumns = { readonly hasPrices: boolean; readonly hasNotes: boolean };

const headsOf = ({ hasPrices, hasNotes }: CustomerColumns): string[] => [
  "Product",
  "Size",
  "Pieces",
  "Batch",
  ...(hasPrices ? ["Price", "Tax", "Amount"] : []),
  ...(hasNotes ? ["Note"] : []),
];
/** As wide as upright paper, all columns together. */
const WIDTHS: Readonly<Record<string, number>> = {
  Product: 155,
  Size: 65,
  Pieces: 55,
  Price: 55,
  Tax: 45,
  Amount: 70,
  Note: 150,
};
const BATCH = 100;
const LETTER = 7;

/** Products of several parts have several codes. */
const batchWidth = (customers: readonly CustomerShape[]): number =>
  Math.max(BATCH, ...customers.flatMap(({ rows }) => rows.map(({ code }) => LETTER * code.length)));

/** Sizes and notes are as wide as what stands in them, up to what goes on paper. */
const MAX_WIDTHS = { Size: 130, Note: 300 } as const;

function widthOf(head: string, customers: readonly CustomerShape[]): number {
  const usual = WIDTHS[head];
  if (usual === undefined) return batchWidth(customers);
  if (head !== "Size" && head !== "Note") return usual;
  const texts = customers.flatMap(({ rows }) => rows.map(({ size, note }) => (head === "Size" ? size : note)));
  return Math.min(MAX_WIDTHS[head], Math.max(usual, ...texts.map(({ length }) => LETTER * length)));
}

export function byCustomerSheet(customers: readonly CustomerShape[], columns: CustomerColumns): SheetModel {
  const before = customers.map((_, at) => customers.slice(0, at).reduce((sum, { rows }) => sum + rows.length, 0));
  return {
    name: "by-customer",
    title: "By customer",
    says: "What each customer gets, with batch codes and prices.",
    widths: headsOf(columns).map((head) => widthOf(head, customers)),
    parts: [],
    frozen: 3,
    bands: [
      [
        {
          block: "name",
          left: 0,
          lines: [
            { height: 30, cells: [{ at: 0, role: "title", name: "title", text: "By customer" }] },
            {
              cells: [
                {
                  at: 0,
                  role: "result",
                  name: "result",
                  unit: "text",
                  formula: `=SUM(${customers.map((_, at) => `@total_${at}`).join(";")})&" pieces for ${customers.length} ${customers.length === 1 ? "delivery" : "deliveries"}"`,
                },
              ],
            },
            {
              cells: [
                {
                  at: 0,
                  role: "check",
                  name: "check",
                  unit: "text",
                  formula: `=IF(ABS([ordered]-SUM(${customers.map((_, at) => `@total_${at}`).join(";")}))<1/2;"";"Orders came in that are not here: build this sheet again.")`,
                },
              ],
            },
          ],
        },
      ],
      ...customers.map((customer, at) => [noteBlock(customer, at, before[at] ?? 0, columns)]),
    ],
    sample: {},
    expects: {},
  };
}

function noteBlock({ heading, rows }: CustomerShape, index: number, before: number, columns: CustomerColumns): Block {
  const { hasPrices, hasNotes } = columns;
  const heads = headsOf(columns);
  const noteAt = hasPrices ? 7 : 4;
  return {
    block: `customer_${index}`,
    left: 0,
    lines: [
      {
        cells: heads.map((_, at) => ({
          at,
          role: "heading" as const,
          ...(at === 0 ? { unit: "text" as const, formula: quoted(heading) } : {}),
        })),
      },
      {
        cells: heads.map((text, at) => ({
          at,
          role: "label",
          unit: "text",
          formula: textFormula(text),
          ...(["Pieces", "Price", "Amount"].includes(text) ? { align: "right" } : {}),
          ...(text === "Batch" ? { align: "center" } : {}),
        })),
      },
      ...rows.map(({ product, size, code, note }, row): Line => {
        const at = before + row;
        return {
          cells: [
            { at: 0, role: "ruled", unit: "text", formula: quoted(product) },
            { at: 1, role: "ruled", unit: "text", formula: quoted(size) },
            { at: 2, role: "figure", name: `pieces_${at}`, unit: "count", formula: `=[${linkName("pieces", at)}]` },
            { at: 3, role: "ruled", unit: "text", align: "center", formula: quoted(code) },
            ...(hasPrices ? priceCells(at) : []),
            ...(hasNotes ? [{ at: noteAt, role: "ruled", unit: "text", formula: quoted(note) } as const] : []),
          ],
        };
      }),
      totalLine(index, before, before + rows.length - 1, columns),
    ],
  };
}

const priceCells = (at: number): CellModel[] => [
  {
    at: 4,
    role: "ruled",
    name: `price_${at}`,
    unit: "money",
    align: "right",
    formula: `=[${linkName("price", at)}]`,
  },
  {
    at: 5,
    role: "ruled",
    name: `tax_${at}`,
    unit: "text",
    formula: `=IF(COUNT(@price_${at})=0;"";[${linkName("tax", at)}])`,
  },
  {
    at: 6,
    role: "figure",
    name: `amount_${at}`,
    unit: "money",
    formula: `=IF(COUNT(@price_${at})=0;"";@pieces_${at}*@price_${at})`,
  },
];

/** Amounts with tax and without it are added up only where that is said. */
const taxWords = (cells: string): string =>
  `=IF(COUNTIF(${cells};"${INCLUDED}")*COUNTIF(${cells};"${EXCLUDED}")>0;"both";IF(COUNTIF(${cells};"${INCLUDED}")>0;"${INCLUDED}";IF(COUNTIF(${cells};"${EXCLUDED}")>0;"${EXCLUDED}";"")))`;

function totalLine(index: number, first: number, last: number, columns: CustomerColumns): Line {
  return {
    cells: headsOf(columns).map((head, at): CellModel => {
      if (head === "Product") return { at, role: "total", unit: "text", formula: textFormula("Total") };
      if (head === "Pieces")
        return {
          at,
          role: "total",
          name: `total_${index}`,
          unit: "count",
          align: "right",
          formula: `=SUM(@pieces_${first}:@pieces_${last})`,
        };
      if (head === "Tax") return { at, role: "total", unit: "text", formula: taxWords(`@tax_${first}:@tax_${last}`) };
      if (head === "Amount")
        return {
          at,
          role: "total",
          unit: "money",
          align: "right",
          formula: `=IF(COUNT(@amount_${first}:@amount_${last})=0;"";SUM(@amount_${first}:@amount_${last}))`,
        };
      return { at, role: "total", text: "" };
    }),
  };
}
