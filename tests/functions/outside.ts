import type { Argument, Origin } from "../../src/functions/define.ts";

type Outside = {
  readonly name: string;
  readonly call: readonly Argument[];
  /** Which cell of the answer the source speaks of, from 0, row by row. */
  readonly at: number;
  readonly gives: number | RegExp;
  readonly within: number;
  readonly origin: Extract<Origin, "published" | "derived" | "practice">;
  readonly source: string;
};

/** Published figures for one cell of an answer whose other cells are our own bounds. */
export const OUTSIDE: readonly Outside[] = [
  {
    name: "BAKE_YEASTTIME",
    call: [2, 3, 1.5],
    at: 0,
    gives: 4,
    within: 1e-9,
    origin: "derived",
    source: "the inverse rule, 2 % × 3 h ÷ 1.5 h",
  },
  {
    name: "BAKE_YEASTTIME",
    call: [1, 0.5, 1],
    at: 2,
    gives: 0.5,
    within: 1e-9,
    origin: "published",
    source: "eager-self.de: half the yeast takes twice the time, 30 minutes to 1 hour",
  },
  {
    name: "BAKE_YEASTTIME",
    call: [1.1, 3, 2],
    at: 1,
    gives: 2,
    within: 0.15,
    origin: "published",
    source: "King Arthur professional formulas, 1.1 % for 3 h; back-cafe-wedel, 2 % for 2 h, both near 24 °C",
  },
  {
    name: "BAKE_YEASTTIME",
    call: [1, 2, 2, 24, 27],
    at: 1,
    gives: 2 ** (-5.4 / 17),
    within: 0.01,
    origin: "derived",
    source: "artisanbreads123: twice as fast per 17 °F",
  },
  {
    name: "BAKE_YEASTTIME",
    call: [1.331, 2.5, 2.5, 24, 27],
    at: 0,
    gives: 1,
    within: 1e-9,
    origin: "derived",
    source: "bakemag.com 836: a tenth per °C",
  },
  {
    name: "BAKE_YEASTPLAN",
    call: [1, 2, 75.2, 2, 80.6, "F"],
    at: 1,
    gives: 2 ** (-5.4 / 17),
    within: 0.01,
    origin: "derived",
    source: "artisanbreads123: twice as fast per 17 °F",
  },
  {
    name: "BAKE_YEASTPLAN",
    call: [1.331, 2.5, 24, 2.5, 27],
    at: 0,
    gives: 1,
    within: 1e-9,
    origin: "derived",
    source: "bakemag.com 836: a tenth per °C",
  },
  {
    name: "BAKE_FRICTIONGUIDE",
    call: ["hand", "", "F"],
    at: 0,
    gives: 0,
    within: 1e-9,
    origin: "published",
    source: "Cooking Stack Exchange 107561: none by hand",
  },
  {
    name: "BAKE_FRICTIONGUIDE",
    call: ["hand", "", "F"],
    at: 2,
    gives: 5,
    within: 0.5,
    origin: "published",
    source: "Cook's Illustrated how-to 5818: 5 °F by hand",
  },
  {
    name: "BAKE_FRICTIONGUIDE",
    call: ["processor", "", "F"],
    at: 1,
    gives: 25,
    within: 0.5,
    origin: "published",
    source: "Cook's Illustrated how-to 5818: 25 °F in a food processor",
  },
  {
    name: "BAKE_FRICTIONGUIDE",
    call: ["stand", 8, "F"],
    at: 1,
    gives: 16,
    within: 0.5,
    origin: "published",
    source: "an eHow text copied in a forum: 8 minutes of 2 °F",
  },
  {
    name: "BAKE_FRICTIONGUIDE",
    call: ["spiral", 8],
    at: 1,
    gives: 8,
    within: 1e-9,
    origin: "published",
    source: "duretz.net: 1 °C of factor per minute of second speed",
  },
  {
    name: "BAKE_ICE",
    call: [40, 20, 10],
    at: 0,
    gives: (40 * 10) / (20 + 80),
    within: 0.02,
    origin: "derived",
    source: "FAO: ice takes 80 kcal/kg to melt",
  },
  {
    name: "BAKE_WATERNOTE",
    call: [60, 15],
    at: 0,
    gives: /too hot/,
    within: 0,
    origin: "published",
    source: "Exploratorium: yeast dies from 55 to 60 °C",
  },
  {
    name: "BAKE_WATERNOTE",
    call: [140, 60, "", "F"],
    at: 0,
    gives: /too hot/,
    within: 0,
    origin: "published",
    source: "Exploratorium: yeast dies from 55 to 60 °C",
  },
  {
    name: "BAKE_TINNOTE",
    call: [1154, 3408.5, "lidded white"],
    at: 0,
    gives: /^Fill 0\.34 g\/cm³, the usual one/,
    within: 0,
    origin: "published",
    source: "a King Arthur pain de mie quoted at yumarama.com/3919: 1154 g in a lidded 13 × 4 × 4 inch tin",
  },
];
