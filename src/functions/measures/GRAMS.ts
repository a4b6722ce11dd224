import { type Fault, fault, refuseAll } from "../../../shared/base/refusal.ts";
import { quote } from "../../../shared/base/show.ts";
import { CUP_SYSTEMS } from "../../../shared/base/volumes.ts";
import { text, word } from "../../../shared/cells/cell.ts";
import { column, optional, optionalColumn } from "../../../shared/cells/decoder.ts";
import { larder } from "../../../shared/larder/larder.ts";
import { lineWeigher } from "../../../shared/recipe/grams.ts";
import { define, down } from "../define.ts";

export const GRAMS = define({
  name: "BAKE_GRAMS",
  family: "Measures",
  summary:
    "Grams of every line of a recipe text: cups, spoons, ounces, eggs, sticks, sachets; a range counts as its middle.",
  args: {
    lines: { is: column(text()), says: 'The lines of the recipe, such as "2 1/4 cups flour" or "1 lb 4 oz butter".' },
    ingredients: {
      is: optionalColumn(text()),
      says: "(optional) The ingredient of each line, where the line does not name it.",
    },
    cups: {
      is: optional(word(CUP_SYSTEMS), "US"),
      says: '(optional) Whose cups, spoons and eggs: "US" (default), "AU", "UK" or "EU".',
    },
    larder: { is: larder(true), says: "(optional) The larder, with the shop's own measures." },
  },
  returns: { shape: "column", says: "One column of grams; a line without an amount stays blank." },
  examples: [
    {
      call: [
        down("2 cups all-purpose flour", "1 tsp salt", "salt to taste", "2 (8 oz) packages cream cheese, softened"),
      ],
      gives: down(250, 6, "", 453.59237),
      origin: "derived",
      source: "USDA SR28: flour 125 g a cup, salt 6 g a teaspoon; 16 oz (NIST SP 811)",
    },
    {
      call: [down("6 cups (27 oz) flour", "2 1/4 tsp (.56 oz) salt", "2 1/4 cups plus 2 tablespoons to 3 cups water")],
      gives: down(765.43712, 15.87573, 635.83),
      origin: "derived",
      source: "The Fresh Loaf node/3236: a weight in brackets wins, a range gives its middle",
      within: 0.01,
    },
  ],
  refusals: [
    {
      call: [down("2 cups flour", "a handful of raisins")],
      because: 'BAKE_GRAMS: lines row 2 is "a handful of raisins": "handful" has no weight; enter grams, or a measure.',
    },
    {
      call: ["1 tsp kosher salt"],
      because:
        'BAKE_GRAMS: lines row 1 is "1 tsp kosher salt": a tsp of it weighs 2.8 g to 5 g from one brand to the next. Weigh it, or say which.',
    },
  ],
  compute: ({ lines, ingredients, cups, larder }) => {
    const faults: Fault[] = [];
    const weigh = lineWeigher(cups, larder);
    const weights = lines.map((line, row) => {
      if (line === null) return null;
      const one = weigh(line, ingredients[row] ?? null);
      if (one.is === "blank") return null;
      const says = one.is === "unclear" ? one.says : one.unsure;
      if (says !== undefined) faults.push(fault(`is ${quote(line)}: ${says}`, "lines", row + 1));
      return one.is === "unclear" ? null : (one.least + one.most) / 2;
    });
    refuseAll(faults);
    return weights;
  },
});
