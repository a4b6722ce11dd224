import exceljs from "exceljs";
import { describe, expect, test } from "vitest";
import type { SheetModel } from "../../shared/sheet/model.ts";
import { openWorkbook, type WorkbookHost } from "../../src/workbook/host.ts";
import { pageOf, pagesOf, twoPages } from "../../src/workbook/xlsx/page.ts";
import { toXlsx } from "../../src/workbook/xlsx/xlsx.ts";
import { allergenTable } from "../../templates/allergen-table.ts";
import { labelText } from "../../templates/label-text.ts";
import { asOfficeReads, asValue, hasOffice, openProbes, PROBES } from "./support.ts";

// Formulas of the portable kind; what they give is not written here: LibreOffice calculates them from the file on its own.
const FORMULAS = [
  "=SUM(A1:A5)",
  "=SUMPRODUCT(A1:A5;B1:B5)",
  '=SUMIF(C1:C5;"flour";A1:A5)',
  '=SUMIFS(A1:A5;C1:C5;"flour";B1:B5;">0")',
  "=ROUND(A1/3;2)",
  "=ROUND(1005/1000;2)",
  "=ROUNDUP(A2/7;1)",
  "=ROUNDDOWN(-A2/7;1)",
  "=MROUND(A1;5)",
  "=CEILING(A1;5)",
  "=FLOOR(A1;5)",
  "=INT(3/10/(1/10))",
  "=TRUNC(-A2/7)",
  '=IF(A1>A2;"more";"less")',
  '=IFS(A1>A2;"more";TRUE();"less")',
  '=SWITCH(C1;"flour";1;"water";2;0)',
  '=IFERROR(1/A4;"none")',
  '=INDEX(A1:A5;MATCH("salt";C1:C5;0))',
  "=VLOOKUP(650;A1:C5;3;FALSE())",
  '=TEXTJOIN(", ";TRUE();C1:C5)',
  "=COUNTA(C1:C5)",
  "=MAX(A1:A5)-MIN(A1:A5)",
  "=AVERAGE(A1:A5)",
  "=LEN(C1)&LEFT(C2;2)",
  "=AND(A1>0;NOT(A2>A1))",
  "=SUMSQ(A1:A3)",
  "=QUOTIENT(A1;7)",
  "=GCD(A1;A2)",
  "=MOD(A1;7)",
  "=POWER(A3;2)",
  "=ABS(-A1)",
  '=COUNTIF(C1:C5;"flour")',
  "=A1/A4",
  "=A4",
];

function ledger(): WorkbookHost {
  const book = openWorkbook({ codeJs: PROBES, sidebarHtml: "" });
  const rows = [
    ["1000", "100%", "flour"],
    ["650", "65%", "water"],
    ["20", "2%", "salt"],
    ["", "", ""],
    ["50", "5%", "flour"],
  ];
  rows.forEach((cells, row) => {
    for (const [column, text] of cells.entries()) book.type("Sheet1", `${"ABC"[column]}${row + 1}`, text);
  });
  for (const [index, formula] of FORMULAS.entries()) book.type("Sheet1", `F${index + 1}`, formula);
  book.type("Sheet1", "H1", '=ARRAYFORMULA(IF(A1:A5>30;A1:A5*2;""))');
  book.type("Sheet1", "M1", "=ARRAYFORMULA(SUM(A1:A2*2))");
  book.type("Sheet1", "J1", '=PROBE_RETURN("block")');
  book.type("Sheet1", "J4", '=PROBE_THROW("say grams")');
  return book;
}

async function reread(book: WorkbookHost): Promise<exceljs.Workbook> {
  const file = new exceljs.Workbook();
  await file.xlsx.load((await toXlsx(book.engine)) as unknown as ArrayBuffer);
  return file;
}

