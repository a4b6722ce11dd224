// Weights that are typed as a recipe says them: "3 large", "2 cups", "1 stick" beside the ingredient's name.
import { type Fault, fault, refuseAll } from "../base/refusal.ts";
import { quote } from "../base/show.ts";
import { fromGrams, grams, type Weight, type WeightUnit, weight } from "../base/units.ts";
import type { CupSystem } from "../base/volumes.ts";
import { isCounted } from "../cells/carried-units.ts";
import type { Reader } from "../cells/cell.ts";
import { someWeight } from "../cells/readers.ts";
import { findIngredient, type Larder } from "../larder/larder.ts";
import { lineWeigher } from "./grams.ts";
import { readRecipeLine } from "./line.ts";
import { ingredientOf, joinPhrases, namesNothing, phrasesOf } from "./name.ts";

/** A weight in the unit of the call, or the text of a measure or a count. */
export type WeightCell = Weight | string;

export const weightOrCount = (): Reader<WeightCell> => {
  const bare = someWeight<Weight>();
  return {
    hint: { ...bare.hint, counted: true } as Reader<WeightCell>["hint"],
    read: (raw) => (typeof raw === "string" && isCounted(raw) ? raw : bare.read(raw)),
  };
};

/** The weights of all rows, those that are counted in the unit by the larder and the country; refused together. */
export function weighCounted(
  cells: readonly (WeightCell | null)[],
  names: readonly (string | null)[],
  larder: Larder,
  { unit, cups }: { readonly unit: WeightUnit; readonly cups: CupSystem },
  argument = "weights",
): (Weight | null)[] {
  if (cells.every((cell) => typeof cell !== "string")) return cells as (Weight | null)[];
  const weigh = lineWeigher(cups, larder);
  const faults: Fault[] = [];
  const weights = cells.map((cell, row): Weight | null => {
    if (typeof cell !== "string") return cell;
    const name = names[row] ?? null;
    const line = weigh(cell, name);
    const says =
      line.is === "weighed" ? (otherWords(cell, name, larder) ?? line.unsure ?? line.remarks[0]?.says) : line.says;
    if (says !== undefined) faults.push(fault(`is ${quote(cell)}: ${says}`, argument, row + 1));
    return line.is === "weighed" ? weight(fromGrams(grams((line.least + line.most) / 2), unit)) : null;
  });
  refuseAll(faults);
  return weights;
}

/** Words that are neither a measure nor the row's ingredient: "3 bananas" beside eggs. */
function otherWords(cell: string, name: string | null, larder: Larder): string | undefined {
  const line = readRecipeLine(cell);
  if (line.is !== "read") return undefined;
  const words = [...line.before, ...line.entries.flatMap(({ choices }) => choices.flatMap(({ words }) => words))];
  const ingredient = name === null ? undefined : findIngredient(larder, name);
  if (namesNothing(words, ingredient) || (ingredient && ingredientOf(larder, words)?.name === ingredient.name))
    return undefined;
  return `what is ${quote(joinPhrases(phrasesOf(words)).join(" "))}? Enter a weight, or a count such as "3 large"`;
}
