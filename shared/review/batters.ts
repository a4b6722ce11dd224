import type { Style } from "./style.ts";

/** Bands of pastry, cookies and batters, percent of all flour. */
export const BATTERS = {
  "pie crust": {
    also: ["pie", "pie dough", "pie pastry", "shortcrust", "shortcrust pastry"],
    water: [25, 30, 35],
    salt: [1.5, 2, 3],
    sugar: [0, 5, 7],
    fat: [50, 70, 80],
    egg: 0,
    milkSolids: 0,
    // Source: a baking school's pie crust (mynebraskakitchen.com).
  },
  "drop cookie": {
    also: ["cookie"],
    water: [0, 0, 10],
    salt: [0.8, 1.5, 2],
    leavening: { of: "baking soda", band: [0.5, 1.2, 1.6] },
    sugar: [60, 100, 120],
    fat: [45, 70, 85],
    egg: [15, 30, 40],
    milkSolids: 0,
    // Source: Figoni, How Baking Works (a rough guide).
  },
  muffin: {
    also: [],
    water: [50, 60, 100],
    liquidDairyByWeight: true,
    salt: [0.8, 1.5, 2.5],
    leavening: { of: "baking powder", band: [4, 5.5, 6.5] },
    sugar: [35, 55, 70],
    fat: [20, 38, 50],
    egg: [30, 40, 50],
    milkSolids: [0, 7, 10],
    // Source: bakemag.com 10514 and a trade posting.
  },
  "layer cake": {
    also: ["layer", "layer high ratio", "high ratio layer", "high ratio", "high ratio cake", "high ratio layer cake"],
    water: [70, 90, 110],
    salt: [1.5, 2.5, 3.2],
    leavening: { of: "baking powder", band: [3, 5, 6.5] },
    sugar: [100, 120, 150],
    fat: [40, 50, 55],
    egg: [50, 60, 70],
    milkSolids: [5, 10, 16],
    // Source: Gisslen, Professional Baking, US Army master recipe cards G007 and G025.
  },
  "pound cake": {
    also: ["pound"],
    water: [0, 20, 56],
    salt: [1, 1.5, 2],
    leavening: { of: "baking powder", band: [0, 1, 3] },
    sugar: [90, 100, 120],
    fat: [50, 90, 100],
    egg: [50, 90, 100],
    milkSolids: [0, 3, 6],
    // Source: Figoni, How Baking Works.
  },
  sponge: {
    also: ["sponge cake", "genoise", "foam cake"],
    water: [0, 0, 20],
    salt: [0, 1, 2],
    leavening: { of: "baking powder", band: [0, 0, 2] },
    sugar: [100, 125, 200],
    fat: [0, 0, 20],
    egg: [100, 150, 200],
    milkSolids: 0,
    // Source: Kinne and Cooley's old rule, equal weights (a rough guide).
  },
} as const satisfies Readonly<Record<string, Style>>;
