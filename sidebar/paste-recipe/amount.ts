// How much the sheet is to make: what is typed wins over what the text says.

import { tidy } from "../../shared/base/number.ts";
import { isFault } from "../../shared/base/refusal.ts";
import { fromGrams, grams, toGrams } from "../../shared/base/units.ts";
import { inputNames } from "../../shared/protocol/order.ts";
import type { SheetModel, Value } from "../../shared/sheet/model.ts";
import { type FieldFault, fieldFault } from "../kit/field-fault.ts";
import { readQuantity } from "../new-formula/quantity.ts";
import { rolledPart } from "./roll-in.ts";
import { ownOf, type PasteState, partAt } from "./state.ts";

export const takesPieces = (model: SheetModel): boolean =>
  ["size_pieces", "size_weight"].every((name) => inputNames(model).has(name));

/** How much to make: pieces of a weight, or the whole dough; what is typed wins over what the text says. */
export function amountOf(state: PasteState, at: number, model: SheetModel, faults: FieldFault[]) {
  const described = partAt(state, at);
  const { yield: yieldRead } = described;
  // With what is rolled into it, where the sheet keeps that apart.
  const wholeRead = described.formula.dough;
  const whole = wholeRead === null ? null : wholeRead * (1 + rolledPart(described, model));
  const choices = ownOf(state, at);
  const read = (
    name: "pieces" | "weight" | "dough" | "loss",
    quantity: "count" | "weight" | "share",
    share: number | null,
  ) => {
    const text = choices[name]?.trim();
    if (text === undefined) return share;
    if (text === "") return null;
    const value = readQuantity(text, quantity, state.units);
    if (isFault(value)) faults.push(fieldFault(`make/${name}`, `The figure ${value.says}.`));
    return isFault(value) || value === null ? null : quantity === "weight" ? toGrams(value, state.units.weight) : value;
  };
  const pieces = read("pieces", "count", yieldRead.pieces);
  const loss = read("loss", "share", null);
  const typed = read("weight", "weight", yieldRead.pieceWeight);
  const dough = read("dough", "weight", null);
  const values = new Map<string, Value | readonly Value[]>();
  const inUnit = (value: number) => tidy(fromGrams(grams(value), state.units.weight));
  // Pieces that nobody weighed are as large as the recipe's own.
  const base = dough ?? whole;
  const each =
    typed ??
    (yieldRead.pieces !== null && whole !== null
      ? whole / yieldRead.pieces
      : base !== null && pieces !== null
        ? base / pieces
        : null);
  if (
    choices.pieces !== undefined &&
    pieces !== null &&
    yieldRead.pieces === null &&
    typed === null &&
    takesPieces(model)
  )
    faults.push(fieldFault("make/weight", "Enter the scaling weight of a piece.", true));
  if (takesPieces(model) && pieces !== null && each !== null && choices.dough === undefined) {
    values.set("by", "pieces");
    values.set("size_pieces", [pieces]);
    values.set("size_weight", [inUnit(each * (1 - (loss ?? 0)))]);
    values.set("size_loss", [loss]);
    return { values, dough: pieces * each, pieces, each, isByPieces: true };
  }
  // A sheet without the weight of a piece, such as one by diameters, still makes the dough of all the pieces told.
  const made = dough ?? (pieces !== null && typed !== null ? pieces * typed : whole);
  if (made !== null) {
    values.set("by", wholeChoice(model));
    values.set("dough_wanted", inUnit(made));
  }
  return { values, dough: made, pieces, each, isByPieces: false };
}

/** What the sheet calls making by the whole of it. */
function wholeChoice(model: SheetModel): string {
  const cells = model.bands.flat().flatMap((item) => ("lines" in item ? item.lines.flatMap((line) => line.cells) : []));
  const choices = cells.find(({ name }) => name === "by")?.choices ?? [];
  return choices.find((one) => one === "batter") ?? "dough";
}
