// Where everything stands on a formula sheet: the columns of its page, and those beside it that it works with.
import type { PlaceModel } from "../../shared/sheet/model.ts";

/** Widths of A to K in pixels; A to J and the beginning of K are in sight beside the sidebar on a small screen. */
export const PAGE_WIDTHS: readonly number[] = [150, 90, 72, 80, 96, 80, 82, 84, 80, 88, 140];

/** The first column beside the page; everything from there on is folded away. */
export const FOLDED_FROM = PAGE_WIDTHS.length;
/** What is wrong in a row, and the number of that row; a second pair for what stands at the right of a block. */
export const MESSAGES = { left: FOLDED_FROM, right: FOLDED_FROM + 2 } as const;
/** Which rows have a place of their own: those of blocks at the left, and at the right. */
export const MARKS = { left: FOLDED_FROM + 4, right: FOLDED_FROM + 5 } as const;
/** Where tables go on beside the page. */
export const HELPERS = FOLDED_FROM + 6;
/** What is wrong, beside all rows, and the two rows of single figures: by these names formulas reach them whole. */
export const ASIDE_PLACES: readonly PlaceModel[] = [
  ...(["left", "right"] as const).flatMap((side) => [
    { name: `${side}_says`, row: 3, column: MESSAGES[side], columns: 1 },
    { name: `${side}_rows`, row: 3, column: MESSAGES[side] + 1, columns: 1 },
  ]),
  { name: "both_rows", row: 3, column: MESSAGES.left + 1, columns: 3 },
  { name: "singles_upper", row: 1, column: HELPERS, rows: 1 },
  { name: "singles_lower", row: 3, column: HELPERS, rows: 1 },
];
/** Blocks that stand at the right of others begin here. */
export const RIGHT = 5;
