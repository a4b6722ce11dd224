import { describe, expect, test } from "vitest";
import { findStubs } from "../../src/workbook/engine/stubs.ts";
import { textTable } from "../../src/workbook/engine/table.ts";
import { openWorkbook } from "../../src/workbook/host.ts";
import { openProbes, withScript } from "./support.ts";

function weights() {
  const book = openProbes();
  ["flour", "water", "salt"].forEach((name, index) => {
    book.type("Sheet1", `A${index + 2}`, name);
    book.type("Sheet1", `B${index + 2}`, String([1000, 650, 20][index]));
  });
  book.type("Sheet1", "B6", "=SUM(B1:B5)");
  return book;
}

describe("what a person does to a sheet", () => {
  test("rows put in between and taken away are counted", () => {
    const book = weights();
    book.insertRows("Sheet1", 3, 2);
    expect(book.cell("Sheet1", "B8").formula).toBe("=SUM(B1:B7)");
    book.type("Sheet1", "B3", "100");
    expect(book.cell("Sheet1", "B8").value).toBe(1770);
    book.deleteRows("Sheet1", 2);
    expect(book.cell("Sheet1", "B7")).toMatchObject({ value: 770, formula: "=SUM(B1:B6)" });
  });

  test("a row put before the first of a range is not", () => {
    const book = weights();
    book.type("Sheet1", "D1", "=SUM(B2:B4)");
    book.insertRows("Sheet1", 2);
    expect(book.cell("Sheet1", "D1").formula).toBe("=SUM(B3:B5)");
  });

  test("sorting moves whole rows of the range", () => {
    const book = weights();
    book.sortRange("Sheet1", "A2:B4", "B");
    expect(book.values("Sheet1", "A2:B4")).toEqual([
      ["salt", 20],
      ["water", 650],
      ["flour", 1000],
    ]);
    book.sortRange("Sheet1", "A2:B4", "A", false);
    expect(book.values("Sheet1", "A2:A4").flat()).toEqual(["water", "salt", "flour"]);
    expect(() => book.sortRange("Sheet1", "A2:B4", "C")).toThrow(/not in A2:B4/);
  });

  test("a copied sheet calculates for itself, and names stay with the first", () => {
    const book =
      withScript(`book.setNamedRange("all_weights", sheet.getRange("B1:B2")); sheet.getRange("B1:B2").setValues([[1], [2]]);
      sheet.getRange("C1:C2").setFormulas([["=SUM(B1:B2)"], ["=SUM(all_weights)"]])`);
    book.go();
    const copy = book.duplicateSheet("Sheet1", "Second");
    book.type(copy, "B1", "10");
    expect(book.values(copy, "C1:C2").flat()).toEqual([12, 3]);
    expect(book.values("Sheet1", "C1:C2").flat()).toEqual([3, 3]);
  });

  test("a renamed sheet is followed by formulas", () => {
    const book = weights();
    book.duplicateSheet("Sheet1", "Other");
    book.type("Other", "D1", "=Sheet1!B2*2");
    book.renameSheet("Sheet1", "Day's loaf");
    expect(book.cell("Other", "D1")).toMatchObject({ formula: "='Day’s loaf'!B2*2", value: 2000 });
    book.type("Other", "D2", "='Day''s loaf'!B3");
    expect([book.cell("Other", "D2").value, book.cell("Day's loaf", "B3").value]).toEqual([650, 650]);
  });

  test("running sums can be set at once, exported and opened again", () => {
    const book = withScript(`sheet.getRange("A1:A5").setValues([[1], [2], [3], [4], [5]]);
      sheet.getRange("B1:B5").setFormulas([1, 2, 3, 4, 5].map(function (row) { return ["=SUM(A$1:A" + row + ")"]; }))`);
    book.go();
    expect(book.values("Sheet1", "B1:B5").flat()).toEqual([1, 3, 6, 10, 15]);
    const again = openWorkbook({ codeJs: "function go() {}", sidebarHtml: "", data: book.engine.data() });
    again.type("Sheet1", "A1", "11");
    expect(again.values("Sheet1", "B1:B5").flat()).toEqual([11, 13, 16, 20, 25]);
  });

  test("an unknown sheet or item says what there is", () => {
    const book = weights();
    expect(() => book.cell("Loaf", "A1")).toThrow('There is no sheet "Loaf"; there are Sheet1');
    expect(book.usedRange("Sheet1")).toBe("A1:B6");
  });
});

