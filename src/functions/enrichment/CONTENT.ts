import { CUP_SYSTEMS } from "../../../shared/base/volumes.ts";
import { text, word } from "../../../shared/cells/cell.ts";
import { cell, column, type Decoder, list, optional, optionalColumn, toGrid } from "../../../shared/cells/decoder.ts";
import { isBlank } from "../../../shared/cells/hint.ts";
import { ASKED, type Content, contents, kindsGiven, totals } from "../../../shared/enrichment/enrichment.ts";
import { kind } from "../../../shared/larder/kinds.ts";
import { larder } from "../../../shared/larder/larder.ts";
import { weighCounted, weightOrCount } from "../../../shared/recipe/counted-weights.ts";
import { define, down } from "../define.ts";

const onePart = cell(word(ASKED));
const severalParts = list(word(ASKED));
/** One word, or a range or list of words. */
const parts: Decoder<Content | readonly (Content | null)[]> = {
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
    ingredients: { is: column(text()), says: "The column of ingredients' names, such as A5:A12." },
    weights: {
      is: column(weightOrCount()),
      says: 'The weights; in grams where energy is asked for, or each as "3 large" or "2 cups".',
    },
    part: {
      is: parts,
      says: '"water", "fat", "saturates", "carbohydrate" (fibre with it), "sugar", "protein", "fibre", "salt" (sodium × 2.5) or "energy" (kcal); or several, such as {"fat";"sugar"}.',
    },
    larder: { is: larder(true), says: "(optional) The shop's ingredient table; USDA SR28 figures stand in for it." },
    kinds: {
      is: optionalColumn(kind()),
      says: "(optional) What each row is; then starters count by their flour, and flour the larder lacks as plain flour.",
    },
    cups: {
      is: optional(word(CUP_SYSTEMS), "US"),
      says: '(optional) Whose eggs, cups and spoons the weights count: "US" (default), "AU", "UK" or "EU".',
    },
  },
  returns: {
    shape: "rows",
    cells: ["weight"],
    says: "One weight per row in the unit of the weights, or the kilocalories. For several parts, the totals side by side.",
  },
  examples: [
    {
      call: [down("egg"), down(50), "water"],
      gives: 38.075,
      origin: "derived",
      source: "USDA SR28 01123: one large egg of 50 g at 76.15 g per 100 g",
    },
    {
      call: [down("flour", "whole egg", "unsalted butter"), down(1000, 500, 500), "fat"],
      gives: down(9.8, 47.55, 405.55),
      origin: "derived",
      source: "USDA SR28 20081, 01123 and 01145: 0.98, 9.51 and 81.11 g per 100 g",
    },
    {
      call: [down("egg", "milk"), down("3 large", "1 cup"), "water", undefined, undefined, "UK"],
      gives: down(137.07, 227.2273),
      origin: "derived",
      source:
        "USDA SR28 01123 and 01211: 180 g of egg (large UK eggs of 60 g, Regulation (EC) 589/2008) at 76.15 %, 250 ml of milk at 244 g per 236.5882 ml and 88.13 %",
      within: 5e-3,
    },
    {
      call: [down("levain", "salt"), down(200, 20), "protein", undefined, down("levain 100%", "salt")],
      gives: down(10.33, 0),
      origin: "derived",
      source: "USDA SR28 20081: the levain's 100 g of flour hold 10.33 g",
    },
    {
      call: [down("flour", "whole egg", "unsalted butter"), down(1000, 500, 500), down("fat", "energy")],
      gives: [[462.9, 7940]],
      origin: "derived",
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
        'BAKE_CONTENT: ingredients row 1 is "levain", which the larder does not know; enter a name it knows, or give the larder a row for it.',
    },
  ],
  compute: ({ ingredients, weights, part, larder, kinds, cups }) => {
    const rows = weighCounted(weights, ingredients, larder, { unit: "g", cups });
    const known = kindsGiven(rows, kinds, ingredients);
    return typeof part === "string"
      ? contents(ingredients, rows, part, larder, known).map((one) => [one])
      : totals(ingredients, rows, part, larder, known);
  },
});
