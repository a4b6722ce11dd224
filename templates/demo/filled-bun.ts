// A filled bun put together from the shop's bun dough and a custard that has a formula of its own.
import type { DemoQuestion } from "./question.ts";

const UNITS = { weight: "g", temperature: "C", length: "cm" } as const;

/** Milk, sugar, egg and flour boiled together: flour is the least of it, so the percentages are large. */
export const custardAsked: DemoQuestion = {
  ask: "build",
  template: "cookie",
  options: { ...UNITS, parts: [] },
  values: {
    title: "Quay custard",
    version: "1",
    change_1: "first version",
    law: "EU",
    by: "dough",
    amount: 4000,
    egg_weight: 50,
    ingredient: ["Whole milk", "Sugar", "Whole egg", "Strong white flour"],
    kind: ["dairy", "sugar", "egg", "flour"],
    percent: [10, 2.5, 2.4, 1],
    boil_off: 0.08,
    left_over: 0.03,
  },
};

export const filledBunAsked: DemoQuestion = {
  ask: "build",
  template: "finished-product",
  options: { ...UNITS, parts: [] },
  values: {
    title: "Custard bun",
    version: "1",
    law: "EU",
    pieces_made: 120,
    size_weight: 92,
    size_price: 1.6,
    margin_wanted: 0.5,
    labour_pieces: 60,
    labour_rate: 18,
    ingredient: ["Ferry bun", "Quay custard"],
    kind: ["dough", "filling"],
    part_each: [78, 25],
    part_unit: ["g", "g"],
    part_waste: [0.02, 0.03],
  },
};
