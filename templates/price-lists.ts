// Prices beside the shop's own: a row for each price of a price list, or of one customer, with the tax that is in it.
import { type ColumnModel, type SheetModel, type Unit, WORKED_OUT } from "../shared/sheet/model.ts";
import { CUSTOMERS_NAME, PRICE_LISTS_NAME } from "../shared/sheet/workbook-names.ts";
import { LIST_COLUMNS, listColumn, sizedColumn, sizeIn } from "./formula-list.ts";
import { helper, numbers } from "./formula-sheet/column-kinds.ts";
import { plainText } from "./production/shape.ts";

const placeOf = (name: string): number => LIST_COLUMNS.findIndex((column) => column.name === name) + 1;
const inList = (column: string): string => `INDEX(gramwright_formulas;0;${placeOf(column)})`;
const TITLES = inList(listColumn("title"));
/** Counts from 1: rows of the formula list, and sizes of a formula. */
const COUNT = `(ROW(${TITLES})-MIN(ROW(${TITLES}))+1)`;

const plain = (text: string): string => `IFERROR(${plainText(text)};"")`;

/** Of the product of each row, by the number of its row in the list, so that no name is a pattern; an error where there is none. */
const listed = (column: string): string => `LOOKUP(@list_row;${COUNT};${inList(column)})`;
const ofSize = (of: string): string => sizeIn(of, listed(sizedColumn(of)), "@list_size");
/** For each row, the one place across where something is so; 0 where it is nowhere or twice. */
const theOne = (rows: string): string => `=ARRAYFORMULA(IF(MMULT(${rows};${COUNT}^0)=1;MMULT(${rows};${COUNT});0))`;

const SAME_NAME = `(LEN(${plain("@list_product")})>0)*(${plain("@list_product")}=TRANSPOSE(${plain(TITLES)}))`;
const ACROSS = `TRANSPOSE(${COUNT})`;
const nameAt = plain(`MID(${listed(sizedColumn("cost_of"))};60*${ACROSS}+1;60)`);
const isScaled = `IFERROR(LEN(TRIM(MID(${listed(sizedColumn("size_scaled"))};24*${ACROSS}+1;24)))>0;FALSE())`;
const SIZE = plain("@list_size_name");
const SAME_SIZE = `${isScaled}*((${nameAt}=${SIZE})+(LEN(${SIZE})=0)>0)`;

const typed = (name: string, head: string, unit: Unit, more: Partial<ColumnModel> = {}): ColumnModel => ({
  name,
  head,
  unit,
  role: "input",
  ...more,
});
const shown = (name: string, head: string, unit: Unit, formula: string): ColumnModel => ({
  name,
  head,
  unit,
  role: "computed",
  formula: `=ARRAYFORMULA(IF(@list_size=0;"";IFERROR(${formula};"")))`,
});
const number = (column: string): string => `IF(ISNUMBER(@${column});@${column};0)`;
/** Tax is part of a price only where somebody said so. */
const TAX = number("list_tax");
const PRICE = number("list_price");
const MARGIN_WANTED = `IFERROR(1*${listed(listColumn("margin_part"))};0)`;

/** For each row of a column, how many rows of another hold the same. */
const alike = (column: string, other: string, counted = ""): string =>
  `MMULT((${column}=TRANSPOSE(${other}))*1;(LEN(${other})>0)*1${counted})`;
