// Prices beside the shop's own: a row for each price of a price list, or of one customer, with the tax that is in it.
import {
  type ColumnModel,
  CUSTOMERS_NAME,
  PRICE_LISTS_NAME,
  type SheetModel,
  type Unit,
  WORKED_OUT,
} from "../shared/sheet/model.ts";
import { LIST_COLUMNS, listColumn, sizedColumn, sizeIn } from "./formula-list.ts";
import { plainText, quoted } from "./production/shape.ts";

const placeOf = (name: string): number => LIST_COLUMNS.findIndex((column) => column.name === name) + 1;
const TITLES = `INDEX(gramwright_formulas;0;${placeOf(listColumn("title"))})`;
/** Counts from 1: rows of the formula list, and sizes of a formula. */
const COUNT = `(ROW(${TITLES})-MIN(ROW(${TITLES}))+1)`;

const plain = (text: string): string => `IFERROR(${plainText(text)};"")`;

/** The cell of a column that stands in the formula's own row, wherever rows go. */
const own = (column: string): string => `INDEX(@${column};ROW()-ROW(INDEX(@${column};1;1))+1;1)`;
const here = (column: string): string => plain(own(column));
const listed = (column: string): string => `INDEX(gramwright_formulas;MAX(1;${own("list_row")});${placeOf(column)})`;
const ofSize = (of: string): string => sizeIn(of, listed(sizedColumn(of)), own("list_size"));
/** The one place where something is so; 0 where it is nowhere or twice. */
const theOne = (rows: string): string => `ARRAYFORMULA(IF(SUM(${rows}*1)=1;SUM(${rows}*${COUNT});0))`;

const SAME_NAME = `(${plain(TITLES)}=${here("list_product")})`;
const nameAt = plain(`MID(${listed(sizedColumn("cost_of"))};60*${COUNT}+1;60)`);
const isScaled = `(LEN(TRIM(MID(${listed(sizedColumn("size_scaled"))};24*${COUNT}+1;24)))>0)`;
const SAME_SIZE = `${isScaled}*((${nameAt}=${here("list_size_name")})+(LEN(${here("list_size_name")})=0)>0)`;

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
  role: "linked",
  formula: `=IF(${own("list_size")}=0;"";IFERROR(${formula};""))`,
});

/** Tax is part of a price only where somebody said so. */
const TAX = `N(${own("list_tax")})`;
const PRICE = own("list_price");
const MARGIN_WANTED = `N(${listed(listColumn("margin_part"))})`;
/** Rows for whom, product and size as in this one. */
const ALIKE = ["list_for", "list_product", "list_size_name"]
  .map((column) => `(${plain(`@${column}`)}=${here(column)})`)
  .join("*");

/** As many prices as have room. */
export const PRICES = 60;
const PAGE = 12;

export const priceLists: SheetModel = {
  name: "price-lists",
  title: "Price lists",
  says: "Wholesale prices and customers' own prices beside the shop's, each with its tax, margin and cost.",
  widths: [150, 166, 100, 84, 76, 76, 84, 84, 84, 84, 110, 210, 76, 76],
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
        columns: [typed("pays_customer", "Customer", "text"), typed("pays_by", "Pays by", "text")],
      },
    ],
    [
      {
        table: "prices",
        left: 0,
        when: "listed",
        rows: PRICES,
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
          shown("list_shop", "Shop price", "money", `IF(N(${ofSize("price_number")})>0;${ofSize("price_number")};"")`),
          shown("list_cost", "Cost", "unit_cost", ofSize("size_cost")),
          shown("list_margin", "Margin", "rate", `IF(N(${PRICE})<=0;"";1-${ofSize("size_cost")}*(1+${TAX})/${PRICE})`),
          shown(
            "list_wanted",
            "Price for wanted margin",
            "money",
            `IF(${MARGIN_WANTED}<=0;"";${ofSize("size_cost")}/(1-${MARGIN_WANTED})*(1+${TAX}))`,
          ),
          shown("list_counted", "Cost counts", "text", listed(listColumn("cost_words"))),
          {
            name: "list_remark",
            head: "Remark",
            unit: "text",
            role: "linked",
            formula: `=IF(LEN(${here("list_product")}&${here("list_for")})=0;"";IF(${own("list_row")}=0;"choose a product of the formula list";IF(${own("list_size")}=0;"enter a size of this product";IF(ARRAYFORMULA(SUM(${ALIKE}))>1;"stands twice: delete one row";IF(N(${PRICE})<=0;"enter a price";IF(LEN(${here("list_for")})=0;"enter wholesale, or a customer";""))))))`,
          },
        ],
      },
      {
        table: "worked",
        left: PAGE,
        when: "listed",
        rows: PRICES,
        columns: [
          {
            name: "list_row",
            head: `${WORKED_OUT}: list row`,
            unit: "plain",
            role: "linked",
            formula: `=IF(LEN(${here("list_product")})=0;0;${theOne(SAME_NAME)})`,
          },
          {
            name: "list_size",
            head: "Size in the list",
            unit: "plain",
            role: "linked",
            formula: `=IF(${own("list_row")}=0;0;IFERROR(${theOne(SAME_SIZE)};0))`,
          },
        ],
      },
    ],
  ],
  sample: { title: "Price lists", pays_customer: ["Café Mole"], pays_by: ["wholesale"] },
  // Without a formula list there is nothing to show; with one, a test of its own works the figures out.
  expects: { title: "Price lists" },
};

const column = (name: string, at: number): string => `INDEX(${name};0;${at})`;
const PRICES_THERE = column(PRICE_LISTS_NAME, 4);

/**
 * What a customer pays for a product's size, as a formula without its =: the customer's own price, or that of the list that the
 * customer pays by, or the shop's. Blank where it stands twice, so that nobody is charged by chance.
 */
export function priceFor(
  { customer, product, size }: { readonly customer: string; readonly product: string; readonly size: string },
  shopPrice: string,
): string {
  if (customer.trim() === "") return shopPrice;
  const typedText = (text: string) => plain(quoted(text).slice(1));
  const isHere = (at: number, text: string) => `(${plain(column(PRICE_LISTS_NAME, at))}=${text})`;
  const rows = (whom: string) =>
    [isHere(1, whom), isHere(2, typedText(product)), isHere(3, typedText(size)), `ISNUMBER(${PRICES_THERE})`].join("*");
  const list = `TEXTJOIN("";TRUE();IF(${plain(column(CUSTOMERS_NAME, 1))}=${typedText(customer)};${plain(column(CUSTOMERS_NAME, 2))};""))`;
  const priceOf = (whom: string, otherwise: string) =>
    `IF(SUM(${rows(whom)}*1)>1;"";IF(SUM(${rows(whom)}*1)=1;SUM(${rows(whom)}*IFERROR(1*${PRICES_THERE};0));${otherwise}))`;
  return `ARRAYFORMULA(${priceOf(typedText(customer), `IF(LEN(${list})=0;${shopPrice};${priceOf(list, shopPrice)})`)})`;
}
