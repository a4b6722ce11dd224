import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { openWorkbook } from "../../src/workbook/host.ts";
import { files } from "../templates/sheet-support.ts";
import { withScript } from "./support.ts";

const refuses = (body: string, because: RegExp) => expect(() => withScript(body).go()).toThrow(because);
describe("what a script may touch", () => {
  test.each([
    ["SpreadsheetApp.openById('x')", /SpreadsheetApp.openById is not in the stand-in/],
    ["sheet.sort(1)", /Sheet.sort is not in the stand-in/],
    ["sheet.getRange('A1').merge()", /Range.merge is not in the stand-in/],
    ["book.rename('x'); sheet", /Spreadsheet.rename is not in the stand-in/],
    ["HtmlService.createTemplate('x')", /HtmlService.createTemplate is not in the stand-in/],
    ["sheet.extra = 1", /Sheet.extra cannot be assigned/],
  ])("%s throws", (body, because) => refuses(body, because));

  test.each([
    "setTimeout",
    "setInterval",
    "fetch",
    "URL",
    "TextEncoder",
    "process",
    "require",
    "structuredClone",
    "CacheService",
    "UrlFetchApp",
  ])("%s does not exist in a script", (name) => {
    expect(withScript(`return typeof ${name}`).go()).toBe("undefined");
  });

  test("without permission only the menu can be made", () => {
    const code = (body: string) =>
      openWorkbook({
        codeJs: `function onOpen() { ${body} SpreadsheetApp.getUi().createAddonMenu().addItem("A", "a").addToUi(); }`,
        sidebarHtml: "",
      });
    expect(code("").menu()).toEqual([{ caption: "A", functionName: "a" }]);
    expect(() => code("SpreadsheetApp.getActive();").menu()).toThrow(/permission to call SpreadsheetApp.getActive/);
    expect(() => code("SpreadsheetApp.getUi().alert('x');").menu()).toThrow(/permission to call Ui.alert/);
  });

  test("a service called while the script is loaded throws, as for a formula cell", () => {
    expect(() => openWorkbook({ codeJs: "var book = SpreadsheetApp.getActive();", sidebarHtml: "" })).toThrow(
      /permission/,
    );
  });

  test.each(["Open Gramwright", "Test this installation"])(
    "%s asks for both permissions first, and shows nothing where a box was left empty",
    async (caption) => {
      const { codeJs, sidebarHtml } = await files();
      const book = openWorkbook({ codeJs, sidebarHtml });
      book.runMenu(caption);
      expect(book.shown.messages).toEqual(["log: asked for all permissions"]);
      expect(book.shown.sidebar?.title).toMatch(/^Gramwright/);
      book.shown.sidebar = undefined;
      book.session.isScopeMissing = true;
      // Google's own question comes in place of an error in the middle of something.
      expect(() => book.runMenu(caption)).toThrow("Authorization is required to perform that action.");
      expect(book.shown.sidebar).toBeUndefined();
    },
  );

  test("where the service does not know how to ask, the sidebar opens all the same", async () => {
    const { codeJs, sidebarHtml } = await files();
    const book = openWorkbook({ codeJs: `var ScriptApp = undefined;\n${codeJs}`, sidebarHtml });
    book.runMenu("Open Gramwright");
    expect(book.shown.sidebar?.title).toBe("Gramwright");
  });

  test.each([
    ["nothing", () => ""],
    ["Code.js", ({ codeJs }: { codeJs: string }) => codeJs],
    ["the manifest", () => readFileSync("src/add-on/appsscript.json", "utf8")],
    ["what the editor begins with", () => "<!DOCTYPE html><html><head><base target='_top'></head><body></body></html>"],
  ])("%s in the place of the page, which cannot say so itself, is told by the menu", async (_, text) => {
    const built = await files();
    const book = openWorkbook({ codeJs: built.codeJs, sidebarHtml: text(built) });
    for (const caption of ["Open Gramwright", "Test this installation"]) {
      book.shown.messages.length = 0;
      book.runMenu(caption);
      expect(book.shown.messages.join()).toMatch(/The file sidebar\.html holds another text, or none\..*second text/);
    }
  });

  test("a file that is not pushed cannot be shown", () => {
    const show = (file: string) =>
      withScript(
        `SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutputFromFile("${file}").setTitle("T").setWidth(300))`,
      );
    const book = show("sidebar");
    book.go();
    expect(book.shown.sidebar).toEqual({ title: "T", file: "sidebar" });
    expect(() => show("other").go()).toThrow(/No HTML file named other/);
    expect(() => show("sidebar").go("LIMITED")).toThrow(/permission to call Ui.showSidebar/);
  });
});

