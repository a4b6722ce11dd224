import type { SheetModel } from "../shared/sheet/model.ts";
import { CAUTIONS } from "./blocks/name.ts";
import { formulaSheet } from "./formula-sheet/formula-sheet.ts";

/** A batter by tins: the fill says how much goes into each. */
export const cake: SheetModel = formulaSheet({
  name: "cake",
  title: "Cake batter",
  says: "A cake batter by tins and their fill, in batches that the bowl takes.",
  group: "Cake and cookies",
  style: "layer cake",
  mix: "batter",
  isBread: false,
  tin: "layer cake",
  hasEggs: true,
  bakedOn: "tins",
  cautions: [CAUTIONS.raw, CAUTIONS.egg, CAUTIONS.guides, CAUTIONS.oven],
  sample: {
    title: "Lantern layer cake",
    shop: "Tern Quay Bakehouse",
    version: "1",
    change_1: "first version",
    by: "tins",
    handling_loss: 0.03,
    mixer_limit: 9000,
    mixer_least: 1500,
    step_coarse: 5,
    step_fine: 1,
    tin_shape: "round",
    tin_size_1: 20,
    tin_size_2: 5,
    tin_kind: "layer cake",
    tins: 24,
    egg_weight: 50,
    ingredient: ["Plain flour", "Sugar", "Unsalted butter", "Whole egg", "Whole milk", "Baking powder", "Salt"],
    kind: ["flour", "sugar", "fat", "egg", "dairy", "other", "salt"],
    percent: [1, 1.2, 0.5, 0.6, 0.85, 0.045, 0.02],
    step: ["Weigh and warm to room", "Mix", "Deposit into tins", "Bake", "Cool in the tin", "Turn out and cool"],
    step_minutes: [60, 15, 15, 28, 15, 75],
    ready: 10 / 24,
    oven_step: "Bake",
    oven_takes: 12,
    oven_reload: 5,
  },
  // Worked out by hand: π × 10² × 5 cm³ at 0.44 g/cm³; 24 of them ÷ 0.97 of batter over 4.215 is the flour; 2 oven loads of 28 minutes
  // with 5 between: the first step starts 241 minutes before 10:00.
  expects: {
    check: "",
    tin_capacity: 1570.796327,
    tin_dough: 691.150384,
    dough: 17100.628053,
    "grams/4": 2434.253104,
    mixes: 2,
    pieces: 24,
    oven_loads: 2,
    oven_minutes: 61,
    "step_start/1": "05:59",
  },
});
