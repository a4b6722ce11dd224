import { beforeAll, describe, expect, test } from "vitest";
import type { CheckAnswer, CheckStep } from "../../shared/protocol/check.ts";
import { makeAsk } from "../../shared/protocol/plan-message.ts";
import {
  type Batch,
  batchesOf,
  CHECK_MARK,
  type CheckExample,
  differences,
  FORMULAS_AT_A_TIME,
  isWaiting,
} from "../../shared/protocol/self-check.ts";
import {
  ANCHOR_ROW,
  anchorAnswer,
  answersOf,
  givenLines,
  PROBES,
  TYPED_CELL,
  typedAnswer,
} from "../../shared/protocol/self-check-probes.ts";
import { a1 } from "../../shared/sheet/a1.ts";
import { plan } from "../../shared/sheet/plan.ts";
import { checkExamples } from "../../src/build/page.ts";
import { openWorkbook, type WorkbookHost } from "../../src/workbook/host.ts";
import { panLoaf } from "../../templates/pan-loaf.ts";
import { buildSheet, files, HANDOUT, workbook } from "../templates/sheet-support.ts";

// A workbook takes a second each, more so on a busy computer.

const step = (book: WorkbookHost, asked: CheckStep): CheckAnswer =>
  book.answer({ ...asked, ask: "check" }) as CheckAnswer;

const written = (
  { cells, formats, formulas }: Pick<Batch, "cells" | "formats" | "formulas">,
  sheet: string,
): CheckStep => ({
  step: "write",
  sheet,
  cells,
  formats,
  formulas: formulas.map(({ row, column, formula }) => ({ row, column, formula })),
});

/** What the panel does, without its page. */
function checked(book: WorkbookHost, examples: readonly CheckExample[]): string[] {
  let sheet = "";
  const wrong = batchesOf(examples).flatMap((batch) => {
    sheet = step(book, written(batch, sheet)).sheet;
    return differences(batch, step(book, { step: "read", sheet }).values);
  });
  step(book, { step: "remove", sheet });
  return wrong;
}

describe("every function's examples as cells of a sheet", () => {
  test.each(["en_US", "de_DE"] as const)(
    "agree in a workbook of %s, and the sheet is gone afterwards",
    async (locale) => {
      const book = openWorkbook({ ...(await files()), locale });
      expect(checked(book, checkExamples())).toEqual([]);
      expect(book.sheetNames()).toEqual(["Sheet1"]);
    },
  );

  test("are all there, at most 20 at a time", () => {
    const batches = batchesOf(checkExamples());
    expect(batches.flatMap(({ expected }) => expected)).toHaveLength(checkExamples().length);
    for (const { formulas } of batches) expect(formulas.length).toBeLessThanOrEqual(FORMULAS_AT_A_TIME);
    for (const { formula } of batches.flatMap(({ formulas }) => formulas))
      expect(formula).toMatch(/^=BAKE_[A-Z]+\([A-Z0-9:;]+\)$/);
  });

  test("a value that is not what it should be is told with the cell and what was found", async () => {
    const examples = checkExamples().slice(0, 3);
    const [first] = examples;
    const spoilt = { ...first, gives: [[0.5], [0.25], [0.26], [0.7], [0.01], [0.02]] } as CheckExample;
    const wrong = checked(await workbook(), [spoilt, ...examples.slice(1)]);
    expect(wrong).toHaveLength(1);
    expect(wrong[0]).toMatch(/^=BAKE_FLOURPCT\(A2:A7;B2:B7\) in D4: 0\.25 is there, 0\.26 should be$/);
  });

  test("a text, a number within its bounds, a missing cell and an error are told apart", () => {
    const [batch] = batchesOf([
      { name: "BAKE_A", call: [1], gives: "good" },
      { name: "BAKE_B", call: [1], gives: 10, within: 0.5 },
      { name: "BAKE_C", call: [1], gives: [[1], [2]] },
    ]);
    const values = (a: unknown, b: unknown, ...c: unknown[]) => [
      ["mark"],
      [1, "", a],
      [],
      [1, "", b],
      [],
      [1, "", c[0]],
      ["", "", c[1]],
    ];
    const found = (...cells: [unknown, unknown, unknown, unknown]) =>
      batch === undefined ? [] : differences(batch, values(...cells));
    expect(found("good", 10.4, 1, 2)).toEqual([]);
    expect(found("bad", 10.6, 1, 2)).toHaveLength(2);
    expect(found("good", "10", "#NAME?", 2).map((line) => line.slice(0, 8))).toEqual(["=BAKE_B(", "=BAKE_C("]);
    expect(found("good", 10, 1, undefined)[0]).toMatch(/in C7: "" is there, 2 should be/);
  });

  test("a cell that is still calculating is waited for", () => {
    expect(isWaiting([["mark"], ["", "Loading..."]])).toBe(true);
    expect(isWaiting([["mark"], ["", 5]])).toBe(false);
  });
});

