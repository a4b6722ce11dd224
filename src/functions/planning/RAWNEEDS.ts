import { rawNeeds, weightTable } from "../../../shared/money/needs.ts";
import { define } from "../define.ts";

export const RAWNEEDS = define({
  name: "BAKE_RAWNEEDS",
  family: "Planning and label",
  summary:
    "Raw ingredients for a day's orders, counting levains, soakers and doughs inside doughs, less stock on hand.",
  args: {
    orders: { is: weightTable(["product"], false), says: "A table of two columns: product, dough weight." },
    formulas: {
      is: weightTable(["product", "ingredient"], false),
      says: "A table of three columns: product (blank: the one above), ingredient, weight.",
    },
    on_hand: {
      is: weightTable(["name"], true),
      says: "(optional) A table of two columns: ready product or raw ingredient, weight.",
    },
  },
  returns: {
    shape: "rows",
    cells: ["ingredient", "weight"],
    says: "Two columns: raw ingredient, and the weight to take or buy, in the unit of the tables.",
  },
  examples: [
    {
      call: [
        [["pan loaf", 1800]],
        [
          ["product", "ingredient", "weight"],
          ["pan loaf", "flour", 900],
          ["", "water", 580],
          ["", "salt", 20],
          ["", "levain", 300],
          ["levain", "flour", 50],
          ["", "water", 50],
        ],
        [["levain", 100]],
      ],
      gives: [
        ["flour", 1000],
        ["water", 680],
        ["salt", 20],
      ],
      origin: "derived",
      source: "derived: of 300 of levain 200 are mixed, 100 of flour and 100 of water",
    },
  ],
  refusals: [
    {
      call: [
        [["rye", 1000]],
        [
          ["rye", "sour", 500],
          ["sour", "rye crumb", 100],
          ["rye crumb", "rye", 100],
        ],
      ],
      because: 'BAKE_RAWNEEDS: formulas run in a loop: "rye" → "sour" → "rye crumb" → "rye"; break it at one of them.',
    },
    {
      call: [
        [["levain", 1000]],
        [
          ["levain", "levain", 100],
          ["", "flour", 200],
        ],
      ],
      because: 'BAKE_RAWNEEDS: formulas row 1 makes "levain" of itself; name the seed differently, or put it on hand.',
    },
    {
      call: [
        [
          ["rye", 1000],
          ["Total", 1000],
        ],
        [["rye", "rye flour", 500]],
      ],
      because: 'BAKE_RAWNEEDS: orders row 2 is named "Total"; leave totals out of the range.',
    },
  ],
  compute: ({ orders, formulas, on_hand }) => rawNeeds(orders, formulas, on_hand),
});
