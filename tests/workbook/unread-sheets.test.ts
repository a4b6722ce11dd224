// An edit calculates its own sheet, every other one when it is read; whatever is read when, each cell shows what it would if all were
// calculated at once.
import fc from "fast-check";
import { expect, test } from "vitest";
import { openWorkbook, type WorkbookHost } from "../../src/workbook/host.ts";
import { seedOf, tries } from "../kit/scale.ts";

const open = (data?: ReturnType<WorkbookHost["engine"]["data"]>): WorkbookHost =>
  openWorkbook({ codeJs: "function go() {}", ...(data === undefined ? {} : { data }) });

function withSheets(...names: readonly string[]): WorkbookHost {
  const book = open();
  book.renameSheet("Sheet1", names[0] ?? "");
  for (const name of names.slice(1)) book.engine.run("CREATE_SHEET", { sheetId: name, name, position: 1 });
  return book;
}

type Evaluator = { computeFormulaCell(at: { sheetId: string }, cell: object): object };

/** How many formulas are calculated while something is done. */
function calculatedBy(book: WorkbookHost, work: () => void): number {
  const { handlers } = book.engine.model as unknown as { handlers: readonly { evaluator?: Evaluator }[] };
  const evaluator = handlers.find((one) => one.evaluator !== undefined)?.evaluator;
  if (evaluator === undefined) throw new Error("no evaluator");
  const { computeFormulaCell } = evaluator;
  let many = 0;
  evaluator.computeFormulaCell = function (at, cell) {
    many++;
    return computeFormulaCell.call(this, at, cell);
  };
  work();
  evaluator.computeFormulaCell = computeFormulaCell;
  return many;
}

