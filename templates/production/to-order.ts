// What to order: needs of the chosen days, stock in the same row, packs, cost and suppliers.
import type { Block, CellModel, Line, SheetModel } from "../../shared/sheet/model.ts";
import { headingLine } from "../blocks/line.ts";
import { suppliersBlock } from "./suppliers.ts";
import {
  COLUMNS,
  COUNTED_LINE,
  HELPERS,
  label,
  listHelpers,
  shown,
  singles,
  type ToOrderShape,
  typed,
  withCounted,
} from "./to-order-helpers.ts";
import { needTables, wantedLines } from "./to-order-needs.ts";

export function toOrderSheet(shape: ToOrderShape): SheetModel {
  return {
    name: "to-order",
    title: "To order",
    says: "What the planned days need beyond what is in stock, in packs, by supplier.",
    // As wide as paper on its side, Letter, too.
    widths: [140, 105, ...Array<number>(COLUMNS + 21).fill(68)],
    parts: ["larder"],
    frozen: 3,
    foldedFrom: COLUMNS,
    fillsFirst: ["counted_1"],
    bands: [
      [titleBlock(shape), { block: "singles", left: HELPERS, lines: singles() }],
      [datesBlock],
      [listBlock(shape), { block: "list_helpers", left: HELPERS, lines: listHelpers(shape) }],
      ...(shape.suppliers.length === 0 ? [] : [[suppliersBlock(shape)]]),
      [{ block: "wanted", left: HELPERS, lines: wantedLines(shape) }],
      needTables(shape),
    ],
    sample: {},
    expects: {},
  };
}

function titleBlock({ ingredients }: ToOrderShape): Block {
  const n = ingredients.length;
  return {
    block: "name",
    left: 0,
    lines: [
      { height: 30, cells: [{ at: 0, role: "title", name: "title", text: "To order" }] },
      {
        cells: [
          {
            at: 0,
            role: "result",
            name: "result",
            unit: "text",
            formula: `=SUMPRODUCT((@missing_1:@missing_${n}>0)*1)&" ingredients to order"&IF(SUM(@cost_1:@cost_${n})=0;"";" · "&ROUND(SUM(@cost_1:@cost_${n});2)&" in all")`,
          },
        ],
      },
      {
        cells: [
          { at: 0, role: "check", name: "check", unit: "text", formula: "=TRIM(@needs_say&@rows_say&@packs_say)" },
        ],
      },
    ],
  };
}

/** Days from which use and need count. */
const datesBlock: Block = {
  block: "dates",
  left: 0,
  lines: [
    {
      cells: [
        label(0, "Stock counted on"),
        typed(1, "counted_on", "date"),
        label(2, "Order for days from"),
        typed(4, "order_from", "date"),
        { at: 5, role: "remark", text: "If blank, all days count. Days from the count to just before are use." },
      ],
    },
  ],
};

const HEADS = [
  "Ingredient",
  "Supplier",
  "Need",
  "Minimum",
  "Counted",
  "Used since",
  "Delivered",
  "In stock",
  "To order",
  "Pack",
  "Packs",
  "Cost",
];

function listBlock(shape: ToOrderShape): Block {
  const { ingredients, counted } = shape;
  return {
    block: "list",
    left: 0,
    lines: [
      headingLine("Ingredients ({weight})", COLUMNS),
      { cells: HEADS.map((text, at) => label(at, text, at > 1 ? "right" : undefined)) },
      ...withCounted(
        shape,
        ingredients.map((_, index): Line => {
          const at = index + 1;
          const amount = index < ingredients.length - counted ? "graded" : "count";
          const filled = (column: number, helperName: string, unit: CellModel["unit"] = amount) =>
            shown(column, unit, `=IF(@${helperName}_${at}=0;"";@${helperName}_${at})`);
          return {
            cells: [
              { at: 0, role: "ruled", name: `ingredient_${at}`, unit: "text" },
              { ...shown(1, "text", `=@supplier_${at}`, "ruled") },
              filled(2, "need"),
              { ...typed(3, `minimum_typed_${at}`, amount), when: "!larder" },
              { ...filled(3, "minimum"), when: "larder" },
              typed(4, `counted_${at}`, amount),
              filled(5, "used"),
              typed(6, `delivered_${at}`, amount),
              filled(7, "stock"),
              { ...filled(8, "missing"), role: "strong" },
              { ...typed(9, `pack_typed_${at}`, amount), when: "!larder" },
              { ...filled(9, "pack"), when: "larder" },
              shown(10, "count", `=IF((@missing_${at}=0)+(@pack_${at}=0)>0;"";@packs_${at})`, "strong"),
              filled(11, "cost", "money"),
            ],
          };
        }),
        COUNTED_LINE,
      ),
    ],
  };
}
