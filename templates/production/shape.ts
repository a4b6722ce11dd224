// What a production sheet is built for: its days, customers, products and doughs.

/** A column of orders: for a day, and across customers for one of them. */
export type OrderColumn = {
  /** Which of the days, counted from 1. */
  readonly day: number;
  /** Null where a row says the customer. */
  readonly customer: string | null;
};
export type ItemShape = { readonly product: string; readonly size: string };
/** A dough and the items that are made of it, counted from 0 to just before the last. */
export type DoughShape = {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  /** Items whose pieces take some of it as a part, and doughs that it goes into, counted from 0. */
  readonly inItems: readonly number[];
  readonly inDoughs: readonly { readonly dough: number; readonly isRolledIn: boolean }[];
};

export type ProductionShape = {
  readonly isInOunces: boolean;
  readonly days: number;
  readonly columns: readonly OrderColumn[];
  /** Whether the rows have customers. */
  readonly hasCustomers: boolean;
  readonly orderRows: number;
  /** Letters of the longest product, size, customer and note among the orders. */
  readonly longest: {
    readonly product: number;
    readonly size: number;
    readonly customer: number;
    readonly note: number;
  };
  readonly items: readonly ItemShape[];
  readonly doughs: readonly DoughShape[];
  readonly levains: readonly LevainShape[];
  readonly machines: number;
  readonly hasRegular: boolean;
};
/** A levain and the doughs (counted from 0) that take it. */
export type LevainShape = { readonly name: string; readonly doughs: readonly number[] };

/** Columns of the page before the days: product, size, and customer where rows have one. */
export const beforeDays = ({ hasCustomers }: ProductionShape): number => (hasCustomers ? 3 : 2);
/** Columns after the days: spares, stock and tray below, regular orders and notes above. */
const AFTER_DAYS = 3;
/** Levains and machines take so many. */
const LEAST_COLUMNS = { levains: 11, machines: 6 };

export const dayColumns = ({ columns }: ProductionShape): number => columns.length;
export const afterDays = (shape: ProductionShape): number => beforeDays(shape) + dayColumns(shape);
/** With many columns they stand closer, so that the page goes on paper in its own size. */
const MANY_COLUMNS = 6;
export const hasManyDays = ({ days }: ProductionShape): boolean => days >= MANY_COLUMNS;
export const isWide = ({ columns }: ProductionShape): boolean => columns.length >= MANY_COLUMNS;
export const pageColumns = (shape: ProductionShape): number =>
  Math.max(afterDays(shape) + AFTER_DAYS, shape.levains.length > 0 ? LEAST_COLUMNS.levains : LEAST_COLUMNS.machines);
/** Where the columns begin that the sheet only works with. */
export const helpersFrom = (shape: ProductionShape): number => pageColumns(shape);

export const daysOf = ({ days }: ProductionShape): number[] => Array.from({ length: days }, (_, at) => at + 1);

/** Links are named by letters alone. */
export function letters(at: number): string {
  const last = String.fromCharCode(97 + (at % 26));
  return at < 26 ? last : letters(Math.floor(at / 26) - 1) + last;
}
export const linkName = (what: string, at: number): string => `${what}_${letters(at)}`;

const SPACE = "UNICHAR(160)";
/** Names as they are compared: without outer spaces and capitals. */
export const plainText = (text: string): string => `LOWER(TRIM(SUBSTITUTE(${text};${SPACE};" ")))`;

/** A text as a formula: what stands among formulas so goes out with them in one call. */
export const textFormula = (text: string): string => `="${text.replace(/"/g, '"&CHAR(34)&"')}"`;

const SIGNS: Readonly<Record<string, number>> = { '"': 34, "@": 64, "[": 91, "{": 123 };
/** A text that a person typed, as a formula: nothing in it is taken for a name of the model. */
export const quoted = (text: string): string => `="${text.replace(/["@[{]/g, (sign) => `"&CHAR(${SIGNS[sign]})&"`)}"`;
