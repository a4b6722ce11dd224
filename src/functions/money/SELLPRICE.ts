import { ratio } from "../../../shared/base/units.ts";
import { number, word } from "../../../shared/cells/cell.ts";
import { cell, optional } from "../../../shared/cells/decoder.ts";
import { priceCell, share } from "../../../shared/cells/readers.ts";
import { MEANINGS, sellingPrice } from "../../../shared/money/price.ts";
import { define, down } from "../define.ts";

export const SELLPRICE = define({
  name: "BAKE_SELLPRICE",
  family: "Money",
  summary: "Selling price from the cost and a food cost %, a margin or a markup, with tax, rounded up.",
  args: {
    cost: { is: cell(priceCell()), says: "What it costs, per piece sold." },
    share: { is: cell(share(10)), says: "The share wanted, such as 30%." },
    meaning: {
      is: cell(word(MEANINGS)),
      says: 'Cost over price is a "food cost", profit over price a "margin", profit over cost a "markup".',
    },
    tax: { is: optional(share(1), ratio(0)), says: "(optional) Tax that comes on top of the price, such as 20%." },
    step: {
      is: optional(number<number>("a step such as 0.05", { min: 1e-4, max: 1e6 }), null),
      says: "(optional) Rounds the price up to a multiple of this.",
    },
  },
  returns: { shape: "cell", says: "The selling price, in the cost's currency." },
  rowwise: true,
  examples: [
    {
      call: [0.99, 0.36, "food cost"],
      gives: 2.75,
      origin: "published",
      source: "a food cost lesson, toprecipes: $0.99 at 36 %",
    },
    {
      call: [4, 0.25, down("margin", "markup")],
      gives: down(5.3333, 5),
      origin: "published",
      source: "a question on gauthmath (1813177295442949): $400 per 100; $5.00 is the markup, not the margin",
      within: 5e-5,
    },
    {
      call: [4, 0.25, "margin", 0.2, 0.05],
      gives: 6.4,
      origin: "derived",
      source: "derived: 4 ÷ 0.75 × 1.2 is 6.40 on the step already",
    },
  ],
  refusals: [
    {
      call: [4, 1, "margin"],
      because: "BAKE_SELLPRICE: share is 100 %; a margin must be below 100 % of the price.",
    },
    {
      call: [down(4, 5), down(0, 35), "food cost"],
      because:
        "BAKE_SELLPRICE: share row 1 is 0; a food cost must be above 0 %; share row 2 is 35, which is 3500 %; enter 35% or 0.35.",
    },
  ],
  compute: ({ cost, share, meaning, tax, step }) => sellingPrice(cost, share, meaning, tax, step),
});
