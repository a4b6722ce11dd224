// The parts of a finished product: so many grams or pieces of each, with what is wasted of it.
import type { CellModel, ColumnModel, Formula, Table } from "../../shared/sheet/model.ts";
import {
  asNumber,
  cleanText,
  gradeFormula,
  helper,
  numbers,
  shownColumn,
  showWhere,
  typedColumn,
  typedOver,
} from "../formula-sheet/column-kinds.ts";
import { HELPERS, MESSAGES } from "../formula-sheet/columns.ts";
import { eachPrices, lookedUp } from "../formula-sheet/prices.ts";

const ROWS = 8;
const SPARE = 2;
export const PART_TYPES = ["dough", "filling", "topping", "decoration", "packaging", "other"] as const;

const EACH = "@counts=1";
const isLast = "ROW(@counts)=MAX(ROW(@counts))";
const withTotal = (column: string, total: string, when = EACH): string =>
  `=ARRAYFORMULA(IF(${isLast};${total};IF(${when};${column};"")))`;

export const partsTable: Table = {
  table: "formula",
  left: 0,
  rows: ROWS,
  spare: SPARE,
  hidden: true,
  total: totalCells(),
  columns: [
    typedColumn("ingredient", "Part", "text"),
    typedColumn("kind", "Type", "text", { choices: PART_TYPES }),
    typedColumn("part_each", "Per piece", "amount", { bounds: [0, 100_000] }),
    typedColumn("part_unit", "In", "text", { choices: ["g", "oz", "each"] }),
    typedColumn("part_waste", "Waste", "short rate", { bounds: [0, 0.9] }),
    shownColumn("part_all", "For all ({weight})", "graded", showWhere("@all_shown", "@counts*(@is_counted=0)=1")),
    shownColumn("part_count", "For all (each)", "count", showWhere("@count_shown", "@counts*@is_counted=1")),
    shownColumn("part_price", "Price", "unit_cost", showWhere("@price_used", "@cost_told=1")),
    shownColumn(
      "part_cost",
      "Cost a piece",
      "unit_cost",
      withTotal("@cost_each_part", "SUM(@cost_each_part)", "@cost_told=1"),
    ),
    shownColumn("part_share", "% of cost", "rate", showWhere("@cost_share", "@cost_told=1")),
    {
      name: "note",
      head: "Note",
      unit: "text",
      role: "remark",
      formula: '=ARRAYFORMULA(IF(@cost_missing=1;"no price in Ingredients, and no formula sheet of this name";""))',
    },
  ],
};

function totalCells(): CellModel[] {
  const units: readonly (CellModel["unit"] | undefined)[] = [
    undefined,
    "amount",
    undefined,
    "rate",
    "graded",
    "count",
    "unit_cost",
    "unit_cost",
    "rate",
  ];
  return [
    {
      at: 0,
      role: "total",
      name: "total_label",
      unit: "text",
      formula: '="Total, "&ROUND(@parts_weigh;1)&" {weight} a piece"',
    },
    ...units.map(
      (unit, at): CellModel => ({ at: at + 1, role: "total", ...(unit === undefined ? {} : { unit, align: "right" }) }),
    ),
  ];
}

/** Prices are by the kilogram or the pound; what is counted has its price each. */
const COST: Formula = [
  { when: "oz", formula: "=ARRAYFORMULA(@gross*IF(@is_counted=1;@each_found;@price_found/16))" },
  { formula: "=ARRAYFORMULA(@gross*IF(@is_counted=1;@each_found;@price_found/1000))" },
];

const weights: readonly ColumnModel[] = [
  numbers("typed", "Amount, as a number", asNumber("@part_each")),
  numbers("waste_typed", "Waste, as a number", asNumber("@part_waste")),
  numbers(
    "counts",
    "Row counts",
    "=ARRAYFORMULA(IF(ISNUMBER(@part_each)*(ROW(@part_each)>MIN(ROW(@part_each)))*(ROW(@part_each)<MAX(ROW(@part_each)))*(@typed>=0)=1;1;0))",
  ),
  numbers("is_counted", "Is counted", `=ARRAYFORMULA((LOWER(${cleanText("@part_unit")})="each")*1)`),
  numbers("is_packaging", "Is packaging", `=ARRAYFORMULA((LOWER(${cleanText("@kind")})="packaging")*1)`),
  helper("name_counted", "Name, if it is weighed", showWhere("@ingredient", "@counts*(@is_counted=0)=1")),
  helper("count_name", "Name, if it is counted", showWhere("@ingredient", "@counts*@is_counted=1")),
  helper("kind_counted", "Type, if it is weighed", '=ARRAYFORMULA(IF(@counts*(@is_counted=0)=1;"other";""))'),
  numbers(
    "gross",
    "A piece, with waste",
    "=ARRAYFORMULA(@counts*@typed/(1-IF((@waste_typed<0)+(@waste_typed>9/10)>0;0;@waste_typed)))",
  ),
  numbers("net_weight", "Weight in a piece", "=ARRAYFORMULA(@counts*(@is_counted=0)*@typed)"),
  helper(
    "net_shown",
    "Weight in a piece, or blank",
    '=ARRAYFORMULA(IF(@counts*(@is_counted=0)*(@typed>0)=1;@net_weight;""))',
  ),
  numbers("exact", "Weight of all", "=ARRAYFORMULA(@gross*(@is_counted=0)*@pieces_now)"),
  helper("grams", "Weight, for other sheets", '=ARRAYFORMULA(IF(@counts*(@is_counted=0)*(@pieces_now>0)=1;@exact;""))'),
  helper(
    "part_text",
    "Part, for other sheets",
    '=ARRAYFORMULA(IF(@exact>0;CHAR(9)&IFERROR(TRIM(SUBSTITUTE(@ingredient;CHAR(10);" "));"")&CHAR(9)&ROUND(@exact/MAX(SUM(@exact);1/10^9)*10^8;0);""))',
  ),
  numbers("all_shown", "Weight of all, as shown", gradeFormula("@exact")),
  numbers("count_shown", "Count of all", "=ARRAYFORMULA(ROUNDUP(@gross*@is_counted*@pieces_now*(1-1/10^9);0))"),
];

