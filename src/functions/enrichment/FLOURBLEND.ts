import type { Weight } from "../../../shared/base/units.ts";
import { cell } from "../../../shared/cells/decoder.ts";
import { share, someWeight } from "../../../shared/cells/readers.ts";
import { flourBlend } from "../../../shared/enrichment/protein.ts";
import { define } from "../define.ts";

export const FLOURBLEND = define({
  name: "BAKE_FLOURBLEND",
  family: "Enrichment and flour",
  summary: "Two flours that together weigh a total and have the protein wanted.",
  args: {
    protein_a: { is: cell(share(1)), says: "Protein of the first flour, such as 13%." },
    protein_b: { is: cell(share(1)), says: "Protein of the second flour, on the same moisture." },
    wanted: { is: cell(share(1)), says: "Protein of the blend, between the two." },
    total: { is: cell(someWeight<Weight>()), says: "The weight of the blend, in any unit." },
  },
  returns: { shape: "row", cells: ["first flour", "second flour"], says: "Two cells: the first and the second flour." },
  examples: [
    {
      call: [0.1307, 0.082, 0.11, 1000],
      gives: [[574.95, 425.05]],
      origin: "derived",
      source: "derived on USDA SR28 20640 and 20084: 2.80 ÷ 4.87 of the total",
      within: 5e-3,
    },
  ],
  refusals: [
    {
      call: [0.13, 0.08, 0.14, 1000],
      because: "BAKE_FLOURBLEND: wanted is 14 %; a blend lies between its flours, 8 % and 13 %.",
    },
    {
      call: [0.12, 0.12, 0.12, 1000],
      because:
        "BAKE_FLOURBLEND: protein_b is 12 %, the same as the other flour; two flours of different protein are needed.",
    },
  ],
  compute: ({ protein_a, protein_b, wanted, total }) => {
    const blend = flourBlend(protein_a, protein_b, wanted, total);
    return [blend.a, blend.b];
  },
});
