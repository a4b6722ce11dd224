import type { Weight } from "../../../shared/base/units.ts";
import { word } from "../../../shared/cells/cell.ts";
import { cell, optional } from "../../../shared/cells/decoder.ts";
import { share, weightAboveZero } from "../../../shared/cells/readers.ts";
import { ROLL_IN_BASES, rollIn } from "../../../shared/formula/roll-in.ts";
import { define, down } from "../define.ts";

export const ROLLIN = define({
  name: "BAKE_ROLLIN",
  family: "Dough and mixes",
  summary: "The weight of roll-in fat, as a share of the base dough, the finished dough or the flour.",
  args: {
    dough: {
      is: cell(weightAboveZero<Weight>()),
      says: "The base dough, before the fat is rolled in, in any unit.",
    },
    share: { is: cell(share(1)), says: "The share of roll-in fat, such as 28%." },
    of: {
      is: optional(word(ROLL_IN_BASES), null),
      says: '(optional) What it is a share of: "base dough" (default), "finished dough" (dough and fat) or "flour".',
    },
    flour: {
      is: optional(weightAboveZero<Weight>(), null),
      says: '(optional) All the flour in the dough, in the same unit; needed with "flour".',
    },
  },
  returns: { shape: "cell", says: "The roll-in fat, in the dough's unit." },
  rowwise: true,
  examples: [
    {
      call: [1757, 0.577, "flour", 1000],
      gives: 577,
      origin: "published",
      source: "eoibakery.com.au: Danish with 57.7 % of its flour rolled in, 32.8 % of the base dough",
    },
    {
      call: [1759, 0.328],
      gives: 577,
      origin: "derived",
      source: "eoibakery.com.au: the same Danish by its base dough (57.7 ÷ 0.328 = 175.9 % of the flour)",
      within: 0.1,
    },
    {
      call: [down(1000, 750), 0.25, "finished dough"],
      gives: down(1000 / 3, 250),
      origin: "derived",
      source: "derived: 250 is a quarter of 750 + 250",
    },
  ],
  refusals: [
    {
      call: [1757, 0.577, "flour"],
      because: "BAKE_ROLLIN: flour is blank though the share is of the flour; enter the weight of all the flour.",
    },
    {
      call: [1757, 0.5, "", 1000],
      because:
        'BAKE_ROLLIN: of is blank though a flour weight is given; enter "flour" or "base dough", so that it is clear what the share is of.',
    },
  ],
  compute: ({ dough, share, of, flour }) => rollIn(dough, share, of, flour),
});
