// One ingredient as a label's list names it, and the line behind a US list.
import { refuse } from "../base/refusal.ts";
import { quote } from "../base/show.ts";
import type { LabelLaw } from "../enrichment/protein.ts";
import { nameKey } from "../larder/built-in-larder.ts";
import type { Ingredient } from "../larder/ingredient.ts";
import { findIngredient } from "../larder/larder.ts";
import { additionsUnknown, lacksAdditions } from "./additions.ts";
import { type Allergen, groupIn, OPEN, US } from "./allergen-list.ts";
import { isPlainWater, isWaterKind, typedIn } from "./allergens.ts";
import { descend, type Inside, partsInside, type Sources } from "./own-formulas.ts";

export const isWaterOf = (one: Ingredient | null): boolean =>
  one !== null && (isWaterKind(one.kind) || isPlainWater(one));

/** Ingredients as a list names them: the label name, what it is made of, and in the EU and the UK its allergens in capitals. */
export const entries = (sources: Sources, law: LabelLaw) =>
  descend<string>(sources, (name, inside) => {
    const ingredient = findIngredient(sources.larder, name) ?? null;
    const typed = ingredient === null ? [] : (typedIn(ingredient, law) ?? []);
    const label = ingredient?.labelName ?? (isWaterOf(ingredient) ? "water" : (ingredient?.name ?? name));
    const inner = partsInside(name, ingredient, sources);
    const isWheat = typed.some(({ species }) => species === "wheat");
    const lacks = ingredient !== null && inner === null && lacksAdditions(ingredient, isWheat, law);
    const parts =
      inner === null
        ? lacks
          ? ` (${additionsUnknown(law)})`
          : ""
        : ` (${listParts(inner, (part) => (part.isKnown ? inside(part.name) : part.name), sources, law)})`;
    const labelled = typed.filter((one) => groupIn(one, law) !== undefined);
    const text = law === "US" ? withSulphites(`${label}${parts}`, typed) : inCapitals(`${label}${parts}`, labelled);
    if (text.length > MAX_LIST_LENGTH)
      refuse(`has a list of ${text.length} characters inside ${quote(name)}; no label holds it`, "ingredients");
    return text;
  });

/** What a cell holds (Google Sheets). */
const MAX_LIST_LENGTH = 50_000;

/** By falling share where every part has one; of water that goes into a formula, what boiled off is not there any more. */
function listParts(
  { parts, formula }: NonNullable<ReturnType<typeof partsInside>>,
  textOf: (part: Inside) => string,
  { larder }: Sources,
  law: LabelLaw,
): string {
  const weighed = new Map<string, { text: string; share: number | null }>();
  for (const part of parts) {
    const isWater = formula !== null && isWaterOf(findIngredient(larder, part.name) ?? null);
    const text = textOf(part);
    const key = isWater ? "water" : nameKey(text);
    const before = weighed.get(key)?.share ?? 0;
    weighed.set(key, { text: weighed.get(key)?.text ?? text, share: part.share === null ? null : before + part.share });
  }
  const water = weighed.get("water");
  if (formula !== null && water?.share != null && law !== "US") {
    const lost = formula.boilOff / (1 - formula.boilOff);
    water.share = Math.max(0, water.share - lost);
    if (water.share === 0) weighed.delete("water");
  }
  const all = [...weighed.values()];
  if (all.every(({ share }) => share !== null)) all.sort((a, b) => (b.share ?? 0) - (a.share ?? 0));
  return all.map(({ text }) => text).join(", ");
}

/** Allergens in capitals where the text names them, the others in brackets behind it. */
function inCapitals(text: string, allergens: readonly Allergen[]): string {
  const missing: string[] = [];
  let marked = text;
  for (const { species, spellings } of allergens.flatMap(withGroup)) {
    let isThere = false;
    marked = marked.replace(
      new RegExp(`(?<!\\p{L})(?:${spellings.map(literal).join("|")})s?(?!\\p{L})`, "giu"),
      (word) => {
        isThere = true;
        return word.toUpperCase();
      },
    );
    if (!isThere && !missing.includes(species)) missing.push(species);
  }
  return missing.length === 0 ? marked : `${marked} (${missing.join(", ").toUpperCase()})`;
}

const literal = (text: string) => text.replace(/[.*+?^${}|[\]\\]/g, "\\$&");

/** A fish is called fish beside its own name, and so are crustaceans and molluscs. */
function withGroup(one: Allergen): Allergen[] {
  const group = { ...one, species: one.group, spellings: [one.group.replace(/s$/, "")] };
  return OPEN.includes(one.group) && one.species !== one.group ? [group, one] : [one];
}

/** Sulphites of 10 mg/kg and more are named in a US list, though they are no major allergen (21 CFR 101.100(a)(4), from memory). */
function withSulphites(text: string, typed: readonly Allergen[]): string {
  const isNamed = /sul(?:ph|f)/i.test(text);
  return !isNamed && typed.some(({ species }) => species === "sulphites") ? `${text} (sulfites)` : text;
}

/**
 * The line of all major allergens behind a US list, through all compounds: nuts, fish and shellfish by their species (section
 * 403(w) of the Federal Food, Drug, and Cosmetic Act, from memory). There is none where nothing is to be named: it would read as a promise.
 */
export function containsLine(allergens: readonly Allergen[]): string[] {
  const names = US.flatMap((group) => {
    const within = allergens.filter((one) => groupIn(one, "US") === group).sort((a, b) => a.place - b.place);
    const bySpecies = group === "tree nuts" || group === "fish" || group === "crustacean shellfish";
    return bySpecies ? within.map(({ species }) => species) : within.length > 0 ? [group] : [];
  });
  return names.length === 0 ? [] : [`Contains: ${[...new Set(names)].join(", ")}.`];
}
