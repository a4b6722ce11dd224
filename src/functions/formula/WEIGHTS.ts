import type { Weight } from "../../../shared/base/units.ts";
import { word } from "../../../shared/cells/cell.ts";
import { cell, column, optional } from "../../../shared/cells/decoder.ts";
import { someWeight } from "../../../shared/cells/readers.ts";
import { weightsFor } from "../../../shared/formula/formula.ts";
import { percent, readPercents } from "../../../shared/formula/percents.ts";
import { kind, kindsOf, OTHER } from "../../../shared/larder/kinds.ts";
import { define, down } from "../define.ts";

export const WEIGHTS = define({
  name: "BAKE_WEIGHTS",
  family: "Formula",
  summary: "Weights for an amount of dough or flour, from percentages of the flour.",
  args: {
    percents: {
      is: column(percent()),
      says: "The column of percentages of the flour, such as B5:B12; the flours together make 100%.",
    },
    kinds: {
      is: column(kind()),
      says: "The column that says what each row is: flour, water, salt, yeast, levain 100% and so on.",
    },
    amount: { is: cell(someWeight<Weight>()), says: "How much dough (or flour), in the unit you want the weights in." },
    of: {
      is: optional(word({ dough: [], flour: [] }), "dough"),
      says: '(optional) What the amount measures: "dough" (default) or "flour".',
    },
  },
  returns: { shape: "column", says: "One weight per row, in the amount's unit." },
  examples: [
    {
      call: [down(100, 67, 2, 1), down("flour", "water", "salt", "yeast"), 28470],
      gives: down(16747.0588, 11220.5294, 334.9412, 167.4706),
      origin: "published",
      source: "Baker's percentage worksheet, a school hand-out: 73 pieces of 390 g",
      within: 1e-4,
    },
    {
      call: [down(1, 0.65, 0.02, 0.002), down("flour", "water", "salt", "yeast"), 1000, "flour"],
      gives: down(1000, 650, 20, 2),
      origin: "derived",
      source: "Microsoft KB 215203 (percent cells): 65% is stored as 0.65",
    },
    {
      call: [down(100, 65, 2, 0.3), down("flour", "water", "salt", ""), 1673],
      gives: down(1000, 650, 20, 3),
      origin: "derived",
      source: "derived: 1673 of dough at 167.3 %; the weights do not depend on what the malt is",
    },
  ],
  refusals: [
    {
      call: [down(100, 65, 0.3), down("flour", "water", ""), 1000, "flour"],
      because:
        'BAKE_WEIGHTS: kinds row 3 is blank though the row has an amount. Choose one of flour, water, salt, yeast, sugar, fat, egg, dairy, grain, fruit, ice, other, or a preferment with its hydration such as "levain 100%".',
    },
    {
      call: [down(1, 65, 0.02), down("flour", "water", "salt"), 1000],
      because:
        "BAKE_WEIGHTS: percents row 2 is 65, which beside flour of 1 (100%) is 6500 %; enter 65% (0.65). Or type every row plain, the flour as 100.",
    },
    {
      call: [down(95, 65, 2), down("flour", "water", "salt"), 1000],
      because: "BAKE_WEIGHTS: percents have flour rows that add up to 95; all flours together make 100 (or 100%).",
    },
  ],
  compute: ({ percents, kinds, amount, of }) =>
    weightsFor(
      readPercents(percents, kindsOf(percents, kinds, "kinds", undefined, of === "dough" ? OTHER : undefined)),
      amount,
      of,
    ),
});
