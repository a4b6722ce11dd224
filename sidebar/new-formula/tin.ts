import { Refusal } from "../../shared/base/refusal.ts";
import { showNumber } from "../../shared/base/show.ts";
import { type Centimetres, type Weight, weight } from "../../shared/base/units.ts";
import { type TinView, tinView } from "../../shared/drawings/tin-view.ts";
import { TIN_SIZES, type TinShape, tinCapacity, tinSizes } from "../../shared/tins/tin.ts";
import { TIN_DOUGH_KINDS, type TinDoughKind, tinDough, tinGuide } from "../../shared/tins/tin-guide.ts";
import { type FieldFault, fieldFault } from "../kit/field-fault.ts";
import { type Draft, type ReadField, TIN_SIZE_FIELDS } from "./draft.ts";
import { sizeQuantity } from "./quantity.ts";

type Values = Map<string, string | number | null | readonly (string | number | null)[]>;

export const sizeNames = (shape: TinShape): string[] => [...TIN_SIZES[shape].needed, ...TIN_SIZES[shape].extra];

/** The tin, its sizes checked one by one; `scaled` is what a piece weighs, where the sheet is made by pieces. */
export function readTin(
  draft: Draft,
  take: ReadField,
  values: Values,
  faults: FieldFault[],
  scaled: Weight | null,
): TinView | null {
  const shape = draft.choices.tin_shape as TinShape | "";
  const byTins = draft.choices.by === "tins";
  if (shape === "") {
    if (byTins) faults.push(fieldFault("tin_shape", "Choose a tin shape to scale to tins.", true));
    return null;
  }
  values.set("tin_shape", shape);
  values.set("tin_kind", draft.choices.tin_kind);
  const fill = take("tin_fill");
  const typed = readSizes(shape, draft, take, faults);
  if (typed === null) return null;
  const kind = (
    Object.keys(TIN_DOUGH_KINDS).includes(draft.choices.tin_kind) ? draft.choices.tin_kind : "white"
  ) as TinDoughKind;
  const sizes = tinSizes(shape, typed, draft.units.length);
  askSizes(shape, typed, draft, faults);
  const unit = draft.units.weight;
  const byFill = weight(tinDough(tinCapacity(shape, sizes), fill ?? tinGuide(kind)[1], 1, unit));
  return tinView({ shape, sizes, kind, dough: draft.choices.by === "pieces" ? scaled : byFill }, unit);
}

/** Cubic centimetres that no tin of a bakery holds: a plank tin of 76 × 46 × 10 cm has 35 litres. */
const MAX_CAPACITY = 40_000;

/** Sizes in millimetres make a tin a thousand times as large. */
function askSizes(shape: TinShape, typed: readonly (number | null)[], draft: Draft, faults: FieldFault[]): void {
  const { length } = draft.units;
  const holds = tinCapacity(shape, tinSizes(shape, typed, length));
  if (shape === "water" || holds <= MAX_CAPACITY) return;
  const sizes = typed.filter((size) => size !== null);
  const smaller = length === "in" ? ["cm", "mm"] : ["mm"];
  const says = `A tin of ${sizes.map((size) => showNumber(size, 2)).join(" × ")} ${length} holds ${showNumber(holds / 1000, 0)} litres. Is it in ${smaller.join(" or ")}? Enter the unit too, such as ${showNumber(sizes[0] ?? 0, 2)} ${smaller[0]}.`;
  faults.push(fieldFault("tin_size_1", says));
}

/** The sizes as typed, in order; null where one is missing or they make no tin. */
function readSizes(shape: TinShape, draft: Draft, take: ReadField, faults: FieldFault[]): (number | null)[] | null {
  const before = faults.length;
  const { needed, extra } = TIN_SIZES[shape];
  const sizes = sizeNames(shape).map((name, place) => {
    const field = TIN_SIZE_FIELDS[place] ?? "tin_size_1";
    const text = draft.fields[field];
    if (/\d\s*[x×*]\s*\d/i.test(text)) {
      faults.push(
        fieldFault(
          field,
          `"${text}" looks like several sizes, and a ${shape} tin needs ${sizeNames(shape).join(", ")}; enter one a field.`,
        ),
      );
      return null;
    }
    return take(field, place < needed.length ? missing(shape, name) : undefined, sizeQuantity(shape, place));
  });
  const extras = extra.filter((_, place) => sizes[needed.length + place] !== null);
  if (extras.length > 0 && extras.length < extra.length) {
    const blank = extra.findIndex((_, place) => sizes[needed.length + place] === null);
    const field = TIN_SIZE_FIELDS[needed.length + blank] ?? "tin_size_1";
    faults.push(fieldFault(field, `Enter the ${extra[blank]} too, or clear the ${extras.join("")}.`, true));
  }
  if (faults.length > before) return null;
  while (sizes.length > needed.length && sizes[sizes.length - 1] === null) sizes.pop();
  try {
    // Its rules are about proportions, so the sentence can keep the numbers as they were typed.
    tinCapacity(shape, sizes as (Centimetres | null)[]);
    return sizes;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    faults.push(fieldFault("tin_size_1", `The sizes ${error.faults[0]?.says ?? ""}.`));
    return null;
  }
}

const missing = (shape: TinShape, name: string): string =>
  shape === "water"
    ? "Fill the tin with water to the brim and enter what the water weighs in grams."
    : `Enter the tin's ${name === "sides" ? "number of sides" : `inner ${name}`}.`;
