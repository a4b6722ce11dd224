import { word } from "../../../shared/cells/cell.ts";
import { cell } from "../../../shared/cells/decoder.ts";
import { TIN_DOUGH_KINDS, tinGuide } from "../../../shared/tins/tin-guide.ts";
import { define } from "../define.ts";

export const TINGUIDE = define({
  name: "BAKE_TINGUIDE",
  family: "Tins",
  summary: "Dough per cubic centimetre of tin that is low, usual and high for a kind of dough, in g/cm³.",
  args: {
    dough_kind: {
      is: cell(word(TIN_DOUGH_KINDS)),
      says: "lidded white, white, white wholesale, half wholemeal, wholemeal, rye and wheat, rye, enriched, layer cake, pound cake, muffin, sponge, ring cake (ring or tube tin), brownie.",
    },
  },
  returns: { shape: "row", cells: ["low", "usual", "high"], says: "Three cells, g of dough per cm³ of true capacity." },
  examples: [
    {
      call: ["lidded white"],
      gives: [[0.3, 0.34, 0.37]],
      origin: "own",
      source: "our bounds for it",
    },
    {
      call: ["lidded white"],
      gives: [[0.305, 0.342, 0.366]],
      origin: "published",
      source:
        "tutti-sandwiches.fr: 830 g in 27 × 10 × 9 cm (0.342); toolntricks.com: 5 to 6 g per cubic inch (0.305 to 0.366)",
      within: 0.006,
    },
  ],
  refusals: [
    {
      call: ["gluten free"],
      because:
        'BAKE_TINGUIDE: dough_kind is "gluten free"; choose "lidded white", "white", "white wholesale", "half wholemeal", "wholemeal", "rye and wheat", "rye", "enriched", "layer cake", "pound cake", "muffin", "sponge", "ring cake" or "brownie".',
    },
  ],
  compute: ({ dough_kind }) => [...tinGuide(dough_kind)],
});
