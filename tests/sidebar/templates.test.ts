import { describe, expect, test } from "vitest";
import { dayOf, shownTime } from "../../shared/base/clock.ts";
import { minutes } from "../../shared/base/units.ts";
import { changeUnits } from "../../sidebar/new-formula/draft.ts";
import { assess } from "../../sidebar/new-formula/order.ts";
import { startFrom } from "../../sidebar/new-formula/start.ts";
import { timesOf } from "../../sidebar/new-formula/times.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { buildSheet } from "../templates/sheet-support.ts";
import { OUNCES } from "./drafts.ts";
import { listOf, sampleOf, templateOf } from "./samples.ts";

// Building eight sheets takes its time on a busy computer.

/** Of the samples: no cell of the sheet shows it. The dough over the sum of the percentages, worked out by hand. */
const FLOUR: Readonly<Record<string, number>> = {
  "pan-loaf": 14062.642798,
  "hearth-loaf": 22103.4027,
  "levain-loaf": 16646.772104,
  "flat-round": 7644.977346,
  "soft-bun": 6724.854354,
  laminated: 4736.668868,
  cake: 4057.088506,
  cookie: 4151.150588,
};

describe.each(TEMPLATES.map((model) => [model.name, model] as const))("%s in the panel New formula", (name, model) => {
  test("what is typed for its sample is its sample, every input of it", () => {
    const { order, faults } = assess(sampleOf(model), model);
    expect(faults).toEqual([]);
    const { version, change_1, dough_wanted, ...rest } = model.sample;
    const sent = { ...order.values };
    for (const [name, value] of Object.entries(rest)) expect(sent[name] ?? null, name).toEqual(value);
  });

  test("stands in a group of the list", () => {
    expect(model.group).toMatch(/^(?:Bread|Buns and laminated dough|Cake and cookies)$/);
  });

  test("what is told before is what its sheet must compute", () => {
    const assessed = assess(sampleOf(model), model);
    const { batch: made, mixes, isOpen } = assessed;
    const times = timesOf(assessed, model);
    const { expects } = model;
    if (isOpen) expect(name).toBe("soft-bun");
    else {
      expect(made?.dough).toBeCloseTo(Number(expects.dough), 4);
      expect(made?.flour).toBeCloseTo(FLOUR[name] ?? Number.NaN, 4);
      expect(mixes).toMatchObject({ mixes: expects.mixes });
    }
    const steps = (times ?? []).filter(({ name: step }) => !step.endsWith(" ripens"));
    const first = expects["step_start/1"];
    if (first !== undefined && !isOpen) expect(shownTime(minutes(steps[0]?.start ?? 0))).toBe(first);
    const ripens = (times ?? []).find(({ name: step }) => step.endsWith(" ripens"));
    expect(ripens === undefined ? undefined : shownTime(ripens.start)).toBe(expects.pre_start);
  });

  test("in ounces, °F and inches it is the same dough, and nothing is lost on the way back", () => {
    const draft = sampleOf(model);
    const before = JSON.stringify(draft);
    const grams = assess(draft, model);
    const memory = new Map();
    changeUnits(draft, OUNCES, memory);
    const { batch: made, faults } = assess(draft, model);
    expect(faults).toEqual([]);
    // Sizes are shown in hundredths of an ounce or an inch.
    if (made !== null) expect((made.dough * 28.349523125) / (grams.batch?.dough ?? 0)).toBeCloseTo(1, 2);
    changeUnits(draft, METRIC_UNITS, memory);
    expect(JSON.stringify(draft)).toBe(before);
  });

  test("begins with its formula, and asks for nothing but amounts and a tin", () => {
    const { faults } = assess(startFrom(model), model);
    const asked = faults.map(({ at }) => at.replace(/\/\d+$/, "").replace(/_\d$/, ""));
    expect(faults.every(({ missing }) => missing)).toBe(true);
    expect([...new Set(asked)].filter((at) => !/^(?:size_|tins?$|tin_size)/.test(at))).toEqual([]);
  });
});

