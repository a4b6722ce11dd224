// A formula written at the cursor by the sidebar's question, in the local workbook.
import { describe, expect, test } from "vitest";
import { isFault } from "../../shared/base/refusal.ts";
import { entryFormula, readEntry } from "../../shared/cells/typed-argument.ts";
import { openWorkbook } from "../../src/workbook/host.ts";
import { activate } from "../../src/workbook/service/range.ts";
import { files } from "../templates/sheet-support.ts";

// Opening a workbook takes a second on a busy computer.

const built = await files();
const open = (locale?: "de_DE") => {
  const book = openWorkbook({ ...built, ...(locale === undefined ? {} : { locale }) });
  const sheetId = book.session.get<string>("getActiveSheetId");
  return Object.assign(book, {
    cursor: (col: number, row: number) =>
      activate(book.session, { sheetId, zone: { left: col, right: col, top: row, bottom: row } }),
    insert: (name: string, ...args: string[]) => book.ask({ ask: "insert", name, args }),
  });
};
const book = open();
const refused = (sentence: RegExp) => ({ ok: false, message: expect.stringMatching(sentence) });

describe("what is typed into a field becomes text of a formula", () => {
  test.each([
    ["", ""],
    ["C5", "C5"],
    ["c5:c14", "c5:c14"],
    ["$C$5:C", "$C$5:C"],
    ["'Quay rolls'!B2:B9", "'Quay rolls'!B2:B9"],
    ["gramwright_larder", "gramwright_larder"],
    ["24", "24"],
    ["0.65", "65/100"],
    ["97,4", "974/10"],
    ["65%", "65/100"],
    ["-2.5", "-25/10"],
    ["0.00035", "35/100000"],
    ["true", "TRUE()"],
    ["g", '"g"'],
    ['"lb oz"', '"lb oz"'],
    ['2 1/2 "cups"', '"2 1/2 ""cups"""'],
    ["{100; 65; 0.2}", "{100; 65; 2/10}"],
    ['{"flour"; "a;b"}', '{"flour"; "a;b"}'],
    ['=IMPORTXML("x","y")', '"=IMPORTXML(""x"",""y"")"'],
    ['x");IMPORTXML("y', '"x"");IMPORTXML(""y"'],
    ["{IMPORTXML(1)}", '{"IMPORTXML(1)"}'],
  ])("%s", (typed, formula) => {
    const entry = readEntry(typed);
    expect(isFault(entry) ? entry.says : entry.formula).toBe(formula);
  });
  test.each(["1,250", "12.", "1.2.3", "{1; 1,250}", "{ }"])("%s is refused", (typed) => {
    expect(isFault(readEntry(typed))).toBe(true);
  });
  test("arguments left out at the end are left out", () => {
    expect(entryFormula("BAKE_MIXES", ["1", "", "2", ""])).toBe("=BAKE_MIXES(1; ; 2)");
  });
});

