import type { Weight } from "../../../shared/base/units.ts";
import { word } from "../../../shared/cells/cell.ts";
import { column, optional, optionalColumn } from "../../../shared/cells/decoder.ts";
import { someWeight, weightAboveZero } from "../../../shared/cells/readers.ts";
import { fillIn } from "../../../shared/formula/fill-in.ts";
import { percent } from "../../../shared/formula/percents.ts";
import { kind, kindsOf } from "../../../shared/larder/kinds.ts";
import { define, down } from "../define.ts";

export const FILLIN = define({
  name: "BAKE_FILLIN",
  family: "Formula",
  summary: "Baker's percent and weight of every row, where you typed one or the other.",
  args: {
    percents: {
      is: optionalColumn(percent()),
      says: "The column of percentages of the flour, such as B5:B12, where they are known.",
    },
    weights: {
      is: optionalColumn(someWeight<Weight>()),
      says: "The column of weights, such as C5:C12, where they are known, all in one unit.",
    },
    kinds: {
      is: column(kind()),
      says: "The column that says what each row is: flour, water, salt, yeast, levain 100% and so on.",
    },
    amount: {
      is: optional(weightAboveZero<Weight>(), null),
      says: "(optional) How much dough (or flour) is wanted, in the unit of the weights; the formula is scaled to it.",
    },
    of: {
      is: optional(word({ dough: [], flour: [] }), "dough"),
      says: '(optional) What the amount measures: "dough" (default) or "flour".',
    },
  },
  returns: {
    shape: "rows",
    cells: ["share of all flour", "weight"],
    says: "Two columns: share of all flour, and weight.",
  },
  examples: [
    {
      call: [down("", 0.65), down(1000, ""), down("flour", "water")],
      gives: [
        [1, 1000],
        [0.65, 650],
      ],
      origin: "derived",
      source: "derived: 65 % of 1000 is 650",
    },
    {
      call: [down(1, 0.67, 0.02, 0.01), down("", "", "", ""), down("flour", "water", "salt", "yeast"), 28470],
      gives: [
        [1, 16747.0588],
        [0.67, 11220.5294],
        [0.02, 334.9412],
        [0.01, 167.4706],
      ],
      origin: "published",
      source: "Baker's percentage worksheet, a school hand-out: 73 pieces of 390 g",
      within: 1e-4,
    },
  ],
  refusals: [
    {
      call: [down("", 0.65), down(1000, 700), down("flour", "water")],
      because:
        "BAKE_FILLIN: weights row 2 says two things: 65 % of 1000 is 650, and 700 is typed, 50 apart; clear one of the two.",
    },
    {
      call: [down(1, 0.65), down("", ""), down("flour", "water")],
      because:
        "BAKE_FILLIN: percents give no anchor. Type the weight of one row that has a percentage, such as the flour, or give an amount of dough or flour.",
    },
  ],
  compute: ({ percents, weights, kinds, amount, of }) => {
    const typed = percents.map((one, row) => one ?? weights[row] ?? null);
    const filled = fillIn({ percents, weights, kinds: kindsOf(typed, kinds) }, amount, of);
    return filled.shares.map((share, row) => [share, filled.weights[row] ?? null]);
  },
});
