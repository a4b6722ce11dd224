import type { Block, Line, SheetModel } from "../shared/sheet/model.ts";
import { LABELS_NAME, LARDER_NAME, PRICES_NAME } from "../shared/sheet/workbook-names.ts";
import {
  blanks,
  bought,
  columnsOf,
  composition,
  declared,
  names,
  perKilogram,
  priceColumns,
  workedOut,
} from "./larder-columns.ts";

const note = (text: string): Line => ({ cells: [{ at: 0, role: "remark", text }] });
const caution = (text: string): Line => ({ cells: [{ at: 0, role: "caution", text }] });

const top: Block = {
  block: "name",
  left: 0,
  lines: [
    { cells: [{ at: 0, role: "title", name: "title", text: "Ingredients" }] },
    { cells: [{ at: 0, role: "remark", name: "shop", text: "" }] },
    { cells: [{ at: 0, role: "label", name: "known_as", text: "" }] },
    note("One row per ingredient. Where water, fat and so on are blank, typical figures (USDA SR28) are used."),
    note(
      "Pack as you buy it: 25 kg, 12 x 750 ml, tray of 30, 5 lb. Usable yield is what is left after peeling and trimming.",
    ),
    note(
      "Put a semicolon between other names. Measures give grams for a piece or a cup: piece 50; cup 125. Energy is in kcal per gram.",
    ),
    note("Made of: for compound ingredients, such as sugar 54%, cocoa mass 45%."),
    { ...note("Carbohydrate includes fibre. EU and UK labels leave fibre out: add it back."), when: "composition" },
    caution(
      "Take allergens from your supplier's specification for this product: wheat, milk. Enter none only after checking. Cross-contact is not assessed.",
    ),
    {
      cells: [
        { at: 0, role: "label", text: "Eggs and cups of" },
        { at: 1, role: "input", name: "country", unit: "text", choices: ["US", "UK", "EU", "AU"], onSheet: true },
        {
          at: 2,
          role: "remark",
          text: "Counted packs go by it. A large egg holds 50 g in the US, 60 g in the UK and EU. If blank, the US counts.",
        },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Without a price" },
        { at: 1, role: "computed", name: "unpriced", unit: "count", formula: blanks("price") },
        { at: 3, role: "label", text: "Allergens not known", align: "right" },
        { at: 5, role: "computed", name: "unchecked", unit: "count", formula: blanks("allergens") },
      ],
    },
  ],
};

/** Repeated names, what is worked out and old prices stand from here on, folded away. */
const ASIDE = 27;
const ROWS = 30;
const SPARE = 15;

/** The shop's own ingredients: prices, packs, label names and allergens, which every other sheet reads. */
export const larderSheet: SheetModel = {
  name: "larder",
  title: "Ingredients",
  says: "What you buy: prices and packs, label names and allergens. Every formula sheet built afterwards shows cost and label.",
  widths: [
    150,
    120,
    124,
    ...Array<number>(2).fill(72),
    64,
    100,
    72,
    100,
    72,
    72,
    72,
    ...Array<number>(4).fill(140),
    ...Array<number>(34).fill(72),
  ],
  parts: ["composition"],
  foldedFrom: ASIDE,
  defines: { name: LARDER_NAME, from: "bought_table", to: ["declared_table", "composition_table"] },
  alsoDefines: [
    { name: LABELS_NAME, from: "declared_table", to: "names_table" },
    { name: PRICES_NAME, from: "per_kilogram_table", to: "per_kilogram_table" },
  ],
  bands: [
    [top],
    [
      { table: "bought", left: 0, rows: ROWS, spare: SPARE, columns: bought },
      { table: "per_kilogram", left: 7, rows: ROWS, spare: SPARE, columns: perKilogram },
      { table: "declared", left: 11, rows: ROWS, spare: SPARE, columns: declared },
      { table: "composition", left: 16, when: "composition", rows: ROWS, spare: SPARE, columns: composition },
      { table: "names", left: ASIDE, rows: ROWS, spare: SPARE, columns: names },
      { table: "worked", left: ASIDE + 4, rows: ROWS, spare: SPARE, columns: workedOut },
      { table: "kept", left: ASIDE + 4 + workedOut.length, rows: ROWS, spare: SPARE, columns: priceColumns },
    ],
  ],
  sample: {
    title: "Ingredients",
    shop: "Tern Quay Bakehouse",
    ...columnsOf(`Strong white flour|21.25|25 kg|||wheat flour||wheat
Plain flour|18.5|25 kg|||wheat flour||wheat
Wholemeal wheat flour|23|25 kg||whole wheat flour|wholemeal wheat flour||wheat
Rye flour|24.5|25 kg|||rye flour||rye
Sea salt|9|10 kg|||salt||none
Salt|4.5|10 kg|||salt||none
Fresh yeast|3.6|1 kg|||yeast||none
Instant yeast|4.25|500 g|||yeast||none
Unsalted butter|86|10 kg||Butter; Sheet butter|butter||milk
Whole milk|12|12 x 1 l|||whole milk||milk
Whole egg|36|15 dozen|||eggs||eggs
Sugar|24|25 kg|||sugar||none
Brown sugar|15|10 kg|||brown sugar||none
Olive oil|42|5 l|||olive oil||none
Baking powder|11|2 kg|||raising agents||none
Baking soda|6|2 kg|||raising agent (sodium bicarbonate)||none
Dark chocolate|68|5 kg|||dark chocolate|cocoa mass 54%, sugar 45%, emulsifier soy lecithin 1%|soybeans
Apple|18|12 kg|0.75||apples||none
Walnuts|||||walnuts||`),
  },
  // By hand: 21.25 ÷ 25; 3.60 a kilogram; 180 eggs of 50 g (USDA SR28 01123) weigh 9 kg; 18 ÷ 12 ÷ 0.75; no price for walnuts.
  expects: {
    "price_each/1": 0.85,
    "price_each/7": 3.6,
    "price_each/11": 4,
    "price_each/18": 2,
    "price_each/19": "",
    "price_remark/19": "no price",
    "kind/1": "flour",
    "usual/11": "eggs",
    unpriced: 1,
    unchecked: 1,
  },
};
