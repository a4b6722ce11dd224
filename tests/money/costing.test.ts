import { describe, expect, test } from "vitest";
import { METRIC } from "../functions/support.ts";
import { OLDER } from "../kit/older.ts";
import { buildSheet, workbook } from "../templates/sheet-support.ts";
import { callsOn, costed, larderOf, modelNamed, SLOW } from "./costing-support.ts";

const cookie = modelNamed("cookie");

/** A class worksheet, docstoc 52086225: sixteen dozen dinner rolls. Prices and packs as printed. */
const BOUGHT = [
  ["Sugar", "1.99", "5 lb"],
  ["Shortening", "2.89", "3 lb"],
  ["Nonfat dry milk", "1.89", "1 lb"],
  ["Salt", "0.59", "1 lb"],
  ["Whole egg", "0.89", "1 dozen"],
  ["Fresh yeast", "4.29", "4 oz"],
  ["Water", "n/a", ""],
  ["Flour", "2.89", "5 lb"],
] as const;
/** In ounces; three eggs of 50 g without shell (USDA SR28 01123, large). */
const EGGS = (3 * 50) / 28.349523125;
const WEIGHED = [
  ["Flour", "flour", 112],
  ["Water", "water", 64],
  ["Sugar", "sugar", 16],
  ["Shortening", "fat", 20],
  ["Nonfat dry milk", "dairy", 8],
  ["Salt", "salt", 2],
  ["Whole egg", "egg", EGGS],
  ["Fresh yeast", "yeast", 6],
] as const;
const PRINTED = [4.046, "", 0.398, 1.2042, 0.945, 0.0738, 0.2225, 6.435];

