// Fresh, active dry and instant yeast in the place of each other, by the work they do; the water makes up the weight.
import { refuse } from "../base/refusal.ts";
import { shownShare } from "../base/show.ts";
import { weight } from "../base/units.ts";
import { swapYeast, type Yeast } from "../formula/yeast.ts";
import type { Changed } from "./change.ts";
import { type Edit, editOf } from "./edit.ts";
import { allFlour, type Formula, type Row } from "./formula.ts";

export const YEAST_NAMES: Readonly<Record<Yeast, string>> = {
  fresh: "Fresh yeast",
  "active dry": "Active dry yeast",
  instant: "Instant yeast",
};
export const YEAST_KINDS = Object.keys(YEAST_NAMES) as Yeast[];

/** A part of a row stays a row of its own. */
export function putInstead(edit: Edit, row: Row, part: number, name: string, type: string, amount: number): void {
  if (part >= 1) edit.replace(row.id, name, type, amount);
  else {
    edit.set(row.id, row.amount * (1 - part));
    edit.add(name, type, amount);
  }
}

export function otherYeast(
  formula: Formula,
  { row, from, to }: { readonly row: Row; readonly from: Yeast; readonly to: Yeast },
  part: number,
): Changed {
  const gone = row.amount * part;
  const { yeast, water } = swapYeast(weight(gone), from, to);
  const edit = editOf(formula);
  putInstead(edit, row, part, YEAST_NAMES[to], "yeast", yeast);
  edit.water(water, YEAST_NAMES[to]);
  const all = allFlour(formula.rows);
  const { setApart } = formula;
  const isMoved = setApart !== null && setApart.yeast > 0;
  if (isMoved && part < 1)
    refuse(`The ${setApart.sort} has yeast of its own. Swap all of it, so that both are of one sort.`);
  const now = isMoved ? { ...formula, setApart: { ...setApart, yeast: (setApart.yeast * yeast) / gone } } : formula;
  return {
    formula: edit.done(now),
    line: `${shownShare(gone / all)} ${row.name} is ${shownShare(yeast / all)} ${YEAST_NAMES[to]}`,
    rows: edit.moved(),
    parts: isMoved ? ["set apart"] : [],
    notes: [
      "Weights for the same work: 1 of fresh is 0.40 of active dry or 0.33 of instant.",
      ...(water === 0
        ? []
        : ["Fresh yeast is mostly water: the water makes up for it, and the dough weighs the same."]),
      ...(isMoved ? [`The yeast of the ${setApart.sort} changes with it.`] : []),
      ...(to === "active dry"
        ? ["Soak active dry yeast in four times its weight of the formula's water at 40 to 46 °C first."]
        : []),
    ],
    cautions: [],
  };
}