describe("writing at the cursor", () => {
  test("a value, read alike where the decimal sign is a comma", () => {
    for (const one of [book, open("de_DE")]) {
      one.cursor(4, 0);
      expect(one.insert("BAKE_DOUGHFOR", "24", "0,7", "11%")).toEqual({
        ok: true,
        answer: { sheet: expect.any(String), cell: "E1", says: "" },
      });
      const sheet = one.sheetNames()[0] ?? "";
      // 24 × 0.7 ÷ 0.89
      expect(one.cell(sheet, "E1").value).toBeCloseTo(18.876404, 6);
    }
  });

  test("a spill beside its cells, and nothing where there is no room", () => {
    ["500", "325", "10"].forEach((grams, row) => {
      book.type("Sheet1", `A${row + 1}`, grams);
    });
    ["flour", "water", "salt"].forEach((kind, row) => {
      book.type("Sheet1", `B${row + 1}`, kind);
    });
    book.type("Sheet1", "C3", "mine");
    book.cursor(2, 0);
    expect(book.insert("BAKE_FLOURPCT", "A1:A3", "B1:B3")).toMatchObject(
      refused(/^C3 is not empty, and the answer would need it\. The answer fills 3 × 1 cells\./),
    );
    expect(book.cell("Sheet1", "C3").value).toBe("mine");
    expect(book.cell("Sheet1", "C1").formula).toBeUndefined();
    book.type("Sheet1", "C3", "");
    expect(book.insert("BAKE_FLOURPCT", "A1:A3", "B1:B3")).toMatchObject({
      ok: true,
      answer: { cell: "C1", says: "" },
    });
    expect(book.values("Sheet1", "C1:C3")).toEqual([[1], [0.65], [0.02]]);
  });

  test.each<[string, readonly [number, number], string, readonly string[], RegExp]>([
    ["on a full cell", [0, 0], "BAKE_MIXES", ["10", "5"], /^A1 is not empty, and nothing is written over/],
    ["on a spilled cell", [2, 1], "BAKE_MIXES", ["10", "5"], /^C2 is not empty/],
    ["inside what it reads", [0, 5], "BAKE_FLOURPCT", ["A1:A9", "B1:B9"], /^The formula reads "A1:A9"/],
    ["beyond the sheet", [25, 0], "BAKE_MIXES", ["10", "5"], /would reach beyond the sheet.*1 × 2 cells/],
    [
      "on cells there are not",
      [5, 5],
      "BAKE_FLOURPCT",
      ["AZ1:AZ3"],
      /^weights is "AZ1:AZ3", and there are no such cells/,
    ],
    ["on a sheet there is not", [5, 5], "BAKE_FLOURPCT", ["Nowhere!A1:A3"], /there are no such cells/],
    [
      "with a number that is two",
      [5, 5],
      "BAKE_DOUGHFOR",
      ["1,250"],
      /^pieces is "1,250", which could be 1250 or 1\.25;/,
    ],
    ["with too many arguments", [5, 5], "BAKE_ICE", Array(9).fill("1"), /takes \d arguments, not 9/],
    ["of an unknown function", [5, 5], "IMPORTXML", ["x"], /^There is no function "IMPORTXML"/],
    ["of a name that is a formula", [5, 5], "=1+1;BAKE_ICE", [], /^There is no function/],
  ])("%s is refused with a sentence, and nothing is written", (_, [col, row], name, args, sentence) => {
    book.cursor(col, row);
    const before = book.shownTexts("Sheet1", "A1:Z20");
    expect(book.insert(name, ...args)).toMatchObject(refused(sentence));
    expect(book.shownTexts("Sheet1", "A1:Z20")).toEqual(before);
  });

  test.each([
    { name: 5, args: [] },
    { name: "BAKE_ICE" },
    { name: "BAKE_ICE", args: ["x".repeat(501)] },
    { name: "BAKE_ICE", args: [5] },
  ])("a question that is none is refused: %j", (rest) => {
    expect(book.ask({ ask: "insert", ...rest })).toMatchObject(refused(/^An argument takes up to 500 characters/));
  });

  test("what cannot answer yet is written, and says why", () => {
    book.cursor(6, 0);
    expect(book.insert("BAKE_FLOURPCT", "A1:A3", "A1:A3")).toMatchObject({
      ok: true,
      answer: { cell: "G1", says: expect.stringMatching(/^BAKE_FLOURPCT: kinds/) },
    });
    expect(book.cell("Sheet1", "G1").formula).toBe("=BAKE_FLOURPCT(A1:A3;A1:A3)");
  });

  test("in a cell of text it becomes a formula all the same", () => {
    const { sheet } = book.answer({
      ask: "build",
      template: "pan-loaf",
      options: {},
      values: { title: "Quay loaf" },
    }) as { sheet: string };
    const sheetId = book.session.get<string>("getActiveSheetId");
    const free = book.usedRange(sheet);
    const row = Number(/\d+$/.exec(free)?.[0] ?? 1) - 1;
    const zone = { left: 3, right: 3, top: row, bottom: row };
    activate(book.session, { sheetId, zone });
    const reply = book.insert("BAKE_DOUGHFOR", "2", "3");
    expect(reply).toMatchObject({ ok: true });
    expect(book.cell(sheet, (reply as { answer: { cell: string } }).answer.cell).value).toBe(6);
  });
});

test("a person who may not write there is told whom to ask, and nothing is written", () => {
  const own = open();
  own.cursor(0, 0);
  own.setViewer(true);
  expect(own.insert("BAKE_DOUGHFOR", "2", "3")).toMatchObject(
    refused(
      /^The formula could not be inserted: .* If the cell is protected, or you may only view this file, ask its owner/,
    ),
  );
  expect(own.usedRange("Sheet1")).toBe("A1");
  expect(own.cell("Sheet1", "A1").formula).toBeUndefined();
});

describe("a service that fails is told by what was asked", () => {
  test.each([
    [{ ask: "insert", name: "BAKE_DOUGHFOR", args: ["2", "3"] }, /^The formula could not be inserted: /],
    [{ ask: "goto", sheet: "Sheet1", cell: "A1" }, /^The cell could not be shown: /],
    [
      { ask: "check", step: "write", sheet: "", cells: [["1"]], formats: [["0"]], formulas: [] },
      /^The check could not be finished: /,
    ],
    [{ ask: "formulas" }, /^The workbook could not be read: /],
    [{ ask: "review", style: "" }, /^The workbook could not be read: /],
    [{ ask: "stock", ingredients: [{ name: "moon dust", kind: "" }] }, /^The ingredients could not be added: /],
    [{ ask: "build", template: "pan-loaf" }, /^The sheet could not be built, and nothing was changed: /],
  ])("%j", (question, sentence) => {
    const own = openWorkbook(built);
    own.failAt(1);
    expect(own.ask(question)).toEqual(refused(sentence));
  });
});
