// How much the sheet makes: as the recipe does, or as somebody says.

import { fromGrams, type Grams } from "../../shared/base/units.ts";
import { isProblem } from "../../shared/cells/cell.ts";
import { inputNames } from "../../shared/protocol/bench.ts";
import type { SheetModel, Value } from "../../shared/sheet/model.ts";
import { readQuantity } from "../new-formula/quantity.ts";
import { tidy } from "../new-formula/shares.ts";
import { type Trouble, trouble } from "../new-formula/trouble.ts";
import type { ReadDraft } from "./draft.ts";

export const LABELS = {
  recipe: "The recipe makes, pieces",
  pieces: "Pieces",
  weight: "Sold at",
  loss: "Bake loss",
} as const;

const SUBJECTS = { ...LABELS, recipe: "What the recipe makes" } as const;

export const takesPieces = (model: SheetModel): boolean =>
  ["size_pieces", "size_weight"].every((name) => inputNames(model).has(name));

/**
 * Pieces and what one weighs, if they are known; otherwise the sheet makes the recipe as a whole. A piece that nobody
 * weighed is as large as the recipe's: its dough over the pieces it makes.
 */
export function makeValues(draft: ReadDraft, model: SheetModel, dough: Grams | null, troubles: Trouble[]) {
  const values = new Map<string, Value | readonly Value[]>();
  const typed = Object.values(draft.make).some((text) => text.trim() !== "");
  if (!typed || !takesPieces(model)) return { values, isWhole: true };
  const before = troubles.length;
  const take = (name: keyof ReadDraft["make"], quantity: "count" | "weight" | "share") => {
    const read = readQuantity(draft.make[name], quantity, draft.units);
    if (isProblem(read)) troubles.push(trouble(`make/${name}`, `${SUBJECTS[name]} ${read.problem}.`));
    return isProblem(read) ? null : read;
  };
  const recipe = take("recipe", "count");
  const pieces = take("pieces", "count") ?? recipe;
  const loss = take("loss", "share");
  const sold = take("weight", "weight");
  const own = recipe === null || dough === null ? null : fromGrams(dough, draft.units.weight) / recipe;
  const each = sold ?? (own === null ? null : tidy(own * (1 - (loss ?? 0))));
  if (troubles.length === before) {
    if (pieces === null) troubles.push(trouble("make/pieces", "Enter how many pieces.", true));
    if (sold === null && recipe === null) {
      const says = "Enter what one piece weighs when it is sold, or how many pieces the recipe makes.";
      troubles.push(trouble("make/weight", says, true));
    }
  }
  values.set("by", "pieces");
  values.set("size_pieces", [pieces]);
  values.set("size_weight", [each]);
  values.set("size_loss", [loss]);
  return { values, isWhole: false };
}