describe("what only a sheet can say", () => {
  let lines: string[] = [];
  let book: WorkbookHost;
  let sheet = "";
  beforeAll(async () => {
    book = await workbook();
    sheet = step(book, written(PROBES, "")).sheet;
    lines = answersOf(step(book, { step: "read", sheet }).values);
  });

  // The local workbook's answers follow the documentation; on the live service these lines are what is to be learned.
  test.each([
    ["left out in the middle", '"3: 5 ; undefined ; 5"'],
    ["a blank cell", '"1: \\"\\""'],
    ["a range with a blank", '"1: [[\\"\\", 5]]"'],
    ["a percent", '"1: 0.65"'],
    ["a currency", '"1: 12.5"'],
    ["a tick", '"1: true"'],
    ["a number as text", '"1: \\"12\\""'],
    ["an error", '"1: \\"#DIV/0!\\""'],
    ['ISBLANK of a returned ""', "false"],
    ['LEN of a returned ""', "0"],
    ['a returned "" times 2', '"#VALUE!"'],
  ])("%s", (asks, answer) => {
    expect(lines).toContain(`${asks}: ${answer}`);
  });

  test("what a function gives back that is no number and no text", () => {
    const given = givenLines(step(book, { step: "read", sheet }).values);
    expect(given).toHaveLength(8);
    expect(given).toContain('a function that gives true: [[true,""],["",""]]');
    for (const one of given) expect(one).toMatch(/^a function that gives .+: \[\[.+\],\[.+\]\]$/);
  });

  test("a formula sheet takes a weight that the check typed, and goes again", () => {
    const sheetPlan = plan(
      panLoaf,
      { weight: "g", temperature: "C", length: "cm", parts: [] },
      { ...panLoaf.sample, title: CHECK_MARK },
    );
    const weight = sheetPlan.names.get("weight");
    const made = book.answer({ ...makeAsk(sheetPlan, CHECK_MARK), ask: "make" }) as { sheet: string };
    const place = { row: (weight?.row ?? 0) + 2, column: weight?.column ?? 0 };
    step(book, { step: "type", sheet: made.sheet, ...place, value: 5000 });
    expect(book.answer({ ask: "take", sheet: made.sheet })).toEqual({ taken: [a1(place)], notes: [] });
    step(book, { step: "remove", sheet: made.sheet });
    expect(book.sheetNames()).not.toContain(made.sheet);
  });

  test("a date and a duration arrive as dates", () => {
    expect(lines.find((line) => line.startsWith("a date: "))).toMatch(/date 2023-03-15T/);
    expect(lines.find((line) => line.startsWith("a duration: "))).toMatch(/date 1899-12-30T01:30/);
  });

  test("typing into the percent cell, and a row above the anchor", () => {
    book.type(sheet, TYPED_CELL, "0.65");
    expect(typedAnswer(step(book, { step: "read", sheet }).values)).toMatch(
      /^0\.65 typed into a percent cell: [\d.]+$/,
    );
    step(book, { step: "insert", sheet, row: ANCHOR_ROW });
    const { values, formulas } = step(book, { step: "read", sheet });
    const next = ANCHOR_ROW + 1;
    expect(anchorAnswer(values, formulas)).toBe(
      `a row put above the anchor in B${ANCHOR_ROW}: B${ANCHOR_ROW} "", B${next} "=BAKE_TRUEPCT(A${next}:A${next + 3})"`,
    );
    expect(values[next]?.[1]).toBe(0.5);
    // What the service itself does: each line an answer, and none a failure of the check.
    const service = step(book, { step: "service", sheet }).values.map(([line]) => String(line));
    expect(service).toHaveLength(9);
    expect(service).toContain('texts behind an apostrophe: ["007","=1+1","",""]');
    expect(service).toContain('a text that appendRow is given: ["1/2","7","1/2"]');
    // What the stand-in takes is what the writer keeps to; the sheet of the check has its own name again.
    expect(service).toContain('names that a tab takes: ["100 letters"]');
    expect(service).toContain("characters of a page that is taken: [500000,2000000,8000000]");
    expect(book.sheetNames()).toContain(sheet);
    // The stand-in refuses what not every locale reads, and says so; the live service answers.
    expect(service.filter((line) => line.includes(": failed")).map((line) => line.split(":")[0])).toEqual([
      'setFormulas with "" over a value',
      "a half in a formula, as fraction and with a point",
      "a comma between arguments",
    ]);
    step(book, { step: "remove", sheet });
    expect(book.sheetNames()).toEqual(["Sheet1"]);
  });
});

