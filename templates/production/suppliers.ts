// The blocks by supplier.
import type { Block, CellModel, Line } from "../../shared/sheet/model.ts";
import { headingLine } from "../blocks/line.ts";
import { COLUMNS, label, shown, type ToOrderShape, typed, WEEK } from "./to-order-helpers.ts";

/** When each supplier comes next for the days from which is ordered, and until when to order. */
export function suppliersBlock({ suppliers, ingredients }: ToOrderShape): Block {
  const n = ingredients.length;
  return {
    block: "suppliers",
    left: 0,
    lines: [
      headingLine("Suppliers", COLUMNS),
      {
        cells: [
          label(0, "Delivers on (enter x)"),
          label(1, "Costs", "right"),
          ...WEEK.map((day, at) => label(2 + at, day, "right")),
          label(9, "Days before", "right"),
          label(10, "By", "right"),
          label(11, "Order by", "right"),
        ],
      },
      ...suppliers.map((_, index): Line => {
        const at = index + 1;
        const delivered = `@on_${at}_1:@on_${at}_7`;
        // The last day of delivery before the first day that is ordered for: what is ready on a day is mixed before it.
        const early = `MIN(ARRAYFORMULA(IF(LEN(${delivered})>0;1+MOD(MOD(@first_day-3;7)-COLUMN(${delivered})+COLUMN(@on_${at}_1);7);99)))`;
        return {
          cells: [
            { at: 0, role: "ruled", name: `supplier_name_${at}`, unit: "text" },
            shown(
              1,
              "money",
              `=SUMPRODUCT((@supplier_1:@supplier_${n}=@supplier_name_${at})*@cost_1:@cost_${n})`,
              "ruled",
            ),
            ...WEEK.map(
              (_, day): CellModel => ({
                at: 2 + day,
                role: "input",
                name: `on_${at}_${day + 1}`,
                unit: "text",
                align: "center",
              }),
            ),
            typed(9, `before_${at}`, "count", 30),
            typed(10, `by_${at}`, "time"),
            shown(11, "date", `=IF((@first_day=0)+(${early}=99)>0;"";@first_day-${early}-N(@before_${at}))`, "strong"),
          ],
        };
      }),
      {
        cells: [
          { at: 0, role: "remark", text: "Order by: the day for the last delivery before the first of these days." },
          {
            at: 13,
            role: "helper",
            name: "first_day",
            unit: "plain",
            formula: "=IF(N(@order_from)>0;@order_from;[first_day])",
          },
        ],
      },
    ],
  };
}
