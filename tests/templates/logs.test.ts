import { describe, expect, test } from "vitest";
import type { SheetReview } from "../../shared/protocol/sheet-review.ts";
import type { SheetModel, Values } from "../../shared/sheet/model.ts";
import { toXlsx } from "../../src/workbook/xlsx/xlsx.ts";
import { bakeOffLog } from "../../templates/bake-off-log.ts";
import { hearthLoaf } from "../../templates/hearth-loaf.ts";
import { mixLog } from "../../templates/mix-log.ts";
import { panLoaf } from "../../templates/pan-loaf.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { asOfficeReads, hasOffice } from "../workbook/support.ts";
import { buildSheet, workbook } from "./sheet-support.ts";

const sheetOf = (model: SheetModel, values: Values) =>
  buildSheet(values, { model, options: { ...METRIC_UNITS, parts: [] } });

describe("the bake-off log", () => {
  test("75 g buns from 84 g, 314 g of dough baked to 267 g: 352.8 g for a 300 g loaf — sourdough.com topic 942", async () => {
    const { value, type, at, book, sheet } = await sheetOf(bakeOffLog, {
      off_product: ["bun", "loaf"],
      off_raw: [84, 314],
      off_baked: [75, 267],
      product: ["bun", "loaf"],
      product_sold_at: [null, 300],
    });
    expect(value("product_bake", 1)).toBeCloseTo(0.1071, 4);
    expect(value("product_bake", 2)).toBeCloseTo(0.1497, 4);
    expect(Math.abs((value("product_scaled", 2) as number) - 352.8)).toBeLessThan(0.2);
    // A second trial of the loaf counts by its weight: 1 − (267 + 540) ÷ (314 + 630)
    type("off_product", "loaf", 3);
    type("off_raw", "630", 3);
    type("off_baked", "540", 3);
    expect(value("product_bake", 2)).toBeCloseTo(1 - 807 / 944, 12);
    book.insertRows(sheet, Number(at("off_raw", 1).replace(/\D/g, "")));
    expect(value("product_bake", 2)).toBeCloseTo(1 - 807 / 944, 12);
  });

  test("17 × 500 g scaled, 150 g short: 8652.7 g to mix — The Fresh Loaf node/23963", async () => {
    const { value } = await sheetOf(bakeOffLog, {
      off_product: ["loaf"],
      off_mixed: [8500],
      off_divided: [8350],
      product: ["loaf"],
      product_sold_at: [500],
      product_wanted: [17],
    });
    expect(value("product_handling", 1)).toBeCloseTo(0.0176, 4);
    expect(value("product_bake", 1)).toBe("");
    expect(Math.abs((value("product_mix", 1) as number) - 8652.7)).toBeLessThan(1);
  });

  test("a product's name in other letters is the same product, one without rows has no loss", async () => {
    const { value } = await sheetOf(bakeOffLog, {
      off_product: ["Loaf"],
      off_raw: [100],
      off_baked: [88],
      product: ["loaf", "bun"],
    });
    expect(value("product_bake", 1)).toBeCloseTo(0.12, 12);
    expect(value("product_bake", 2)).toBe("");
  });

  // By hand: 1 − 88 ÷ 100, 1 − 60 ÷ 80, 1 − 45 ÷ 50, 1 − 9 ÷ 10.
  const PATTERNS = {
    off_product: ["Bun", "Bun*", "<5 seeds", "B?n"],
    off_raw: [100, 80, 50, 10],
    off_baked: [88, 60, 45, 9],
    product: ["Bun", "Bun*", "<5 seeds", "B?n"],
  };
  test("a product whose name reads like a pattern learns from its own rows", async () => {
    const { value } = await sheetOf(bakeOffLog, PATTERNS);
    expect([1, 2, 3, 4].map((row) => value("product_bake", row))).toEqual(
      [0.12, 0.25, 0.1, 0.1].map((loss) => expect.closeTo(loss, 12)),
    );
  });

  test.skipIf(!hasOffice)("LibreOffice learns the same losses", async () => {
    const { product = [], off_product = [], off_raw = [], off_baked = [] } = bakeOffLog.sample;
    const { book, sheet, at, value } = await sheetOf(bakeOffLog, {
      ...bakeOffLog.sample,
      product: [...(product as string[]), ...PATTERNS.product],
      off_product: [...(off_product as string[]), ...PATTERNS.off_product],
      off_raw: [...(off_raw as number[]), ...PATTERNS.off_raw],
      off_baked: [...(off_baked as number[]), ...PATTERNS.off_baked],
    });
    const many = (product as string[]).length;
    const office = asOfficeReads(await toXlsx(book.engine))[sheet] ?? [];
    const same = (name: string, row: number) => {
      const place = at(name, row);
      const theirs = office[Number(place.replace(/\D/g, "")) - 1]?.[place.charCodeAt(0) - 65] ?? "";
      expect(Number.parseFloat(theirs) / (theirs.endsWith("%") ? 100 : 1), name).toBeCloseTo(
        value(name, row) as number,
        6,
      );
    };
    for (const name of ["product_handling", "product_bake", "product_scaled", "product_mix"]) same(name, 1);
    for (let row = many + 1; row <= many + 4; row++) same("product_bake", row);
  });
});

