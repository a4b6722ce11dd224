import { refuse } from "../../../shared/base/refusal.ts";
import { showNumber } from "../../../shared/base/show.ts";
import { fromCelsius, toCelsius, toCelsiusDegrees, type Weight } from "../../../shared/base/units.ts";
import { number } from "../../../shared/cells/cell.ts";
import { cell, column, optional } from "../../../shared/cells/decoder.ts";
import { degrees, someWeight, temperatureUnit } from "../../../shared/cells/readers.ts";
import { kind, kindsOf } from "../../../shared/larder/kinds.ts";
import { balancedTemperature } from "../../../shared/water/heat-balance.ts";
import { define, down } from "../define.ts";

export const HEATBALANCE = define({
  name: "BAKE_HEATBALANCE",
  family: "Temperature",
  summary:
    "The temperature the one blank row must have, from the weights and heat of all. Hot water scalds and kills yeast: see BAKE_WATERNOTE.",
  args: {
    dough_target: {
      is: cell(degrees<number>()),
      says: "The dough temperature wanted after mixing, in the unit below.",
    },
    weights: { is: column(someWeight<Weight>()), says: "The column of weights, such as C5:C12, all in one unit." },
    temps: {
      is: column(degrees<number>()),
      says: "The column of temperatures, such as D5:D12; leave blank the row to be worked out. Small blank rows take the flour's.",
    },
    kinds: {
      is: column(kind()),
      says: "The column that says what each row is: flour, water, salt, yeast, ice, levain 100% and so on.",
    },
    rise: {
      is: optional(number<number>("a rise in degrees such as 6", { min: -150, max: 150 }), null),
      says: "(optional) Temperature rise from mixing and hydration; 0 for none, flour's heat of hydration alone when left out.",
    },
    unit: { is: optional(temperatureUnit(), "C"), says: '(optional) "C" (default) or "F".' },
  },
  returns: { shape: "cell", says: "Temperature of the blank row; water below freezing means ice." },
  examples: [
    {
      call: [26, down(1, 0.65), down(20, ""), down("flour", "water"), 0],
      gives: 29.887,
      origin: "derived",
      source: "derived: (4.477 × 26 − 1.76 × 20) ÷ 2.717",
      within: 5e-4,
    },
    {
      call: [15, down(2, 1), down(15, ""), down("flour", "water")],
      gives: 15 - 30.2 / 4.18,
      origin: "derived",
      source: "Çengel & Boles, Thermodynamics, problem 5-157, with its heat of hydration taken per kg of flour (15.1)",
    },
    {
      call: [78, down(1000, 650), down(72, ""), down("flour", "water"), 0, "F"],
      gives: 82,
      origin: "published",
      source: "Cooking Stack Exchange 107561, by heat balance; 1.8 kJ/kg·K for flour there",
      within: 0.5,
    },
  ],
  refusals: [
    {
      call: [26, down(1000, 650), down(20, 30), down("flour", "water")],
      because:
        "BAKE_HEATBALANCE: temps leave no row to be worked out; clear the temperature of one that has a weight, usually the water's.",
    },
    {
      call: [26, down(1000, 600, 400), down(20, "", ""), down("flour", "water", "levain 100%")],
      because:
        "BAKE_HEATBALANCE: temps rows 2 and 3 are blank; leave blank only the one to be worked out and enter the others.",
    },
    {
      call: [40, down(1000, 150), down(5, ""), down("flour", "water")],
      because:
        "BAKE_HEATBALANCE: dough_target cannot be reached: row 2 (water) would have to be hotter than boiling water; warm the other rows, or accept a cooler dough.",
    },
  ],
  compute: ({ dough_target, weights, temps, kinds, rise, unit }) => {
    // A scald is as hot, but its flour is not.
    if (unit === "C" && dough_target > 50 && temps.every((temp) => temp === null || temp > 50))
      refuse(
        `is ${showNumber(dough_target)} °C, as hot as its ingredients; for °F choose "F" as the unit`,
        "dough_target",
      );
    const solved = balancedTemperature(
      toCelsius(dough_target, unit),
      weights,
      temps.map((temp) => (temp === null ? null : toCelsius(temp, unit))),
      kindsOf(weights, kinds),
      rise === null ? null : toCelsiusDegrees(rise, unit),
    );
    return fromCelsius(solved, unit);
  },
});