test("another name of a sheet calculates nothing, unless a formula says a name that no sheet had, or reads by a name's text", () => {
  const book = withSheets("Prices", "Loaf", "Other");
  book.type("Prices", "A1", "3");
  book.type("Loaf", "A1", "=Prices!A1*2");
  book.type("Loaf", "A2", "=ARRAYFORMULA(Prices!A1:A2*2)");
  const rename = (from: string, to: string) =>
    calculatedBy(book, () => {
      book.renameSheet(from, to);
      book.values("Loaf", "A1:A3");
    });
  expect(rename("Prices", "Costs")).toBe(0);
  expect(book.formulas("Loaf", "A1")).toEqual([["=Costs!A1*2"]]);
  expect(book.values("Loaf", "A1:A2")).toEqual([[6], [6]]);
  book.type("Costs", "A1", "4");
  expect(book.values("Loaf", "A1:A2")).toEqual([[8], [8]]);
  book.type("Loaf", "B1", '=INDIRECT("Rates!A1")');
  expect(book.shownTexts("Loaf", "B1")[0]?.[0]).toMatch(/^#/);
  rename("Costs", "Rates");
  expect(book.values("Loaf", "B1")).toEqual([[4]]);
  book.type("Loaf", "B1", "=Tables!A1+1");
  expect(book.shownTexts("Loaf", "B1")[0]?.[0]).toMatch(/^#/);
  rename("Rates", "Tables");
  expect(book.values("Loaf", "A1:B1")).toEqual([[8, 5]]);
});

test("a price that many sheets go by calculates none of them; each is calculated when it is read, and once", () => {
  const names = Array.from({ length: 20 }, (_, at) => `Loaf${at + 1}`);
  const book = withSheets("Prices", ...names, "List");
  for (const name of names) {
    book.type(name, "A1", "=Prices!A1*2");
    book.type(name, "A2", "=ARRAYFORMULA(A1*Prices!A1:A3)");
  }
  book.type("Prices", "B1", "=A1+1");
  book.type("List", "A1", `=${names.map((name) => `${name}!A2`).join("+")}`);
  const type = (text: string) => calculatedBy(book, () => book.type("Prices", "A1", text));
  const read = (name: string, cell: string) => calculatedBy(book, () => book.values(name, cell));
  book.type("Prices", "A2", "10");
  expect(book.values("List", "A1")).toEqual([[0]]);
  expect(type("3")).toBe(1);
  expect(book.values("Prices", "B1")).toEqual([[4]]);
  expect(read("Loaf7", "A3")).toBe(2);
  expect(book.values("Loaf7", "A3")).toEqual([[60]]);
  expect(read("Loaf7", "A1:A4")).toBe(0);
  // The others and the list itself.
  expect(read("List", "A1")).toBe(19 * 2 + 1);
  expect(book.values("List", "A1")).toEqual([[20 * 18]]);
  expect(read("Loaf9", "A1")).toBe(0);
  // Several edits wait together.
  expect(type("4") + type("5")).toBe(2);
  expect(read("List", "A1")).toBe(20 * 2 + 1);
  expect(book.values("List", "A1")).toEqual([[20 * 50]]);
});

const SHEETS = ["One", "Two", "Three"] as const;
const ROWS = 4;
const rows = fc.tuple(fc.integer({ min: 1, max: ROWS }), fc.integer({ min: 1, max: ROWS }));
/** A column reads the one before it, on any sheet; what fills cells stands first in its column, so that no two of them meet. */
const step = fc.oneof(
  {
    weight: 6,
    arbitrary: fc
      .record({
        sheet: fc.constantFrom(...SHEETS),
        column: fc.nat(2),
        row: fc.integer({ min: 1, max: ROWS }),
        kind: fc.constantFrom("number", "blank", "sum", "double", "count", "name"),
        of: fc.constantFrom(...SHEETS),
        rows,
        number: fc.integer({ min: -9, max: 9 }),
      })
      .map(({ sheet, column, row, kind, of, rows: [from, to], number }) => {
        const area = `${of}!${"AB"[column - 1]}${Math.min(from, to)}:${"AB"[column - 1]}${Math.max(from, to)}`;
        const text = { sum: `=SUM(${area})`, double: `=ARRAYFORMULA(${area}*2)`, count: `=SEQUENCE(COUNT(${area})+1)` };
        const formula = kind === "name" ? "=SUM(area)+1" : (text[kind as keyof typeof text] ?? "");
        const content = column === 0 || kind === "number" ? String(number) : formula;
        const at = kind === "double" || kind === "count" ? 1 : row;
        return { edit: [sheet, `${"ABC"[column]}${at}`, kind === "blank" ? "" : content] as const };
      }),
  },
  { weight: 3, arbitrary: fc.record({ read: fc.constantFrom(...SHEETS) }) },
  { weight: 1, arbitrary: fc.constant({ run: "REQUEST_UNDO" }) },
  { weight: 1, arbitrary: fc.record({ row: fc.nat(1), sheet: fc.constantFrom(...SHEETS) }) },
);

test("whatever is edited, undone and read in whatever order, all cells are as in a workbook opened anew", () => {
  fc.assert(
    fc.property(fc.array(step, { minLength: 5, maxLength: 25 }), (steps) => {
      const book = withSheets(...SHEETS);
      const zone = { left: 0, right: 0, top: 0, bottom: ROWS - 1 };
      const ranges = [{ _zone: zone, _sheetId: book.sheetId("Two") }];
      book.engine.run("CREATE_NAMED_RANGE", { name: "area", ranges });
      const all = (of: WorkbookHost) => SHEETS.map((name) => of.values(name, "A1:C12"));
      // Never undone as far as to where the sheets were made.
      for (let at = 0; at < steps.length; at++) book.type("One", "E1", String(at));
      for (const one of steps) {
        if ("edit" in one) book.type(...one.edit);
        else if ("read" in one) book.values(one.read, "A1:C12");
        else if ("run" in one) book.engine.run(one.run);
        else
          book.engine.run("ADD_COLUMNS_ROWS", {
            sheetId: book.sheetId(one.sheet),
            sheetName: one.sheet,
            dimension: "ROW",
            base: one.row,
            position: "after",
            quantity: 1,
          });
      }
      expect(all(book)).toEqual(all(open(book.engine.data())));
    }),
    { numRuns: tries(20), seed: seedOf(21), endOnFailure: true },
  );
});
