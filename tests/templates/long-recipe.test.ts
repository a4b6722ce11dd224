import { describe, expect, test } from "vitest";
import { METRIC } from "../functions/support.ts";
import { OLDER } from "../kit/older.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { expectSame, pairOf, templateNamed } from "./plain-support.ts";
import { buildSheet, workbook } from "./sheet-support.ts";

/** Flour, 60 % of water and eighteen sugars of 1 % each: 178 % of the flour. */
const LONG = {
  ingredient: ["Flour", "Water", ...Array<string>(18).fill("Sugar")],
  kind: ["flour", "water", ...Array<string>(18).fill("sugar")],
  percent: [1, 0.6, ...Array<number>(18).fill(0.01)],
};

describe("a recipe of twenty ingredients", () => {
  test.each(OLDER.map(({ name }) => name))("%s: every row is counted, in both forms", async (name) => {
    const model = templateNamed(name);
    const pair = await pairOf(model, { ...model.sample, ...LONG });
    for (const { value } of [pair.added, pair.plain]) {
      expect(value("share", 20)).toBeCloseTo(0.01, 9);
      expect(Number(value("grams", 20)) / Number(value("flour"))).toBeCloseTo(0.01, 9);
    }
    expect(expectSame(pair)).toBeGreaterThan(60);
  });

  test("has room for two more, and each is counted", async () => {
    const model = templateNamed("pan-loaf");
    const { type, value } = await buildSheet({ ...LONG, title: "Long", by: "flour", flour_wanted: 1000 }, { model });
    expect(value("dough")).toBeCloseTo(1780, 6);
    for (const row of [21, 22]) {
      type("ingredient", `More ${row}`, row);
      type("kind", "other", row);
      type("percent", "1%", row);
    }
    expect(value("dough")).toBeCloseTo(1800, 6);
  });

  test("costs what its rows cost, the last one too", async () => {
    const book = await workbook();
    book.answer({
      ask: "build",
      template: "larder",
      options: { ...METRIC_UNITS, parts: [] },
      values: { title: "Ingredients", ingredient: ["Sugar"], kind: ["sugar"], price: [20], pack: ["1 kg"] },
    });
    const model = templateNamed("pan-loaf");
    const { value } = await buildSheet(
      { ...LONG, title: "Long", by: "flour", flour_wanted: 1000 },
      { model, book, options: { ...METRIC, parts: ["cost"] } },
    );
    // 10 g at 20.00 a kilogram.
    expect(value("row_cost", 20)).toBeCloseTo(0.2, 9);
  });
});
