// The last month's bakes, one a day: what went into the bowl, over the sidebar, out of the oven and over the counter.

import { daysBefore } from "./days.ts";
import type { DemoQuestion } from "./question.ts";

export const bakeOffLogAsked = (today: number): DemoQuestion => ({
  ask: "build",
  template: "bake-off-log",
  options: { weight: "g", temperature: "C", length: "cm", parts: [] },
  values: {
    title: "Bake log",
    shop: "Tern Quay Bakehouse",
    product: ["Quay pan loaf", "Harbour levain loaf", "Ferry bun", "Quay hearth loaf", "Lantern rye tin"],
    product_sold_at: [700, 900, 70, 800, 750],
    product_wanted: [24, 18, 120, 30, 24],
    off_date: daysBefore(today, 30),
    off_product: [
      "Quay pan loaf",
      "Ferry bun",
      "Lantern rye tin",
      "Harbour levain loaf",
      "Quay hearth loaf",
      "Quay pan loaf",
      "Ferry bun",
      "Lantern rye tin",
      "Harbour levain loaf",
      "Quay hearth loaf",
      "Quay pan loaf",
      "Ferry bun",
      "Lantern rye tin",
      "Harbour levain loaf",
      "Quay hearth loaf",
      "Quay pan loaf",
      "Ferry bun",
      "Lantern rye tin",
      "Harbour levain loaf",
      "Quay hearth loaf",
      "Quay pan loaf",
      "Ferry bun",
      "Lantern rye tin",
      "Harbour levain loaf",
      "Quay hearth loaf",
      "Quay pan loaf",
      "Ferry bun",
      "Lantern rye tin",
      "Harbour levain loaf",
      "Quay hearth loaf",
    ],
    off_mixed: [
      20150, 12950, 17500, 28300, 38200, 18150, 12950, 17500, 24950, 34400, 20150, 12950, 21000, 28300, 30550, 20150,
      8600, 17500, 28300, 34400, 20150, 10750, 21000, 28300, 38200, 20150, 10750, 17500, 28300, 30550,
    ],
    off_divided: [
      19860, 12630, 16980, 27580, 37470, 17690, 12630, 17080, 24470, 33830, 19690, 12660, 20500, 27620, 30040, 19790,
      8460, 17110, 27660, 33650, 19660, 10480, 20570, 27890, 37310, 19630, 10590, 17050, 27700, 29830,
    ],
    off_raw: [
      7850, 780, 8510, 10600, 9235, 7910, 775, 8540, 10610, 9295, 7825, 780, 8465, 10585, 9315, 7875, 785, 8495, 10570,
      9320, 7835, 775, 8490, 10530, 9300, 7855, 780, 8575, 10570, 9375,
    ],
    off_baked: [
      6945, 705, 7460, 9065, 7950, 7020, 700, 7500, 9020, 8040, 6990, 700, 7450, 8940, 8055, 7015, 705, 7485, 9005,
      8015, 6965, 700, 7465, 8910, 8010, 6980, 700, 7590, 8980, 8055,
    ],
    off_made: [
      30, 180, 20, 34, 50, 27, 180, 20, 30, 45, 30, 180, 24, 34, 40, 30, 120, 20, 34, 45, 30, 150, 24, 34, 50, 30, 150,
      20, 34, 40,
    ],
    off_sold: [
      27, 180, 19, 32, 49, 27, 180, 19, 29, 45, 30, 172, 24, 32, 38, 29, 120, 18, 34, 45, 27, 150, 24, 34, 49, 29, 138,
      18, 33, 40,
    ],
  },
});
