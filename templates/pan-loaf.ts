import type { SheetModel } from "../shared/sheet/model.ts";
import { chartBlockOf } from "./blocks/chart.ts";
import { formulaTable, tinTotalsBlock } from "./blocks/formula.ts";
import { makeBlock, sizesTable } from "./blocks/make.ts";
import { CAUTIONS, cautionsOf, nameBlock } from "./blocks/name.ts";
import { ovenBlockOf, stepsTable } from "./blocks/steps.ts";
import { tinBlock } from "./blocks/tin.ts";
import { underTable } from "./blocks/under-table.ts";
import { notesBlock, waterBlock } from "./blocks/water.ts";

/** A loaf in a tin: one dough in up to five sizes, by pieces, tins, dough or flour. */
export const panLoaf: SheetModel = {
  name: "pan-loaf",
  title: "Pan loaf",
  says: "A loaf in a tin: one dough in up to five sizes, with tin fill, water temperature and steps counted back.",
  group: "Bread",
  widths: [166, 84, 84, 84, 84, 84, 84, 84, 166],
  parts: ["tin", "water", "steps", "chart"],
  bands: [
    [nameBlock],
    [makeBlock, sizesTable],
    [tinBlock, waterBlock],
    [notesBlock],
    [tinTotalsBlock],
    [formulaTable],
    [underTable({ held: true })],
    [stepsTable, ovenBlockOf({ on: "tins" }), chartBlockOf(8)],
    [cautionsOf(CAUTIONS.raw, CAUTIONS.guides, CAUTIONS.oven)],
  ],
  sample: {
    title: "Quay pan loaf",
    shop: "Tern Quay Bakehouse",
    version: "1",
    change_1: "first version",
    by: "pieces",
    handling_loss: 0.02,
    mixer_limit: 20000,
    mixer_least: 4000,
    step_coarse: 5,
    step_fine: 1,
    size_name: ["large", "small"],
    size_pieces: [24, 12],
    size_weight: [700, 350],
    size_loss: [0.11, 0.13],
    tin_shape: "box",
    tin_size_1: 21,
    tin_size_2: 11,
    tin_size_3: 9,
    tin_size_4: 19,
    tin_size_5: 9,
    tin_kind: "white",
    dough_target: 26,
    flour_temp: 21,
    room_temp: 23,
    tap_temp: 14,
    mixing: "spiral",
    minutes: 8,
    yeast: "fresh",
    ingredient: ["Strong white flour", "Water", "Sea salt", "Fresh yeast", "Butter", "Sugar"],
    kind: ["flour", "water", "salt", "yeast", "fat", "sugar"],
    percent: [1, 0.63, 0.02, 0.02, 0.03, 0.02],
    held_share: 0.04,
    step: ["Mix", "First rise", "Divide and shape", "Final proof", "Bake", "Cool"],
    step_minutes: [15, 60, 30, 60, 35, 60],
    ready: 7 / 24,
    oven_step: "Bake",
    oven_takes: 18,
    oven_reload: 10,
  },
  // Worked out by hand: (24 × 700 ÷ 0.89 + 12 × 350 ÷ 0.87) ÷ 0.98 = 24 187.746 g of dough over 1.72 is 14 062.643 g of flour;
  // 9 ÷ 6 × (21 × 11 + 19 × 9 + 40 × 20) = 1803 cm³; 3 × 26 − 21 − 23 − 8 = 26 °C. 4 % of 8859.465 g of water in two mixes is
  // 177.2 g, 175 on steps of 5; 36 tins in loads of 18 take 35 + 10 + 35 minutes, so the first step starts 305 minutes before 07:00.
  expects: {
    dough: 24187.745612,
    flour: 14062.642798,
    "share/2": 0.63,
    "grams/2": 8859.464962,
    mixes: 2,
    mix_dough: 12093.872806,
    "mix/2": 4430,
    "mix/4": 140,
    hydration: 0.63,
    tin_capacity: 1803,
    tin_dough: 786.516854,
    water_temp: 26,
    ice: 0,
    pieces: 36,
    held: 175,
    oven_loads: 2,
    oven_minutes: 80,
    "step_start/1": "01:55",
    "step_day/1": 0,
    first_in: "04:40",
    last_out: "06:00",
  },
};
