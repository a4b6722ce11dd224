// What came and went between two allergen declarations, compared by whole declared names.
import type { LabelLaw } from "../enrichment/protein.ts";
import { type Allergen, allergenList, OPEN } from "./allergen-list.ts";
import { NO_ALLERGENS } from "./allergens.ts";
import { readAllergens } from "./read-allergens.ts";

export type AllergenChange = { readonly came: string; readonly gone: string };

/** Behind the law's own list an answer says what is on none of it. */
const NOT_LISTED = /^not on the [^:]+: /i;

/** The allergens of a declaration, also those that this law does not list, or what cannot be read in it. */
export function readDeclared(text: string, law: LabelLaw): readonly Allergen[] | { readonly says: string } {
  const parts = text.replace(NO_ALLERGENS, "").split(";");
  const allergens: Allergen[] = [];
  for (const part of parts) {
    const item = part
      .trim()
      .replace(NOT_LISTED, "")
      .replace(/ \(US labels declare[^)]*\)/, "");
    const itemAllergens = item === "" ? [] : readAllergens(item, law);
    if (typeof itemAllergens === "string") return { says: itemAllergens };
    allergens.push(...itemAllergens);
  }
  return allergens;
}

/** Declared names with their places in the law's list. */
function declaredNames(text: string, law: LabelLaw): ReadonlyMap<string, number> | { readonly says: string } {
  const declaration = readDeclared(text, law);
  if ("says" in declaration) return declaration;
  return new Map(
    declaration.map(({ species, group, place }) => [
      OPEN.includes(group) && species !== group ? `${group} (${species})` : species,
      place,
    ]),
  );
}

/** What is in one declaration and not in the other; blank before there is a last version. */
export function allergenChange(last: string, now: string, law: LabelLaw): AllergenChange {
  const before = declaredNames(last, law);
  const after = declaredNames(now, law);
  if ("says" in before) return { came: `not compared: the last version ${before.says}`, gone: "" };
  if ("says" in after) return { came: `not compared: it ${after.says}`, gone: "" };
  return { came: only(after, before), gone: only(before, after) };
}

function only(names: ReadonlyMap<string, number>, others: ReadonlyMap<string, number>): string {
  const place = (name: string) => names.get(name) ?? allergenList().known.size;
  return [...names.keys()]
    .filter((name) => !others.has(name))
    .sort((a, b) => place(a) - place(b))
    .join(", ");
}
