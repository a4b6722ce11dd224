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
import { LIST_ROWS, listColumn, sizedColumn, sizeIn } from "./formula-list.ts";
import { list, placeOf, plain, texts, trialBlock, trialFigures, WIDTH } from "./price-trial.ts";

const sized = (of: string, size: number) => sizeIn(of, texts(of), String(size));

/** As many products and sizes as are shown at least, and sizes of one formula; the planner makes room for all there are. */
const ROWS = 40;
const SIZES = 6;

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

/** The row of the list, a hundred times, and the size of a product. */
const KEY = "INDEX(@key;[place]+1;1)";
const linked = (name: string, head: string, unit: Unit, formula: Formula): ColumnModel => ({
  name,
  head,
  unit,
  role: "linked",
  formula,
});
const whereKey = (value: string) => `=IF(LEN(${KEY})=0;"";${value})`;
const ofList = (of: string) => whereKey(`INDEX(gramwright_formulas;INT(${KEY}/100);${placeOf(listColumn(of))})`);
const sizeOf = (of: string) =>
  sizeIn(of, `INDEX(gramwright_formulas;INT(${KEY}/100);${placeOf(sizedColumn(of))})`, `MOD(${KEY};100)`);
const ofSize = (of: string) => whereKey(sizeOf(of));
/** The share of what was baked that was sold, by the bake log; it knows products, not their sizes. */
const LOGGED = "INDEX(@logged;[place]+1;1)";
const SOLD_BY_LOG = `${sizeOf("pieces_now")}*${LOGGED}`;
const OWN_TAX = "INDEX(@tax;[place]+1;1)";

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
  linked("price", "Price now", "money", whereKey(`IF(N(${sizeOf("price_number")})>0;${sizeOf("price_number")};"")`)),
  linked("tax", "Tax in it", "short rate", ofList("tax")),
  computed("margin", "Margin now", "rate", marginOf("@full_cost")),
  linked("wanted", "Price for wanted margin", "money", ofSize("price_wanted")),
  linked("sold", "Sold of a batch", "count", [
    { when: "logged", formula: whereKey(`IF(LEN(${LOGGED})=0;${sizeOf("size_sold")};${SOLD_BY_LOG})`) },
    { formula: ofSize("size_sold") },
  ]),
  linked("sold_by", "Sold by", "text", [
    { when: "logged", formula: whereKey(`IF(LEN(${LOGGED})=0;"formula sheet";"bake log")`) },
    { formula: whereKey('"formula sheet"') },
  ]),
  linked("contribution", "Contri- bution", "money", [
    {
      when: "logged",
      formula: whereKey(
        `IFERROR(${sizeOf("size_contribution")}+IF(LEN(${LOGGED})=0;0;(${SOLD_BY_LOG}-${sizeOf("size_sold")})*${sizeOf("price_number")}/(1+N(${OWN_TAX})));"")`,
      ),
    },
    { formula: ofSize("size_contribution") },
  ]),
  computed(
    "new_cost",
    "Cost then",
    "unit_cost",
    '=ARRAYFORMULA(IFERROR(IF(LEN(@full_cost)*LEN(@ingredients)*LEN(@change)*LEN(@labour)*@is_tried=0;"";@full_cost+@ingredients*(@change-1)+@labour*N(@labour_change));""))',
  ),
  computed("new_margin", "New margin", "rate", marginOf("@new_cost")),
  { ...linked("remark", "Remark", "text", ofList("unpriced")), wraps: true },
  computed("cost_bar", "Cost", "text", bar("@full_cost")),
  computed("price_bar", "Price", "text", bar("@price")),
];

function marginOf(cost: string): string {
  return `=ARRAYFORMULA(IFERROR(IF(LEN(${cost})*LEN(@price)=0;"";IF(@price=0;"";1-${cost}*(1+IF(LEN(@tax)=0;0;@tax))/@price));""))`;
}

const ofLog = (column: number) => `INDEX(gramwright_bakelog;0;${column})`;
/** Rows of the log that count what was baked and what was sold. */
const COUNTED = `(${plain(ofLog(1))}=${plain("INDEX(@product;[place]+1;1)")})*ISNUMBER(${ofLog(6)})*ISNUMBER(${ofLog(7)})`;
const logSum = (column: number) => `SUM(${COUNTED}*IFERROR(1*${ofLog(column)};0))`;

