// What stands in the panel New formula's fields, as typed.
import { type Quantity, sizeQuantity, type Units } from "./quantity.ts";
import { inOtherUnits } from "./unit-change.ts";

/** The fields that stand alone, with what they hold; a template has them under the same names. */
export const FIELDS = {
  handling_loss: { label: "Handling loss", quantity: "share" },
  tins: { label: "Tins", quantity: "count" },
  trays: { label: "Trays", quantity: "count" },
  dough_wanted: { label: "Dough to make", quantity: "weight" },
  flour_wanted: { label: "Flour to use", quantity: "weight" },
  mixer_limit: { label: "Mixer capacity", quantity: "weight" },
  mixer_least: { label: "Smallest mix", quantity: "weight" },
  step_coarse: { label: "Scale reads to", quantity: "weight" },
  step_fine: { label: "Fine scale reads to", quantity: "weight" },
  tin_size_1: { label: "Size 1", quantity: "length" },
  tin_size_2: { label: "Size 2", quantity: "length" },
  tin_size_3: { label: "Size 3", quantity: "length" },
  tin_size_4: { label: "Size 4", quantity: "length" },
  tin_size_5: { label: "Size 5", quantity: "length" },
  tin_fill: { label: "Fill (your own)", quantity: "fill" },
  dough_target: { label: "Dough temperature", quantity: "temperature" },
  flour_temp: { label: "Flour temperature", quantity: "temperature" },
  room_temp: { label: "Room temperature", quantity: "temperature" },
  preferment_temp: { label: "Preferment temperature, if any", quantity: "temperature" },
  tap_temp: { label: "Tap water temperature", quantity: "temperature" },
  minutes: { label: "Mixing time", quantity: "minutes" },
  friction_own: { label: "Friction factor (your own)", quantity: "factor" },
} as const satisfies Readonly<Record<string, { label: string; quantity: Quantity }>>;
export type FieldName = keyof typeof FIELDS;
export const FIELD_NAMES = Object.keys(FIELDS) as FieldName[];
export const TIN_SIZE_FIELDS = ["tin_size_1", "tin_size_2", "tin_size_3", "tin_size_4", "tin_size_5"] as const;

export const CHOICES = ["by", "tin_shape", "tin_kind", "mixing", "yeast"] as const;
export type ChoiceName = (typeof CHOICES)[number];

/** A row of a table, by the names of its columns; those of sizes without their "size_". */
export type TableRow = Record<string, string>;
export type RowDraft = { ingredient: string; kind: string; percent: string; weighed: string };

export type Draft = {
  title: string;
  shop: string;
  /** Whose labelling rules the bakery follows: of its settings, no field asks for it. */
  law: string;
  readonly fields: Record<FieldName, string>;
  /** "" where nothing is chosen: no tin, no way of mixing yet. */
  readonly choices: Record<ChoiceName, string>;
  water: boolean;
  units: Units;
  readonly sizes: TableRow[];
  readonly rows: RowDraft[];
  /** Weights stand beside the percentages. */
  weighed: boolean;
  /** What the template has of its own, by the name of the input. */
  readonly inputs: Record<string, string>;
  /** The rows of tables of its own, by the name of the table. */
  readonly tables: Record<string, TableRow[]>;
  /** What its own inputs and the columns of its tables hold, by their names; texts are not among them. */
  readonly quantities: Readonly<Record<string, Quantity>>;
};

/** Steps that scales commonly show (common practice, no source). */
export const USUAL_STEPS: Readonly<Record<Units["weight"], Readonly<Partial<Record<FieldName, string>>>>> = {
  g: { step_coarse: "5", step_fine: "1" },
  oz: { step_coarse: "0.1", step_fine: "0.05" },
};

/** Reads one field that stands alone, what is no quantity of its own as `quantity`; what cannot be read is said, and counts as blank. */
export type ReadField = (name: FieldName, missing?: string, quantity?: Quantity) => number | null;

export function quantityOf(name: FieldName, draft: Draft): Quantity {
  const place = (TIN_SIZE_FIELDS as readonly string[]).indexOf(name);
  return place < 0 ? FIELDS[name].quantity : sizeQuantity(draft.choices.tin_shape, place);
}

/** Remembers what was typed before a conversion, so that going back gives it again to the letter. */
export type Typed = Map<string, { readonly typed: string; readonly units: Units; readonly became: string }>;

/** Changes the units and converts everything typed that can be read; what cannot be read stays as it is. */
export function changeUnits(draft: Draft, to: Units, memory: Typed): void {
  const from = draft.units;
  const usual = USUAL_STEPS[from.weight];
  for (const name of FIELD_NAMES) {
    const untouched = from.weight !== to.weight && draft.fields[name] !== "" && draft.fields[name] === usual[name];
    draft.fields[name] = untouched
      ? (USUAL_STEPS[to.weight][name] ?? "")
      : convert(name, draft.fields[name], quantityOf(name, draft));
  }
  draft.rows.forEach((row, index) => {
    row.weighed = convert(`weighed/${index}`, row.weighed, "weight");
  });
  convertRow(draft.inputs, "", "");
  for (const [index, row] of draft.sizes.entries()) convertRow(row, `/${index}`, "size_");
  for (const rows of Object.values(draft.tables)) {
    for (const [index, row] of rows.entries()) convertRow(row, `/${index}`, "");
  }
  draft.units = to;

  function convertRow(row: TableRow, place: string, before: string): void {
    for (const [name, text] of Object.entries(row)) {
      const quantity = draft.quantities[`${before}${name}`];
      if (quantity !== undefined) row[name] = convert(`${before}${name}${place}`, text, quantity);
    }
  }

  function convert(key: string, text: string, quantity: Quantity): string {
    const known = memory.get(key);
    const source = known !== undefined && known.became === text ? known : { typed: text, units: from };
    const became = inOtherUnits(source.typed, quantity, source.units, to);
    const value = became ?? (inOtherUnits(text, quantity, from, to) === null ? text : source.typed);
    memory.set(key, { typed: source.typed, units: source.units, became: value });
    return value;
  }
}
