import { isFault, refuse } from "../../../shared/base/refusal.ts";
import { ratio, WEIGHT_UNITS } from "../../../shared/base/units.ts";
import { CUP_SYSTEMS } from "../../../shared/base/volumes.ts";
import { text, word } from "../../../shared/cells/cell.ts";
import { cell, optional } from "../../../shared/cells/decoder.ts";
import { priceCell, shareAboveZero } from "../../../shared/cells/readers.ts";
import { larder } from "../../../shared/larder/larder.ts";
import { unitCost } from "../../../shared/money/cost.ts";
import { packCell, packWeight } from "../../../shared/money/pack.ts";
import { define, down } from "../define.ts";

export const UNITCOST = define({
  name: "BAKE_UNITCOST",
  family: "Money",
  summary: "What a gram, kg, oz or lb of an ingredient costs ready for use, from a pack's price and size.",
  args: {
    price: { is: cell(priceCell()), says: "What a pack costs." },
    pack: {
      is: cell(packCell()),
      says: 'The pack, such as "5 lb", "12 x 750 ml", "1 dozen". A number alone is in the unit, which is then needed.',
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
    unit: { is: optional(word(WEIGHT_UNITS), null), says: '(optional) Price per "g" (default), "kg", "oz" or "lb".' },
    cups: {
      is: optional(word(CUP_SYSTEMS), "US"),
      says: '(optional) Whose eggs, cups and spoons a pack counts: "US" (default), "AU", "UK" or "EU".',
    },
  },
  returns: { shape: "cell", says: "The price of one usable gram, or unit, in the price's currency." },
  rowwise: true,
  examples: [
    {
      call: [93, "50 lb", 0.75, undefined, undefined, "lb"],
      gives: 2.48,
      origin: "published",
      source: "a food cost course, slideplayer 7840814: $1.86 a pound at a yield of 75 %",
    },
    {
      call: [down(60, 0.89), down("20 lb", "1 dozen"), down(0.5, ""), down("", "egg"), undefined, down("lb", "g")],
      gives: down(6, 0.89 / 600),
      origin: "derived",
      source: "a yield test, slidegur: $3.00 a pound as bought; a dozen large eggs of 50 g (USDA SR28 01123)",
    },
    {
      call: [7.2, "30 eggs", undefined, "egg", undefined, "kg", "UK"],
      gives: 4,
      origin: "derived",
      source: "by hand: thirty large UK eggs of 60 g shelled weigh 1.8 kg (grades of Regulation (EC) 589/2008)",
    },
    {
      call: [18, 25, undefined, undefined, undefined, "kg"],
      gives: 0.72,
      origin: "derived",
      source: "by hand: a number alone is in the unit of the call, 18 ÷ 25 kg",
    },
  ],
  refusals: [
    {
      call: [0.89, 12, undefined, "egg", undefined, "g"],
      because: 'BAKE_UNITCOST: pack is 12, g or pieces? Enter "12 g" or "12 each".',
    },
    {
      call: [18, 25],
      because: 'BAKE_UNITCOST: pack is 25 of what? Enter "25 kg", "25 g", "25 lb" or "25 each".',
    },
    {
      call: [down(4, 9), down("4 UK pints", "4 pints"), undefined, "milk"],
      because: 'BAKE_UNITCOST: pack row 2 is "4 pints": say "US" or "UK" before pint.',
    },
    {
      call: [5, `5 lb ${"or so ".repeat(40)}`],
      because: 'BAKE_UNITCOST: pack has 244 characters: enter only the pack, such as "12 x 750 ml".',
    },
  ],
  compute: ({ price, pack, usable, ingredient, larder, unit, cups }) => {
    const weight = packWeight(pack, ingredient, larder, { unit, cups });
    return isFault(weight) ? refuse(weight.says, "pack") : unitCost(price, weight, usable, unit ?? "g");
  },
});
