import { describe, expect, test } from "vitest";
import { METRIC } from "../functions/support.ts";
import {
  callsOn,
  costed,
  larderOf,
  modelNamed,
  panLoaf,
  priceSheet,
  pricesOf,
  SLOW,
} from "../money/costing-support.ts";
import { buildSheet, workbook } from "./sheet-support.ts";

describe("price sheet", () => {
  const shop = async () => {
    const book = await workbook();
    const larder = await larderOf(book);
    const pan = await costed(book, {
      ...panLoaf.sample,
      labour_mix: 90,
      labour_rate: 18,
      size_price: [4, 2],
    });
    const croissant = modelNamed("laminated");
    const rolled = await costed(book, croissant.sample, croissant);
    return { book, larder, pan, rolled };
  };

  test(
    "a cost that lacks a price says so, here too: of a row, and of what is rolled in",
    async () => {
      const book = await workbook();
      await larderOf(book);
      const croissant = modelNamed("laminated");
      const rolled = await costed(book, { ...croissant.sample, roll_in_name: "Quay lard" }, croissant);
      const pan = await costed(book, { ...panLoaf.sample, title: "Quay loaf" });
      const prices = await pricesOf(book);
      const remarks = () =>
        [1, 2, 3, 4].map((row) => [prices.value("product", row), prices.value("remark", row)]).sort();
      const croissants = ["Slipway croissant", "1 unpriced"];
      expect(rolled.value("unpriced")).toBe("1 without a price");
      expect(remarks()).toEqual([["Quay loaf", ""], ["Quay loaf", ""], croissants, croissants]);
      pan.type("ingredient", "Quay malt", 1);
      const loaf = ["Quay loaf", "1 unpriced"];
      expect(remarks()).toEqual([loaf, loaf, croissants, croissants]);
      rolled.type("ingredient", "Quay malt", 1);
      expect(rolled.value("unpriced")).toBe("2 without a price");
    },
    SLOW,
  );

  test(
    "every product with its cost, and one changed price in all of them",
    async () => {
      const { book, larder, pan, rolled } = await shop();
      book.renameSheet(pan.sheet, "Quay's @ loaf");
      const prices = await pricesOf(book);
      expect(callsOn(prices)).toBe(1);
      const rows = [1, 2, 3, 4];
      const before = rows.map((row) => prices.value("full_cost", row) as number);
      expect(rows.map((row) => prices.value("piece", row))).toEqual(["large", "small", "croissant", "mini"]);
      expect(before[2]).toBeCloseTo(rolled.value("size_cost", 1) as number, 9);
      expect(prices.value("margin", 1)).toBeCloseTo(1 - (before[0] ?? 0) / 4, 9);
      // What if butter cost 120 in the place of 86? Then the price is changed for good, and the table says the same.
      prices.type("tried", "Unsalted butter");
      prices.type("tried_price", "120");
      expect(prices.value("tried_now")).toBe(86);
      expect(prices.value("check")).toBe("");
      const then = rows.map((row) => prices.value("new_cost", row) as number);
      const margin = prices.value("new_margin", 1);
      larder.type("price", "120", 9);
      const after = rows.map((row) => prices.value("full_cost", row) as number);
      after.forEach((cost, row) => {
        expect(cost).toBeGreaterThan(before[row] ?? 0);
        expect(then[row]).toBeCloseTo(cost, 9);
      });
      // The price is what the bakery charges, so that the margin falls.
      expect(margin).toBeCloseTo(1 - (after[0] ?? 0) / 4, 9);
    },
    SLOW,
  );

  test(
    "its calls do not grow with the products, ounces and grams stand side by side, and rows inserted later are counted",
    async () => {
      const { book, larder, pan } = await shop();
      const soft = modelNamed("soft-bun");
      const ounces = await costed(
        book,
        {
          title: "Ounce bread",
          by: "dough",
          ingredient: ["Strong white flour", "Butter"],
          kind: ["flour", "fat"],
          weighed: [100, 10],
          size_name: ["loaf"],
          size_weight: [20],
        },
        panLoaf,
        { weight: "oz" },
      );
      await costed(book, soft.sample, soft);
      const prices = await pricesOf(book);
      expect(callsOn(prices)).toBe(1);
      const line = Number(pan.at("ingredient", 2).replace(/\D/g, ""));
      book.insertRows(pan.sheet, line, 2);
      for (const [column, entry] of [
        ["A", "Butter"],
        ["B", "fat"],
        ["C", "10%"],
      ] as const)
        book.type(pan.sheet, `${column}${line}`, entry);
      prices.type("tried", "Unsalted butter");
      prices.type("tried_price", "172");
      const rows = [1, 2, 3, 4, 5, 6, 7];
      expect(rows.map((row) => prices.value("piece", row))).toEqual([
        "large",
        "small",
        "croissant",
        "mini",
        "loaf",
        "bun",
        "roll",
      ]);
      const then = rows.map((row) => prices.value("new_cost", row) as number);
      larder.type("price", "172", 9);
      rows.forEach((row, at) => {
        expect(then[at]).toBeCloseTo(prices.value("full_cost", row) as number, 9);
      });
      expect(prices.value("full_cost", 5)).toBeCloseTo(ounces.value("size_cost", 1) as number, 12);
    },
    SLOW,
  );

  test(
    "a sheet with prices of its own shows its cost, and no change; a workbook without any says what to do",
    async () => {
      const book = await workbook();
      await buildSheet(
        { ...panLoaf.sample, title: "Old loaf", price_typed: [2, null, 1, 8, 3, 1] },
        { book, model: panLoaf },
      );
      await larderOf(book);
      await costed(book, panLoaf.sample);
      const prices = await pricesOf(book);
      prices.type("tried", "Strong white flour");
      prices.type("tried_price", "99");
      const [old, read] = [1, 3].map((row) =>
        ["product", "full_cost", "change", "new_cost", "remark"].map((name) => prices.value(name, row)),
      );
      expect(old?.[0]).toBe("Old loaf");
      expect(old?.[1]).toBeGreaterThan(0);
      expect(old?.slice(2)).toEqual(["", "", "prices typed"]);
      expect(read?.[3]).toBeGreaterThan(Number(read?.[1]));
      const empty = await buildSheet({}, { model: priceSheet, options: METRIC });
      expect(empty.book.shownTexts(empty.sheet, "A1:A8").flat().join(" ")).toMatch(
        /Build an ingredient sheet, then formula sheets/,
      );
    },
    SLOW,
  );

  test(
    "a product without a cost shows no change of it either",
    async () => {
      const book = await workbook();
      await larderOf(book);
      const { size_name: _, size_pieces: __, size_weight: ___, size_loss: ____, ...unsized } = panLoaf.sample;
      await costed(book, { ...unsized, title: "A Unsized", by: "dough", dough_wanted: 9000 });
      await costed(book, panLoaf.sample);
      const prices = await pricesOf(book);
      prices.type("tried", "Strong white flour");
      prices.type("tried_price", "99");
      const rows = [1, 2].map((row) =>
        ["product", "full_cost", "change", "new_cost"].map((name) => prices.value(name, row)),
      );
      expect(rows[0]).toEqual(["A Unsized", "", "", ""]);
      expect(rows[1]?.slice(1).every((one) => typeof one === "number" && one > 0)).toBe(true);
    },
    SLOW,
  );

  test("its headings reach over every column of the products", () => {
    const blocks = priceSheet.bands.flat().flatMap((item) => ("lines" in item ? item.lines : []));
    const headings = blocks.map(({ cells }) => cells.filter(({ role }) => role === "heading").length).filter(Boolean);
    const table = priceSheet.bands.flat().find((item) => "table" in item && item.table === "products");
    const columns = table !== undefined && "table" in table ? table.columns.length : 0;
    expect(headings).toEqual([columns, columns]);
  });

  test(
    "an ingredient the larder lacks is told",
    async () => {
      const { book } = await shop();
      const prices = await pricesOf(book);
      prices.type("tried", "Saffron");
      prices.type("tried_price", "5");
      expect(prices.value("tried_now")).toBe("not in Ingredients");
      expect(prices.value("change", 1)).toBeCloseTo(0, 9);
    },
    SLOW,
  );
});
