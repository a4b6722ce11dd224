// What each customer gets, as a delivery note: products, sizes, batch codes, prices.
import type { Block, CellModel, Line, SheetModel } from "../../shared/sheet/model.ts";
import { linkName, quoted, textFormula } from "./shape.ts";

export type CustomerShape = {
  readonly heading: string;
  readonly rows: readonly { readonly product: string; readonly size: string; readonly code: string }[];
};
const PAGE = 6;
const HEADS = ["Product", "Size", "Pieces", "Batch", "Price", "Amount"];

export function byCustomerSheet(customers: readonly CustomerShape[]): SheetModel {
  const before = customers.map((_, at) => customers.slice(0, at).reduce((sum, { rows }) => sum + rows.length, 0));
  return {
    name: "by-customer",
    title: "By customer",
    says: "What each customer gets, with batch codes and prices.",
    widths: [230, ...Array<number>(6).fill(120)],
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
      ...customers.map((customer, at) => [noteBlock(customer, at, before[at] ?? 0)]),
    ],
    sample: {},
    expects: {},
  };
}

function noteBlock({ heading, rows }: CustomerShape, index: number, before: number): Block {
  const last = before + rows.length - 1;
  return {
    block: `customer_${index}`,
    left: 0,
    lines: [
      {
        cells: Array.from({ length: PAGE }, (_, at) => ({
          at,
          role: "heading" as const,
          ...(at === 0 ? { unit: "text" as const, formula: quoted(heading) } : {}),
        })),
      },
      {
        cells: HEADS.map((text, at) => ({
          at,
          role: "label",
          unit: "text",
          formula: textFormula(text),
          ...(at === 2 || at > 3 ? { align: "right" } : {}),
        })),
      },
      ...rows.map(({ product, size, code }, row): Line => {
        const at = before + row;
        const price: CellModel = {
          at: 4,
          role: "ruled",
          name: `price_${at}`,
          unit: "money",
          align: "right",
          formula: `=[${linkName("price", at)}]`,
        };
        return {
          cells: [
            { at: 0, role: "ruled", unit: "text", formula: quoted(product) },
            { at: 1, role: "ruled", unit: "text", formula: quoted(size) },
            { at: 2, role: "figure", name: `pieces_${at}`, unit: "count", formula: `=[${linkName("pieces", at)}]` },
            { at: 3, role: "ruled", unit: "text", formula: quoted(code) },
            price,
            {
              at: 5,
              role: "figure",
              name: `amount_${at}`,
              unit: "money",
              formula: `=IF(COUNT(@price_${at})=0;"";@pieces_${at}*@price_${at})`,
            },
          ],
        };
      }),
      {
        cells: [
          { at: 0, role: "total", unit: "text", formula: textFormula("Total") },
          { at: 1, role: "total", text: "" },
          {
            at: 2,
            role: "total",
            name: `total_${index}`,
            unit: "count",
            align: "right",
            formula: `=SUM(@pieces_${before}:@pieces_${last})`,
          },
          { at: 3, role: "total", text: "" },
          { at: 4, role: "total", text: "" },
          {
            at: 5,
            role: "total",
            unit: "money",
            align: "right",
            formula: `=IF(COUNT(@amount_${before}:@amount_${last})=0;"";SUM(@amount_${before}:@amount_${last}))`,
          },
        ],
      },
    ],
  };
}
