/** Cells of a sheet by row and column, both counted from 0. */
export type Place = { readonly row: number; readonly column: number };
export type Zone = { readonly row: number; readonly column: number; readonly rows: number; readonly columns: number };

/** 0 is A, 26 is AA. */
export function columnLetters(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : columnLetters(Math.floor(column / 26) - 1) + last;
}

export function columnNumber(letters: string): number {
  return [...letters].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

export const a1 = ({ row, column }: Place): string => `${columnLetters(column)}${row + 1}`;

export function zoneA1({ row, column, rows, columns }: Zone): string {
  const first = a1({ row, column });
  return rows === 1 && columns === 1 ? first : `${first}:${a1({ row: row + rows - 1, column: column + columns - 1 })}`;
}

/** The zone that an address such as B3 or B3:C9 names. */
export function zoneIn(address: string): Zone {
  const [, left = "", top = "", right = left, bottom = top] = /^([A-Z]+)(\d+)(?::([A-Z]+)(\d+))?$/.exec(address) ?? [];
  const [row, column] = [Number(top) - 1, columnNumber(left)];
  return { row, column, rows: Number(bottom) - row, columns: columnNumber(right) - column + 1 };
}

/** With $ before letters and numbers, as formulas refer to the cells of their own sheet. */
export const absolute = (text: string): string => text.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
