// The last month's mixes in the shop's one spiral mixer; the eighteenth is a misread thermometer, as happens.

import { daysBefore } from "./days.ts";
import type { DemoQuestion } from "./question.ts";

/** The products in the order in which they are mixed, day after day. */
const ROUND = ["Quay pan loaf", "Harbour levain loaf", "Ferry bun", "Quay hearth loaf", "Lantern rye tin"];

const MIXES = {
  log_product: Array.from({ length: 6 }, () => ROUND).flat(),
  log_minutes: [8, 4, 9, 10, 5, 8, 5, 9, 10, 6, 8, 4, 11, 9, 5, 7, 6, 11, 9, 5, 8, 5, 10, 9, 6, 7, 6, 9, 8, 5],
  log_flour: [
    20, 20, 21, 19, 21, 20, 20, 19, 20, 20, 21, 19, 21, 20, 19, 20, 20, 20, 20, 20, 21, 21, 19, 19, 20, 21, 21, 20, 19,
    19,
  ],
  log_room: [
    22, 23, 23, 22, 22, 22, 21, 22, 22, 23, 23, 22, 22, 23, 21, 23, 23, 21, 21, 22, 24, 22, 21, 20, 23, 24, 22, 22, 20,
    20,
  ],
  log_preferment: [
    null,
    21,
    null,
    23,
    null,
    null,
    22,
    null,
    22,
    null,
    null,
    21,
    null,
    22,
    null,
    null,
    21,
    null,
    22,
    null,
    null,
    21,
    null,
    23,
    null,
    null,
    21,
    null,
    22,
    null,
  ],
  log_water: [
    28, 30, 24, 17, 33, 27, 32, 27, 18, 32, 26, 35, 22, 19, 37, 29, 29, 16, 20, 35, 25, 29, 27, 22, 31, 26, 29, 26, 25,
    38,
  ],
  log_dough: [
    26.1, 25.0, 26.0, 24.1, 27.0, 26.0, 24.9, 26.1, 23.9, 27.0, 26.0, 25.2, 25.8, 24.2, 26.9, 26.0, 25.1, 25.8, 23.8,
    27.2, 26.3, 25.0, 26.0, 24.1, 26.7, 26.0, 25.0, 26.1, 24.0, 27.1,
  ],
};

export const mixLogAsked = (today: number): DemoQuestion => ({
  ask: "build",
  template: "mix-log",
  options: { weight: "g", temperature: "C", length: "cm", parts: [] },
  values: {
    title: "Mix log",
    shop: "Tern Quay Bakehouse",
    log_date: daysBefore(today, 30),
    ...MIXES,
  },
});