describe("sixteen dozen dinner rolls (docstoc 52086225)", () => {
  const rolls = async () => {
    const book = await workbook();
    const larder = await larderOf(book, { ingredient: [] });
    BOUGHT.forEach(([name, price, pack], row) => {
      larder.type("ingredient", name, row + 1);
      larder.type("price", price, row + 1);
      if (pack !== "") larder.type("pack", pack, row + 1);
    });
    const sheet = await costed(book, { title: "Dinner rolls", by: "dough" }, cookie, { weight: "oz" });
    WEIGHED.forEach(([name, kind, weight], row) => {
      sheet.type("ingredient", name, row + 1);
      sheet.type("kind", kind, row + 1);
      sheet.type("weighed", String(weight), row + 1);
    });
    sheet.type("size_name", "roll", 1);
    // 14.58 lb of dough for 192 rolls.
    sheet.type("size_weight", String((112 + 64 + 16 + 20 + 8 + 2 + 6 + EGGS) / 192), 1);
    return { book, larder, sheet };
  };

  test(
    "cost $13.3244, 48 % of it the yeast; the water's row says that it has no price",
    async () => {
      const { larder, sheet } = await rolls();
      PRINTED.forEach((printed, row) => {
        const cost = sheet.value("cost", row + 1);
        if (typeof printed === "number") expect(Math.abs((cost as number) - printed)).toBeLessThan(6e-5);
        else expect(cost).toBe(printed);
      });
      const all = sheet.value("cost_ingredients") as number;
      expect(Math.abs(all - 13.3244)).toBeLessThan(0.001);
      expect((sheet.value("cost", 8) as number) / all).toBeCloseTo(0.48, 2);
      expect(sheet.value("price_note", 2)).toMatch(/price" is "n\/a"/);
      larder.type("price", "", 7);
      expect(sheet.value("price_note", 2)).toBe("no price");
      expect(sheet.value("cost_ingredients")).toBe(all);
      expect(sheet.value("unpriced")).toBe("");
      expect(sheet.value("size_ingredients", 1)).toBeCloseTo(0.0694, 4);
      expect((sheet.value("size_ingredients", 1) as number) * 12).toBeCloseTo(0.8328, 4);
    },
    SLOW,
  );

  test(
    "an ingredient that lost its price is counted as missing, and the rest still adds up",
    async () => {
      const { larder, sheet } = await rolls();
      larder.type("price", "", 6);
      expect(sheet.value("cost", 8)).toBe("");
      expect(sheet.value("price_note", 8)).toBe("no price");
      expect(sheet.value("unpriced")).toBe("1 without");
      expect(sheet.value("cost_ingredients")).toBeCloseTo(13.3244 - 6.435, 3);
      expect(larder.value("price_remark", 6)).toBe("no price");
      larder.type("price", "4.29", 6);
      larder.type("pack", "a box", 6);
      expect(sheet.value("cost_ingredients")).toBeCloseTo(13.3244 - 6.435, 3);
      expect(String(sheet.value("price_note", 8))).not.toBe("");
    },
    SLOW,
  );
});

test(
  "labour, overhead, packaging and price: 0.80 + 0.50 + 0.30 + 0.05 is 1.65; 2.5385 at a margin of 35 %, 2.2275 at a markup of 35 %",
  async () => {
    // Derived by hand: 24 pieces, 40 minutes at 18 an hour, overhead 60 % of labour. 1.65 ÷ 0.65, 1.65 × 1.35.
    const book = await workbook();
    await larderOf(book, { ingredient: ["Flour"], price: [0.8 * 24], pack: ["1 kg"] });
    const sheet = await costed(
      book,
      {
        title: "Pieces",
        size_name: ["piece"],
        size_pieces: [24],
        size_weight: [1000 / 24],
        ingredient: ["Flour"],
        kind: ["flour"],
        percent: [1],
        labour_minutes: 40,
        labour_rate: 18,
        overhead: 0.6,
        packaging: 0.05,
        price_by: "margin",
        price_share: 0.35,
      },
      cookie,
    );
    expect(sheet.value("size_ingredients", 1)).toBeCloseTo(0.8, 9);
    expect(sheet.value("size_cost", 1)).toBeCloseTo(1.65, 9);
    expect(sheet.value("size_price", 1)).toBeCloseTo(2.5385, 4);
    expect(sheet.value("size_margin", 1)).toBeCloseTo(0.35, 9);
    sheet.type("price_by", "markup");
    expect(sheet.value("size_price", 1)).toBeCloseTo(2.2275, 4);
    // A food cost of 32 % of the price; tax of 20 % on top of it, and the sum goes up to the next 0.05.
    sheet.type("price_by", "cost share");
    sheet.type("price_from", "ingredients");
    sheet.type("price_share", "32%");
    expect(sheet.value("size_price", 1)).toBeCloseTo(2.5, 9);
    sheet.type("price_tax", "20%");
    sheet.type("price_step", "0.35");
    expect(sheet.value("size_price", 1)).toBeCloseTo(3.15, 9);
    expect(sheet.value("size_untaxed", 1)).toBeCloseTo(2.625, 9);
    // What is made but not sold is paid for by the rest: 4 of 5 sold.
    sheet.type("unsold", "20%");
    expect(sheet.value("size_cost", 1)).toBeCloseTo(1.65 / 0.8, 9);
    sheet.type("price_by", "margin");
    sheet.type("price_share", "100%");
    expect(sheet.message("size_price")).toMatch(/margin must be below 100 %/);
    expect(sheet.value("size_margin", 1)).toBe("");
  },
  SLOW,
);

describe("without a larder", () => {
  test.each(OLDER)(
    "$title has neither cost nor label, and nothing of them",
    async (model) => {
      const { book, sheet } = await buildSheet(
        {},
        { model, options: { ...METRIC, parts: model.parts.filter((part) => part !== "cost" && part !== "label") } },
      );
      const texts = book.shownTexts(sheet, book.usedRange(sheet)).flat();
      expect(texts).not.toContain("Cost and price");
      expect(texts).not.toContain("Label");
      expect(texts.join("\n")).not.toMatch(/Price per/);
    },
    SLOW,
  );
});

describe("calls", () => {
  test.each(OLDER)(
    "$title: at most 18 with cost and label, and the same when rows are added",
    async (model) => {
      const book = await workbook();
      await larderOf(book);
      // Everything typed, so that no formula can be written together with a blank beside it.
      const typed = {
        labour_minutes: 90,
        labour_rate: 18,
        overhead: 0.6,
        other_costs: 2,
        packaging: 0.05,
        unsold: 0.04,
      };
      const priced = {
        price_share: 0.3,
        price_tax: 0.2,
        price_step: 0.05,
        law: "EU",
        declare: (model.sample.ingredient as string[])[0] ?? "",
      };
      const sheet = await costed(book, { ...model.sample, ...typed, ...priced, allergens_last: "milk" }, model);
      expect(book.trail.length, "service calls of the build").toBeLessThanOrEqual(40);
      const calls = callsOn(sheet);
      expect(calls).toBeLessThanOrEqual(18);
      expect(calls).toBeGreaterThan(6);
      book.insertRows(sheet.sheet, Number(sheet.at("ingredient", 3).replace(/\D/g, "")), 20);
      expect(callsOn(sheet)).toBe(calls);
      for (const text of book.shownTexts(sheet.sheet, book.usedRange(sheet.sheet)).flat()) {
        expect(text).not.toMatch(/^#|\d\.\d{5}|\d\.$/);
      }
    },
    SLOW,
  );

  test(
    "the larder has one at any length, and a row added last is priced",
    async () => {
      const book = await workbook();
      const short = await larderOf(book);
      expect(callsOn(short)).toBe(1);
      const { book: other, ...long } = await larderOf(await workbook(), { title: "All of it" });
      expect(callsOn({ book: other, ...long })).toBe(1);
      const filled = other
        .values(long.sheet, `${long.at("ingredient", 1)}:${long.at("ingredient", 110)}`)
        .flat()
        .filter((name) => name !== "");
      expect(filled.length).toBeGreaterThan(100);
      book.type(short.sheet, short.at("ingredient", 25), "Own blend");
      book.type(short.sheet, short.at("price", 25), "30");
      book.type(short.sheet, short.at("pack", 25), "20 kg");
      expect(short.value("price_each", 25)).toBeCloseTo(1.5, 9);
    },
    SLOW,
  );
});
