import type { Weight } from "../../../shared/base/units.ts";
import { text, word } from "../../../shared/cells/cell.ts";
import { cell, column, optional } from "../../../shared/cells/decoder.ts";
import { someWeight, weightAboveZero } from "../../../shared/cells/readers.ts";
import { LABEL_LAWS } from "../../../shared/enrichment/protein.ts";
import { labelList } from "../../../shared/label/label.ts";
import { OWN_FORMULAS, ownFormulas } from "../../../shared/label/own-formulas.ts";
import { larder } from "../../../shared/larder/larder.ts";
import { define, down } from "../define.ts";

export const LABELLIST = define({
  name: "BAKE_LABELLIST",
  family: "Planning and label",
  summary:
    "Ingredient list by weight, an estimate: allergens in capitals, US in a line. Check against your supplier's specification and local law.",
  args: {
    ingredients: { is: column(text()), says: "The column of ingredients' names, such as A5:A12." },
    weights: {
      is: column(someWeight<Weight>()),
      says: "The column of weights as they go in, such as C5:C12, in any one unit.",
    },
    larder: { is: larder(false), says: 'The larder, with the columns allergens, "label name" and "made of".' },
    law: { is: cell(word(LABEL_LAWS)), says: '"EU", "UK" or "US".' },
    finished_weight: {
      is: optional(weightAboveZero<Weight>(), null),
      says: "(optional) What the product weighs when finished; EU and UK need it where water goes in.",
    },
    formulas: { is: ownFormulas, says: OWN_FORMULAS },
  },
  returns: {
    shape: "cell",
    says: 'The list as one text; in the US with a line "Contains:" behind it that names every major allergen.',
  },
  examples: [
    {
      call: [
        down("flour", "water", "salt", "yeast"),
        down(1000, 600, 20, 10),
        [
          ["ingredient", "label name", "allergens"],
          ["flour", "wheat flour", "wheat"],
          ["salt", "", "none"],
          ["yeast", "", "none"],
        ],
        "EU",
        1430,
      ],
      gives: "WHEAT flour, water, salt, yeast",
      origin: "derived",
      source: "Regulation (EU) 1169/2011, annex VII A.1: 400 of 1430 g are water",
    },
    {
      call: [
        down("flour", "almond filling", "butter"),
        down(1000, 400, 300),
        [
          ["ingredient", "label name", "made of", "allergens"],
          ["flour", "enriched flour", "wheat flour, niacin, iron, thiamin, riboflavin, folic acid", "wheat"],
          ["butter", "", "", "milk"],
          ["almonds", "", "", "almonds"],
          ["sugar", "", "", "none"],
        ],
        "US",
        undefined,
        [
          ["product", "ingredient", "weight"],
          ["almond filling", "sugar", 400],
          ["", "almonds", 600],
        ],
      ],
      gives:
        "enriched flour (wheat flour, niacin, iron, thiamin, riboflavin, folic acid), almond filling (almonds, sugar), butter. Contains: milk, almonds, wheat.",
      origin: "derived",
      source:
        "21 CFR 101.4(a) and (b)(2): falling weight, compounds with their parts; the FDA's nine in its order, nuts by species",
    },
  ],
  refusals: [
    {
      call: [
        down("flour", "butter"),
        down(1000, 600),
        [
          ["ingredient", "allergens"],
          ["flour", "wheat"],
        ],
        "US",
      ],
      because:
        'BAKE_LABELLIST: ingredients row 2 is "unsalted butter", whose allergens are not known; give it a larder row with them, "none" where checked.',
    },
    {
      call: [
        down("flour", "water"),
        down(1000, 600),
        [
          ["ingredient", "allergens"],
          ["flour", "wheat"],
        ],
        "UK",
      ],
      because:
        "BAKE_LABELLIST: finished_weight is blank; where water goes in, UK lists need the weight of the finished product.",
    },
  ],
  compute: ({ ingredients, weights, larder, law, finished_weight, formulas }) =>
    labelList(ingredients, weights, { larder, formulas }, law, finished_weight),
});
