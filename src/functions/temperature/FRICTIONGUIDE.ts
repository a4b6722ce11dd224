import { fromCelsiusDegrees, type Minutes } from "../../../shared/base/units.ts";
import { word } from "../../../shared/cells/cell.ts";
import { cell, optional } from "../../../shared/cells/decoder.ts";
import { minutesOf, temperatureUnit } from "../../../shared/cells/readers.ts";
import { frictionGuide, MIXINGS } from "../../../shared/water/temperature.ts";
import { define } from "../define.ts";

export const FRICTIONGUIDE = define({
  name: "BAKE_FRICTIONGUIDE",
  family: "Temperature",
  summary:
    "Guide friction factors (low, usual, high) for a type of mixer, for two other temperatures. Then measure your own.",
  args: {
    mixing: { is: cell(word(MIXINGS)), says: "hand, folds, stand, planetary, spiral or processor." },
    minutes: {
      is: optional(minutesOf<Minutes>(), null),
      says: "(optional) Minutes of mixing; needed for stand, planetary and spiral.",
    },
    unit: { is: optional(temperatureUnit(), "C"), says: '(optional) "C" (default) or "F"; a factor is a difference.' },
  },
  returns: { shape: "row", cells: ["low", "usual", "high"], says: "Three factors for flour and room." },
  examples: [
    {
      call: ["hand", "", "F"],
      gives: [[0, 2.7, 5.4]],
      origin: "own",
      source: "our bounds by hand, 0, 1.5 and 3 °C",
    },
    {
      call: ["spiral", 8],
      gives: [[4.8, 8, 12]],
      origin: "own",
      source: "our bounds around duretz.net's 1 °C of factor per minute of second speed",
    },
  ],
  refusals: [
    {
      call: ["spiral", ""],
      because:
        "BAKE_FRICTIONGUIDE: minutes is blank; friction in a spiral mixer grows with the minutes, so enter them, such as 8.",
    },
  ],
  compute: ({ mixing, minutes, unit }) => frictionGuide(mixing, minutes).map((one) => fromCelsiusDegrees(one, unit)),
});