describe("no other sheet is touched", () => {
  const one: CheckStep = {
    step: "write",
    sheet: "",
    cells: [["x"]],
    formats: [[""]],
    formulas: [{ row: 3, column: 1, formula: "=LEN(A2)" }],
  };

  test.each([
    ["a sheet of somebody else", { step: "remove", sheet: "Hand-out" }],
    ["a sheet that only has the name", { step: "remove", sheet: "Gramwright check" }],
    ["reading it", { step: "read", sheet: "Hand-out" }],
    ["writing it", { ...one, sheet: "Hand-out" }],
    ["putting rows in it", { step: "insert", sheet: "Hand-out", row: 1 }],
  ])("%s is refused", async (_, asked) => {
    const book = await workbook();
    await buildSheet(HANDOUT, { book });
    await buildSheet({ ...HANDOUT, title: "Gramwright check" }, { book });
    const before = ["Hand-out", "Gramwright check"].map((name) => book.values(name, book.usedRange(name)));
    expect(book.ask({ ...asked, ask: "check" })).toMatchObject({
      ok: false,
      message: expect.stringMatching(/sheet of the check is gone/),
    });
    expect(["Hand-out", "Gramwright check"].map((name) => book.values(name, book.usedRange(name)))).toEqual(before);
  });

  test("a sheet of that name is not used: the check takes the next", async () => {
    const book = await workbook();
    await buildSheet({ ...HANDOUT, title: "Gramwright check" }, { book });
    expect(step(book, one).sheet).toBe("Gramwright check (2)");
  });

  test.each([
    "=IMPORTXML(A1)",
    "=IMPORTRANGE(A1;A2)",
    "=SUM('Hand-out'!A1)",
    '=HYPERLINK("x")',
    "=BAKE_MIXES(Sheet1!A1)",
    "+1",
    "=A1,A2",
    "",
    5,
    null,
  ])("the formula %j is refused, and the half-made sheet is gone", async (formula) => {
    const book = await workbook();
    const asked = { ...one, formulas: [{ row: 3, column: 1, formula }] };
    expect(book.ask({ ...asked, ask: "check" }).ok).toBe(false);
    expect(book.sheetNames()).toEqual(["Sheet1"]);
  });

  test.each([
    ["ragged rows", { cells: [[1, 2], [3]] }],
    ["too many rows", { cells: Array.from({ length: 500 }, () => [1]) }],
    ["no rows", { cells: [] }],
    ["a nested value", { cells: [[{}]] }],
    ["a place outside", { formulas: [{ row: 9999, column: 1, formula: "=LEN(A2)" }] }],
    ["formulas that are none", { formulas: "=LEN(A2)" }],
  ])("%s are refused", async (_, change) => {
    const book = await workbook();
    expect(book.ask({ ...one, ...change, ask: "check" }).ok).toBe(false);
    expect(book.sheetNames()).toEqual(["Sheet1"]);
  });

  test("text in cells stays text", async () => {
    const book = await workbook();
    const { sheet } = step(book, { ...one, cells: [["=1+1", "12", "3/4"]], formats: [["", "", ""]] });
    expect(book.values(sheet, "A2:C2")).toEqual([["=1+1", "12", "3/4"]]);
  });
});
