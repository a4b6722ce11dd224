import { number, word } from "../../../shared/cells/cell.ts";
import { cell, list, optional } from "../../../shared/cells/decoder.ts";
import { lengthUnit } from "../../../shared/cells/readers.ts";
import { TIN_SHAPES, tinCapacity, tinSizes } from "../../../shared/tins/tin.ts";
import { define, down } from "../define.ts";

export const TINCAPACITY = define({
  name: "BAKE_TINCAPACITY",
  family: "Tins",
  summary: "What a tin holds to the brim, in cubic centimetres, from its inside sizes.",
  args: {
    shape: {
      is: cell(word(TIN_SHAPES)),
      says: 'box, round, ring, oval, dome, wreath, polygon, or "water" where the tin was filled and weighed.',
    },
    sizes: {
      is: list(number<number>("a size such as 23", { min: 0, max: 1e5 }, {}, { measure: "size" })),
      says: "In order. box, oval: length, width, depth, [base length, base width]. round: diameter, depth, [base diameter]. ring: diameter, tube diameter, depth, [both at the base]. dome: diameter, [depth]. wreath: outer, tube diameter. polygon: sides, side, depth. water: grams.",
    },
    unit: { is: optional(lengthUnit(), "cm"), says: '(optional) Unit of the sizes: "cm" (default), "mm" or "in".' },
  },
  returns: { shape: "cell", says: "Capacity to the brim in cm³ (millilitres)." },
  examples: [
    {
      call: ["box", down(13, 4, 4), "in"],
      gives: 3408.509,
      origin: "derived",
      source: "208 cubic inches of 16.387064 cm³ (NIST SP 811)",
      within: 5e-4,
    },
    {
      call: ["box", down(24.5, 12, 7.5, 22.5, 10)],
      gives: 1941.25,
      origin: "derived",
      source: "derived by Simpson's rule, which is exact for a tapered tin: 7.5 ÷ 6 × (294 + 225 + 4 × 258.5)",
    },
    {
      call: ["water", "1.53 kg"],
      gives: 1532.7482,
      origin: "derived",
      source: "derived: 1530 g ÷ 0.998207 g/cm³ at 20 °C",
      within: 5e-4,
    },
    {
      call: ["round", down("9 in", "2 in")],
      gives: 2085,
      origin: "derived",
      source: "derived: π × 4.5² × 2 in³ of 16.387064 cm³ (NIST SP 811)",
      within: 0.05,
    },
    {
      call: ["water", down(1520)],
      gives: 1522.73,
      origin: "derived",
      source: "derived: 1520 g ÷ 0.99821 g/cm³ at 20 °C",
      within: 5e-3,
    },
  ],
  refusals: [
    {
      call: ["water", 1.53],
      because: 'BAKE_TINCAPACITY: sizes have 1.53 g of water, less than any tin holds; for kilograms enter "1.53 kg".',
    },
    {
      call: ["box", down(23, 13, "", "", "")],
      because:
        "BAKE_TINCAPACITY: sizes have no depth: place 3 is blank; a box tin takes length, width, depth, [base length], [base width].",
    },
    {
      call: ["round", down(7, 23)],
      because:
        "BAKE_TINCAPACITY: sizes have a depth of 23 above the diameter of 7; the order is diameter, depth, base diameter.",
    },
  ],
  compute: ({ shape, sizes, unit }) => tinCapacity(shape, tinSizes(shape, sizes, unit)),
});
