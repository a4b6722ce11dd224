// The allergens that labels declare, by group and species.
import { singularName } from "../base/words.ts";
import type { LabelLaw } from "../enrichment/protein.ts";

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
export const US = "milk,eggs,fish,crustacean shellfish,tree nuts,peanuts,wheat,soybeans,sesame".split(",");
/** What was a tree nut in the US until its list was shortened in January 2025. */
export const FORMER = "until 2025";
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
export const OPEN = ["fish", "crustaceans", "molluscs"];

let list: { groups: readonly string[]; known: ReadonlyMap<string, Allergen> } | undefined;
/** Put together on first use: loading the script must stay cheap. */
export function allergenList() {
  if (list !== undefined) return list;
  const known = new Map<string, Allergen>();
  const groups = GROUPS.split("\n").map((line) => {
    const [group = "", species = ""] = line.split(":");
    for (const one of species.split(",")) {
      const [species = "", ...others] = one.split("+");
      const spellings = species.split("|");
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
  list = { groups, known };
  return list;
}

/** The groups of a law, in its order. */
export const groupsOf = (law: LabelLaw): readonly string[] =>
  law === "US" ? US : allergenList().groups.filter((group) => group !== "" && group !== FORMER);

/** The group of an allergen in a law's words; undefined where the law has none for it. */
export function groupIn({ group, species }: Allergen, law: LabelLaw): string | undefined {
  const name = law !== "US" ? group : species === "wheat" ? species : (US_NAMES[group] ?? group);
  return groupsOf(law).includes(name) ? name : undefined;
}
