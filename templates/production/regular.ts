// What customers take every week, by weekday: production sheets bring it in for their days.

import { WEEKDAYS } from "../../shared/production/clock.ts";
import type { SheetModel } from "../../shared/sheet/model.ts";
import { REGULAR_NAME } from "../../shared/sheet/workbook-names.ts";
import { helper } from "../formula-sheet/column-kinds.ts";
import { plainText } from "./shape.ts";

export const regularOrders: SheetModel = {
  name: "regular-orders",
  title: "Regular orders",
  says: "What customers take every week, by weekday: production sheets bring it in.",
  widths: [150, 150, 90, ...Array<number>(7).fill(62), 150],
  parts: [],
  frozen: 4,
  foldedFrom: 10,
  defines: { name: REGULAR_NAME, from: "regular_customer", to: "regular_key" },
  bands: [
    [
      {
        block: "name",
        left: 0,
        lines: [
          { cells: [{ at: 0, role: "title", name: "title", text: "Regular orders" }] },
          {
            cells: [
              {
                at: 0,
                role: "remark",
                text: "Pieces for each weekday. Product and size are named as on the formula sheets. A production sheet takes changes at once.",
              },
            ],
          },
        ],
      },
    ],
    [
      {
        table: "regular",
        left: 0,
        rows: 12,
        spare: 6,
        hidden: true,
        columns: [
          { name: "regular_customer", head: "Customer", unit: "text", role: "input" },
          { name: "regular_product", head: "Product", unit: "text", role: "input" },
          { name: "regular_size", head: "Size", unit: "text", role: "input" },
          ...WEEKDAYS.map((day) => ({
            name: `regular_${day.toLowerCase()}`,
            head: day.slice(0, 3),
            unit: "count" as const,
            role: "input" as const,
            bounds: [0, 100_000] as const,
          })),
        ],
      },
      {
        table: "regular_helpers",
        left: 10,
        rows: 12,
        spare: 6,
        hidden: true,
        columns: [
          helper(
            "regular_key",
            "Product, size and customer",
            `=ARRAYFORMULA(IFERROR(${plainText("@regular_product")}&"|"&${plainText("@regular_size")}&"|"&${plainText("@regular_customer")};"||"))`,
          ),
        ],
      },
    ],
  ],
  sample: {
    title: "Regular orders",
    regular_customer: ["Café Mole", "Harbour inn"],
    regular_product: ["Quay pan loaf", "Quay pan loaf"],
    regular_size: ["large", "large"],
    regular_monday: [10, null],
    regular_saturday: [24, 6],
  },
  expects: { "regular_key/1": "quay pan loaf|large|café mole" },
};
