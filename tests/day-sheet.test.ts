import { describe, expect, test, vi } from "vitest";
import type { SheetModel } from "../shared/model.ts";
import { lint } from "../src/build/lint.ts";
import type { WorkbookHost } from "../src/workbook/host.ts";
import { daySheet } from "../templates/day-sheet.ts";
import { TEMPLATES } from "../templates/index.ts";
import { buildSheet, HANDOUT, workbook } from "./sheet-support.ts";

vi.setConfig({ testTimeout: 120_000 });
type Order = { readonly sheet: string; readonly pieces: number };
const METRIC = { weight: "g", temperature: "C", length: "cm" } as const;

function day(book: WorkbookHost, orders: readonly Order[]) {
  const { sheet } = book.answer({ ask: "day", day: "2026-01-31", orders }) as { sheet: string };
  const grid = () => book.values(sheet, book.usedRange(sheet));
  const headAt = (head: string): { row: number; column: number } => {
    const rows = grid();
    const row = rows.findIndex((line) => line.includes(head));
    return { row, column: rows[row]?.indexOf(head) ?? -1 };
  };
  const below = (head: string, by: string, name: string) => {
    const [at, key] = [headAt(head), headAt(by)];
    const line = grid().find((cells, index) => index > at.row && cells[key.column] === name);
    return line?.[at.column];
  };
  const place = (head: string, by: string, name: string) => {
    const [at, key] = [headAt(head), headAt(by)];
    const row = grid().findIndex((cells, index) => index > at.row && cells[key.column] === name);
    return `${"ABCDEFGHIJKLM"[at.column]}${row + 1}`;
  };
  const need = (name: string) => below("Weight (g)", "To get", name);
  const all = () => {
    const { row, column } = headAt("To get");
    return grid()
      .slice(row + 1, row + 40)
      .reduce((sum, line) => sum + (typeof line[column + 1] === "number" ? (line[column + 1] as number) : 0), 0);
  };
  const beside = (words: string, right = 2) => {
    const line = grid().find((cells) => cells[0] === words);
    return line?.[right];
  };
  return { sheet, grid, below, place, need, all, beside };
}

const close = (found: unknown, wanted: number) => {
  expect(found, String(found)).toBeTypeOf("number");
  expect(Math.abs((found as number) - wanted), `${found} against ${wanted}`).toBeLessThanOrEqual(
    1e-6 * Math.max(1, wanted),
  );
};
const fill = async (book: WorkbookHost, name: string, more: object = {}) => {
  const model = TEMPLATES.find((one) => one.name === name) as SheetModel;
  const parts = model.parts.filter((part) => part !== "cost" && part !== "label");
  return buildSheet({ ...model.sample, ...more }, { model, book, options: { ...METRIC, parts } });
};

