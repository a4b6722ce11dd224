import { text, word } from "../../../shared/cells/cell.ts";
import { cell, column, optionalColumn } from "../../../shared/cells/decoder.ts";
import { LABEL_LAWS } from "../../../shared/enrichment/protein.ts";
import { allergenTable } from "../../../shared/label/allergen-table.ts";
import { define, down } from "../define.ts";

export const ALLERGENTABLE = define({
  name: "BAKE_ALLERGENTABLE",
  family: "Planning and label",
  summary:
    "Allergens of several products, a column for each group. Blank is not known; cross-contact is not assessed. Check local law.",
  args: {
    allergens: {
      is: column(text()),
      says: "What BAKE_ALLERGENS answered for each product; blank where it is not known.",
    },
    law: { is: cell(word(LABEL_LAWS)), says: '"EU" or "UK" (14 groups), or "US" (9).' },
    last_print: {
      is: optionalColumn(text()),
      says: "(optional) The same column as it was when the table was last printed: changes are marked.",
    },
  },
  returns: {
    shape: "rows",
    cells: ["a column for each group in the law's order", "what the law does not list"],
    says: "A row for each product: the species, yes, or a dash where none is among the ingredients as entered.",
  },
  examples: [
    {
      call: [
        down("milk, eggs, wheat", "", "fish (cod), tree nuts (almonds)"),
        "US",
        down("milk, wheat", "milk", "tree nuts (almonds, pecans), peanuts"),
      ],
      gives: [
        ["yes", "NEW: yes", "–", "–", "–", "–", "yes", "–", "–", ""],
        ["", "", "", "", "", "", "", "", "", ""],
        ["–", "–", "NEW: cod", "–", "CHANGED: almonds", "GONE: yes", "–", "–", "–", ""],
      ],
      origin: "derived",
      source:
        "derived, in the order of the FDA's list of nine: milk, eggs, fish, crustacean shellfish, tree nuts, peanuts, wheat, soybeans, sesame",
    },
  ],
  refusals: [
    {
      call: [down("milk"), "France"],
      because: 'BAKE_ALLERGENTABLE: law is "France"; choose "US", "EU" or "UK".',
    },
  ],
  compute: ({ allergens, law, last_print }) => allergenTable(allergens, law, last_print),
});
