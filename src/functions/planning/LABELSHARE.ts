import type { Weight } from "../../../shared/base/units.ts";
import { text } from "../../../shared/cells/cell.ts";
import { cell, column, optional } from "../../../shared/cells/decoder.ts";
import { someWeight, weightAboveZero } from "../../../shared/cells/readers.ts";
import { OWN_FORMULAS, ownFormulas } from "../../../shared/label/own-formulas.ts";
import { labelShare } from "../../../shared/label/share.ts";
import { larder } from "../../../shared/larder/larder.ts";
import { define, down } from "../define.ts";

export const LABELSHARE = define({
  name: "BAKE_LABELSHARE",
  family: "Planning and label",
  summary: "The percentage of an ingredient to declare (QUID), on the finished weight. Check local law.",
  args: {
    ingredient: { is: cell(text()), says: "The ingredient that the label names or shows." },
    ingredients: { is: column(text()), says: "The column of ingredients' names, such as A5:A12." },
    weights: {
      is: column(someWeight<Weight>()),
      says: "The column of weights as they go in, such as C5:C12, in any one unit.",
    },
    finished_weight: {
      is: optional(weightAboveZero<Weight>(), null),
      says: "(optional) What the product weighs when finished; all that goes in when left out.",
    },
    larder: {
      is: larder(true),
      says: '(optional) The larder; its column "made of" says what of the ingredient a compound holds.',
    },
    formulas: { is: ownFormulas, says: OWN_FORMULAS },
  },
  returns: {
    shape: "row",
    cells: ["share", "of what"],
    says: "Two cells: the share, and the weight that it is of. Above 1 it is declared as grams per 100 g.",
  },
  examples: [
    {
      call: ["sultanas", down("dough", "sultanas"), down(800, 200), 800],
      gives: [[0.25, "of the finished weight (800)"]],
      origin: "published",
      source: "a council's leaflet on quantity declarations, paperzz 8931015",
    },
    {
      call: [
        "sultanas",
        down("dough", "fruit mix", "sultanas"),
        down(800, 100, 100),
        undefined,
        [
          ["ingredient", "made of"],
          ["fruit mix", "sultanas 60%, candied peel 40%"],
        ],
      ],
      gives: [[0.16, 'of the weight as mixed (1000); 60 % of "fruit mix" counted']],
      origin: "derived",
      source: "derived: 60 g in the mix and 100 g beside it, in 1000 g",
    },
    {
      call: [
        "almonds",
        down("dough", "filling"),
        down(90, 30),
        120,
        undefined,
        [
          ["product", "ingredient", "weight", "boil-off"],
          ["filling", "almonds", 400, 0.15],
          ["", "syrup", 600, ""],
        ],
      ],
      gives: [[0.1176470588235294, 'of the finished weight (120); 47.06 % of "filling" counted']],
      origin: "derived",
      source: "derived: 400 g of almonds in 1000 g cooked to 850 g, so that 30 g of filling carry 14.12 g",
    },
  ],
  refusals: [
    {
      call: ["sultana raisin", down("dough", "sultanas"), down(800, 200)],
      because: 'BAKE_LABELSHARE: ingredient is "sultana raisin", which is none of the ingredients.',
    },
    {
      call: [
        "sultanas",
        down("dough", "fruit mix"),
        down(800, 200),
        900,
        [
          ["ingredient", "made of"],
          ["fruit mix", "sultanas, candied peel 40%"],
        ],
      ],
      because:
        'BAKE_LABELSHARE: larder row 2 column "made of" has "sultanas" without its share; enter it with one, such as "sultanas 20%".',
    },
    {
      call: ["sultanas", down("dough", "sultanas"), down(800, 200), 8000],
      because: "BAKE_LABELSHARE: finished_weight is 8000, more than the ingredients' 1000; enter both in one unit.",
    },
  ],
  compute: ({ ingredient, ingredients, weights, finished_weight, larder, formulas }) => {
    const declared = labelShare(ingredient, ingredients, weights, finished_weight, { larder, formulas });
    return declared === null ? [null, null] : [declared.share, declared.says];
  },
});
