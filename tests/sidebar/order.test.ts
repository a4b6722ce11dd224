import { describe, expect, test } from "vitest";
import { readOrder } from "../../shared/protocol/order.ts";
import { plan } from "../../shared/sheet/plan.ts";
import { assess } from "../../sidebar/new-formula/order.ts";
import { waterSays } from "../../sidebar/new-formula/water.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { empty, GRAMS, model, sampleDraft } from "./drafts.ts";

describe("the order", () => {
  test("what is typed for the sample is the sample", () => {
    const { order, faults } = assess(sampleDraft(), model);
    expect(faults).toEqual([]);
    expect(order).toMatchObject({
      template: "pan-loaf",
      options: { ...GRAMS, parts: ["tin", "water", "steps", "cost", "label"] },
    });
    for (const [name, value] of Object.entries(order.values)) {
      const sample = model.sample[name] ?? null;
      expect(value, name).toEqual(sample);
    }
  });

  test("its preview is what the sheet must compute", () => {
    const assessed = assess(sampleDraft(), model);
    const { batch: made, mixes, tin } = assessed;
    const { expects } = model;
    expect(made?.dough).toBeCloseTo(Number(expects.dough), 5);
    // 24 187.745612 g over 1.72.
    expect(made?.flour).toBeCloseTo(14062.642798, 5);
    expect(mixes).toMatchObject({ mixes: expects.mixes });
    expect(tin?.capacity).toBeCloseTo(Number(expects.tin_capacity), 9);
    expect(tin?.dough).toBeCloseTo(Number(expects.tin_dough), 5);
    // 3 × 26 − 21 − 23 − 8
    expect(waterSays(sampleDraft(), assessed)).toBe("Warm the water to 26 °C.");
  });

  test("the add-on takes it, and it reaches the cells", () => {
    const { order } = assess(sampleDraft(), model);
    const read = readOrder(JSON.parse(JSON.stringify({ ...order, ask: "build" })), TEMPLATES);
    const cells = plan(model, read.options, read.values).values.flat();
    for (const value of ["Quay pan loaf", "Tern Quay Bakehouse", 24, 700, 0.11, 0.63, 20000, 21, "spiral"])
      expect(cells).toContain(value);
  });

  test("parts that are off are not built, and their inputs are not sent", () => {
    const draft = empty();
    draft.water = false;
    const { order } = assess(draft, model);
    // The server leaves cost and label out where there is no larder.
    expect(order.options.parts).toEqual(["steps", "cost", "label"]);
    expect(Object.keys(order.values).filter((name) => /tin|temp|yeast|mixing|friction/.test(name))).toEqual([]);
  });

  test.each([
    ["tins", "tins", "12", { by: "tins", tins: 12 }],
    ["dough", "dough_wanted", "24 kg", { by: "dough", dough_wanted: 24000 }],
    ["flour", "flour_wanted", "12,5 kg", { by: "flour", flour_wanted: 12500 }],
  ] as const)("making by %s sends that and no sizes", (by, field, text, sent) => {
    const draft = sampleDraft();
    draft.choices.by = by;
    draft.fields[field] = text;
    const { order, faults } = assess(draft, model);
    expect(faults).toEqual([]);
    expect(order.values).toMatchObject(sent);
    expect(order.values).not.toHaveProperty("size_pieces");
  });

  test("tins are filled with what handling leaves", () => {
    const draft = sampleDraft();
    draft.choices.by = "tins";
    draft.fields.tins = "12";
    draft.fields.tin_fill = "0,5";
    // 12 tins × 1803 cm³ × 0.5 g/cm³ ÷ 0.98
    expect(assess(draft, model).batch?.dough).toBeCloseTo((12 * 1803 * 0.5) / 0.98, 6);
  });

  test.each([[["100", "67", "2", "1"]], [["100%", "67%", "2 %", "1 percent"]], [["1", "0.67", "0,02", "0.01"]]])(
    "percentages typed %j go as shares",
    (percents) => {
      const draft = empty();
      const kinds = ["flour", "Water", "salt", "yeast"];
      draft.rows.splice(
        0,
        draft.rows.length,
        ...percents.map((percent, row) => ({ ingredient: `i${row}`, kind: kinds[row] ?? "", percent, weighed: "" })),
      );
      const { order, faults } = assess(draft, model);
      expect(faults).toEqual([]);
      expect(order.values.percent).toEqual([1, 0.67, 0.02, 0.01]);
      expect(order.values.kind).toEqual(["flour", "water", "salt", "yeast"]);
    },
  );

  test("flour inside a levain counts where the flours say so", () => {
    const draft = empty();
    const rows = [
      ["Flour", "flour", "90"],
      ["Levain", "levain 100%", "20"],
      ["Water", "water", "57"],
      ["Salt", "salt", "2"],
    ];
    draft.rows.splice(
      0,
      draft.rows.length,
      ...rows.map(([ingredient = "", kind = "", percent = ""]) => ({ ingredient, kind, percent, weighed: "" })),
    );
    draft.choices.by = "flour";
    draft.fields.flour_wanted = "1000";
    // 900 g and the 100 g in 200 g of levain; 900 + 200 + 570 + 20 of dough
    expect(assess(draft, model).batch).toMatchObject({ dough: 1690, flour: 1000 });
  });
});
