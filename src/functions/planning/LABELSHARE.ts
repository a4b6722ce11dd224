import type { Weight } from "../../../shared/base/units.ts";
import { text } from "../../../shared/cells/cell.ts";
import { cell, column, optional } from "../../../shared/cells/decoder.ts";
import { someWeight, weightAboveZero } from "../../../shared/cells/readers.ts";
import { labelShare } from "../../../shared/label/label.ts";
import { define, down } from "../define.ts";

export const LABELSHARE = define({
  name: "BAKE_LABELSHARE",
  family: "Planning and label",
  summary: "The share of an ingredient to declare on a label, on the finished weight. Check local law.",
  args: {
    ingredient: { is: cell(text()), says: "The ingredient that the label names or shows." },
    ingredients: { is: column(text()), says: "The ingredients' names." },
    weights: { is: column(someWeight<Weight>()), says: "The weights as they go in, in any one unit." },
    finished_weight: {
      is: optional(weightAboveZero<Weight>(), null),
      says: "(optional) What the product weighs when finished; all that goes in when left out.",
    },
  },
  returns: { shape: "cell", says: "The share; above 1 it is declared as grams per 100 g." },
  examples: [
    {
      call: ["sultanas", down("dough", "sultanas"), down(800, 200), 800],
      gives: 0.25,
      source: "a council's leaflet on quantity declarations, paperzz 8931015",
    },
  ],
  refusals: [
    {
      call: ["sultana raisin", down("dough", "sultanas"), down(800, 200)],
      because: 'BAKE_LABELSHARE: ingredient is "sultana raisin", which is none of the ingredients.',
    },
    {
      call: ["sultanas", down("dough", "sultanas"), down(800, 200), 8000],
      because: "BAKE_LABELSHARE: finished_weight is 8000, more than the ingredients' 1000; write both in one unit.",
    },
  ],
  compute: ({ ingredient, ingredients, weights, finished_weight }) =>
    labelShare(ingredient, ingredients, weights, finished_weight),
});
