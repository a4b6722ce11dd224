import { expect, test } from "vitest";
import { METRIC } from "../functions/support.ts";
import { costed, larderOf, panLoaf, pricesOf } from "../money/costing-support.ts";
import { templateNamed } from "./plain-support.ts";
import { buildSheet, HANDOUT, workbook } from "./sheet-support.ts";

test("a pan loaf made by tins counts its tins, and a day can order some", async () => {
  const model = templateNamed("pan-loaf");
  const { size_name: _, size_pieces: __, size_weight: ___, ...formula } = HANDOUT;
  const { book, sheet, value } = await buildSheet(
    {
      ...formula,
      by: "tins",
      tins: 12,
      tin_shape: "box",
      tin_size_1: 33,
      tin_size_2: 10,
      tin_size_3: 10,
      tin_kind: "white",
    },
    { model, options: { ...METRIC, parts: ["tin"] } },
  );
  expect(value("pieces")).toBe(12);
  // 33 × 10 × 10 cm³ at the usual 0.43 g/cm³ (the project's guide), twelve times
  expect(value("dough")).toBeCloseTo(12 * 3300 * 0.43, 6);
  const { sheets } = book.answer({ ask: "formulas" }) as { sheets: { sheet: string; pieces: number }[] };
  expect(sheets).toMatchObject([{ sheet, pieces: 12 }]);
  const day = book.answer({ ask: "day", day: "2026-12-01", orders: [{ sheet, pieces: 24 }] }) as { sheet: string };
  const texts = book.values(day.sheet, book.usedRange(day.sheet)).flat();
  expect(texts.some((cell) => typeof cell === "number" && Math.abs(cell - 24 * 3300 * 0.43) < 1e-6)).toBe(true);
});

test.each(["the add-on's", "plain"])(
  "a pan loaf made by tins has a cost and a price a tin, in %s formulas",
  async (form) => {
    const book = await workbook();
    await larderOf(book);
    const { size_name: _, size_pieces: __, size_weight: ___, size_loss: ____, ...formula } = panLoaf.sample;
    const byTins = {
      ...formula,
      by: "tins",
      tins: 12,
      other_costs: 6,
      packaging: 0.05,
      price_by: "markup",
      price_share: 1,
    };
    const { value, type, message } = await costed(book, byTins, panLoaf, form === "plain" ? { form: "plain" } : {});
    const [all, full] = [value("cost_ingredients") as number, value("cost_all") as number];
    expect(full).toBeCloseTo(all + 6, 9);
    // What is lost on the way is in all of it, so that a tin is a twelfth.
    expect(value("size_ingredients", 1)).toBeCloseTo(all / 12, 9);
    expect(value("size_cost", 1)).toBeCloseTo(full / 12 + 0.05, 9);
    expect(value("size_price", 1)).toBeCloseTo(2 * (full / 12 + 0.05), 9);
    expect([1, 2].map((row) => value("cost_of", row))).toEqual(["one tin", ""]);
    expect(message("size_cost")).toBeUndefined();
    const prices = await pricesOf(book);
    expect(["product", "piece"].map((name) => prices.value(name, 1))).toEqual(["Quay pan loaf", "one tin"]);
    expect(prices.value("full_cost", 1)).toBeCloseTo(full / 12 + 0.05, 9);
    // A size that is typed says what a piece is.
    type("size_name", "large", 1);
    type("size_weight", "700", 1);
    const dough = value("dough") as number;
    expect(value("size_ingredients", 1)).toBeCloseTo(((700 / (1 - 0.02)) * all) / dough, 9);
    expect(value("cost_of", 1)).toBe("large");
  },
);
