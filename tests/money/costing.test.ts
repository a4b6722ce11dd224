import { describe, expect, test } from "vitest";
import { TEMPLATES } from "../../templates/index.ts";
import { METRIC } from "../functions/support.ts";
import { someOf } from "../kit/scale.ts";
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
const PRINTED = [4.046, 0, 0.398, 1.2042, 0.945, 0.0738, 0.2225, 6.435];

describe("sixteen dozen dinner rolls (docstoc 52086225)", () => {
  const rolls = async () => {
    const book = await workbook();
    const larder = await larderOf(book, { ingredient: [] });
    BOUGHT.forEach(([name, price, pack], row) => {
      larder.type("ingredient", name, row + 1);
      larder.type("price", price, row + 1);
      if (pack !== "") larder.type("pack", pack, row + 1);
    });
    const sheet = await costed(
      book,
      {
        title: "Dinner rolls",
        by: "dough",
        ingredient: WEIGHED.map(([name]) => name),
        kind: WEIGHED.map(([, kind]) => kind),
        weighed: WEIGHED.map(([, , weight]) => weight),
        size_name: ["roll"],
        // 14.58 lb of dough for 192 rolls.
        size_weight: [(112 + 64 + 16 + 20 + 8 + 2 + 6 + EGGS) / 192],
      },
      cookie,
      { weight: "oz" },
    );
    return { book, larder, sheet };
  };

  test(
    "cost $13.3244, 48 % of it the yeast; water is not paid for by weight",
    async () => {
      const { larder, sheet } = await rolls();
      PRINTED.forEach((printed, row) => {
        const cost = sheet.value("row_cost", row + 1);
        expect(Math.abs((cost as number) - Number(printed))).toBeLessThan(6e-5);
      });
      const all = sheet.value("cost_ingredients") as number;
      expect(Math.abs(all - 13.3244)).toBeLessThan(0.001);
      expect((sheet.value("row_cost", 8) as number) / all).toBeCloseTo(0.48, 2);
      larder.type("price", "", 7);
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
      expect(sheet.value("cost_shown", 8)).toBe("");
      expect(sheet.value("unpriced")).toBe("Without a price: 1");
      expect(sheet.value("cost_ingredients")).toBeCloseTo(13.3244 - 6.435, 3);
      expect(larder.value("price_remark", 6)).toBe("no price");
      larder.type("price", "4.29", 6);
      larder.type("pack", "a box", 6);
      expect(sheet.value("cost_ingredients")).toBeCloseTo(13.3244 - 6.435, 3);
      expect(sheet.value("unpriced")).toBe("Without a price: 1");
    },
    SLOW,
  );
});

test(
  "labour, overhead, packaging and price: 0.80 + 0.50 + 0.30 + 0.05 is 1.65; 2.5385 for a margin of 35 %",
  async () => {
    // Derived by hand: 24 pieces, 40 minutes at 18 an hour, overhead 60 % of labour. 1.65 ÷ 0.65.
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
        labour_mix: 40,
        labour_rate: 18,
        // 60 % of an hour's labour.
        overhead_labour: 10.8,
        packaging: 0.05,
        margin_wanted: 0.35,
        size_price: [2.2],
      },
      cookie,
    );
    expect(sheet.value("size_ingredients", 1)).toBeCloseTo(0.8, 9);
    expect(sheet.value("size_cost", 1)).toBeCloseTo(1.65, 9);
    expect(sheet.value("price_wanted", 1)).toBeCloseTo(2.5385, 4);
    // 1 − 1.65 ÷ 2.20.
    expect(sheet.value("size_margin", 1)).toBeCloseTo(0.25, 9);
    // A tax of 20 % stands on top of the price, and comes off what is charged: 1 − 1.65 × 1.2 ÷ 2.20.
    sheet.type("tax", "20%");
    expect(sheet.value("price_wanted", 1)).toBeCloseTo((1.65 / 0.65) * 1.2, 9);
    expect(sheet.value("size_margin", 1)).toBeCloseTo(0.1, 9);
    // What is made but not sold is paid for by the rest: 4 of 5 sold.
    sheet.type("unsold", "20%");
    expect(sheet.value("size_cost", 1)).toBeCloseTo(1.65 / 0.8, 9);
    // The same minutes by the piece: 40 for 24 are 166 2/3 for 100.
    sheet.type("labour_mix", "");
    sheet.type("labour_pieces", String((40 / 24) * 100));
    expect(sheet.value("size_cost", 1)).toBeCloseTo(1.65 / 0.8, 9);
  },
  SLOW,
);

