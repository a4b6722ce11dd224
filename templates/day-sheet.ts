import { type SheetModel, WORKED_OUT } from "../shared/sheet/model.ts";
import { headingLine } from "./blocks/line.ts";
import { CAUTIONS, cautionsOf } from "./blocks/name.ts";
import { doughColumns, doughs, pieces, sheetFigures } from "./day/doughs.ts";
import { levain } from "./day/levain.ts";
import { needsBand, workingBand } from "./day/needs.ts";
import { countedOrderColumns, orders } from "./day/orders.ts";

/** Rows for orders that come in later. */
const SPARE_ORDERS = 24;

/** A day's orders: doughs, mixes, levain, and what to get for them, in one call over all formula sheets. */
export const daySheet: SheetModel = {
  name: "day-sheet",
  title: "Day sheet",
  says: "Orders by day: dough and mixes, the levain to feed and when, and the raw ingredients to get, less what is in stock.",
  // Columns of one width that stand together are one call.
  widths: [84, 166, 84, 84, 84, 139, 139, 139, ...Array<number>(9).fill(84)],
  parts: ["larder"],
  bands: [
    [
      {
        block: "name",
        left: 0,
        lines: [
          { cells: [{ at: 0, role: "title", name: "title", text: "Day sheet" }] },
          {
            cells: [
              { at: 0, role: "label", text: "For" },
              { at: 1, role: "input", name: "day", unit: "date" },
              { at: 2, role: "remark", text: "Type another day, and its orders below are what is made." },
            ],
          },
          {
            cells: [
              {
                at: 0,
                role: "remark",
                text: "Doughs follow their formula sheets. A formula sheet built later comes in with a new day sheet.",
              },
            ],
          },
        ],
      },
    ],
    [
      { table: "pieces", left: 0, rows: 1, spare: 0, columns: pieces },
      { table: "wanted", left: 1, rows: 1, spare: 0, columns: doughColumns },
      { table: "doughs", left: 3, rows: 1, spare: 0, columns: doughs },
      // A list, so that the edge row keeps its height: a height of its own is a call more.
      { table: "sheet_figures", left: 8, rows: 1, spare: 0, list: true, columns: sheetFigures },
    ],
    [
      { table: "orders", left: 0, rows: SPARE_ORDERS, spare: SPARE_ORDERS, columns: orders },
      levain,
      { table: "counting", left: 11, rows: SPARE_ORDERS, spare: SPARE_ORDERS, columns: countedOrderColumns },
    ],
    needsBand,
    [cautionsOf(CAUTIONS.raw, CAUTIONS.guides)],
    [
      {
        block: "working_heading",
        left: 0,
        lines: [headingLine(`${WORKED_OUT}: nothing to type, nothing to print`, 8)],
      },
    ],
    workingBand,
  ],
  sample: {},
  expects: {},
};
