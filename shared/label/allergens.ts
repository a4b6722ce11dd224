import { refuse } from "../base/refusal.ts";
import { oneOf, quoted } from "../base/show.ts";
import { singularName } from "../base/words.ts";
import { readNumber } from "../cells/number.ts";
import type { LabelLaw } from "../enrichment/protein.ts";
import { builtInNamed } from "../larder/built-in-larder.ts";
import type { Ingredient } from "../larder/ingredient.ts";
import { eachRow, type Larder, requireIngredients } from "../larder/larder.ts";

/**
 * The fourteen groups of Regulation (EU) 1169/2011, annex II, in its order, with their species; the UK kept the list. "|" parts
 * spellings of one name, "+" begins names of something that counts as it (spelt and khorasan are wheat, lactose is milk; durum,
 * einkorn and emmer are wheats by their botany). Of the two last lines no group is the EU's: pine nuts are a tree nut of the US
 * alone, the others were until January 2025 (from memory: FDA guidance on food allergens, edition 5). Fish, crustaceans and
 * molluscs have more species than a list holds: "fish (turbot)" names one.
 */
const GROUPS = `cereals containing gluten:wheat+spelt+khorasan+spelt and khorasan wheat+khorasan wheat+spelt wheat+durum+durum wheat+einkorn+einkorn wheat+emmer+emmer wheat+kamut+kamut wheat,rye,barley,oats
crustaceans:crustaceans|crustacean shellfish,crab,crayfish,langoustines,lobster,prawns,shrimps
eggs:eggs
fish:fish,anchovies|anchovy,cod,salmon,tuna
peanuts:peanuts+groundnuts
soybeans:soybeans|soy beans|soya beans|soya|soy
milk:milk+lactose+dairy
nuts:almonds,hazelnuts|hazel nuts+filberts,walnuts,cashews|cashew nuts,pecans|pecan nuts,Brazil nuts,pistachios|pistachio nuts,macadamias|macadamia nuts+Queensland nuts+macadamia or Queensland nuts
celery:celery+celeriac
mustard:mustard
sesame:sesame
sulphites:sulphites|sulfites|sulphur dioxide|sulfur dioxide+so2+sulphur dioxide and sulphites+sulfur dioxide and sulfites
lupin:lupin|lupine
molluscs:molluscs|mollusks,clams,mussels,oysters,scallops,squid
:pine nuts
until 2025:coconut,chestnuts,beech nuts,butternuts,ginkgo nuts,hickory nuts,pili nuts,shea nuts`;

/** The nine of the US Food Allergen Labeling and Consumer Protection Act and the FASTER Act, as the FDA lists them. */
const US = "milk,eggs,fish,crustacean shellfish,tree nuts,peanuts,wheat,soybeans,sesame".split(",");
/** What was a tree nut in the US until its list was shortened in January 2025. */
const FORMER = "until 2025";
/** The groups the US calls by another name; of the cereals it knows wheat alone. */
const US_NAMES: Readonly<Record<string, string>> = {
  crustaceans: "crustacean shellfish",
  nuts: "tree nuts",
  "": "tree nuts",
};

export type Allergen = {
  /** The group of the EU's list; blank for what is none there. */
  readonly group: string;
  readonly species: string;
  /** How a label may spell it, in the singular. */
  readonly spellings: readonly string[];
  readonly place: number;
};

/** Groups of which any species may be written. */
const OPEN = ["fish", "crustaceans", "molluscs"];

let made: { groups: readonly string[]; known: ReadonlyMap<string, Allergen> } | undefined;
// Made on first use: loading the script must stay cheap.
function table() {
  if (made !== undefined) return made;
  const known = new Map<string, Allergen>();
  const groups = GROUPS.split("\n").map((line) => {
    const [group = "", species = ""] = line.split(":");
    for (const one of species.split(",")) {
      const [own = "", ...others] = one.split("+");
      const spellings = own.split("|");
      const allergen = {
        group,
        species: spellings[0] ?? "",
        spellings: spellings.map(singularName),
        place: known.size,
      };
      for (const name of [...spellings, ...others, ...(group === "sesame" ? ["sesame seeds"] : [])])
        known.set(singularName(name), allergen);
    }
    return group;
  });
  made = { groups, known };
  return made;
}

/** Parts of a list; a comma in brackets or before a digit ("54,5%") does not part. */
export function listed(text: string): string[] {
  let depth = 0;
  const marked = text.replace(/[();\n]|,(?!\d)/g, (mark) => {
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
/** More than 10 mg/kg or mg/L, in sulphur dioxide, is declared (Regulation (EU) 1169/2011, annex II, 12). */
const SULPHITES = /^(sul(?:ph|f)(?:ites?|ur dioxide)|so2)[ :(]*(\d[\d.,]*) *(?:mg ?\/ ?(?:kg|l)|ppm)\)?$/i;
const SULPHITES_UP_TO = 10;

/** The allergens of a larder cell, each once, or what is wrong with it as a predicate. */
function readAllergens(text: string): readonly Allergen[] | string {
  const { known } = table();
  const found = new Map<string, Allergen>();
  const items = listed(annexWords(text));
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
      const read = readNumber(amount);
      if ("problem" in read) return `holds ${quoted(item)}, whose amount ${read.problem}`;
      if (read.value <= SULPHITES_UP_TO) continue;
    }
    for (const name of names.flatMap(grainsOf)) {
      const key = singularName(name);
      if (key === "none" && items.length === 1) return [];
      const own = known.get(key) ?? (isOpen && key !== "" ? { ...group, ...free(name) } : undefined);
      const one = isOpen && own?.group !== group.group ? undefined : own;
      if (one === undefined) return `holds ${quoted(name.trim())}; ${instead(key)}`;
      found.set(one.species, one);
    }
  }
  return [...found.values()];
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
  const { groups, known } = table();
  const of = (group: string) =>
    oneOf([...new Set([...known.values()].flatMap((one) => (one.group === group ? [one.species] : [])))]);
  if (GROUP_WORD.test(name))
    return name.endsWith("nut") ? `name the nut: ${of("nuts")}` : `name the cereal: ${of("cereals containing gluten")}`;
  if (name === "shellfish") return "name the crustacean or mollusc";
  return `write species or groups such as ${oneOf(["wheat", ...groups.slice(1, 7), "almonds", ...groups.slice(8, 14)])}, or "none" where it was checked`;
}

/** The group of an allergen in a law's words; undefined where the law has none for it. */
function groupIn({ group, species }: Allergen, law: LabelLaw): string | undefined {
  const { groups } = table();
  const name = law !== "US" ? group : species === "wheat" ? species : (US_NAMES[group] ?? group);
  const isListed = (law === "US" ? US : groups).includes(name) && name !== "" && name !== FORMER;
  return isListed ? name : undefined;
}

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
      `is ${quoted(name)}, whose allergens are not known; ${where}, "none" where checked`,
      argument,
      index + 1,
    );
  }
  const read = readAllergens(allergens);
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
export function declared(names: readonly (string | null)[], larder: Larder, law: LabelLaw): string {
  const found = requireIngredients(larder, names, (index) => names[index] !== null);
  const all = eachRow(found, (one, index) => (one === null ? [] : allTyped(one, law, "ingredients", index))).flat();
  const told = (law === "US" ? US : table().groups).flatMap((group) => {
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
