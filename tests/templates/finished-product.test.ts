// A finished product: parts with formulas of their own, what is wasted of each, and what it costs and leaves.
import exceljs from "exceljs";
import { beforeAll, describe, expect, test } from "vitest";
import { boughtFor, readMakings } from "../../shared/money/breakdown.ts";
import { columnNumber } from "../../shared/sheet/a1.ts";
import { lint } from "../../src/build/lint.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { toXlsx } from "../../src/workbook/xlsx/xlsx.ts";
import { finishedProduct } from "../../templates/finished-product.ts";
import { METRIC } from "../functions/support.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { costed, larderOf, modelNamed, pricesOf, SLOW } from "../money/costing-support.ts";
import { asOfficeReads, asValue, hasOffice } from "../workbook/support.ts";
import { type Built, buildSheet, workbook } from "./sheet-support.ts";

const cookie = modelNamed("cookie");

test("its formulas mean the same everywhere, in both units", () => {
  expect(lint(finishedProduct, { ...METRIC_UNITS, parts: ["label"] })).toEqual([]);
  expect(lint(finishedProduct, { ...METRIC_UNITS, weight: "oz", parts: [] })).toEqual([]);
});

test("without a sheet of ingredients it says what to build first", async () => {
  const book = await workbook();
  const reply = book.ask({ ask: "build", template: "finished-product", options: METRIC, values: {} });
  expect(reply).toMatchObject({ ok: false, message: expect.stringMatching(/^Build the ingredient sheet first/) });
});

