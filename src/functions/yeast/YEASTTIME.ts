import { type Hours, toCelsius } from "../../../shared/base/units.ts";
import { number } from "../../../shared/cells/cell.ts";
import { cell, optional } from "../../../shared/cells/decoder.ts";
import { degrees, temperatureUnit } from "../../../shared/cells/readers.ts";
import { yeastForTime } from "../../../shared/formula/yeast.ts";
import { define } from "../define.ts";

const hoursCell = () => number<Hours>("hours such as 3", { min: 0.01, max: 1000 }, {}, { measure: "hours" });

export const YEASTTIME = define({
  name: "BAKE_YEASTTIME",
  family: "Yeast and preferments",
  summary:
    "Low, middle and high yeast for another fermentation time, and another temperature if given: a start for a trial.",
  args: {
    yeast: {
      is: cell(
        number<number>(
          "an amount of yeast such as 10 or 1% (0.01)",
          { min: 0, max: 1e9 },
          { percent: true },
          { measure: "weight" },
        ),
      ),
      says: "The yeast now, as a weight or as a baker's percent.",
    },
    hours_now: { is: cell(hoursCell()), says: "Hours the dough takes now." },
    hours_wanted: { is: cell(hoursCell()), says: "Hours you want it to take, from a third of that to twice that." },
    temp_now: {
      is: optional(degrees<number>(), null),
      says: "(optional) Dough temperature now, from 15 to 32 °C (59 to 89.6 °F).",
    },
    temp_wanted: {
      is: optional(degrees<number>(), null),
      says: "(optional) Dough temperature then; needed beside temp_now.",
    },
    unit: { is: optional(temperatureUnit(), "C"), says: '(optional) "C" (default) or "F".' },
  },
  returns: { shape: "row", cells: ["low", "middle", "high"], says: "Three amounts, as the yeast was given." },
  examples: [
    {
      call: [2, 3, 1.5],
      gives: [[4, 2 * 2 ** 1.3, 2 * 2 ** 1.7]],
      origin: "own",
      source: "low by the inverse rule, 2 % × 3 h ÷ 1.5 h; our bounds beside it",
    },
    {
      call: [10, 2.5, 2.5, 24, 27],
      gives: [[10 / 1.331, 10 / 1.08 ** 3, 10 / 1.07 ** 3]],
      origin: "own",
      source: "low by bakemag.com 836, 1.331 times as fast 3 °C warmer; our bounds beside it",
    },
  ],
  refusals: [
    {
      call: [6, 1.5, 12],
      because:
        "BAKE_YEASTTIME: hours_wanted is 12, 8 times hours_now. The rule holds up to twice. Keep the yeast and retard the dough, or go in two steps with a trial between.",
    },
    {
      call: [10, 8, 2],
      because:
        "BAKE_YEASTTIME: hours_wanted is 2, hours_now divided by 4. The rule holds down to a third. Go in two steps with a trial between, or use a preferment.",
    },
    {
      call: [10, 3, 3, 24],
      because: "BAKE_YEASTTIME: temp_wanted is blank though temp_now is given; enter both temperatures or neither.",
    },
    {
      call: [10, 3, 3, 24, 5],
      because:
        "BAKE_YEASTTIME: temp_wanted is 5 °C, and the rule holds from 15 to 32 °C; find the time of a colder or hotter dough by trial.",
    },
  ],
  compute: ({ yeast, hours_now, hours_wanted, temp_now, temp_wanted, unit }) =>
    yeastForTime(yeast, hours_now, hours_wanted, {
      now: temp_now === null ? null : toCelsius(temp_now, unit),
      wanted: temp_wanted === null ? null : toCelsius(temp_wanted, unit),
      unit,
    }),
});
