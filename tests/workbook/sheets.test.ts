import { describe, expect, test } from "vitest";
import { openWorkbook } from "../../src/workbook/host.ts";
import { withScript } from "./support.ts";

const refuses = (body: string, because: RegExp) => expect(() => withScript(body).go()).toThrow(because);
const allows = (body: string) => expect(() => withScript(body).go()).not.toThrow();

describe("formulas", () => {
  test.each([
    ["=SUM(A1,A2)", /comma does not separate arguments in every locale/],
    ["=A1*0.5", /0.5 is a decimal literal/],
    ["={1,2}", /comma/],
    ['="a""b"', /CHAR\(34\)/],
    ["=-A1^2", /read two ways/],
    ["=B1:B5*2", /unless ARRAYFORMULA/],
    ['=IF(B1:B5>0;1;"")', /unless ARRAYFORMULA/],
    ["=ROUND(B1:B5;1)", /unless ARRAYFORMULA/],
    ["=SUM(B1:B5*2)", /unless ARRAYFORMULA/],
    ["=LET(x;1;x)", /LET is not a function of the workbook/],
    ["=NOSUCH(1)", /NOSUCH is not a function of the workbook/],
    ["=SUM(A1;", /cannot be read/],
    ["1+1", /starts with "="/],
  ])("%s is refused", (formula, because) =>
    refuses(`sheet.getRange("C1").setFormula(${JSON.stringify(formula)})`, because),
  );

  test.each([
    "=SUM(A1;A2)",
    "=A1*5/100",
    '=TEXTJOIN(";";TRUE();A1:A2)',
    "={1;2}",
    "=ARRAYFORMULA(B1:B5*2)",
    "=SUMPRODUCT(B1:B5*2;B1:B5)",
    "=-(A1^2)",
    "=INDEX(B1:B5;2)",
    '=SUMIF(A1:A5;">0";B1:B5)',
    "='Sheet1'!A1",
    '=IFERROR(INDEX(B1:B5;MATCH(2;A1:A5;0));"")',
    "=A1:A1*2",
  ])("%s is taken", (formula) => allows(`sheet.getRange("D1").setFormula(${JSON.stringify(formula)})`));

  test("reading after a formula was written throws; the next run may read", () => {
    for (const read of [
      "sheet.getRange('A1').getValue()",
      "book.getSheetByName('x')",
      "sheet.getLastRow()",
      "sheet.getName()",
    ]) {
      refuses(`sheet.getRange("A1").setFormula("=1+1"); ${read}`, /after setFormula: a read waits/);
    }
    const book = openWorkbook({
      codeJs: `function write() { SpreadsheetApp.getActiveSheet().getRange("A1").setFormula("=1+1"); }
      function read() { return SpreadsheetApp.getActiveSheet().getRange("A1").getValue(); }`,
      sidebarHtml: "",
    });
    book.script.run("FULL", "write");
    expect(book.script.run("FULL", "read")).toBe(2);
  });
});