describe("the mix log", () => {
  const loaf = (values: Values, temperature: "C" | "F" = "C") => ({
    ...panLoaf.sample,
    friction_own: null,
    ...values,
    title: `Loaf ${temperature}`,
  });

  test("teaches the factor of formula sheets built after it, in their degrees and for their preferment", async () => {
    const book = await workbook();
    const log = await buildSheet(mixLog.sample, { model: mixLog, options: { ...METRIC_UNITS, parts: [] }, book });
    const water = (temperature: "C" | "F", values: Values) =>
      buildSheet(loaf(values, temperature), { book, options: { ...METRIC_UNITS, temperature, parts: ["water"] } });
    const without = Object.fromEntries(
      Object.keys(panLoaf.sample)
        .filter((name) => name.startsWith("tin_"))
        .map((name) => [name, null]),
    );
    const bakes = {
      off_product: ["Loaf C", "loaf c ", "Another", "Loaf C", "Loaf C"],
      off_mixed: [10_000, null, 10_000, null, 5000],
      off_divided: [9800, 5000, 5000, null, 4900],
      off_raw: [100, 200, 100, 100, null],
      off_baked: [88, 178, 50, 90, 45],
    };
    await buildSheet(bakes, { model: bakeOffLog, options: { ...METRIC_UNITS, parts: [] }, book });
    const celsius = await water("C", without);
    // −1.5 + 1.25 × 8 = 8.5
    expect(celsius.value("friction_own")).toBeCloseTo(8.5, 9);
    // Check says it with its spread, and the losses of this product alone: 1 − 14 700 ÷ 15 000, and 1 − 356 ÷ 400 out of 12, 11 and 10 %.
    const logged = () => {
      const { facts } = book.answer({ ask: "review", style: "" }) as SheetReview;
      return facts.flatMap(({ label, says }) => (label.endsWith(", logged") ? [`${label}: ${says}`] : []));
    };
    expect(logged()).toEqual([
      "Friction, logged: 8.5 °C at 8 min, from 5 mixes that lie 0.5 °C off it typically.",
      "Handling loss, logged: 2 % over 2 bakes, from 2 % to 2 %. That is too few to go by: log 3 bakes.",
      "Bake loss, logged: 11 % over 3 bakes, from 10 % to 12 %.",
    ]);
    const staged = await buildSheet(
      { ...hearthLoaf.sample, friction_own: null, minutes: 8, preferment_temp: 22 },
      { book, model: hearthLoaf, options: { ...METRIC_UNITS, parts: ["water", "preferment"] } },
    );
    expect(staged.value("friction_own")).toBeCloseTo((8.5 * 4) / 3, 2);
    const own = await water("C", { ...without, friction_own: 12 });
    expect(own.value("friction_own")).toBe(12);
    const fahrenheit = await water("F", without);
    // Another product, in degrees that the log is not in.
    expect(logged()).toEqual([]);
    expect(fahrenheit.value("friction_own")).toBeCloseTo(8.5 * 1.8, 9);
    // With two rows left there is no line, and the guide of the mixing stands in: spiral, 8 min × 1 °C
    for (const row of [1, 2, 3]) log.type("log_dough", "", row);
    expect(log.value("fit_note")).toBe("Three complete rows are needed.");
    const guided = await water("C", without);
    expect(guided.value("friction_own")).toBeCloseTo(8, 9);
    expect(logged().filter((says) => says.startsWith("Friction"))).toEqual([]);
    expect(guided.value("check")).toBe("");
    // Minutes that are typed anew leave a factor for others, and it is said so.
    guided.type("minutes", "12");
    expect(guided.value("check")).toBe("Friction factor is for spiral 8 min.");
  });

  test("a second log says so and leaves the first one's name", async () => {
    const book = await workbook();
    const build = () =>
      book.answer({
        ask: "build",
        template: "mix-log",
        options: { ...METRIC_UNITS, parts: [] },
        values: mixLog.sample,
      }) as {
        note?: string;
      };
    expect(build().note).toBeUndefined();
    expect(build().note).toMatch(/has a mix log already/);
    expect(book.session.get<{ name: string }[]>("getNamedRanges").map(({ name }) => name)).toEqual([
      "gramwright_mixlog",
    ]);
  });
});
