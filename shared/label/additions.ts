// Flour that the law has vitamins and minerals put into, which a list must name.
import type { LabelLaw } from "../enrichment/protein.ts";
import type { Ingredient } from "../larder/ingredient.ts";

/** The Bread and Flour Regulations of the UK and 21 CFR 137 both leave whole grain alone (from memory). */
const WHOLE = /\b(?:whole ?meal|whole[ -]?wheat|whole[ -]?grain|whole spelt|graham|atta)\b/i;
/** A label name that says what is in the flour. */
const NAMES_THEM = /\b(?:calcium|iron|niacin|thiamine?|riboflavin|folic|unfortified|unenriched)\b/i;

/**
 * Whether nobody says what was added to a wheat flour. In the UK calcium carbonate, iron, niacin and thiamin (and folic acid)
 * go into all but wholemeal by law (Bread and Flour Regulations 1998, from memory); in the US flour is sold with niacin, iron,
 * thiamin, riboflavin and folic acid or without (21 CFR 137.105 and 137.165, from memory). The EU has no such rule.
 */
export function lacksAdditions(ingredient: Ingredient, isWheat: boolean, law: LabelLaw): boolean {
  const { kind, name, labelName, madeOf } = ingredient;
  if (law === "EU" || !isWheat || kind !== "flour" || madeOf !== null) return false;
  return ![name, labelName ?? ""].some((text) => WHOLE.test(text) || NAMES_THEM.test(text));
}

export const additionsUnknown = (law: LabelLaw): string =>
  law === "US" ? "enrichment not known" : "statutory additions not known";
