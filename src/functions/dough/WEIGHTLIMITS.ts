import type { Grams } from "../../../shared/base/units.ts";
import { number, word } from "../../../shared/cells/cell.ts";
import { cell, optional } from "../../../shared/cells/decoder.ts";
import { LABEL_LAWS } from "../../../shared/enrichment/protein.ts";
import { MAX_NOMINAL, MIN_NOMINAL, weightLimits } from "../../../shared/label/weight-limits.ts";
import { define, down } from "../define.ts";

export const WEIGHTLIMITS = define({
  name: "BAKE_WEIGHTLIMITS",
  family: "Dough and mixes",
  summary:
    "Average-weight rule of the EU and the UK: the average to hold, the tolerance, the absolute limit. Check your local rule.",
  args: {
    weight: {
      is: cell(
        number<Grams>(
          "a weight in grams such as 400",
          { min: MIN_NOMINAL, max: MAX_NOMINAL },
          {},
          { measure: "grams" },
        ),
      ),
      says: "The weight on the label, in grams, from 5 to 10000.",
    },
    law: {
      is: optional(word(LABEL_LAWS), "EU"),
      says: '(optional) Whose rule: "EU" (default; Directive 76/211/EEC) or "UK" (its successor, with the same limits).',
    },
  },
  returns: {
    shape: "row",
    cells: ["average", "tolerance limit", "absolute limit"],
    says: "Three cells in grams: the average, at most 1 in 40 below the second, none below the third.",
  },
  rowwise: true,
  examples: [
    {
      call: [400],
      gives: [[400, 388, 376]],
      origin: "published",
      source: "nibusinessinfo, guide for bakers: a 400 g loaf has the limits 388 and 376 g",
    },
    {
      call: [down(400, 800)],
      gives: [
        [400, 388, 376],
        [800, 785, 770],
      ],
      origin: "memory",
      source: "derived from Directive 76/211/EEC (from memory): 15 g from 500 to 1000 g",
    },
  ],
  refusals: [
    {
      call: [400, "US"],
      because:
        'BAKE_WEIGHTLIMITS: law is "US", whose rule is in NIST Handbook 133, table 2-5. The average must reach the label. Ask your weights and measures office.',
    },
    { call: [4], because: "BAKE_WEIGHTLIMITS: weight is 4; it cannot be below 5." },
    {
      call: [down(400, 12000)],
      because: "BAKE_WEIGHTLIMITS: weight row 2 is 12000; it cannot be above 10000.",
    },
  ],
  compute: ({ weight, law }) => {
    const { average, tolerance, absolute } = weightLimits(weight, law);
    return [average, tolerance, absolute];
  },
});
