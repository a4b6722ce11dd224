import type { AnyDegrees } from "../../../shared/base/units.ts";
import { cell, list } from "../../../shared/cells/decoder.ts";
import { degrees } from "../../../shared/cells/readers.ts";
import { frictionOf, refuseTwoUnits } from "../../../shared/water/temperature.ts";
import { define, down } from "../define.ts";

export const FRICTION = define({
  name: "BAKE_FRICTION",
  family: "Temperature",
  summary: "Your friction factor, worked out from a mix that you measured.",
  args: {
    dough_reached: {
      is: cell(degrees<AnyDegrees>()),
      says: "The dough temperature after mixing; all in °C, or all in °F.",
    },
    temps: {
      is: list(degrees<AnyDegrees>()),
      says: "The cells of that mix's other temperatures, such as B2:B3: flour, room, and any preferment.",
    },
    water: { is: cell(degrees<AnyDegrees>()), says: "The water temperature of that mix." },
  },
  returns: { shape: "cell", says: "A factor in the same unit, for as many temperatures." },
  examples: [
    {
      call: [80, down(65, 75), 65],
      gives: 35,
      origin: "derived",
      source: "from T. Lehmann, Pizza Today, June 2018 (°F), read backwards",
    },
  ],
  refusals: [
    { call: [80, down(65, 75), ""], because: "BAKE_FRICTION: water is blank; enter a temperature such as 24." },
  ],
  compute: ({ dough_reached, temps, water }) => {
    const friction = frictionOf(dough_reached, temps, water);
    refuseTwoUnits(dough_reached, temps);
    return friction;
  },
});
