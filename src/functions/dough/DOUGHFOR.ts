import { doughFor } from "../../../shared/base/scaling.ts";
import { ratio, type Weight } from "../../../shared/base/units.ts";
import { cell, optional } from "../../../shared/cells/decoder.ts";
import { count, share, someWeight } from "../../../shared/cells/readers.ts";
import { define, down } from "../define.ts";

export const DOUGHFOR = define({
  name: "BAKE_DOUGHFOR",
  family: "Dough and mixes",
  summary: "Dough to mix for a number of pieces, with bake loss and handling loss.",
  args: {
    pieces: { is: cell(count<number>()), says: "How many pieces." },
    weight: {
      is: cell(someWeight<Weight>()),
      says: "Baked weight of one piece (its scaling weight if there is no bake loss), in any unit.",
    },
    bake_loss: {
      is: optional(share(0.5), ratio(0)),
      says: "(optional) Weight lost in oven and cooling, as a share of the dough, such as 12%.",
    },
    handling_loss: {
      is: optional(share(0.3), ratio(0)),
      says: "(optional) Handling loss: dough left in the bowl and on the bench, as a share, such as 2%.",
    },
  },
  returns: { shape: "cell", says: "The dough, in the weight's unit." },
  rowwise: true,
  examples: [
    {
      call: [1, 400, 0.12],
      gives: 454.545,
      origin: "derived",
      source: "derived: 400 ÷ 0.88, not 400 × 1.12",
      within: 5e-4,
    },
    {
      call: [down(17, 24), 500, 0, 150 / 8500],
      gives: down(8652.7, 12215.6),
      origin: "derived",
      source: "The Fresh Loaf node/23963: 17 loaves of 500 g ended 150 g short; 24 likewise",
      within: 0.05,
    },
  ],
  refusals: [
    { call: [17, 500, 12], because: "BAKE_DOUGHFOR: bake_loss is 12, which is 1200 %; enter 12% or 0.12." },
    {
      call: [down(17, 24), down(500, "abc")],
      because: 'BAKE_DOUGHFOR: weight row 2 is "abc", which is not a number; enter a weight such as 350.',
    },
  ],
  compute: ({ pieces, weight, bake_loss, handling_loss }) => doughFor(pieces, weight, bake_loss, handling_loss),
});
