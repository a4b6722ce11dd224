import { type Fault, fault, Refusal, refuse, refuseAll } from "../../../shared/base/refusal.ts";
import type { Grams } from "../../../shared/base/units.ts";
import { CUP_SYSTEMS } from "../../../shared/base/volumes.ts";
import { number, text, word } from "../../../shared/cells/cell.ts";
import { column, optional, optionalEither } from "../../../shared/cells/decoder.ts";
import { larder, requireIngredient } from "../../../shared/larder/larder.ts";
import { inPoundsAndOunces, inSpoons } from "../../../shared/recipe/spoons.ts";
import { define, down } from "../define.ts";

export const SPOONS = define({
  name: "BAKE_SPOONS",
  family: "Measures",
  summary: "A weight in cups and spoons, or pounds and ounces: the simplest within 2 %, or the nearest with its error.",
  args: {
    grams: {
      is: column(number<Grams>("grams such as 350", { min: 0, max: 1e6 }, {}, { measure: "grams" })),
      says: "Grams: one cell or a column.",
    },
    ingredient: {
      is: optionalEither(text()),
      says: "(optional) The ingredient: one cell, or a column with each row's own; pounds and ounces need none.",
    },
    cups: {
      is: optional(word({ ...CUP_SYSTEMS, "lb oz": ["pounds and ounces", "oz", "lb"] }), "US"),
      says: '(optional) Whose cups and spoons: "US" (default), "AU", "UK" or "EU"; or "lb oz".',
    },
    larder: { is: larder(true), says: "(optional) The larder, with the shop's own measures." },
  },
  returns: { shape: "column", says: 'Text such as "1 cup + 2 tbsp", one cell per weight.' },
  examples: [
    { call: [250, "all-purpose flour"], gives: "2 cups", origin: "derived", source: "USDA SR28: 125 g a cup" },
    {
      call: [down(225.2, 20.7, 1), down("sugar", "baking powder", "salt")],
      gives: down("1 cup + 2 tbsp", "1 tbsp + 1 1/2 tsp", "1/8 tsp (-25 %)"),
      origin: "derived",
      source:
        "USDA SR28: sugar 200 g a cup and 4.2 g a teaspoon, baking powder 4.6 g, salt 6 g; 0.75 g is 25 % short of 1 g",
    },
    {
      call: [
        15,
        "kosher salt",
        "US",
        [
          ["ingredient", "measures"],
          ["kosher salt", "tbsp 10"],
        ],
      ],
      gives: "1 tbsp + 1 1/2 tsp",
      origin: "published",
      source: "Friberg, The Professional Pastry Chef: 4 tablespoons of table salt are 60 g, of kosher salt 40 g",
    },
    {
      call: [566.99, undefined, "lb oz"],
      gives: "1 lb 4 oz",
      origin: "derived",
      source: "20 oz of 28.3495 g (NIST SP 811)",
    },
  ],
  refusals: [
    {
      call: [10, "kosher salt"],
      because:
        'BAKE_SPOONS: ingredient is "kosher salt", which weighs 2.8 g to 5 g a tsp from one brand to the next; weigh it.',
    },
    {
      call: [250],
      because:
        'BAKE_SPOONS: ingredient is blank; enter its name, or choose "lb oz" as cups for pounds and ounces of anything.',
    },
  ],
  compute: ({ grams, ingredient, cups, larder }) => {
    if (cups === "lb oz") return grams.map((weight) => (weight === null ? null : inPoundsAndOunces(weight)));
    if (ingredient === null && grams.some((weight) => weight !== null))
      refuse('is blank; enter its name, or choose "lb oz" as cups for pounds and ounces of anything', "ingredient");
    const faults: Fault[] = [];
    const texts = grams.map((weight, row): string | null => {
      if (weight === null) return null;
      const name = Array.isArray(ingredient) ? (ingredient[row] ?? null) : ingredient;
      if (name === null) {
        faults.push(fault("is blank though the row has a weight; enter its name", "ingredient", row + 1));
        return null;
      }
      try {
        return inSpoons(weight, requireIngredient(larder, name), cups);
      } catch (error) {
        if (!(error instanceof Refusal)) throw error;
        const isOne = !Array.isArray(ingredient);
        faults.push(...error.faults.map((one) => (isOne ? one : { ...one, row: one.row ?? row + 1 })));
        return null;
      }
    });
    refuseAll(faults);
    return texts;
  },
});
