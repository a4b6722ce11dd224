import type { Weight } from "../../../shared/base/units.ts";
import { cell, optional } from "../../../shared/cells/decoder.ts";
import { hydration, someWeight } from "../../../shared/cells/readers.ts";
import { starterFeed } from "../../../shared/formula/preferment.ts";
import { define } from "../define.ts";

export const STARTERFEED = define({
  name: "BAKE_STARTERFEED",
  family: "Yeast and preferments",
  summary: "Starter, flour and water that give a wanted weight of starter at a wanted hydration.",
  args: {
    wanted: { is: cell(someWeight<Weight>()), says: "Weight wanted after feeding, in any unit." },
    hydration_wanted: { is: cell(hydration()), says: "Water over flour wanted, such as 100%." },
    hydration_now: { is: cell(hydration()), says: "Water over flour of the starter at hand." },
    starter: {
      is: optional(someWeight<Weight>(), null),
      says: "(optional) Starter to use, in the same unit; as much as fits when left out.",
    },
  },
  returns: {
    shape: "row",
    cells: ["starter", "flour", "water"],
    says: "Three cells: starter, flour and water; together the weight wanted.",
  },
  examples: [
    {
      call: [167, 1, 0.5],
      gives: [[125.25, 0, 41.75]],
      origin: "published",
      source: "The Fresh Loaf comment/99090: a firm starter where 167 g at 100 % is wanted",
    },
    {
      call: [550, 1, 1, 50],
      gives: [[50, 250, 250]],
      origin: "derived",
      source: "derived: a build of 1 : 5 : 5",
    },
  ],
  refusals: [
    {
      call: [550, 1, 1],
      because:
        "BAKE_STARTERFEED: starter is blank, and at equal hydrations all of it would be starter; enter how much starter goes in.",
    },
    {
      call: [167, 1, 0.5, 150],
      because: "BAKE_STARTERFEED: starter is 150, which brings 100 of flour where 83.5 is wanted; at most 125.25 fits.",
    },
    {
      call: [500, 100, 1, 100],
      because: "BAKE_STARTERFEED: hydration_wanted is 100, which is 10000 %; enter 100% or 1.",
    },
  ],
  compute: ({ wanted, hydration_wanted, hydration_now, starter }) => {
    const fed = starterFeed(wanted, hydration_wanted, hydration_now, starter);
    return [fed.starter, fed.flour, fed.water];
  },
});