const CHANGED = `INDEX(@changes;INT(${KEY}/100);1)`;
const besides: readonly ColumnModel[] = [
  linked(
    "key",
    `${WORKED_OUT}: place`,
    "plain",
    `=IF(COUNT(@keys_table)<[place];"";MOD(SMALL(@keys_table;[place]);10^6))`,
  ),
  linked("ingredients", "Ingredients", "plain", ofSize("size_ingredients")),
  linked("labour", "Labour", "plain", ofSize("size_labour")),
  linked("logged", "Sold of what was baked", "plain", [
    { when: "logged", formula: whereKey(`IFERROR(ARRAYFORMULA(MIN(1;${logSum(7)}/${logSum(6)}));"")`) },
    { formula: '=""' },
  ]),
  linked("change", "Times", "plain", whereKey(`IF(ISNUMBER(${CHANGED});${CHANGED};1)`)),
];

const LEFT = WIDTH + 1 + besides.length;

/** One call for all formulas, in the order of the list; its heading is none. */
const trials: readonly ColumnModel[] = [
  computed(
    "changes",
    "Times of each",
    "plain",
    `=IF(@is_tried_price=0;"";BAKE_COSTCHANGE(${list("as_parts")};gramwright_larder;@tried;@tried_times;IF(LEN(@country)=0;"US";@country);${list("as_counted")}))`,
  ),
];

const number = (cells: string) => `IFERROR(${cells}*1;0)`;
const thenColumn = (size: number): ColumnModel => ({
  ...computed(
    `then_${size}`,
    `Cost then, size ${size}`,
    "plain",
    `=ARRAYFORMULA(IFERROR(${sized("size_cost", size)}+${number(sized("size_ingredients", size))}*(IF(ISNUMBER(@changes);@changes;1)-1)+${number(sized("size_labour", size))}*N(@labour_change);0))`,
  ),
  numbers: true,
});

/** Those below the wanted margin first: the others have a million more. */
const isBelow = (size: number) =>
  `(1-@then_${size}*(1+${number(list("tax"))})/${sized("price_number", size)}<${list("margin_part")})*(${list("margin_part")}>0)*(@then_${size}>0)`;
const placeColumn = (size: number): ColumnModel => {
  const row = `ROW(@then_${size})-MIN(ROW(@then_${size}))`;
  return computed(
    `keys_${size}`,
    `Place, size ${size}`,
    "plain",
    `=ARRAYFORMULA(IF((IFERROR(LEN(${sized("size_scaled", size)});0)=0)+(${row}=0)>0;"";(${row}+1)*100+${size}+IFERROR(10^6*(1-${isBelow(size)});10^6)))`,
  );
};
const upTo = (sizes: number): readonly number[] => Array.from({ length: sizes }, (_, at) => at + 1);

const aside = (table: string, left: number, columns: readonly ColumnModel[]): Table => ({
  table,
  left,
  when: "products",
  rows: LIST_ROWS + 1,
  list: true,
  columns,
});

/** With room for so many products and sizes, and so many sizes of one formula. */
export function priceSheetFor(many: number, sizes: number): SheetModel {
  const [rows, columns] = [Math.max(ROWS, many), upTo(Math.max(SIZES, sizes))];
  return {
    name: "prices",
    title: "Costs and prices",
    says: "Every product and size in one table: cost, price and margin, and what another price or wage does to them.",
    widths: [
      166,
      100,
      130,
      124,
      76,
      60,
      76,
      84,
      70,
      84,
      84,
      76,
      76,
      150,
      150,
      150,
      ...Array<number>(16 + 2 * columns.length).fill(76),
    ],
    parts: ["products", "logged"],
    bands: [
      [top],
      [trialBlock(columns.length), trialFigures(LEFT)],
      [
        { table: "products", left: 0, when: "products", rows, columns: products },
        { table: "besides", left: WIDTH + 1, when: "products", rows, columns: besides },
        aside("trials", LEFT, trials),
        aside("costs_then", LEFT + 1, columns.map(thenColumn)),
        aside("keys", LEFT + 1 + columns.length, columns.map(placeColumn)),
      ],
    ],
    sample: { title: "Costs and prices", shop: "Tern Quay Bakehouse" },
    // Without a formula sheet there is nothing to add up; with some, a test of its own works the figures out.
    expects: { title: "Costs and prices", shop: "Tern Quay Bakehouse" },
  };
}

/** Every product of the workbook with its cost and price, and what one ingredient's price does to all of them. */
export const priceSheet: SheetModel = priceSheetFor(ROWS, SIZES);
