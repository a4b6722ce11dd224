import { refuse } from "../../../shared/base/refusal.ts";
import { showNumber } from "../../../shared/base/show.ts";
import { toCelsius, type Weight } from "../../../shared/base/units.ts";
import { cell, optional } from "../../../shared/cells/decoder.ts";
import { degrees, someWeight, temperatureUnit, workedOutDegrees } from "../../../shared/cells/readers.ts";
import { iceFor } from "../../../shared/water/ice.ts";
import { define } from "../define.ts";

export const ICE = define({
  name: "BAKE_ICE",
  family: "Temperature",
  summary:
    "How much ice and how much tap water make the water you need, at its temperature. Ice is food: drinking water, clean scoop.",
  args: {
    water: { is: cell(someWeight<Weight>()), says: "All the water, the ice included, in any unit." },
    tap: { is: cell(degrees<number>()), says: "Temperature of the tap's water, in the unit below." },
    wanted: {
      is: cell(workedOutDegrees<number>()),
      says: "Temperature wanted; below freezing it counts as the cold it stands for.",
    },
    unit: { is: optional(temperatureUnit(), "C"), says: '(optional) "C" (default) or "F".' },
    ice_temp: {
      is: optional(degrees<number>(), null),
      says: "(optional) Temperature of the ice; its melting point when left out.",
    },
  },
  returns: { shape: "row", cells: ["ice", "water"], says: "Two cells: ice, and water from the tap." },
  examples: [
    {
      call: [40, 20, 10],
      gives: [[4.0127, 35.9873]],
      origin: "derived",
      source: "derived: 40 × 10 ÷ (20 + 333.55 ÷ 4.186); mixing back gives 10 °C",
      within: 5e-5,
    },
    {
      call: [16, 65, 58, "F"],
      gives: [[0.63, 15.37]],
      origin: "memory",
      source: "from memory: Gisslen, Professional Baking: 16 lb, 65 to 58 °F, 10 oz",
      within: 6e-3,
    },
  ],
  refusals: [
    {
      call: [10, "warm", 4],
      because: 'BAKE_ICE: tap is "warm", which is not a number; enter a temperature such as 24.',
    },
    {
      call: [10, 20, -95],
      because:
        "BAKE_ICE: wanted is too cold: 10 of water at the tap's temperature would need more than 10 of ice. Cool the flour, mix for less time, or accept a warmer dough.",
    },
    {
      call: [10, 20, 5, "C", 4],
      because: "BAKE_ICE: ice_temp is above freezing, and ice is not; leave it out or enter 0 or less.",
    },
  ],
  compute: ({ water, tap, wanted, unit, ice_temp }) => {
    // Nobody cools a hotter tap with ice.
    if (unit === "C" && tap > 45) refuse(`is ${showNumber(tap)} °C; for °F choose "F" as the unit`, "tap");
    const { ice, tapWater } = iceFor(
      water,
      toCelsius(tap, unit),
      toCelsius(wanted, unit),
      ice_temp === null ? null : toCelsius(ice_temp, unit),
    );
    return [ice, tapWater];
  },
});