test(
  "broken, unsold and sold at a reduced price: 0.9926 a sold piece, and the headings say what a margin is after",
  async () => {
    // By hand: 100 pieces cost 80.00 before packaging at 0.06; 4 % break before packing, 10 % of the 96 stay unsold.
    // (80 + 0.06 × 96) ÷ (96 × 0.9) = 85.76 ÷ 86.4.
    const book = await workbook();
    await larderOf(book, { ingredient: ["Flour"], price: [80], pack: ["1 kg"] });
    const sheet = await costed(
      book,
      {
        title: "Pieces",
        size_name: ["piece"],
        size_pieces: [100],
        size_weight: [10],
        ingredient: ["Flour"],
        kind: ["flour"],
        percent: [1],
        packaging: 0.06,
        broken: 0.04,
        unsold: 0.1,
        size_price: [2.4],
      },
      cookie,
    );
    const heads = () =>
      ["cost_each", "size_price", "margin_shown"].map((name) => {
        const [column = "", row = ""] = /([A-Z]+)(\d+)/.exec(sheet.at(name))?.slice(1) ?? [];
        return book.values(sheet.sheet, `${column}${Number(row) - 1}`)[0]?.[0];
      });
    expect(sheet.value("size_cost", 1)).toBeCloseTo(85.76 / 86.4, 9);
    expect(sheet.value("size_cost", 1)).toBeCloseTo(0.9926, 4);
    expect(heads()).toEqual(["Cost of materials", "Price excl. tax", "Margin after materials"]);
    // Sold: 86.4 × 2.40 = 207.36; less 80 and 5.76.
    expect(sheet.value("contribution")).toBeCloseTo(121.6, 9);
    // 9.6 that were left are sold for 8.64 in all: (85.76 − 8.64) ÷ 86.4, and 8.64 more contribution.
    sheet.type("reduced_sales", "8.64");
    expect(sheet.value("size_cost", 1)).toBeCloseTo(77.12 / 86.4, 9);
    expect(sheet.value("contribution")).toBeCloseTo(130.24, 9);
    // 2.40 with 20 % tax in it leave 2.00: 86.4 × 2 + 8.64 − 85.76, and 1 − 77.12 ÷ 86.4 ÷ 2.
    sheet.type("tax", "20%");
    expect(sheet.value("contribution")).toBeCloseTo(95.68, 9);
    expect(sheet.value("size_margin", 1)).toBeCloseTo(1 - 77.12 / 172.8, 9);
    // Half an hour of labour at 20 with an overhead of 4 an hour, and nothing but that makes it a total cost.
    sheet.type("labour_mix", "30");
    sheet.type("labour_rate", "20");
    sheet.type("overhead_labour", "4");
    expect(sheet.value("size_cost", 1)).toBeCloseTo(89.12 / 86.4, 9);
    expect(heads()).toEqual(["Total cost", "Price incl. tax", "Margin after total cost"]);
    // A loaf without tax: 0 % is chosen, and nothing comes off.
    sheet.type("tax", "0%");
    expect(sheet.value("size_margin", 1)).toBeCloseTo(1 - 89.12 / 86.4 / 2.4, 9);
  },
  SLOW,
);

describe("without a larder", () => {
  test.each(someOf(TEMPLATES, 4))(
    "$title has no label, and nothing of it",
    async (model) => {
      const { book, sheet } = await buildSheet(
        {},
        { model, options: { ...METRIC, parts: model.parts.filter((part) => part !== "cost" && part !== "label") } },
      );
      const texts = book.shownTexts(sheet, book.usedRange(sheet)).flat();
      expect(texts).not.toContain("Label");
    },
    SLOW,
  );
});

describe("calls", () => {
  test.each(someOf(TEMPLATES, 2, 1))(
    "$title: at most 12 with cost and label, and the same when rows are added",
    async (model) => {
      const book = await workbook();
      await larderOf(book);
      // Everything typed, so that no formula can be written together with a blank beside it.
      const typed = {
        labour_mix: 90,
        labour_pieces: 40,
        labour_rate: 18,
        overhead_labour: 10,
        overhead_oven: 4,
        broken: 0.02,
        reduced_sales: 3,
        other_costs: 2,
        packaging: 0.05,
        unsold: 0.04,
      };
      const priced = {
        margin_wanted: 0.3,
        tax: 0.2,
        law: "EU",
        declare: (model.sample.ingredient as string[])[0] ?? "",
      };
      const sheet = await costed(book, { ...model.sample, ...typed, ...priced, allergens_last: "milk" }, model);
      expect(book.trail.length, "service calls of the build").toBeLessThanOrEqual(95);
      const calls = callsOn(sheet);
      expect(calls).toBeLessThanOrEqual(12);
      expect(calls).toBeGreaterThan(4);
      book.insertRows(sheet.sheet, Number(sheet.at("ingredient", 3).replace(/\D/g, "")), 20);
      expect(callsOn(sheet)).toBe(calls);
      for (const text of book.shownTexts(sheet.sheet, "A1:K90").flat()) {
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
