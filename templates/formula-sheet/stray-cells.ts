/** Cells outside a table that look as if they belonged to it, where something may be typed by mistake. */
export type Outside = {
  readonly table: string;
  /** What stands in a row of it. */
  readonly what: string;
  /** The first and the last of its typed columns, and one of those beside the page. */
  readonly typed: readonly [string, string];
  readonly counted: string;
  /** Is true where nothing stands between the table and what follows. */
  readonly isClear: string;
};

/** Says that a row stands between the headings and the hidden row, that one stands below the table, or that something is typed into the hidden row. */
export const outsideSays = ({ table, what, typed: [first, last], counted, isClear }: Outside): string =>
  `=IF((ROWS(@${table}_table)-ROWS(@${counted})=1)*(${isClear})*(COUNTA(@${first}_top:@${last}_top)=0)=1;"";"${what} stands above or below its table: move it. ")`;
