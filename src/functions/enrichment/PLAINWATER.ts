import type { Weight } from "../../../shared/base/units.ts";
import { text } from "../../../shared/cells/cell.ts";
import { cell, column } from "../../../shared/cells/decoder.ts";
import { hydration, someWeight } from "../../../shared/cells/readers.ts";
import { isUnweighed, plainWater } from "../../../shared/enrichment/enrichment.ts";
import { kind, kindsOf } from "../../../shared/larder/kinds.ts";
import { larder } from "../../../shared/larder/larder.ts";
import { define, down } from "../define.ts";

export const PLAINWATER = define({
  name: "BAKE_PLAINWATER",
  family: "Enrichment and flour",
  summary: "Water to add for the effective hydration you want, after the water in eggs, milk, butter and starters.",
  args: {
    ingredients: {
      is: column(text()),
      says: "The ingredients' names; flour, water, salt and starter rows go by their type.",
    },
    weights: {
      is: column(someWeight<Weight>()),
      says: "The weights, or the percentages, all in one unit; what the water rows hold is left out.",
    },
    kinds: {
      is: column(kind()),
      says: "The column that says what each row is: flour, water, salt, egg, dairy, levain 100% and so on.",
    },
    hydration: { is: cell(hydration()), says: "The effective hydration wanted, such as 65%." },
    larder: { is: larder(true), says: "(optional) The shop's ingredient table; USDA SR28 figures stand in for it." },
  },
  returns: { shape: "cell", says: "One weight, in the unit of the weights: all water rows together." },
  examples: [
    {
      call: [down("", "", "", "salt"), down(500, 360, 125, 10), down("flour", "water", "levain 100%", "salt"), 0.6],
      gives: 275,
      origin: "derived",
      source: "a question on r/Sourdough: 0.60 × 562.5 less the starter's 62.5",
    },
    {
      call: [down("flour", "egg", "sour cream"), down(1000, 200, 150), down("flour", "egg", "dairy"), 0.65],
      gives: 388.5,
      origin: "published",
      source: "a question on a cooking forum, eggs at 76 % water and sour cream at 73 %: SR28's figures are within 4 g",
      within: 4,
    },
    {
      call: [
        down("flour", "whole egg"),
        down(350, 10),
        down("flour", "egg"),
        0.56,
        [
          ["ingredient", "water"],
          ["whole egg", 0.75],
        ],
      ],
      gives: 188.5,
      origin: "derived",
      source: "a pizza trade forum: 350 oz of flour at 56 %, 10 oz of egg of 75 % water",
    },
  ],
  refusals: [
    {
      call: [down("flour", "whole egg"), down(1000, 800), down("flour", "egg"), 0.5],
      because:
        "BAKE_PLAINWATER: hydration is 50 %, and without plain water the dough has 60.92 % already: 109.2 too much. Enter a higher one, or take that much water out of the other rows.",
    },
    {
      call: [down("flour", "egg"), down(1000, 100), down("flour", "egg"), 65],
      because: "BAKE_PLAINWATER: hydration is 65, which is 6500 %; enter 65% or 0.65.",
    },
  ],
  compute: ({ ingredients, weights, kinds, hydration, larder }) =>
    isUnweighed(weights)
      ? null
      : plainWater(ingredients, weights, kindsOf(weights, kinds, "kinds", ingredients), hydration, larder),
});
