import type { AnyDegrees } from "../../../shared/base/units.ts";
import { cell } from "../../../shared/cells/decoder.ts";
import { workedOutDegrees } from "../../../shared/cells/readers.ts";
import { doughTemperature } from "../../../shared/water/temperature.ts";
import { define, down } from "../define.ts";
import { FACTOR_METHOD } from "./factor-method.ts";

export const DOUGHTEMP = define({
  name: "BAKE_DOUGHTEMP",
  family: "Temperature",
  summary: "The dough temperature that this water will give, by the factor method: BAKE_WATERTEMP the other way round.",
  args: {
    water_temp: {
      is: cell(workedOutDegrees<AnyDegrees>()),
      says: "The water temperature; all in °C, or all in °F.",
    },
    ...FACTOR_METHOD,
  },
  returns: { shape: "cell", says: "The dough temperature after mixing, in the unit of the others." },
  examples: [
    {
      call: [65, down(65, 75), 35],
      gives: 80,
      origin: "derived",
      source: "T. Lehmann, Pizza Today, June 2018 (°F), read backwards",
    },
    {
      call: [70, down(68, 70, 72), 24],
      gives: 76,
      origin: "derived",
      source: "derived on the rule for four temperatures of a baking school's hand-out (°F)",
    },
  ],
  refusals: [
    {
      call: [65, down(65), 35],
      because:
        "BAKE_DOUGHTEMP: temps hold one temperature alone; give two (flour, room) or three (flour, room, preferment) together, such as {20; 22}.",
    },
  ],
  compute: ({ water_temp, temps, friction }) => doughTemperature(water_temp, temps, friction),
});
