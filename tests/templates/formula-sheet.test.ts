// The formula sheet that adds up with its own formulas: pan loaf and hearth loaf.
import { beforeAll, describe, expect, test } from "vitest";
import type { Options, SheetModel, Values } from "../../shared/sheet/model.ts";
import { type Book, openBook, type Sheet } from "../../src/workbook/scripted.ts";
import { hearthLoaf } from "../../templates/hearth-loaf.ts";
import { panLoaf } from "../../templates/pan-loaf.ts";
import { METRIC_UNITS, US_UNITS } from "../kit/units.ts";

let empty: Book;
beforeAll(async () => {
  empty = await openBook();
});

/** Without the parts that only a sheet of ingredients makes possible. */
const partsOf = ({ parts }: SheetModel) => parts.filter((part) => part !== "cost" && part !== "label");

function built(model: SheetModel, values: Values, options: Partial<Options> = {}): Sheet {
  return empty.copy().build(model.name, values, { ...METRIC_UNITS, parts: partsOf(model), ...options });
}

/** The sample with other values; a step of a thousandth leaves weights as they are. */
const sample = (model: SheetModel, values: Values): Values => ({
  ...model.sample,
  step_coarse: 0.001,
  step_fine: 0.001,
  ...values,
});

const near = (sheet: Sheet, name: string, expected: number, row?: number, within = 1e-6) => {
  const value = row === undefined ? sheet.value(name) : sheet.value(name, row);
  expect(value, `${name} ${row ?? ""}: ${sheet.shown("check")}`).toBeTypeOf("number");
  expect(Math.abs((value as number) - expected), `${name}: ${value}, not ${expected}`).toBeLessThanOrEqual(within);
};

describe("weights from percentages", () => {
  test("100, 67, 2 and 1 for 73 loaves of 390 g are 16 747, 11 220.5, 335 and 167.5 g — a school hand-out", () => {
    const sheet = built(
      panLoaf,
      sample(panLoaf, {
        size_name: ["loaf"],
        size_pieces: [73],
        size_weight: [390],
        size_loss: [null],
        handling_loss: null,
        ingredient: ["Flour", "Water", "Salt", "Yeast"],
        kind: ["flour", "water", "salt", "yeast"],
        percent: [1, 0.67, 0.02, 0.01],
      }),
    );
    [16747.0588, 11220.5294, 334.9412, 167.4706].forEach((grams, row) => {
      near(sheet, "exact", grams, row + 1, 1e-4);
    });
    near(sheet, "dough", 28470);
    expect(sheet.shown("check")).toBe("");
  });

  test("by tins: 13 × 4 × 4 inches hold 3 408.5 cm³, and at 0.34 g/cm³ 1 159 g of dough each — yumarama.com/3919", () => {
    const sheet = built(
      panLoaf,
      {
        ...sample(panLoaf, { by: "tins", tins: 3, tin_kind: "lidded white", handling_loss: null }),
        tin_size_1: 13,
        tin_size_2: 4,
        tin_size_3: 4,
        tin_size_4: null,
        tin_size_5: null,
      },
      { length: "in" },
    );
    near(sheet, "capacity", 3408.5, undefined, 0.1);
    near(sheet, "tin_dough", 1158.89, undefined, 0.02);
    near(sheet, "dough", 3 * 3408.509 * 0.34, undefined, 0.1);
    expect(sheet.shown("tin_note")).toContain("the usual one for lidded white");
  });

  test("a round tin of 20 cm, 7 cm deep, holds 2 199 cm³; narrower at its base, less — π r² h and the frustum of a cone", () => {
    const round = sample(panLoaf, {
      tin_shape: "round",
      tin_size_1: 20,
      tin_size_2: 7,
      tin_size_3: null,
      tin_size_4: null,
      tin_size_5: null,
    });
    const sheet = built(panLoaf, round);
    near(sheet, "capacity", Math.PI * 100 * 7);
    sheet.type("tin_size_3", "18");
    near(sheet, "capacity", ((Math.PI * 7) / 12) * (400 + 360 + 324));
  });

  test("levain in the flour's 100 % or beside it: the frame that fits decides", () => {
    const rows = {
      ingredient: ["Flour", "Water", "Salt", "Levain"],
      kind: ["flour", "water", "salt", "levain 100%"],
    };
    const all = built(
      panLoaf,
      sample(panLoaf, { ...rows, by: "flour", flour_wanted: 10000, percent: [0.95, 0.6, 0.02, 0.1] }),
    );
    near(all, "exact", 9500, 1);
    near(all, "exact", 1000, 4);
    const added = built(
      panLoaf,
      sample(panLoaf, { ...rows, by: "flour", flour_wanted: 10000, percent: [1, 0.6, 0.02, 0.2] }),
    );
    near(added, "exact", 10000, 1);
    near(added, "exact", 2000, 4);
  });

  test("a recipe by weights becomes percentages, and its dough the amount", () => {
    const sheet = built(
      panLoaf,
      sample(panLoaf, {
        by: "dough",
        size_pieces: null,
        percent: null,
        ingredient: ["Flour", "Water", "Salt", "Yeast"],
        kind: ["flour", "water", "salt", "yeast"],
        weighed: [2000, 1300, 40, 20],
      }),
    );
    near(sheet, "percent", 0.65, 2, 1e-12);
    near(sheet, "amount", 3360);
    near(sheet, "exact", 1300, 2);
  });
});

