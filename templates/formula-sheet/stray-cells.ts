// Cells outside a table that look as if they belonged to it, where something may be typed by mistake.
import { type Single, single } from "./singles.ts";

export type Outside = {
  readonly table: string;
  /** How the cells that say so are called. */
  readonly says: string;
  /** What stands in a row of it, and all of them. */
  readonly what: string;
  readonly many: string;
  /** The first and the last of its typed columns, and one of those beside the page. */
  readonly typed: readonly [string, string];
  readonly counted: string;
  /** The last of its columns that hold a figure; what follows is for free words. */
  readonly figures: string;
  /** From a cell in its first column to one in the rows that follow, at least as far right as its figures. */
  readonly below: readonly [string, string];
  /** Is true where what follows stands where it was built, and nothing is typed between. */
  readonly isClear: string;
  /** The row of what follows, in which something may stand again. */
  readonly ends: string;
};

/** Sees a row between the headings and the hidden row, whatever stands below the table, and what is typed into the hidden row. */
export function outsideSingles({
  table,
  says,
  what,
  many,
  typed,
  counted,
  figures,
  below,
  ends,
  isClear,
}: Outside): Single[] {
  const rows = `@${below[0]}:@${below[1]}`;
  const isBelow = `(ROW(${rows})>MAX(ROW(@${counted})))*(ROW(${rows})<${ends})*(COLUMN(${rows})<=COLUMN(@${figures}_top))`;
  return [
    single(
      `Cells filled beside ${many}`,
      `${says}_stray`,
      `=ARRAYFORMULA(SUM(${isBelow}*(IFERROR(LEN(${rows});1)>0))+COUNTA(@${typed[0]}_top:@${typed[1]}_top))`,
    ),
    single(
      `Rows of ${many}`,
      `${says}_say`,
      `=IF((ROWS(@${table}_table)-ROWS(@${counted})=1)*(@${says}_stray=0)*(${isClear})=1;"";"${what} stands above or below its table: move or clear it. ")`,
    ),
  ];
}
