// Costs and prices: a row for every product and size of the formula list, and what another price or wage would do to each.
import {
  type Block,
  type ColumnModel,
  type Formula,
  type SheetModel,
  type Table,
  type Unit,
  WORKED_OUT,
} from "../shared/sheet/model.ts";
import { computedLine, headingLine, inputLine } from "./blocks/line.ts";
import { LIST_COLUMNS, LIST_ROWS, listColumn, SIZES, sizeColumn } from "./formula-list.ts";

/** A column of the ingredient sheet, wherever it stands there. */
const larder = (head: string) => `INDEX(gramwright_larder;0;MATCH("${head}";INDEX(gramwright_larder;1;0);0))`;
const ofTried = (head: string) =>
  `=IF(LEN(@tried)=0;"";IFERROR(INDEX(${larder(head)};MATCH(@tried;${larder("ingredient")};0);1);""))`;
/** A column of the formula list, by its place. */
const placeOf = (name: string): number => LIST_COLUMNS.findIndex((column) => column.name === name) + 1;
const list = (of: string) => `INDEX(gramwright_formulas;0;${placeOf(listColumn(of))})`;
const sizePlace = (of: string, size: number) => `INDEX(gramwright_formulas;0;${placeOf(sizeColumn(of, size))})`;

/** As many products and sizes as are shown at least; the planner makes room for all there are. */
const ROWS = 40;
const WIDTH = 15;

const remark = (text: string) => ({ cells: [{ at: 0, role: "remark" as const, text }] });
const top: Block = {
  block: "name",
  left: 0,
  lines: [
    { cells: [{ at: 0, role: "title", name: "title", text: "Costs and prices" }] },
    { cells: [{ at: 0, role: "remark", name: "shop", text: "" }] },
    {
      when: "!products",
      ...remark(
        "No formula sheet shows a cost yet. Build an ingredient sheet, then formula sheets, then this sheet again.",
      ),
    },
    {
      when: "products",
      ...remark("Every figure follows its formula sheet, and formulas that you build later come in by themselves."),
    },
    {
      when: "products",
      ...remark(
        "Products below the margin that is wanted stand first. Contribution is what a batch leaves after ingredients and packaging.",
      ),
    },
  ],
};

const trial: Block = {
  block: "trial",
  left: 0,
  when: "products",
  lines: [
    headingLine("What if", WIDTH),
    inputLine("Ingredient or supplier", "tried", "text", {}, 2),
    computedLine("Its pack", "tried_pack", "text", ofTried("pack"), {}, 2),
    computedLine("Price of a pack now", "tried_now", "money", ofTried("price"), {}, 2),
    inputLine("New price of a pack", "tried_price", "money", {}, 2),
    inputLine("or change of all its prices", "tried_change", "short rate", {}, 2),
    inputLine("Change of wages", "labour_change", "short rate", {}, 2),
    {
      cells: [
        {
          at: 0,
          role: "check",
          name: "check",
          unit: "text",
          formula: `=IF(COUNT(@keys_table)>ROWS(@key)-2;"More products than rows: build this sheet again to see "&COUNT(@keys_table)-ROWS(@key)+2&" more. ";"")&IF(ISERROR(INDEX(@changes;1;1));"Still calculating, or enter an ingredient or a supplier that stands in Ingredients. ";"")`,
        },
      ],
    },
  ],
};

/** The row of the list, ten times, and the size of a product. */
const KEY = "INDEX(@key;[place]+1;1)";
const linked = (name: string, head: string, unit: Unit, formula: Formula): ColumnModel => ({
  name,
  head,
  unit,
  role: "linked",
  formula,
});
const whereKey = (value: string) => `=IF(LEN(${KEY})=0;"";${value})`;
const ofList = (of: string) => whereKey(`INDEX(gramwright_formulas;INT(${KEY}/10);${placeOf(listColumn(of))})`);
const sizeOf = (of: string) =>
  `INDEX(gramwright_formulas;INT(${KEY}/10);${placeOf(sizeColumn(of, 1)) - 1}+MOD(${KEY};10))`;
const ofSize = (of: string) => whereKey(sizeOf(of));
const computed = (name: string, head: string, unit: Unit, formula: Formula): ColumnModel => ({
  name,
  head,
  unit,
  role: "computed",
  formula,
});

/** Twenty signs for the dearest of all. */
const bar = (column: string) =>
  `=ARRAYFORMULA(IFERROR(IF(LEN(${column})=0;"";LEFT("${"█".repeat(20)}";ROUND(20*${column}/MAX(@price;@full_cost);0)));""))`;

const products: readonly ColumnModel[] = [
  linked("product", "Product", "text", ofList("title")),
  linked("piece", "Size", "text", ofSize("cost_of")),
  linked("full_cost", "Cost", "unit_cost", ofSize("size_cost")),
  linked("counted", "Cost counts", "text", ofList("cost_words")),
  linked("price", "Price now", "money", whereKey(`IF(${sizeOf("price_number")}>0;${sizeOf("price_number")};"")`)),
  linked("tax", "Tax in it", "short rate", ofList("tax")),
  computed("margin", "Margin now", "rate", marginOf("@full_cost")),
  linked("wanted", "Price for wanted margin", "money", ofSize("price_wanted")),
  linked("sold", "Sold of a batch", "count", ofSize("size_sold")),
  linked("contribution", "Contri- bution", "money", ofSize("size_contribution")),
  computed(
    "new_cost",
    "Cost then",
    "unit_cost",
    '=ARRAYFORMULA(IFERROR(IF(LEN(@full_cost)*LEN(@ingredients)*LEN(@change)*LEN(@labour)*@is_tried=0;"";@full_cost+@ingredients*(@change-1)+@labour*N(@labour_change));""))',
  ),
  computed("new_margin", "Margin then", "rate", marginOf("@new_cost")),
  { ...linked("remark", "Remark", "text", ofList("unpriced")), wraps: true },
  computed("cost_bar", "Cost", "text", bar("@full_cost")),
  computed("price_bar", "Price", "text", bar("@price")),
];

