import { describe, expect, test } from "vitest";
import type { SheetModel } from "../../shared/sheet/model.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { METRIC } from "../functions/support.ts";
import { someOf } from "../kit/scale.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { buildSheet, workbook } from "./sheet-support.ts";

const templateNamed = (name: string) => TEMPLATES.find((one) => one.name === name) as SheetModel;

/** Flour, 60 % of water and eighteen sugars of 1 % each: 178 % of the flour. */
const LONG = {
  ingredient: ["Flour", "Water", ...Array<string>(18).fill("Sugar")],
  kind: ["flour", "water", ...Array<string>(18).fill("sugar")],
  percent: [1, 0.6, ...Array<number>(18).fill(0.01)],
};

describe("a recipe of twenty ingredients", () => {
  test.each(someOf(TEMPLATES, 2))("$title: every row is counted", async (model) => {
    const parts = model.parts.filter((part) => part !== "cost" && part !== "label" && part !== "preferment");
    const { value } = await buildSheet({ ...model.sample, ...LONG }, { model, options: { ...METRIC_UNITS, parts } });
    expect(value("share", 20)).toBeCloseTo(0.01, 9);
    expect(Number(value("grams", 20)) / Number(value("grams", 1))).toBeCloseTo(0.01, 9);
    expect(Number(value("dough")) / Number(value("grams", 1))).toBeCloseTo(1.78, 9);
    expect(value("check")).toBe("");
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
