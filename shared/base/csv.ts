/** A text that a spreadsheet would calculate when it opens the file gets the apostrophe that marks a text. */
export const csvText = (text: string): string => (/^[=+\-@]./.test(text) ? `'${text}` : text);

/** Rows as the text of a .csv file (RFC 4180): quotes around what holds one, a comma or a line break. */
export const csvOf = (rows: readonly (readonly string[])[]): string =>
  rows
    .map((row) => row.map((cell) => (/[",\r\n]/.test(cell) ? `"${cell.replace(/"/g, '""')}"` : cell)).join(","))
    .join("\r\n");