describe("the built sheet computes what the sidebar said before", () => {
  test.each(TEMPLATES.map(({ name }) => name))("%s", async (name) => {
    const model = templateOf(name);
    const assessed = assess(sampleOf(model), model);
    const { order, batch: made } = assessed;
    const times = timesOf(assessed, model);
    const built = await buildSheet(order.values, {
      model,
      options: { ...order.options, parts: noCost(order.options.parts) },
    });
    if (made !== null) {
      expect(built.value("dough")).toBeCloseTo(made.dough, 6);
      expect(Number(built.value("grams", 1)) / Number(built.value("share", 1))).toBeCloseTo(made.flour, 6);
    }
    if (made === null || times === null) return;
    const steps = times.filter(({ name: step }) => !step.endsWith(" ripens"));
    expect(steps.length).toBe(listOf(model.sample.step).length);
    steps.forEach(({ start }, row) => {
      const shown = built.book.shownTexts(built.sheet, built.at("step_start", row + 1))[0]?.[0];
      expect([shown, built.value("step_day", row + 1)]).toEqual([shownTime(start), dayOf(start)]);
    });
  });

  test("weights beside percentages, to an amount and without one", async () => {
    const model = templateOf("cookie");
    const draft = startFrom(model);
    draft.choices.tin_shape = "";
    draft.weighed = true;
    const typed = [
      ["Flour", "flour", "", "1 kg"],
      ["Water", "water", "65", ""],
      ["Salt", "salt", "", "20"],
    ];
    draft.rows.splice(
      0,
      draft.rows.length,
      ...typed.map(([ingredient = "", kind = "", percent = "", weighed = ""]) => ({
        ingredient,
        kind,
        percent,
        weighed,
      })),
    );
    const own = assess(draft, model);
    expect(own.faults).toEqual([]);
    // 1000 + 650 + 20
    expect(own.batch).toMatchObject({ dough: 1670, flour: 1000 });
    const built = await buildSheet(own.order.values, { model, options: { ...own.order.options, parts: [] } });
    expect(built.value("dough")).toBeCloseTo(1670, 6);
    draft.sizes.splice(0, 1, { name: "", pieces: "10", weight: "334", loss: "" });
    const twice = assess(draft, model);
    // 3340 g are twice 1670.
    expect(twice.batch?.flour).toBeCloseTo(2000, 6);
    const again = await buildSheet(twice.order.values, { model, options: { ...twice.order.options, parts: [] } });
    expect(again.value("grams", 1)).toBeCloseTo(2000, 6);
    draft.rows[2] = { ingredient: "Salt", kind: "salt", percent: "3", weighed: "20" };
    expect(assess(draft, model).faults).toMatchObject([{ at: "weighed/2" }]);
    draft.weighed = false;
    expect(assess(draft, model).order.values).not.toHaveProperty("weighed");
  });

  test("cookies by trays, and a bun whose water is typed", async () => {
    const cookie = templateOf("cookie");
    const draft = sampleOf(cookie);
    draft.choices.by = "trays";
    draft.fields.trays = "14";
    const { order, batch: made, faults } = assess(draft, cookie);
    expect(faults).toEqual([]);
    // 14 trays of 15 pieces of 60 ÷ 0.88 g, ÷ 0.98
    expect(made?.dough).toBeCloseTo((14 * 15 * 60) / 0.88 / 0.98, 6);
    const { value } = await buildSheet(order.values, {
      model: cookie,
      options: { ...order.options, parts: ["steps"] },
    });
    expect(value("dough")).toBeCloseTo(made?.dough ?? Number.NaN, 6);
    const bun = templateOf("soft-bun");
    const typed = sampleOf(bun);
    typed.inputs.effective_wanted = "";
    const open = typed.rows[2];
    if (open !== undefined) open.percent = "";
    expect(assess(typed, bun).faults.map(({ says }) => says)).toEqual([
      "Enter the percentage of row 3, or the effective hydration you want, and it is worked out.",
    ]);
    const water = typed.rows[2];
    if (water !== undefined) water.percent = "30";
    expect(assess(typed, bun)).toMatchObject({ faults: [], isOpen: false });
  });
});

const noCost = (parts: readonly string[]) => parts.filter((part) => part !== "cost" && part !== "label");

describe("what cannot be, of a template's own inputs, is said", () => {
  test.each<[string, string, string, string]>([
    ["hearth-loaf", "pre_share", "60", "Prefermented flour is 60 %; it lies between 0 % and 50 %."],
    ["hearth-loaf", "pre_hydration", "1", "Hydration is 1, which could be 1 % or 100 %; enter it with its % sign."],
    ["hearth-loaf", "pre_step", "Mixx", 'Ripe for the step is "Mixx", and nothing has that name; enter "Mix",'],
    ["hearth-loaf", "ready", "25:00", 'Ready at is "25:00", which is no time of day; enter one such as 6:30.'],
    [
      "flat-round",
      "per_area",
      "thick",
      'Weight per area is "thick", which is not a number; enter a weight per area such as 0.40.',
    ],
    [
      "laminated",
      "roll_in_share",
      "0,28",
      "Share of fat to roll in is 0.28, which could be 0.28 % or 28 %; enter it with its % sign.",
    ],
  ])("%s, %s %s", (name, input, text, sentence) => {
    const model = templateOf(name);
    const draft = sampleOf(model);
    draft.inputs[input] = text;
    const said = assess(draft, model).faults.filter(({ at }) => at === input);
    expect(said).toHaveLength(1);
    expect(said[0]?.says).toContain(sentence);
  });
});