describe("sheets and names", () => {
  test.each(["sheet1", "SHEET1"])("the name %s is taken", (name) =>
    refuses(`book.insertSheet("${name}"); sheet`, /already exists/),
  );
  test.each(["a/b", "a\\b", "a?", "a*", "[a]", "a:b", "History", "history", "", "   ", "'a", "x".repeat(101)])(
    "the name %j is refused",
    (name) => {
      refuses(`book.insertSheet(${JSON.stringify(name)}); sheet`, /sheet name|needs a name/i);
    },
  );
  test("a new sheet becomes active and is found by its exact name", () => {
    const book = withScript(
      `book.insertSheet("Rye", 0); sheet; return [book.getActiveSheet().getName(), book.getSheetByName("rye"), book.getSheets().length, book.getSheetByName("Rye").getIndex()]`,
    );
    expect(book.go()).toEqual(["Rye", null, 2, 1]);
    expect(book.sheetNames()).toEqual(["Rye", "Sheet1"]);
  });
  test("the last sheet stays", () => refuses("book.deleteSheet(sheet)", /can't remove all the sheets/));
  test.each(["A1", "ab12", "R1C1", "r2c", "true_loaf", "1st", "two words", "x-y", ""])(
    "%j is no name for a range",
    (name) => {
      refuses(`book.setNamedRange(${JSON.stringify(name)}, sheet.getRange("A1:A2"))`, /is no name for a range/);
    },
  );
  test("a named range can be set again elsewhere and is one for the whole workbook", () => {
    const book =
      withScript(`book.setNamedRange("gramwright_larder", sheet.getRange("A1:A2")); book.setNamedRange("gramwright_larder", sheet.getRange("B1:B3"));
      return [book.getNamedRanges().length, book.getRangeByName("gramwright_larder").getA1Notation(), book.getRangeByName("nothing")]`);
    expect(book.go()).toEqual([1, "B1:B3", null]);
  });
  test.each([
    ["sheet.deleteRows(990, 20)", /Those rows are out of bounds/],
    ["sheet.deleteRows(1, 1000)", /can't delete all the rows/],
    ["sheet.setColumnWidth(27, 100)", /out of bounds/],
    ["sheet.getRange('A1').setNumberFormat('[Red]0')", /cannot be shown by the workbook/],
    ["sheet.getRange('A1').setBackground('red')", /#rrggbb/],
    ["sheet.getRange('A1').setBorder(true, true)", /setBorder takes/],
    ["sheet.getRange('A1').setHorizontalAlignment('centre')", /setHorizontalAlignment takes/],
  ])("%s throws", (body, because) => refuses(body, because));
});

describe("rules, notes and protection", () => {
  test("a list that warns lets another word in, one that blocks does not", () => {
    const rule = (allow: boolean) =>
      withScript(
        `sheet.getRange("A1:A3").setDataValidation(SpreadsheetApp.newDataValidation().requireValueInList(["flour", "water"]).setAllowInvalid(${allow}).setHelpText("kind").build())`,
      );
    const [warning, blocking] = [rule(true), rule(false)];
    warning.go();
    blocking.go();
    warning.type("Sheet1", "A2", "ash");
    expect(warning.cell("Sheet1", "A2").value).toBe("ash");
    blocking.type("Sheet1", "A1", "water");
    expect(() => blocking.type("Sheet1", "A1", "ash")).toThrow(/violates the data validation rules/);
    expect(blocking.cell("Sheet1", "A1").value).toBe("water");
  });

  test("a grid of rules belongs to its cells, also to a row put in between", () => {
    const book =
      withScript(`var number = function () { return SpreadsheetApp.newDataValidation().requireNumberBetween(0, 10).setAllowInvalid(false).build(); };
      sheet.getRange("A1:B3").setDataValidations([[null, number()], [null, number()], [null, number()]])`);
    book.go();
    book.type("Sheet1", "A1", "99");
    expect(() => book.type("Sheet1", "B2", "99")).toThrow(/violates/);
    book.insertRows("Sheet1", 2);
    expect(() => book.type("Sheet1", "B2", "99")).toThrow(/violates/);
  });

  test("notes and warning-only protection are kept and move with their cells", () => {
    const book =
      withScript(`sheet.getRange("A2").setNote("the flour"); sheet.protect().setWarningOnly(true).setDescription("d").setUnprotectedRanges([sheet.getRange("B1:B2")]);
      sheet.getRange("C3").protect().setWarningOnly(true);
      var kinds = SpreadsheetApp.ProtectionType; return [sheet.getProtections(kinds.SHEET)[0].isWarningOnly(), sheet.getProtections(kinds.RANGE)[0].getRange().getA1Notation()]`);
    expect(book.go()).toEqual([true, "C3"]);
    book.insertRows("Sheet1", 1);
    expect(book.cell("Sheet1", "A3").note).toBe("the flour");
    expect(book.duplicateSheet("Sheet1")).toBe("Copy of Sheet1");
    expect(book.cell("Copy of Sheet1", "A3").note).toBe("the flour");
  });

  test("a conditional format needs its own sheet's ranges", () => {
    refuses(
      `var other = book.insertSheet("Other"); sheet.setConditionalFormatRules([SpreadsheetApp.newConditionalFormatRule()
      .whenFormulaSatisfied("=$A1>1").setBackground("#ffeeaa").setRanges([other.getRange("A1:A3")]).build()])`,
      /own sheet/,
    );
    refuses(`SpreadsheetApp.newConditionalFormatRule().whenFormulaSatisfied("=$A1>1,5"); sheet`, /comma/i);
    allows(`sheet.setConditionalFormatRules([SpreadsheetApp.newConditionalFormatRule().whenFormulaSatisfied("=$A1>1").setBold(true)
      .setBackground("#ffeeaa").setRanges([sheet.getRange("A1:A3")]).build()])`);
  });
});

describe("counting and failing", () => {
  const WRITES = `sheet.getRange("A1").setValue(1); sheet.getRange("A2:C2").setValues([[1, 2, 3]]); sheet.setFrozenRows(1)`;
  test("a whole-range write is one call, building a rule none", () => {
    const book = withScript(`${WRITES}; SpreadsheetApp.newDataValidation().requireNumberBetween(1, 2).build()`);
    book.go();
    expect(book.serviceCalls).toBe(3);
    expect(book.trail).toEqual(["setValue", "setValues", "setFrozenRows"]);
  });

  test("a text finder looks through every sheet in one call, at what cells show and whatever the capitals", () => {
    const book =
      withScript(`var other = book.insertSheet("Other"); sheet.getRange("B3").setValue("Share of flour"); other.getRange("A2").setValue(12);
      other.getRange("C1").setValue("the share of FLOUR, ground");
      return book.createTextFinder("share of flour").findAll().map(function (one) { return [one.getSheet().getSheetId() === sheet.getSheetId(), one.getA1Notation()]; })`);
    expect(book.go()).toEqual([
      [true, "B3"],
      [false, "C1"],
    ]);
    expect(book.trail.filter((name) => name === "findAll")).toHaveLength(1);
    refuses(`SpreadsheetApp.getActive().createTextFinder(""); sheet`, /text to find/);
  });

  test("the n-th call fails once, and what was written before it stays", () => {
    const book = withScript(WRITES);
    book.failAt(2);
    expect(() => book.go()).toThrow(/Service Spreadsheets failed while accessing document \(setValues\)/);
    expect(book.values("Sheet1", "A1:A2")).toEqual([[1], [""]]);
    book.go();
    expect(book.values("Sheet1", "A1:C2")).toEqual([
      [1, "", ""],
      [1, 2, 3],
    ]);
  });

  test("a lock that someone holds is not given", () => {
    const book = withScript("var lock = LockService.getDocumentLock(); return [lock.tryLock(10), lock.hasLock()]");
    expect(book.go()).toEqual([true, true]);
    book.session.lockIsTaken = true;
    expect(withTakenLock().go()).toEqual([false, false]);
  });
  const withTakenLock = () => {
    const book = withScript("var lock = LockService.getDocumentLock(); return [lock.tryLock(10), lock.hasLock()]");
    book.session.lockIsTaken = true;
    return book;
  };
});

describe("google.script.run", () => {
  const code = `function answerSidebar(json) { return json; } function secret_() { return 1; } function dated() { return { at: new Date(0) }; }
    function hollow() { return [undefined, 1]; } function nothing() {}`;
  const book = openWorkbook({ codeJs: code, sidebarHtml: "" });
  test.each([
    ["secret_", [], /not found: secret_/],
    ["missing", [], /not found: missing/],
    ["toString", [], /not found: toString/],
    ["answerSidebar", [new Date()], /Date\] does not travel as argument/],
    ["answerSidebar", [() => 1], /Function\] does not travel as argument/],
    ["dated", [], /Date\] does not travel as result/],
  ])("%s %#", (name, args, because) => {
    expect(() => book.script.serve(name, args)).toThrow(because);
  });
  test("values travel as copies, undefined in a list as null", () => {
    expect(book.script.serve("answerSidebar", ["{}"])).toBe("{}");
    expect(book.script.serve("hollow", [])).toEqual([null, 1]);
    expect(book.script.serve("nothing", [])).toBeUndefined();
  });
});
