// A tin with what goes into it, as it is drawn and spoken of.
import { Refusal } from "../base/refusal.ts";
import { type Centimetres, type CubicCentimetres, toGrams, type Weight, type WeightUnit } from "../base/units.ts";
import { type TinShape, tinCapacity } from "../tins/tin.ts";
import { type Guide, type TinDoughKind, type TinNote, tinGuide, tinNote } from "../tins/tin-guide.ts";

/** A tin whose sizes are known, with what goes into it. */
export type TinView = {
  readonly shape: TinShape;
  readonly sizes: readonly (Centimetres | null)[];
  readonly capacity: CubicCentimetres;
  readonly kind: TinDoughKind;
  readonly guide: Guide;
  /** Dough in one tin, in the sheet's unit of weight; null while it cannot be told. */
  readonly dough: Weight | null;
  readonly note: TinNote | null;
  /** Why there is no note. */
  readonly refused: string;
};

type Tin = Pick<TinView, "shape" | "sizes" | "kind" | "dough">;

/** The tin, its guide and what the guide says of its dough; `dough` is in `unit`. */
export function tinView(tin: Tin, unit: WeightUnit): TinView {
  const capacity = tinCapacity(tin.shape, tin.sizes);
  const view = { ...tin, capacity, guide: tinGuide(tin.kind) };
  if (tin.dough === null) return { ...view, note: null, refused: "" };
  try {
    return { ...view, note: tinNote(toGrams(tin.dough, unit), capacity, tin.kind, unit), refused: "" };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { ...view, note: null, refused: `This dough ${error.faults[0]?.says ?? ""}` };
  }
}
