import { describe, expect, test } from "vitest";
import { readOrder } from "../shared/bench.ts";
import type { SheetModel } from "../shared/model.ts";
import { plan } from "../shared/plan.ts";
import { changeUnits, type Draft, splitPercents, splitSizes, startFrom, type Typed } from "../sidebar/make/draft.ts";
import { assess } from "../sidebar/make/order.ts";
import { readQuantity } from "../sidebar/make/quantity.ts";
import { told } from "../sidebar/server.ts";
import { TEMPLATES } from "../templates/index.ts";

const model = TEMPLATES.find(({ name }) => name === "pan-loaf") as SheetModel;
const GRAMS = { weight: "g", temperature: "C", length: "cm" } as const;
const OUNCES = { weight: "oz", temperature: "F", length: "in" } as const;

/** The template's sample, typed as a person types it. */
function sampleDraft(): Draft {
  const draft = startFrom(model);
  draft.title = "Quay pan loaf";
  draft.shop = " Tern Quay Bakehouse ";
  draft.sizes.splice(0, 1, { name: "large", pieces: "24", weight: "700", loss: "11" });
  draft.sizes.push({ name: "small", pieces: "12", weight: "350 g", loss: "13 %" });
  Object.assign(draft.fields, {
    handling_loss: "2",
    mixer_limit: "20 kg",
    mixer_least: "4000",
    tin_size_1: "21",
    tin_size_2: "11",
    tin_size_3: "9",
    tin_size_4: "19",
    tin_size_5: "9",
    dough_target: "26",
    flour_temp: "21",
    room_temp: "23",
    tap_temp: "14",
    minutes: "8",
  });
  draft.choices.mixing = "spiral";
  return draft;
}

const says = (draft: Draft) => assess(draft, model).troubles.map(({ at, says }) => `${at}: ${says}`);
const empty = (): Draft => {
  const draft = startFrom(model);
  draft.choices.tin_shape = "";
  draft.sizes[0] = { name: "", pieces: "24", weight: "700", loss: "" };
  return draft;
};

describe("the order", () => {
  test("what is typed for the sample is the sample", () => {
    const { order, troubles } = assess(sampleDraft(), model);
    expect(troubles).toEqual([]);
    expect(order).toMatchObject({ template: "pan-loaf", options: { ...GRAMS, parts: ["tin", "water"] } });
    for (const [name, value] of Object.entries(order.values)) {
      const sample = model.sample[name] ?? null;
      expect(value, name).toEqual(sample);
    }
  });

  test("its preview is what the sheet must compute", () => {
    const { made, mixes, tin, water } = assess(sampleDraft(), model);
    const { expects } = model;
    expect(made?.dough).toBeCloseTo(Number(expects.dough), 5);
    expect(made?.flour).toBeCloseTo(Number(expects.flour), 5);
    expect(mixes).toMatchObject({ mixes: expects.mixes });
    expect(tin?.capacity).toBeCloseTo(Number(expects.tin_capacity), 9);
    expect(tin?.dough).toBeCloseTo(Number(expects.tin_dough), 5);
    // 3 × 26 − 21 − 23 − 8
    expect(water).toBe("Warm the water to 26 °C.");
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
    expect(order.options.parts).toEqual([]);
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
    const { order, troubles } = assess(draft, model);
    expect(troubles).toEqual([]);
    expect(order.values).toMatchObject(sent);
    expect(order.values).not.toHaveProperty("size_pieces");
  });

  test("tins are filled with what handling leaves", () => {
    const draft = sampleDraft();
    draft.choices.by = "tins";
    draft.fields.tins = "12";
    draft.fields.tin_fill = "0,5";
    // 12 tins × 1803 cm³ × 0.5 g/cm³ ÷ 0.98
    expect(assess(draft, model).made?.dough).toBeCloseTo((12 * 1803 * 0.5) / 0.98, 6);
  });

  test.each([[["100", "67", "2", "1"]], [["100%", "67%", "2 %", "1 percent"]], [["1", "0.67", "0,02", "0.01"]]])(
    "percentages typed %j go as shares",
    (percents) => {
      const draft = empty();
      const kinds = ["flour", "Water", "salt", "yeast"];
      draft.rows.splice(
        0,
        draft.rows.length,
        ...percents.map((percent, row) => ({ ingredient: `i${row}`, kind: kinds[row] ?? "", percent })),
      );
      const { order, troubles } = assess(draft, model);
      expect(troubles).toEqual([]);
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
      ...rows.map(([ingredient = "", kind = "", percent = ""]) => ({ ingredient, kind, percent })),
    );
    draft.choices.by = "flour";
    draft.fields.flour_wanted = "1000";
    // 900 g and the 100 g in 200 g of levain; 900 + 200 + 570 + 20 of dough
    expect(assess(draft, model).made).toEqual({ dough: 1690, flour: 1000 });
  });
});

