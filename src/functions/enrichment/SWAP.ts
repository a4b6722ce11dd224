import type { Weight } from "../../../shared/base/units.ts";
import { text, word } from "../../../shared/cells/cell.ts";
import { cell } from "../../../shared/cells/decoder.ts";
import { someWeight } from "../../../shared/cells/readers.ts";
import { KEPT, swap } from "../../../shared/enrichment/enrichment.ts";
import { larder } from "../../../shared/larder/larder.ts";
import { define } from "../define.ts";

export const SWAP = define({
  name: "BAKE_SWAP",
  family: "Enrichment and flour",
  summary:
    "Replaces one ingredient with another, keeping solids, water, fat or sugar the same. Check the allergens of the new ingredient.",
  args: {
    weight: { is: cell(someWeight<Weight>()), says: "The weight of what is taken out, in any unit." },
    from: { is: cell(text()), says: "What is taken out, such as skim milk." },
    to: { is: cell(text()), says: "What goes in instead, such as nonfat dry milk." },
    keep: { is: cell(word(KEPT)), says: 'What stays the same: "solids", "water", "fat" or "sugar".' },
    larder: { is: larder(true), says: "(optional) The shop's ingredient table; USDA SR28 figures stand in for it." },
  },
  returns: {
    shape: "row",
    cells: ["weight", "water"],
    says: "Two cells: the weight that goes in, and plain water to add (below 0: to take off).",
  },
  examples: [
    {
      call: [1000, "skim milk", "nonfat dry milk", "solids"],
      gives: [[90, 910]],
      origin: "published",
      source: "Gisslen, Professional Baking: 1 kg of skim milk is 910 g of water and 90 g of nonfat dry milk, rounded",
      within: 5,
    },
    {
      call: [100, "sugar", "honey", "sugar"],
      gives: [[121.53, -20.76]],
      origin: "derived",
      source: "USDA SR28 19335 and 19296: 99.80 g of sugars over 82.12 per 100 g, and the honey's 17.10 g of water",
      within: 5e-3,
    },
  ],
  refusals: [
    {
      call: [100, "sugar", "butter", "sugar"],
      because: 'BAKE_SWAP: to is "butter", which has 0.06 % sugar; keep something that both have.',
    },
    {
      call: [100, "sugar", "hony", "sugar"],
      because:
        'BAKE_SWAP: to is "hony", which the larder does not know; perhaps "honey"? Enter a name it knows, or give the larder a row for it.',
    },
  ],
  compute: ({ weight, from, to, keep, larder }) => {
    const swapped = swap(weight, from, to, keep, larder);
    return [swapped.weight, swapped.water];
  },
});