test("a weight that is no number is refused before anything is built", () => {
  const book = empty.copy();
  const values = sample(panLoaf, {
    percent: null,
    weighed: [1000, "a cup"],
    ingredient: ["Flour", "Water"],
    kind: ["flour", "water"],
  });
  expect(() => book.build("pan-loaf", values, { ...METRIC_UNITS, parts: partsOf(panLoaf) })).toThrow(
    /The weight of "Water" is no number\. Enter one\./,
  );
  expect(book.sheetNames()).toEqual(["Sheet1"]);
});

describe("preferment and final mix", () => {
  test("900 flour, 468 water, 9 yeast, 27 salt after a poolish of 468, 468 and 0.3 — Wild Yeast, baker's percentage, part 4", () => {
    const sheet = built(
      hearthLoaf,
      sample(hearthLoaf, {
        by: "dough",
        dough_wanted: 2340.3,
        mixer_limit: null,
        ingredient: ["Flour", "Water", "Salt", "Yeast"],
        kind: ["flour", "water", "salt", "yeast"],
        percent: [1, 936 / 1368, 27 / 1368, 9.3 / 1368],
        pre_share: 468 / 1368,
        pre_yeast: 0.3 / 468,
      }),
    );
    [468, 468, 0, 0.3].forEach((grams, row) => {
      near(sheet, "pre_scale", grams, row + 1, 1.1e-3);
    });
    [900, 468, 27, 9].forEach((grams, row) => {
      near(sheet, "final", grams, row + 1, 1.1e-3);
    });
    near(sheet, "pre_weight", 936.3);
    near(sheet, "hydration", 0.6842, undefined, 5e-5);
  });

  test("a biga of 60 %: 7 flour, 5.8 water, 0.117 yeast in the final mix — King Arthur professional formulas, ciabatta", () => {
    const sheet = built(
      hearthLoaf,
      sample(hearthLoaf, {
        by: "flour",
        flour_wanted: 10000,
        mixer_limit: null,
        ingredient: ["Flour", "Water", "Salt", "Fresh yeast"],
        kind: ["flour", "water", "salt", "yeast"],
        percent: [1, 0.76, 0.02, 0.012],
        pre_kind: "biga",
        pre_share: 0.3,
        pre_hydration: 0.6,
        pre_yeast: 0.001,
      }),
    );
    [7000, 5800, 200, 117].forEach((grams, row) => {
      near(sheet, "final", grams, row + 1, 1.1e-3);
    });
    near(sheet, "pre_mix", 4803);
    near(sheet, "water_final", 5800);
  });

  test("of one flour alone, and on the scale's steps the two add up to the mix", () => {
    const sheet = built(hearthLoaf, { ...hearthLoaf.sample, pre_from: "Strong white flour", pre_share: 0.2 });
    expect(sheet.shown("pre_shown", 2)).toBe("");
    for (let row = 1; row <= 5; row++) {
      const [mix, pre, final] = ["mix_scale", "pre_scale", "final"].map((name) => Number(sheet.value(name, row)));
      expect((pre ?? 0) + (final ?? 0)).toBeCloseTo(mix ?? Number.NaN, 9);
    }
  });

  test("without the part everything is one mix", () => {
    const sheet = built(hearthLoaf, hearthLoaf.sample, {
      parts: partsOf(hearthLoaf).filter((part) => part !== "preferment"),
    });
    expect(sheet.names()).not.toContain("pre_shown");
    expect(sheet.shown("per_mix", 1)).toBe("9,945");
    // 3 × 24 − 20 − 22 − 12.
    near(sheet, "water_temp", 18);
  });
});