const remarks = (all: readonly (readonly [when: string, says: string])[]): string =>
  `=ARRAYFORMULA(${all.map(([when, says]) => `IF(${when};"${says}";`).join("")}""${")".repeat(all.length)})`;
const REMARK = remarks([
  [`LEN(${plain("@list_product")}&${plain("@list_for")})=0`, ""],
  ["@list_row=0", "choose a product of the formula list"],
  ["@list_size=0", "enter a size of this product"],
  ["@list_alike>1", "stands twice: delete one row"],
  [`${PRICE}<=0`, "enter a price"],
  [`LEN(${plain("@list_for")})=0`, "enter wholesale, or a customer"],
]);

/** Of a customer who pays by a list. */
const [CUSTOMER, LIST] = [plain("@pays_customer"), plain("@pays_by")];
const PAYS_REMARKS = [
  [`LEN(${CUSTOMER}&${LIST})=0`, ""],
  [`LEN(${CUSTOMER})=0`, "enter a customer"],
  [`LEN(${LIST})=0`, "enter a price list"],
  [`${alike(CUSTOMER, CUSTOMER)}>1`, "stands twice: delete one row"],
  [
    `${alike(LIST, plain("@list_for"), "*ISNUMBER(@list_price)")}=0`,
    "no price of this list stands below: the shop's prices count",
  ],
] as const;

/** As many prices as have room. */
export const PRICES = 60;
const PAGE = 12;

export const priceLists: SheetModel = {
  name: "price-lists",
  title: "Price lists",
  says: "Wholesale prices and customers' own prices beside the shop's, each with its tax, margin and cost.",
  widths: [150, 166, 100, 84, 76, 76, 84, 84, 84, 84, 110, 260, 76, 76, 76, 76],
  parts: ["listed"],
  defines: { name: PRICE_LISTS_NAME, from: "list_for", to: "list_tax" },
  alsoDefines: [{ name: CUSTOMERS_NAME, from: "pays_customer", to: "pays_by" }],
  bands: [
    [
      {
        block: "name",
        left: 0,
        lines: [
          { cells: [{ at: 0, role: "title", name: "title", text: "Price lists" }] },
          ...[
            "The shop's prices stand on the formula sheets. Enter here what others pay: wholesale, or one customer by name.",
            "A customer's own price goes before the price list that the customer pays by, and that before the shop's price.",
            "Tax goes by product and price list. If blank, the price is without tax. Enter 0 % where the law says so.",
          ].map((text) => ({ cells: [{ at: 0, role: "remark" as const, text }] })),
          {
            when: "!listed",
            cells: [
              {
                at: 0,
                role: "remark",
                text: "There is no formula sheet yet. Build formula sheets, then this sheet again.",
              },
            ],
          },
        ],
      },
    ],
    [
      {
        table: "pays",
        left: 0,
        rows: 8,
        spare: 4,
        columns: [
          typed("pays_customer", "Customer", "text"),
          typed("pays_by", "Pays by", "text"),
          {
            name: "pays_remark",
            head: "Remark",
            unit: "text",
            role: "computed",
            formula: [
              { when: "listed", formula: remarks(PAYS_REMARKS) },
              { formula: remarks(PAYS_REMARKS.slice(0, -1)) },
            ],
          },
        ],
      },
    ],
    [
      {
        table: "prices",
        left: 0,
        when: "listed",
        rows: PRICES,
        spare: 20,
        columns: [
          typed("list_for", "Price list or customer", "text"),
          typed("list_product", "Product", "text"),
          typed("list_size_name", "Size", "text"),
          typed("list_price", "Price", "money", { bounds: [0, 1_000_000] }),
          typed("list_tax", "Tax in it", "short rate", { bounds: [0, 1] }),
          {
            name: "list_says",
            head: "Price is",
            unit: "text",
            role: "computed",
            formula: '=ARRAYFORMULA(IF(ISNUMBER(@list_price);IF(ISNUMBER(@list_tax);"incl. tax";"excl. tax");""))',
          },
          shown("list_shop", "Shop price", "money", `IF(${ofSize("price_number")}>0;${ofSize("price_number")};"")`),
          shown("list_cost", "Cost", "unit_cost", ofSize("size_cost")),
          shown("list_margin", "Margin", "rate", `IF(${PRICE}<=0;"";1-${ofSize("size_cost")}*(1+${TAX})/${PRICE})`),
          shown(
            "list_wanted",
            "Price for wanted margin",
            "money",
            `IF(${MARGIN_WANTED}<=0;"";${ofSize("size_cost")}/(1-${MARGIN_WANTED})*(1+${TAX}))`,
          ),
          shown("list_counted", "Cost counts", "text", `${listed(listColumn("cost_words"))}&""`),
          { name: "list_remark", head: "Remark", unit: "text", role: "computed", formula: REMARK },
        ],
      },
      {
        table: "worked",
        left: PAGE,
        when: "listed",
        rows: PRICES,
        spare: 20,
        columns: [
          numbers("list_row", `${WORKED_OUT}: list row`, theOne(SAME_NAME)),
          numbers("list_size", "Size in the list", theOne(SAME_SIZE)),
          helper(
            "list_key",
            "For whom, product and size",
            `=ARRAYFORMULA(${plain("@list_for")}&CHAR(9)&@list_row&CHAR(9)&@list_size)`,
          ),
          numbers("list_alike", "Rows of these", `=ARRAYFORMULA(${alike("@list_key", "@list_key")})`),
        ],
      },
    ],
  ],
  sample: { title: "Price lists", pays_customer: ["Café Mole"], pays_by: ["wholesale"] },
  // Without a formula list there is nothing to show; with one, a test of its own works the figures out.
  expects: { title: "Price lists" },
};