describe("what is in the way is said", () => {
  test("of an empty panel", () => {
    const { troubles } = assess(startFrom(model), model);
    expect(troubles.map(({ at }) => at)).toEqual([
      "size_pieces/0",
      "size_weight/0",
      "tin_size_1",
      "tin_size_2",
      "tin_size_3",
    ]);
    expect(troubles.every(({ missing }) => missing)).toBe(true);
  });

  test.each<[string, (draft: Draft) => void, string]>([
    ["no name", (d) => (d.title = " "), "title: Give the formula a name; the new sheet is called after it."],
    [
      "letters",
      (d) => (d.sizes[0] = { name: "", pieces: "24", weight: "abc", loss: "" }),
      'size_weight/0: The weight of size 1 is "abc", which is not a number; write a weight such as 700.',
    ],
    [
      "unclear thousands",
      (d) => (d.fields.mixer_limit = "1.250"),
      'mixer_limit: Mixer takes at most is "1.250", which could be 1250 or 1.250; write it without the separator; write a weight such as 700.',
    ],
    [
      "a share below 1",
      (d) => (d.fields.handling_loss = "0.02"),
      "handling_loss: Lost in bowl and on bench is 0.02, which could be 0.02 % or 2 %; write it with its % sign.",
    ],
    [
      "too much lost",
      (d) => (d.fields.handling_loss = "40"),
      "handling_loss: Lost in bowl and on bench is more than 30 %; is the bake loss meant?",
    ],
    [
      "flours that are no 100",
      (d) => (d.rows[0] = { ingredient: "Flour", kind: "flour", percent: "90" }),
      "percent/0: The percentages have flour rows that add up to 90; all flours together make 100 (or 100%).",
    ],
    [
      "a preferment without hydration",
      (d) => (d.rows[5] = { ingredient: "Levain", kind: "levain", percent: "20" }),
      'kind/5: The kind of row 6 is "levain" without its hydration; write the water over the flour with it, such as "levain 100%".',
    ],
    [
      "a kind nobody knows",
      (d) => (d.rows[5] = { ingredient: "Sugar", kind: "suger", percent: "2" }),
      'kind/5: The kind of row 6 is "suger"; perhaps "sugar"?',
    ],
    [
      "salt that is a share in a plain column",
      (d) => (d.rows[2] = { ingredient: "Salt", kind: "salt", percent: "0.02" }),
      "percent/2: The percentage of row 3 is 0.02, which beside flour of 100 is 0.02 %; write 2, or every row as a share with the flour as 100% (1).",
    ],
    [
      "tins without a tin",
      (d) => {
        d.choices.by = "tins";
        d.fields.tins = "4";
      },
      "tin_shape: Making by tins needs a tin: choose its shape.",
    ],
    [
      "a mixer upside down",
      (d) => {
        d.fields.mixer_limit = "4 kg";
        d.fields.mixer_least = "20 kg";
      },
      "mixer_least: The mixer's least is above its most; swap the two.",
    ],
    [
      "a spiral mixer without minutes",
      (d) => (d.choices.mixing = "spiral"),
      "minutes: Write the minutes of mixing: friction in a spiral mixer grows with them. Or choose the mixing later.",
    ],
    [
      "sizes in the wrong order",
      (d) => {
        d.choices.tin_shape = "round";
        d.fields.tin_size_1 = "3";
        d.fields.tin_size_2 = "8";
        d.units = OUNCES;
      },
      "tin_size_1: The sizes have a depth of 8 above the diameter of 3; the order is diameter, depth, base diameter.",
    ],
    [
      "one base size of two",
      (d) => {
        d.choices.tin_shape = "box";
        Object.assign(d.fields, { tin_size_1: "21", tin_size_2: "11", tin_size_3: "9", tin_size_4: "19" });
      },
      "tin_size_5: Write the base width too, or clear the base length.",
    ],
  ])("%s", (_, change, sentence) => {
    const draft = empty();
    change(draft);
    const found = says(draft);
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(sentence);
  });

  test("a blank row between ingredients is passed over, and rows keep their number", () => {
    const draft = empty();
    draft.rows.splice(1, 0, { ingredient: "", kind: "", percent: "" });
    draft.rows[2] = { ingredient: "Water", kind: "", percent: "67" };
    expect(says(draft)).toEqual(["kind/2: Say what kind row 3 is: flour, water, salt, yeast …"]);
  });

  test("mixes below the mixer's least are told and do not stop the build", () => {
    const draft = empty();
    draft.fields.mixer_limit = "10 kg";
    draft.fields.mixer_least = "9 kg";
    const { mixes, troubles } = assess(draft, model);
    expect(troubles).toEqual([]);
    // 16 800 g in two mixes of 8 400 g
    expect(mixes).toEqual({
      note: "The dough is 16800: 2 equal mixes of 8400 would be below the least of 9000; 10000 or 18000 would fit.",
    });
  });
});