describe("the order's changes are the sheet's own sums", () => {
  test("scaled to dough the pieces are shares of it: whole pieces now, and what is left over", () => {
    const sheet = built(panLoaf, sample(panLoaf, { handling_loss: null }));
    sheet.type("by", "dough");
    sheet.type("amount", "20000");
    // 24 × 700 ÷ 0.89 and 12 × 350 ÷ 0.87 are 23 703.99 g.
    const times = 20000 / ((24 * 700) / 0.89 + (12 * 350) / 0.87);
    near(sheet, "pieces_now", Math.floor(24 * times), 1);
    near(sheet, "pieces_now", Math.floor(12 * times), 2);
    near(sheet, "size_now", ((24 * 700) / 0.89) * times, 1);
    expect(sheet.shown("result")).toMatch(/^30 pieces · 20 kg dough · 247 g left over · hydration 63 %/);
    expect(sheet.shown("check")).toBe("");
  });

  test("with the functions taken away every weight, time and temperature stands, and what needs them says so", () => {
    const sheet = built(panLoaf, panLoaf.sample);
    const figures = ["weight", "per_mix"].flatMap((name) => [1, 2, 3, 4, 5, 6].map((row) => sheet.shown(name, row)));
    sheet.book.removeFunctions();
    sheet.type("size_pieces", "48", 1);
    sheet.type("size_pieces", "24", 1);
    expect(["weight", "per_mix"].flatMap((name) => [1, 2, 3, 4, 5, 6].map((row) => sheet.shown(name, row)))).toEqual(
      figures,
    );
    near(sheet, "water_temp", 26);
    expect(sheet.shown("start_shown", 1)).toBe("01:55");
    expect(sheet.shown("tin_note")).toBe("needs Gramwright");
    expect(sheet.shown("water_note")).toBe("needs Gramwright");
    expect(sheet.shown("friction_note")).toBe("guide needs Gramwright");
    expect(sheet.shown("note", 1)).toBe("Notes need Gramwright");
  });
});

describe("a slip", () => {
  test("text for a percentage costs its own row and what is weighed, and is named", () => {
    const sheet = built(panLoaf, panLoaf.sample);
    sheet.paste("percent", [["2 pinches"]], 3);
    expect(sheet.shown("check")).toMatch(/Sea salt C\d+ “2 pinches”: enter a number/);
    expect(sheet.shown("weight", 3)).toBe("");
    expect(sheet.shown("weight", 1)).not.toBe("");
    expect(sheet.shown("per_mix", 1)).toBe("");
    expect(sheet.shown("result")).not.toMatch(/mixes/);
  });

  test("where the add-on was not used yet, a weight that is typed over costs its column alone, and the row is named", () => {
    const { book, sheet: name } = built(panLoaf, panLoaf.sample);
    const sheet = book.copy().sheet(name);
    sheet.type("weight", "600", 2);
    expect(sheet.shown("check")).toMatch(/Water clear what is typed over a formula in row \d+/);
    expect(sheet.shown("per_mix", 2)).toBe("4,430");
    expect(sheet.shown("result")).toMatch(/24\.19 kg dough, 2 mixes of 12\.09 kg/);
  });
});

test("a note that its column cuts stands whole across the page, with the name that it does not begin with", () => {
  const sheet = built(panLoaf, panLoaf.sample);
  const cut = () => ["note_first", "note_second", "note_third"].map((name) => sheet.shown(name));
  expect(cut()).toEqual(["", "", ""]);
  sheet.type("percent", "5%", 3);
  const salt = expect.stringMatching(/^Sea salt: Salt is 5 % of all flour, above the usual range .+\)/);
  expect(cut()).toEqual([salt, "", ""]);
  sheet.type("percent", "90%", 2);
  expect(cut()).toEqual([
    expect.stringMatching(/^Strong white flour: Effective hydration is 9.+ % of all flour, above the usual range .+\)/),
    expect.stringMatching(/^Water is 90 % of all flour, above the usual range .+\)/),
    salt,
  ]);
  sheet.type("percent", "30%", 6);
  expect(cut()[2]).toMatch(/^Sea salt: .* · Under Note: 1 more\.$/);
  expect(sheet.shown("check")).toBe("");
  sheet.type("note_first", "mine");
  expect(sheet.shown("check")).not.toBe("");
});

test.each([panLoaf, hearthLoaf])("$title: in pounds, ounces, °F and inches the same dough is made", (model) => {
  const OUNCE = 28.349523125;
  const ounces = (name: string) => (model.sample[name] as number[]).map((grams) => grams / OUNCE);
  const inUs: Values = {
    ...model.sample,
    size_weight: ounces("size_weight"),
    mixer_limit: 20000 / OUNCE,
    mixer_least: null,
    step_coarse: 0.1,
    step_fine: 0.05,
  };
  const metric = built(model, model.sample);
  const us = built(model, inUs, US_UNITS);
  near(us, "dough", Number(metric.value("dough")) / OUNCE);
  for (let row = 1; row <= 5; row++) near(us, "exact", Number(metric.value("exact", row)) / OUNCE, row);
  expect(us.shown("result")).toMatch(/\d lb dough/);
});
