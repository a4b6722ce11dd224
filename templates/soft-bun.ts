import type { SheetModel } from "../shared/sheet/model.ts";
import { chartBlockOf } from "./blocks/chart.ts";
import { totalsBlock } from "./blocks/formula.ts";
import { liquidBlock, usedTable } from "./blocks/liquid.ts";
import { makeBlockOf, sizesTable } from "./blocks/make.ts";
import { CAUTIONS, cautionsOf, nameBlockOf } from "./blocks/name.ts";
import { moistTable } from "./blocks/plain-liquid.ts";
import { ovenBlockOf, stepsTable } from "./blocks/steps.ts";
import { underTable } from "./blocks/under-table.ts";
import { notesBlock, waterBlock } from "./blocks/water.ts";

/** A bun with eggs, milk and butter; the water row can be left to what those bring. */
export const softBun: SheetModel = {
  name: "soft-bun",
  title: "Buns and rolls",
  says: "A bun with eggs, milk and butter: plain water from the effective hydration wanted.",
  group: "Buns and layered dough",
  widths: [166, 84, 84, 84, 84, 84, 84, 84, 166],
  parts: ["water", "steps", "chart"],
  bands: [
    [nameBlockOf("Buns and rolls")],
    [makeBlockOf({ what: "dough", by: ["pieces"] }), sizesTable],
    [liquidBlock, waterBlock],
    [notesBlock],
    [totalsBlock],
    [usedTable],
    [underTable({ held: true })],
    [moistTable],
    [stepsTable, ovenBlockOf({ on: "trays" }), chartBlockOf(10)],
    [cautionsOf(CAUTIONS.raw, CAUTIONS.egg, CAUTIONS.guides, CAUTIONS.oven)],
  ],
  sample: {
    title: "Ferry bun",
    shop: "Tern Quay Bakehouse",
    version: "1",
    change_1: "first version",
    by: "pieces",
    handling_loss: 0.02,
    mixer_limit: 12000,
    mixer_least: 2000,
    step_coarse: 5,
    step_fine: 1,
    size_name: ["bun", "roll"],
    size_pieces: [120, 60],
    size_weight: [70, 50],
    size_loss: [0.1, 0.1],
    effective_wanted: 0.62,
    egg_weight: 50,
    dough_target: 26,
    flour_temp: 20,
    room_temp: 23,
    tap_temp: 14,
    mixing: "planetary",
    minutes: 8,
    yeast: "fresh",
    ingredient: [
      "Strong white flour",
      "Whole milk",
      "Water",
      "Whole egg",
      "Unsalted butter",
      "Sugar",
      "Fresh yeast",
      "Sea salt",
    ],
    kind: ["flour", "dairy", "water", "egg", "fat", "sugar", "yeast", "salt"],
    percent: [1, 0.25, null, 0.1, 0.12, 0.1, 0.04, 0.018],
    held_share: 0.05,
    step: ["Mix", "First rise", "Divide and round", "Shape", "Final proof", "Bake", "Cool"],
    step_minutes: [18, 75, 25, 15, 60, 14, 45],
    ready: 8 / 24,
    oven_step: "Bake",
    tray_pieces: 24,
    oven_takes: 4,
    oven_reload: 6,
  },
  // Worked out by hand: milk, egg, butter, sugar and fresh yeast hold 88.13, 76.15, 17.94, 0.02 and 69.0 % of water (USDA SR28), so 34.5623 %
  // of the flour; 27.4377 % are left for the tap; (120 × 70 ÷ 0.9 + 60 × 50 ÷ 0.9) ÷ 0.98 of dough over 1.902377 is the flour;
  // 3 × 26 − 20 − 23 − 8 × 1.4 = 23.8 °C; 8 trays in loads of 4 take 14 + 6 + 14 minutes.
  expects: {
    plain_water: 0.274377,
    "used/3": 0.274377,
    "used/1": 1,
    dough: 12925.170068,
    flour: 6794.22116,
    "grams/2": 1698.55529,
    effective: 0.62,
    eggs: 6.794221,
    water_temp: 23.8,
    mixes: 2,
    pieces: 180,
    trays: 8,
    oven_loads: 2,
    oven_minutes: 34,
    "step_start/1": "03:28",
  },
};
