// How wide the columns of a production sheet are: usual names are not cut, and the page goes on paper in about its own size.
import { afterDays, beforeDays, isWide, type ProductionShape, pageColumns } from "./shape.ts";

/** A date and a weight of mixes have room in it; many columns stand closer. */
const USUAL = { few: 72, many: 66 };
/** Products, and regular orders: with seven days, size and customer as wide as A4 or, in ounces, Letter on its side. */
const NAMES = { few: 140, metric: 129, ounces: 101 };
/** Longer names make the page smaller on paper, and these are cut. */
const MAX_NAME = 150;
const MAX_CUSTOMER_ACROSS = 90;
const MAX_NOTE = 330;

/** Pixels of a letter, and what a cell has beside its text. */
const LETTER = 6.2;
const PADDING = 8;
const roomFor = (letters: number): number => Math.ceil(LETTER * letters + PADDING);

/** A note has beside it, blank, the columns of stock and trays below. */
export const noteColumns = ({ hasRegular }: ProductionShape): number => (hasRegular ? 2 : 3);

/** The columns of the page, and what those have that nothing else is said of. */
export function pageWidths(shape: ProductionShape): { readonly page: readonly number[]; readonly usual: number } {
  const { columns, longest, hasCustomers, hasRegular } = shape;
  const isAcross = columns.some(({ customer }) => customer !== null);
  const few = USUAL[isWide(shape) ? "many" : "few"];
  const across = Math.max(0, ...columns.map(({ customer }) => customer?.length ?? 0));
  const usual = Math.max(few, Math.min(MAX_CUSTOMER_ACROSS, isAcross ? roomFor(across) : 0));
  const page = Array<number>(pageColumns(shape)).fill(usual);
  const names = isWide(shape) ? NAMES[shape.isInOunces ? "ounces" : "metric"] : NAMES.few;
  const beside = Math.max(roomFor(longest.size), hasCustomers ? roomFor(longest.customer) : 0);
  const room = (noteColumns(shape) - 1) * usual;
  const note = Math.min(MAX_NOTE, roomFor(longest.note)) - room;
  const isNoteLong = note > usual;
  page[0] = names;
  // A width for product, size and customer alike is a call of the service less, which a long note or regular orders take.
  if (beside > few && (isNoteLong || hasRegular))
    page.fill(Math.min(MAX_NAME, Math.max(roomFor(longest.product), beside)), 0, beforeDays(shape));
  else if (beside > few) page.fill(Math.min(MAX_NAME, beside), 1, beforeDays(shape));
  // Regular orders stand in one cell, a figure for each column.
  if (hasRegular) page[afterDays(shape)] = Math.max(usual, Math.min(names, 26 * columns.length));
  if (isNoteLong) page[afterDays(shape) + (hasRegular ? 1 : 0)] = note;
  return { page, usual };
}
