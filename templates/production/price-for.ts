// What a customer pays, out of the price lists.
import { CUSTOMERS_NAME, PRICE_LISTS_NAME } from "../../shared/sheet/workbook-names.ts";
import { plainText, quoted } from "./shape.ts";

const plain = (text: string): string => `IFERROR(${plainText(text)};"")`;
const column = (name: string, at: number): string => `INDEX(${name};0;${at})`;
const PRICES_THERE = column(PRICE_LISTS_NAME, 4);

/** Who pays for what; a product of one size is meant by its name alone too. */
export type Sale = {
  readonly customer: string;
  readonly product: string;
  readonly size: string;
  readonly isOnlySize: boolean;
};

/**
 * What a customer pays for a product's size, as a formula without its =: the customer's own price, or that of the list that the
 * customer pays by, or the shop's. Blank where either stands twice, so that nobody is charged by chance.
 */
export const priceFor = (sale: Sale, shopPrice: string): string =>
  chosen(sale, shopPrice, (rows) => `SUM(${rows}*IFERROR(1*${PRICES_THERE};0))`);

const TAX_THERE = column(PRICE_LISTS_NAME, 5);
export const INCLUDED = "incl.";
export const EXCLUDED = "excl.";
/** Whether tax is in that price: it is only where somebody said how much. */
export const taxFor = (sale: Sale, shopTax: string): string =>
  chosen(sale, shopTax, (rows) => `IF(SUM(${rows}*ISNUMBER(${TAX_THERE}))=1;"${INCLUDED}";"${EXCLUDED}")`);

function chosen(sale: Sale, ofShop: string, ofRow: (rows: string) => string): string {
  const { customer, product, size, isOnlySize } = sale;
  if (customer.trim() === "") return ofShop;
  const typedText = (text: string) => plain(quoted(text).slice(1));
  const isHere = (at: number, text: string) => `(${plain(column(PRICE_LISTS_NAME, at))}=${text})`;
  const sizeThere = plain(column(PRICE_LISTS_NAME, 3));
  const isSize = isOnlySize
    ? `((${sizeThere}=${typedText(size)})+(LEN(${sizeThere})=0)>0)`
    : isHere(3, typedText(size));
  const rows = (whom: string) =>
    [isHere(1, whom), isHere(2, typedText(product)), isSize, `ISNUMBER(${PRICES_THERE})`].join("*");
  const isPayer = `(${plain(column(CUSTOMERS_NAME, 1))}=${typedText(customer)})`;
  const list = `TEXTJOIN("";TRUE();IF(${isPayer};${plain(column(CUSTOMERS_NAME, 2))};""))`;
  const of = (whom: string, otherwise: string) =>
    `IF(SUM(${rows(whom)}*1)>1;"";IF(SUM(${rows(whom)}*1)=1;${ofRow(rows(whom))};${otherwise}))`;
  const byList = `IF(SUM(${isPayer}*1)>1;"";IF(LEN(${list})=0;${ofShop};${of(list, ofShop)}))`;
  return `ARRAYFORMULA(${of(typedText(customer), byList)})`;
}
