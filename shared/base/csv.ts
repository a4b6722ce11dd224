/** Rows as the text of a .csv file (RFC 4180): quotes around what holds one, a comma or a line break. */
export const csvOf = (rows: readonly (readonly string[])[]): string =>
  rows
    .map((row) => row.map((cell) => (/[",\r\n]/.test(cell) ? `"${cell.replace(/"/g, '""')}"` : cell)).join(","))
    .join("\r\n");
