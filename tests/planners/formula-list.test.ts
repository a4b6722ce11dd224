// The list of formula sheets says the same of each as the sheet itself, whatever happens to the sheets.
import { beforeAll, describe, expect, test } from "vitest";
import { VERSION } from "../../shared/base/version.ts";
import { columnLetters } from "../../shared/sheet/a1.ts";
import { BUILT_BY, isBuiltBy } from "../../shared/sheet/built-by.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { IS_LONG, someOf } from "../kit/scale.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { HANDOUT, workbook } from "../templates/sheet-support.ts";

const LIST = "Formula list";
const LARDER = {
  ask: "build",
  template: "larder",
  values: {
    ingredient: ["Flour", "Water", "Salt", "Butter"],
    price: [20, 0, 3, 9],
    pack: ["25 kg", "1 kg", "1 kg", "1 kg"],
  },
};

const cells = (book: WorkbookHost, sheet: string) => ({
  formulas: book.formulas(sheet, book.usedRange(sheet)),
  shown: book.shownTexts(sheet, book.usedRange(sheet)),
});
const formulasOf = (book: WorkbookHost) =>
  (book.answer({ ask: "formulas" }) as { sheets: { sheet: string; sizes: string[] }[] }).sheets;
const build = (book: WorkbookHost, asked: object) => (book.answer(asked) as { sheet: string }).sheet;
const rowsOf = (book: WorkbookHost) => book.shownTexts(LIST, "A7:F20").filter((row) => row[0] !== "");

/** What the sidebar makes of all formula sheets: their summaries and a production sheet, which is taken away again. */
function overAll(book: WorkbookHost) {
  const sheets = formulasOf(book);
  const orders = sheets.flatMap(({ sheet, sizes }) => sizes.slice(0, 1).map((size) => ({ sheet, size, pieces: 10 })));
  const made = [build(book, { ask: "day", day: "2026-01-31", orders })];
  const seen = made.map((sheet) => cells(book, sheet));
  for (const sheet of made) book.deleteSheet(sheet);
  return { sheets, seen };
}

describe.each([
  ["in g", { weight: "g" }],
  ["in oz", { weight: "oz" }],
] as const)("every template as a formula sheet, %s", (_, options) => {
  const models = someOf(TEMPLATES, 2, options.weight === "g" ? 0 : 1);
  let book: WorkbookHost;
  beforeAll(async () => {
    book = await workbook();
    book.answer(LARDER);
    for (const { name, sample, parts } of models)
      book.answer({ ask: "build", template: name, options: { ...METRIC_UNITS, ...options, parts }, values: sample });
  });

  test("a list built over them makes the very formulas that reading each of them makes", () => {
    const each = overAll(book);
    expect(build(book, { ask: "list" })).toBe(LIST);
    const byList = overAll(book);
    expect(byList.sheets).toEqual(each.sheets);
    expect(byList.seen).toEqual(each.seen);
    expect(rowsOf(book).map(([title]) => title)).toEqual(models.map(({ sample }) => sample.title));
  });

  test.runIf(IS_LONG || options.weight === "g")("rows added one by one show the same results", () => {
    book.deleteSheet(LIST);
    const each = overAll(book);
    book.answer({ ask: "list" });
    // The first is made anew: its row comes last, by the places that the sidebar gave its cells.
    const [first] = models;
    if (first === undefined) throw new Error("no templates");
    const { sample, parts } = first;
    const title = String(sample.title);
    book.deleteSheet(title);
    book.answer({
      ask: "build",
      template: first.name,
      options: { ...METRIC_UNITS, ...options, parts },
      values: sample,
    });
    expect(rowsOf(book).map(([one]) => one)).toEqual([
      "this sheet is gone: delete the row",
      ...models.slice(1).map((model) => model.sample.title),
      title,
    ]);
    const byList = overAll(book);
    const byName = (all: typeof each.sheets) => [...all].sort((a, b) => a.sheet.localeCompare(b.sheet));
    expect(byName(byList.sheets)).toEqual(byName(each.sheets));
    const figures = (seen: (typeof each.seen)[number] | undefined) =>
      seen?.shown.map((row) => row.slice(0, 7).join("|")).filter((row) => row.startsWith(title));
    expect(figures(byList.seen[0])).toEqual(figures(each.seen[0]));
    expect(figures(byList.seen[0])?.length).toBeGreaterThan(0);
  });
});

