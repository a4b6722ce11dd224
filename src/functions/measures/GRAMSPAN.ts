import { CUP_SYSTEMS } from "../../../shared/base/volumes.ts";
import { text, word } from "../../../shared/cells/cell.ts";
import { column, optional, optionalColumn } from "../../../shared/cells/decoder.ts";
import { larder } from "../../../shared/larder/larder.ts";
import { lineWeigher } from "../../../shared/recipe/grams.ts";
import { define, down } from "../define.ts";

export const GRAMSPAN = define({
  name: "BAKE_GRAMSPAN",
  family: "Measures",
  summary: "Lowest and highest grams for every line of a recipe, with a note where a line is unclear.",
  args: {
    lines: { is: column(text()), says: 'The lines of the recipe, such as "2 to 3 tbsp water".' },
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
  returns: {
    shape: "rows",
    cells: ["least", "most", "remark"],
    says: "Three columns: least and most grams, and a note, blank where there is nothing to say.",
  },
  examples: [
    {
      call: [down("2 1/4 cups plus 2 tablespoons to 3 cups water", "1 tsp kosher salt", "salt to taste")],
      gives: [
        [561.9, 709.8, ""],
        [2.8, 5, "A tsp of it weighs 2.8 g to 5 g from one brand to the next. Weigh it, or say which."],
        ["", "", "No amount."],
      ],
      origin: "derived",
      source: "The Fresh Loaf node/3236; kosher salt 2.8 to 5 g a teaspoon, three agreeing cooking pages",
      within: 0.1,
    },
    {
      call: ["2 oz (2.33 tbsp) salt"],
      gives: [[56.69904625, 56.69904625, "56.7 g is taken, 41.9 g stands beside it, 35 % apart."]],
      origin: "derived",
      source: "US Army recipe card with rounded weights: 2.33 tbsp of salt are 42 g by USDA SR28",
    },
  ],
  refusals: [
    {
      call: ["2 cups flour", "", "cups"],
      because: 'BAKE_GRAMSPAN: cups is "cups"; choose "US", "AU", "UK" or "EU".',
    },
  ],
  compute: ({ lines, ingredients, cups, larder }) => {
    const weigh = lineWeigher(cups, larder);
    return lines.map((line, row) => {
      if (line === null) return [null, null, null];
      const one = weigh(line, ingredients[row] ?? null);
      if (one.is !== "weighed") return [null, null, sentence([one.says])];
      const notes = one.remarks.map(({ says }) => says);
      const remarks = one.unsure === undefined ? notes : [one.unsure, ...notes];
      return [one.least, one.most, sentence(remarks)];
    });
  },
});

function sentence(clauses: readonly string[]): string | null {
  if (clauses.length === 0) return null;
  const message = clauses.length === 1 ? (clauses[0] ?? "") : clauses.join("; ");
  const stop = ".?!".includes(message.charAt(message.length - 1)) ? "" : ".";
  return message.charAt(0).toUpperCase() + message.slice(1) + stop;
}
