import { refuse } from "../base/refusal.ts";
import { quote } from "../base/show.ts";
import type { LabelLaw } from "../enrichment/protein.ts";
import { builtInNamed, nameKey } from "../larder/built-in-larder.ts";
import type { Ingredient } from "../larder/ingredient.ts";
import { eachRow, findIngredient, requireIngredients } from "../larder/larder.ts";
import { type Allergen, allergenList, FORMER, groupIn, OPEN, US } from "./allergen-list.ts";
import { descend, partsInside, type Sources } from "./own-formulas.ts";
import { readAllergens } from "./read-allergens.ts";

/** Plain water and ice are nothing else, whatever a larder leaves blank. */
export const isPlainWater = ({ name }: Ingredient): boolean => isWaterKind(builtInNamed(name)?.kind);
export const isWaterKind = (kind: string | null | undefined): boolean => kind === "water" || kind === "ice";

/** What an ingredient's own row says of its allergens, whatever the law makes declare of them; null where it says nothing. */
export function typedIn(ingredient: Ingredient, law: LabelLaw): readonly Allergen[] | null {
  const { allergens, row } = ingredient;
  if (allergens === null) return isPlainWater(ingredient) ? [] : null;
  const list = readAllergens(allergens, law);
  if (typeof list === "string") return refuse(`column "allergens" ${list}`, "larder", row ?? undefined);
  for (const one of list) {
    const isUnnamed = law === "US" && OPEN.includes(one.group) && one.species === one.group && one.group !== "molluscs";
    if (isUnnamed) {
      const says = `column "allergens" holds "${one.group}"; US labels name the species, such as "${one.group === "fish" ? "fish (cod)" : "shrimps"}"`;
      refuse(says, "larder", row ?? undefined);
    }
  }
  return list;
}

/** Allergens of an ingredient of this name, with those of everything that is in it, to any depth; the name of what nobody knows them of. */
type Known = { readonly allergens: readonly Allergen[]; readonly unknown: string | null };

/**
 * What an ingredient holds: what its own row says, and what its parts' rows say. Where its row says nothing, all of its parts
 * must: an analysis or a usual recipe is no specification. Exemptions (such as refined soybean oil) are the shop's to know: it
 * enters "none".
 */
const allergenSearch = (sources: Sources, law: LabelLaw) =>
  descend<Known>(sources, (name, inside) => {
    const ingredient = findIngredient(sources.larder, name) ?? null;
    const partsOfIt = partsInside(name, ingredient, sources);
    const typed = ingredient === null ? null : typedIn(ingredient, law);
    const parts = (partsOfIt?.parts ?? []).map(
      (part): Known => (part.isKnown ? inside(part.name) : { allergens: [], unknown: part.name }),
    );
    const isTold = typed !== null && partsOfIt?.formula == null;
    const unknown = isTold
      ? null
      : partsOfIt === null
        ? name
        : (parts.find((one) => one.unknown !== null)?.unknown ?? null);
    const all = [...(typed ?? []), ...parts.flatMap((one) => one.allergens)];
    return { allergens: [...new Map(all.map((one) => [one.species, one])).values()], unknown };
  });

/** The same for the rows of a formula, refused by row where a law's list cannot be answered. */
export function allergensOfRows(sources: Sources, law: LabelLaw): (name: string, index: number) => readonly Allergen[] {
  const search = allergenSearch(sources, law);
  return (name, index) => {
    const { allergens, unknown } = search(name);
    if (unknown === null) return allergens;
    const ingredient = findIngredient(sources.larder, unknown);
    const where = ingredient?.row == null ? "give it a larder row with them" : 'fill "allergens" in its larder row';
    const whose = `is ${quote(ingredient?.name ?? unknown)}, whose allergens are not known`;
    const says =
      nameKey(unknown) === nameKey(name)
        ? whose
        : `is ${quote(name)}, which holds ${quote(unknown)}, whose allergens are not known`;
    return refuse(`${says}; ${where}, "none" where checked`, "ingredients", index + 1);
  };
}

/** An answer that names nothing is no promise. */
export const NO_ALLERGENS = "no declarable allergens in the ingredients as entered; cross-contact is not assessed";

/**
 * What a law makes declare of all ingredients together: its groups in its order, the species in brackets. What was entered as an
 * allergen and is not on this law's list is said behind them.
 */
export function declareAllergens(names: readonly (string | null)[], sources: Sources, law: LabelLaw): string {
  // Nothing was entered yet, and nothing is promised.
  if (names.every((name) => name === null)) return "";
  requireNamed(sources, names, (index) => names[index] !== null);
  const held = allergensOfRows(sources, law);
  const all = eachRow(names, (name, index) => (name === null ? [] : held(name, index))).flat();
  const declared = (law === "US" ? US : allergenList().groups).flatMap((group) => {
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
  return [declared.join(", ") || NO_ALLERGENS, ...notListed(unlisted, law)].join("; ");
}

/** Names that no table knows are refused by row, but those of the shop's own formulas. */
export function requireNamed(
  { larder, formulas }: Sources,
  names: readonly (string | null)[],
  isUsed: (index: number) => boolean,
): (Ingredient | null)[] {
  const isOwn = (index: number) => {
    const name = names[index] ?? null;
    return name !== null && formulas.has(nameKey(name));
  };
  const known = requireIngredients(larder, names, (index) => isUsed(index) && !isOwn(index));
  return known.map((one, index) =>
    isUsed(index) && isOwn(index) ? (findIngredient(larder, names[index] ?? "") ?? null) : one,
  );
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
