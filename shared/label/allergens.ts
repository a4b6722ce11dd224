import { refuse } from "../base/refusal.ts";
import { quote } from "../base/show.ts";
import type { LabelLaw } from "../enrichment/protein.ts";
import { builtInNamed } from "../larder/built-in-larder.ts";
import type { Ingredient } from "../larder/ingredient.ts";
import { eachRow, type Larder, requireIngredients } from "../larder/larder.ts";
import { type Allergen, allergenList, FORMER, groupIn, OPEN, US } from "./allergen-list.ts";
import { readAllergens } from "./read-allergens.ts";

/** Plain water and ice are nothing else, whatever a larder leaves blank. */
export const isPlainWater = ({ name }: Ingredient): boolean => isWaterKind(builtInNamed(name)?.kind);
export const isWaterKind = (kind: string | null | undefined): boolean => kind === "water" || kind === "ice";

/**
 * What a law makes declare of one ingredient, by its larder row. Refuses where the row does not say it: an analysis or a
 * usual recipe is no specification. Exemptions (such as refined soybean oil) are the shop's to know: it writes "none".
 */
export const allergensOf = (ingredient: Ingredient, law: LabelLaw, argument: string, index: number) =>
  allTyped(ingredient, law, argument, index).filter((one) => groupIn(one, law) !== undefined);

/** What its row says, whatever the law makes declare of it. */
function allTyped(ingredient: Ingredient, law: LabelLaw, argument: string, index: number): readonly Allergen[] {
  const { name, allergens, row } = ingredient;
  if (allergens === null) {
    if (isPlainWater(ingredient)) return [];
    const where = row === null ? "give it a larder row with them" : 'fill "allergens" in its larder row';
    return refuse(
      `is ${quote(name)}, whose allergens are not known; ${where}, "none" where checked`,
      argument,
      index + 1,
    );
  }
  const read = readAllergens(allergens, law);
  if (typeof read === "string") return refuse(`column "allergens" ${read}`, "larder", row ?? undefined);
  for (const one of read) {
    const isUnnamed = law === "US" && OPEN.includes(one.group) && one.species === one.group && one.group !== "molluscs";
    if (isUnnamed) {
      const says = `column "allergens" holds "${one.group}"; US labels name the species, such as "${one.group === "fish" ? "fish (cod)" : "shrimps"}"`;
      refuse(says, "larder", row ?? undefined);
    }
  }
  return read;
}

/** An answer that names nothing is no promise. */
export const NO_ALLERGENS = "no declarable allergens in the ingredients as entered; cross-contact is not assessed";

/**
 * What a law makes declare of all ingredients together: its groups in its order, the species in brackets. What was entered as an
 * allergen and is not on this law's list is said behind them.
 */
export function declareAllergens(names: readonly (string | null)[], larder: Larder, law: LabelLaw): string {
  // Nothing was entered yet, and nothing is promised.
  if (names.every((name) => name === null)) return "";
  const rowIngredients = requireIngredients(larder, names, (index) => names[index] !== null);
  const all = eachRow(rowIngredients, (one, index) =>
    one === null ? [] : allTyped(one, law, "ingredients", index),
  ).flat();
  const told = (law === "US" ? US : allergenList().groups).flatMap((group) => {
    const within = all
      .filter((one) => groupIn(one, law) === group)
      .sort((a, b) => a.place - b.place || (a.species < b.species ? -1 : 1));
    if (within.length === 0) return [];
    const species = [...new Set(within.map((one) => one.species))].filter(
      (one) => one !== group && one !== within[0]?.group,
    );
    return [species.length === 0 ? group : `${group} (${species.join(", ")})`];
  });
  const unlisted = all.filter((one) => groupIn(one, law) === undefined);
  unlisted.sort((a, b) => a.place - b.place || (a.species < b.species ? -1 : 1));
  return [told.join(", ") || NO_ALLERGENS, ...notListed(unlisted, law)].join("; ");
}

/** Sulphites are on no list of the US, and are declared there all the same (21 CFR 101.100(a)(4), from memory). */
const US_SULPHITES = "sulphites (US labels declare them from 10 mg/kg)";

function notListed(unlisted: readonly Allergen[], law: LabelLaw): string[] {
  const called = ({ species }: Allergen) => (law === "US" && species === "sulphites" ? US_SULPHITES : species);
  const named = (some: readonly Allergen[]) => [...new Set(some.map(called))].join(", ");
  const since = law === "US" ? unlisted.filter(({ group }) => group === FORMER) : [];
  const never = unlisted.filter((one) => !since.includes(one));
  return [
    ...(never.length === 0 ? [] : [`not on the ${law} list: ${named(never)}`]),
    ...(since.length === 0 ? [] : [`not on the US list since January 2025: ${named(since)}`]),
  ];
}
