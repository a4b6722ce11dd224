// The columns of the ingredient sheet, and the formulas of those that are worked out.
import { KIND_WORDS } from "../shared/larder/kind-words.ts";
import { PRICE_KEPT } from "../shared/money/price-changes.ts";
import { type ColumnModel, type Values, WORKED_OUT } from "../shared/sheet/model.ts";

/** Rows with a name and nothing in this column. */
export function blanks(column: string): string {
  return `=ARRAYFORMULA(SUM((LEN(@ingredient)>0)*(LEN(@${column})=0)))`;
}

const text = (name: string, head: string): ColumnModel => ({ name, head, unit: "text", role: "input" });
const share = (name: string, head: string): ColumnModel => ({ name, head, unit: "rate", role: "input" });

/** The price of a kilogram reads these columns alone, so that it does not wait for itself. */
export const bought: readonly ColumnModel[] = [
  text("ingredient", "Ingredient"),
  text("also_called", "Also called"),
  text("supplier", "Supplier"),
  { name: "price", head: "Price", unit: "money", role: "input" },
  text("pack", "Pack"),
  share("usable", "Usable yield"),
  text("measures", "Measures"),
];

/** A pack by weight is the sheet's own sum, so that a price typed anew waits for nothing; any other pack is the call's, whose answer ends with the last ingredient. */
export const perKilogram: readonly ColumnModel[] = [
  {
    name: "price_each",
    head: "Price per {priced}",
    unit: "money",
    role: "computed",
    formula:
      '=ARRAYFORMULA(IF(ISNUMBER(@pack_price);@pack_price;IFERROR(IF(LEN(@price_called)=0;"";@price_called);"")))',
  },
  {
    name: "price_remark",
    head: "",
    unit: "text",
    role: "remark",
    formula:
      '=ARRAYFORMULA(IF(ISNUMBER(@pack_price)+(@piece_price>0)>0;"";IFERROR(IF(LEN(@called_remark)=0;"";@called_remark);"")))',
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

const worked = (name: string, head: string, formula: string, more: Partial<ColumnModel> = {}): ColumnModel => ({
  name,
  head,
  unit: "plain",
  role: "helper",
  formula,
  ...more,
});
/** Below 0 for what is no row of digits. */
const digits = (column: string): string =>
  `=ARRAYFORMULA(IF(IFERROR(INT(VALUE(${column}))&"";"")=${column};IFERROR(VALUE(${column});-1);-1))`;

/**
 * The number in front of a pack's unit: digits, and at most two behind a point or comma. A spreadsheet would read "1/2" as a day
 * and, by its locale, "12,5" as 125. Whatever is not so plain is 0 here, and the call reads it.
 */
const packNumber: readonly ColumnModel[] = [
  worked(
    "pack_front",
    "Pack, before its unit",
    '=ARRAYFORMULA(IFERROR(SUBSTITUTE(LEFT(TRIM(@pack);FIND(" ";TRIM(@pack))-1);",";".");""))',
  ),
  worked("pack_point", "Point in it", '=ARRAYFORMULA(IFERROR(FIND(".";@pack_front);LEN(@pack_front)+1))', {
    numbers: true,
  }),
  worked("pack_before", "Before the point", "=ARRAYFORMULA(LEFT(@pack_front;@pack_point-1))"),
  // A 1 in front keeps the zeros right behind the point.
  worked("pack_behind", "Behind it, after a 1", '=ARRAYFORMULA("1"&MID(@pack_front;@pack_point+1;9))'),
  worked("pack_tens", "Times of the whole", "=ARRAYFORMULA(10^(LEN(@pack_behind)-1))", { numbers: true }),
  worked("pack_whole", "Whole of the pack", digits("@pack_before"), { numbers: true }),
  worked("pack_part", "Part of the pack", digits("@pack_behind"), { numbers: true }),
  worked(
    "pack_number",
    "Number of the pack",
    "=ARRAYFORMULA(IF((@pack_whole>=0)*(@pack_part>=0)*(@pack_tens<=100)=1;@pack_whole+(@pack_part-@pack_tens)/@pack_tens;0))",
    { numbers: true },
  ),
];

/** 1 lb is 453.59237 g and 1 oz a sixteenth of it (international yard and pound agreement, 1959). */
const PACK_UNITS = '"kg";1000;"g";1;"lb";45359237/10^5;"oz";45359237/16/10^5';
const PIECE_UNITS = '"pieces";1;"piece";1;"each";1;"pcs";1;"dozen";12';
const packPrice = (weight: string) =>
  `=ARRAYFORMULA(IF((@pack_grams>0)*ISNUMBER(@price)*(@usable_part>0)=1;@price/IF(@pack_grams>0;@pack_grams;1)*${weight}/IF(@usable_part>0;@usable_part;1);""))`;

export const workedOut: readonly ColumnModel[] = [
  ...packNumber,
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

export const declared: readonly ColumnModel[] = [
  { ...text("kind", "Type"), choices: KIND_WORDS },
  text("allergens", "Allergens"),
  { name: "usual", head: "Usual allergen", unit: "text", role: "remark" },
  text("label_name", "Label name"),
  text("made_of", "Made of"),
];

/** Shares of weight; a blank falls back to the built-in table. */
export const composition: readonly ColumnModel[] = [
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
export const names: readonly ColumnModel[] = [
  { name: "names_aside", head: `${WORKED_OUT}: label names`, unit: "text", role: "remark" },
  repeated("ingredient", "Ingredient"),
  repeated("also_called", "Also called"),
  repeated("measures", "Measures"),
];

/** What Gramwright keeps of prices: each as it was last seen, what it was before, and since when it is so. */
export const priceColumns: readonly ColumnModel[] = [
  { name: "price_kept", head: PRICE_KEPT, unit: "money", role: "input", onSheet: true },
  { name: "price_before", head: "Price before", unit: "money", role: "input", onSheet: true },
  { ...text("price_seen", "Seen on"), onSheet: true },
];

/** Lines of ingredient, price, pack, usable, other names, label name, made of, allergens. */
export function columnsOf(table: string): Values {
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
