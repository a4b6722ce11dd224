import { weight } from "../../../shared/base/units.ts";
import { text, word } from "../../../shared/cells/cell.ts";
import { cell, column } from "../../../shared/cells/decoder.ts";
import { flourShares } from "../../../shared/formula/formula.ts";
import { percent, readPercents } from "../../../shared/formula/percents.ts";
import { kind, kindsOf } from "../../../shared/larder/kinds.ts";
import { larder } from "../../../shared/larder/larder.ts";
import { STYLE_NAMES } from "../../../shared/review/bands.ts";
import { review } from "../../../shared/review/review.ts";
import { define, down } from "../define.ts";

const LEAN = down("flour", "water", "salt", "instant yeast");
const LEAN_KINDS = /* @__PURE__ */ down("flour", "water", "salt", "yeast");

export const REVIEW = define({
  name: "BAKE_REVIEW",
  family: "Formula",
  summary: "What is unusual in a formula for its style, row by row, with the published band behind each remark.",
  args: {
    ingredients: {
      is: column(text()),
      says: "The ingredients' names; yeast by its sort (fresh, instant, active dry).",
    },
    kinds: { is: column(kind()), says: "What each row is: flour, water, salt, yeast, levain 100% and so on." },
    percents: { is: column(percent()), says: "Percentages of the flour; the flours together make 100%." },
    style: {
      is: cell(word(STYLE_NAMES)),
      says: "The style, such as pan bread, hearth, baguette, rye, bun, sweet dough, brioche, laminated, muffin, layer cake.",
    },
    larder: { is: larder(true), says: "(optional) The shop's ingredient table; USDA SR28 figures stand in for it." },
  },
  returns: {
    shape: "column",
    says: "One remark per row, blank where nothing is unusual; what concerns the whole stands in the first flour row.",
  },
  examples: [
    {
      call: [down("flour", "water", "salt", "fresh yeast"), LEAN_KINDS, down(100, 70, 2, 0.75), "baguette"],
      gives: down("", "", "", ""),
      source: "a professional slow baguette (Hamelman): 10, 7, 0.2 and 0.075 kg",
    },
    {
      call: [LEAN, LEAN_KINDS, down(1, 0.63, 0.002, 0.03), "pan bread"],
      gives: down(
        "",
        "",
        "Salt is 0.2 % of all flour, below the band for pan bread (1.5 to 2.4 %, usually 2 %); source: US Army master recipe cards D008 and D009, A Treatise on Baking",
        "Dry yeast is 3 % of all flour, above the band for pan bread (0.7 to 1.6 %, usually 1 %); source: US Army master recipe cards D008 and D009, A Treatise on Baking",
      ),
      source: "Wild Yeast blog, baker's percentage tutorial part 2: 0.2 % of salt is low, 3 % high for a dry yeast",
    },
  ],
  refusals: [
    {
      call: [LEAN, LEAN_KINDS, down(100, 65, 2, 1), "chiffon"],
      because:
        'BAKE_REVIEW: style is "chiffon"; write "pan bread", "hearth", "baguette", "ciabatta", "pizza", "whole wheat", "rye", "bagel", "bun", "sweet dough", "brioche", "laminated", "yeast doughnut", "pie crust", "drop cookie", "muffin", "layer cake", "pound cake" or "sponge".',
    },
    {
      call: [LEAN, LEAN_KINDS, down(95, 65, 2, 1), "baguette"],
      because: "BAKE_REVIEW: percents have flour rows that add up to 95; all flours together make 100 (or 100%).",
    },
  ],
  compute: ({ ingredients, kinds, percents, style, larder }) => {
    if (percents.every((one) => one === null)) return percents.map(() => null);
    const known = kindsOf(percents, kinds, "kinds", ingredients);
    const { shares } = readPercents(percents, known);
    const ofAllFlour = flourShares(
      shares.map((share) => (share === null ? null : weight(share))),
      known,
    );
    return review(ingredients, known, ofAllFlour, style, larder);
  },
});