describe("the file", () => {
  test.skipIf(!hasOffice)("LibreOffice calculates the same from it", async () => {
    const book = ledger();
    const office = asOfficeReads(await toXlsx(book.engine)).Sheet1 ?? [];
    const column = (letter: number) => FORMULAS.map((_, row) => asValue(office[row]?.[letter] ?? ""));
    const ours = book.values("Sheet1", `F1:F${FORMULAS.length}`).flat();
    column(5).forEach((theirs, index) => {
      const own = typeof ours[index] === "boolean" ? String(ours[index]).toUpperCase() : ours[index];
      if (typeof theirs === "number") expect(own, FORMULAS[index]).toBeCloseTo(theirs, 9);
      else expect(own, FORMULAS[index]).toBe(theirs);
    });
    expect(column(7).slice(0, 5)).toEqual([2000, 1300, "", "", 100]);
    expect(column(9).slice(0, 4)).toEqual([1, "TRUE", "", "#VALUE!"]);
  });

  test("plain formulas stay formulas, array formulas cover their cells, own functions become values", async () => {
    const sheet = (await reread(ledger())).getWorksheet("Sheet1");
    expect(sheet?.getCell("F1").formula).toBe("SUM(A1:A5)");
    expect(sheet?.getCell("F15").formula).toBe('_xlfn.IFS(A1>A2,"more",TRUE(),"less")');
    expect(sheet?.getCell("H1").value).toMatchObject({
      shareType: "array",
      ref: "H1:H5",
      formula: expect.not.stringContaining("ARRAYFORMULA"),
    });
    expect(sheet?.getCell("M1").value).toMatchObject({ shareType: "array", ref: "M1:M1", result: 3300 });
    expect(sheet?.getCell("J1").value).toBe(1);
    expect(sheet?.getCell("K1").value).toBe("a");
    expect(sheet?.getCell("J1").note).toBe("A kept value, computed by PROBE_RETURN in Gramwright.");
    expect(sheet?.getCell("J4").value).toEqual({ error: "#VALUE!" });
    expect(sheet?.getCell("J4").note).toBe("A kept value, computed by PROBE_THROW in Gramwright. It says: say grams");
    expect(sheet?.getCell("K2").note).toBeUndefined();
    // What is kept is seen to be so: the call's own cell and those that its answer fills, and no cell of a plain formula.
    for (const address of ["J1", "K1", "J4"]) {
      expect(sheet?.getCell(address).font?.italic, address).toBe(true);
      expect(sheet?.getCell(address).fill, address).toMatchObject({ pattern: "solid" });
    }
    for (const address of ["H1", "M1"]) expect(sheet?.getCell(address).font?.italic ?? false, address).toBe(false);
  });

  test("looks, sizes, rules, names and the page are kept", async () => {
    const book = openWorkbook({
      codeJs: `function go() { var book = SpreadsheetApp.getActive(); var sheet = book.getActiveSheet();
      sheet.getRange("A1:B1").setValues([["Name", "Share"]]).setFontWeight("bold").setBackground("#f4efe6").setFontColor("#1f5f5b").setFontSize(12).setFontFamily("Georgia");
      sheet.getRange("A1").setBorder(true, false, true, false, null, null, "#8a5a2b", SpreadsheetApp.BorderStyle.SOLID_MEDIUM).setHorizontalAlignment("right").setVerticalAlignment("middle").setWrap(true).setNote("a note");
      sheet.getRange("B2").setNumberFormat("0.0%").setValue(0.65); sheet.getRange("C2").setNumberFormat("@").setValue("007");
      var build = function () { return SpreadsheetApp.newDataValidation(); };
      sheet.getRange("A2:A9").setDataValidation(build().requireValueInList(["flour", "water"]).setAllowInvalid(true).setHelpText("the kind").build());
      sheet.getRange("B2:B9").setDataValidation(build().requireNumberBetween(0, 10).setAllowInvalid(false).build());
      sheet.getRange("D2").setDataValidation(build().requireValueInList(["one, two", "three"]).build());
      sheet.setConditionalFormatRules([SpreadsheetApp.newConditionalFormatRule().whenFormulaSatisfied("=$B2>1/2").setBackground("#ffeeaa").setRanges([sheet.getRange("A2:B9")]).build(),
        SpreadsheetApp.newConditionalFormatRule().whenTextContains("check").setFontColor("#aa0000").setRanges([sheet.getRange("C2:C9")]).build()]);
      sheet.setColumnWidth(1, 140); sheet.setRowHeight(2, 40); sheet.setFrozenRows(1); sheet.setHiddenGridlines(true); sheet.setTabColor("#8a5a2b");
      book.setNamedRange("gramwright_larder", sheet.getRange("A2:B9")); book.insertSheet("Empty"); }`,
      sidebarHtml: "",
    });
    book.script.run("FULL", "go");
    const file = await reread(book);
    const sheet = file.getWorksheet("Sheet1");
    if (!sheet) throw new Error("no sheet");
    expect(file.worksheets.filter(({ state }) => state === "visible").map(({ name }) => name)).toEqual(["Sheet1"]);
    const head = sheet.getCell("A1");
    expect(head.font).toMatchObject({ bold: true, size: 12, name: "Georgia", color: { argb: "FF1F5F5B" } });
    expect(head.fill).toMatchObject({ pattern: "solid", fgColor: { argb: "FFF4EFE6" } });
    expect(head.border).toEqual({
      top: { style: "medium", color: { argb: "FF8A5A2B" } },
      bottom: { style: "medium", color: { argb: "FF8A5A2B" } },
    });
    expect(head.alignment).toMatchObject({ horizontal: "right", vertical: "middle", wrapText: true });
    expect(JSON.stringify(head.note)).toContain("a note");
    expect(sheet.getCell("B2")).toMatchObject({ value: 0.65, numFmt: "0.0%" });
    expect(sheet.getCell("C2")).toMatchObject({ value: "007", numFmt: "@" });
    expect(sheet.getCell("A3").dataValidation).toMatchObject({
      type: "list",
      formulae: ['"flour,water"'],
      errorStyle: "warning",
      prompt: "the kind",
    });
    expect(sheet.getCell("B9").dataValidation).toMatchObject({
      type: "decimal",
      operator: "between",
      formulae: [0, 10],
    });
    expect(sheet.getCell("D2").dataValidation).toMatchObject({ type: "list", formulae: ["Lists!$A$1:$A$2"] });
    expect(file.getWorksheet("Lists")?.getCell("A1").value).toBe("one, two");
    const rules = (sheet as unknown as { conditionalFormattings: { ref: string; rules: object[] }[] })
      .conditionalFormattings;
    expect(rules.map(({ ref }) => ref)).toEqual(["A2:B9", "C2:C9"]);
    expect(rules[0]?.rules[0]).toMatchObject({ type: "expression", formulae: ["$B2>1/2"] });
    // 140 pixels: (140 - 5) / 7 digits; 40 pixels at 96 to the inch are 30 points.
    expect(sheet.getColumn(1).width).toBeCloseTo(19.29, 2);
    expect(sheet.getRow(2).height).toBe(30);
    expect(sheet.views[0]).toMatchObject({ state: "frozen", ySplit: 1, showGridLines: false });
    expect(sheet.properties.tabColor).toMatchObject({ argb: "FF8A5A2B" });
    expect(file.definedNames.getRanges("gramwright_larder").ranges).toEqual(["Sheet1!$A$2:$B$9"]);
    expect(sheet.pageSetup).toMatchObject({
      paperSize: 9,
      orientation: "portrait",
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 1,
    });
  });

  test("a formula nobody else has keeps its value", async () => {
    const book = openProbes();
    book.type("Sheet1", "A1", "3");
    book.type("Sheet1", "A2", "1");
    book.type("Sheet1", "B1", "=SORT(A1:A2;1;TRUE())");
    book.type("Sheet1", "C1", "=SUM(A1:A)");
    book.type("Sheet1", "D1", "=SUM(");
    const sheet = (await reread(book)).getWorksheet("Sheet1");
    expect([sheet?.getCell("B1").value, sheet?.getCell("B2").value]).toEqual([1, 3]);
    expect(sheet?.getCell("B1").note).toContain("SORT");
    expect(sheet?.getCell("C1").value).toBe(4);
    expect(sheet?.getCell("D1").value).toEqual({ error: "#VALUE!" });
  });

  test("a long sheet takes several readable pages, and what it only works with stays off them", async () => {
    const book = openProbes();
    for (let row = 1; row <= 120; row++) book.type("Sheet1", `A${row}`, `row ${row}`);
    book.type("Sheet1", "A90", "Worked out here: nothing to type");
    const { pageSetup } = await firstSheetOf(book);
    expect(pageSetup).toMatchObject({ fitToWidth: 1, fitToHeight: 0, orientation: "portrait" });
    expect(pageSetup.printArea).toBe("A1:A89");
  });

  test("columns to work with stay off the page as well, with the rows that only they fill", async () => {
    const book = openProbes();
    book.type("Sheet1", "A1", "To get");
    book.type("Sheet1", "C1", "Worked out here");
    book.type("Sheet1", "B7", "sugar");
    book.type("Sheet1", "D9", "flour");
    const { pageSetup } = await firstSheetOf(book);
    expect(pageSetup).toMatchObject({ fitToHeight: 1, printArea: "A1:B7" });
  });
});

