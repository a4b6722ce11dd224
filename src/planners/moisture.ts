import { isProblem } from "../../shared/cells/cell.ts";
import { saysItsWater } from "../../shared/enrichment/enrichment.ts";
import { nameKey } from "../../shared/larder/built-in-larder.ts";
import { kind } from "../../shared/larder/kinds.ts";
import type { StartIngredient } from "../../shared/larder/start-ingredients.ts";
import type { Value, Values } from "../../shared/sheet/model.ts";

const listOf = (typed: Values[string] | undefined): readonly Value[] => (Array.isArray(typed) ? typed : []);

/**
 * The inputs of a plain sheet with its list of what water is in eggs, milk, butter and so on: the names of the order's rows and
 * the figures of the built-in table (USDA SR28), blank where it has none. A list that was given stays.
 */
export function withMoisture(typed: Values, known: readonly StartIngredient[]): Values {
  if (typed.moist_name !== undefined) return typed;
  const kinds = listOf(typed.kind);
  const names = listOf(typed.ingredient).flatMap((name, row) => {
    const read = kind().read(kinds[row] ?? "");
    if (name === null || isProblem(read) || "unread" in read || saysItsWater(read)) return [];
    return [String(name)];
  });
  const each = [...new Set(names)];
  const water = new Map(known.flatMap((one) => [one.name, ...one.also].map((name) => [nameKey(name), one.water])));
  return { ...typed, moist_name: each, moist_water: each.map((name) => water.get(nameKey(name)) ?? null) };
}
