import { type Fault, fault, Refusal, refuse, refuseAll } from "../base/refusal.ts";
import { quote } from "../base/show.ts";
import { type Centimetres, centimetres, type LengthUnit, toCentimetres } from "../base/units.ts";
import type { Sized } from "./size-reader.ts";
import { isLength, sizeName, type TinShape, tinArea, tinCapacity } from "./tin.ts";
import { refuseSmall } from "./tin-guide.ts";

/** What tins are compared by. */
export const TIN_MEASURES = {
  capacity: ["volume", "brim"],
  area: ["rim", "surface", "surface area"],
} as const;
export type TinMeasure = keyof typeof TIN_MEASURES;

/** Sizes of one tin, in its shape's order. */
type Sizes = readonly (Sized | null)[];
type Match = {
  /** Each tin's capacity or area over what is wanted; null where a row is blank. */
  readonly ratios: readonly (number | null)[];
  /** The row nearest to what is wanted, from 1, the first on a tie; null where all are blank. */
  readonly nearest: number | null;
};

/** The shop's tins against a capacity in cm³ or an area in cm²; every row that cannot be measured is refused together. */
export function matchTins(
  wanted: Sized,
  shapes: readonly (TinShape | null)[],
  sizes: readonly Sizes[],
  by: TinMeasure,
  unit: LengthUnit,
): Match {
  const target = wantedSize(wanted, by);
  if (by === "capacity") refuseSmall(target, "wanted");
  const faults: Fault[] = [];
  const rows = Math.max(shapes.length, sizes.length);
  const ratios = Array.from({ length: rows }, (_, index) => {
    const shape = shapes[index] ?? null;
    const typed = sizes[index] ?? [];
    if (shape === null) {
      if (typed.some((size) => size !== null))
        faults.push(
          fault("is blank though the row has sizes; enter a shape such as box or round", "shapes", index + 1),
        );
      return null;
    }
    const measured = measureOf(shape, typed, by, unit, index + 1, faults);
    return measured === null ? null : measured / target;
  });
  refuseAll(faults);
  return { ratios, nearest: nearestTo(ratios) };
}

function measureOf(
  shape: TinShape,
  typed: Sizes,
  by: TinMeasure,
  unit: LengthUnit,
  row: number,
  faults: Fault[],
): number | null {
  try {
    const sizes = typed.map((size, place) => sizeAt(shape, size, place, unit));
    return by === "area" ? tinArea(shape, sizes) : tinCapacity(shape, sizes);
  } catch (error) {
    // What is wrong with one tin is told with its row, beside what is wrong with others.
    if (!(error instanceof Refusal)) throw error;
    faults.push(
      ...error.faults.map(({ says, argument }) => fault(says, argument === "shape" ? "shapes" : argument, row)),
    );
    return null;
  }
}

function wantedSize(wanted: Sized, by: TinMeasure): number {
  if (typeof wanted === "number") return wanted;
  const [of, example] = by === "area" ? ["area", "730 cm²"] : ["volume", "1.9 l"];
  if (wanted.of === of) return wanted.value;
  return refuse(`is ${quote(wanted.text)}, which is no ${by}; enter one such as "${example}"`, "wanted");
}

/** One size in centimetres, or grams of water, or a number of sides. */
function sizeAt(shape: TinShape, size: Sized | null, place: number, unit: LengthUnit): Centimetres | null {
  if (size === null) return null;
  if (typeof size === "number") return isLength(shape, place) ? toCentimetres(size, unit) : centimetres(size);
  const [of, example] = isLength(shape, place)
    ? ["length", "23 cm"]
    : shape === "water"
      ? ["weight", "1.5 kg"]
      : ["", "6"];
  if (size.of === of) return centimetres(size.value);
  const name = sizeName(shape, place) ?? "a size";
  return refuse(
    `have ${quote(size.text)} as ${name}; enter it such as ${of === "" ? example : `"${example}"`}`,
    "sizes",
  );
}

function nearestTo(ratios: readonly (number | null)[]): number | null {
  let nearest: number | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const [index, ratio] of ratios.entries()) {
    if (ratio === null || Math.abs(ratio - 1) >= least - TIE) continue;
    nearest = index + 1;
    least = Math.abs(ratio - 1);
  }
  return nearest;
}

/** Two tins that differ by less are as near as each other. */
const TIE = 1e-9;
