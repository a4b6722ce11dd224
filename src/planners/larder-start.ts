import { refuse } from "../../shared/base/refusal.ts";
import { nameKey } from "../../shared/larder/built-in-larder.ts";
import type { StartIngredient } from "../../shared/larder/start-ingredients.ts";
import type { Value, Values } from "../../shared/sheet/model.ts";

/** A new sheet has 1000 rows, and a larder needs some of them for its head; no shop buys half as many things. */
const MAX_INGREDIENTS = 500;

/**
 * What a larder sheet starts with: the ingredients that were picked, or all that it can start with, each once, with their
 * kinds. Compositions stay blank, because a blank falls back to the same table; allergens an ingredient has by its nature
 * stand beside the column of checked ones, never in it.
 */
export function startingLarder(typed: Values, start: readonly StartIngredient[]): Values {
  const picked = typed.ingredient;
  if (picked !== undefined && !Array.isArray(picked)) {
    refuse(
      "The ingredients of an ingredient sheet are a list of names. Close Gramwright, open it again and choose them again.",
    );
  }
  const names = Array.isArray(picked) ? (picked as readonly Value[]) : start.map(({ name }) => name);
  if (names.length > MAX_INGREDIENTS) {
    refuse(
      `An ingredient sheet starts with up to ${MAX_INGREDIENTS} ingredients; build it with those and paste the others into it.`,
    );
  }
  const seen = new Set<string>();
  const keptRows = names.flatMap((name, at) => {
    const key = nameKey(String(name ?? ""));
    if (name === null || key === "" || seen.has(key)) return [];
    seen.add(key);
    return [at];
  });
  const columns = Object.entries(typed).map(([column, values]) => [
    column,
    Array.isArray(values) ? keptRows.map((at) => (values as readonly Value[])[at] ?? null) : values,
  ]);
  const others = Array.isArray(typed.also_called) ? (typed.also_called as readonly Value[]) : [];
  const byName = new Map(start.flatMap((one) => [one.name, ...one.also].map((name) => [nameKey(String(name)), one])));
  const known = keptRows.map((at) =>
    [names[at], ...String(others[at] ?? "").split(";")]
      .map((name) => byName.get(nameKey(String(name ?? ""))))
      .find((one) => one),
  );
  const ownKinds = Array.isArray(typed.kind) ? (typed.kind as readonly Value[]) : [];
  return {
    ...Object.fromEntries(columns),
    ingredient: keptRows.map((at) => names[at] ?? null),
    kind: keptRows.map((at, index) => ownKinds[at] ?? known[index]?.kind ?? null),
    usual: known.map((one) => one?.usual || null),
  };
}
