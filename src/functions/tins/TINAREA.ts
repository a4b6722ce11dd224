import { number, word } from "../../../shared/cells/cell.ts";
import { cell, list, optional } from "../../../shared/cells/decoder.ts";
import { lengthUnit } from "../../../shared/cells/readers.ts";
import { TIN_SHAPES, tinArea, tinSizes } from "../../../shared/tins/tin.ts";
import { define, down } from "../define.ts";

export const TINAREA = define({
  name: "BAKE_TINAREA",
  family: "Tins",
  summary: "The area of a tin's rim in square centimetres, for scaling flatbread or cakes of equal depth.",
  args: {
    shape: { is: cell(word(TIN_SHAPES)), says: "box, round, ring, oval, dome, wreath or polygon." },
    sizes: {
      is: list(number<number>("a size such as 23", { min: 0, max: 1e5 }, {}, { measure: "size" })),
      says: "The same sizes in the same order as for the capacity; the depth may be left out.",
    },
    unit: { is: optional(lengthUnit(), "cm"), says: '(optional) Unit of the sizes: "cm" (default), "mm" or "in".' },
  },
  returns: { shape: "cell", says: "Area in cm²; of ring and wreath the ring alone." },
  examples: [
    {
      call: ["round", down(12), "in"],
      gives: 729.6588,
      origin: "derived",
      source: "derived: π × 6² square inches of 6.4516 cm²; 12 inch rounds of Pizza Today, October 2019",
      within: 5e-5,
    },
    {
      call: ["box", down(18, 26), "in"],
      gives: 3019.3488,
      origin: "derived",
      source: "derived: 468 square inches of 6.4516 cm², the US sheet pan",
    },
  ],
  refusals: [
    {
      call: ["water", down(1520)],
      because:
        'BAKE_TINAREA: shape is "water", which gives a capacity but no area; choose "box", "round", "ring", "oval", "dome", "wreath" or "polygon".',
    },
    { call: ["oval", down(30, 0)], because: "BAKE_TINAREA: sizes have 0 as width; it must be above 0." },
  ],
  compute: ({ shape, sizes, unit }) => tinArea(shape, tinSizes(shape, sizes, unit)),
});