describe("a day sheet", () => {
  test("100 loaves of 390 g from 100/67/2/1: dough, mixes and needs, less stock, in packs", async () => {
    const book = await workbook();
    await buildSheet({ ...HANDOUT, mixer_limit: 15000 }, { book });
    const { below, place, need, all, sheet } = day(book, [{ sheet: "Hand-out", pieces: 100 }]);
    expect(sheet).toBe("Day 2026-01-31");
    // 39 000 g in three mixes of 13 000; 39 000 ÷ 1.7 = 22 941.18 g of flour
    close(below("Dough in all (g)", "Product", "Hand-out"), 39000);
    expect(below("Mixes", "Product", "Hand-out")).toBe(3);
    close(below("Dough a mix (g)", "Product", "Hand-out"), 13000);
    close(need("Flour"), 39000 / 1.7);
    close(need("Water"), (39000 / 1.7) * 0.67);
    close(all(), 39000);
    book.type(sheet, place("there is (g)", "In stock", "Flour"), "10000");
    book.type(sheet, place("a pack has (g)", "In stock", "Flour"), "5000");
    close(need("Flour"), 39000 / 1.7 - 10000);
    // 12 941 g are three sacks of 5 kg
    expect(below("Packs to order", "To get", "Flour")).toBe(3);
    book.type(sheet, place("Pieces", "Product", "Hand-out"), "50");
    close(need("Flour"), 39000 / 3.4 - 10000);
  });

  test("several products share one list; a product inside another is broken down, what is ready comes off", async () => {
    const book = await workbook();
    const parts = { ingredient: ["Flour", "Custard"], kind: ["flour", "other"], percent: [1, 0.5] };
    await buildSheet({ ...HANDOUT, ...parts, title: "Tart", size_pieces: [10], size_weight: [150] }, { book });
    await buildSheet(
      { ...HANDOUT, title: "Custard", ingredient: ["Flour", "Milk"], kind: ["flour", "dairy"], percent: [1, 4] },
      { book },
    );
    await buildSheet(HANDOUT, { book });
    const { need, all, place, sheet } = day(book, [
      { sheet: "Tart", pieces: 20 },
      { sheet: "Hand-out", pieces: 10 },
    ]);
    // Tart: 3000 g, 2000 of flour and 1000 of custard, of which 200 are flour; hand-out: 3900 ÷ 1.7
    close(need("Flour"), 2000 + 200 + 3900 / 1.7);
    close(need("Milk"), 800);
    expect(need("Custard")).toBeUndefined();
    close(all(), 6900);
    book.type(sheet, place("there is (g)", "In stock", "Custard"), "400");
    close(need("Milk"), 480);
  });

  test("one call for all products, few service calls, and the formula sheets stay as they were", async () => {
    const book = await workbook();
    for (const name of ["levain-loaf", "laminated", "soft-bun"]) await fill(book, name);
    const before = book.sheetNames().map((name) => book.shownTexts(name, book.usedRange(name)));
    const { sheet, all, below } = day(book, [
      { sheet: "Harbour levain loaf", pieces: 68 },
      { sheet: "Slipway croissant", pieces: 72 },
    ]);
    expect(book.trail.length).toBeLessThanOrEqual(45);
    expect(
      book
        .sheetNames()
        .filter((name) => name !== sheet)
        .map((name) => book.shownTexts(name, book.usedRange(name))),
    ).toEqual(before);
    const formulas = book.formulas(sheet, book.usedRange(sheet)).flat().join(" ");
    expect(formulas.match(/BAKE_RAWNEEDS/g)).toHaveLength(1);
    expect(formulas.match(/BAKE_/g)).toHaveLength(2);
    const whole = (product: string) => below("Dough in all (g)", "Product", product) as number;
    close(all(), whole("Harbour levain loaf") + whole("Slipway croissant"));
    for (const text of book.shownTexts(sheet, book.usedRange(sheet)).flat()) expect(text).not.toMatch(/^#/);
  });

  test("the levain is fed for the day: twice the pieces need twice the levain, and what is kept stays", async () => {
    const book = await workbook();
    const { value } = await fill(book, "levain-loaf");
    const { beside } = day(book, [{ sheet: "Harbour levain loaf", pieces: 68 }]);
    // The sheet makes 34 pieces.
    expect(value("pieces")).toBe(34);
    close(beside("In the doughs (g)"), 2 * (value("pre_weight") as number));
    const levain = 2 * (value("pre_weight") as number) + 300;
    close(beside("Levain to build (g)"), levain);
    const feed = [2, 3, 4].map((right) => beside("Feed: seed, flour, water", right) as number);
    close(
      feed.reduce((sum, one) => sum + one, 0),
      levain,
    );
    // At 100 % the seed is half flour; 20 % of the flour fed.
    close(feed[0], 0.2 * (feed[1] ?? 0));
    close(feed[1], feed[2] ?? 0);
  });

  test.each([
    ["no order", [], /pieces of at least one product/],
    ["a sheet that is gone", [{ sheet: "Gone", pieces: 3 }], /no formula sheet "Gone" with weights any more/],
    ["no number", [{ sheet: "Hand-out", pieces: -3 }], /pieces of "Hand-out" are no number above 0/],
  ])("refuses %s", async (_, orders, sentence) => {
    const { book } = await buildSheet(HANDOUT);
    const names = book.sheetNames();
    const reply = book.ask({ ask: "day", day: "", orders });
    expect(reply.ok ? "" : reply.message).toMatch(sentence);
    expect(book.sheetNames()).toEqual(names);
  });

  test("a formula sheet without weights is named", async () => {
    const { book } = await buildSheet(HANDOUT);
    await buildSheet({ ...HANDOUT, title: "Custard", percent: [] }, { book });
    expect(book.answer({ ask: "day", day: "", orders: [{ sheet: "Hand-out", pieces: 1 }] })).toEqual({
      sheet: "Day sheet",
      note: "Not in it, because they show no weights: Custard.",
    });
  });

  test("refuses sheets of two units together", async () => {
    const { book } = await buildSheet(HANDOUT);
    await buildSheet(
      { ...HANDOUT, title: "Ounces" },
      { book, options: { weight: "oz", temperature: "F", length: "in", parts: [] } },
    );
    const orders = [
      { sheet: "Hand-out", pieces: 10 },
      { sheet: "Ounces", pieces: 10 },
    ];
    const reply = book.ask({ ask: "day", day: "", orders });
    expect(reply.ok ? "" : reply.message).toMatch(/"Ounces" counts in oz, the others in g/);
  });
});

test("its formulas mean the same everywhere, and two calls are all it has", () => {
  expect(lint(daySheet, { ...METRIC, parts: [] }, 2)).toEqual([]);
});
