import type { Weight } from "../../../shared/base/units.ts";
import { number, text, word } from "../../../shared/cells/cell.ts";
import { cell, column, optional, optionalColumn, optionalList } from "../../../shared/cells/decoder.ts";
import { someWeight, weightUnit } from "../../../shared/cells/readers.ts";
import { percent } from "../../../shared/formula/percents.ts";
import { kind } from "../../../shared/larder/kinds.ts";
import { larder } from "../../../shared/larder/larder.ts";
import { STYLE_NAMES } from "../../../shared/review/bands.ts";
import { leniently, notes } from "../../../shared/review/note.ts";
import { define, down } from "../define.ts";

const LEAN = down("flour", "water", "salt", "instant yeast");
const LEAN_KINDS = /* @__PURE__ */ down("flour", "water", "salt", "yeast");

export const REVIEW = define({
  name: "BAKE_REVIEW",
  family: "Formula",
  summary:
    "The notes beside a formula: what cannot be read, what is unusual for its style, what the scale cannot show.",
  args: {
    ingredients: {
      is: column(leniently(text())),
      says: "The ingredients' names. Say which yeast: fresh, instant or active dry.",
    },
    kinds: {
      is: column(kind()),
      says: "The column that says what each row is: flour, water, salt, yeast, levain 100% and so on.",
    },
    percents: {
      is: column(leniently(percent())),
      says: "The column of percentages of the flour, such as B5:B12; the flours together make 100%.",
    },
    style: {
      is: cell(word(STYLE_NAMES)),
      says: "The style, such as pan bread, hearth, baguette, rye, bun, sweet dough, brioche, laminated, muffin, layer cake.",
    },
    larder: { is: larder(true), says: "(optional) The shop's ingredient table; USDA SR28 figures stand in for it." },
    per_mix: {
      is: optionalColumn(leniently(someWeight<Weight>())),
      says: "(optional) What is weighed out of each row for one mix.",
    },
    steps: {
      is: optionalList(number<number>("a step of the scale such as 5", { above: 0, max: 1e6 })),
      says: "(optional) What the scales read to, such as 5 or {5; 0.1}, in the unit of per_mix.",
    },
    unit: { is: optional(weightUnit(), "g"), says: '(optional) Unit of per_mix: "g" (default), "kg", "oz" or "lb".' },
  },
  returns: {
    shape: "column",
    says: "One note per row, blank where all is well. What concerns the whole formula stands in the first flour row.",
  },
  examples: [
    {
      call: [down("flour", "water", "salt", "fresh yeast"), LEAN_KINDS, down(100, 70, 2, 0.75), "baguette"],
      gives: down("", "", "", ""),
      origin: "published",
      source: "a professional slow baguette (Hamelman): 10, 7, 0.2 and 0.075 kg",
    },
    {
      call: [LEAN, LEAN_KINDS, down(1, 0.63, 0.002, 0.03), "pan bread"],
      gives: down(
        "",
        "",
        "Salt is 0.2 % of all flour, below the usual range for pan bread (1.5 to 2.4 %, usually 2 %), from published formulas",
        "Dry yeast is 3 % of all flour, above the usual range for pan bread (0.7 to 1.6 %, usually 1 %), from published formulas",
      ),
      origin: "published",
      source: "Wild Yeast blog, baker's percentage tutorial part 2: 0.2 % of salt is low, 3 % high for a dry yeast",
    },
    {
      call: [
        down("flour", "water", "salt", "fresh yeast"),
        LEAN_KINDS,
        down(1, 0.7, "abc", 0.0075),
        "baguette",
        "",
        down(1000, 700, "", 12.7),
        down(50, 5),
      ],
      gives: down(
        "",
        "",
        'Percentage is "abc", which is not a number; enter a percentage such as 65%',
        "12.7 on a 5 g scale would read 15, 18 % too much: use a finer scale",
      ),
      origin: "derived",
      source:
        "derived: 12.7 lies nearer to 15 than to 10, and 15 ÷ 12.7 = 1.181; salt cannot be judged while it cannot be read",
    },
    {
      call: [LEAN, LEAN_KINDS, down(1, 30, 0.02, 0.01), "pan bread"],
      gives: down("", "3000 %: 30 % meant? Enter 30%", "", ""),
      origin: "derived",
      source: "derived: beside flour of 100 % a bare 30 is 3000 %",
    },
  ],
  refusals: [
    {
      call: [LEAN, LEAN_KINDS, down(100, 65, 2, 1), "chiffon"],
      because:
        'BAKE_REVIEW: style is "chiffon"; choose "pan bread", "hearth", "baguette", "ciabatta", "pizza", "whole wheat", "rye", "bagel", "bun", "sweet dough", "brioche", "laminated", "yeast doughnut", "pie crust", "drop cookie", "muffin", "layer cake", "pound cake" or "sponge".',
    },
  ],
  compute: ({ ingredients, kinds, percents, style, larder, per_mix, steps, unit }) =>
    notes({ names: ingredients, kinds, percents, perMix: per_mix }, style, larder, {
      steps: steps.filter((step) => step !== null),
      unit,
    }),
});