describe("a list of six hand-outs", () => {
  let book: WorkbookHost;
  const day = (...names: string[]) => ({
    ask: "day",
    day: "2026-01-31",
    orders: names.map((sheet) => ({ sheet, pieces: 10 })),
  });
  beforeAll(async () => {
    book = await workbook();
    book.answer(LARDER);
    const due: unknown[] = [];
    for (let at = 1; at <= 6; at++) {
      const values = { ...HANDOUT, title: `Loaf ${at}` };
      const parts = ["tin", "water"];
      const asked = { ask: "build", template: "pan-loaf", options: { ...METRIC_UNITS, parts }, values };
      due.push((book.answer(asked) as { listDue?: boolean }).listDue ?? false);
      // It is counted before anything is written: to read after that waits for every formula.
      expect(book.trail.indexOf("findAll")).toBeLessThan(book.trail.indexOf("insertSheet"));
      expect(book.trail.filter((name) => name === "findAll").length).toBe(1);
    }
    expect(due).toEqual([false, false, false, false, false, true]);
    expect(build(book, { ask: "list" })).toBe(LIST);
  });

  test("stands behind the sheet in front, and says what each makes", () => {
    expect(book.session.get("getSheetName", book.session.get("getActiveSheetId"))).toBe("Loaf 6");
    // 73 loaves of 390 g (a school's published hand-out: 28 470 g of dough).
    expect(rowsOf(book)).toEqual(
      [1, 2, 3, 4, 5, 6].map((at) => [`Loaf ${at}`, "28,470.0", "g", "73", "1", expect.stringMatching(/^\d/)]),
    );
  });

  test("follows a tab's new name, rows put into a table and another amount", () => {
    book.renameSheet("Loaf 2", "Baker’s best, 2nd");
    const first = book.values("Loaf 3", "A1:A60").findIndex(([name]) => name === "Flour") + 1;
    book.insertRows("Loaf 3", first);
    book.type("Loaf 3", `A${first}`, "Rye");
    book.type("Loaf 3", `B${first}`, "flour");
    book.type("Loaf 3", `C${first}`, "0");
    const names = formulasOf(book).map(({ sheet }) => sheet);
    expect(names).toEqual(["Loaf 1", "Baker’s best, 2nd", "Loaf 3", "Loaf 4", "Loaf 5", "Loaf 6"]);
    expect((formulasOf(book)[2] as unknown as { ingredients: string[] }).ingredients).toContain("Rye");
    const sheet = build(book, day("Baker’s best, 2nd", "Loaf 3"));
    const { formulas, shown } = cells(book, sheet);
    expect(formulas.flat().join(" ")).toContain("'Baker’s best, 2nd'!");
    expect(shown.flat().filter((text) => text.startsWith("#"))).toEqual([]);
    const needs = build(book, { ask: "purchases", sheet });
    expect(cells(book, needs).shown.flat()).toContain("Rye");
    book.deleteSheet(needs);
    book.deleteSheet(sheet);
  });

  test("a sheet that a newer version built is said to be so, by the list, on a production of it, and of the production", () => {
    const stamp = (sheet: string, text: string) => {
      const at = (book.values(sheet, book.usedRange(sheet))[0] ?? []).findIndex(isBuiltBy);
      book.type(sheet, `${columnLetters(at)}1`, text);
    };
    const newer = (sheet: string) =>
      `Gramwright 99.0.0 built “${sheet}”, and this is ${VERSION}. Update Gramwright before you change that sheet.`;
    const said = () => formulasOf(book).flatMap((one) => (one as { newer?: string }).newer ?? []);
    expect(said()).toEqual([]);
    stamp("Loaf 6", "Gramwright 99.0.0");
    expect(said()).toEqual([newer("Loaf 6")]);
    const { sheet, note } = book.answer(day("Loaf 6")) as { sheet: string; note: string };
    expect(note).toBe(newer("Loaf 6"));
    stamp("Loaf 6", BUILT_BY);
    stamp(sheet, "Gramwright 99.0.0");
    expect(book.answer({ ask: "productions" })).toEqual({
      sheets: [{ sheet, days: ["2026-01-31"], newer: newer(sheet) }],
    });
    book.deleteSheet(sheet);
  });

  test("tabs that took each other's names keep their own rows", () => {
    for (const [from, to] of [
      ["Loaf 4", "between"],
      ["Loaf 5", "Loaf 4"],
      ["between", "Loaf 5"],
    ] as const)
      book.renameSheet(from, to);
    const [four] = formulasOf(book).filter(({ sheet }) => sheet === "Loaf 4") as unknown as { title: string }[];
    expect(four?.title).toBe("Loaf 5");
  });

  test("a copy made by hand is not in it and is read by itself; a sheet that was deleted is nowhere", () => {
    const copy = book.duplicateSheet("Loaf 6");
    book.deleteSheet("Loaf 1");
    const names = formulasOf(book).map(({ sheet }) => sheet);
    expect(names).toContain(copy);
    expect(names).not.toContain("Loaf 1");
    const sheet = build(book, day(copy, "Loaf 6"));
    expect(cells(book, sheet).formulas.flat().join(" ")).toContain(`'${copy}'!`);
    book.deleteSheet(sheet);
    book.deleteSheet(copy);
  });

  test("a row that somebody changed, or a name with its mark in it, has that sheet read by itself", () => {
    const before = formulasOf(book);
    const reads = () => book.trail.filter((name) => name === "getValues").length;
    expect(reads()).toBe(1);
    const salt = book.values("Loaf 6", "A1:A60").findIndex(([name]) => name === "Salt") + 1;
    book.type("Loaf 6", `A${salt}`, "Salt | fine");
    const ingredients = formulasOf(book).flatMap((one) => (one as unknown as { ingredients: string[] }).ingredients);
    expect(ingredients).toContain("Salt | fine");
    // The list, once more with the one sheet.
    expect(reads()).toBe(3);
    book.type("Loaf 6", `A${salt}`, "Salt");
    book.type(LIST, "C9", "stone");
    expect(formulasOf(book)).toEqual(before);
    expect(reads()).toBe(3);
  });

  test("rows that come in below its range, where somebody deleted the blank ones, are read all the same", async () => {
    const range = book.usedRange(LIST);
    const [, last = "0"] = /:[A-Z]+(\d+)$/.exec(range) ?? [];
    book.deleteRows(LIST, Number(last) + 1, 293);
    const named = () => {
      const { sheets } = book.answer({ ask: "formulas" }) as { sheets: { sheet: string }[] };
      return sheets.map(({ sheet }) => sheet);
    };
    // One finds room within it, two do not.
    for (let at = 7; at <= 9; at++) {
      const values = { ...HANDOUT, title: `Loaf ${at}` };
      book.answer({
        ask: "build",
        template: "pan-loaf",
        options: { ...METRIC_UNITS, parts: ["tin", "water"] },
        values,
      });
      expect(book.trail).toContain("appendRow");
    }
    expect(named()).toContain("Loaf 9");
    // The row that was changed before is still there.
    expect(book.trail.filter((name) => name === "getValues").length).toBe(3);
    for (let at = 7; at <= 9; at++) book.deleteSheet(`Loaf ${at}`);
  });

  test("a second list takes its place", () => {
    const { sheet, note } = book.answer({ ask: "list" }) as Record<string, string>;
    expect(sheet).toBe(`${LIST} (2)`);
    expect(note).toBe("Gramwright keeps this list from now on: delete the older one.");
    book.deleteSheet(LIST);
    expect(formulasOf(book).length).toBe(5);
    expect(book.trail.filter((name) => name === "getValues")).toEqual(["getValues"]);
  });
});
