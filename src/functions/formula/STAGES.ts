import { type Weight, weight } from "../../../shared/base/units.ts";
import { cell, column, either, optional } from "../../../shared/cells/decoder.ts";
import { hydration, share, someWeight } from "../../../shared/cells/readers.ts";
import { stages } from "../../../shared/formula/stages.ts";
import { kind, kindsOf } from "../../../shared/larder/kinds.ts";
import { define, down } from "../define.ts";

const POOLISH = ["flour", "water", "salt", "yeast"] as const;

export const STAGES = define({
  name: "BAKE_STAGES",
  family: "Formula",
  summary: "Splits a formula into a preferment and a final mix that together make it up, including any starter.",
  args: {
    weights: {
      is: column(someWeight<Weight>()),
      says: "The column of weights of the whole formula, such as C5:C12, all in one unit.",
    },
    kinds: {
      is: column(kind()),
      says: "The column that says what each row is: flour, water, salt, yeast and so on, no starter.",
    },
    share: {
      is: either(share(1)),
      says: "Prefermented flour, as a share of all flour, such as 30%, or a column with each row's part.",
    },
    hydration: { is: cell(hydration()), says: "Water over flour in the preferment, its seed included, such as 100%." },
    seed: {
      is: optional(someWeight<Weight>(), weight(0)),
      says: "(optional) Weight of ripe starter that goes in. Its flour and water are inside the weights.",
    },
    seed_hydration: {
      is: optional(hydration(), null),
      says: "(optional) Water over flour in the seed; the preferment's when left out.",
    },
  },
  returns: {
    shape: "rows",
    cells: ["preferment", "final mix"],
    says: "Two columns: preferment, and final mix; with the seed's part they make up every row.",
  },
  examples: [
    {
      call: [down(10, 6.7, 0.2, 0.11), down(...POOLISH), down(0.33, "", "", 0.007 / 0.11), 1],
      gives: [
        [3.3, 6.7],
        [3.3, 3.4],
        [0, 0.2],
        [0.007, 0.103],
      ],
      origin: "published",
      source: "King Arthur professional formulas, French bread with poolish",
    },
    {
      call: [down(1000, 700), down("flour", "water"), 0.2, 1, 40],
      gives: [
        [180, 800],
        [180, 500],
      ],
      origin: "derived",
      source: "derived: levain of 200 and 200, of which the seed brings 20 and 20",
    },
  ],
  refusals: [
    {
      call: [down(1000, 450), down("flour", "water"), 0.4, 1.25],
      because:
        "BAKE_STAGES: hydration is 125 %, which takes 500 of water, and the water rows hold 450. Preferment less flour, or at a lower hydration.",
    },
    {
      call: [down(1000, 650), down("flour", "dairy"), 0.3, 1],
      because:
        "BAKE_STAGES: kinds have milk as the only liquid. It is only partly water, and it spoils while a preferment stands. Enter part of it as water and milk powder.",
    },
    {
      call: [down(900, 700, 200), down("flour", "water", "levain 100%"), 0.2, 1],
      because:
        "BAKE_STAGES: kinds row 3 is a preferment. Enter its flour and water in rows of their own, and a ripe starter as the seed.",
    },
    {
      call: [down(1000, 700), down("flour", "water"), down(0.2, 0.2), 1],
      because: "BAKE_STAGES: share row 2 is 20 % beside water; leave it blank, the water follows from the hydration.",
    },
  ],
  compute: ({ weights, kinds, share, hydration, seed, seed_hydration }) =>
    stages(weights, kindsOf(weights, kinds), share, hydration, {
      weight: seed,
      hydration: seed_hydration ?? hydration,
    }).map((row) => (row === null ? [null, null] : [row.preferment, row.finalMix])),
});
