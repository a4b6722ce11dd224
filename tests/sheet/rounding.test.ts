// One number, three programs: what the local workbook shows and computes, what LibreOffice does with the saved .xlsx, and what our
// functions answer. The expected texts are worked out here from the decimal digits alone.
import { beforeAll, describe, expect, test } from "vitest";
import { showNumber } from "../../shared/base/show.ts";
import { plan } from "../../shared/sheet/plan.ts";
import { openWorkbook, type WorkbookHost } from "../../src/workbook/host.ts";
import { toXlsx } from "../../src/workbook/xlsx/xlsx.ts";
import { SHEETS } from "../../templates/index.ts";
import { optionsOf, run } from "../functions/support.ts";
import { asOfficeReads, asValue, hasOffice } from "../workbook/support.ts";

/** Halves, numbers whose binary lies on the other side of their decimals, and sums that are not what they seem. */
const EDGES = [
  0,
  0.5,
  1.5,
  2.5,
  -0.5,
  -2.5,
  0.05,
  0.15,
  0.25,
  0.35,
  1.05,
  1.15,
  0.005,
  0.015,
  1.005,
  2.675,
  8.345,
  1.115,
  10.235,
  0.0005,
  1.0005,
  0.00005,
  0.12345,
  0.1 + 0.2,
  0.1 * 3,
  1.1 * 1.1,
  0.7 + 0.1,
  4.35 * 100,
  1.4 * 3,
  0.29 * 100,
  1 / 3,
  2 / 3,
  999.95,
  999.995,
  1234.5,
  12345.675,
  99999.5,
  16747.0588235294,
  0.67,
  0.6765,
  0.99995,
  1e6 + 0.05,
];

