import { toGrams, type Weight } from "../../../shared/base/units.ts";
import { text, word } from "../../../shared/cells/cell.ts";
import { cell, column, optional, optionalColumn } from "../../../shared/cells/decoder.ts";
import { someWeight, weightAboveZero, weightUnit } from "../../../shared/cells/readers.ts";
import { kindsGiven } from "../../../shared/enrichment/enrichment.ts";
import { LABEL_LAWS } from "../../../shared/enrichment/protein.ts";
import { nutrition } from "../../../shared/label/nutrition.ts";
import { OWN_FORMULAS, ownFormulas } from "../../../shared/label/own-formulas.ts";
import { kind } from "../../../shared/larder/kinds.ts";
import { larder } from "../../../shared/larder/larder.ts";
import { define, down } from "../define.ts";

const FIGURES = { rounded: ["round"], exact: ["unrounded"] } as const;

export const NUTRITION = define({
  name: "BAKE_NUTRITION",
  family: "Planning and label",
  summary: "Nutrition of a finished product by a law's rules, an estimate. Check against an analysis and local law.",
  args: {
    ingredients: { is: column(text()), says: "The column of ingredients' names, such as A5:A12." },
    weights: { is: column(someWeight<Weight>()), says: "The column of weights as they go in, such as C5:C12." },
    finished_weight: { is: cell(weightAboveZero<Weight>()), says: "What all of it weighs when finished." },
    law: { is: cell(word(LABEL_LAWS)), says: '"EU" or "UK", or "US", which is not a Nutrition Facts panel.' },
    portion: {
      is: optional(weightAboveZero<Weight>(), null),
      says: "(optional) What a piece or a serving weighs, in the unit of the weights.",
    },
    larder: { is: larder(true), says: "(optional) The shop's ingredient table; USDA SR28 figures stand in for it." },
    kinds: {
      is: optionalColumn(kind()),
      says: "(optional) What each row is; then starters count by their flour, and flour the larder lacks as plain flour.",
    },
    unit: {
      is: optional(weightUnit(), "g"),
      says: '(optional) Unit of the weights: "g" (default), "kg", "oz" or "lb".',
    },
    figures: {
      is: optional(word(FIGURES), "rounded"),
      says: '(optional) "rounded" as the law has it (default), or "exact".',
    },
    formulas: { is: ownFormulas, says: OWN_FORMULAS },
  },
  returns: {
    shape: "rows",
    cells: ["nutrient", "per 100 g", "per portion", "note"],
    says: "A row for each line of the declaration: its name, 100 g, the portion, and whose figure is not known.",
  },
  examples: [
    {
      call: [down("all-purpose flour"), down(100), 100, "EU"],
      gives: [
        ["Energy (kJ)", 1485, "", ""],
        ["Energy (kcal)", 350, "", ""],
        ["Fat (g)", 1, "", ""],
        ["of which saturates (g)", 0.2, "", ""],
        ["Carbohydrate (g)", 73, "", ""],
        ["of which sugars (g)", "<0.5", "", ""],
        ["Fibre (g)", 2.7, "", ""],
        ["Protein (g)", 11, "", ""],
        ["Salt (g)", "<0.01", "", ""],
      ],
      origin: "derived",
      source:
        "Regulation (EU) 1169/2011, annex XIV, on USDA SR28 20081: protein 10.33 × 6.25 ÷ 5.70 = 11.33, carbohydrate 76.31 − 2.7 − 1.00 = 72.61; 17 × 83.94 + 37 × 0.98 + 8 × 2.7",
    },
    {
      call: [down("butter"), down(1), 1, "US", 0.5, undefined, undefined, "oz"],
      gives: [
        ["Calories", 730, 100, ""],
        ["Total fat (g)", 81, 11, ""],
        ["Saturated fat (g)", 50, 7, ""],
        ["Sodium (mg)", 10, 0, ""],
        ["Total carbohydrate (g)", 0, 0, ""],
        ["Dietary fiber (g)", 0, 0, ""],
        ["Total sugars (g)", 0, 0, ""],
        ["Protein (g)", "<1", 0, ""],
        ["Not known here", "", "", "trans fat, cholesterol, added sugars, vitamin D, calcium, iron, potassium"],
      ],
      origin: "memory",
      source:
        "21 CFR 101.9(c), from memory, on USDA SR28 01145: half an ounce of 14.17 g holds 11.50 g of fat, 7.16 g of it saturated",
    },
  ],
  refusals: [
    {
      call: [down("flour", "tonka"), down(1000, 1), 990, "EU"],
      because:
        'BAKE_NUTRITION: ingredients row 2 is "tonka", which the larder does not know; enter a name it knows, or give the larder a row for it.',
    },
    {
      call: [down("flour"), down(1000), 1100, "EU"],
      because: "BAKE_NUTRITION: finished_weight is 1100, more than the ingredients' 1000; enter both in one unit.",
    },
  ],
  compute: ({ ingredients, weights, finished_weight, law, portion, larder, kinds, unit, figures, formulas }) =>
    nutrition(
      {
        names: ingredients,
        weights,
        kinds: kindsGiven(weights, kinds, ingredients),
        finished: finished_weight,
        portion: portion === null ? null : toGrams(portion, unit),
      },
      { larder, formulas },
      law,
      figures === "rounded",
    ).map(({ name, per100, portion: each, note }) => [name, per100, each, note]),
});