function marginOf(cost: string): string {
  return `=ARRAYFORMULA(IFERROR(IF(LEN(${cost})*LEN(@price)=0;"";IF(@price=0;"";1-${cost}*(1+IF(LEN(@tax)=0;0;@tax))/@price));""))`;
}

const CHANGED = `INDEX(@changes;INT(${KEY}/10);1)`;
const besides: readonly ColumnModel[] = [
  linked(
    "key",
    `${WORKED_OUT}: place`,
    "plain",
    `=IF(COUNT(@keys_table)<[place];"";MOD(SMALL(@keys_table;[place]);10^6))`,
  ),
  linked("ingredients", "Ingredients", "plain", ofSize("size_ingredients")),
  linked("labour", "Labour", "plain", ofSize("size_labour")),
  linked("change", "Times", "plain", whereKey(`IF(ISNUMBER(${CHANGED});${CHANGED};1)`)),
];

/** One call for all formulas, in the order of the list; its heading is none. */
const trials: readonly ColumnModel[] = [
  computed(
    "changes",
    "Times of each",
    "plain",
    `=IF(@is_tried_price=0;"";BAKE_COSTCHANGE(${list("as_parts")};gramwright_larder;@tried;@tried_times))`,
  ),
];

const number = (cells: string) => `IFERROR(${cells}*1;0)`;
const keys: readonly ColumnModel[] = [
  ...SIZES.map((size) => ({
    ...computed(
      `then_${size}`,
      `Cost then, size ${size}`,
      "plain",
      `=ARRAYFORMULA(IFERROR(${sizePlace("size_cost", size)}+${number(sizePlace("size_ingredients", size))}*(IF(ISNUMBER(@changes);@changes;1)-1)+${number(sizePlace("size_labour", size))}*N(@labour_change);0))`,
    ),
    numbers: true as const,
  })),
];

/** Those below the wanted margin first: the others have a million more. */
const places: readonly ColumnModel[] = SIZES.map((size) =>
  computed(
    `keys_${size}`,
    `Place, size ${size}`,
    "plain",
    `=ARRAYFORMULA(IF((IFERROR(LEN(${sizePlace("size_scaled", size)});0)=0)+(ROW(@then_${size})=MIN(ROW(@then_${size})))>0;"";(ROW(@then_${size})-MIN(ROW(@then_${size}))+1)*10+${size}+IFERROR(10^6*(1-(1-@then_${size}*(1+${number(list("tax"))})/${sizePlace("price_number", size)}<${list("margin_part")})*(${list("margin_part")}>0)*(@then_${size}>0));10^6)))`,
  ),
);

const aside = (table: string, left: number, columns: readonly ColumnModel[]): Table => ({
  table,
  left,
  when: "products",
  rows: LIST_ROWS + 1,
  list: true,
  columns,
});

const figures: Block = {
  block: "figures",
  left: WIDTH + 5,
  when: "products",
  lines: [
    { cells: [] },
    computedLine(
      "Tried",
      "is_tried_price",
      "plain",
      "=IF((LEN(@tried)>0)*(COUNT(@tried_price)+COUNT(@tried_change)>0)=1;1;0)",
    ),
    computedLine("Anything tried", "is_tried", "plain", "=IF(@is_tried_price+COUNT(@labour_change)>0;1;0)"),
    computedLine(
      "Times",
      "tried_times",
      "plain",
      "=IF(COUNT(@tried_price)*COUNT(@tried_now)=1;@tried_price/MAX(@tried_now;1/10^9);1+N(@tried_change))",
    ),
  ],
};

const LEFT = WIDTH + 5;
/** With room for so many products and sizes. */
export const withRows = (many: number): SheetModel => ({
  ...priceSheet,
  bands: priceSheet.bands.map((band) =>
    band.map((item) => ("table" in item && item.rows === ROWS ? { ...item, rows: Math.max(ROWS, many) } : item)),
  ),
});

/** Every product of the workbook with its cost and price, and what one ingredient's price does to all of them. */
export const priceSheet: SheetModel = {
  name: "prices",
  title: "Costs and prices",
  says: "Every product and size in one table: cost, price and margin, and what another price or wage does to them.",
  widths: [166, 100, 76, 110, 76, 60, 76, 84, 70, 84, 76, 76, 150, 150, 150, ...Array<number>(24).fill(76)],
  parts: ["products"],
  bands: [
    [top],
    [trial, figures],
    [
      { table: "products", left: 0, when: "products", rows: ROWS, columns: products },
      { table: "besides", left: WIDTH + 1, when: "products", rows: ROWS, columns: besides },
      aside("trials", LEFT, trials),
      aside("costs_then", LEFT + 1, keys),
      aside("keys", LEFT + 1 + SIZES.length, places),
    ],
  ],
  sample: { title: "Costs and prices", shop: "Tern Quay Bakehouse" },
  // Without a formula sheet there is nothing to add up; with some, a test of its own works the figures out.
  expects: { title: "Costs and prices", shop: "Tern Quay Bakehouse" },
};
