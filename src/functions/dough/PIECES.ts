import { wholePieces } from "../../../shared/base/scaling.ts";
import { ratio, type Weight } from "../../../shared/base/units.ts";
import { cell, optional } from "../../../shared/cells/decoder.ts";
import { share, someWeight, weightAboveZero } from "../../../shared/cells/readers.ts";
import { define, down } from "../define.ts";

export const PIECES = define({
  name: "BAKE_PIECES",
  family: "Dough and mixes",
  summary: "How many whole pieces a dough makes, and the dough left over.",
  args: {
    dough: { is: cell(someWeight<Weight>()), says: "All the dough as mixed, in any unit." },
    weight: { is: cell(weightAboveZero<Weight>()), says: "The scaling weight of a piece, in the same unit." },
    handling_loss: {
      is: optional(share(0.3), ratio(0)),
      says: "(optional) Handling loss: dough left in the bowl and on the bench, as a share, such as 2%.",
    },
  },
  returns: {
    shape: "row",
    cells: ["pieces", "left over"],
    says: "Two cells: whole pieces, and the dough left over after them and the loss.",
  },
  rowwise: true,
  examples: [
    {
      call: [243, 28],
      gives: [[8, 19]],
      origin: "published",
      source:
        "US Army card D009: 8 pieces of 28 oz from a dough of about 243 oz (12 of 25 oz, as a note there says, do not fit)",
    },
    {
      call: [down(8500, 8670), 500, 0.02],
      gives: [
        [16, 330],
        [16, 496.6],
      ],
      origin: "derived",
      source: "derived: 8500 × 0.98 = 8330 = 16 × 500 + 330; 8670 × 0.98 = 8496.6",
    },
    {
      call: [2.1, 0.7],
      gives: [[3, 0]],
      origin: "derived",
      source: "derived: 2.1 is three times 0.7, whatever binary arithmetic says",
    },
  ],
  refusals: [
    {
      call: [28470000, 0.39],
      because:
        "BAKE_PIECES: weight is 0.39, and 28470000 of dough would be over a million pieces; are both in one unit?",
    },
    { call: [8500, 500, 2], because: "BAKE_PIECES: handling_loss is 2, which is 200 %; enter 2% or 0.02." },
  ],
  compute: ({ dough, weight, handling_loss }) => {
    const result = wholePieces(dough, weight, handling_loss);
    return [result.pieces, result.left];
  },
});