const money: readonly ColumnModel[] = [
  ...lookedUp,
  ...eachPrices,
  numbers("price_used", "Price that counts", "=ARRAYFORMULA(IF(@is_counted=1;@each_found;@price_found))"),
  numbers("cost_told", "Cost is known", "=ARRAYFORMULA(@counts*(@price_used>0))"),
  numbers("cost_missing", "Price is missing", '=ARRAYFORMULA(@counts*(@price_used<=0)*(@name_plain<>"water"))'),
  numbers("cost_each_part", "Cost a piece, as numbers", COST),
  numbers("cost_share", "Share of the cost", "=ARRAYFORMULA(@cost_each_part/MAX(SUM(@cost_each_part);1/10^9))"),
];

/** What a counted part costs in a sold piece; packaging goes into what is packed alone. */
const counted: readonly ColumnModel[] = [
  helper(
    "count_cost",
    "Counted part with its cost",
    '=ARRAYFORMULA(IF(@cost_each_part*@is_counted>0;IFERROR(TRIM(SUBSTITUTE(@ingredient;CHAR(10);" "));"")&CHAR(9)&ROUND(10^9*@cost_each_part*IF(@is_packaging=1;@packed_part;1)/@sold_part;0);""))',
  ),
];

const wrong: readonly ColumnModel[] = [
  numbers(
    "named",
    "Row has a name",
    "=ARRAYFORMULA((IFERROR(LEN(@ingredient);1)>0)*(ROW(@part_each)<MAX(ROW(@part_each))))",
  ),
  helper(
    "each_says",
    "Amount that is wrong",
    '=ARRAYFORMULA(IF(@counts=1;"";IF(IFERROR(LEN(@part_each);1)=0;IF(@named=1;"enter how much a piece takes. ";"");"row "&ROW(@part_each)&": enter a number from 0. ")))',
  ),
  helper(
    "unit_says",
    "Unit that is wrong",
    `=ARRAYFORMULA(IF((@counts=0)+@is_counted+(LOWER(${cleanText("@part_unit")})="{weight}")>0;"";"row "&ROW(@part_unit)&": choose {weight} or each. "))`,
  ),
  helper(
    "waste_says",
    "Waste that is wrong",
    '=ARRAYFORMULA(IF(IFERROR((LEN(@part_waste)=0)+ISNUMBER(@part_waste)*(@part_waste>=0)*(@part_waste<=9/10);0)>0;"";"row "&ROW(@part_waste)&": waste? "))',
  ),
  numbers("over_left", "Typed over, left", typedOver(["part_all", "part_count", "part_price"])),
  numbers("over_right", "Typed over, right", typedOver(["part_cost", "part_share"])),
  helper(
    "over_says",
    "Typed over, in words",
    '=ARRAYFORMULA(IF(@over_left+@over_right>0;"clear what is typed over a formula in row "&ROW(@counts)&". ";""))',
  ),
  helper("input_says", "What is typed", "=ARRAYFORMULA(@each_says&@unit_says&@waste_says)"),
  helper("row_says", "All of it", "=ARRAYFORMULA(@input_says&@price_says&@over_says)"),
];

export const partsHelpers: readonly Table[] = [
  {
    table: "formula_messages",
    left: MESSAGES.left,
    rows: ROWS,
    spare: SPARE,
    hidden: true,
    columns: [
      helper(
        "message",
        "What is wrong",
        '=ARRAYFORMULA(IF(LEN(@row_says)=0;"";IF(@named=1;IFERROR(@ingredient&" ";"");"")&@row_says))',
      ),
      helper("message_row", "In row", '=ARRAYFORMULA(IF(LEN(@message)=0;"";ROW(@message)))'),
    ],
  },
  {
    table: "formula_helpers",
    left: HELPERS,
    rows: ROWS,
    spare: SPARE,
    hidden: true,
    columns: [...weights, ...money, ...counted, ...wrong],
  },
];
