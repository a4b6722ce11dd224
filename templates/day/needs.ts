import { type ColumnModel, type Table, WORKED_OUT } from "../../shared/sheet/model.ts";
import { computedColumn, input } from "./column.ts";

const TYPED = "SUMIF(@stock_name;@need_name;@stock_pack)";
const noPack = `IF(${TYPED}>0;${TYPED};"")`;
/** What is usable of a pack: packs of the trial cost 1000, so that a unit of weight costs 1000 over the pack, a figure to read. */
const larderPack = `IF(${TYPED}>0;${TYPED};IF(ISERROR(@pack_cost);"";IF(LEN(@pack_cost)=0;"";IF(@pack_cost=0;"";1000/@pack_cost))))`;
const unreadable = 'IF(ISERROR(@pack_cost);"see Ingredients";IF(LEFT(@pack_note;4)="pack";"see Ingredients";""))';

const perNeed = (formula: string) => `=ARRAYFORMULA(IF(LEN(@need_name)=0;"";${formula}))`;
const packs = (without: string) =>
  perNeed(
    `IF(LEN(@need_pack)*LEN(@need_weight)=0;${without};IF(@need_pack=0;"";ROUNDUP(ROUND(@need_weight/@need_pack;9);0)))`,
  );

const needs: readonly ColumnModel[] = [
  {
    ...computedColumn(
      "need_name",
      "To get",
      "text",
      '=IF(SUM(@day_whole)=0;"";BAKE_RAWNEEDS(@wanted_table;@stack_table;@stock_table))',
    ),
    spills: ["need_weight"],
  },
  { name: "need_weight", head: "Weight ({weight})", unit: "weight", role: "computed" },
  computedColumn("need_pack", "In a pack ({weight})", "weight", [
    { when: "larder", formula: perNeed(larderPack) },
    { formula: perNeed(noPack) },
  ]),
  {
    ...computedColumn("need_packs", "Packs to order", "count", [
      { when: "larder", formula: packs(unreadable) },
      { formula: packs('""') },
    ]),
    align: "center",
  },
];

/** A column of the larder, wherever it stands there. */
const larder = (head: string) => `INDEX(gramwright_larder;0;MATCH("${head}";INDEX(gramwright_larder;1;0);0))`;
const copied = (name: string, head: string): ColumnModel =>
  computedColumn(name, "", "text", `=ARRAYFORMULA(IFERROR(IF(LEN(${larder(head)})=0;"";${larder(head)});""))`);

/** The larder with every pack at a price of 1000, in the columns that a pack's weight depends on. */
const trial: readonly ColumnModel[] = [
  copied("pack_ingredient", "ingredient"),
  copied("pack_names", "also called"),
  copied("pack_measures", "measures"),
  computedColumn(
    "pack_price",
    "",
    "text",
    '=ARRAYFORMULA(IF(ROW(@pack_ingredient)=MIN(ROW(@pack_ingredient));"price";IF(LEN(@pack_ingredient)=0;"";1000)))',
  ),
  copied("pack_pack", "pack"),
  copied("pack_usable", "usable"),
];

const ROWS = 16;
/** For ingredients that a formula sheet gets later. */
const SPARE = 8;

/** What to get, beside what is there and what a pack has; what is typed goes before the larder. */
export const needsBand: readonly Table[] = [
  { table: "needs", left: 1, rows: ROWS, spare: SPARE, list: true, columns: needs },
  {
    table: "stock",
    left: 5,
    rows: ROWS,
    spare: SPARE,
    columns: [input("stock_name", "In stock", "text"), input("stock_weight", "there is ({weight})", "weight")],
  },
  {
    table: "packs",
    left: 7,
    rows: ROWS,
    spare: SPARE,
    columns: [input("stock_pack", "a pack has ({weight})", "weight")],
  },
  {
    table: "pack_costs",
    left: 8,
    when: "larder",
    rows: ROWS,
    spare: SPARE,
    columns: [
      {
        ...computedColumn(
          "pack_cost",
          `${WORKED_OUT}: of a pack, ‰`,
          "unit_cost",
          '=IF(ISERROR(INDEX(@need_name;1;1));"";BAKE_COSTS(@need_name;ARRAYFORMULA(IF(LEN(@need_name)=0;"";1));@pack_trial_table;"{weight}"))',
        ),
        spills: ["pack_note"],
      },
      { name: "pack_note", head: "", unit: "text", role: "remark" },
    ],
  },
];

/** As many rows as the ingredients of all formula sheets below each other, and as the larder. */
export const workingBand: readonly Table[] = [
  {
    table: "stack",
    left: 0,
    rows: ROWS,
    spare: 0,
    list: true,
    columns: [
      computedColumn("stack_product", "Product", "text", "=[products]"),
      computedColumn("stack_name", "Ingredient", "text", "=[names]"),
      computedColumn("stack_weight", "Weight ({weight})", "weight", "=[weights]"),
    ],
  },
  {
    table: "rows",
    left: 3,
    rows: ROWS,
    spare: 0,
    columns: [{ name: "stack_row", head: "Row", unit: "plain", role: "remark" }],
  },
  { table: "pack_trial", left: 4, when: "larder", rows: ROWS, spare: 0, columns: trial },
];