describe("the sidebar's server", () => {
  const bench = (body: string) =>
    openWorkbook({
      codeJs: `function onOpen() { SpreadsheetApp.getUi().createAddonMenu().addItem("Say", "say").addToUi(); }
    function say() { SpreadsheetApp.getActive().toast("said"); } function answerSidebar(json) { ${body} }`,
      sidebarHtml: "",
    });
  test("answers and refusals come through as JSON", () => {
    const book = bench("return JSON.stringify({ ok: true, answer: JSON.parse(json).ask + '!' });");
    expect(book.ask({ ask: "ping" })).toEqual({ ok: true, answer: "ping!" });
    expect(book.answer({ ask: "ping" })).toBe("ping!");
    const refusing = bench("return JSON.stringify({ ok: false, message: 'no flour' });");
    expect(refusing.ask({})).toEqual({ ok: false, message: "no flour" });
    expect(() => refusing.answer({})).toThrow("no flour");
  });
  test("anything else than a JSON text of that shape fails", () => {
    expect(() => bench("return 5;").ask({})).toThrow(/did not return a text/);
    expect(() => bench("return 'x';").ask({})).toThrow(SyntaxError);
    expect(() => bench("return '{}';").ask({})).toThrow(/answerSidebar returned/);
  });
  test("a menu item runs with all permissions", () => {
    const book = bench("");
    book.runMenu("Say");
    expect(book.shown.messages).toEqual(["said"]);
    expect(() => book.runMenu("Sing")).toThrow(/no item "Sing"/);
  });
});

describe("reading the script's declarations", () => {
  test("only commented top-level functions with the tag are listed", () => {
    const code = `/** Not this one. @param {number} x no */
function helper(x) {}
/**
 * Scales a list.
 * It keeps the order.
 *
 * @param {number|Array<Array<number>>} weights The weights,
 *     in grams.
 * @param {number} factor How many times (optional).
 * @return {Array<Array<number>>} the list
 * @customfunction
 */
function LIST_SCALE(weights, factor) {}
/** @customfunction */

function LIST_PLAIN() {}
/** @customfunction */ var notAFunction = 1;`;
    expect(findStubs(code)).toEqual([
      {
        name: "LIST_SCALE",
        summary: "Scales a list. It keeps the order.",
        parameters: [
          { name: "weights", says: "The weights, in grams." },
          { name: "factor", says: "How many times (optional)." },
        ],
      },
      { name: "LIST_PLAIN", summary: "", parameters: [] },
    ]);
  });
});

describe("a workbook of the last time", () => {
  test("calculates with the script's functions, though no workbook of this process has called them yet", () => {
    const codeJs = "/** @customfunction */ function KEPT_TWICE(x) { return 2 * x; }";
    const sheet = { id: "s", name: "Sheet1", colNumber: 5, rowNumber: 9 };
    const cells = { A1: "21", A2: "=KEPT_TWICE(A1)", A3: '=IF(A2>40,KEPT_TWICE(A2),"")' };
    const book = openWorkbook({ codeJs, data: { sheets: [{ ...sheet, cells }] } as never });
    expect(book.values("Sheet1", "A2:A3")).toEqual([[42], [84]]);
    book.type("Sheet1", "A1", "30");
    expect(book.values("Sheet1", "A2:A3")).toEqual([[60], [120]]);
  });
});

describe("undoing what a script did", () => {
  test("the workbook takes what is typed after notes and protections were undone", () => {
    const book = withScript(`sheet.getRange("A2").setNote("the flour"); sheet.protect().setWarningOnly(true);`);
    book.type("Sheet1", "B2", "1000");
    book.go();
    const model = book.engine.model as unknown as { dispatch(type: string): unknown };
    for (let step = 0; step < 10 && book.cell("Sheet1", "A2").note !== ""; step++) model.dispatch("REQUEST_UNDO");
    expect(book.cell("Sheet1", "A2").note).toBe("");
    book.type("Sheet1", "A2", "rye");
    book.type("Sheet1", "B3", "=B2*2");
    expect(book.values("Sheet1", "A2:B3")).toEqual([
      ["rye", 1000],
      ["", 2000],
    ]);
  });
});

describe("a sheet as text", () => {
  test("columns stand in line, numbers to the right, the last text runs on", () => {
    const text = (value: string) => ({ text: value, isNumber: false });
    const number = (value: string) => ({ text: value, isNumber: true });
    const table = textTable([
      [text("Pan loaf, as it was made on the quay"), text(""), text("")],
      [text(""), text(""), text("")],
      [text(""), text(""), text("")],
      [text("flour"), text(""), number("1,000.0")],
      [text("salt"), text(""), number("20.0")],
    ]);
    expect(table).toBe(["Pan loaf, as it was made on the quay", "", "flour  1,000.0", "salt      20.0"].join("\n"));
  });
});
