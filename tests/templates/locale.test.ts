// A workbook whose decimal sign is the comma. What else the stand-in refuses is in sheets.test.ts (grids, names, text,
// decimal literals, modes: "without permission only the menu can be made"), workbook-engine.test.ts ("writing from a formula is
// forbidden", "percent, decimals and formulas as the locale reads them") and templates.test.ts (at most 40 calls; each failing).
import { describe, expect, test } from "vitest";
import { openWorkbook } from "../../src/workbook/host.ts";
import { cookie } from "../../templates/cookie.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { METRIC } from "../functions/support.ts";
import { type Built, buildSheet, files, HANDOUT, workbook } from "./sheet-support.ts";

// A workbook takes a second each, more so on a busy computer.

const german = async () => openWorkbook({ ...(await files()), locale: "de_DE" });

/** All cells of a built sheet as a script reads them. */
const cellsOf = ({ book, sheet }: Built) => book.values(sheet, book.usedRange(sheet));

describe.each(TEMPLATES)("$title", (model) => {
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
    const { type, value, message } = await buildSheet(HANDOUT, { book: await german(), model: cookie });
    type("percent", "", 4);
    type("weighed", "'12.5", 4);
    expect(value("weighed", 4)).toBe("12.5");
    expect(message("share", 0)).toBeUndefined();
    type("weighed", "'1.250", 4);
    expect(message("share", 0)).toMatch(/could be 1250 or 1\.25;/);
  });

  test("a formula that a person types parts its arguments by ; and reads 1,5 as a number", async () => {
    const { book, sheet, at, value } = await buildSheet(HANDOUT, { book: await german() });
    book.type(sheet, at("size_weight", 1), "=ROUND(260*1,5;0)");
    expect(value("size_weight", 1)).toBe(390);
    expect(value("dough")).toBe(73 * 390);
  });
});

test("a cell that is still calculating is said to be so, wherever it is read", async () => {
  const { type, message, at, book, sheet } = await buildSheet(HANDOUT, { book: await german(), model: cookie });
  type("percent", "'Loading...", 2);
  expect(book.cell(sheet, at("percent", 2)).value).toBe("Loading...");
  expect(message("share", 0)).toMatch(/percents row 3 is still calculating; it will be read when it is done/);
  type("percent", "67%", 2);
  expect(message("share", 0)).toBeUndefined();
});

test("the bench's questions are numbers of JSON: no locale touches them", async () => {
  const { value } = await buildSheet(
    { ...HANDOUT, size_weight: [390.5], percent: [1, 0.675, 0.0225, 0.0125] },
    { book: await german() },
  );
  expect([1, 2, 3, 4].map((row) => value("percent", row))).toEqual([1, 0.675, 0.0225, 0.0125]);
  expect(value("dough")).toBeCloseTo(73 * 390.5, 6);
});
