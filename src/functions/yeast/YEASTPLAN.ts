import { fault, refuseAll } from "../../../shared/base/refusal.ts";
import { type Hours, toCelsius } from "../../../shared/base/units.ts";
import { number } from "../../../shared/cells/cell.ts";
import { cell, column, optional } from "../../../shared/cells/decoder.ts";
import { degrees, temperatureUnit } from "../../../shared/cells/readers.ts";
import { yeastForPlan } from "../../../shared/formula/yeast-plan.ts";
import { define, down } from "../define.ts";

export const YEASTPLAN = define({
  name: "BAKE_YEASTPLAN",
  family: "Yeast and preferments",
  summary: "Low, middle and high yeast for a schedule of rests with their hours and temperatures: a start for a trial.",
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
    hours_now: {
      is: cell(number<Hours>("hours such as 3", { min: 0.01, max: 1000 }, {}, { measure: "hours" })),
      says: "Hours the dough takes now, from mixing to the oven.",
    },
    temp_now: { is: cell(degrees<number>()), says: "Dough temperature now, from 15 to 32 °C (59 to 89.6 °F)." },
    hours: {
      is: column(number<Hours>("hours such as 2", { min: 0, max: 1000 }, {}, { measure: "hours" })),
      says: "The hours of each rest that is planned: bulk fermentation, retard, final proof and so on.",
    },
    temps: {
      is: column(degrees<number>()),
      says: "The dough temperature in each rest, from 1 to 32 °C (33.8 to 89.6 °F).",
    },
    unit: { is: optional(temperatureUnit(), "C"), says: '(optional) "C" (default) or "F".' },
  },
  returns: {
    shape: "row",
    cells: ["low", "middle", "high"],
    says: "Three amounts, as the yeast was given. A rest below 15 °C counts in full for the low and not at all for the high.",
  },
  examples: [
    {
      call: [1, 2, 75, down(1, 1), down(75, 58), "F"],
      gives: [
        [
          1 / ((1 + 1 / 1.07 ** (17 / 1.8)) / 2),
          (1 / ((1 + 0.5 / 1.08 ** (17 / 1.8)) / 1.5)) * (2 / 1.5) ** 1.3,
          2 ** 1.7,
        ],
      ],
      origin: "own",
      source:
        "our bounds, the middle by an oven maker's dough guide (fornobravo.com), half the rate 17 °F colder: 58 °F is a cold rest",
      within: 1e-9,
    },
    {
      call: [10, 2.5, 24, down(1.5, 1), down(27, 27)],
      gives: [[10 / 1.331, 10 / 1.08 ** 3, 10 / 1.07 ** 3]],
      origin: "own",
      source:
        "low by bakemag.com 836, 1.331 times as fast 3 °C warmer, and our bounds; two rests at one temperature are one",
    },
  ],
  refusals: [
    {
      call: [1, 3, 24, down(1, 12), down(24, 4)],
      because:
        "BAKE_YEASTPLAN: temps hold rests below 10 °C that do more than half of the work. No rule of degrees holds there. Keep the yeast and find the time in the cold by trial.",
    },
    {
      call: [1, 3, 24, down(3, 2), down(24, -4)],
      because:
        "BAKE_YEASTPLAN: temps row 2 is -4 °C; below 1 °C dough begins to freeze and its yeast stops, so find the yeast by trial.",
    },
    {
      call: [1, 3, 24, down(3, 2), down(24)],
      because: "BAKE_YEASTPLAN: temps row 2 is blank though the rest has hours; enter its dough temperature.",
    },
  ],
  compute: ({ yeast, hours_now, temp_now, hours, temps, unit }) => {
    const rests = hours.flatMap((length, index) => {
      const temp = temps[index] ?? null;
      return length === null || temp === null ? [] : [{ hours: length, temp: toCelsius(temp, unit), row: index + 1 }];
    });
    refuseAll(
      hours.flatMap((length, index) => {
        const temp = temps[index] ?? null;
        if ((length === null) === (temp === null)) return [];
        return length === null
          ? [fault("is blank though the rest has a temperature; enter its hours", "hours", index + 1)]
          : [fault("is blank though the rest has hours; enter its dough temperature", "temps", index + 1)];
      }),
    );
    return yeastForPlan(yeast, { hours: hours_now, temp: toCelsius(temp_now, unit), unit }, rests);
  },
});
