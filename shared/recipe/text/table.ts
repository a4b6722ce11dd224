// Pasted tables: columns parted by tabs, bars, semicolons, commas or wide gaps, with headings or without.

import { alignedCells, alignedHeads } from "./aligned.ts";
import { type Column, doubleHeader, headerOf, unitIn } from "./columns.ts";
import type { SourceLine } from "./source-lines.ts";
import { clean, rowsFrom, SPLITS } from "./table-cells.ts";

export type TableLine = {
  readonly line: SourceLine;
  readonly cells: readonly string[];
  readonly isHeader: boolean;
  /** What the columns hold; of a row without headings as they look. */
  readonly columns: readonly (Column | undefined)[];
  /** Which table of the text it belongs to. */
  readonly table: number;
};

const NUMBER = /^[~≈]?\s*[\d.,\u00a0\u202f'’ ]*\d\s*(?:%|k?g|gr|grams?|kilos?|lbs?|oz|ml|l|#)?\.?$/i;
const isNumber = (cell: string): boolean => NUMBER.test(cell);

/** The lines that are rows of a table, by their place in the text. */
export function tableLines(lines: readonly SourceLine[]): Map<number, TableLine> {
  const tableRows = new Map<number, TableLine>();
  let table = 0;
  for (let at = 0; at < lines.length; ) {
    const run = runAt(lines, at);
    if (run === undefined) {
      at += 1;
      continue;
    }
    let columns = run.columns;
    for (const row of run.rows) {
      const header = run.headers.includes(row.line.at) ? run.columns : laterHeader(row.cells, run.rows);
      if (header !== undefined) columns = header;
      tableRows.set(row.line.at, { ...row, isHeader: header !== undefined, columns, table });
    }
    table += 1;
    at = run.end;
  }
  return tableRows;
}

/** Headings further down, which need not name again what their columns hold. */
function laterHeader(cells: readonly string[], rows: Run["rows"]) {
  const header = headerOf(cells);
  return header === undefined ? undefined : named(header, rows);
}

type Run = {
  readonly rows: readonly { readonly line: SourceLine; readonly cells: readonly string[] }[];
  readonly columns: readonly (Column | undefined)[];
  /** The lines of its headings. */
  readonly headers: readonly number[];
  readonly end: number;
};

/** The table that begins at a line, with its headings first, or as its cells look. */
function runAt(lines: readonly SourceLine[], at: number): Run | undefined {
  const first = lines[at];
  if (first === undefined || first.raw.trim() === "") return undefined;
  for (const { name, may, split } of SPLITS) {
    if (!may.test(first.raw)) continue;
    const cells = split(first.raw).map(clean);
    const second = lines[at + 1];
    const double =
      second !== undefined && may.test(second.raw) ? doubleHeader(cells, split(second.raw).map(clean)) : undefined;
    if (double !== undefined && second !== undefined && name !== "gap") {
      const { rows, end } = rowsFrom(lines, at, may, split, name);
      return { rows, columns: named(double, rows.slice(2)), headers: [first.at, second.at], end };
    }
    const header = headerOf(cells);
    if (header !== undefined) {
      const { rows, end } = rowsFrom(lines, at, may, split, name);
      if (rows.length >= 2 && name === "gap") return { ...alignedRun(rows, header), headers: [first.at], end };
      if (rows.length >= 2) return { rows, columns: named(header, rows), headers: [first.at], end };
    }
    if (name === "gap" || cells.length < 2) continue;
    const { rows, end } = rowsFrom(lines, at, may, split, name);
    if (name === "comma" && rows.filter(isDecimal).length > rows.length / 2) continue;
    const columns = rows.length < 3 ? undefined : looksOf(rows.map((row) => row.cells));
    if (columns !== undefined) return { rows, columns, headers: [], end };
  }
  if (/\S {2,}\S/.test(first.raw)) {
    const gap = SPLITS[SPLITS.length - 1];
    if (gap === undefined) return undefined;
    const { rows, end } = rowsFrom(lines, at, gap.may, gap.split, "gap");
    const columns = rows.length < 3 ? undefined : looksOf(rows.map((row) => row.cells));
    if (columns !== undefined) return { rows, columns, headers: [], end };
  }
  return undefined;
}

/** Blanks alone part the columns: a row with an empty cell has fewer words, and goes by where they stand. */
function alignedRun(rows: Run["rows"], header: readonly (Column | undefined)[]): Pick<Run, "rows" | "columns"> {
  const [{ line }, ...others] = rows as [Run["rows"][number], ...Run["rows"]];
  const body = others.filter(({ cells }) => cells.length > 1);
  const heads = alignedHeads(
    line.raw,
    body.map(({ line: { raw } }) => raw),
  );
  const shifted = heads.length > header.length ? [undefined, ...header] : header;
  const aligned = rows.map((row) =>
    row.line === line
      ? { ...row, cells: heads }
      : { ...row, cells: (row.cells.length > 1 && alignedCells(line.raw, heads, row.line.raw)) || row.cells },
  );
  return { rows: aligned, columns: named(shifted, aligned) };
}

/** "Flour 6,500 kg" and "6,500 kg flour": the comma stands within a number. */
const isDecimal = ({ cells: [one = "", other = ""] }: Run["rows"][number]): boolean =>
  (/\p{L}[^,]*\s\d+$/u.test(one) || /^\d+$/.test(one)) &&
  /^\d{1,3}\s*(?:%|k?g|gr|lbs?|oz|ml|l)(?![\p{L}])/iu.test(other);

/** Columns without a heading of their own, by what stands in them. */
function named(header: readonly (Column | undefined)[], rows: readonly { readonly cells: readonly string[] }[]) {
  const columns = [...header];
  if (!columns.some((column) => column?.is === "name")) {
    const texts = columns.map((column, at) =>
      column === undefined || (column.is === "weight" && column.stage !== undefined)
        ? rows.filter(({ cells }) => /\p{L}{2}/u.test(cells[at] ?? "") && !isNumber(cells[at] ?? "")).length
        : 0,
    );
    const most = Math.max(...texts);
    if (most > 0) columns[texts.indexOf(most)] = { is: "name" };
  }
  return columns;
}

/** A table without headings: one column of names, and beside it numbers. */
function looksOf(rows: readonly (readonly string[])[]): (Column | undefined)[] | undefined {
  const filled = rows.filter((row) => row.filter((cell) => cell !== "").length >= 2);
  if (filled.length < 3 || filled.length < rows.length * 0.6) return undefined;
  const width = Math.max(...filled.map((row) => row.length));
  const columns: (Column | undefined)[] = Array.from({ length: width }, (_, at) => {
    const cells = filled.map((row) => row[at] ?? "").filter((cell) => cell !== "");
    if (cells.length < filled.length * 0.5) return undefined;
    const numbers = cells.filter(isNumber);
    if (numbers.length < cells.length * 0.8) return undefined;
    const percents = cells.filter((cell) => cell.endsWith("%"));
    if (percents.length > cells.length / 2) return { is: "percent", of: "flour" };
    const units = new Set(numbers.map((cell) => unitIn(cell.replace(/(\d)(?=\p{L})/gu, "$1 "))));
    const [unit = ""] = units;
    return { is: "weight", unit: units.size === 1 ? unit : "", head: "" };
  });
  const texts = columns.findIndex(
    (column, at) =>
      column === undefined && filled.filter((row) => /\p{L}{2}/u.test(row[at] ?? "")).length >= filled.length * 0.8,
  );
  if (texts < 0 || !columns.some((column) => column !== undefined)) return undefined;
  columns[texts] = { is: "name" };
  // A column of units beside the numbers: "500 | g | flour".
  filled[0]?.forEach((_, at) => {
    const cells = filled.map((row) => row[at] ?? "").filter((cell) => cell !== "");
    if (
      columns[at] === undefined &&
      cells.length > 0 &&
      cells.every((cell) => /^(?:k?g|gr|oz|lbs?|ml|l|tsp|tbsp|cups?|ea|pcs?|each)\.?$/i.test(cell))
    )
      columns[at] = { is: "unit" };
  });
  return columns;
}
