import { refuse } from "../../../shared/base/refusal.ts";
import { onSteps } from "../../../shared/base/scaling.ts";
import { ratio, type Weight } from "../../../shared/base/units.ts";
import { number } from "../../../shared/cells/cell.ts";
import { column, list, optional } from "../../../shared/cells/decoder.ts";
import { share, someWeight } from "../../../shared/cells/readers.ts";
import { define, down } from "../define.ts";

export const SCALEROUND = define({
  name: "BAKE_SCALEROUND",
  family: "Formula",
  summary: "Weights as the shop's scales can show them, each on the coarsest step that is near enough.",
  args: {
    weights: { is: column(someWeight<Weight>()), says: "The column of weights, such as C5:C12, all in one unit." },
    step: {
      is: list(number<number>("a step such as 5", { above: 0, max: 1e6 }, {}, { measure: "weight" })),
      says: "The scale's step in the same unit, or a column of several scales' steps, such as 5; 1; 0.1.",
    },
    shift: {
      is: optional(share(0.25), ratio(0.02)),
      says: "(optional) The largest rounding allowed, as a percentage of the weight; 2% if left out.",
    },
  },
  returns: {
    shape: "column",
    says: "One rounded weight per row; unrounded where even the finest step would move it too far: use a finer scale.",
  },
  examples: [
    {
      call: [down(167.47, 167.47), 5],
      gives: down(165, 165),
      origin: "derived",
      source: "derived: 165 is 1.47 % off and within 2 %",
    },
    {
      call: [down(167.47), down(5, 1), 0.01],
      gives: 167,
      origin: "derived",
      source: "derived: 165 is 1.47 % off, 167 is 0.28 % off",
    },
    {
      call: [down(794.7), down(100, 10, 1)],
      gives: 800,
      origin: "published",
      source: "Gisslen, Professional Baking: 794.7 g of flour for 3000 g of batter is weighed as 800 g",
    },
    {
      call: [down(12.7, 500), 5],
      gives: down(12.7, 500),
      origin: "derived",
      source: "derived: a 5 g scale would read 15, 18 % too much, so 12.7 needs a finer scale",
    },
  ],
  refusals: [
    { call: [down(167.47), 0], because: "BAKE_SCALEROUND: step row 1 is 0; it must be above 0." },
    {
      call: [down(167.47), 5, 2],
      because: "BAKE_SCALEROUND: shift is 2, which is 200 %; enter 2% or 0.02.",
    },
  ],
  compute: ({ weights, step, shift }) => {
    const steps = step.filter((one) => one !== null);
    if (steps.length === 0) refuse("is blank; enter the scale's step, such as 5", "step");
    return onSteps(weights, steps, shift);
  },
});
