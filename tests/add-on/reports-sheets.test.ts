// What went wrong in other people's add-ons, by public report; each is a test or a reason why it cannot happen.
// Reports 1 to 29 are numbered as they were collected; owner/project #number is a thread on GitHub.
// Here: sheets and their formulas.
import exceljs from "exceljs";
import { describe, expect, test } from "vitest";
import { lint } from "../../src/build/lint.ts";
import { openWorkbook } from "../../src/workbook/host.ts";
import { toXlsx } from "../../src/workbook/xlsx/xlsx.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { METRIC } from "../functions/support.ts";
import { buildSheet, files, HANDOUT, workbook } from "../templates/sheet-support.ts";
import { readme } from "./reports-kit.ts";

describe("many cells", () => {
  test("11. one formula a table, not one a row (dropseed/google-sheets-us-states #5, cardinalitypuzzles/cardboard #372)", async () => {
    for (const model of TEMPLATES) {
      const { book, sheet } = await buildSheet(model.sample, { model, options: { ...METRIC, parts: model.parts } });
      const formulas = book.formulas(sheet, book.usedRange(sheet)).flat().join("\n");
      expect(formulas.match(/BAKE_/g)?.length ?? 0, model.name).toBeLessThanOrEqual(18);
    }
    expect(readme()).toMatch(/one\s+formula does a whole table/i);
  });

  test("14. what a formula fills is left free, and a blocked one recovers (Max-Makhrov/GoogleSheets #5)", async () => {
    for (const model of TEMPLATES)
      expect(lint(model, { ...METRIC, parts: model.parts }).join("\n")).not.toMatch(/both .* stand there/);
    const { book, sheet, at, value } = await buildSheet(HANDOUT);
    // As where no trigger runs, which would take the weight.
    book.session.isEnabled = false;
    book.type(sheet, at("weight", 2), "999");
    expect(value("weight", 0)).toBe("#REF!");
    expect(value("grams", 2)).toBeCloseTo(11220.529, 3);
    book.type(sheet, at("weight", 2), "");
    expect(value("weight", 2)).toBe(11221);
  });

  test("16. nothing that is written or shown takes the time or a random number as argument (bradjasper/ImportJSON #4)", async () => {
    const volatile = /\b(NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY)\(/;
    expect(readme()).not.toMatch(volatile);
    for (const model of TEMPLATES) {
      const { book, sheet } = await buildSheet(model.sample, { model });
      for (const formula of book.formulas(sheet, book.usedRange(sheet)).flat())
        expect(formula ?? "").not.toMatch(volatile);
    }
  });

  test("27. formulas are written last and nothing is read after them (tanaikech.github.io, 2022-08-31: reading waits for every function)", async () => {
    const book = await workbook();
    await buildSheet(HANDOUT, { book });
    const first = book.trail.indexOf("setFormulas");
    expect(first).toBeGreaterThan(0);
    expect(new Set(book.trail.slice(first))).toEqual(new Set(["setFormulas", "activate"]));
  });
});

describe("a built sheet", () => {
  test("10. its formulas read the same where the comma is the decimal sign (google-marketing-solutions/advanced-bidding-manager #1, ISA-tools/OntoMaton PR #37, diegomanuel/binance-to-google-sheets #78, #105)", async () => {
    // The numbers in such a workbook are in locale.test.ts, the rules of writing in lint.test.ts and workbook-sheets.test.ts.
    for (const model of TEMPLATES) {
      const german = openWorkbook({ ...(await files()), locale: "de_DE" });
      const { book, sheet } = await buildSheet(model.sample, { model, book: german });
      for (const formula of book.formulas(sheet, book.usedRange(sheet)).flat()) {
        expect((formula ?? "").replace(/"[^"]*"/g, "")).not.toMatch(/,|\d\.\d|\\/);
      }
    }
  });

  test("25. text that begins like a formula stays text (jamiewilson/form-to-google-sheets #3, cds-snc/platform-forms-client PR #2916, nithinmurali/pygsheets #373)", async () => {
    const starts = ["=1+1", "+1", "-1", "@home", "=IMPORTXML(A1)"];
    const { book, sheet, at, value } = await buildSheet({
      ...HANDOUT,
      ingredient: starts,
      kind: ["flour"],
      percent: [1],
    });
    starts.forEach((text, row) => {
      expect(value("ingredient", row + 1)).toBe(text);
      expect(book.cell(sheet, at("ingredient", row + 1)).formula).toBeUndefined();
    });
  });

  test("26. a name that is taken is seen before anything is written, and a failed build removes its sheet (burnash/gspread #85, mricon/ingress-fieldplan PR #27)", async () => {
    const book = await workbook();
    await buildSheet(HANDOUT, { book });
    const second = await buildSheet({ ...HANDOUT, title: "hand-OUT" }, { book });
    expect(second.sheet.toLowerCase()).not.toBe("hand-out");
    const before = book.sheetNames();
    book.failAt(12);
    expect(book.ask({ ask: "build", template: "pan-loaf", options: {}, values: HANDOUT }).ok).toBe(false);
    expect(book.sheetNames()).toEqual(before);
  });

  test("7. copied to where the add-on is not, the numbers stay: the saved file needs no function of ours (evepraisal/evepraisal-google-sheets #7, GoogleChrome/lighthouse #9939, cardinalitypuzzles/cardboard #169)", async () => {
    // On the live service a copy of the file asks for the add-on again; the README's trouble page says so.
    const { book, sheet, at, value } = await buildSheet(HANDOUT);
    const file = new exceljs.Workbook();
    await file.xlsx.load((await toXlsx(book.engine)) as unknown as ArrayBuffer);
    const formulas: string[] = [];
    file.getWorksheet(sheet)?.eachRow((row) => {
      row.eachCell((cell) => {
        if (cell.formula !== undefined) formulas.push(cell.formula);
      });
    });
    expect(formulas.length).toBeGreaterThan(0);
    expect(formulas.join("\n")).not.toMatch(/BAKE_/);
    expect(file.getWorksheet(sheet)?.getCell(at("grams", 2)).value).toBe(value("grams", 2));
    expect(readme()).toMatch(/a copy of the file/i);
  });
});
