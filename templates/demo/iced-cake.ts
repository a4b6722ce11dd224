// An iced loaf cake: a lemon batter and an icing that has a formula of its own, with its card around it.
import type { DemoQuestion } from "./question.ts";

const UNITS = { weight: "g", temperature: "C", length: "cm" } as const;

/** Weighed by the batter; the cake says how much of it goes into each. */
export const cakeBatterAsked: DemoQuestion = {
  ask: "build",
  template: "cake",
  options: { ...UNITS, parts: [] },
  values: {
    title: "Quay lemon batter",
    version: "1",
    change_1: "first version",
    law: "EU",
    by: "batter",
    amount: 12_000,
    egg_weight: 50,
    ingredient: ["Plain flour", "Sugar", "Unsalted butter", "Whole egg", "Whole milk", "Baking powder"],
    kind: ["flour", "sugar", "fat", "egg", "dairy", "other"],
    percent: [1, 0.9, 0.8, 0.8, 0.3, 0.03],
    labour_mix: 12,
    labour_rate: 18,
  },
};

/** It is not cooked: nothing boils off, so that it does without flour. */
export const icingAsked: DemoQuestion = {
  ask: "build",
  template: "cookie",
  options: { ...UNITS, parts: [] },
  values: {
    title: "Quay lemon icing",
    version: "1",
    change_1: "first version",
    law: "EU",
    by: "dough",
    amount: 1500,
    ingredient: ["Icing sugar", "Lemon juice"],
    kind: ["sugar", "other"],
    percent: [1, 0.18],
    boil_off: 0,
    left_over: 0.05,
  },
};

export const icedCakeAsked: DemoQuestion = {
  ask: "build",
  template: "finished-product",
  options: { ...UNITS, parts: [] },
  values: {
    title: "Iced lemon loaf cake",
    version: "1",
    law: "EU",
    pieces_made: 20,
    size_weight: 560,
    size_price: 7.5,
    margin_wanted: 0.6,
    labour_pieces: 120,
    labour_rate: 18,
    ingredient: ["Quay lemon batter", "Quay lemon icing", "Cake card"],
    kind: ["dough", "topping", "packaging"],
    part_each: [550, 60, 1],
    part_unit: ["g", "g", "each"],
    part_waste: [0.02, 0.1, null],
  },
};
