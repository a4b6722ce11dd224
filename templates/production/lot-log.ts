// Which lots went into which batches: one step back to the supplier and, by the batch, one step forward to the customers.
import { LOT_HEADS } from "../../shared/protocol/lots.ts";
import type { ColumnModel, SheetModel } from "../../shared/sheet/model.ts";
import { LOTS_NAME } from "../../shared/sheet/workbook-names.ts";

/** As many rows as it begins with; it grows with what is kept. */
const ROWS = 40;

export const lotLog: SheetModel = {
  name: "lot-log",
  title: "Lot log",
  says: "A row for each mix, ingredient and lot that was entered on a weigh-up.",
  widths: [92, 120, 200, 110, 200, 92, 170],
  parts: [],
  frozen: 3,
  defines: { name: LOTS_NAME, from: "lots_table", to: "lots_table" },
  bands: [
    [
      {
        block: "name",
        left: 0,
        lines: [
          { cells: [{ at: 0, role: "title", name: "title", text: "Lot log" }] },
          {
            cells: [
              {
                at: 0,
                role: "remark",
                text: "Filter by a lot for its batches, and the delivery notes by a batch for its customers. For a part you made, its batch is its lot.",
              },
            ],
          },
          {
            cells: [
              {
                at: 0,
                role: "remark",
                text: "What you have to keep, and for how long, is for your local food law to say.",
              },
            ],
          },
        ],
      },
    ],
    [
      {
        table: "lots",
        left: 0,
        rows: ROWS,
        list: true,
        columns: LOT_HEADS.map(
          (head, at): ColumnModel => ({
            name: `lot_column_${at + 1}`,
            head,
            unit: head === "Weight" ? "weight" : "text",
            role: "input",
            onSheet: true,
          }),
        ),
      },
    ],
  ],
  sample: {},
  expects: {},
};
