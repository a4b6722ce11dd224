// The allergen table and the label texts follow the formula sheets, and say what they do not know.
import { beforeAll, describe, expect, test } from "vitest";
import { csvOf } from "../../shared/base/csv.ts";
import type { Questions } from "../../shared/protocol/questions.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { workbook } from "../templates/sheet-support.ts";

const LARDER = {
  ask: "build",
  template: "larder",
  options: { ...METRIC_UNITS, parts: [] },
  values: {
    ingredient: ["Flour", "Salt", "Butter", "Mystery"],
    label_name: ["fortified wheat flour", null, null, null],
    made_of: ["wheat flour, calcium carbonate, iron, niacin, thiamin", null, null, null],
    allergens: ["wheat", "none", "milk", null],
  },
};
const SETTINGS = {
  ask: "build",
  template: "settings",
  options: { ...METRIC_UNITS, parts: [] },
  values: {
    title: "Bakery settings",
    setting: ["Shop", "Labelling rules", "Business address"],
    setting_value: ["Tern Quay Bakehouse", "UK", 'The Quay, "Low" Lane, Ternport'],
  },
};
const loaf = (title: string, ingredient: string, more: object = {}) => ({
  ask: "build",
  template: "hearth-loaf",
  options: { ...METRIC_UNITS, parts: ["cost", "label"] },
  values: {
    title,
    size_name: ["loaf"],
    size_pieces: [10],
    size_weight: [800],
    size_loss: [0.1],
    ingredient: ["Flour", "Water", "Salt", ingredient],
    kind: ["flour", "water", "salt", "other"],
    percent: [1, 0.6, 0.02, 0.05],
    law: "UK",
    shelf_days: 3,
    date_kind: "best before",
    storage: "Keep cool and dry.",
    ...more,
  },
});

const TABLE = { ask: "build", template: "allergen-table", options: { ...METRIC_UNITS, parts: [] } };

const cellsOf = (book: WorkbookHost, sheet: string) => book.shownTexts(sheet, book.usedRange(sheet));
const rowOf = (book: WorkbookHost, sheet: string, product: string) =>
  cellsOf(book, sheet).find(([first]) => first === product) ?? [];

