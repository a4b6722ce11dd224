// Formulas that fill several cells and read each other's: after any edit every cell shows what its formulas give, and each was
// computed once.
import fc from "fast-check";
import { expect, test } from "vitest";
import { openWorkbook, type WorkbookHost } from "../../src/workbook/host.ts";
import { tries } from "../kit/scale.ts";

const ROWS = 7;
const COLUMNS = 5;
const letter = (column: number) => "ABCDE"[column] ?? "";

/** Reads rows `from` to `to` of a column further left; a count fills as many cells as there are numbers, and one more. */
type Formula = { readonly kind: "sum" | "double" | "count" | "if"; readonly column: number; from: number; to: number };
type Content = number | Formula | undefined;
type Value = number | "error" | undefined;

const readTo = (of: number) =>
  fc
    .record({
      kind: fc.constantFrom("sum" as const, "double" as const, "count" as const, "if" as const),
      column: fc.nat(of - 1),
      from: fc.nat(ROWS - 1),
      to: fc.nat(ROWS - 1),
    })
    .map(({ from, to, ...more }): Formula => ({ ...more, from: Math.min(from, to), to: Math.max(from, to) }));
const edit = fc
  .record({ column: fc.nat(COLUMNS - 1), row: fc.nat(ROWS - 1) })
  .chain((at) =>
    fc
      .oneof(
        { weight: 2, arbitrary: fc.integer({ min: -9, max: 9 }) },
        { weight: 1, arbitrary: fc.constant(undefined) },
        { weight: at.column === 0 ? 0 : 4, arbitrary: readTo(Math.max(1, at.column)) },
      )
      .map((content: Content) => ({ ...at, content })),
  );

function textOf(content: Content): string {
  if (typeof content !== "object") return content === undefined ? "" : String(content);
  const { kind, column, from, to } = content;
  const range = `${letter(column)}${from + 1}:${letter(column)}${to + 1}`;
  if (kind === "sum") return `=SUM(${range})`;
  if (kind === "double") return `=ARRAYFORMULA(${range}*2)`;
  if (kind === "count") return `=SEQUENCE(COUNT(${range})+1)`;
  // What is read hangs on a number that may change.
  return `=IF(COUNT(${range})>2;SUM(${range});${letter(column)}${to + 1})`;
}

/** What a formula gives, from its own cell down. */
function resultOf({ kind, column, from, to }: Formula, values: readonly Value[][]): Value[] {
  const read = (values[column] ?? []).slice(from, to + 1);
  const numbers = read.filter((value) => typeof value === "number");
  const sum = read.includes("error") ? "error" : numbers.reduce((all, value) => all + value, 0);
  if (kind === "sum") return [sum];
  if (kind === "double") return read.map((value) => (value === "error" ? value : (value ?? 0) * 2));
  if (kind === "count") return Array.from({ length: numbers.length + 1 }, (_, at) => at + 1);
  return [numbers.length > 2 ? sum : (read[read.length - 1] ?? 0)];
}

/** All cells by the rules of a sheet: no formula fills a cell that holds something, nor one below the last. */
function calculated(cells: readonly (readonly Content[])[]): Value[][] {
  const values: Value[][] = [];
  for (const column of cells) {
    const shown: Value[] = column.map((content) => (typeof content === "number" ? content : undefined));
    values.push(shown);
    for (const [row, content] of column.entries()) {
      if (typeof content !== "object") continue;
      const result = resultOf(content, values);
      const isBlocked = result.slice(1).some((_, below) => column[row + 1 + below] !== undefined);
      if (isBlocked || row + result.length > ROWS) shown[row] = "error";
      else for (const [below, value] of result.entries()) shown[row + below] = value;
    }
  }
  return values;
}

const ALL = `A1:${letter(COLUMNS - 1)}${ROWS}`;
const shownBy = (book: WorkbookHost): Value[][] => {
  const rows = book.values("Sheet1", ALL);
  return Array.from({ length: COLUMNS }, (_, column) =>
    rows.map((row): Value => {
      const value = row[column];
      return value === "" ? undefined : typeof value === "number" ? value : "error";
    }),
  );
};

const openSmall = (data?: object) => openWorkbook({ codeJs: "", ...(data ? { data: data as never } : {}) });

test("any edit, one after the other, and the workbook opened again: every cell is what its formulas give", () => {
  const empty = openSmall();
  const sheetId = empty.sheetId("Sheet1");
  const take = (dimension: string, elements: number[]) =>
    empty.engine.run("REMOVE_COLUMNS_ROWS", { sheetId, sheetName: "Sheet1", dimension, elements });
  // What reaches below the last row of the sheet has no room there.
  take(
    "ROW",
    Array.from({ length: 1000 - ROWS }, (_, at) => ROWS + at),
  );
  const data = empty.engine.data();
  fc.assert(
    fc.property(fc.array(edit, { minLength: 10, maxLength: 60 }), (edits) => {
      const book = openSmall(data);
      const cells: Content[][] = Array.from({ length: COLUMNS }, () => Array.from({ length: ROWS }, () => undefined));
      for (const { column, row, content } of edits) {
        const ofColumn = cells[column];
        if (ofColumn) ofColumn[row] = content;
        book.type("Sheet1", `${letter(column)}${row + 1}`, textOf(content));
        expect(shownBy(book)).toEqual(calculated(cells));
      }
      expect(shownBy(openSmall(book.engine.data()))).toEqual(calculated(cells));
    }),
    { numRuns: tries(12) },
  );
});

const COUNTING = `
var calls = 0;
/**
 * Gives its argument back.
 * @param {number} one Any number.
 * @customfunction
 */
function COUNTED(one) { calls += 1; return one; }
function told() { return calls; }`;

test("columns that fill down and read each other are computed once when one is changed, and once when the workbook is opened", () => {
  const book = openWorkbook({ codeJs: COUNTING });
  const told = (of: WorkbookHost) => of.script.run("FULL", "told");
  // The last reads what the first fills before it reads its formula.
  book.type("Sheet1", "D1", "=COUNTED(SUM(C1:C4))");
  book.type("Sheet1", "C1", "=ARRAYFORMULA(B1:B4+1)");
  book.type("Sheet1", "B1", "=ARRAYFORMULA(A1:A4*2)");
  book.type("Sheet1", "A2", "3");
  const before = Number(told(book));
  book.type("Sheet1", "A1", "5");
  expect(told(book)).toBe(before + 1);
  expect(book.cell("Sheet1", "D1").value).toBe(5 * 2 + 3 * 2 + 4);
  const again = openWorkbook({ codeJs: COUNTING, data: book.engine.data() });
  expect(told(again)).toBe(1);
  expect(again.cell("Sheet1", "D1").value).toBe(20);
});
