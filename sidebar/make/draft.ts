// What stands in the Make panel's fields, as typed.
import type { SheetModel, Value, Values } from "../../shared/model.ts";
import { shown } from "../../shared/show.ts";
import { inOtherUnits, type Quantity, type Units } from "./quantity.ts";

/** The fields that stand alone, with what they hold; a template has them under the same names. */
export const FIELDS = {
  handling_loss: { label: "Lost in bowl and on bench", quantity: "share" },
  tins: { label: "Tins", quantity: "count" },
  dough_wanted: { label: "Dough to make", quantity: "weight" },
  flour_wanted: { label: "Flour to use", quantity: "weight" },
  mixer_limit: { label: "Mixer takes at most", quantity: "weight" },
  mixer_least: { label: "Mixer needs at least", quantity: "weight" },
  step_coarse: { label: "Scale step, coarse", quantity: "weight" },
  step_fine: { label: "Scale step, fine", quantity: "weight" },
  tin_size_1: { label: "Size 1", quantity: "length" },
  tin_size_2: { label: "Size 2", quantity: "length" },
  tin_size_3: { label: "Size 3", quantity: "length" },
  tin_size_4: { label: "Size 4", quantity: "length" },
  tin_size_5: { label: "Size 5", quantity: "length" },
  tin_fill: { label: "Your own fill", quantity: "fill" },
  dough_target: { label: "Dough wanted at", quantity: "temperature" },
  flour_temp: { label: "Flour is at", quantity: "temperature" },
  room_temp: { label: "Room is at", quantity: "temperature" },
  preferment_temp: { label: "Preferment is at, if any", quantity: "temperature" },
  tap_temp: { label: "Tap water is at", quantity: "temperature" },
  minutes: { label: "Minutes of mixing", quantity: "minutes" },
  friction_own: { label: "Your own friction factor", quantity: "factor" },
} as const satisfies Readonly<Record<string, { label: string; quantity: Quantity }>>;
export type FieldName = keyof typeof FIELDS;
export const FIELD_NAMES = Object.keys(FIELDS) as FieldName[];
export const TIN_SIZE_FIELDS = ["tin_size_1", "tin_size_2", "tin_size_3", "tin_size_4", "tin_size_5"] as const;

export const CHOICES = ["by", "tin_shape", "tin_kind", "mixing", "yeast"] as const;
export type ChoiceName = (typeof CHOICES)[number];

export type SizeDraft = { name: string; pieces: string; weight: string; loss: string };
export type RowDraft = { ingredient: string; kind: string; percent: string };
export const SIZE_QUANTITIES = { pieces: "count", weight: "weight", loss: "share" } as const;

export type Draft = {
  title: string;
  shop: string;
  readonly fields: Record<FieldName, string>;
  /** "" where nothing is chosen: no tin, no way of mixing yet. */
  readonly choices: Record<ChoiceName, string>;
  water: boolean;
  units: Units;
  /** The sheet's own formulas wherever they can do the sum. */
  plain: boolean;
  readonly sizes: SizeDraft[];
  readonly rows: RowDraft[];
};

/** Steps that scales commonly show (common practice, no source). */
const USUAL_STEPS: Readonly<Record<Units["weight"], Readonly<Partial<Record<FieldName, string>>>>> = {
  g: { step_coarse: "5", step_fine: "1" },
  oz: { step_coarse: "0.1", step_fine: "0.05" },
};

export const emptySize = (): SizeDraft => ({ name: "", pieces: "", weight: "", loss: "" });
export const emptyRow = (): RowDraft => ({ ingredient: "", kind: "", percent: "" });

/** A new sheet: the template's ingredients, its tin's shape, and blanks where the shop's own figures go. */
export function startFrom(model: SheetModel): Draft {
  const blank = Object.fromEntries(FIELD_NAMES.map((name) => [name, ""])) as Record<FieldName, string>;
  const chosen = (name: ChoiceName, otherwise: string) => String(model.sample[name] ?? otherwise);
  return {
    title: model.title,
    shop: "",
    fields: { ...blank, ...USUAL_STEPS.g },
    choices: {
      by: "pieces",
      tin_shape: model.parts.includes("tin") ? chosen("tin_shape", "box") : "",
      tin_kind: chosen("tin_kind", "white"),
      mixing: "",
      yeast: chosen("yeast", "fresh"),
    },
    water: model.parts.includes("water"),
    units: { weight: "g", temperature: "C", length: "cm" },
    plain: false,
    sizes: [emptySize()],
    rows: sampleRows(model.sample),
  };
}

function sampleRows(sample: Values): RowDraft[] {
  const columnOf = (name: string): readonly Value[] => {
    const column = sample[name];
    return Array.isArray(column) ? column : [];
  };
  const [kinds, percents] = [columnOf("kind"), columnOf("percent")];
  return columnOf("ingredient").map((ingredient, row) => {
    const percent = percents[row];
    return {
      ingredient: String(ingredient ?? ""),
      kind: String(kinds[row] ?? ""),
      percent: typeof percent === "number" ? shown(percent * 100, 3) : "",
    };
  });
}

/** What a tin's size holds: grams for "water", a number of sides for a polygon, a length otherwise. */
export function sizeQuantity(shape: string, place: number): Quantity {
  if (shape === "water") return "grams";
  return shape === "polygon" && place === 0 ? "count" : "length";
}

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
  draft.sizes.forEach((size, index) => {
    size.weight = convert(`size_weight/${index}`, size.weight, "weight");
  });
  draft.units = to;

  function convert(key: string, text: string, quantity: Quantity): string {
    const known = memory.get(key);
    const source = known !== undefined && known.became === text ? known : { typed: text, units: from };
    const became = inOtherUnits(source.typed, quantity, source.units, to);
    const kept = became ?? (inOtherUnits(text, quantity, from, to) === null ? text : source.typed);
    memory.set(key, { typed: source.typed, units: source.units, became: kept });
    return kept;
  }
}

/** "9x5x2.75", "9 by 5 in": the sizes one after the other, each with the unit that stood at the end; null for one size. */
export function splitSizes(text: string): string[] | null {
  const parts = text
    .trim()
    .split(/\s*(?:[x×*]|\bby\b)\s*/i)
    .map((part) => part.trim());
  if (parts.length < 2 || parts.some((part) => !/^[\d½⅓⅔¼¾⅛⅜⅝⅞]/.test(part))) return null;
  const unit = /[\d½⅓⅔¼¾⅛⅜⅝⅞]\s*([a-z"″]+\.?)$/i.exec(parts[parts.length - 1] ?? "")?.[1] ?? "";
  return parts.map((part) => (unit !== "" && /[\d½⅓⅔¼¾⅛⅜⅝⅞]$/.test(part) ? `${part} ${unit}` : part));
}

/** "100/67/2/1": percentages one below the other; null for a single one (two could be a fraction). */
export function splitPercents(text: string): string[] | null {
  const parts = text.split("/").map((part) => part.trim());
  return parts.length >= 3 && parts.every((part) => /^\d/.test(part)) ? parts : null;
}
