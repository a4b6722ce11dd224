// How often the local workbook calculates: once for a run of the script, and before anything is read.
import { expect, test } from "vitest";
import { openWorkbook } from "../../src/workbook/host.ts";
import { withScript } from "./support.ts";

const COUNTING = `
var calls = 0;
/**
 * Gives its argument back.
 * @param {number} one Any number.
 * @customfunction
 */
function COUNTED(one) { calls += 1; return one; }
function told() { return calls; }
function go() {
  var book = SpreadsheetApp.getActive();
  var sheet = book.insertSheet("Rye");
  sheet.deleteRows(101, 900);
  sheet.deleteColumns(11, 16);
  var block = sheet.getRange(1, 1, 3, 1);
  block.setBackgrounds([["#ffffff"], ["#eeeeee"], ["#ffffff"]]);
  block.setNumberFormats([["0.0"], ["0.0"], ["0.0"]]);
  block.setFontWeights([["bold"], ["normal"], ["bold"]]);
  block.setValues([[1], [2], [3]]);
  sheet.getRange(1, 2, 3, 1).setFormulas([["=COUNTED(A1)"], ["=COUNTED(A2)"], ["=COUNTED(A3)"]]);
  sheet.getRange(1, 3, 1, 1).setFormulas([["=COUNTED(SUM(B1:B3))"]]);
  book.setNamedRange("all_of_it", sheet.getRange("C1"));
}`;

test("a new sheet, cut, painted, filled and named, calculates each custom function once", () => {
  const book = openWorkbook({ codeJs: COUNTING });
  book.script.run("FULL", "go");
  expect(book.script.run("FULL", "told")).toBe(4);
  expect(book.cell("Rye", "C1").value).toBe(6);
  expect(book.cell("Rye", "A1").shown).toBe("1.0");
  const style = (a1: string) => {
    const { col, row } = book.engine.library.helpers.toCartesian(a1);
    const sheetId = book.engine.get<string>("getSheetIdByName", "Rye");
    return book.engine.get("getCellStyle", { sheetId, col, row });
  };
  expect(style("A1")).toMatchObject({ fillColor: "#ffffff", bold: true });
  expect(style("A2")).toMatchObject({ fillColor: "#eeeeee", bold: false });
  // What a person types calculates what reads it, and nothing else.
  book.type("Rye", "A1", "4");
  expect(book.script.run("FULL", "told")).toBe(6);
});

test("a value is read as it is after the writes before it", () => {
  const book = withScript(
    'sheet.getRange("A1").setValue(5); var seen = sheet.getRange("B1").getValue(); sheet.getRange("A1").setValue(7); return [seen, sheet.getRange("B1").getValue(), sheet.getLastRow()].join();',
  );
  book.type("Sheet1", "B1", "=A1*2");
  expect(book.go()).toBe("10,14,1");
});

test("rows taken out shift what is left, and what stood in them is gone", () => {
  const book = withScript(
    'sheet.getRange("A1:A4").setValues([[1], [2], [3], [4]]); sheet.deleteRows(2, 2); return sheet.getRange("A1:A4").getValues().join();',
  );
  book.type("Sheet1", "C1", "=SUM(A1:A4)");
  expect(book.go()).toBe("1,4,,");
  expect(book.cell("Sheet1", "C1").value).toBe(5);
  expect(book.cell("Sheet1", "C1").formula).toBe("=SUM(A1:A2)");
});

test("a blank among values empties its cell, also one that was written or emptied before", () => {
  const empties = 'sheet.getRange("A1:A3").setValues([[""], [8], [""]]);';
  const book = withScript(
    `sheet.getRange("A1").setValue(3); ${empties} var seen = sheet.getRange("A1:A3").getValues().join(); sheet.getRange("A2").clearContent(); sheet.getRange("A2:B2").setFormulas([["", "=1+1"]]); return seen;`,
  );
  book.type("Sheet1", "A3", "9");
  expect(book.go()).toBe(",8,");
  expect(book.values("Sheet1", "A1:B3")).toEqual([
    ["", ""],
    ["", 2],
    ["", ""],
  ]);
});

test("a new sheet calculates nothing of the sheets that are there", () => {
  const book = openWorkbook({
    codeJs: `${COUNTING}\nfunction again() { SpreadsheetApp.getActive().insertSheet("Oats").deleteRows(101, 900); }`,
  });
  book.script.run("FULL", "go");
  const before = book.script.run("FULL", "told");
  book.script.run("FULL", "again");
  expect(book.script.run("FULL", "told")).toBe(before);
  book.type("Oats", "A1", "=Rye!C1*2");
  expect(book.cell("Oats", "A1").value).toBe(12);
});

