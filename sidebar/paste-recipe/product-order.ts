// A finished product out of a pasted text: a piece of its dough, and of each part that is kept apart what goes on or into one piece.

import { tidy } from "../../shared/base/number.ts";
import { fromGrams, grams } from "../../shared/base/units.ts";
import { inputNames, type Order } from "../../shared/protocol/order.ts";
import type { Described, Row, StageRole } from "../../shared/recipe/text/description.ts";
import type { PART_TYPES } from "../../templates/product/parts.ts";
import { type FieldFault, fieldFault } from "../kit/field-fault.ts";
import type { Assessed } from "./order.ts";
import { ownOf, type PasteState, partAt } from "./state.ts";

type PartType = (typeof PART_TYPES)[number];
export type ProductPart = { readonly name: string; readonly type: PartType; readonly each: number | null };

/** What a part is to the product; flour for the bench stays on the bench. */
const TYPES: Readonly<Partial<Record<StageRole, PartType>>> = {
  ...{ filling: "filling", topping: "topping", icing: "topping", "egg wash": "topping", "roll-in": "other" },
  part: "other",
};
/** A bath that pieces are boiled or fried in is not eaten. */
const BATH = /\b(?:boil\w*|poach\w*|fry\w*|frying|lye|bath)\b/i;

/** The parts of one piece beside its dough, in grams; none where the text keeps nothing apart. */
export function productParts(described: Described, assessed: Assessed): ProductPart[] {
  const { rows, stages } = described;
  const isRolled = inputNames(assessed.model).has("roll_in_share");
  return rows.flatMap((row): ProductPart[] => {
    const stage = stages[row.stage];
    const type = stage === undefined ? undefined : TYPES[stage.role];
    if (stage === undefined || type === undefined || row.takes !== null || BATH.test(stage.name)) return [];
    if (stage.role === "roll-in" && isRolled) return [];
    return [{ name: row.name, type, each: eachOf(row, described, assessed) }];
  });
}

/** By the pieces of the text, else by the dough that a piece takes. */
function eachOf({ grams: weight, percent }: Row, { formula, yield: { pieces } }: Described, { each }: Assessed) {
  const shares = formula.rows.reduce((all, row) => all + (row.percent ?? 0), 0);
  if (weight === null) return percent === null || each === null || shares === 0 ? null : (each * percent) / shares;
  if (pieces !== null && pieces > 0) return weight / pieces;
  return each === null || formula.dough === null || formula.dough === 0 ? null : (weight * each) / formula.dough;
}

export type ProductOrder = { readonly order: Order; readonly faults: readonly FieldFault[]; readonly title: string };

export const productTitle = (state: PasteState, assessed: Assessed): string =>
  ownOf(state).product ?? (assessed.title === "" ? "" : `${assessed.title}, finished`);

export function productOrder(state: PasteState, assessed: Assessed): ProductOrder {
  const described = partAt(state, state.shown);
  const parts = productParts(described, assessed);
  const { pieces, each } = assessed;
  const title = productTitle(state, assessed).trim();
  const faults = [...assessed.faults];
  if (title === "") faults.push(fieldFault("product", "Give the finished product a name.", true));
  else if (title === assessed.title)
    faults.push(fieldFault("product", "The formula has this name. Enter another one for the finished product."));
  if (pieces === null || each === null) faults.push(fieldFault("make/pieces", "Enter how many pieces are made.", true));
  const { weight } = state.units;
  const inUnit = (amount: number | null) => (amount === null ? null : tidy(fromGrams(grams(amount), weight)));
  const all: ProductPart[] = [{ name: assessed.title, type: "dough", each }, ...parts];
  return {
    title,
    faults,
    order: {
      template: "finished-product",
      options: { ...state.units, parts: ["label"] },
      values: {
        title,
        pieces_made: pieces,
        ingredient: all.map(({ name }) => name),
        kind: all.map(({ type }) => type),
        part_each: all.map((part) => inUnit(part.each)),
        part_unit: all.map(() => weight),
        ...(state.shop === null || state.shop.law === "" ? {} : { law: state.shop.law }),
      },
    },
  };
}
