// A workbook whose decimal sign is the comma. What else the stand-in refuses is in sheets.test.ts (grids, names, text,
// decimal literals, modes: "without permission only the menu can be made"), workbook-engine.test.ts ("writing from a formula is
// forbidden", "percent, decimals and formulas as the locale reads them") and templates.test.ts (at most 40 calls; each failing).
import { describe, expect, test } from "vitest";
import { openWorkbook } from "../../src/workbook/host.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { METRIC } from "../functions/support.ts";
import { someOf } from "../kit/scale.ts";
import { type Built, buildSheet, files, HANDOUT, workbook } from "./sheet-support.ts";

// A workbook takes a second each, more so on a busy computer.

const german = async () => openWorkbook({ ...(await files()), locale: "de_DE" });

/** All cells of a built sheet as a script reads them. */
const cellsOf = ({ book, sheet }: Built) => book.values(sheet, book.usedRange(sheet));

describe.each(someOf(TEMPLATES, 2, 1))("$title", (model) => {
  const options = { ...METRIC, parts: model.parts };

  test("computes the same in both locales, cell for cell", async () => {
    const [one, other] = [await workbook(), await german()];
    const [english, comma] = [
      await buildSheet(model.sample, { model, options, book: one }),
      await buildSheet(model.sample, { model, options, book: other }),
    ];
    expect(cellsOf(comma)).toEqual(cellsOf(english));
    expect(comma.book.formulas(comma.sheet, comma.book.usedRange(comma.sheet))).toEqual(
      english.book.formulas(english.sheet, english.book.usedRange(english.sheet)),
    );
  });

  test("shows the comma, and the point for thousands", async () => {
    const built = await buildSheet(model.sample, { model, options, book: await german() });
    const shown = built.book.shownTexts(built.sheet, built.book.usedRange(built.sheet)).flat();
    const values = cellsOf(built).flat();
    const numbers = shown.filter((_, at) => typeof values[at] === "number");
    expect(numbers.filter((text) => /^[\d.,]+( ?%)?$/.test(text)).length).toBeGreaterThan(20);
    for (const text of numbers) expect(text).not.toMatch(/\d,\d{3}\.|\.\d{1,2}(?!\d)/);
  });
});

describe("typed with a comma", () => {
  test("12,5 % and 12,5 g are what they say, and everything follows", async () => {
    const { type, value } = await buildSheet(HANDOUT, { book: await german() });
    type("percent", "67,5%", 2);
    expect(value("percent", 2)).toBe(0.675);
    expect(value("grams", 2)).toBeCloseTo((28470 / 1.705) * 0.675, 6);
    type("percent", "2,25", 3);
    expect(value("percent", 3)).toBe(2.25);
    type("percent", "2,25%", 3);
    expect(value("exact", 1)).toBeCloseTo(28470 / 1.7075, 6);
    type("size_weight", "390,5", 1);
    expect(value("dough")).toBeCloseTo(73 * 390.5, 6);
  });

  test("a point in such a workbook is no decimal: 12.5 stays text, and is read as what it can only mean", async () => {
    const book = await german();
    const typed = (weight: string) => {
      for (const [at, text] of [
        ["A1", "100"],
        ["A2", weight],
        ["B1", "flour"],
        ["B2", "water"],
        ["C1", "=BAKE_FLOURPCT(A1:A2;B1:B2)"],
      ] as const)
        book.type("Sheet1", at, text);
      return book.cell("Sheet1", "C2").value;
    };
    expect(typed("'12.5")).toBe(0.125);
    typed("'1.250");
    expect(book.cell("Sheet1", "C1").message).toMatch(/could be 1250 or 1\.25;/);
    // A formula sheet takes numbers alone.
    const { sheet, at, value } = await buildSheet(HANDOUT, { book });
    book.paste(sheet, at("percent", 2), "'12.5");
    expect(value("check")).toMatch(/“12\.5”: enter a number from 0\./);
  });

  test("a formula that a person types parts its arguments by ; and reads 1,5 as a number", async () => {
    const { book, sheet, at, value } = await buildSheet(HANDOUT, { book: await german() });
    book.type(sheet, at("size_weight", 1), "=ROUND(260*1,5;0)");
    expect(value("size_weight", 1)).toBe(390);
    expect(value("dough")).toBe(73 * 390);
  });
});

test("a cell that is still calculating is said to be so, wherever it is read", async () => {
  const book = await german();
  for (const [at, text] of [
    ["A1", "100"],
    ["A2", "Loading..."],
    ["B1", "flour"],
    ["B2", "water"],
    ["C1", "=BAKE_FLOURPCT(A1:A2;B1:B2)"],
  ] as const)
    book.type("Sheet1", at, text);
  expect(book.cell("Sheet1", "C1").message).toMatch(/row 2 is still calculating; it will be read when it is done/);
  book.type("Sheet1", "A2", "67");
  expect(book.cell("Sheet1", "C2").value).toBe(0.67);
});

test("the bench's questions are numbers of JSON: no locale touches them", async () => {
  const { value } = await buildSheet(
    { ...HANDOUT, size_weight: [390.5], percent: [1, 0.675, 0.0225, 0.0125] },
    { book: await german() },
  );
  expect([1, 2, 3, 4].map((row) => value("percent", row))).toEqual([1, 0.675, 0.0225, 0.0125]);
  expect(value("dough")).toBeCloseTo(73 * 390.5, 6);
});
