import type { AnyDegrees, Minutes } from "../../../shared/base/units.ts";
import { column } from "../../../shared/cells/decoder.ts";
import { factor, minutesOf } from "../../../shared/cells/readers.ts";
import { frictionLine } from "../../../shared/water/friction-fit.ts";
import { define, down } from "../define.ts";

export const FRICTIONFIT = define({
  name: "BAKE_FRICTIONFIT",
  family: "Temperature",
  summary:
    "Your mixer's friction from logged mixes, little affected by one bad reading. With fewer than five mixes it still may be.",
  args: {
    minutes: {
      is: column(minutesOf<Minutes>()),
      says: "The column of mixing minutes, such as C2:C40, one row per mix; mixes of several different times make it sure.",
    },
    frictions: {
      is: column(factor<AnyDegrees>()),
      says: "The column of friction factors, such as F2:F40; rows that lack a figure are skipped, three are needed.",
    },
  },
  returns: {
    shape: "row",
    cells: ["factor at 0 min", "per minute", "typical miss", "mixes read"],
    says: "Four cells: factor at 0 minutes, what a minute adds, typical miss, and the mixes read.",
  },
  examples: [
    {
      call: [down(4, 6, 8, 10, 12), down(7, 9, 11, 13, 15)],
      gives: [[3, 1, 0, 5]],
      origin: "derived",
      source: "derived: points on the line 3 + 1 per minute (duretz.net: 1 °C of factor per minute of second speed)",
    },
    {
      call: [down(4, 6, 8, 10, 12), down(7, 9, 40, 13, 15)],
      gives: [[3, 1, 0, 5]],
      origin: "derived",
      source: "derived: the same mixes, one thermometer misread",
    },
    {
      call: [down(8, 8, 8, "", 8), down(10, 11, 14, 12, "")],
      gives: [[11, 0, 1, 3]],
      origin: "derived",
      source: "derived: one mixing time only, so the median of 10, 11 and 14; two rows lack a figure",
    },
  ],
  refusals: [
    {
      call: [down(4, 8, ""), down(7, 11, 12)],
      because: "BAKE_FRICTIONFIT: at least 3 mixes with both minutes and friction are needed, and there are 2.",
    },
    {
      call: [down(4, 8, 10), down(7, "high", 12)],
      because:
        'BAKE_FRICTIONFIT: frictions row 2 is "high", which is not a number; enter a friction factor such as 14.',
    },
  ],
  compute: ({ minutes, frictions }) => {
    const { atZero, perMinute, miss, mixes } = frictionLine(minutes, frictions);
    return [atZero, perMinute, miss, mixes];
  },
});
