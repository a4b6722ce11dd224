import type { Weight } from "../../../shared/base/units.ts";
import { column } from "../../../shared/cells/decoder.ts";
import { someWeight } from "../../../shared/cells/readers.ts";
import { wholeShares } from "../../../shared/formula/formula.ts";
import { define, down } from "../define.ts";

export const TRUEPCT = define({
  name: "BAKE_TRUEPCT",
  family: "Formula",
  summary: "Each weight as a percentage of the total (% of total, true percent).",
  args: {
    weights: { is: column(someWeight<Weight>()), says: "The column of weights, such as C5:C12, all in one unit." },
  },
  returns: { shape: "column", says: "One share per row; together they make 100 %." },
  examples: [
    {
      call: [down(100, 60, 1, 2, 1)],
      gives: down(0.60976, 0.36585, 0.0061, 0.0122, 0.0061),
      origin: "derived",
      source: "Wikipedia, Baker percentage: the sample formula, 164 in all",
      within: 5e-6,
    },
  ],
  refusals: [
    {
      call: [down(0, 0)],
      because: "BAKE_TRUEPCT: weights add up to 0; a percentage of the total needs a weight above 0.",
    },
    {
      call: [down(500, -20)],
      because: "BAKE_TRUEPCT: weights row 2 is -20; it cannot be below 0.",
    },
  ],
  compute: ({ weights }) => wholeShares(weights),
});
