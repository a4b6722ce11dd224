import { builtInNamed, builtInRows, nameKey } from "./built-in-larder.ts";
import type { Value, Values } from "./model.ts";

/** What a larder can start with: the built-in table without water and ice, which nobody buys by the sack. */
export const startIngredients = (): { name: string; kind: string }[] =>
  builtInRows().flatMap(({ name, kind }) => (kind === "water" || kind === "ice" ? [] : [{ name, kind }]));

/**
 * What a larder sheet starts with: the ingredients that were picked, or all of the built-in table, each once, with their
 * kinds. Compositions stay blank, because a blank falls back to the same table; allergens an ingredient has by its nature
 * stand beside the column of checked ones, never in it.
 */
export function startingLarder(typed: Values): Values {
  const picked = typed.ingredient;
  const names = Array.isArray(picked) ? (picked as readonly Value[]) : startIngredients().map(({ name }) => name);
  const seen = new Set<string>();
  const kept = names.flatMap((name, at) => {
    const key = nameKey(String(name ?? ""));
    if (name === null || key === "" || seen.has(key)) return [];
    seen.add(key);
    return [at];
  });
  const columns = Object.entries(typed).map(([column, values]) => [
    column,
    Array.isArray(values) ? kept.map((at) => (values as readonly Value[])[at] ?? null) : values,
  ]);
  const others = Array.isArray(typed.also_called) ? (typed.also_called as readonly Value[]) : [];
  const known = kept.map((at) =>
    [names[at], ...String(others[at] ?? "").split(";")]
      .map((name) => builtInNamed(String(name ?? "")))
      .find((one) => one),
  );
  const own = Array.isArray(typed.kind) ? (typed.kind as readonly Value[]) : [];
  return {
    ...Object.fromEntries(columns),
    ingredient: kept.map((at) => names[at] ?? null),
    kind: kept.map((at, index) => own[at] ?? known[index]?.kind ?? null),
    usual: known.map((one) => one?.allergensByNature.join(", ") || null),
  };
}
