// Fat that is rolled in, where the sheet keeps it apart from the dough that is mixed.

import { inputNames } from "../../shared/protocol/order.ts";
import type { Described } from "../../shared/recipe/text/description.ts";
import type { SheetModel, Value } from "../../shared/sheet/model.ts";

/** Fat that is rolled in, as a share of the base dough. */
function rollInOf({ formula, rows, stages }: Described): { name: string; share: number } | undefined {
  const fats = rows.filter((row) => stages[row.stage]?.role === "roll-in" && row.type === "fat");
  const weight = fats.reduce((all, row) => all + (row.grams ?? 0), 0);
  const [first] = fats;
  if (first === undefined) return undefined;
  if (formula.dough !== null && weight > 0) return { name: first.name, share: weight / formula.dough };
  // Beside percentages it is a share of the flour.
  const dough = formula.rows.reduce((all, row) => all + (row.percent ?? 0), 0);
  const percent = fats.reduce((all, row) => all + (row.percent ?? 0), 0);
  return dough > 0 && percent > 0 ? { name: first.name, share: percent / dough } : undefined;
}

/** What is rolled in beside the base dough on a sheet that keeps it apart. */
export const rolledPart = (described: Described, model: SheetModel): number =>
  inputNames(model).has("roll_in_share") ? (rollInOf(described)?.share ?? 0) : 0;

export function rollInValues(described: Described): [string, Value][] {
  const rolled = rollInOf(described);
  if (rolled === undefined) return [];
  return [
    ["roll_in_name", rolled.name],
    ["roll_in_share", Math.round(rolled.share * 1e9) / 1e9],
    ["roll_in_of", "base"],
  ];
}
