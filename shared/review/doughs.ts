import type { Style } from "./style.ts";

/** Bands of yeast doughs, percent of all flour. */
export const DOUGHS = {
  "pan bread": {
    also: ["sandwich bread", "sandwich loaf", "tin bread", "tin loaf", "white bread", "toast bread", "pain de mie"],
    water: [57, 63, 68],
    salt: [1.5, 2, 2.4],
    freshYeast: [1, 2, 4],
    dryYeast: { as: "either", band: [0.7, 1, 1.6] },
    sugar: [1.5, 5, 12],
    fat: [1, 3, 9],
    egg: 0,
    milkSolids: [0, 4, 8.5],
    // Source: US Army master recipe cards D008 and D009, A Treatise on Baking.
  },
  hearth: {
    also: [
      "hearth lean",
      "lean",
      "lean bread",
      "hearth bread",
      "country bread",
      "french bread",
      "sourdough",
      "sourdough bread",
    ],
    water: [58, 65, 70],
    salt: [1.5, 2, 2.2],
    freshYeast: [0.7, 1.2, 2.5],
    sugar: [0, 0, 2],
    fat: [0, 0, 2],
    egg: 0,
    milkSolids: 0,
    // Source: A Treatise on Baking, Hamelman's professional formulas.
  },
  baguette: {
    also: ["french stick"],
    water: [64, 68, 72],
    salt: [1.8, 2, 2.2],
    freshYeast: [0.5, 1, 1.5],
    sugar: 0,
    fat: 0,
    egg: 0,
    milkSolids: 0,
    // Source: Hamelman's professional formulas.
  },
  ciabatta: {
    also: [],
    water: [74, 78, 85],
    salt: 2,
    freshYeast: [0.5, 1.2, 1.5],
    sugar: 0,
    fat: [0, 1, 4],
    egg: 0,
    milkSolids: 0,
    // Source: Hamelman's professional formulas.
  },
  pizza: {
    also: ["pizza dough", "neapolitan", "neapolitan pizza"],
    water: [50, 59, 68],
    salt: [1.5, 2, 2.8],
    freshYeast: [0.1, 1, 2],
    sugar: [0, 0, 3],
    fat: [0, 2, 5],
    egg: 0,
    milkSolids: 0,
    // Source: mixer makers' rating doughs, culinary-school slides.
  },
  "whole wheat": {
    also: ["wholemeal", "wholewheat", "whole wheat bread", "wholemeal bread", "whole grain bread"],
    water: [60, 70, 80],
    salt: [1.6, 2, 2.2],
    freshYeast: [1, 2, 3],
    sugar: [0, 3, 8],
    fat: [0, 2, 5],
    egg: 0,
    milkSolids: [0, 2, 4],
    // Source: A Treatise on Baking (entire wheat bread).
  },
  rye: {
    also: ["rye any share", "rye (any share)", "rye bread"],
    water: [65, 70, 85],
    salt: [1.8, 2, 2.2],
    freshYeast: [0.2, 0.6, 1.3],
    sugar: [0, 1, 4],
    fat: 0,
    egg: 0,
    milkSolids: 0,
    // Source: Hamelman's professional formulas (deli rye), The Fresh Loaf node/22023 (black rye).
  },
  bagel: {
    also: [],
    water: [50, 55, 58],
    salt: [1.8, 2, 2.8],
    freshYeast: [1, 2, 2.5],
    sugar: [0, 2, 5],
    fat: [0, 0, 2],
    egg: 0,
    milkSolids: 0,
    // Source: The Fresh Loaf, most-bookmarked bagel, mixer makers' rating doughs.
  },
  bun: {
    also: ["bun soft roll", "soft roll", "soft bun", "roll", "dinner roll", "burger bun", "hamburger bun"],
    water: [50, 57, 62],
    salt: [1.7, 2, 2.2],
    freshYeast: [3, 5, 8],
    dryYeast: { as: "active dry", band: [2, 3, 4] },
    sugar: [8, 10, 15],
    fat: [6, 10, 12],
    egg: [0, 5, 10],
    milkSolids: [3, 5, 8],
    // Source: USDA quantity recipes for school food service, 1988 (yeast rolls).
  },
  "sweet dough": {
    also: ["sweet roll", "sweet bun", "cinnamon roll", "cinnamon bun", "coffee cake"],
    water: [37, 45, 52],
    salt: [0.9, 1.7, 2],
    freshYeast: [4, 6, 8],
    dryYeast: { as: "active dry", band: [3, 4, 5] },
    sugar: [10, 18, 25],
    fat: [10, 16, 25],
    egg: [5, 15, 25],
    milkSolids: [3, 5, 8],
    // Source: US Army master recipe cards D036, a school food service's sweet rolls.
  },
  brioche: {
    also: [],
    water: [0, 10, 20],
    salt: [2, 2, 2.5],
    freshYeast: [3.5, 5, 6],
    sugar: [5, 12, 15],
    fat: [35, 50, 80],
    egg: [45, 50, 65],
    milkSolids: [0, 2, 5],
    // Source: Gisslen, Professional Baking, a culinary school's formula.
  },
  laminated: {
    also: ["laminated dough", "croissant", "danish", "danish pastry"],
    water: [46, 52, 73],
    liquidDairyByWeight: true,
    salt: [1.7, 2.2, 2.5],
    dryYeast: { as: "instant", band: [1, 1.5, 2] },
    sugar: [7, 10, 13],
    // In the dough 0, 8, 10 and rolled in 45, 55, 70: a formula's fat rows do not say which they are.
    fat: [45, 63, 80],
    egg: [0, 10, 25],
    milkSolids: [0, 2, 5],
    // Source: published Danish and croissant formulas (eoibakery.com.au, bakefromscratch.com, sweetnapa.com), roll-in fat included.
  },
  "yeast doughnut": {
    also: ["doughnut", "donut", "raised doughnut", "yeast donut", "raised donut"],
    water: [50, 56, 65],
    salt: [1.7, 2, 2.5],
    freshYeast: [4, 5, 6],
    sugar: [8, 14, 15],
    fat: [8, 12, 15],
    egg: [0, 10, 15],
    milkSolids: [4, 5, 8],
    // Source: culinary-school notes, mixer makers' rating doughs.
  },
} as const satisfies Readonly<Record<string, Style>>;
