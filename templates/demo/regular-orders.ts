// What two of the shop's customers take every week.
import type { DemoQuestion } from "./question.ts";

export const regularAsked: DemoQuestion = {
  ask: "build",
  template: "regular-orders",
  options: { weight: "g", temperature: "C", length: "cm", parts: [] },
  values: {
    title: "Regular orders",
    regular_customer: ["Café Mole", "Café Mole", "Harbour inn"],
    regular_product: ["Quay pan loaf", "Ferry bun", "Quay hearth loaf"],
    regular_size: ["large", "bun", "round"],
    regular_monday: [6, 20, null],
    regular_tuesday: [6, 20, null],
    regular_wednesday: [6, 20, null],
    regular_thursday: [6, 20, 8],
    regular_friday: [8, 30, 12],
    regular_saturday: [12, 40, 16],
    regular_sunday: [null, 40, 16],
  },
};
