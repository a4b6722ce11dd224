import type { FormulaSummary } from "../../shared/protocol/sheet-review.ts";

/** Why a formula sheet cannot be ordered from, in a sentence with what to type there; null where it can. */
export function leftOut({
  sheet,
  dough,
  pieces,
  ingredients,
  fault,
}: Omit<FormulaSummary, "title" | "mixes" | "unit" | "sizes">): string | null {
  if (fault !== undefined) return `“${sheet}” is left out. ${fault}`;
  if (ingredients.length === 0 || dough === null)
    return `“${sheet}” is left out: it shows no weights. Type on it how much to make, and its percentages.`;
  if (pieces === null || pieces <= 0)
    return `“${sheet}” cannot be ordered: it shows no pieces. If it is sold, type on it what a piece weighs.`;
  return null;
}
