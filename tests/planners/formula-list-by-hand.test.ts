// What people do to the list of formula sheets by hand never makes the sidebar read another formula's cells.
import { beforeAll, describe, expect, test } from "vitest";
import { columnLetters } from "../../shared/sheet/a1.ts";
import { aboutTab, tabOf } from "../../shared/sheet/tab.ts";
import { namedRanges } from "../../src/add-on/workbook.ts";
import { listedSheets, TAB_FORMULA } from "../../src/planners/list-row.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { LIST_COLUMNS, LISTED } from "../../templates/formula-list.ts";
import { IS_LONG, someOf } from "../kit/scale.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { HANDOUT, workbook } from "../templates/sheet-support.ts";

const LIST = "Formula list";
const LAST = columnLetters(LIST_COLUMNS.length - 1);
const OPTIONS = { ...METRIC_UNITS, parts: ["tin", "water"] } as const;
const LARDER = {
  ask: "build",
  template: "larder",
  values: { ingredient: ["Flour", "Salt"], price: [20, 3], pack: ["25 kg", "1 kg"] },
};

describe("a list of formulas of different lengths", () => {
  let book: WorkbookHost;
  const formulasOf = () => (book.answer({ ask: "formulas" }) as { sheets: { sheet: string }[] }).sheets;
  const reads = () => book.trail.filter((name) => name === "getValues").length;
  let before: unknown;
  beforeAll(async () => {
    book = await workbook();
    book.answer(LARDER);
    for (let at = 1; at <= 3; at++) {
      const flours = Array.from({ length: at }, (_, index) => `Flour ${index + 1}`);
      const values = {
        ...HANDOUT,
        title: `Loaf ${at}`,
        size_pieces: [70 + at],
        ingredient: [...flours, "Water", "Salt", "Yeast"],
        kind: [...flours.map(() => "flour"), "water", "salt", "yeast"],
        percent: [...flours.map(() => 1 / at), 0.67, 0.02, 0.01],
      };
      book.answer({ ask: "build", template: "pan-loaf", options: OPTIONS, values });
    }
    book.answer({ ask: "list" });
    before = formulasOf();
    expect(reads()).toBe(1);
  });

  test.each([
    ["Formula", "A7", "Another loaf"],
    ["Makes", "B7", "500"],
    ["Makes", "B8", ""],
    ["in", "C8", "oz"],
    ["Pieces", "D7", "12"],
    ["Ingredients cost", "F9", ""],
    ["Ingredients cost", "F9", "=F8"],
  ])("%s in %s typed over with “%s”", (_, cell, typed) => {
    const [[formula = ""] = []] = book.formulas(LIST, cell);
    book.type(LIST, cell, typed);
    expect(formulasOf()).toEqual(before);
    expect(reads()).toBeGreaterThan(1);
    // Of all columns in a long run, otherwise of two.
    if (IS_LONG || /^[AC]/.test(cell)) {
      const prices = { ask: "build", template: "prices", options: { parts: ["products"] }, values: {} };
      const { sheet, note } = book.answer(prices) as { sheet: string; note?: string };
      expect(note).toBeUndefined();
      book.deleteSheet(sheet);
    }
    book.type(LIST, cell, formula);
    expect(formulasOf()).toEqual(before);
    expect(reads()).toBe(1);
  });

  test("some columns sorted and the others not", () => {
    book.sortRange(LIST, "A7:F9", "A", false);
    expect(book.shownTexts(LIST, "A7:A9").flat()).toEqual(["Loaf 3", "Loaf 2", "Loaf 1"]);
    expect(formulasOf()).toEqual(before);
    book.sortRange(LIST, "A7:F9", "A");
    expect(formulasOf()).toEqual(before);
    expect(reads()).toBe(1);
  });

  test("written as another spreadsheet writes formulas: fewer quotation marks, commas, spaces", () => {
    const formulas = book.formulas(LIST, `A5:${LAST}9`).map((row) => row.map((one) => one ?? ""));
    const values = book.values(LIST, `A5:${LAST}9`) as string[][];
    book.renameSheet("Loaf 2", "Brötchen");
    const renamed = book.formulas(LIST, `A5:${LAST}9`).map((row) => row.map((one) => one ?? ""));
    const elsewhere = renamed.map((row) =>
      row.map((one) =>
        one
          .replace(/'(Brötchen)'!/g, "$1!")
          .replace(/;/g, ", ")
          .replace(/(TRUE|FALSE)\(\)/g, "$1"),
      ),
    );
    expect(elsewhere.flat().join(" ")).toMatch(/FALSE, Brötchen!\$[A-Z]+\$/);
    const zones = (of: string[][]) =>
      [...listedSheets({ formulas: of, values }).values()].map(({ sheet }) =>
        LISTED.map(({ of: name }) => sheet.zone(name)),
      );
    expect(zones(elsewhere).length).toBe(3);
    expect(zones(elsewhere)).toEqual(zones(formulas));
    book.renameSheet("Brötchen", "Loaf 2");
  });

  test("rows put in above everything on a formula's sheet", () => {
    book.insertRows("Loaf 2", 1, 2);
    expect(formulasOf()).toEqual(before);
    expect(reads()).toBe(1);
    book.deleteRows("Loaf 2", 1, 2);
  });

  test("all of it sorted", () => {
    book.sortRange(LIST, `A7:${LAST}9`, "A", false);
    expect(formulasOf()).toEqual(before);
    expect(reads()).toBe(1);
  });
});