describe("grids", () => {
  test.each([
    [
      "sheet.getRange('A1:B2').setValues([[1, 2]])",
      /number of rows in the data does not match the number of rows in the range. The data has 1 but the range has 2/,
    ],
    [
      "sheet.getRange('A1:B2').setValues([[1, 2], [3]])",
      /number of columns in the data does not match the number of columns in the range. The data has 1 but the range has 2/,
    ],
    ["sheet.getRange('A1:B1').setBackgrounds([['#ffffff']])", /number of columns/],
    ["sheet.getRange('A1').setValues([1])", /A row of a grid is a list/],
    ["sheet.getRange('A2').setValue(5); sheet.getRange('A1:A2').setFormulas([['=1+1'], ['']])", /A2 has no formula/],
    ["sheet.getRange(0, 1)", /starting row or column of the range is too small/],
    ["sheet.getRange(1, 27)", /outside the dimensions of the sheet/],
    ["sheet.getRange('A1001')", /outside the dimensions of the sheet/],
    ["sheet.getRange(1, 1, 0, 1)", /must be at least 1/],
    ["sheet.getRange('oven')", /Range not found/],
  ])("%s throws", (body, because) => refuses(body, because));
});

describe("texts", () => {
  test.each(["=1+1", "+1 egg", "-5 %", "@home", "=HYPERLINK(A1)"])("%s must be escaped", (text) => {
    refuses(`sheet.getRange("A1").setValue(${JSON.stringify(text)})`, /begins like a formula must be escaped/);
  });

  test.each([
    "12",
    "1.5",
    "12,5",
    "3/4",
    "1-2",
    "2026-11-25",
    "65%",
    "12:30",
    "TRUE",
    "false",
    "1e3",
    "$5",
    "Jan 5",
    "5 May 2026",
  ])("%s would not stay text", (text) => {
    refuses(`sheet.getRange("A1").setValue(${JSON.stringify(text)})`, /would not keep this as text/);
  });

  test.each([
    "flour",
    "T 55",
    "1:0.5 poolish",
    "type 00",
    "2nd rise",
    "may contain nuts",
    "May contain nuts",
    "12 g",
    "3/4 cup",
  ])("%s is text to any sheet", (text) => {
    const book = withScript(`sheet.getRange("A1").setValue(${JSON.stringify(text)})`);
    book.go();
    expect(book.cell("Sheet1", "A1").value).toBe(text);
  });

  test("the escape is not stored, and a cell of text takes anything as it is", () => {
    const book = withScript(`sheet.getRange("A1:B1").setValues([["'=1+1", "'007"]]);
      sheet.getRange("A2:D2").setNumberFormat("@").setValues([["=1+1", "007", "3/4", "TRUE"]]);
      return sheet.getRange("A1:D2").getValues()`);
    const [first, second] = book.go() as unknown[][];
    expect(first).toEqual(["=1+1", "007", "", ""]);
    expect(second).toEqual(["=1+1", "007", "3/4", "TRUE"]);
    expect(book.shownTexts("Sheet1", "A1:D2")).toEqual([
      ["=1+1", "007", "", ""],
      ["=1+1", "007", "3/4", "TRUE"],
    ]);
    expect(
      book
        .formulas("Sheet1", "A1:D2")
        .flat()
        .every((formula) => formula === undefined),
    ).toBe(true);
  });

  test.each([
    [`sheet.getRange("A1").setNumberFormat("@").setValue("'x")`, /apostrophe would stay/],
    [`sheet.getRange("A1").setNumberFormat("@").setValue(5)`, /number 5 is written to a cell of text/],
    [`sheet.getRange("A1").setNumberFormat("@").setFormula("=1+1")`, /would show the formula's text/],
    [`sheet.getRange("A1").setValue(0 / 0)`, /NaN cannot be written/],
    [`sheet.getRange("A1").setValue(undefined)`, /undefined cannot be written/],
    [`sheet.getRange("A1").setValue({})`, /Object\] cannot be written/],
    [`sheet.getRange("A1").setValue(new Array(50002).join("x"))`, /50000 characters/],
  ])("%s throws", (body, because) => refuses(body, because));

  test("numbers, truth values and dates come back as they went", () => {
    const book =
      withScript(`sheet.getRange("A1").setNumberFormat("yyyy-mm-dd"); sheet.getRange("A1:C1").setValues([[new Date(2026, 10, 25), 0.65, true]]);
      var values = sheet.getRange("A1:D1").getValues()[0]; return [values[0] instanceof Date, values[0].getDate(), values[1], values[2], values[3]]`);
    expect(book.go()).toEqual([true, 25, 0.65, true, ""]);
  });
});