test("what is blocked stays known when a sheet is added, and when one of two new sheets goes again", () => {
  const book = withScript(
    'var book = SpreadsheetApp.getActive(); var one = book.insertSheet("One"); book.insertSheet("Two").getRange("A1").setValue(1); book.deleteSheet(one);',
  );
  book.type("Sheet1", "B2", "in the way");
  book.type("Sheet1", "B1", "=TRANSPOSE(D1:F1)");
  expect(String(book.cell("Sheet1", "B1").value)).toMatch(/^#/);
  book.go();
  expect(book.sheetNames()).toEqual(["Sheet1", "Two"]);
  book.type("Sheet1", "D1", "7");
  book.type("Sheet1", "B2", "");
  expect(book.cell("Sheet1", "B1").value).toBe(7);
});

test("a sheet that is deleted calculates what read it, and else nothing", () => {
  const book = openWorkbook({
    codeJs: `${COUNTING}\nfunction make(name) { var made = SpreadsheetApp.getActive().insertSheet(name); made.getRange("A1:A2").setValues([[1], [2]]); }
function drop(name) { var book = SpreadsheetApp.getActive(); book.deleteSheet(book.getSheetByName(name)); }`,
  });
  const counted = () => book.script.run("FULL", "told");
  book.script.run("FULL", "go");
  for (const name of ["Oats", "Spelt"]) book.script.run("FULL", "make", [name]);
  // Oats reads Rye, also by a formula that fills several cells, and nobody reads Oats; Rye reads Spelt.
  book.type("Oats", "C1", "=COUNTED(Rye!A1)");
  book.type("Oats", "D1", "=TRANSPOSE(Rye!A1:A3)");
  book.type("Rye", "E1", "=COUNTED(Spelt!A2)");
  expect(book.values("Oats", "C1:F1")).toEqual([[1, 1, 2, 3]]);
  const before = counted();
  book.script.run("FULL", "drop", ["Oats"]);
  expect(counted()).toBe(before);
  // What the deleted sheet read can change, and its name can be given again.
  book.script.run("FULL", "make", ["Barley"]);
  book.type("Rye", "A1", "4");
  expect(book.cell("Rye", "C1").value).toBe(9);
  expect(counted()).toBe(Number(before) + 2);
  book.script.run("FULL", "make", ["Oats"]);
  expect(book.values("Oats", "A1:D2")).toEqual([
    [1, "", "", ""],
    [2, "", "", ""],
  ]);
  book.script.run("FULL", "drop", ["Spelt"]);
  expect(book.cell("Rye", "E1").value).toBe("#REF!");
});

test("a sheet that was deleted and comes back calculates as before", () => {
  const book = withScript('sheet.getRange("A1").setValue(5); book.insertSheet("Rye").getRange("A1").setValue(1);');
  book.go();
  book.type("Rye", "B1", "=TRANSPOSE(Sheet1!A1:A2)");
  book.type("Rye", "A3", "=Sheet1!A1+1");
  book.deleteSheet("Rye");
  book.type("Sheet1", "A1", "6");
  book.engine.run("REQUEST_UNDO");
  book.engine.run("REQUEST_UNDO");
  expect(book.values("Rye", "A1:C3")).toEqual([
    [1, 5, 0],
    ["", "", ""],
    [6, "", ""],
  ]);
  book.type("Sheet1", "A2", "8");
  book.type("Sheet1", "A1", "7");
  expect(book.values("Rye", "A1:C3")).toEqual([
    [1, 7, 8],
    ["", "", ""],
    [8, "", ""],
  ]);
});

test("a name that is given, moved and taken away calculates the formulas that say it", () => {
  const book = withScript(
    `var named = [];
    sheet.getRange("A1:A2").setValues([[1], [2]]);
    var seen = function () { return sheet.getRange("B1:D1").getDisplayValues()[0].join().replace(/#[A-Z]+[!?]/g, "error"); };
    named.push(seen());
    book.setNamedRange("spot", sheet.getRange("A1"));
    named.push(seen());
    book.setNamedRange("spot", sheet.getRange("A2"));
    named.push(seen());
    sheet.getRange("A2").setValue(5);
    named.push(seen());
    book.removeNamedRange("spot");
    named.push(seen());
    return named.join(" ");`,
  );
  for (const [at, text] of Object.entries({ B1: "=Spot*10", C1: "=B1+1", D1: "=A1*100" }))
    book.type("Sheet1", at, text);
  expect(book.go()).toBe("error,error,100 10,11,100 20,21,100 50,51,100 error,error,100");
});

test("after many sheets came and went, an edit calculates what reads it as before", () => {
  const book = withScript(
    `for (var at = 0; at < 25; at++) {
      var one = book.insertSheet("Trial " + at);
      one.getRange("A1:A2").setFormulas([["=Sheet1!A1*2"], ["=A1+Sheet1!B1"]]);
      SpreadsheetApp.flush();
      book.deleteSheet(one);
    }
    book.insertSheet("Stays").getRange("A1").setFormula("=Sheet1!A1*2");`,
  );
  book.type("Sheet1", "B1", "=A1+1");
  book.go();
  const seen = () => [book.cell("Sheet1", "B1").value, book.cell("Stays", "A1").value];
  book.type("Sheet1", "A1", "1");
  expect(seen()).toEqual([2, 2]);
  book.type("Sheet1", "A1", "7");
  expect(seen()).toEqual([8, 14]);
  expect(book.sheetNames()).toEqual(["Sheet1", "Stays"]);
});
