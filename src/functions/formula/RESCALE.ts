import { rescale } from "../../../shared/base/scaling.ts";
import type { Weight } from "../../../shared/base/units.ts";
import { cell, column, optionalList } from "../../../shared/cells/decoder.ts";
import { someWeight } from "../../../shared/cells/readers.ts";
import { sum } from "../../../shared/formula/formula.ts";
import { define, down } from "../define.ts";

/** What is wanted and what there is now are in one unit, whatever the weights are in: pieces, say. */
const comparedWithFrom = () => someWeight<Weight>("from");

export const RESCALE = define({
  name: "BAKE_RESCALE",
  family: "Formula",
  summary:
    "Every weight multiplied by target ÷ from: for a new batch size, flour, tin, or an ingredient that is short.",
  args: {
    weights: { is: column(someWeight<Weight>()), says: "The column of weights, such as C5:C12, all in one unit." },
    target: {
      is: cell(comparedWithFrom()),
      says: "What you want: a new sum of the weights, or a new figure of what from holds.",
    },
    from: {
      is: optionalList(comparedWithFrom()),
      says: "(optional) The present value: one cell, or several that are added up. If left out, the total of the weights.",
    },
  },
  returns: { shape: "column", says: "One weight per row." },
  examples: [
    {
      call: [down(10, 6, 2), 4, 2],
      gives: down(20, 12, 4),
      origin: "derived",
      source: "derived: 4 kg of butter in stock where the formula takes 2",
    },
    {
      call: [down(400, 300), 75, 48],
      gives: down(625, 468.75),
      origin: "derived",
      source:
        "cocoandme.com, cake pan sizes: 10 × 3 inches from 8 × 2, (25 × 3) ÷ (16 × 2) = 2.344 times; here 75 from 48",
    },
    {
      call: [down("1 kg", "1 lb 6 oz"), 96, 48],
      gives: down(2000, 1247.3790175),
      origin: "derived",
      source: "NIST SP 811: 22 oz of 28.349523125 g; twice as many pieces, in grams",
    },
  ],
  refusals: [
    {
      call: [down("1 kg", 600), "2 kg"],
      because:
        'BAKE_RESCALE: weights row 2 is 600 without a unit beside weights that carry theirs. Enter its unit too, such as "600 g" if it is grams.',
    },
    { call: [down(10, 6), 5, 0], because: "BAKE_RESCALE: from adds up to 0, and nothing can be scaled from 0." },
    { call: [down(10, 6), ""], because: "BAKE_RESCALE: target is blank; enter a weight such as 350." },
  ],
  compute: ({ weights, target, from }) =>
    from.length > 0 ? rescale(weights, target, sum(from), "from") : rescale(weights, target, sum(weights), "weights"),
});