test("label texts and the allergen table keep 10 point on Letter, and so on A4, which is wider on its side", () => {
  // 11 inches less a quarter on either side, in pixels of 96 to the inch.
  const ROOM = 10.5 * 96;
  const sum = (widths: readonly number[]) => widths.reduce((all, one) => all + one, 0);
  const columnsOf = ({ bands }: SheetModel): readonly string[] =>
    bands.flat().flatMap((item) => ("table" in item ? [item.columns.map(({ name }) => name)] : []))[0] ?? [];
  const onPage = allergenTable.widths.slice(0, columnsOf(allergenTable).length);
  expect(onPage).toHaveLength(17);
  expect(sum(onPage)).toBeLessThanOrEqual(ROOM);
  const set = pageOf(sum(onPage), 600, false);
  expect(set).toMatchObject({ orientation: "landscape", fitToWidth: 1, fitToHeight: 1, margins: { left: 0.25 } });
  expect(pageOf(600, 900, false)).toMatchObject({ orientation: "portrait", fitToHeight: 1 });
  // Two pages side by side, the products on both.
  const [first = 0, ...others] = labelText.widths.slice(0, columnsOf(labelText).indexOf("day_text"));
  const isSecond = columnsOf(labelText).indexOf("net_weight") - 1;
  expect(first + sum(others.slice(0, isSecond))).toBeLessThanOrEqual(ROOM);
  expect(first + sum(others.slice(isSecond))).toBeLessThanOrEqual(ROOM);
  const heading = (column: number, row: number) => (column === 1 && row === 4 ? "Name on the label" : "");
  expect(pagesOf(9, heading, 3).sideBySide).toBe(4);
  expect(twoPages(4, true)).toMatchObject({
    paperSize: 1,
    fitToWidth: 2,
    printTitlesColumn: "A:A",
    printTitlesRow: "5:5",
  });
});

const firstSheetOf = async (book: WorkbookHost): Promise<exceljs.Worksheet> =>
  (await reread(book)).worksheets[0] as exceljs.Worksheet;
