import { column, either, number, optional, text, word } from "../../../shared/cell.ts";
import { larder, requireIngredient } from "../../../shared/larder.ts";
import { CellError, type Fault, fault, refuseAll } from "../../../shared/refusal.ts";
import { inPoundsAndOunces, inSpoons } from "../../../shared/spoons.ts";
import type { Grams } from "../../../shared/units.ts";
import { CUP_SYSTEMS } from "../../../shared/volumes.ts";
import { define } from "../../define.ts";

export const SPOONS = define({
  name: "BAKE_SPOONS",
  family: "Measures",
  summary: "A weight in cups and spoons, or pounds and ounces: the fewest within 2 %, else the nearest with its error.",
  args: {
    grams: { is: column(number<Grams>("grams such as 350", { min: 0, max: 1e6 })), says: "Grams: one cell or a column." },
    ingredient: { is: either(text()), says: "The ingredient: one cell, or a column with each row's own." },
    cups: {
      is: optional(word({ ...CUP_SYSTEMS, "lb oz": ["pounds and ounces", "oz", "lb"] }), "US"),
      says: '(optional) Whose cups and spoons: "US" (default), "AU", "UK" or "EU"; or "lb oz".',
    },
    larder: { is: larder(true), says: "(optional) The larder, with the shop's own measures." },
  },
  returns: { shape: "column", says: 'Text such as "1 cup + 2 tbsp", one cell per weight.' },
  examples: [
    { call: [250, "all-purpose flour"], gives: "2 cups", source: "USDA SR28: 125 g a cup" },
    { call: [15, "honey", "EU"], gives: "2 tsp + 1/2", source: "placeholder" },
  ],
  refusals: [
    {
      call: [10, "kosher salt"],
      because:
        'BAKE_SPOONS: ingredient row 1 is "kosher salt", which weighs 233 g to 416 g a cup from one brand to the next; weigh it.',
    },
  ],
  compute: ({ grams, ingredient, cups, larder }) => {
    const faults: Fault[] = [];
    const told = grams.map((weight, row): string | null => {
      if (weight === null) return null;
      if (cups === "lb oz") return inPoundsAndOunces(weight);
      const name = Array.isArray(ingredient) ? (ingredient[row] ?? null) : ingredient;
      if (name === null) {
        faults.push(fault("is blank though the row has a weight; write its name", "ingredient", row + 1));
        return null;
      }
      try {
        return inSpoons(weight, requireIngredient(larder, name), cups);
      } catch (error) {
        if (!(error instanceof CellError)) throw error;
        const isOne = !Array.isArray(ingredient);
        faults.push(...error.faults.map((one) => (isOne ? one : { ...one, row: one.row ?? row + 1 })));
        return null;
      }
    });
    refuseAll(faults);
    return told;
  },
});