describe("sheets about the labels of all products", () => {
  let book: WorkbookHost;
  beforeAll(async () => {
    book = await workbook();
    book.answer(LARDER);
    book.answer(SETTINGS);
    book.answer(loaf("Butter loaf", "Butter", { label_title: "Rich white loaf" }));
    book.answer(loaf("Odd loaf", "Mystery"));
    // With a third there are more rows than the sheets have of themselves.
    book.answer(loaf("Plain loaf", "Salt", { law: "US" }));
  });

  test("each follows its formula sheets: allergens by group, blanks that say not known, and changes since the print", () => {
    const { sheet } = book.answer({ ...TABLE, values: {} }) as { sheet: string };
    expect(sheet).toBe("Allergen table");
    const text = cellsOf(book, sheet).flat().join(" ");
    expect(text).toContain("Cross-contact is not assessed. Blank: not known.");
    expect(text).toContain("Gluten cereals");
    // Products stand right under the headings and the row that begins the table.
    const rows = cellsOf(book, sheet).map(([first]) => first);
    expect(rows.indexOf("Butter loaf")).toBe(rows.indexOf("Product") + 2);
    const butter = rowOf(book, sheet, "Butter loaf");
    expect([butter[1], butter[7], butter[8], butter[16]]).toEqual(["wheat", "yes", "–", ""]);
    const odd = rowOf(book, sheet, "Odd loaf");
    expect(odd.slice(1, 17)).toEqual([...Array<string>(15).fill(""), "not known"]);
    const larder = cellsOf(book, "Ingredients");
    const at = larder.findIndex(([first]) => first === "Butter") + 1;
    const allergens = larder.find(([first]) => first === "Ingredient")?.indexOf("Allergens") ?? -1;
    book.type("Ingredients", `${String.fromCharCode(65 + allergens)}${at}`, "milk; pecans");
    const changed = rowOf(book, sheet, "Butter loaf");
    expect([changed[7], changed[8], changed[16]]).toEqual(["yes", "NEW: pecans", "CHANGED since the print"]);
    // Marked as printed, it is what later changes are told against.
    expect(book.answer({ ask: "printed" })).toMatchObject({ changed: 1 });
    const marked = rowOf(book, sheet, "Butter loaf");
    expect([marked[7], marked[8], marked[16]]).toEqual(["yes", "pecans", ""]);
    expect(book.answer({ ask: "printed" })).toMatchObject({ changed: 0 });
    book.type("Ingredients", `${String.fromCharCode(65 + allergens)}${at}`, "milk");
    expect(book.answer({ ask: "printed" })).toMatchObject({ changed: 1 });
    book.type("Ingredients", `${String.fromCharCode(65 + allergens)}${at}`, "none");
    const gone = rowOf(book, sheet, "Butter loaf");
    expect([gone[7], gone[8], gone[16]]).toEqual(["GONE: yes", "–", "CHANGED since the print"]);
    book.type("Ingredients", `${String.fromCharCode(65 + allergens)}${at}`, "milk; celery");
    // What was printed last was marked with milk alone. A table built anew knows it, also where products change their rows.
    book.insertRows("Formula list", rowInList("Butter loaf"), 1);
    const again = book.answer({ ...TABLE, values: {} }) as { sheet: string; note: string };
    expect(again.note).toBe("“Mark as printed” marks this table from now on. Delete the table before it.");
    book.deleteSheet(sheet);
    book.deleteRows("Formula list", rowInList("Butter loaf") - 1);
    const renewed = rowOf(book, again.sheet, "Butter loaf");
    expect([renewed[7], renewed[9], renewed[16]]).toEqual(["yes", "NEW: yes", "CHANGED since the print"]);
    expect(book.answer({ ask: "printed" })).toMatchObject({ products: 2 });
    expect(rowOf(book, again.sheet, "Butter loaf")[16]).toBe("");
    // It was built over four rows of the list, one of them blank, with ten to spare: what is built after those has none, and the table says so.
    expect(cellsOf(book, again.sheet)[2]?.[0]).toBe("");
    book.type("Formula list", `A${rowInList("Plain loaf") + 12}`, "Late loaf");
    expect(cellsOf(book, again.sheet)[2]?.[0]).toBe(
      "1 more than there are rows for: build this sheet again and delete this one.",
    );
    book.type("Formula list", `A${rowInList("Plain loaf") + 12}`, "");
    book.type("Ingredients", `${String.fromCharCode(65 + allergens)}${at}`, "milk");
    // While the calls of the formula sheets have no answer, what was printed stays known.
    book.answer({ ask: "printed" });
    const whole = rowOf(book, again.sheet, "Butter loaf");
    for (const text of ["Loading...", "Wird geladen...", "#N/A"]) {
      book.holdCalls(text);
      const marking = book.answer({ ask: "printed" });
      book.answerCalls();
      expect([marking, rowOf(book, again.sheet, "Butter loaf")]).toEqual([
        { products: 0, changed: 0, unknown: 3 },
        whole,
      ]);
    }
  });
  const rowInList = (title: string) => cellsOf(book, "Formula list").findIndex(([first]) => first === title) + 1;

  test("label texts: name, list, allergens, weight, day, batch code, storage and address, also as a file", () => {
    const values = { date: 46_356 };
    const { sheet } = book.answer({
      ask: "build",
      template: "label-text",
      options: { ...METRIC_UNITS, parts: [] },
      values,
    }) as { sheet: string };
    // 30 November 2026 is day 334 of its year; three days on is 3 December.
    const list =
      "fortified WHEAT flour (WHEAT flour, calcium carbonate, iron, niacin, thiamin), water, Butter (MILK), Salt";
    const row = rowOf(book, sheet, "Butter loaf");
    expect(row.slice(1, 6)).toEqual([
      "Rich white loaf",
      list,
      "cereals containing gluten (wheat), milk",
      "800 g",
      "best before",
    ]);
    expect(row.slice(7, 12)).toEqual([
      "L BL-261130",
      "Keep cool and dry.",
      'The Quay, "Low" Lane, Ternport',
      "",
      "2026-12-03",
    ]);
    // The letters stay with the product where its row in the list moves, as when a row above is deleted.
    book.insertRows("Formula list", rowInList("Butter loaf"), 1);
    expect(rowOf(book, sheet, "Butter loaf")[7]).toBe("L BL-261130");
    book.deleteRows("Formula list", rowInList("Butter loaf") - 1);
    // A list of two lines has the room of two, in programs too that do not make rows high themselves.
    const at = cellsOf(book, sheet).findIndex(([first]) => first === "Butter loaf");
    const high = (row: number) => book.session.get<number>("getRowSize", book.sheetId(sheet), row);
    expect(high(at)).toBe(40);
    // Its neighbour's remark has three lines of twenty letters; the rows that wait for products have one.
    expect(high(at + 1)).toBe(58);
    expect(high(at + 5)).toBeLessThan(30);
    expect(rowOf(book, sheet, "Odd loaf")[10]).toBe("no ingredient list: see its formula sheet");
    // 800 g are 28.2 oz; 21 CFR 101.7, from memory: ounces and grams.
    expect(rowOf(book, sheet, "Plain loaf")[4]).toBe("Net Wt 28.2 oz (800 g)");
    const { rows, without } = book.answer({ ask: "labels" }) as Questions["labels"]["answer"];
    expect(without).toBe(1);
    expect(csvOf(rows).split("\r\n").slice(0, 2)).toEqual([
      "Product,Name,Ingredients,Allergens,Net weight,Date,Day,Batch code,Storage,Business address",
      `Butter loaf,Rich white loaf,"${list}","cereals containing gluten (wheat), milk",800 g,best before,2026-12-03,L BL-261130,Keep cool and dry.,"The Quay, ""Low"" Lane, Ternport"`,
    ]);
  });
});

test("before there is a formula or a sheet of label texts, both say what to build", async () => {
  const book = await workbook();
  expect(() => book.answer({ ask: "labels" })).toThrow(/no sheet of label texts yet/);
  expect(() => book.answer({ ask: "printed" })).toThrow(/no allergen table in this workbook yet/);
  const asked = { ask: "build", template: "allergen-table", options: { ...METRIC_UNITS, parts: [] }, values: {} };
  const { sheet } = book.answer(asked) as { sheet: string };
  expect(cellsOf(book, sheet).flat().join(" ")).toContain("There is no formula sheet yet.");
});
