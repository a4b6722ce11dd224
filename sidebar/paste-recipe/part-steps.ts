// What is kept apart from the dough, as steps of the sheet's method: what goes in, by piece or by dough.

import { showNumber } from "../../shared/base/show.ts";
import { fromGrams, grams, type WeightUnit } from "../../shared/base/units.ts";
import { inputNames } from "../../shared/protocol/order.ts";
import type { Described, Row } from "../../shared/recipe/text/description.ts";
import type { SheetModel } from "../../shared/sheet/model.ts";
import type { MethodRow } from "./method.ts";

const MAX_NAME_LENGTH = 60;
const MAX_HOW_LENGTH = 400;
/** Amounts of a part are told for so much dough, where nobody says how many pieces. */
const FOR_DOUGH = 1000;

export function besideSteps(described: Described, model: SheetModel, unit: WeightUnit): MethodRow[] {
  const { formula, rows, stages } = described;
  const isRolled = inputNames(model).has("roll_in_share");
  return formula.parts.flatMap(({ stage, name }): MethodRow[] => {
    if (isRolled && stages[stage]?.role === "roll-in") return [];
    const mine = rows.filter((row) => row.stage === stage && row.takes === null);
    const scale = scaleOf(described);
    const list = mine.map((row) => amountSays(row, scale, unit)).join(", ");
    const how = `Beside the dough${scale.says}: ${list}.`;
    const title = name.replace(/[\s:]+$/, "").replace(/^for (?:the )?/i, "");
    return [
      {
        name: `${title.charAt(0).toUpperCase()}${title.slice(1)}`.slice(0, MAX_NAME_LENGTH),
        minutes: null,
        temperature: null,
        how: how.slice(0, MAX_HOW_LENGTH),
      },
    ];
  });
}

type Scale = { readonly factor: number; readonly says: string };

function scaleOf({ formula, yield: yieldRead }: Described): Scale {
  if (yieldRead.pieces !== null && yieldRead.pieces > 0)
    return { factor: 1 / yieldRead.pieces, says: ", for each piece" };
  if (formula.dough !== null && formula.dough > 0)
    return { factor: FOR_DOUGH / formula.dough, says: `, for ${showNumber(FOR_DOUGH)} g of dough` };
  return { factor: 1, says: "" };
}

function amountSays({ name, grams: weight, percent }: Row, { factor }: Scale, unit: WeightUnit): string {
  if (weight === null) return percent === null ? name : `${name} ${showNumber(percent, 2)} %`;
  const value = fromGrams(grams(weight * factor), unit);
  return `${name} ${showNumber(value, value < 10 ? 2 : value < 100 ? 1 : 0)} ${unit}`;
}
