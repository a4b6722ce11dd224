import { toGrams } from "../../../shared/base/units.ts";
import { word } from "../../../shared/cells/cell.ts";
import { cell, optional } from "../../../shared/cells/decoder.ts";
import { capacityCell, weightAboveZero, weightUnit } from "../../../shared/cells/readers.ts";
import { TIN_DOUGH_KINDS, tinNote } from "../../../shared/tins/tin-guide.ts";
import { define } from "../define.ts";

export const TINNOTE = define({
  name: "BAKE_TINNOTE",
  family: "Tins",
  summary: "Whether a dough weight suits a tin, and the low, usual and high weights for it.",
  args: {
    dough: { is: cell(weightAboveZero<number>()), says: "The dough in one tin, in the unit below." },
    capacity: { is: cell(capacityCell()), says: "What the tin holds, in cm³." },
    dough_kind: {
      is: cell(word(TIN_DOUGH_KINDS)),
      says: "A kind of dough such as lidded white, white, wholemeal, rye, enriched, layer cake.",
    },
    unit: { is: optional(weightUnit(), "g"), says: '(optional) Unit of the dough: "g" (default), "kg", "oz" or "lb".' },
  },
  returns: {
    shape: "row",
    cells: ["note", "low", "usual", "high"],
    says: "Four cells: a sentence, and low, usual and high dough in the unit.",
  },
  rowwise: true,
  examples: [
    {
      call: [1155, 3408.5, "lidded white"],
      gives: [
        [
          "Fill 0.34 g/cm³, the usual one for lidded white (0.3 to 0.37); usual here is 1159 g (1023 g to 1261 g).",
          1022.55,
          1158.89,
          1261.145,
        ],
      ],
      origin: "own",
      source: "our bounds: 0.30, 0.34 and 0.37 g/cm³ of 3408.5 cm³",
    },
  ],
  refusals: [
    {
      call: [1155, 3.4, "lidded white"],
      because: 'BAKE_TINNOTE: capacity is 3.4 cm³, less than any tin holds; for litres enter "3.4 l".',
    },
  ],
  compute: ({ dough, capacity, dough_kind, unit }) => {
    const note = tinNote(toGrams(dough, unit), capacity, dough_kind, unit);
    return [note.sentence, note.low, note.usual, note.high];
  },
});
