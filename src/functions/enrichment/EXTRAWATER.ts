import type { Weight } from "../../../shared/base/units.ts";
import { text } from "../../../shared/cells/cell.ts";
import { column, optionalColumn } from "../../../shared/cells/decoder.ts";
import { someWeight } from "../../../shared/cells/readers.ts";
import { kindsGiven } from "../../../shared/enrichment/enrichment.ts";
import { extraWaters } from "../../../shared/enrichment/extra-water.ts";
import { kind } from "../../../shared/larder/kinds.ts";
import { larder } from "../../../shared/larder/larder.ts";
import { define, down } from "../define.ts";

export const EXTRAWATER = define({
  name: "BAKE_EXTRAWATER",
  family: "Enrichment and flour",
  summary: "The extra water that dry additions such as milk powder, gluten or bran ask for, row by row.",
  args: {
    ingredients: { is: column(text()), says: "The column of ingredients' names, such as A5:A12." },
    weights: { is: column(someWeight<Weight>()), says: "The column of weights, such as C5:C12, all in one unit." },
    larder: {
      is: larder(true),
      says: '(optional) The shop\'s ingredient table; its column "extra water" (g per g) goes before the built-in figures.',
    },
    kinds: {
      is: optionalColumn(kind()),
      says: "(optional) What each row is; flour, water, salt, fat, sugar and starter rows then need no larder row.",
    },
  },
  returns: {
    shape: "rows",
    cells: ["extra water", "remark"],
    says: "Two columns: extra water, and a note where the figure is rough or there is none.",
  },
  examples: [
    {
      call: [down("flour", "nonfat dry milk"), down(100, 6)],
      gives: [
        [0, ""],
        [3.5, ""],
      ],
      origin: "published",
      source: "J. Dairy Sci. 34:1092 (1951): 3.5 parts of water for 6 of low-heat dry milk on 100 of flour",
      within: 0.05,
    },
    {
      call: [down("flour", "vital wheat gluten", "rolled oats"), down(1000, 20, 50)],
      gives: [
        [0, ""],
        [30, ""],
        ["", "no figure"],
      ],
      origin: "derived",
      source: "a pizza trade forum's rule and the Baker's Dictionary: 1.5 times the gluten's weight",
    },
    {
      call: [down("wheat bran"), down(100)],
      gives: [[95, 'rough figure, 0.95 g per g: try it, and enter your own under "extra water" in the larder']],
      origin: "memory",
      source: "from memory, low confidence: bran takes 0.7 to 1.2 times its weight beyond the flour's own",
    },
  ],
  refusals: [
    {
      call: [down("flour", "milc powdr"), down(100, 6)],
      because:
        'BAKE_EXTRAWATER: ingredients row 2 is "milc powdr", which the larder does not know; perhaps "milk powder" or "malt powder"? Enter a name it knows, or give the larder a row for it.',
    },
  ],
  compute: ({ ingredients, weights, larder, kinds }) =>
    extraWaters(ingredients, weights, larder, kindsGiven(weights, kinds, ingredients)).map(({ water, remark }) => [
      water,
      remark,
    ]),
});
