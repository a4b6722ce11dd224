import { type Weight, weight } from "../../../shared/base/units.ts";
import { number } from "../../../shared/cells/cell.ts";
import { cell, optional } from "../../../shared/cells/decoder.ts";
import { hydration, someWeight, weightAboveZero } from "../../../shared/cells/readers.ts";
import { feedPlan, MAX_FEEDS } from "../../../shared/formula/feed-plan.ts";
import { define } from "../define.ts";

export const FEEDPLAN = define({
  name: "BAKE_FEEDPLAN",
  family: "Yeast and preferments",
  summary: "Several feeds of equal ratio that build a little starter up to the weight wanted, feed by feed.",
  args: {
    start: { is: cell(weightAboveZero<Weight>()), says: "Ripe starter that goes into the first feed, in any unit." },
    wanted: {
      is: cell(weightAboveZero<Weight>()),
      says: "Weight wanted for use after the last feed, in the same unit.",
    },
    hydration: { is: cell(hydration()), says: "Water over flour wanted, such as 100%." },
    feeds: {
      is: cell(number<number>("a number of feeds such as 2", { min: 1, max: MAX_FEEDS })),
      says: `How many feeds, from 1 to ${MAX_FEEDS}.`,
    },
    keep: {
      is: optional(someWeight<Weight>(), weight(0)),
      says: "(optional) Starter to take off and keep after the last feed; it is made in addition.",
    },
    hydration_now: {
      is: optional(hydration(), null),
      says: "(optional) Water over flour of the starter now; the first feed corrects it. As hydration when left out.",
    },
  },
  returns: {
    shape: "rows",
    cells: ["starter", "flour", "water", "total"],
    says: "A row for each feed: starter, flour, water and total. The last total is what is wanted and what is kept.",
  },
  examples: [
    {
      call: [113, 339, 1, 1],
      gives: [[113, 113, 113, 339]],
      origin: "memory",
      source: "from memory: King Arthur, feeding a sourdough starter, 113 g of each",
    },
    {
      call: [10, 80, 1, 2, 10],
      gives: [
        [10, 10, 10, 30],
        [30, 30, 30, 90],
      ],
      origin: "derived",
      source: "derived: two feeds of 1 : 1 : 1 triple the starter twice, and 10 of the 90 are kept",
    },
    {
      call: [20, 180, 1, 2, "", 0.5],
      gives: [
        [20, 30 - 20 / 1.5, 30 - 10 / 1.5, 60],
        [60, 60, 60, 180],
      ],
      origin: "derived",
      source: "derived: 20 g at 50 % hold 13.33 g of flour and 6.67 g of water, and 60 g at 100 % take 30 g of each",
    },
  ],
  refusals: [
    {
      call: [500, 200, 1, 2],
      because:
        "BAKE_FEEDPLAN: start is 500, and a feed only adds to it; enter less than the 200 that the last feed makes.",
    },
    {
      call: [150, 167, 1, 1, "", 0.5],
      because:
        "BAKE_FEEDPLAN: start is 150, too much for the first feed to bring its hydration from 50 % to 100 %; at most 125.25 fits.",
    },
  ],
  compute: ({ start, wanted, hydration, feeds, keep, hydration_now }) =>
    feedPlan(start, weight(wanted + keep), feeds, { now: hydration_now ?? hydration, wanted: hydration }).map(
      ({ starter, flour, water, total }) => [starter, flour, water, total],
    ),
});
