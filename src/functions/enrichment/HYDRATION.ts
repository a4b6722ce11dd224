import type { Weight } from "../../../shared/base/units.ts";
import { text } from "../../../shared/cells/cell.ts";
import { column } from "../../../shared/cells/decoder.ts";
import { someWeight } from "../../../shared/cells/readers.ts";
import { hydrationOf, isUnweighed } from "../../../shared/enrichment/enrichment.ts";
import { kind, kindsOf } from "../../../shared/larder/kinds.ts";
import { larder } from "../../../shared/larder/larder.ts";
import { define, down } from "../define.ts";

export const HYDRATION = define({
  name: "BAKE_HYDRATION",
  family: "Enrichment and flour",
  summary: "Effective hydration: the water in everything but flour (eggs, milk, butter, starters too) over all flour.",
  args: {
    ingredients: {
      is: column(text()),
      says: "The ingredients' names; flour, water, salt and starter rows go by their type.",
    },
    weights: { is: column(someWeight<Weight>()), says: "The column of weights, such as C5:C12, all in one unit." },
    kinds: {
      is: column(kind()),
      says: "The column that says what each row is: flour, water, salt, egg, dairy, levain 100% and so on.",
    },
    larder: { is: larder(true), says: "(optional) The shop's ingredient table; USDA SR28 figures stand in for it." },
  },
  returns: { shape: "cell", says: "One share; format the cell as percent." },
  examples: [
    {
      call: [down("flour", "egg", "milk", "butter"), down(1000, 500, 100, 500), down("flour", "egg", "dairy", "fat")],
      gives: 0.55858,
      origin: "derived",
      source: "USDA SR28 01123, 01211 and 01145: 380.75, 88.13 and 89.70 g of water on 1000 g of flour",
    },
    {
      call: [down("", "", ""), down(500, 360, 125), down("flour", "water", "levain 100%")],
      gives: 0.751,
      origin: "published",
      source: "a question on r/Sourdough: 422.5 of water on 562.5 of flour",
      within: 1e-3,
    },
  ],
  refusals: [
    {
      call: [down("flour", "eg white powdr", "yeast"), down(1000, 20, 5), down("flour", "egg", "yeast")],
      because:
        'BAKE_HYDRATION: ingredients row 2 is "eg white powdr", which the larder does not know; perhaps "egg white powder"? Enter a name it knows, or give the larder a row for it.',
    },
    {
      call: [down("flour", "yeast"), down(1000, 5), down("flour", "yeast")],
      because:
        'BAKE_HYDRATION: ingredients row 2 is "yeast", whose water is not known; say fresh, instant or active dry yeast.',
    },
    {
      call: [down("egg"), down(500), down("egg")],
      because:
        "BAKE_HYDRATION: weights hold no flour; hydration is water over flour, so a flour row (or a preferment) needs a weight.",
    },
  ],
  compute: ({ ingredients, weights, kinds, larder }) =>
    isUnweighed(weights)
      ? null
      : hydrationOf(ingredients, weights, kindsOf(weights, kinds, "kinds", ingredients), larder),
});
