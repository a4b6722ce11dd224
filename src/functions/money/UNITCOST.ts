import { refuse } from "../../../shared/base/refusal.ts";
import { ratio, WEIGHT_UNITS } from "../../../shared/base/units.ts";
import { isProblem, text, word } from "../../../shared/cells/cell.ts";
import { cell, optional } from "../../../shared/cells/decoder.ts";
import { priceCell, shareAboveZero } from "../../../shared/cells/readers.ts";
import { larder } from "../../../shared/larder/larder.ts";
import { unitCost } from "../../../shared/money/cost.ts";
import { packCell, packWeight } from "../../../shared/money/pack.ts";
import { define, down } from "../define.ts";

export const UNITCOST = define({
  name: "BAKE_UNITCOST",
  family: "Money",
  summary: "What a gram (or kg, oz, lb) of an ingredient costs ready for use, from the price and size of a pack.",
  args: {
    price: { is: cell(priceCell()), says: "What a pack costs." },
    pack: {
      is: cell(packCell()),
      says: 'The pack: a number of grams, or text such as "5 lb", "12 x 750 ml", "1 dozen".',
    },
    usable: {
      is: optional(shareAboveZero(1), ratio(1)),
      says: "(optional) The share that is left after trimming; all of it when left out.",
    },
    ingredient: {
      is: optional(text(), null),
      says: "(optional) The ingredient, where the pack is a volume or a count.",
    },
    larder: { is: larder(true), says: "(optional) The larder, with the shop's own measures." },
    unit: { is: optional(word(WEIGHT_UNITS), "g"), says: '(optional) Price per "g" (default), "kg", "oz" or "lb".' },
  },
  returns: { shape: "cell", says: "The price of one usable gram, or unit, in the price's currency." },
  rowwise: true,
  examples: [
    {
      call: [93, "50 lb", 0.75, undefined, undefined, "lb"],
      gives: 2.48,
      source: "a food cost course, slideplayer 7840814: $1.86 a pound at a yield of 75 %",
    },
    {
      call: [down(60, 0.89), down("20 lb", "1 dozen"), down(0.5, ""), down("", "egg"), undefined, down("lb", "g")],
      gives: down(6, 0.89 / 600),
      source: "a yield test, slidegur: $3.00 a pound as bought; a dozen large eggs of 50 g (USDA SR28 01123)",
    },
  ],
  refusals: [
    {
      call: [0.89, 12, undefined, "egg"],
      because: 'BAKE_UNITCOST: pack is 12, grams or pieces? Write "12 g" or "12 pieces".',
    },
    {
      call: [down(4, 9), down("4 UK pints", "4 pints"), undefined, "milk"],
      because: 'BAKE_UNITCOST: pack row 2 is "4 pints": say "US" or "UK" before pint.',
    },
    {
      call: [5, `5 lb ${"or so ".repeat(40)}`],
      because: 'BAKE_UNITCOST: pack has 244 characters: write only the pack, such as "12 x 750 ml".',
    },
  ],
  compute: ({ price, pack, usable, ingredient, larder, unit }) => {
    const weight = packWeight(pack, ingredient, larder);
    return isProblem(weight) ? refuse(weight.problem, "pack") : unitCost(price, weight, usable, unit);
  },
});
