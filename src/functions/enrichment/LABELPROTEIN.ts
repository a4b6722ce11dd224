import type { Grams } from "../../../shared/base/units.ts";
import { number, word } from "../../../shared/cells/cell.ts";
import { cell, optional } from "../../../shared/cells/decoder.ts";
import { LABEL_LAWS, labelFigure, labelProtein } from "../../../shared/enrichment/protein.ts";
import { define } from "../define.ts";

export const LABELPROTEIN = define({
  name: "BAKE_LABELPROTEIN",
  family: "Enrichment and flour",
  summary:
    "The protein a flour may have when its label shows a rounded figure. The mill's specification is more exact.",
  args: {
    protein: { is: cell(labelFigure()), says: "Grams of protein as the label prints them." },
    serving: {
      is: optional(
        number<Grams>("a serving in grams such as 30", { above: 0, max: 1000 }, {}, { measure: "grams" }),
        null,
      ),
      says: "(optional) Grams in a serving; needed for a US label, blank or 100 for an EU or UK one.",
    },
    law: { is: optional(word(LABEL_LAWS), "US"), says: '(optional) "US" (default), "EU" or "UK".' },
  },
  returns: {
    shape: "row",
    cells: ["lowest", "highest", "gluten-forming, lowest", "gluten-forming, highest"],
    says: "Four shares: lowest and highest protein, and the part of each that can form gluten (80 %, 85 %).",
  },
  examples: [
    {
      call: [3, 30],
      gives: [[0.083333, 0.116667, 0.066667, 0.099167]],
      origin: "derived",
      source: "21 CFR 101.9: the nearest gram, so 2.5 to 3.5 g in 30 g",
      within: 1e-6,
    },
    {
      call: [4, 30],
      gives: [[0.116667, 0.15, 0.093333, 0.1275]],
      origin: "derived",
      source: "21 CFR 101.9: the nearest gram, so 3.5 to 4.5 g in 30 g",
      within: 1e-6,
    },
    {
      call: [12, "", "EU"],
      gives: [[0.115, 0.125, 0.092, 0.10625]],
      origin: "memory",
      source: "European Commission guidance, December 2012: whole grams from 10 g per 100 g (from memory)",
    },
  ],
  refusals: [
    {
      call: [3],
      because:
        "BAKE_LABELPROTEIN: serving is blank; a US label gives protein per serving, so enter the serving's grams, such as 30.",
    },
    {
      call: [12, 30, "UK"],
      because: "BAKE_LABELPROTEIN: serving is 30; UK labels give protein per 100 g, so leave it blank or enter 100.",
    },
    {
      call: [40, 30],
      because: "BAKE_LABELPROTEIN: protein is 40 g, more than the 30 g it is said to be in.",
    },
  ],
  compute: ({ protein, serving, law }) => {
    const { low, high, glutenLow, glutenHigh } = labelProtein(protein, serving, law);
    return [low, high, glutenLow, glutenHigh];
  },
});
