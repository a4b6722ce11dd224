import { mixes } from "../../../shared/base/scaling.ts";
import { type Weight, weight } from "../../../shared/base/units.ts";
import { cell, optional } from "../../../shared/cells/decoder.ts";
import { someWeight, weightAboveZero } from "../../../shared/cells/readers.ts";
import { define } from "../define.ts";

export const MIXES = define({
  name: "BAKE_MIXES",
  family: "Dough and mixes",
  summary: "The number of equal mixes a dough is made in, and the dough in each.",
  args: {
    dough: { is: cell(someWeight<Weight>()), says: "All the dough, in any unit." },
    mixer_limit: {
      is: cell(weightAboveZero<Weight>()),
      says: "Mixer capacity in dough, in the same unit; for stiff doughs see the maker's table.",
    },
    mixer_least: {
      is: optional(someWeight<Weight>(), weight(0)),
      says: "(optional) The smallest mix that the mixer handles well, in the same unit.",
    },
  },
  returns: { shape: "row", cells: ["mixes", "dough in each"], says: "Two cells: mixes, and dough in each." },
  rowwise: true,
  examples: [
    {
      call: [95, 40],
      gives: [[3, 31.6667]],
      origin: "derived",
      source: "derived: three equal mixes, not 40 + 40 + 15",
      within: 5e-5,
    },
    {
      call: [40.5, 22],
      gives: [[2, 20.25]],
      origin: "derived",
      source: "derived from a mixer maker's chart: 22 lb at 60 % absorption",
    },
    {
      call: [2.1, 0.7],
      gives: [[3, 0.7]],
      origin: "derived",
      source: "derived: 2.1 is three times 0.7, whatever binary arithmetic says",
    },
  ],
  refusals: [
    {
      call: [45, 40, 25],
      because: "BAKE_MIXES: dough is 45: 2 equal mixes of 22.5 would be below the least of 25; 40 or 50 would fit.",
    },
    { call: [45, 0], because: "BAKE_MIXES: mixer_limit is 0; it must be above 0." },
  ],
  compute: ({ dough, mixer_limit, mixer_least }) => {
    const result = mixes(dough, mixer_limit, mixer_least);
    return [result.mixes, result.each];
  },
});
