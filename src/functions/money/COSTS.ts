import { WEIGHT_UNITS, type Weight } from "../../../shared/base/units.ts";
import { text, word } from "../../../shared/cells/cell.ts";
import { column, optional } from "../../../shared/cells/decoder.ts";
import { someWeight } from "../../../shared/cells/readers.ts";
import { larder } from "../../../shared/larder/larder.ts";
import { costs } from "../../../shared/money/cost.ts";
import { define, down } from "../define.ts";

export const COSTS = define({
  name: "BAKE_COSTS",
  family: "Money",
  summary: "What each row costs by the larder's price, pack and usable share; a row without a price says so.",
  args: {
    ingredients: { is: column(text()), says: "The ingredients' names." },
    weights: { is: column(someWeight<Weight>()), says: "The weights, in grams or the unit." },
    larder: { is: larder(false), says: "The larder, with the columns price, pack and (where not all is used) usable." },
    unit: {
      is: optional(word(WEIGHT_UNITS), "g"),
      says: '(optional) The weights\' unit: "g" (default), "kg", "oz", "lb".',
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
      source: "a class worksheet on sixteen dozen rolls, docstoc 52086225: 1 lb, 6 oz, and water without a price",
    },
  ],
  refusals: [
    {
      call: [down("sugar", ""), down(100, 20), [["ingredient", "price", "pack"]]],
      because: "BAKE_COSTS: ingredients row 2 is blank though the row has an amount; write its name.",
    },
    {
      call: [down("sugar"), down(100), down("sugar", "salt")],
      because: 'BAKE_COSTS: larder has no column headed "ingredient"; its first row holds the headings.',
    },
  ],
  compute: ({ ingredients, weights, larder, unit }) => costs(ingredients, weights, larder, unit),
});
