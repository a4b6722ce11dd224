// Prices of price lists and of customers, each with its own tax, beside the shop's.
import { expect, test } from "vitest";
import { METRIC } from "../functions/support.ts";
import { costed, larderOf, modelNamed } from "../money/costing-support.ts";
import { buildSheet, workbook } from "./sheet-support.ts";

test("margin and wanted price of each price, with the tax that is in it and no other", async () => {
  const book = await workbook();
  await larderOf(book, { ingredient: ["Flour"], price: [1], pack: ["1 kg"] });
  // 0.50 and 0.25 a loaf; in the shop 1.50 with 20 % tax, 60 % wanted.
  await costed(
    book,
    {
      title: "Loaf",
      ingredient: ["Flour"],
      kind: ["flour"],
      percent: [1],
      size_name: ["large", "small"],
      size_pieces: [10, 20],
      size_weight: [500, 250],
      size_price: [1.5, 0.8],
      tax: 0.2,
      margin_wanted: 0.6,
    },
    modelNamed("cookie"),
  );
  const lists = await buildSheet(
    {
      list_for: ["wholesale", "wholesale", "Café Mole", "Café Mole", "wholesale", "wholesale", null],
      list_product: ["Loaf", " LOAF", "Loaf", "Bun", "Loaf", "Loaf", "Loaf"],
      list_size_name: ["large", "small", "Large", "large", null, "small ", "large"],
      list_price: [1.25, 0.625, 1.2, 1, 1, 0.6, 1],
      list_tax: [null, 0, 0.2, null, null, null, null],
      pays_customer: ["Café Mole", "Inn", " inn", "Pier", null, "Gull"],
      pays_by: ["Wholesale ", "wholesale", "wholesale", "hotels", "wholesale", null],
    },
    { book, model: modelNamed("price-lists"), options: { ...METRIC, parts: [] } },
  );
  const row = (at: number) =>
    ["says", "shop", "cost", "margin", "wanted", "remark"].map((name) => lists.value(`list_${name}`, at));
  // Wholesale without tax: 1 − 0.50 ÷ 1.25; 0.50 ÷ 0.4. A shop-wide 20 % would read 1 − 0.60 ÷ 1.25 = 52 %.
  expect(row(1)).toEqual(["excl. tax", 1.5, 0.5, expect.closeTo(0.6, 9), expect.closeTo(1.25, 9), ""]);
  // Zero-rated: the same, and said to be with its tax.
  expect(row(2)).toEqual([
    "incl. tax",
    0.8,
    0.25,
    expect.closeTo(0.6, 9),
    expect.closeTo(0.625, 9),
    "stands twice: delete one row",
  ]);
  // The customer's price holds 20 %: 1 − 0.50 × 1.2 ÷ 1.20; 0.50 ÷ 0.4 × 1.2.
  expect(row(3)).toEqual(["incl. tax", 1.5, 0.5, expect.closeTo(0.5, 9), expect.closeTo(1.5, 9), ""]);
  expect(row(4)).toEqual(["excl. tax", "", "", "", "", "choose a product of the formula list"]);
  expect(row(5)).toEqual(["excl. tax", "", "", "", "", "enter a size of this product"]);
  expect(row(7)[5]).toBe("enter wholesale, or a customer");
  expect([1, 2, 3, 4, 5, 6, 7].map((at) => lists.value("pays_remark", at))).toEqual([
    "",
    "stands twice: delete one row",
    "stands twice: delete one row",
    "no price of this list stands below: the shop's prices count",
    "enter a customer",
    "enter a price list",
    "",
  ]);
  // Rows go where they are put: one is inserted above.
  const line = Number(/\d+/.exec(lists.at("list_for", 2))?.[0]);
  book.insertRows(lists.sheet, line, 1);
  const shown = book.values(lists.sheet, `A${line - 1}:L${line + 3}`);
  expect(shown.map((one) => [one[0], one[8]])).toEqual([
    ["wholesale", expect.closeTo(0.6, 9)],
    ["", ""],
    ["wholesale", expect.closeTo(0.6, 9)],
    ["Café Mole", expect.closeTo(0.5, 9)],
    ["Café Mole", ""],
  ]);
  // What is entered there is worked out as in any other row.
  book.paste(lists.sheet, `A${line}`, "Hotel\tLoaf\tsmall\t0.7");
  expect(book.values(lists.sheet, `G${line}:L${line}`)[0]).toEqual([
    0.8,
    0.25,
    expect.closeTo(1 - 0.25 / 0.7, 9),
    expect.closeTo(0.625, 9),
    "Cost of ingredients",
    "",
  ]);
  book.deleteRows(lists.sheet, line);
  expect(row(1)[3]).toBeCloseTo(0.6, 9);
  // Built again it has what was typed on the one before, and is the one that delivery notes read.
  const typed = (sheet: string) =>
    book.values(sheet, "A1:E40").filter(([first]) => /^(?:wholesale|Café Mole|Pier|Gull)$/.test(String(first)));
  const again = book.answer({ ask: "build", template: "price-lists", options: METRIC, values: {} }) as {
    sheet: string;
    note: string;
  };
  expect(again.note).toMatch(/^Customers and prices came along from the sheet before it/);
  expect(typed(again.sheet).map((one) => one.slice(0, 2))).toEqual(typed(lists.sheet).map((one) => one.slice(0, 2)));
  expect(typed(again.sheet).length).toBe(9);
  book.deleteSheet(lists.sheet);
  const { sheet: name } = again;
  book.type(name, "C1", "=COUNTA(gramwright_pricelists)");
  expect(Number(book.values(name, "C1")[0]?.[0])).toBeGreaterThan(20);
});
