import { CUP_SYSTEMS } from "../../../shared/base/volumes.ts";
import { number, text, word } from "../../../shared/cells/cell.ts";
import { cell, column, optional, optionalColumn } from "../../../shared/cells/decoder.ts";
import { larder } from "../../../shared/larder/larder.ts";
import { costChanges } from "../../../shared/money/cost-change.ts";
import { define, down } from "../define.ts";

const BUN =
  "Bun\t\t\t0\t0\n\tFlour\t60000000\n\tFilling\t40000000\nFilling\t\t\t10000000\t5000000\n\tAlmonds\t50000000\n\tSugar\t50000000";
const PRICES = [
  ["ingredient", "supplier", "price", "pack"],
  ["Flour", "Mill", 1, "1 kg"],
  ["Almonds", "Store", 12, "1 kg"],
  ["Sugar", "Store", 2, "1 kg"],
  ["Box", "Packer", 3, "100 pieces"],
] as const;

export const COSTCHANGE = define({
  name: "BAKE_COSTCHANGE",
  family: "Money",
  summary:
    "How many times the ingredients of formulas would cost what they cost now, if one price or one supplier changed.",
  args: {
    parts: {
      is: column(text()),
      says: "What goes into each formula, as its sheet says it for other sheets, formulas inside included.",
    },
    larder: {
      is: larder(false),
      says: "The larder, with the columns price and pack, and supplier where one is tried.",
    },
    tried: { is: cell(text()), says: "The ingredient or the supplier whose prices change." },
    times: {
      is: cell(number<number>("how many times the price, such as 1.1", { min: 0, max: 1000 })),
      says: "How many times the price of today: 1.1 is a tenth more.",
    },
    cups: {
      is: optional(word(CUP_SYSTEMS), "US"),
      says: '(optional) Whose eggs, cups and spoons packs count: "US" (default), "AU", "UK" or "EU".',
    },
    counted: {
      is: optionalColumn(text()),
      says: "(optional) Where parts are counted, what they cost beside what is weighed, as the product's sheet says it.",
    },
  },
  returns: { shape: "column", says: "One column: 1 where nothing changes; blank where nothing is made or priced." },
  examples: [
    {
      call: [down("", BUN), PRICES, "Almonds", 1.5],
      gives: down("", (0.6 + (0.4 * 10) / 0.855) / (0.6 + (0.4 * 7) / 0.855)),
      origin: "derived",
      source:
        "by hand: a filling of 500 g almonds and 500 g sugar is 855 g; a kilogram of bun 0.6 + 0.4 × 7 ÷ 0.855, then 0.6 + 0.4 × 10 ÷ 0.855",
    },
    {
      call: [down(BUN), PRICES, "store", 2],
      gives: (0.6 + (0.4 * 14) / 0.855) / (0.6 + (0.4 * 7) / 0.855),
      origin: "derived",
      source: "by hand: almonds and sugar come from that supplier",
    },
    {
      call: [down(BUN, BUN), PRICES, "Box", 1.5, "US", down("350000000\nBox\t30000000", "")],
      gives: down((0.35 + 0.03 * 1.5) / 0.38, 1),
      origin: "derived",
      source: "by hand: 0.35 of what is weighed and a box of 0.03, then of 0.045; the second has no box",
    },
    {
      call: [down(BUN), PRICES, "Almonds", 1.5, "US", down("350000000\nBox\t30000000")],
      gives: ((0.35 * (0.6 + (0.4 * 10) / 0.855)) / (0.6 + (0.4 * 7) / 0.855) + 0.03) / 0.38,
      origin: "derived",
      source: "by hand: 0.35 of what is weighed rises with its almonds, the box of 0.03 does not",
    },
  ],
  refusals: [
    {
      call: [down(BUN), PRICES, "Saffron", 2],
      because: 'BAKE_COSTCHANGE: tried is "Saffron", which is no ingredient and no supplier in the larder.',
    },
  ],
  compute: ({ parts, larder, tried, times, cups, counted }) =>
    costChanges({ cells: parts, counted: counted ?? [] }, larder, tried, times, { cups, unit: "g" }),
});
