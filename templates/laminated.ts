import type { SheetModel } from "../shared/sheet/model.ts";
import { chartBlockOf } from "./blocks/chart.ts";
import { formulaTable, TOTALS, totalsOf } from "./blocks/formula.ts";
import { makeBlockOf, rolledSizesTable } from "./blocks/make.ts";
import { CAUTIONS, cautionsOf, nameBlockOf } from "./blocks/name.ts";
import { rollInBlock } from "./blocks/roll-in.ts";
import { ovenBlockOf, stepsTable } from "./blocks/steps.ts";
import { underTable } from "./blocks/under-table.ts";
import { notesBlock, waterBlock } from "./blocks/water.ts";

/** A dough folded with fat: the fat is a share of the base dough and stays out of the mix. */
export const laminated: SheetModel = {
  name: "laminated",
  title: "Laminated dough",
  says: "A dough folded with fat: base dough, roll-in fat by block, layers and pieces.",
  group: "Buns and layered dough",
  widths: [166, 84, 84, 84, 84, 84, 84, 84, 166],
  parts: ["water", "steps", "chart"],
  bands: [
    [nameBlockOf("Laminated dough")],
    [makeBlockOf({ what: "dough", by: ["pieces"], mixed: "/(1+@roll_in_share)" }), rolledSizesTable],
    [rollInBlock, waterBlock],
    [notesBlock],
    [totalsOf(TOTALS.flour, TOTALS.water, TOTALS.hydration, TOTALS.salt, TOTALS.baseDough, TOTALS.piecesOfAll)],
    [formulaTable],
    [underTable({ held: true })],
    [stepsTable, ovenBlockOf({ on: "trays" }), chartBlockOf(10)],
    [cautionsOf(CAUTIONS.raw, CAUTIONS.egg, CAUTIONS.guides, CAUTIONS.oven)],
  ],
  sample: {
    title: "Slipway croissant",
    shop: "Tern Quay Bakehouse",
    version: "1",
    change_1: "first version",
    by: "pieces",
    handling_loss: 0.06,
    mixer_limit: 12000,
    mixer_least: 2000,
    step_coarse: 5,
    step_fine: 1,
    size_name: ["croissant", "mini"],
    size_pieces: [96, 48],
    size_weight: [70, 35],
    size_loss: [0.14, 0.16],
    roll_in_name: "Sheet butter",
    roll_in_share: 0.28,
    blocks: 3,
    fold_1: 3,
    fold_2: 3,
    fold_3: 3,
    dough_target: 22,
    flour_temp: 18,
    room_temp: 20,
    tap_temp: 14,
    mixing: "planetary",
    minutes: 6,
    yeast: "instant",
    ingredient: ["Strong white flour", "Water", "Whole milk", "Sugar", "Unsalted butter", "Instant yeast", "Sea salt"],
    kind: ["flour", "water", "dairy", "sugar", "fat", "yeast", "salt"],
    percent: [1, 0.38, 0.15, 0.1, 0.06, 0.012, 0.02],
    held_share: 0.05,
    step: [
      "Mix",
      "Rest cold",
      "Lock in and first fold",
      "Rest cold",
      "Second and third fold",
      "Rest cold",
      "Cut and shape",
      "Final proof",
      "Bake",
      "Cool",
    ],
    step_minutes: [12, 600, 25, 45, 40, 60, 50, 130, 18, 30],
    ready: 7 / 24,
    oven_step: "Bake",
    tray_pieces: 12,
    oven_takes: 6,
    oven_reload: 5,
  },
  // Worked out by hand: (96 × 70 ÷ 0.86 + 48 × 35 ÷ 0.84) ÷ 0.94 of dough with its fat, over 1.28 the base dough, over 1.722 the flour;
  // 3 × 3 × 3 layers; 3 × 22 − 18 − 20 − 6 × 1.4 = 19.6 °C; all steps and 18 + 5 + 18 minutes of oven are 1033 minutes before 07:00.
  expects: {
    dough_in_all: 10440.376051,
    dough: 8156.54379,
    roll_in: 2283.832261,
    roll_in_of_flour: 0.48216,
    flour: 4736.668868,
    block_dough: 2718.84793,
    block_fat: 761.27742,
    layers: 27,
    mixes: 1,
    pieces: 144,
    water_temp: 19.6,
    "step_start/1": "13:47",
    "step_day/1": -1,
    oven_minutes: 41,
  },
};
