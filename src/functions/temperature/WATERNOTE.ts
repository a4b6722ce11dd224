import { toCelsius } from "../../../shared/base/units.ts";
import { word } from "../../../shared/cells/cell.ts";
import { cell, optional } from "../../../shared/cells/decoder.ts";
import { degrees, temperatureUnit, workedOutDegrees } from "../../../shared/cells/readers.ts";
import { YEASTS } from "../../../shared/formula/yeast.ts";
import { waterNote } from "../../../shared/water/water-note.ts";
import { define } from "../define.ts";

export const WATERNOTE = define({
  name: "BAKE_WATERNOTE",
  family: "Temperature",
  summary: "What to do about the water: as it is, warmed, with ice, or too hot for the yeast. Hot water scalds.",
  args: {
    water_temp: {
      is: cell(workedOutDegrees<number>()),
      says: "The water temperature wanted, in the unit below.",
    },
    tap: { is: cell(degrees<number>()), says: "Temperature of the tap's water." },
    yeast: {
      is: optional(word({ ...YEASTS, none: ["no yeast", "levain", "starter", "sourdough"] }), "fresh"),
      says: "(optional) fresh (default, the most cautious), instant, active dry or none.",
    },
    unit: { is: optional(temperatureUnit(), "C"), says: '(optional) "C" (default) or "F".' },
  },
  returns: { shape: "cell", says: "A sentence." },
  examples: [
    {
      call: [20.3, 20],
      gives: "Use tap water as it is (20 °C).",
      origin: "own",
      source: "our words: within half a degree",
    },
    {
      call: [47, 15],
      gives:
        "Water of 47 °C is too hot for fresh yeast (38 °C at most). Warm the flour or the room, or accept a cooler dough and a longer rise.",
      origin: "own",
      source:
        "our words and our bounds for water beside yeast; the factor method's 47 °C for flour at 5 °C; Exploratorium, yeast is fussy about temperature",
    },
  ],
  refusals: [
    {
      call: ["warm", 15],
      because: 'BAKE_WATERNOTE: water_temp is "warm", which is not a number; enter a temperature such as 24.',
    },
  ],
  compute: ({ water_temp, tap, yeast, unit }) =>
    waterNote(toCelsius(water_temp, unit), toCelsius(tap, unit), yeast, unit),
});
