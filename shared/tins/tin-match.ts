import { CellError, type Fault, fault, refuseAll } from "../base/refusal.ts";
import type { LengthUnit } from "../base/units.ts";
import { type TinShape, tinArea, tinCapacity, tinSizes } from "./tin.ts";

/** What tins are compared by. */
export const TIN_MEASURES = {
  capacity: ["volume", "brim"],
  area: ["rim", "surface", "surface area"],
} as const;
export type TinMeasure = keyof typeof TIN_MEASURES;

/** Sizes of one tin, in its shape's order. */
type Sizes = readonly (number | null)[];
type Match = {
  /** Each tin's capacity or area over what is wanted; null where a row is blank. */
  readonly ratios: readonly (number | null)[];
  /** The row nearest to what is wanted, from 1, the first on a tie; null where all are blank. */
  readonly nearest: number | null;
};

/** The shop's tins against a capacity in cm³ or an area in cm²; every row that cannot be measured is refused together. */
export function matchTins(
  wanted: number,
  shapes: readonly (TinShape | null)[],
  sizes: readonly Sizes[],
  by: TinMeasure,
  unit: LengthUnit,
): Match {
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
    return measured === null ? null : measured / wanted;
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
  const sizes = tinSizes(shape, typed, unit);
  try {
    return by === "area" ? tinArea(shape, sizes) : tinCapacity(shape, sizes);
  } catch (error) {
    // What is wrong with one tin is told with its row, beside what is wrong with others.
    if (!(error instanceof CellError)) throw error;
    faults.push(
      ...error.faults.map(({ says, argument }) => fault(says, argument === "shape" ? "shapes" : argument, row)),
    );
    return null;
  }
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
