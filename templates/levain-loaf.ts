import type { SheetModel } from "../shared/sheet/model.ts";
import { chartBlockOf } from "./blocks/chart.ts";
import { totalsBlock } from "./blocks/formula.ts";
import { makeBlockOf, plainSizesTable } from "./blocks/make.ts";
import { CAUTIONS, cautionsOf, nameBlockOf } from "./blocks/name.ts";
import { levainBlock, levainTable } from "./blocks/preferment.ts";
import { ovenBlockOf, stepsTable } from "./blocks/steps.ts";
import { underStages } from "./blocks/under-table.ts";
import { finalWaterBlock, notesBlock } from "./blocks/water.ts";

/** A loaf raised by a levain that is built from a seed, with some kept back for the next one. */
export const levainLoaf: SheetModel = {
  name: "levain-loaf",
  title: "Levain loaf",
  says: "A loaf raised by a levain: its feeding from a seed, what goes into levain and final mix, and when.",
  group: "Bread",
  // A flour's name fits the second column, and with its cost the sheet still stands upright on a page.
  widths: [166, 116, 84, 84, 84, 84, 84, 84, 156],
  parts: ["water", "steps", "chart"],
  bands: [
    [nameBlockOf("Levain loaf")],
    [makeBlockOf({ what: "dough", by: ["pieces"] }), plainSizesTable],
    [levainBlock, finalWaterBlock],
    [notesBlock],
    [totalsBlock],
    [levainTable],
    [underStages("Its seed; levain in each mix", "@seed_dough")],
    [stepsTable, ovenBlockOf({ on: "trays" }), chartBlockOf(10)],
    [cautionsOf(CAUTIONS.raw, CAUTIONS.guides, CAUTIONS.oven)],
  ],
  sample: {
    title: "Harbour levain loaf",
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
    size_pieces: [18, 16],
    size_weight: [900, 450],
    size_loss: [0.15, 0.17],
    pre_share: 0.2,
    pre_hydration: 1,
    seed_hydration: 1,
    seed_share: 0.2,
    keep: 300,
    pre_hours: 9,
    pre_step: "Mix",
    dough_target: 25,
    flour_temp: 20,
    room_temp: 22,
    preferment_temp: 23,
    tap_temp: 14,
    mixing: "hand",
    yeast: "none",
    ingredient: ["Strong white flour", "Wholemeal wheat flour", "Rye flour", "Water", "Sea salt"],
    kind: ["flour", "flour", "flour", "water", "salt"],
    percent: [0.7, 0.2, 0.1, 0.75, 0.02],
    held_share: 0.05,
    step: [
      "Flour and water rest",
      "Mix",
      "First rise, with folds",
      "Divide and rest",
      "Shape",
      "Cold proof",
      "Bake",
      "Cool",
    ],
    step_minutes: [45, 15, 210, 30, 20, 720, 45, 60],
    ready: 8 / 24,
    oven_step: "Bake",
    tray_pieces: 4,
    oven_takes: 6,
    oven_reload: 10,
  },
  // Worked out by hand: (18 × 900 ÷ 0.85 + 16 × 450 ÷ 0.83) ÷ 0.98 of dough over 1.77 is the flour; 20 % of it and as much water are the
  // levain, and 300 g are kept back; a seed of 20 % of the flour fed brings half of itself as flour, so half the levain over 1.1 is fed;
  // 4 × 25 − 20 − 22 − 23 − 1.5 × 4 ÷ 3 = 33 °C; mixing starts 1155 minutes before 08:00, feeding 9 hours earlier.
  expects: {
    dough: 28299.512576,
    flour: 15988.425184,
    pre_weight: 6395.370074,
    levain: 6695.370074,
    feed_seed: 608.670007,
    feed_flour: 3043.350033,
    feed_water: 3043.350033,
    seed_used: 608.670007,
    seed_dough: 581.397279,
    mixes: 2,
    "pre/1": 1015,
    "pre/4": 1455,
    "final/4": 4395,
    pre_mix: 3197.685037,
    water_temp: 33,
    "step_start/2": "12:45",
    "step_day/2": -1,
    pre_start: "03:45",
    pre_day: -1,
    oven_minutes: 100,
  },
};
