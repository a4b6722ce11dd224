// The answer to the question what a larder can start with, checked where it arrives.
import { refuse } from "../base/refusal.ts";
import type { StartIngredient } from "../larder/start-ingredients.ts";

/** The ingredients as they arrived in the sidebar; refuses what are none. */
export function readIngredients(raw: unknown): readonly StartIngredient[] {
  const { ingredients } = (raw ?? {}) as Record<string, unknown>;
  const fits = (one: unknown): boolean => {
    const { name, kind, also, usual, water } = (one ?? {}) as Record<string, unknown>;
    if (water !== null && !Number.isFinite(water)) return false;
    return [name, kind, usual].every((text) => typeof text === "string") && Array.isArray(also);
  };
  if (Array.isArray(ingredients) && ingredients.every(fits)) return ingredients as StartIngredient[];
  return refuse("The ingredients that it can start with could not be read. Reload the spreadsheet.");
}
