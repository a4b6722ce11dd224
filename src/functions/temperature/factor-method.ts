// The arguments that BAKE_WATERTEMP and BAKE_DOUGHTEMP have in common.
import type { AnyDegrees } from "../../../shared/base/units.ts";
import { cell, list } from "../../../shared/cells/decoder.ts";
import { degrees, factor } from "../../../shared/cells/readers.ts";

export const FACTOR_METHOD = {
  temps: {
    is: list(degrees<AnyDegrees>()),
    says: "The cells of the other temperatures, such as B2:B3: flour, room, and a preferment or soaker if there is one.",
  },
  friction: {
    is: cell(factor<AnyDegrees>()),
    says: "The friction factor for as many temperatures, in the same unit.",
  },
};
