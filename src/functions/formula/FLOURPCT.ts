import type { Weight } from "../../../shared/base/units.ts";
import { column } from "../../../shared/cells/decoder.ts";
import { someWeight } from "../../../shared/cells/readers.ts";
import { flourShares } from "../../../shared/formula/formula.ts";
import { kind, kindsOf } from "../../../shared/larder/kinds.ts";
import { define, down } from "../define.ts";

export const FLOURPCT = define({
  name: "BAKE_FLOURPCT",
  family: "Formula",
  summary: "Baker's percent of each weight: its share of all flour, including the flour in starters.",
  args: {
    weights: { is: column(someWeight<Weight>()), says: "The column of weights, such as C5:C12, all in one unit." },
    kinds: {
      is: column(kind()),
      says: "The column that says what each row is: flour, water, salt, yeast, levain 100% and so on.",
    },
  },
  returns: { shape: "column", says: "One share per row; format the cells as percent." },
  examples: [
    {
      call: [down(500, 250, 250, 700, 10, 20), down("flour", "flour", "flour", "water", "yeast", "salt")],
      gives: down(0.5, 0.25, 0.25, 0.7, 0.01, 0.02),
      origin: "published",
      source: "Wild Yeast blog, baker's percentage tutorial part 1, exercise 3",
    },
    {
      call: [down(900, 100, 200, 750, 20), down("flour", "flour", "levain 100%", "water", "salt")],
      gives: down(0.8181818, 0.0909091, 0.1818182, 0.6818182, 0.0181818),
      origin: "derived",
      source: "The Fresh Loaf node/42177: all flour is 1100, so that 20 of salt is 1.82 %",
      within: 1e-7,
    },
  ],
  refusals: [
    {
      call: [down(700, 20), down("water", "salt")],
      because:
        "BAKE_FLOURPCT: weights hold no flour; a baker's percentage needs a flour row (or a preferment) with a weight above 0.",
    },
    {
      call: [down(900, 200), down("flour", "levain")],
      because:
        'BAKE_FLOURPCT: kinds row 2 is "levain" without its hydration; add its water as a share of its flour, such as "levain 100%".',
    },
  ],
  compute: ({ weights, kinds }) => flourShares(weights, kindsOf(weights, kinds)),
});
