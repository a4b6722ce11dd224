import type { Weight } from "../../../shared/base/units.ts";
import { word } from "../../../shared/cells/cell.ts";
import { cell, optional } from "../../../shared/cells/decoder.ts";
import { share, someWeight } from "../../../shared/cells/readers.ts";
import { GLUTEN_MODES, GLUTEN_PROTEIN, glutenFor } from "../../../shared/enrichment/protein.ts";
import { define } from "../define.ts";

export const GLUTENADD = define({
  name: "BAKE_GLUTENADD",
  family: "Enrichment and flour",
  summary:
    "Vital wheat gluten needed to raise a flour to a given protein, and the extra water. Gluten is wheat: an allergen.",
  args: {
    flour: { is: cell(someWeight<Weight>()), says: "The flour, in any unit; with replace, flour and gluten together." },
    protein_now: { is: cell(share(1)), says: "The flour's protein, such as 10.3%." },
    protein_wanted: { is: cell(share(1)), says: "The protein wanted, on the same moisture basis." },
    gluten_protein: {
      is: optional(share(1), GLUTEN_PROTEIN),
      says: "(optional) The gluten's protein; 75.16% when left out.",
    },
    mode: {
      is: optional(word(GLUTEN_MODES), "on top"),
      says: '(optional) "on top" of the flour (default), or to "replace" as much flour.',
    },
  },
  returns: {
    shape: "row",
    cells: ["gluten", "flour", "extra water"],
    says: "Three cells: gluten, flour, and the water to add.",
  },
  rowwise: true,
  examples: [
    {
      call: [500, 0.127, 0.14, 0.75, "replace"],
      gives: [[10.4334, 489.5666, 9.39]],
      origin: "derived",
      source: "a question on a baking forum: 500 × 1.3 ÷ 62.3; water 1.5 × gluten less 0.6 × the flour taken out",
      within: 5e-4,
    },
    {
      call: [500, 0.127, 0.14, 0.75],
      gives: [[10.6557, 500, 15.9836]],
      origin: "derived",
      source: "a question on a baking forum: 500 × 1.3 ÷ 61; water 1.5 × gluten",
      within: 5e-5,
    },
    {
      call: [1000, 0.1033, 0.125],
      gives: [[34.631, 1000, 51.9466]],
      origin: "derived",
      source: "derived on USDA SR28 20081 and 48052: 1000 × 2.17 ÷ 62.66",
      within: 1e-3,
    },
  ],
  refusals: [
    {
      call: [1000, 0.127, 0.1],
      because:
        "BAKE_GLUTENADD: protein_wanted is 10 %; gluten can bring this flour to more than its 12.7 % and less than the gluten's own 75.16 %.",
    },
    {
      call: [1000, 12.7, 0.14],
      because: "BAKE_GLUTENADD: protein_now is 12.7, which is 1270 %; enter 12.7% or 0.127.",
    },
  ],
  compute: ({ flour, protein_now, protein_wanted, gluten_protein, mode }) => {
    const mixed = glutenFor(flour, protein_now, protein_wanted, gluten_protein, mode);
    return [mixed.gluten, mixed.flour, mixed.water];
  },
});
