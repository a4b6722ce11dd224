// Allergens of several products side by side: a column for each group of a law, and what changed since a print.
import type { LabelLaw } from "../enrichment/protein.ts";
import { readDeclared } from "./allergen-changes.ts";
import { type Allergen, groupIn, groupsOf } from "./allergen-list.ts";

/** What stands where a group is not among the ingredients as they were entered: no promise, and no blank. */
const NOT_ENTERED = "–";

/**
 * A row for each declaration: what it has of each group in the law's order, and then what the law does not list. A blank
 * declaration is not known, and so is one that cannot be read; the last cell says so of the latter.
 */
export function allergenTable(
  declared: readonly (string | null)[],
  law: LabelLaw,
  printed: readonly (string | null)[],
): (string | null)[][] {
  const groups = groupsOf(law);
  const blank = groups.map(() => null);
  return declared.map((text, at) => {
    if (text === null) return [...blank, null];
    const now = readDeclared(text, law);
    if ("says" in now) return [...blank, `cannot be read: it ${now.says}`];
    const last = printed[at] ?? null;
    const before = last === null ? null : readDeclared(last, law);
    const cells = [...groups, undefined].map((group) => {
      const [here, there] = [now, before].map((list) =>
        list === null || "says" in list ? null : list.filter((one) => groupIn(one, law) === group),
      );
      return cellOf(namesOf(here ?? [], group), there == null ? null : namesOf(there, group), group === undefined);
    });
    return cells;
  });
}

/** The species of a group, or "yes" where it has none. */
function namesOf(allergens: readonly Allergen[], group: string | undefined): string {
  const sorted = [...allergens].sort((a, b) => a.place - b.place);
  const species = [...new Set(sorted.map((one) => one.species))].filter(
    (one) => one !== group && (group === undefined || !sorted.every((other) => other.species === other.group)),
  );
  if (allergens.length === 0) return "";
  return species.length === 0 ? "yes" : species.join(", ");
}

function cellOf(now: string, before: string | null, isUnlisted: boolean): string | null {
  const none = isUnlisted ? "" : NOT_ENTERED;
  if (before === null || before === now) return now || none || null;
  if (before === "") return `NEW: ${now}`;
  return now === "" ? `GONE: ${before}`.trim() : `CHANGED: ${now}`;
}
