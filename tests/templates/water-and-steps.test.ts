import { describe, expect, test } from "vitest";
import type { Options, SheetModel, Values } from "../../shared/sheet/model.ts";
import { cake } from "../../templates/cake.ts";
import { cookie } from "../../templates/cookie.ts";
import { flatRound } from "../../templates/flat-round.ts";
import { hearthLoaf } from "../../templates/hearth-loaf.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { levainLoaf } from "../../templates/levain-loaf.ts";
import { someOf } from "../kit/scale.ts";
import { METRIC_UNITS, US_UNITS } from "../kit/units.ts";
import { type Built, buildSheet } from "./sheet-support.ts";

// Every test builds whole sheets.

/** A sheet with all its parts; the values named replace the sample's. */
async function built(model: SheetModel, values: Values = {}, units: Omit<Options, "parts"> = METRIC_UNITS) {
  const made = await buildSheet({ ...model.sample, ...values }, { model, options: { ...units, parts: model.parts } });
  const shown = (name: string, row?: number) => made.book.cell(made.sheet, made.at(name, row)).shown;
  return { ...made, shown, number: (name: string, row?: number) => Number(made.value(name, row)) };
}
const lineOf = ({ at }: Built, name: string, row: number) => Number(at(name, row).replace(/\D/g, ""));
const near = (actual: unknown, expected: number, within: number) => {
  expect(typeof actual, String(actual)).toBe("number");
  expect(Math.abs((actual as number) - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(within);
};

describe.each(TEMPLATES)("$title with nothing typed", (model) => {
  test.each(someOf([METRIC_UNITS, US_UNITS], 2, TEMPLATES.indexOf(model)))("shows no error: %j", async (units) => {
    const options = { ...units, parts: model.parts.filter((part) => part !== "cost" && part !== "label") };
    const { book, sheet } = await buildSheet({ title: "Blank" }, { model, options });
    const page = "A1:K40";
    for (const text of book.shownTexts(sheet, page).flat()) {
      // Grams in an ounce have as many digits as they have.
      if (text !== "28.34952313") expect(text).not.toMatch(/^#|\d\.\d{5}/);
    }
  });
});

describe("flat round", () => {
  test("11 oz at 12 in are 14.972 at 14 and 19.556 at 16 — Lehmann, Pizza Today, October 2019, with π in full", async () => {
    const right = { per_area: null, known_weight: 11, known_diameter: 12, handling_loss: null };
    const sizes = { size_name: ["a", "b"], size_pieces: [1, 2], size_diameter: [14, 16] };
    const { number } = await built(flatRound, { ...right, ...sizes }, US_UNITS);
    near(number("per_area_used"), 0.0972614, 5e-8);
    near(number("size_scaled", 1), 14.972, 5e-4);
    near(number("size_scaled", 2), 19.556, 5e-4);
    near(number("dough"), 14.972 + 2 * 19.556, 2e-3);
  });
});

describe("cake and cookie", () => {
  test("an 8 × 2 inch round holds 1647.4 cm³ — derived; its batter at the usual 0.44 g/cm³, in ounces", async () => {
    const { number } = await built(cake, { tin_size_1: 8, tin_size_2: 2, tins: 10, handling_loss: null }, US_UNITS);
    near(number("tin_capacity"), 1647.407, 1e-3);
    near(number("dough"), (10 * 1647.407 * 0.44) / 28.349523125, 1e-3);
    expect(number("pieces")).toBe(10);
  });

  test("cookies by the tray: 10 trays of 15, lost in the bowl what is lost", async () => {
    const { number } = await built(cookie, { by: "trays", trays: 10, size_pieces: [null] });
    near(number("dough"), (150 * 60) / 0.88 / 0.98, 1e-6);
    expect([number("pieces"), number("trays"), number("tray_last")]).toEqual([150, 10, 15]);
  });
});

describe("steps are counted back from the time it must be ready", () => {
  const DAY = {
    ready: 7 / 24,
    step: ["Autolyse", "Mix", "Bulk", "Divide", "Rest", "Shape", "Proof", "Bake", "Cool"],
    step_minutes: [30, 15, 120, 15, 20, 20, 75, 40, 60],
    oven_takes: null,
  };

  test("395 minutes before 07:00 is 00:25 — derived", async () => {
    const { shown, value } = await built(hearthLoaf, DAY);
    expect(shown("step_start", 1)).toBe("00:25");
    expect(value("step_day", 1)).toBe(0);
    expect([2, 9].map((row) => shown("step_start", row))).toEqual(["00:55", "06:00"]);
  });

  test("a poolish of 14 h before 5 h 30 of work, ready at 05:00, is set at 09:30 of the day before — derived", async () => {
    const { shown, value } = await built(hearthLoaf, {
      ...DAY,
      ready: 5 / 24,
      step: ["Mix", "Bulk", "Proof", "Bake"],
      step_minutes: [20, 180, 90, 40],
      pre_hours: 14,
    });
    expect([shown("step_start", 1), value("step_day", 1)]).toEqual(["23:30", -1]);
    expect([shown("pre_start"), value("pre_day")]).toEqual(["09:30", -1]);
  });

  test("3 oven loads of 40 minutes with 10 to reload, the last out at 06:00, begin at 03:40 — derived", async () => {
    const { shown, number } = await built(hearthLoaf, {
      ...DAY,
      ready: 6 / 24,
      step: ["Mix", "Bake"],
      step_minutes: [15, 40],
      oven_takes: 20,
      oven_reload: 10,
    });
    expect([number("oven_loads"), number("oven_minutes")]).toEqual([3, 140]);
    expect([shown("step_start", 2), shown("step_start", 1)]).toEqual(["03:40", "03:25"]);
  });

  test("Army white bread takes 238 to 245 minutes — US_UNITS Army master recipe D01000, summed", async () => {
    const stages = { step: ["Ferment", "Punch", "Rest", "Proof", "Bake"], ready: 10 / 24 };
    const least = await built(hearthLoaf, { ...DAY, ...stages, step_minutes: [120, 15, 8, 60, 35] });
    const most = await built(hearthLoaf, { ...DAY, ...stages, step_minutes: [120, 15, 10, 60, 40] });
    expect([least.shown("step_start", 1), most.shown("step_start", 1)]).toEqual(["06:02", "05:55"]);
  });

  test("a step inserted in the middle, first or last moves those before it", async () => {
    for (const [row, first] of [
      [1, "00:15"],
      [5, "00:15"],
      [10, "00:15"],
    ] as const) {
      const made = await built(hearthLoaf, DAY);
      const { book, sheet, shown } = made;
      book.insertRows(sheet, lineOf(made, "step", row));
      const line = lineOf(made, "step", row);
      book.type(sheet, `A${line}`, "Fold");
      book.type(sheet, `B${line}`, "10");
      expect(shown("step_start", 1), `row ${row}`).toBe(first);
    }
  });

  test("half past midnight and exactly midnight are shown as such", async () => {
    const { shown, value, type } = await built(hearthLoaf, { ...DAY, step: ["Mix"], step_minutes: [390] });
    expect([shown("step_start", 1), value("step_day", 1)]).toEqual(["00:30", 0]);
    type("step_minutes", "420", 1);
    expect([shown("step_start", 1), value("step_day", 1)]).toEqual(["00:00", 0]);
    type("step_minutes", "421", 1);
    expect([shown("step_start", 1), value("step_day", 1)]).toEqual(["23:59", -1]);
    type("step_minutes", String(421 + 2 * 1440), 1);
    expect([shown("step_start", 1), value("step_day", 1)]).toEqual(["23:59", -3]);
  });
});

describe("water", () => {
  const plain = { friction_own: 0, dough_target: 78 };

  test("78 °F with flour at 67 and a shop at 85 takes 82, at 62 and 72 it takes 100 — A treatise on baking", async () => {
    const hot = await built(flatRound, { ...plain, flour_temp: 67, room_temp: 85 }, US_UNITS);
    near(hot.number("water_temp"), 82, 1e-9);
    const cold = await built(flatRound, { ...plain, flour_temp: 62, room_temp: 72 }, US_UNITS);
    near(cold.number("water_temp"), 100, 1e-9);
  });

  test("with a levain the multiplier is four: 76, flour 68, room 70, levain 72, factor 24 °F give 70 — a baking school's rule", async () => {
    const temps = {
      dough_target: 76,
      flour_temp: 68,
      room_temp: 70,
      preferment_temp: 72,
      friction_own: 24,
      tap_temp: 60,
    };
    const { number } = await built(levainLoaf, temps, US_UNITS);
    near(number("water_temp"), 70, 1e-9);
  });

  test("what is held back is a share of the water, last below the table, and on the scale's steps", async () => {
    const { number } = await built(flatRound, { held_share: 0.05, step_coarse: 10 });
    const water = 0.6 * number("grams", 1);
    near(number("held_all"), 0.05 * water, 0.051);
    expect(number("held")).toBe(10 * Math.round((0.05 * water) / 2 / 10));
  });
});
