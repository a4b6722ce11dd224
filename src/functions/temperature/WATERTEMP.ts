import type { AnyDegrees } from "../../../shared/base/units.ts";
import { cell } from "../../../shared/cells/decoder.ts";
import { degrees } from "../../../shared/cells/readers.ts";
import { refuseTwoUnits, waterTemperature } from "../../../shared/water/temperature.ts";
import { define, down } from "../define.ts";
import { FACTOR_METHOD } from "./factor-method.ts";

export const WATERTEMP = define({
  name: "BAKE_WATERTEMP",
  family: "Temperature",
  summary:
    "Water temperature for a desired dough temperature (DDT), by the friction factor. Hot water scalds and kills yeast: see BAKE_WATERNOTE.",
  args: {
    dough_target: {
      is: cell(degrees<AnyDegrees>()),
      says: "The dough temperature wanted after mixing; all in °C, or all in °F.",
    },
    ...FACTOR_METHOD,
  },
  returns: { shape: "cell", says: "Water temperature in the unit of the others; below freezing it means ice." },
  examples: [
    { call: [80, down(65, 75), 35], gives: 65, origin: "published", source: "T. Lehmann, Pizza Today, June 2018 (°F)" },
    {
      call: [76, down(68, 70, 72), 24],
      gives: 70,
      origin: "derived",
      source: "derived on the rule for four temperatures of a baking school's hand-out (°F)",
    },
  ],
  refusals: [
    {
      call: [80, down(65), 35],
      because:
        "BAKE_WATERTEMP: temps hold one temperature alone; give two (flour, room) or three (flour, room, preferment) together, such as {20; 22}.",
    },
  ],
  compute: ({ dough_target, temps, friction }) => {
    const water = waterTemperature(dough_target, temps, friction);
    refuseTwoUnits(dough_target, temps);
    return water;
  },
});
