import type { SheetModel } from "../shared/sheet/model.ts";
import { chartBlockOf } from "./blocks/chart.ts";
import { formulaTable, totalsBlock } from "./blocks/formula.ts";
import { makeBlockOf } from "./blocks/make.ts";
import { CAUTIONS, cautionsOf, nameBlockOf } from "./blocks/name.ts";
import { roundsTable, thicknessBlock } from "./blocks/round.ts";
import { ovenBlockOf, stepsTable } from "./blocks/steps.ts";
import { underTable } from "./blocks/under-table.ts";
import { notesBlock, waterBlock } from "./blocks/water.ts";

/** Flat rounds: sizes by their diameter, the weight from the area. */
export const flatRound: SheetModel = {
  name: "flat-round",
  title: "Pizza and flatbread",
  says: "Flat rounds by diameter: one weight per area for every size.",
  group: "Bread",
  widths: [166, 84, 84, 84, 84, 84, 84, 84, 166],
  parts: ["water", "steps", "chart"],
  bands: [
    [nameBlockOf("Pizza and flatbread")],
    [makeBlockOf({ what: "dough", by: ["pieces"] }), roundsTable],
    [thicknessBlock, waterBlock],
    [notesBlock],
    [totalsBlock],
    [formulaTable],
    [underTable({ held: true })],
    [stepsTable, ovenBlockOf({ on: "trays" }), chartBlockOf(10)],
    [cautionsOf(CAUTIONS.raw, CAUTIONS.guides, CAUTIONS.oven)],
  ],
  sample: {
    title: "Breakwater flat",
    shop: "Tern Quay Bakehouse",
    version: "1",
    change_1: "first version",
    by: "pieces",
    handling_loss: 0.02,
    mixer_limit: 12000,
    mixer_least: 3000,
    step_coarse: 5,
    step_fine: 0.1,
    style: "thin",
    per_area: 0.4,
    size_name: ["small", "large"],
    size_pieces: [30, 20],
    size_diameter: [25, 32],
    dough_target: 24,
    flour_temp: 20,
    room_temp: 23,
    tap_temp: 14,
    mixing: "spiral",
    minutes: 8,
    yeast: "instant",
    ingredient: ["Strong white flour", "Water", "Olive oil", "Sea salt", "Instant yeast"],
    kind: ["flour", "water", "fat", "salt", "yeast"],
    percent: [1, 0.6, 0.02, 0.022, 0.003],
    held_share: 0.03,
    step: ["Mix", "First rise", "Divide and round", "Cold rest", "Bring to room", "Bake"],
    step_minutes: [15, 60, 30, 1080, 90, 6],
    ready: 12 / 24,
    oven_step: "Bake",
    tray_pieces: 1,
    oven_takes: 10,
    oven_reload: 2,
  },
  // Worked out by hand: π ÷ 4 × 25² and × 32² cm² at 0.4 g each; (30 × 196.350 + 20 × 321.699) ÷ 0.98 of dough over 1.645 is the flour;
  // 3 × 24 − 20 − 23 − 8 × 1.0 = 21 °C; 5 loads of 6 minutes with 2 between.
  expects: {
    "size_area/1": 490.873852,
    "size_scaled/1": 196.349541,
    "size_scaled/2": 321.699088,
    dough: 12575.987735,
    flour: 7644.977346,
    mixes: 2,
    water_temp: 21,
    trays: 50,
    oven_loads: 5,
    oven_minutes: 38,
    "step_day/1": -1,
  },
};
