import { describe, expect, test } from "vitest";
import { layOut } from "../../shared/sheet/layout.ts";
import type { Options, SheetModel } from "../../shared/sheet/model.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { SHEETS, TEMPLATES } from "../../templates/index.ts";
import { larderSheet } from "../../templates/larder-sheet.ts";
import { IS_LONG, someOf } from "../kit/scale.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { buildSheet, HANDOUT, workbook } from "./sheet-support.ts";

// Every test builds whole sheets.

const close = (actual: unknown, expected: number, within: number) => {
  expect(typeof actual, String(actual)).toBe("number");
  expect(Math.abs((actual as number) - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(within);
};

const withParts = (parts: readonly string[]): Options => ({ ...METRIC_UNITS, parts });
/** Parts of the sheet itself; cost and label need a larder beside it. */
const ownParts = ({ parts }: SheetModel) => parts.filter((part) => part !== "cost" && part !== "label");
const subsets = (parts: readonly string[]) =>
  parts.reduce<string[][]>((sets, part) => sets.flatMap((set) => [set, [...set, part]]), [[]]);

describe.each(someOf(TEMPLATES, 2))("$title made by dough, before a size is typed", (model) => {
  test.each(["dough", "flour"])("by %s: nothing shows an error", async (by) => {
    const options = withParts([]);
    const known = layOut(model, options).names;
    const unsized = Object.entries(model.sample).filter(([name]) => known.has(name) && !name.startsWith("size_"));
    const values = { ...Object.fromEntries(unsized), title: "Quay dough", by, dough_wanted: 5000, flour_wanted: 3000 };
    const { book, sheet } = await buildSheet(
      Object.fromEntries(Object.entries(values).filter(([name]) => known.has(name) || name === "title")),
      { model, options },
    );
    for (const text of book.shownTexts(sheet, book.usedRange(sheet)).flat()) expect(text).not.toMatch(/^#/);
  });
});

/** A finished product takes its prices from a sheet of ingredients. */
async function bookFor(model: SheetModel) {
  const book = await workbook();
  if (model.name === "finished-product")
    await buildSheet(larderSheet.sample, { book, model: larderSheet, options: withParts([]) });
  return book;
}

describe.each(SHEETS)("$title", (model) => {
  const shown = (book: WorkbookHost, sheet: string) =>
    book.shownTexts(sheet, (model.foldedFrom ?? 0) < 11 ? book.usedRange(sheet) : "A1:K40").flat();
  const WRONG = /^#|\d\.\d{5}|\d\.$/;
  const own = ownParts(model);

  test("built whole from its sample, in at most 40 service calls that read or write, 95 where a row for formulas is hidden: shows what was worked out by hand, and no error", async () => {
    const { book, sheet, at, value } = await buildSheet(model.sample, {
      book: await bookFor(model),
      model,
      options: withParts(own),
    });
    expect(book.trail.length).toBeLessThanOrEqual(model.foldedFrom === undefined ? 40 : 95);
    for (const [name, expected] of Object.entries(model.expects)) {
      const [cell = "", row] = name.split("/");
      const place = row === undefined ? undefined : Number(row);
      if (typeof expected === "number") close(value(cell, place), expected, 1e-5);
      // Texts, and times of day, as they are shown.
      else expect(book.cell(sheet, at(cell, place)).shown, name).toBe(expected);
    }
    for (const text of shown(book, sheet)) {
      expect(text).not.toMatch(WRONG);
      expect(text).not.toMatch(/(?:above|below) the usual range/);
    }
  });

  const choices = subsets(own).filter(({ length }) => length < own.length);
  /** A long run has every choice of parts; a short one none of them, and some by themselves. */
  const tried = IS_LONG ? choices : choices.filter(({ length }, at) => length === 0 || (length === 1 && at % 2 === 0));

  if (tried.length > 0)
    test("shows no error and no number with a tail in any choice of parts", async () => {
      const book = await bookFor(model);
      for (const parts of tried) {
        const options = withParts(parts);
        const known = new Set(layOut(model, options).names.keys());
        const values = Object.fromEntries(
          Object.entries(model.sample).filter(([name]) => known.has(name) || name === "title"),
        );
        const { sheet } = await buildSheet(values, { model, options, book });
        for (const text of shown(book, sheet)) expect(text, parts.join()).not.toMatch(WRONG);
        book.deleteSheet(sheet);
      }
    });
});

test("73 pieces of 390 g from 100/67/2/1 — Baker's percentage worksheet, a school hand-out", async () => {
  const { value } = await buildSheet(HANDOUT);
  close(value("dough"), 28470, 1e-6);
  [16747.058, 11220.528, 334.941, 167.47].forEach((printed, row) => {
    close(value("grams", row + 1), printed, 2e-3);
  });
  expect(value("mixes")).toBe(1);
  close(value("hydration"), 0.67, 1e-12);
});

test("by tins for a lidded 13 × 4 × 4 inch tin — toolntricks.com and yumarama.com/3919: about 1155 g", async () => {
  const sizes = { tin_size_1: 13, tin_size_2: 4, tin_size_3: 4 };
  const { value, message } = await buildSheet(
    { ...HANDOUT, by: "tins", tin_shape: "box", ...sizes, tin_kind: "lidded white", tins: 10 },
    { options: { weight: "g", temperature: "C", length: "in", parts: ["tin"] } },
  );
  close(value("tin_capacity"), 3408.5, 0.05);
  close(value("tin_dough"), 1155, 5);
  close(value("dough"), 11550, 50);
  expect(value("tin_note")).toMatch(/usual one for lidded white/);
  expect(message("tin_note")).toBeUndefined();
});

test("in ounces tins follow the same capacity", async () => {
  const { value } = await buildSheet(
    {
      ...HANDOUT,
      by: "tins",
      tin_size_1: 13,
      tin_size_2: 4,
      tin_size_3: 4,
      tin_kind: "lidded white",
      tins: 1,
      size_weight: [14],
      step_coarse: 0.25,
      step_fine: 0.05,
    },
    { options: { weight: "oz", temperature: "F", length: "in", parts: ["tin"] } },
  );
  close(value("tin_dough"), 40.7, 0.3);
  close(value("dough"), 1158.89 / 28.349523125, 1e-2);
});

describe("nothing is lost", () => {
  test("the same thing twice gives a second sheet, and the first stays as it was", async () => {
    const book = await workbook();
    const first = await buildSheet(HANDOUT, { book });
    const before = book.shownTexts(first.sheet, book.usedRange(first.sheet));
    const second = await buildSheet(HANDOUT, { book });
    expect(second.sheet).toBe("Hand-out (2)");
    expect(book.shownTexts(first.sheet, book.usedRange(first.sheet))).toEqual(before);
  });

  test("a duplicated tab keeps working by itself", async () => {
    const { book, sheet, at, value } = await buildSheet(HANDOUT);
    const copy = book.duplicateSheet(sheet);
    book.type(copy, at("percent", 2), "80%");
    close(book.cell(copy, at("exact", 1)).value, 28470 / 1.83, 1e-6);
    close(value("exact", 1), 28470 / 1.7, 1e-6);
  });

  test("a service call that throws, each in turn, leaves the workbook as it was and is told", async () => {
    const book = await workbook();
    await buildSheet(HANDOUT, { book });
    const calls = book.trail.length;
    const names = book.sheetNames();
    for (let call = 1; call <= calls; call += IS_LONG ? 1 : 17) {
      book.failAt(call);
      const reply = book.ask({ ask: "build", template: "pan-loaf", options: {}, values: HANDOUT });
      book.failAt(undefined);
      expect(reply.ok, `call ${call}`).toBe(false);
      expect(reply.ok ? "" : reply.message).toMatch(/nothing was changed/);
      expect(book.sheetNames(), `call ${call}`).toEqual(names);
    }
  });

  test("text never becomes a formula, and odd names are taken as they are", async () => {
    const nasty = [
      "=1+1",
      "+flour",
      "-salt",
      "@water",
      "'quoted",
      "\ttab",
      "3/4",
      "__proto__",
      "constructor",
      "<b>rye</b>",
    ];
    const { book, sheet, at, value } = await buildSheet({
      ...HANDOUT,
      title: "=IMPORTXML [odd] name: 'a/b'",
      shop: "=HYPERLINK(1)",
      ingredient: nasty,
      kind: ["flour"],
      percent: [1],
    });
    expect(sheet).toBe("=IMPORTXML odd name ’a b’");
    nasty.forEach((text, row) => {
      expect(String(value("ingredient", row + 1)).trim()).toBe(text.trim().replace(/^'/, ""));
      expect(book.cell(sheet, at("ingredient", row + 1)).formula).toBeUndefined();
    });
    expect(value("shop")).toBe("=HYPERLINK(1)");
  });

  test.each([
    ["no question at all", "", /has no name/],
    ["another template", { ask: "build", template: "croissant" }, /no template "croissant"; there is "pan-loaf"/],
    ["an unknown input", { ask: "build", template: "pan-loaf", values: { constructor: 1 } }, /no input "constructor"/],
    ["a wrong unit", { ask: "build", template: "pan-loaf", options: { weight: "stone" } }, /unit of weight is "stone"/],
    [
      "an input that is no value",
      { ask: "build", template: "pan-loaf", values: { tins: { a: 1 } } },
      /neither a number nor a text/,
    ],
    ["a question nobody answers", { ask: "__proto__" }, /can ask "ping"/],
  ])("the server refuses %s with a sentence", async (_, question, sentence) => {
    const book = await workbook();
    const reply = book.ask(question);
    expect(reply.ok ? "" : reply.message).toMatch(sentence);
    expect(book.sheetNames()).toEqual(["Sheet1"]);
  });
});
