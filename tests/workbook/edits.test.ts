// The stand-in runs onEdit as the service does: after a person's edits, and never after what a script writes.
import { describe, expect, test } from "vitest";
import { openWorkbook } from "../../src/workbook/host.ts";

const CODE = `
function onOpen() {}
function use() {}
function writes() { SpreadsheetApp.getActiveSpreadsheet().getSheetByName("Sheet1").getRange("A1").setValue(5); }
function onEdit(e) {
  const { range } = e;
  const parts = [e.authMode, range.getA1Notation(), "value" in e ? JSON.stringify(e.value) : "-", "oldValue" in e ? JSON.stringify(e.oldValue) : "-"];
  Logger.log(parts.join(" "));
}
`;
function open(code = CODE) {
  const book = openWorkbook({ codeJs: code });
  book.script.run("FULL", "use");
  const events = () => book.shown.messages.splice(0).map((one) => one.replace("log: ", ""));
  return { book, events };
}

test("a typed cell has its value and the old one as texts; a formula's and an emptied cell's are left out", () => {
  const { book, events } = open();
  book.type("Sheet1", "B2", "600");
  book.type("Sheet1", "B2", "a cup");
  book.type("Sheet1", "B2", "=1+1");
  book.type("Sheet1", "B2", "65%");
  book.type("Sheet1", "B2", "");
  expect(events()).toEqual([
    'LIMITED B2 "600" -',
    'LIMITED B2 "a cup" "600"',
    'LIMITED B2 - "a cup"',
    'LIMITED B2 "0.65" -',
    'LIMITED B2 - "0.65"',
  ]);
});

test("what is pasted, filled down, emptied, sorted and undone is an edit without values", () => {
  const { book, events } = open();
  book.paste("Sheet1", "B2", "1\t2\n3\t4");
  book.paste("Sheet1", "D2", "5");
  book.fillDown("Sheet1", "D2", 5);
  book.clear("Sheet1", "B2:C3");
  book.undo();
  book.redo();
  const all = events();
  expect(all).toHaveLength(6);
  expect(all.slice(0, 2)).toEqual(["LIMITED B2:C3 - -", "LIMITED D2 - -"]);
  expect(all[2]).toMatch(/^LIMITED D\d(:D5)? - -$/);
  expect(all.slice(3)).toEqual(["LIMITED B2:C3 - -", "LIMITED B2:C3 - -", "LIMITED B2:C3 - -"]);
});

test("rows that are inserted, deleted and moved are no edits, nor is what a script writes or what is refused", () => {
  const { book, events } = open(`${CODE}
function bounded() {
  const rule = SpreadsheetApp.newDataValidation().requireNumberBetween(1, 5).setAllowInvalid(false).build();
  SpreadsheetApp.getActiveSpreadsheet().getSheetByName("Sheet1").getRange("C1").setDataValidation(rule);
}`);
  book.insertRows("Sheet1", 2);
  book.deleteRows("Sheet1", 2);
  book.moveRows("Sheet1", 1, 1, 3);
  book.script.run("FULL", "writes");
  book.script.run("FULL", "bounded");
  expect(() => book.type("Sheet1", "C1", "9")).toThrow(/violates the data validation/);
  expect(events()).toEqual([]);
  book.type("Sheet1", "C1", "3");
  expect(events()).toEqual(['LIMITED C1 "3" -']);
});

describe("while the script is slow", () => {
  test("two events wait, and what is edited meanwhile has none", () => {
    const { book, events } = open();
    book.holdEdits();
    for (const cell of ["A1", "A2", "A3", "A4"]) book.type("Sheet1", cell, "1");
    expect(events()).toEqual([]);
    book.answerEdits();
    expect(events()).toEqual(['LIMITED A1 "1" -', 'LIMITED A2 "1" -']);
    book.type("Sheet1", "A5", "1");
    expect(events()).toEqual(['LIMITED A5 "1" -']);
  });

  test("an event tells what stands there when it is answered", () => {
    const { book, events } = open();
    book.holdEdits();
    book.type("Sheet1", "A1", "1");
    book.type("Sheet1", "A1", "2");
    book.answerEdits();
    expect(events()).toEqual(['LIMITED A1 "2" -', 'LIMITED A1 "2" "1"']);
  });
});

test("before the add-on was used in the file it runs without leave to do anything", () => {
  const book = openWorkbook({
    codeJs: `function onEdit(e) { Logger.log(e.authMode); e.range.setValue(1); }`,
  });
  expect(() => book.type("Sheet1", "A1", "5")).toThrow(/permission to call setValue/);
  expect(book.shown.messages).toEqual(["log: NONE"]);
  const asks = openWorkbook({ codeJs: `function onEdit() { PropertiesService.getDocumentProperties(); }` });
  expect(() => asks.type("Sheet1", "A1", "5")).toThrow(/permission to call PropertiesService/);
});

test("a trigger shows no dialogs, and what it throws is heard", () => {
  const { book } = open(`function use() {} function onEdit() { SpreadsheetApp.getUi().alert("x"); }`);
  expect(() => book.type("Sheet1", "A1", "5")).toThrow(/permission to call Ui.alert/);
});

test("properties are texts of at most 9 kB, kept with the document", () => {
  const run = (body: string) =>
    openWorkbook({
      codeJs: `function go() { const kept = PropertiesService.getDocumentProperties(); ${body} }`,
    }).script.run("FULL", "go");
  expect(run(`kept.setProperty("a", "1"); return kept.getProperty("a") + kept.getProperty("b");`)).toBe("1null");
  expect(run(`kept.setProperty("a", "1").deleteProperty("a"); return kept.getProperty("a");`)).toBeNull();
  expect(() => run(`kept.setProperty("a", 1)`)).toThrow(/a property is a text/);
  expect(() => run(`kept.setProperty("a", "x".repeat(9217))`)).toThrow(/too large/);
});
