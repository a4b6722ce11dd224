// A cell of allergens as somebody typed it, or copied it from a specification.

import { readNumber } from "../base/number.ts";
import { oneOf, quote } from "../base/show.ts";
import { singularName } from "../base/words.ts";
import type { LabelLaw } from "../enrichment/protein.ts";
import { type Allergen, allergenList, OPEN } from "./allergen-list.ts";

/** Parts of a list; a comma in brackets or before a digit ("54,5%") does not part. */
export function splitList(text: string): string[] {
  let depth = 0;
  const marked = text.replace(/[^\S\n]|[\u180e\u200b-\u200d\u2060]/g, " ").replace(/[();\n]|,(?!\d)/g, (mark) => {
    depth = mark === "(" ? depth + 1 : mark === ")" ? Math.max(0, depth - 1) : depth;
    return depth > 0 || mark === ")" ? mark : "\t";
  });
  return marked
    .split("\t")
    .map((part) => part.trim())
    .filter((part) => part !== "");
}

/** "fish (cod)", "tree nuts: almonds". */
const OF_GROUP = /^([^(:]+?) *[(:] *([^()]+?) *\)?$/;
/** Groups that say nothing without their species. */
const GROUP_WORD = /^(?:tree )?nut$|\b(?:gluten|cereal)\b/;
/**
 * More than 10 mg/kg or mg/L, in sulphur dioxide, is declared (Regulation (EU) 1169/2011, annex II, 12); in the US 10 mg/kg
 * itself is as well ("10 parts per million or more", 21 CFR 101.100(a)(4), from memory).
 */
const SULPHITES = /^(sul(?:ph|f)(?:ites?|ur dioxide)|so2)[ :(]*(\d[\d.,]*) *(?:mg ?\/ ?(?:kg|l)|ppm)\)?$/i;
const SULPHITES_UP_TO = 10;

/** The allergens of a larder cell, each once, or what is wrong with it as a predicate. */
export function readAllergens(text: string, law: LabelLaw): readonly Allergen[] | string {
  const { known } = allergenList();
  const allergens = new Map<string, Allergen>();
  const items = splitList(annexWords(text));
  for (const item of items) {
    const [, sulphites, amount = ""] = SULPHITES.exec(item) ?? [];
    const [, head = "", inner = ""] = OF_GROUP.exec(item) ?? [];
    const group = known.get(singularName(head));
    const isOpen = group !== undefined && OPEN.includes(group.species);
    const within = inner.split(",");
    const names =
      sulphites !== undefined
        ? [sulphites]
        : isOpen || GROUP_WORD.test(singularName(head))
          ? within
          : group !== undefined
            ? [head, ...within]
            : [item];
    if (sulphites !== undefined) {
      const reading = readNumber(amount);
      if ("says" in reading) return `holds ${quote(item)}, whose amount ${reading.says}`;
      if (reading.value < SULPHITES_UP_TO || (law !== "US" && reading.value === SULPHITES_UP_TO)) continue;
    }
    for (const name of names.flatMap(grainsOf)) {
      const key = singularName(name);
      if (key === "none" && items.length === 1) return [];
      const allergen = known.get(key) ?? (isOpen && key !== "" ? { ...group, ...free(name) } : undefined);
      const one = isOpen && allergen?.group !== group.group ? undefined : allergen;
      if (one === undefined) return `holds ${quote(name.trim())}; ${instead(key)}`;
      allergens.set(one.species, one);
    }
  }
  return [...allergens.values()];
}

/** Latin names of annex II, and the words that it puts around its own. */
const LATIN =
  / ?\((?:Amygdalus communis|Corylus avellana|Juglans regia|Anacardium occidentale|Carya illinoi[a-z]+(?: \(Wangenh\.\))?|Bertholletia excelsa|Pistacia vera|Macadamia ternifolia)[^()]*\)/gi;
const AROUND =
  / and products (?:thereof|of these)\b|\b(?:cereals containing gluten|nuts), namely:? ?|\b(?:including|such as|namely)\b:? ?| at concentrations of more than 10 mg ?\/ ?kg.*$/gi;

/** A cell in the annex's own words, without what they say besides: "milk and products thereof (including lactose)". */
const annexWords = (text: string): string => text.replace(/\s+/g, " ").replace(LATIN, "").replace(AROUND, "");

/** Triticale is a cross of wheat and rye, and is declared as both. */
const grainsOf = (name: string): readonly string[] => (/^ *triticale *$/i.test(name) ? ["wheat", "rye"] : [name]);

const free = (name: string) => ({ species: name.trim().toLowerCase(), spellings: [singularName(name)], place: 99 });

function instead(name: string): string {
  const { groups, known } = allergenList();
  const of = (group: string) =>
    oneOf([...new Set([...known.values()].flatMap((one) => (one.group === group ? [one.species] : [])))]);
  if (GROUP_WORD.test(name))
    return name.endsWith("nut") ? `name the nut: ${of("nuts")}` : `name the cereal: ${of("cereals containing gluten")}`;
  if (name === "shellfish") return "name the crustacean or mollusc";
  return `enter species or groups such as ${oneOf(["wheat", ...groups.slice(1, 7), "almonds", ...groups.slice(8, 14)])}, or "none" where it was checked`;
}
