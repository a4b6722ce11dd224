// A production in ounces: words in pounds, the same sums, and no error in any cell.
import exceljs from "exceljs";
import { expect, test } from "vitest";
import { openBook } from "../../src/workbook/scripted.ts";
import { toXlsx } from "../../src/workbook/xlsx/xlsx.ts";
import { US_UNITS } from "../kit/units.ts";
import { HANDOUT } from "../templates/sheet-support.ts";
import { pageOf } from "./week-book.ts";

test("orders to mixes, needs and weights, by customers across one day", async () => {
  const book = await openBook();
  const values = { ...HANDOUT, size_weight: [14], mixer_limit: 800, step_coarse: 0.25, step_fine: 0.05 };
  book.answer({ ask: "build", template: "pan-loaf", options: { ...US_UNITS, parts: [] }, values });
  const order = (pieces: number, customer = "", note = "") => ({ sheet: "Hand-out", pieces, customer, note });
  const { sheet } = book.answer({
    ask: "day",
    day: "2026-01-31",
    across: "customers",
    orders: [order(60), order(24, "Café {weight}", "sliced"), order(16, "Inn @quay")],
  }) as { sheet: string };
  const page = pageOf(book, sheet);
  expect(page.shown[1]?.[0]).toBe("100 pieces · 2 mixes of 1 batch over one day");
  expect(page.shown.flat()).toContain("Inn @quay");
  // 1400 oz in two mixes of 700, 43.75 lb
  expect(page.shown.flat()).toContain("2 × 43.75 lb");
  const needs = pageOf(book, (book.answer({ ask: "purchases", sheet }) as { sheet: string }).sheet);
  // 1400 ÷ 1.7
  expect(Number(needs.values.find(([name]) => name === "Flour")?.[2])).toBeCloseTo(1400 / 1.7, 9);
  const weigh = pageOf(book, (book.answer({ ask: "weighUp", sheet }) as { sheet: string }).sheet);
  // 700 ÷ 1.7 = 411.76, on quarter ounces
  expect(weigh.values.find((row) => row[1] === "Flour")?.[2]).toBe(411.75);
  book.answer({
    ask: "build",
    template: "price-lists",
    options: { ...US_UNITS, parts: [] },
    values: {
      pays_customer: ["café {weight}"],
      pays_by: ["Wholesale"],
      list_for: ["wholesale", "Inn @quay", "wholesale"],
      list_product: ["Hand-out", "Hand-out", "Another"],
      list_size_name: [null, "Loaf", "loaf"],
      list_price: [3.1, 2.9, 1],
      list_tax: [null, 0.2, null],
    },
  });
  const { sheet: notesSheet } = book.answer({ ask: "customers", sheet }) as { sheet: string };
  const notes = pageOf(book, notesSheet);
  expect(notes.shown[1]?.[0]).toBe("100 pieces for 3 deliveries");
  // 24 at the price list that the café pays by, 16 at the inn's own price; the shop has none.
  const amounts = notes.values.flatMap((row) => (row[0] === "Hand-out" ? [row.slice(4, 7)] : []));
  expect(amounts).toEqual([
    [3.1, "excl.", expect.closeTo(74.4, 9)],
    [2.9, "incl.", expect.closeTo(46.4, 9)],
    ["", "", ""],
  ]);
  // It has one size, which need not be said. Who pays by two lists is charged by neither.
  const lists = pageOf(book, "Price lists").shown.findIndex(([first]) => first === "Customer");
  book.paste("Price lists", `A${lists + 4}`, "Café {weight}\tWholesale");
  const [cafe] = pageOf(book, notesSheet).values.filter(([first]) => first === "Hand-out");
  expect(cafe?.slice(4, 7)).toEqual(["", "", ""]);
  // A note is for the one who ordered.
  expect(page.shown.find((row) => row[0] === "Hand-out")?.[5]).toBe("Café {weight}: sliced");
  expect(notes.shown.flatMap((row) => (row[0] === "Hand-out" ? [[row[2], row[3], row[7]]] : []))).toEqual([
    ["24", "HO-260131", "sliced"],
    ["16", "HO-260131", ""],
    ["60", "HO-260131", ""],
  ]);
  expect(weigh.shown.flat()).toContain("Today's temperatures (°F)");
  for (const { shown } of [page, needs, weigh, notes])
    for (const text of shown.flat()) expect(text).not.toMatch(/^#|NaN|undefined/);
  // Each goes on Letter, the delivery notes too, which say no unit; what a sheet works with below its page takes no paper.
  const file = new exceljs.Workbook();
  await file.xlsx.load((await toXlsx(book.engine)) as unknown as Parameters<typeof file.xlsx.load>[0]);
  for (const { name, pageSetup } of file.worksheets) expect(pageSetup.paperSize, name).toBe(1);
  const paper = (title: string) =>
    file.worksheets.find(({ name }) => name.startsWith(title))?.pageSetup.printArea ?? "";
  for (const [title, { shown }] of [
    ["Production", page],
    ["To order", needs],
    ["Weigh-up", weigh],
  ] as const) {
    const wide = title === "To order" ? 12 : title === "Weigh-up" ? 6 : 8;
    const last = shown.findLastIndex((row) => row.slice(0, wide).some((text) => text !== ""));
    expect(paper(title), title).toMatch(new RegExp(`^A1:[A-Z]${last + 1}$`));
  }
});
