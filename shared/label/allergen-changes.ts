// What came and went between two allergen declarations, compared by whole declared names.
import type { LabelLaw } from "../enrichment/protein.ts";
import { allergenList, OPEN } from "./allergen-list.ts";
import { NO_ALLERGENS } from "./allergens.ts";
import { readAllergens } from "./read-allergens.ts";

export type AllergenChange = { readonly came: string; readonly gone: string };

/** Behind the law's own list an answer says what is on none of it. */
const NOT_LISTED = /^not on the [^:]+: /i;

/** Declared names in the order of the law's list, or what cannot be read. */
function declaredNames(text: string, law: LabelLaw): ReadonlyMap<string, number> | { readonly says: string } {
  const parts = text.replace(NO_ALLERGENS, "").split(";");
  const items = parts.map((part) =>
    part
      .trim()
      .replace(NOT_LISTED, "")
      .replace(/ \(US labels declare[^)]*\)/, ""),
  );
  const names = new Map<string, number>();
  for (const item of items) {
    if (item === "") continue;
    const read = readAllergens(item, law);
    if (typeof read === "string") return { says: read };
    for (const { species, group, place } of read)
      names.set(OPEN.includes(group) && species !== group ? `${group} (${species})` : species, place);
  }
  return names;
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
