/** Cells of a table that its formulas do not reach, where something may be typed by mistake. */

/** Says that a row stands between the headings and the hidden row or below the table's end, or that something is typed into the hidden row. */
export function outsideSays(
  table: string,
  what: string,
  [first, last]: readonly [string, string],
  counted: string,
  below = `COUNTA(@${table}_below)=0`,
): string {
  return `IF((ROWS(@${table}_table)-ROWS(@${counted})=1)*(${below})*(COUNTA(@${first}_top:@${last}_top)=0)=1;"";"${what} stands above or below its table: move it. ")`;
}