/** Digits after the point and whether it is a percentage, of the formats that are numbers. */
const NUMBER = /^(#,##)?0(?:\.(0*)(#*))?(%)?$/;

/** Half away from zero on the 15 digits a sheet knows, without any binary arithmetic. */
function asShown(value: number, format: string): string {
  const [, thousands, fixed = "", loose = "", percent = ""] = NUMBER.exec(format) ?? [];
  const places = fixed.length + loose.length;
  const [digits = "0", exponent = "0"] = Math.abs(value).toExponential(14).split("e");
  const whole = BigInt(digits.replace(".", ""));
  const shift = Number(exponent) - 14 + places + (percent === "" ? 0 : 2);
  const units =
    shift >= 0 ? whole * 10n ** BigInt(shift) : (whole + 5n * 10n ** BigInt(-shift - 1)) / 10n ** BigInt(-shift);
  const text = units.toString().padStart(places + 1, "0");
  const left = text.slice(0, text.length - places);
  let right = text.slice(text.length - places);
  while (right.length > fixed.length && right.endsWith("0")) right = right.slice(0, -1);
  const grouped = thousands === undefined ? left : left.replace(/\B(?=(\d{3})+$)/g, ",");
  return `${value < 0 && units > 0n ? "-" : ""}${grouped}${right === "" ? "" : `.${right}`}${percent}`;
}

const FORMATS = [
  ...new Set(
    SHEETS.flatMap((model) => optionsOf(model).flatMap((options) => plan(model, options, model.sample).formats.flat())),
  ),
].sort();
const numbers = FORMATS.filter((format) => NUMBER.test(format));

/**
 * Every rounding form of the templates' formulas, over a number in A and a step in B. A quotient is first cut to nine places:
 * 0.15/0.1 is a hair below 1.5, and the programs differ on whether that is a half.
 */
const FORMS = [
  "ROUND(A#;0)",
  "ROUND(A#;1)",
  "ROUND(A#;2)",
  "ROUND(A#;6)",
  "ROUND(A#;9)",
  "ROUND(100*A#;2)",
  "ROUND(10000*A#;2)",
  "ROUND(1440*A#;0)",
  "ROUND(ROUND(A#/B#;9);0)*B#",
  "ROUNDUP(A#/B#;0)",
  "ROUNDUP(ROUND(A#/B#;9);0)",
  "ROUNDDOWN(ROUND(A#/B#;6);0)",
  "INT(A#/B#)",
  "MOD(ROUND(1440*A#;0);1440)",
  "INT(ROUND(1440*A#;0)/1440)",
];
const STEPS = [5, 1, 0.1, 0.05, 0.01];

const CELLS = EDGES.filter((value) => value >= 0).flatMap((value) => STEPS.map((step) => ({ value, step })));

/** Shown by a number's size: see the sheet's own test. */
const GRADED = "[>=100]#,##0;[>=10]#,##0.0;#,##0.00";

describe("number formats of the templates", () => {
  test("are these and no others, so that each is known to be shown alike", () => {
    expect(numbers.length).toBeGreaterThan(6);
    expect(FORMATS.filter((format) => !NUMBER.test(format)).sort()).toEqual(
      ["@", "General", GRADED, "[>=125]#,##0;[>=10]#,##0.0;#,##0.00", "hh:mm", "yyyy-mm-dd"]
        .filter((one) => FORMATS.includes(one))
        .sort(),
    );
  });

  let book: WorkbookHost;
  let office: string[][] = [];
  beforeAll(async () => {
    book = openWorkbook({
      codeJs: `function go() { var sheet = SpreadsheetApp.getActive().getActiveSheet();
        var range = sheet.getRange(1, 1, ${EDGES.length}, ${numbers.length});
        range.setNumberFormats(${JSON.stringify(EDGES.map(() => numbers))});
        range.setValues(${JSON.stringify(EDGES.map((value) => numbers.map(() => value)))}); }`,
      sidebarHtml: "",
    });
    book.script.run("FULL", "go");
    if (hasOffice) office = Object.values(asOfficeReads(await toXlsx(book.engine), true))[0] ?? [];
  });

  test.each(numbers)("%s is shown alike by the workbook and by the digits", (format) => {
    const column = numbers.indexOf(format);
    const texts = book.shownTexts("Sheet1", book.usedRange("Sheet1"));
    expect(EDGES.map((value, row) => [value, texts[row]?.[column]])).toEqual(
      EDGES.map((value) => [value, asShown(value, format)]),
    );
  });

  test.skipIf(!hasOffice).each(numbers)("%s is shown alike by LibreOffice", (format) => {
    const column = numbers.indexOf(format);
    expect(EDGES.map((value, row) => [value, office[row]?.[column]])).toEqual(
      EDGES.map((value) => [value, asShown(value, format)]),
    );
  });
});

describe("rounding in formulas", () => {
  let book: WorkbookHost;
  let office: string[][] = [];
  const own = new Map<string, number>();
  beforeAll(async () => {
    const rows = CELLS.map(({ value, step }) => [value, step]);
    const formulas = CELLS.map((_, row) => FORMS.map((form) => `=${form.replace(/#/g, String(row + 1))}`));
    book = openWorkbook({
      codeJs: `function go() { var sheet = SpreadsheetApp.getActive().getActiveSheet();
        sheet.getRange(1, 1, ${rows.length}, 2).setValues(${JSON.stringify(rows)});
        sheet.getRange(1, 3, ${rows.length}, ${FORMS.length}).setFormulas(${JSON.stringify(formulas)}); }`,
      sidebarHtml: "",
    });
    book.script.run("FULL", "go");
    book.values("Sheet1", `C1:Q${rows.length}`).forEach((row, at) => {
      row.forEach((value, form) => {
        own.set(`${at},${form}`, Number(value));
      });
    });
    if (hasOffice) office = Object.values(asOfficeReads(await toXlsx(book.engine)))[0] ?? [];
  });

  test.skipIf(!hasOffice).each(FORMS)("=%s is the same in LibreOffice", (form) => {
    const column = FORMS.indexOf(form);
    CELLS.forEach(({ value, step }, row) => {
      const theirs = asValue(office[row]?.[column + 2] ?? "");
      expect(
        Math.abs(Number(theirs) - (own.get(`${row},${column}`) ?? Number.NaN)),
        `${value} and ${step}: ${theirs} in LibreOffice, ${own.get(`${row},${column}`)} here`,
      ).toBeLessThanOrEqual(1e-9 * Math.max(1, value / step));
    });
  });

  const plain = (form: string, row: number) => own.get(`${row},${FORMS.indexOf(form)}`) ?? Number.NaN;

  test("weights on the scale's step: BAKE_SCALEROUND gives what ROUND(ROUND(weight/step;9);0)*step gives, where that is near enough", () => {
    let compared = 0;
    CELLS.forEach(({ value, step }, row) => {
      const expected = plain("ROUND(ROUND(A#/B#;9);0)*B#", row);
      // Further off than 2 % of the weight, the function goes to a finer step.
      if (Math.abs(expected - value) > 0.0199 * value) return;
      const rounded = Number(run("BAKE_SCALEROUND", [[value]], step));
      expect(Math.abs(rounded - expected), `${value} on ${step}: ${rounded}`).toBeLessThan(1e-9 * Math.max(1, value));
      compared += 1;
    });
    expect(compared).toBeGreaterThan(60);
  });

  test("mixes: BAKE_MIXES counts what ROUNDUP(ROUND(dough/limit;9);0) counts", () => {
    CELLS.forEach(({ value, step }, row) => {
      if (value === 0 || value / step > 1e6) return;
      const [[mixes] = []] = [run("BAKE_MIXES", value, step)].flat(1) as unknown[][];
      const counted = Array.isArray(mixes) ? mixes[0] : mixes;
      expect(counted, `${value} over ${step}`).toBe(plain("ROUNDUP(ROUND(A#/B#;9);0)", row));
    });
  });
});

test("a number in a sentence is the number the sheet shows", () => {
  for (const value of EDGES.filter((one) => one === 0 || Math.abs(one) >= 0.005)) {
    expect(showNumber(value), String(value)).toBe(asShown(value, "0.##").replace(/^-0$/, "0"));
  }
});

test("the digits' own rule, by hand", () => {
  expect([1.005, 2.675, 0.1 + 0.2, -0.5, 1234.5].map((value) => asShown(value, "#,##0.00"))).toEqual([
    "1.01",
    "2.68",
    "0.30",
    "-0.50",
    "1,234.50",
  ]);
  expect([0.5, 1.5, 2.5, -2.5, 0.4].map((value) => asShown(value, "0"))).toEqual(["1", "2", "3", "-3", "0"]);
  expect([0.6765, 0.99995, 1].map((value) => asShown(value, "0.0%"))).toEqual(["67.7%", "100.0%", "100.0%"]);
  expect([12, 12.5, 12.25, 12.256].map((value) => asShown(value, "0.0#"))).toEqual(["12.0", "12.5", "12.25", "12.26"]);
});