describe("240 almond buns: dough with levain, almond filling of a paste, glaze and a bag", () => {
  let book: WorkbookHost;
  let [larder, bun]: Built[] = [];
  const formula = (title: string, rows: readonly [string, string, number][], more = {}) =>
    costed(
      book,
      {
        title,
        by: "dough",
        amount: 1000,
        ingredient: rows.map(([name]) => name),
        kind: rows.map(([, kind]) => kind),
        percent: rows.map(([, , grams]) => grams / 1000),
        ...more,
      },
      cookie,
    );
  beforeAll(async () => {
    book = await workbook();
    larder = await larderOf(book, {
      ingredient: ["Flour", "Water", "Almonds", "Sugar", "Cream", "Icing sugar", "Bag"],
      price: [0.8, null, 12, 1.5, 6, 2, 6],
      pack: ["1 kg", null, "1 kg", "1 kg", "1 kg", "1 kg", "100 pieces"],
      allergens: ["wheat", "none", "almonds", "none", "milk", "none", null],
      label_name: ["wheat flour", "water", "almonds", "sugar", "cream", "icing sugar", null],
    });
    await formula("Levain", [
      ["Flour", "flour", 500],
      ["Water", "water", 500],
    ]);
    await formula(
      "Bun dough",
      [
        ["Flour", "flour", 600],
        ["Water", "water", 200],
        ["Levain", "levain 100%", 200],
      ],
      {
        labour_mix: 6,
      },
    );
    await formula("Almond paste", [
      ["Almonds", "other", 500],
      ["Sugar", "sugar", 500],
    ]);
    await formula(
      "Almond filling",
      [
        ["Almond paste", "other", 800],
        ["Cream", "dairy", 200],
      ],
      {
        boil_off: 0.1,
        left_over: 0.05,
        labour_mix: 18,
      },
    );
    await formula("Glaze", [
      ["Icing sugar", "sugar", 800],
      ["Water", "water", 200],
    ]);
    bun = await buildSheet(
      {
        title: "Almond bun",
        law: "EU",
        pieces_made: 240,
        size_weight: 92,
        size_price: 2.4,
        margin_wanted: 0.6,
        ingredient: ["Bun dough", "Almond filling", "Glaze", "Bag"],
        kind: ["dough", "filling", "topping", "packaging"],
        part_each: [70, 30, 8, 1],
        part_unit: ["g", "g", "g", "each"],
        part_waste: [0.02, null, 0.2, null],
      },
      { book, model: finishedProduct, options: { ...METRIC, parts: [] } },
    );
    book.answer({ ask: "link" });
  }, SLOW);

  // By hand, a kilogram: levain 0.5 × 0.80 = 0.40. Dough 0.6 × 0.80 + 0.2 × 0.40 = 0.56. Paste 0.5 × 12 + 0.5 × 1.50 = 6.75. Filling
  // (0.8 × 6.75 + 0.2 × 6) ÷ (0.9 × 0.95) = 6.60 ÷ 0.855 = 7.719298. Glaze 0.8 × 2 = 1.60. A bag 6 ÷ 100 = 0.06.
  // A bun: 70 ÷ 0.98 = 71.428571 g × 0.56 = 0.04; 30 g × 7.719298 = 0.231579; 8 ÷ 0.8 = 10 g × 1.60 = 0.016; a bag 0.06: 0.347579.
  const INGREDIENTS = 0.04 + (0.03 * 6.6) / 0.855 + 0.016;

  test("costs to the cent what the sums say", () => {
    expect(bun?.value("check")).toBe("");
    expect(bun?.value("cost_each_part", 1)).toBeCloseTo(0.04, 9);
    expect(bun?.value("cost_each_part", 2)).toBeCloseTo(0.231579, 6);
    expect(bun?.value("cost_each_part", 3)).toBeCloseTo(0.016, 9);
    expect(bun?.value("cost_each_part", 4)).toBeCloseTo(0.06, 9);
    expect(bun?.value("cost_ingredients")).toBeCloseTo(240 * INGREDIENTS, 9);
    expect(bun?.value("size_cost")).toBeCloseTo(INGREDIENTS + 0.06, 9);
    expect(bun?.value("cost_each")).toBeCloseTo(0.347579, 6);
    expect(bun?.value("cost_each_head")).toBe("Cost of materials, each");
    expect(bun?.value("margin_shown")).toBeCloseTo(1 - (INGREDIENTS + 0.06) / 2.4, 9);
    expect(bun?.value("wanted_shown")).toBeCloseTo((INGREDIENTS + 0.06) / 0.4, 9);
    // What is made of each part, with its waste: 240 × 71.428571, 240 × 30, 240 × 10 g, and 240 bags.
    expect([1, 2, 3].map((row) => bun?.value("grams", row))).toEqual([
      expect.closeTo(17142.857143, 6),
      expect.closeTo(7200, 6),
      expect.closeTo(2400, 6),
    ]);
    expect(bun?.value("part_count", 4)).toBe(240);
    expect(bun?.value("total_label")).toBe("Total, 108 g a piece");
  });

  test("the minutes of its parts join its own labour", () => {
    // Dough 6 minutes a kilogram, filling 18 ÷ 0.855: 17.142857 × 6 + 7.2 × 21.052632 = 254.436090 minutes; at 15 an hour 63.609023.
    bun?.type("labour_rate", "15");
    expect(bun?.value("cost_all")).toBeCloseTo(240 * (INGREDIENTS + 0.06) + 63.609023, 6);
    expect(bun?.value("cost_each_head")).toBe("Total cost, each");
    bun?.type("labour_rate", "");
  });

  test("the label: order, allergens through three formulas, the quantity of almonds through the paste", () => {
    bun?.type("law", "EU");
    bun?.type("declare", "Almonds");
    // As they go in: 70 g dough, 30 g filling, 8 g glaze. In the dough flour 60 %, water and levain 20 % each; the paste half and half.
    expect(bun?.value("list")).toBe(
      "Bun dough (WHEAT flour, water, Levain (WHEAT flour, water)), Almond filling (Almond paste (ALMONDS, sugar), cream (MILK)), Glaze (icing sugar, water)",
    );
    expect(bun?.value("allergens")).toBe("cereals containing gluten (wheat), milk, nuts (almonds)");
    // 30 g of filling hold 30 × 0.8 × 0.5 ÷ 0.9 = 13.333 g of almonds, of the 92 g that a bun weighs.
    expect(bun?.value("declared")).toBeCloseTo((30 * 0.4) / 0.9 / 92, 9);
  });

  test("needs for 240: what is bought of each, over all losses", () => {
    const whole = String(bun?.value("as_parts"));
    const bought = boughtFor(readMakings([whole]))("Almond bun");
    const all = Number(bun?.value("dough"));
    const needs = Object.fromEntries([...bought.values()].map(({ name, grams }) => [name, grams * all]));
    // Dough 17 142.857 g: flour 0.6 and half of the levain's 0.2; filling 7 200 g over 0.855; glaze 2 400 g.
    expect(needs.Flour).toBeCloseTo(17142.857143 * 0.7, 1);
    expect(needs.Almonds).toBeCloseTo((7200 * 0.4) / 0.855, 1);
    expect(needs.Sugar).toBeCloseTo((7200 * 0.4) / 0.855, 1);
    expect(needs.Cream).toBeCloseTo((7200 * 0.2) / 0.855, 1);
    expect(needs["Icing sugar"]).toBeCloseTo(1920, 1);
  });

  test("broken and unsold: 4 % break before the bag, 10 % of the bagged stay", () => {
    bun?.type("broken", "4%");
    bun?.type("unsold", "10%");
    const sold = 240 * 0.96 * 0.9;
    expect(bun?.value("size_cost")).toBeCloseTo((240 * INGREDIENTS + 0.06 * 240 * 0.96) / sold, 9);
    expect(bun?.value("contribution")).toBeCloseTo(sold * 2.4 - 240 * INGREDIENTS - 0.06 * 240 * 0.96, 9);
    bun?.type("broken", "");
    bun?.type("unsold", "");
  });

  test("one price typed over reaches it through three sheets", () => {
    larder?.type("price", "24", 3);
    // Paste 12.75, filling (10.2 + 1.2) ÷ 0.855 = 13.333333.
    expect(bun?.value("size_cost")).toBeCloseTo(0.04 + 0.4 + 0.016 + 0.06, 9);
    larder?.type("price", "12", 3);
  });

  test("slips are named by part and cell, and nothing is costed beside them", () => {
    book.paste(bun?.sheet ?? "", bun?.at("part_each", 2) ?? "", "thirty");
    expect(bun?.value("check")).toMatch(/^Almond filling row \d+: enter a number from 0\.$/);
    expect(bun?.value("size_cost")).toBe("");
    bun?.type("part_each", "30", 2);
    book.paste(bun?.sheet ?? "", bun?.at("part_unit", 1) ?? "", "kilo");
    expect(bun?.value("check")).toMatch(/^Bun dough row \d+: choose g or each\.$/);
    bun?.type("part_unit", "g", 1);
    bun?.type("part_cost", "9", 1);
    expect(bun?.value("check")).toMatch(/clear what is typed over a formula in row \d+/);
    bun?.type("part_cost", "", 1);
    bun?.type("ingredient", "Moon glaze", 3);
    expect(bun?.value("unpriced")).toBe("Without a price: 1");
    bun?.type("ingredient", "Glaze", 3);
    expect(bun?.value("check")).toBe("");
    // What stands outside the table is in no sum.
    const outside = /(?:^|\. )A part stands above or below its table: move or clear it\.$/;
    for (const column of ["A", "C", "I"]) {
      const at = `${column}${Number(/\d+/.exec(bun?.at("total_label") ?? "")?.[0]) + 1}`;
      book.type(bun?.sheet ?? "", at, "7");
      expect(bun?.value("check"), at).toMatch(outside);
      book.type(bun?.sheet ?? "", at, "");
      expect(bun?.value("check"), at).toBe("");
    }
    book.paste(bun?.sheet ?? "", bun?.at("part_each", 0) ?? "", "30");
    expect(bun?.value("check")).toMatch(outside);
    book.paste(bun?.sheet ?? "", bun?.at("part_each", 0) ?? "", "");
    expect(bun?.value("check")).toBe("");
  });

  test("nothing on its page is an error, and only its label calls", () => {
    const texts = book.shownTexts(bun?.sheet ?? "", "A1:K40").flat();
    expect(texts.filter((text) => /^#/.test(text))).toEqual([]);
    const formulas = book.formulas(bun?.sheet ?? "", book.usedRange(bun?.sheet ?? "")).flat();
    // List, allergens, what changed of them, quantity and nutrition.
    expect(formulas.filter((one) => one?.includes("BAKE_"))).toHaveLength(5);
  });

  test("in ounces it costs the same, and its label says the same", async () => {
    const ounces = (grams: number) => grams / 28.349523125;
    const { sheet, value, type } = await buildSheet(
      {
        title: "Almond bun in ounces",
        law: "EU",
        pieces_made: 240,
        size_weight: ounces(92),
        size_price: 2.4,
        margin_wanted: 0.6,
        ingredient: ["Bun dough", "Almond filling", "Glaze", "Bag"],
        kind: ["dough", "filling", "topping", "packaging"],
        part_each: [ounces(70), ounces(30), ounces(8), 1],
        part_unit: ["oz", "oz", "oz", "each"],
        part_waste: [0.02, null, 0.2, null],
      },
      { book, model: finishedProduct, options: { ...METRIC, weight: "oz", parts: [] } },
    );
    book.answer({ ask: "link" });
    expect(value("check")).toBe("");
    expect(value("cost_each")).toBeCloseTo(INGREDIENTS + 0.06, 9);
    for (const name of ["cost_each", "margin_shown", "wanted_shown", "cost_all_shown", "contribution_shown"])
      expect(value(name), name).toBeCloseTo(bun?.value(name) as number, 9);
    // The dough for all of it: 240 × 71.428571 g.
    expect(value("exact", 1)).toBeCloseTo(ounces(240 * 70) / 0.98, 6);
    type("declare", "Almonds");
    bun?.type("declare", "Almonds");
    for (const name of ["list", "allergens", "cost_each_head"]) expect(value(name), name).toBe(bun?.value(name));
    expect(value("declared")).toBeCloseTo(bun?.value("declared") as number, 9);
    bun?.type("declare", "");
    const figures = (of: string) =>
      book.shownTexts(of, book.usedRange(of)).filter(([first]) => /\((?:g|kJ|kcal)\)$/.test(first ?? ""));
    const energy = figures(sheet).filter(([first]) => /^(?:Energy|Fat|Protein|Salt)/.test(first ?? ""));
    expect(energy.length).toBe(5);
    expect(figures(bun?.sheet ?? "")).toEqual(expect.arrayContaining(energy));
    book.deleteSheet(sheet);
  });

  test.skipIf(!hasOffice)(
    "LibreOffice calculates all of it alike, through three sheets, after a price was typed over there",
    async () => {
      const prices = await pricesOf(book);
      prices.type("tried", "Almonds");
      prices.type("tried_price", "36");
      const file = new exceljs.Workbook();
      await file.xlsx.load((await toXlsx(book.engine)) as unknown as ArrayBuffer);
      const page = file.getWorksheet("Ingredients") as exceljs.Worksheet;
      page.getCell(larder?.at("price", 3) ?? "").value = 24;
      // Parts print without the rows to spare below them.
      const rowOf = (name: string, row: number) => Number(/\d+/.exec(bun?.at(name, row) ?? "")?.[0]);
      const [first, total] = [rowOf("ingredient", 1), rowOf("total_label", 0)];
      const product = file.getWorksheet("Almond bun") as exceljs.Worksheet;
      expect([first, total - 1, total].map((row) => product.getRow(row).hidden)).toEqual([false, true, false]);
      file.calcProperties.fullCalcOnLoad = true;
      const office = asOfficeReads(Buffer.from(await file.xlsx.writeBuffer()));
      larder?.type("price", "24", 3);
      const texts = Object.values(office).flat(2);
      expect(texts.filter((text) => /^(?:Err:|#)/.test(text) && !/^#NAME/.test(text))).toEqual([]);
      const there = (at: string, sheet = "Almond bun") => {
        const [, letters = "", row = ""] = /^([A-Z]+)(\d+)$/.exec(at) ?? [];
        return asValue(office[sheet]?.[Number(row) - 1]?.[columnNumber(letters)] ?? "");
      };
      for (const [name, row] of [
        ["cost_each"],
        ["margin_shown"],
        ["wanted_shown"],
        ["cost_all_shown"],
        ["part_cost", 2],
        ["part_all", 1],
      ] as const) {
        const own = bun?.value(name, row);
        expect(typeof own, name).toBe("number");
        expect(there(bun?.at(name, row) ?? ""), name).toBeCloseTo(own as number, 6);
      }
      expect(bun?.value("cost_each")).toBeCloseTo(0.04 + 0.4 + 0.016 + 0.06, 9);
      // The table of all products too; its one call is none there.
      const at = [1, 2, 3, 4, 5, 6].find((row) => prices.value("product", row) === "Almond bun");
      for (const name of ["full_cost", "price", "margin", "wanted", "sold", "contribution"]) {
        const own = prices.value(name, at);
        expect(typeof own, name).toBe("number");
        expect(there(prices.at(name, at), prices.sheet), name).toBeCloseTo(own as number, 6);
      }
      for (const name of ["tried_now", "tried_times"])
        expect(there(prices.at(name), prices.sheet), name).toBeCloseTo(prices.value(name) as number, 6);
      expect([prices.value("tried_now"), prices.value("tried_times")]).toEqual([24, 1.5]);
      larder?.type("price", "12", 3);
    },
    SLOW,
  );
});