describe("numbers as people type them", () => {
  test.each([
    ["12,5", "weight", GRAMS, 12.5],
    ["2 1/2", "weight", OUNCES, 2.5],
    ["½", "length", OUNCES, 0.5],
    ["2¾ in", "length", OUNCES, 2.75],
    ["9 in", "length", GRAMS, 22.86],
    ['9"', "length", GRAMS, 22.86],
    ["1.250 kg", "weight", GRAMS, 1250],
    ["1 lb", "weight", OUNCES, 16],
    ["1 lb", "weight", GRAMS, 453.59237],
    ["2 pounds", "weight", OUNCES, 32],
    ["75 °F", "temperature", GRAMS, 23.8888888889],
    ["-5 °C", "temperature", OUNCES, 23],
    ["24°", "temperature", GRAMS, 24],
    ["18 F", "factor", GRAMS, 10],
    ["8 min", "minutes", GRAMS, 8],
    ["11", "share", GRAMS, 0.11],
    ["0,5 %", "share", GRAMS, 0.005],
    ["1 250", "count", GRAMS, 1250],
    ["", "weight", GRAMS, null],
  ] as const)("%s as %s", (text, quantity, units, expected) => {
    const read = readQuantity(text, quantity, units);
    if (expected === null) expect(read).toBeNull();
    else expect(read).toBeCloseTo(expected, 9);
  });

  test.each([
    ["9x5x2.75", ["9", "5", "2.75"]],
    ["9 × 5 × 2 3/4 in", ["9 in", "5 in", "2 3/4 in"]],
    ["21 by 11 by 9 cm", ["21 cm", "11 cm", "9 cm"]],
    ['9" x 5"', ['9"', '5"']],
    ["21", null],
    ["box", null],
  ])("sizes %s", (text, parts) => expect(splitSizes(text)).toEqual(parts));

  test.each([
    ["100/67/2/1", ["100", "67", "2", "1"]],
    ["100 / 67,5 / 2 %", ["100", "67,5", "2 %"]],
    ["2/3", null],
    ["67", null],
  ])("percentages %s", (text, parts) => expect(splitPercents(text)).toEqual(parts));
});

describe("a change of units", () => {
  test("converts what was typed, and back to the letter", () => {
    const draft = sampleDraft();
    const memory: Typed = new Map();
    const before = JSON.stringify(draft);
    changeUnits(draft, OUNCES, memory);
    // 700 ÷ 28.349523125; 21 ÷ 2.54; 26 × 9/5 + 32
    expect([draft.sizes[0]?.weight, draft.fields.tin_size_1, draft.fields.dough_target]).toEqual([
      "24.69",
      "8.27",
      "78.8",
    ]);
    expect([draft.fields.step_coarse, draft.fields.minutes, draft.fields.handling_loss]).toEqual(["0.1", "8", "2"]);
    changeUnits(draft, GRAMS, memory);
    expect(JSON.stringify(draft)).toBe(before);
  });

  test("one unit at a time, and typing in between", () => {
    const draft = sampleDraft();
    const memory: Typed = new Map();
    changeUnits(draft, { ...GRAMS, length: "in" }, memory);
    draft.fields.tin_size_1 = "9";
    changeUnits(draft, { ...OUNCES, temperature: "C" }, memory);
    expect([draft.fields.tin_size_1, draft.fields.dough_target]).toEqual(["9", "26"]);
    changeUnits(draft, GRAMS, memory);
    expect([draft.fields.tin_size_1, draft.fields.tin_size_2, draft.sizes[0]?.weight]).toEqual(["22.86", "11", "700"]);
  });

  test("grams of water and what cannot be read stay as they are", () => {
    const draft = sampleDraft();
    draft.choices.tin_shape = "water";
    draft.fields.tin_size_1 = "1520";
    draft.fields.mixer_limit = "a lot";
    changeUnits(draft, OUNCES, new Map());
    expect([draft.fields.tin_size_1, draft.fields.mixer_limit]).toEqual(["1520", "a lot"]);
  });
});

test.each([
  ["You do not have permission to call SpreadsheetApp.getActiveSpreadsheet", /signed in to one account only/],
  ["Authorization is required to perform that action", /signed in to one account only/],
  ["Exceeded maximum execution time", /Try once more/],
])("a failure says what to do: %s", (message, way) => expect(told({ how: "failed", message })).toMatch(way));
