import { ratio, type Weight, weight } from "../../../shared/base/units.ts";
import { word } from "../../../shared/cells/cell.ts";
import { cell, optional } from "../../../shared/cells/decoder.ts";
import { hydration, share, someWeight } from "../../../shared/cells/readers.ts";
import { BASES, preferment } from "../../../shared/formula/preferment.ts";
import { define } from "../define.ts";

export const PREFERMENT = define({
  name: "BAKE_PREFERMENT",
  family: "Yeast and preferments",
  summary: "Flour, water, seed and yeast of a preferment for a dough; basis sets what the share is measured against.",
  args: {
    flour: {
      is: cell(someWeight<Weight>()),
      says: "All flour of the dough, the preferment's included, in any unit.",
    },
    share: { is: cell(share(6)), says: "How much preferment, as a share of what basis names, such as 20%." },
    hydration: { is: cell(hydration()), says: "Water over flour in the preferment, such as 100%." },
    basis: {
      is: optional(word(BASES), "prefermented flour"),
      says: '(optional) "prefermented flour" (default), "weight of all flour" or "weight of added flour".',
    },
    seed: {
      is: optional(someWeight<Weight>(), weight(0)),
      says: "(optional) Weight of ripe starter that goes in, in the flour's unit; it counts inside the preferment.",
    },
    seed_hydration: {
      is: optional(hydration(), null),
      says: "(optional) Water over flour in the seed; the preferment's when left out.",
    },
    yeast: {
      is: optional(share(0.25), ratio(0)),
      says: "(optional) Yeast as a share of the preferment's flour, such as 0.1%.",
    },
  },
  returns: {
    shape: "row",
    cells: ["flour", "water", "seed", "yeast"],
    says: "Four cells: flour, water, seed and yeast to weigh in.",
  },
  examples: [
    {
      call: [10, 0.33, 1, "", "", "", 0.007 / 3.3],
      gives: [[3.3, 3.3, 0, 0.007]],
      origin: "published",
      source: "King Arthur professional formulas, French bread with poolish",
    },
    {
      call: [1000, 0.2, 1, "weight of added flour"],
      gives: [[90.909, 90.909, 0, 0]],
      origin: "derived",
      source: "The Fresh Loaf node/64591: 181.8 of levain beside 909.1 of flour",
      within: 0.05,
    },
    {
      call: [1000, 0.2, 1, "", 40],
      gives: [[180, 180, 40, 0]],
      origin: "derived",
      source: "derived: 200 and 200, of which the seed brings 20 and 20",
    },
  ],
  refusals: [
    { call: [1000, 20, 1], because: "BAKE_PREFERMENT: share is 20, which is 2000 %; enter 20% or 0.2." },
    {
      call: [1000, 2, 1],
      because:
        "BAKE_PREFERMENT: share is 2, which is 200 %; all the flour as preferment would be 100 %; enter 2% or 0.02 if that was meant.",
    },
    {
      call: [1000, 0.2, 1, "", 0.1],
      because:
        "BAKE_PREFERMENT: seed is 0.1, below 0.5 % of the preferment's 400; was it typed as a share? Enter its weight.",
    },
    {
      call: [1000, 0.2, 1, "", 500],
      because: "BAKE_PREFERMENT: seed is 500, which brings 250 of flour where 200 is wanted; at most 400 fits.",
    },
  ],
  compute: ({ flour, share, hydration, basis, seed, seed_hydration, yeast }) => {
    const result = preferment(
      flour,
      { share, hydration, basis },
      { weight: seed, hydration: seed_hydration ?? hydration },
      yeast,
    );
    return [result.flour, result.water, result.seed, result.yeast];
  },
});