describe("tabs of any name", () => {
  let book: WorkbookHost;
  const answers = (asked: object) => (book.answer(asked) as { sheet: string }).sheet;
  const day = (sheet: string) => ({ ask: "day", day: "2026-01-31", orders: [{ sheet, pieces: 10 }] });
  beforeAll(async () => {
    book = await workbook();
    book.answer(LARDER);
    for (const title of ["Loaf", "Bun"])
      book.answer({ ask: "build", template: "pan-loaf", options: OPTIONS, values: { ...HANDOUT, title } });
    answers({ ask: "list" });
    const values = { ...HANDOUT, title: "Rolls" };
    book.answer({ ask: "build", template: "pan-loaf", options: OPTIONS, values });
  });

  const names = [
    "Ounces",
    "Rolls; small",
    "Rolls, small",
    "Rolls (small)",
    "Rolls @home",
    "Rolls {weight}",
    "Rolls | small",
    "Rolls + buns",
    "x!$B$2",
    "A1",
  ];
  test.each(someOf(names, 3))("%s", (name) => {
    book.renameSheet("Rolls", name);
    const [tab] = (book.answer({ ask: "formulas" }) as { sheets: { sheet: string; title: string }[] }).sheets.filter(
      ({ title }) => title === "Rolls",
    );
    expect(tab?.sheet).toBe(name);
    // One call for all of them: no row was taken for one that somebody changed.
    expect(book.trail.filter((call) => call === "getValues").length).toBe(1);
    const sheet = answers(day(name));
    expect(
      book
        .shownTexts(sheet, book.usedRange(sheet))
        .flat()
        .filter((text) => text.startsWith("#")),
    ).toEqual([]);
    expect(book.values(sheet, book.usedRange(sheet)).flat()).toContain(name);
    book.deleteSheet(sheet);
    const list = answers({ ask: "list" });
    const titles = book.shownTexts(list, "A7:A9").flat();
    expect([...titles].sort()).toEqual(["Bun", "Loaf", "Rolls"]);
    book.deleteSheet(LIST);
    book.renameSheet(list, LIST);
    book.renameSheet(name, "Rolls");
  });
});

test.each(["Rye *?", "*?", "?", "a'?'!b", "$&", "Baker's *?"])(
  "a tab that somebody called %s keeps its name",
  (name) => {
    expect(tabOf(aboutTab(TAB_FORMULA, { name, id: 4 }))).toEqual({ name, id: 4 });
  },
);

test("names whose sheet was deleted are none, and of two alike the first counts", () => {
  const range = (a1: string) => ({ getA1Notation: () => a1 });
  const named = (name: string, getRange: () => object | null) => ({ getName: () => name, getRange });
  const workbookOf = (...names: readonly object[]) => ({ getNamedRanges: () => names }) as never;
  const found = namedRanges(
    workbookOf(
      named("nothing", () => null),
      named("refused", () => {
        throw new Error("The range is gone");
      }),
      named("kept", () => range("A1")),
      named("kept", () => range("B2")),
    ),
  );
  expect([...found].map(([name, one]) => [name, one.getA1Notation()])).toEqual([["kept", "A1"]]);
});
