import { KIND_WORDS } from "../shared/larder/kind-words.ts";
import { PRICE_KEPT } from "../shared/money/price-changes.ts";
import {
  type Block,
  type ColumnModel,
  LABELS_NAME,
  LARDER_NAME,
  type Line,
  PRICES_NAME,
  type SheetModel,
  type Values,
  WORKED_OUT,
} from "../shared/sheet/model.ts";

const note = (text: string): Line => ({ cells: [{ at: 0, role: "remark", text }] });
const caution = (text: string): Line => ({ cells: [{ at: 0, role: "caution", text }] });

const top: Block = {
  block: "name",
  left: 0,
  lines: [
    { cells: [{ at: 0, role: "title", name: "title", text: "Ingredients" }] },
    { cells: [{ at: 0, role: "remark", name: "shop", text: "" }] },
    { cells: [{ at: 0, role: "label", name: "known_as", text: "" }] },
    note(
      "A row for each ingredient you buy. A blank share of water, fat and so on is taken from typical figures (USDA SR28).",
    ),
    note(
      "Pack as you buy it: 25 kg, 12 x 750 ml, tray of 30, 5 lb. Usable yield is what is left after peeling and trimming.",
    ),
    note(
      "Other names with ; between them. Measures where you count or spoon: piece 50; cup 125. Energy in kcal per gram.",
    ),
    note("Made of, where it is made of several things: sugar 54%, cocoa mass 45%."),
    { ...note("Carbohydrate counts the fibre in: where a label leaves it out, add it."), when: "composition" },
    caution(
      "Allergens come from your supplier's specification for this very product: wheat, milk; none where you checked. Cross-contact is not computed.",
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

/** Rows with a name and nothing in this column. */
function blanks(column: string): string {
  return `=ARRAYFORMULA(SUM((LEN(@ingredient)>0)*(LEN(@${column})=0)))`;
}

const text = (name: string, head: string): ColumnModel => ({ name, head, unit: "text", role: "input" });
const share = (name: string, head: string): ColumnModel => ({ name, head, unit: "rate", role: "input" });

/** The price of a kilogram reads these columns alone, so that it does not wait for itself. */
const bought: readonly ColumnModel[] = [
  text("ingredient", "Ingredient"),
  text("also_called", "Also called"),
  text("supplier", "Supplier"),
  { name: "price", head: "Price", unit: "money", role: "input" },
  text("pack", "Pack"),
  share("usable", "Usable yield"),
  text("measures", "Measures"),
];

/** A pack by weight is the sheet's own sum, so that a price typed anew waits for nothing; any other pack is the call's. */
const perKilogram: readonly ColumnModel[] = [
  {
    name: "price_each",
    head: "Price per {priced}",
    unit: "money",
    role: "computed",
    formula: '=ARRAYFORMULA(IF(ISNUMBER(@pack_price);@pack_price;IFERROR(@price_called;"")))',
  },
  {
    name: "price_remark",
    head: "",
    unit: "text",
    role: "remark",
    formula: '=ARRAYFORMULA(IF(ISNUMBER(@pack_price)+(@piece_price>0)>0;"";IFERROR(@called_remark;"")))',
  },
  {
    name: "price_piece",
    head: "Price each",
    unit: "unit_cost",
    role: "computed",
    formula: '=ARRAYFORMULA(IF(@piece_price>0;@piece_price;""))',
  },
  { name: "least_stock", head: "Minimum stock ({priced})", unit: "plain", role: "input" },
];

/** 1 lb is 453.59237 g and 1 oz a sixteenth of it (international yard and pound agreement, 1959). */
const PACK_UNITS = '"kg";1000;"g";1;"lb";45359237/10^5;"oz";45359237/16/10^5';
const PIECE_UNITS = '"pieces";1;"piece";1;"each";1;"pcs";1;"dozen";12';
const packPrice = (weight: string) =>
  `=ARRAYFORMULA(IF((@pack_grams>0)*ISNUMBER(@price)*(@usable_part>0)=1;@price/IF(@pack_grams>0;@pack_grams;1)*${weight}/IF(@usable_part>0;@usable_part;1);""))`;

const workedOut: readonly ColumnModel[] = [
  {
    name: "pack_number",
    head: "Number of the pack",
    unit: "plain",
    role: "helper",
    formula: '=ARRAYFORMULA(IFERROR(VALUE(LEFT(TRIM(@pack);FIND(" ";TRIM(@pack))-1));0))',
    numbers: true,
  },
  {
    name: "pack_grams",
    head: "Grams of the pack",
    unit: "plain",
    role: "helper",
    formula: `=ARRAYFORMULA(IFERROR(@pack_number*SWITCH(LOWER(MID(TRIM(@pack);FIND(" ";TRIM(@pack))+1;9));${PACK_UNITS};0);0))`,
    numbers: true,
  },
  {
    name: "usable_part",
    head: "Usable part",
    unit: "plain",
    role: "helper",
    formula: "=ARRAYFORMULA(IF(ISNUMBER(@usable)*(@usable<=1)=1;@usable;IF(IFERROR(LEN(@usable);1)=0;1;0)))",
    numbers: true,
  },
  {
    name: "pack_price",
    head: "Price per {priced} by weight",
    unit: "unit_cost",
    role: "helper",
    formula: [{ when: "oz", formula: packPrice("45359237/10^5") }, { formula: packPrice("1000") }],
  },
  {
    name: "pack_pieces",
    head: "Pieces of the pack",
    unit: "plain",
    role: "helper",
    formula: `=ARRAYFORMULA(IFERROR(@pack_number*SWITCH(LOWER(MID(TRIM(@pack);FIND(" ";TRIM(@pack))+1;9));${PIECE_UNITS};0);0))`,
    numbers: true,
  },
  {
    name: "piece_price",
    head: "Price each, as numbers",
    unit: "plain",
    role: "helper",
    formula:
      "=ARRAYFORMULA(IF((@pack_pieces>0)*ISNUMBER(@price)*(@usable_part>0)=1;@price/IF(@pack_pieces>0;@pack_pieces;1)/IF(@usable_part>0;@usable_part;1);0))",
    numbers: true,
  },
  {
    name: "price_called",
    head: "Price per {priced} of any pack",
    unit: "unit_cost",
    role: "helper",
    formula: [{ when: "oz", formula: priced(16, "oz") }, { formula: priced(1000, "g") }],
    spills: ["called_remark"],
  },
  { name: "called_remark", head: "Why there is none", unit: "text", role: "helper" },
];

function priced(weight: number, unit: string): string {
  return `=BAKE_COSTS(@ingredient;ARRAYFORMULA(IF(LEN(@ingredient)=0;"";${weight}));@bought_table;"${unit}";IF(LEN(@country)=0;"US";@country))`;
}

const declared: readonly ColumnModel[] = [
  { ...text("kind", "Type"), choices: KIND_WORDS },
  text("allergens", "Allergens"),
  { name: "usual", head: "By its nature", unit: "text", role: "remark" },
  text("label_name", "Label name"),
  text("made_of", "Made of"),
];

/** Shares of weight; a blank falls back to the built-in table. */
const composition: readonly ColumnModel[] = [
  share("water", "Water"),
  share("protein", "Protein"),
  { name: "protein_factor", head: "Protein factor", unit: "plain", role: "input" },
  share("fat", "Fat"),
  share("saturates", "Saturates"),
  share("carbohydrate", "Carbohydrate"),
  share("sugar", "Sugar"),
  share("fibre", "Fibre"),
  share("salt", "Salt"),
  { name: "energy", head: "Energy", unit: "plain", role: "input" },
  { name: "extra_water", head: "Extra water", unit: "plain", role: "input" },
];

const repeated = (name: string, head: string): ColumnModel => ({
  name: `${name}_again`,
  head,
  unit: "text",
  role: "helper",
  // An error in one row is nobody else's: no condition is asked of it.
  formula: `=ARRAYFORMULA(IFERROR(@${name}&"";""))`,
});

/** Labels read names, types, allergens and composition side by side, without the prices that stand between them on the page. */
const names: readonly ColumnModel[] = [
  { name: "names_aside", head: `${WORKED_OUT}: label names`, unit: "text", role: "remark" },
  repeated("ingredient", "Ingredient"),
  repeated("also_called", "Also called"),
  repeated("measures", "Measures"),
];

/** What Gramwright keeps of prices: each as it was last seen, what it was before, and since when it is so. */
const priceColumns: readonly ColumnModel[] = [
  { name: "price_kept", head: PRICE_KEPT, unit: "money", role: "input", onSheet: true },
  { name: "price_before", head: "Price before", unit: "money", role: "input", onSheet: true },
  { ...text("price_seen", "Seen on"), onSheet: true },
];

/** Lines of ingredient, price, pack, usable, other names, label name, made of, allergens. */
function columnsOf(table: string): Values {
  const rows = table.split("\n").map((row) => row.split("|"));
  const column = (at: number) => rows.map((row) => row[at] || null);
  const figures = (at: number) => column(at).map((text) => (text === null ? null : Number(text)));
  return {
    ingredient: column(0),
    price: figures(1),
    pack: column(2),
    usable: figures(3),
    also_called: column(4),
    label_name: column(5),
    made_of: column(6),
    allergens: column(7),
  };
}

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
    100,
    ...Array<number>(2).fill(72),
    64,
    100,
    72,
    100,
    72,
    72,
    72,
    ...Array<number>(4).fill(140),
    ...Array<number>(27).fill(72),
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
      { table: "kept", left: ASIDE + 12, rows: ROWS, spare: SPARE, columns: priceColumns },
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
