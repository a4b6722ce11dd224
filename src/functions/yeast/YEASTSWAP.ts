import type { Weight } from "../../../shared/base/units.ts";
import { word } from "../../../shared/cells/cell.ts";
import { cell } from "../../../shared/cells/decoder.ts";
import { someWeight } from "../../../shared/cells/readers.ts";
import { swapYeast, YEASTS } from "../../../shared/formula/yeast.ts";
import { define, down } from "../define.ts";

export const YEASTSWAP = define({
  name: "BAKE_YEASTSWAP",
  family: "Yeast and preferments",
  summary: "Fresh, active dry or instant yeast for one another, and the water that keeps the weight.",
  args: {
    weight: { is: cell(someWeight<Weight>()), says: "The yeast in the formula, in any unit." },
    from: { is: cell(word(YEASTS)), says: 'What it is: "fresh", "active dry" or "instant".' },
    to: { is: cell(word(YEASTS)), says: "What you want instead, in the same words." },
  },
  returns: {
    shape: "row",
    cells: ["yeast", "water to add"],
    says: "Two cells: the other yeast, and water to add (below 0: to take off).",
  },
  rowwise: true,
  examples: [
    {
      call: [20, "fresh", down("active dry", "instant")],
      gives: [
        [8, 12],
        [6.6, 13.4],
      ],
      origin: "published",
      source: "ratios of a bread textbook on ckbk (brea32715); water derived: the weight stays 20",
    },
    {
      call: [30, "fresh", "instant"],
      gives: [[10, 20]],
      origin: "published",
      source: "ehow.com 8606674 with its slip mended: yeast and water together weigh 30",
      within: 0.3,
    },
  ],
  refusals: [
    {
      call: [20, "fresh", "dry"],
      because: 'BAKE_YEASTSWAP: to is "dry"; choose "fresh", "active dry" or "instant".',
    },
    {
      call: [down(20, -5), "fresh", "instant"],
      because: "BAKE_YEASTSWAP: weight row 2 is -5; it cannot be below 0.",
    },
  ],
  compute: ({ weight, from, to }) => {
    const { yeast, water } = swapYeast(weight, from, to);
    return [yeast, water];
  },
});
