import { text, word } from "../../../shared/cells/cell.ts";
import { cell, column, optional } from "../../../shared/cells/decoder.ts";
import { LABEL_LAWS } from "../../../shared/enrichment/protein.ts";
import { allergenChange } from "../../../shared/label/allergen-changes.ts";
import { declareAllergens } from "../../../shared/label/allergens.ts";
import { OWN_FORMULAS, ownFormulas } from "../../../shared/label/own-formulas.ts";
import { larder } from "../../../shared/larder/larder.ts";
import { define, down } from "../define.ts";

export const ALLERGENS = define({
  name: "BAKE_ALLERGENS",
  family: "Planning and label",
  summary:
    "Allergens in the ingredients as entered. Cross-contact is not assessed. Check against your supplier's specification and local law.",
  args: {
    ingredients: { is: column(text()), says: "The column of ingredients' names, such as A5:A12." },
    larder: {
      is: larder(false),
      says: 'The larder; its column allergens names species ("wheat; milk"), with none where it was checked.',
    },
    law: { is: cell(word(LABEL_LAWS)), says: '"EU" or "UK" (14 groups), or "US" (9).' },
    last_version: {
      is: optional(text(), null),
      says: "(optional) What this function answered for the label in use; two more cells then say what came and what went.",
    },
    formulas: { is: ownFormulas, says: OWN_FORMULAS },
  },
  returns: {
    shape: "row",
    cells: ["allergens", "came", "went"],
    says: "One cell: the groups in the law's order, species in brackets. What is not on this law's list follows. With a last version three cells.",
  },
  examples: [
    {
      call: [
        down("almond paste", "rye flour", "flour"),
        [
          ["ingredient", "allergens"],
          ["flour", "wheat"],
          ["rye flour", "rye"],
          ["almond paste", "almonds; milk"],
        ],
        "EU",
      ],
      gives: "cereals containing gluten (wheat, rye), milk, nuts (almonds)",
      origin: "derived",
      source: "Regulation (EU) 1169/2011, annex II",
    },
    {
      call: [
        down("raisins"),
        [
          ["ingredient", "allergens"],
          ["raisins", "sulphites 10.0 mg/kg"],
        ],
        "EU",
      ],
      gives: "no declarable allergens in the ingredients as entered; cross-contact is not assessed",
      origin: "derived",
      source: "Regulation (EU) 1169/2011, annex II, 12: more than 10 mg/kg",
    },
    {
      call: [
        down("pasta flour", "coconut"),
        [
          ["ingredient", "allergens"],
          ["pasta flour", "durum"],
          ["coconut", "coconut"],
        ],
        "US",
      ],
      gives: "wheat; not on the US list since January 2025: coconut",
      origin: "memory",
      source: "from memory: FDA guidance on food allergens, edition 5 (January 2025)",
    },
    {
      call: [
        down("flour", "shrimp paste", "cod"),
        [
          ["ingredient", "allergens"],
          ["flour", "wheat"],
          ["shrimp paste", "shrimps"],
          ["cod", "fish (cod)"],
        ],
        "UK",
        "cereals containing gluten (wheat), crustaceans (shrimps), milk",
      ],
      gives: [["cereals containing gluten (wheat), crustaceans (shrimps), fish (cod)", "fish (cod)", "milk"]],
      origin: "derived",
      source: "derived: whole names, so that fish beside shrimps is told",
    },
  ],
  refusals: [
    {
      call: [
        down("flour"),
        [
          ["ingredient", "allergens"],
          ["flour", "gluten"],
        ],
        "US",
      ],
      because:
        'BAKE_ALLERGENS: larder row 2 column "allergens" holds "gluten"; name the cereal: "wheat", "rye", "barley" or "oats".',
    },
    {
      call: [
        down("egg"),
        [
          ["ingredient", "allergens"],
          ["egg", ""],
        ],
        "UK",
      ],
      because:
        'BAKE_ALLERGENS: ingredients row 1 is "egg", whose allergens are not known; fill "allergens" in its larder row, "none" where checked.',
    },
  ],
  compute: ({ ingredients, larder, law, last_version, formulas }) => {
    const declared = declareAllergens(ingredients, { larder, formulas }, law);
    if (last_version === null) return [declared];
    const { came, gone } = allergenChange(last_version, declared, law);
    return [declared, came, gone];
  },
});
