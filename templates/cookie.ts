import type { SheetModel } from "../shared/sheet/model.ts";
import { formulaTable, TOTALS, totalsOf } from "./blocks/formula.ts";
import { makeBlockOf, sizesTable } from "./blocks/make.ts";
import { CAUTIONS, cautionsOf, nameBlockOf } from "./blocks/name.ts";
import { ovenBlockOf, stepsTable } from "./blocks/steps.ts";
import { underTable } from "./blocks/under-table.ts";

/** Cookies by the piece or by the tray, and how often the oven is filled. */
export const cookie: SheetModel = {
  name: "cookie",
  title: "Cookie",
  says: "Cookies by the piece or by the tray: dough, trays and oven loads.",
  group: "Cake and cookies",
  widths: [166, 84, 84, 84, 84, 84, 84, 84, 166],
  parts: ["steps"],
  bands: [
    [nameBlockOf("Cookie")],
    [
      makeBlockOf({
        what: "dough",
        by: ["pieces", "trays"],
        counted: { by: "trays", needs: "steps", dough: "@trays_dough" },
      }),
      sizesTable,
    ],
    [totalsOf(TOTALS.flour, TOTALS.sugar, TOTALS.fat, TOTALS.egg, TOTALS.dough, TOTALS.pieces)],
    [formulaTable],
    [underTable({ held: false })],
    [stepsTable, ovenBlockOf({ on: "trays", wanted: true })],
    [cautionsOf(CAUTIONS.raw, CAUTIONS.egg, CAUTIONS.guides, CAUTIONS.oven)],
  ],
  sample: {
    title: "Pebble cookie",
    shop: "Tern Quay Bakehouse",
    version: "1",
    change_1: "first version",
    by: "pieces",
    handling_loss: 0.02,
    mixer_limit: 15000,
    mixer_least: 3000,
    step_coarse: 5,
    step_fine: 1,
    size_name: ["cookie"],
    size_pieces: [200],
    size_weight: [60],
    size_loss: [0.12],
    ingredient: [
      "Plain flour",
      "Unsalted butter",
      "Brown sugar",
      "Sugar",
      "Whole egg",
      "Dark chocolate",
      "Baking soda",
      "Salt",
    ],
    kind: ["flour", "fat", "sugar", "sugar", "egg", "other", "other", "salt"],
    percent: [1, 0.6, 0.45, 0.3, 0.28, 0.7, 0.01, 0.012],
    step: ["Mix", "Portion", "Chill", "Bake", "Cool on the tray"],
    step_minutes: [15, 40, 120, 13, 30],
    ready: 9 / 24,
    oven_step: "Bake",
    tray_pieces: 15,
    oven_takes: 4,
    oven_reload: 4,
  },
  // Worked out by hand: 200 × 60 ÷ 0.88 ÷ 0.98 of dough over 3.352 is the flour; 14 trays of 15, the last with 5, in 4 loads: 4 × 13 + 3 × 4
  // minutes of oven; the first step starts 269 minutes before 09:00.
  expects: {
    dough: 13914.656772,
    flour: 4151.150588,
    "grams/6": 2905.805412,
    mixes: 1,
    pieces: 200,
    trays: 14,
    tray_last: 5,
    oven_loads: 4,
    oven_minutes: 64,
    "step_start/1": "04:31",
  },
};
