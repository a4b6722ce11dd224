import { WEIGHT_UNITS } from "../../../shared/base/units.ts";
import { CUP_SYSTEMS } from "../../../shared/base/volumes.ts";
import { text, word } from "../../../shared/cells/cell.ts";
import { column, optional } from "../../../shared/cells/decoder.ts";
import { larder } from "../../../shared/larder/larder.ts";
import { costs } from "../../../shared/money/cost.ts";
import { weighCounted, weightOrCount } from "../../../shared/recipe/counted-weights.ts";
import { define, down } from "../define.ts";

export const COSTS = define({
  name: "BAKE_COSTS",
  family: "Money",
  summary: "Ingredient cost of each row, from prices and packs on your ingredient sheet; rows without a price say so.",
  args: {
    ingredients: { is: column(text()), says: "The column of ingredients' names, such as A5:A12." },
    weights: {
      is: column(weightOrCount()),
      says: 'The weights, in grams or the unit, or as "3 large" or "2 cups".',
    },
    larder: { is: larder(false), says: "The larder, with the columns price, pack and (where not all is used) usable." },
    unit: {
      is: optional(word(WEIGHT_UNITS), null),
      says: '(optional) The weights\' unit, and that of packs without one: "g" (default), "kg", "oz", "lb".',
    },
    cups: {
      is: optional(word(CUP_SYSTEMS), "US"),
      says: '(optional) Whose eggs, cups and spoons weights and packs count: "US" (default), "AU", "UK" or "EU".',
    },
  },
  returns: {
    shape: "rows",
    cells: ["cost", "remark"],
    says: "Two columns: the cost, and why there is none (no price, no pack size).",
  },
  examples: [
    {
      call: [
        down("sugar", "yeast", "water"),
        down(16, 6, 64),
        [
          ["ingredient", "price", "pack"],
          ["sugar", 1.99, "5 lb"],
          ["yeast", 4.29, "4 oz"],
        ],
        "oz",
      ],
      gives: [
        [0.398, ""],
        [6.435, ""],
        ["", "no price"],
      ],
      origin: "published",
      source: "a class worksheet on sixteen dozen rolls, docstoc 52086225: 1 lb, 6 oz, and water without a price",
    },
    {
      call: [
        down("egg", "flour"),
        down(600, 1000),
        [
          ["ingredient", "price", "pack"],
          ["egg", 7.2, "30 eggs"],
          ["flour", 18, 25],
        ],
        undefined,
        "UK",
      ],
      gives: [
        [2.4, ""],
        ["", 'pack is 25 of what? Enter "25 kg", "25 g", "25 lb" or "25 each"'],
      ],
      origin: "derived",
      source: "by hand: 600 of 30 × 60 g, large UK eggs shelled (grades of Regulation (EC) 589/2008)",
    },
  ],
  refusals: [
    {
      call: [down("sugar", ""), down(100, 20), [["ingredient", "price", "pack"]]],
      because: "BAKE_COSTS: ingredients row 2 is blank though the row has an amount; enter its name.",
    },
    {
      call: [down("sugar"), down(100), down("sugar", "salt")],
      because: 'BAKE_COSTS: larder has no column headed "ingredient"; its first row holds the headings.',
    },
  ],
  compute: ({ ingredients, weights, larder, unit, cups }) =>
    costs(ingredients, weighCounted(weights, ingredients, larder, { unit: unit ?? "g", cups }), larder, { unit, cups }),
});
