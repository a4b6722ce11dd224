import type { Weight } from "../../../shared/base/units.ts";
import { text, word } from "../../../shared/cells/cell.ts";
import { cell, column, type Decoder, list, optionalColumn, toGrid } from "../../../shared/cells/decoder.ts";
import { isBlank } from "../../../shared/cells/hint.ts";
import { someWeight } from "../../../shared/cells/readers.ts";
import { ASKED, type Asked, contents, kindsGiven, totals } from "../../../shared/enrichment/enrichment.ts";
import { kind } from "../../../shared/larder/kinds.ts";
import { larder } from "../../../shared/larder/larder.ts";
import { define, down } from "../define.ts";

const onePart = cell(word(ASKED));
const severalParts = list(word(ASKED));
/** One word, or a range or list of words. */
const parts: Decoder<Asked | readonly (Asked | null)[]> = {
  ...onePart,
  decode: (raw, argument, faults, row) => {
    const words = toGrid(raw).flat();
    if (words.length > 1 && !words.every(isBlank)) return severalParts.decode(raw, argument, faults, row);
    return onePart.decode(words.length > 1 ? "" : raw, argument, faults, row);
  },
};

export const CONTENT = define({
  name: "BAKE_CONTENT",
  family: "Enrichment and flour",
  summary:
    "What each row holds of water, fat, sugar, protein and so on: an estimate from typical figures, not a declaration.",
  args: {
    ingredients: { is: column(text()), says: "The ingredients' names." },
    weights: { is: column(someWeight<Weight>()), says: "The weights; in grams where energy is asked for." },
    part: {
      is: parts,
      says: '"water", "fat", "saturates", "carbohydrate" (fibre with it), "sugar", "protein", "fibre", "salt" (sodium × 2.5) or "energy" (kcal); or several, such as {"fat";"sugar"}.',
    },
    larder: { is: larder(true), says: "(optional) The shop's ingredient table; USDA SR28 figures stand in for it." },
    kinds: {
      is: optionalColumn(kind()),
      says: "(optional) What each row is; then starters count by their flour, and flour the larder lacks as plain flour.",
    },
  },
  returns: {
    shape: "rows",
    cells: ["weight"],
    says: "One weight per row in the unit of the weights, or the kilocalories; of several parts what all rows hold together, side by side.",
  },
  examples: [
    {
      call: [down("egg"), down(50), "water"],
      gives: 38.075,
      source: "USDA SR28 01123: one large egg of 50 g at 76.15 g per 100 g",
    },
    {
      call: [down("flour", "whole egg", "unsalted butter"), down(1000, 500, 500), "fat"],
      gives: down(9.8, 47.55, 405.55),
      source: "USDA SR28 20081, 01123 and 01145: 0.98, 9.51 and 81.11 g per 100 g",
    },
    {
      call: [down("levain", "salt"), down(200, 20), "protein", undefined, down("levain 100%", "salt")],
      gives: down(10.33, 0),
      source: "USDA SR28 20081: the levain's 100 g of flour hold 10.33 g",
    },
    {
      call: [down("flour", "whole egg", "unsalted butter"), down(1000, 500, 500), down("fat", "energy")],
      gives: [[462.9, 7940]],
      source: "USDA SR28 20081, 01123 and 01145: 9.8 + 47.55 + 405.55 g of fat; 364, 143 and 717 kcal per 100 g",
    },
  ],
  refusals: [
    {
      call: [down("semolina"), down(100), "sugar"],
      because:
        'BAKE_CONTENT: ingredients row 1 is "semolina", whose sugar is not known; give its larder row a figure under "sugar".',
    },
    {
      call: [down("levain"), down(200), "water"],
      because:
        'BAKE_CONTENT: ingredients row 1 is "levain", which the larder does not know; write a name it knows, or give the larder a row for it.',
    },
  ],
  compute: ({ ingredients, weights, part, larder, kinds }) =>
    typeof part === "string"
      ? contents(ingredients, weights, part, larder, kindsGiven(weights, kinds, ingredients)).map((one) => [one])
      : totals(ingredients, weights, part, larder, kindsGiven(weights, kinds, ingredients)),
});
