export type TableCell = { readonly text: string; readonly isNumber: boolean };

const MAX_COLUMN_WIDTH = 34;
const MAX_LINE_WIDTH = 160;

/**
 * A sheet as text: columns in line, numbers to the right, and the last text of a row running on as it does over empty
 * cells. Columns that are empty throughout are left out, and of several empty rows one is kept.
 */
export function textTable(rows: readonly (readonly TableCell[])[]): string {
  const width = rows.reduce((most, row) => Math.max(most, row.length), 0);
  const used = Array.from({ length: width }, (_, column) => column).filter((column) =>
    rows.some((row) => row[column]?.text),
  );
  const lastOf = (row: readonly TableCell[]) => used.filter((column) => row[column]?.text).pop() ?? -1;
  const widths = new Map(
    used.map((column) => {
      const inside = rows.map((row) =>
        lastOf(row) === column && !row[column]?.isNumber ? 0 : length(row[column]?.text ?? ""),
      );
      return [column, Math.min(MAX_COLUMN_WIDTH, Math.max(1, ...inside))];
    }),
  );
  const lines = rows.map((row) => {
    const last = lastOf(row);
    const parts = used
      .filter((column) => column <= last)
      .map((column) => {
        const { text = "", isNumber = false } = row[column] ?? {};
        const clean = text.replace(/\s*\n\s*/g, " ");
        const size = widths.get(column) ?? 1;
        return isNumber ? clean.padStart(size) : column === last ? clean : fitted(clean, size);
      });
    return cut(parts.join("  "), MAX_LINE_WIDTH);
  });
  return lines
    .filter((line, index) => line !== "" || (index > 0 && lines[index - 1] !== ""))
    .join("\n")
    .trimEnd();
}

const length = (text: string) => Array.from(text).length;
const cut = (text: string, size: number) =>
  length(text) <= size
    ? text
    : `${Array.from(text)
        .slice(0, size - 1)
        .join("")}…`;
const fitted = (text: string, size: number) => cut(text, size) + " ".repeat(Math.max(0, size - length(text)));
