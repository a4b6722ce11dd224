// The tin that a text names, for a sheet that has a place for one; how deep it is, is asked for where the text does not say it.

import { tidy } from "../../shared/base/number.ts";
import { isFault } from "../../shared/base/refusal.ts";
import { showNumber } from "../../shared/base/show.ts";
import { type Centimetres, fromCentimetres, toCentimetres } from "../../shared/base/units.ts";
import { inputNames } from "../../shared/protocol/order.ts";
import type { Described } from "../../shared/recipe/text/description.ts";
import type { TinRead } from "../../shared/recipe/text/tins.ts";
import type { SheetModel, Value } from "../../shared/sheet/model.ts";
import { element, say } from "../kit/element.ts";
import { type FieldFault, fieldFault } from "../kit/field-fault.ts";
import { type Form, textField } from "../kit/fields.ts";
import { readQuantity } from "../new-formula/quantity.ts";
import { unitSign } from "../new-formula/unit-change.ts";
import { describedNow, ownOf, type PasteState } from "./state.ts";

/** The tin of a text whose pieces each lie in a tin of their own; "16 squares" out of one tin say nothing of its dough. */
export function tinFor({ tin, yield: { pieces, tins } }: Described, model: SheetModel): TinRead | null {
  if (tin === null || !model.parts.includes("tin") || !inputNames(model).has("tin_shape")) return null;
  const isEach = pieces === null || pieces === tins || (tins === null && (tin.isLoaf || pieces === 1));
  return isEach ? tin : null;
}

/** What goes into the tin's cells; nothing while its depth is not known. */
export function tinValues(state: PasteState, tin: TinRead | null, at: number, faults: FieldFault[]): [string, Value][] {
  if (tin === null) return [];
  const { length } = state.units;
  const quantityOrFault = readQuantity(ownOf(state, at).depth ?? "", "length", state.units);
  if (isFault(quantityOrFault) && tin.depth === null)
    faults.push(fieldFault("make/depth", `The depth ${quantityOrFault.says}.`));
  const typed = isFault(quantityOrFault) || quantityOrFault === null ? null : toCentimetres(quantityOrFault, length);
  const depth = tin.depth ?? typed;
  if (depth === null) return [];
  const sizes = [...tin.across, depth];
  return [
    ["tin_shape", tin.shape],
    ...sizes.map((size, place): [string, Value] => [`tin_size_${place + 1}`, tidy(fromCentimetres(size, length))]),
  ];
}

/** What was read of the tin, and a field for its depth where the text leaves it out. */
export function tinSection(state: PasteState, form: Form, now: () => { readonly model: SheetModel }): HTMLElement {
  const words = element("p", { class: "note" });
  const field = textField(
    form,
    {
      at: () => "make/depth",
      label: () => "Depth of the tin",
      unit: () => unitSign("length", state.units),
      numeric: true,
    },
    {
      get: () => ownOf(state).depth ?? "",
      set: (text) => {
        ownOf(state).depth = text;
      },
    },
  );
  const node = element("div", { hidden: true }, words, field);
  form.onChange(() => {
    const tin = tinFor(describedNow(state), now().model);
    node.hidden = tin === null;
    field.hidden = tin?.depth !== null;
    say(words, tin === null ? "" : sentenceOf(tin, state));
  });
  return node;
}

function sentenceOf({ shape, across, depth }: TinRead, { units: { length } }: PasteState): string {
  const sizes = (list: readonly Centimetres[]) =>
    list.map((size) => showNumber(fromCentimetres(size, length), 1)).join(" × ");
  const tin = `The text names a ${shape === "round" ? "round tin" : "tin"} of ${sizes(depth === null ? across : [...across, depth])} ${length}.`;
  return depth === null
    ? `${tin} Enter its depth, and the sheet compares the dough with it. If blank, the sheet has no tin.`
    : `${tin} The sheet compares the dough with it.`;
}
