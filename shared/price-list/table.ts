// A price list as a table: copied cells, or the text of a .csv file.

export type Cell = string | number;
export type Table = readonly (readonly Cell[])[];

const MARKS = ["\t", ";", ","] as const;

/** What marks a text that begins like a formula is none of it. */
const withoutMark = (cell: string): string => cell.replace(/^'(?=[=+\-@])/, "");

/** Cells of a text: quotation marks hold what parts cells elsewhere, and two of them are one (RFC 4180). */
export function tableOf(text: string): Table {
  const plain = text.replace(/^\ufeff/, "");
  const mark = markOf(plain);
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = "";
  let isQuoted = false;
  const endCell = () => {
    row.push(withoutMark(cell.replace(/\u00a0/g, " ").trim()));
    cell = "";
  };
  for (let at = 0; at < plain.length; at++) {
    const sign = plain.charAt(at);
    if (isQuoted) {
      if (sign !== '"') cell += sign;
      else if (plain.charAt(at + 1) === '"') {
        cell += '"';
        at++;
      } else isQuoted = false;
    } else if (sign === '"' && cell.trim() === "") {
      isQuoted = true;
      cell = "";
    } else if (sign === mark) endCell();
    else if (sign === "\n") {
      endCell();
      rows.push(row);
      row = [];
    } else if (sign !== "\r") cell += sign;
  }
  endCell();
  return withoutEnd([...rows, row]);
}

/** Blank rows between others stay, so that a row is called as its program calls it. */
export function withoutEnd<T extends Cell>(rows: readonly (readonly T[])[]): (readonly T[])[] {
  let end = rows.length;
  while (end > 0 && rows[end - 1]?.every((cell) => cell === "") !== false) end -= 1;
  return rows.slice(0, end);
}

/** What parts the cells: the sign that the most lines have, the first of them where several do. */
function markOf(text: string): string {
  const lines = text.split("\n").slice(0, 50);
  const count = (mark: string) => lines.filter((line) => line.includes(mark)).length;
  return MARKS.reduce((best, mark) => (count(mark) > count(best) ? mark : best), MARKS[0] as string);
}
