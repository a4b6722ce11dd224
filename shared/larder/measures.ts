import { readNumber } from "../base/number.ts";
import { quote } from "../base/show.ts";
import { type Grams, grams } from "../base/units.ts";
import { singularName } from "../base/words.ts";
import { unreadable } from "../cells/cell.ts";

/** Grams of one household measure; the two differ where the ingredient comes in kinds that fill a spoon differently. */
export type Measure = { readonly least: Grams; readonly most: Grams };
/** By measure word in the form measureWord() gives: "cup", "tbsp", "tsp", "piece", "large", "stick", "sachet", "cube"… */
export type Measures = ReadonlyMap<string, Measure>;

/** What else people write for the measure words of a larder. */
const SYNONYMS: ReadonlyMap<string, string> = new Map(
  Object.entries({
    ...{ tablespoon: "tbsp", tbs: "tbsp", teaspoon: "tsp", each: "piece", pc: "piece", whole: "piece" },
    ...{
      packet: "sachet",
      envelope: "sachet",
      pouch: "sachet",
      xl: "extra large",
      floz: "fl oz",
      "fluid ounce": "fl oz",
    },
  }),
);

/** How a measure may be filled, where that makes another weight; "halves" and the like are foods of their own. */
export const PREPARATIONS = [
  ...(["sifted", "unsifted", "packed", "unpacked", "whole", "sliced", "slivered", "diced", "chopped"] as const),
  ...(["shredded", "grated", "mashed", "ground"] as const),
];
export type Preparation = (typeof PREPARATIONS)[number];

/** A measure's word as the larder keys it: "Tablespoons" is "tbsp", "packed cup" is "cup packed". */
export function measureWord(text: string): string {
  const word = singularName(text.replace(/\./g, ""));
  const preparation = PREPARATIONS.find((one) => word.startsWith(`${one} `) || word.endsWith(` ${one}`));
  if (preparation === undefined) return SYNONYMS.get(word) ?? word;
  const plain = word.replace(preparation, "").trim();
  return `${SYNONYMS.get(plain) ?? plain} ${preparation}`;
}

const ENTRY =
  /^(\p{L}(?:[^\d=:–-]|-(?=\p{L}))*?)\s*[=:]?\s*(\d[\d.,]*|[.,]\d+)(?:\s*(?:-|–|to)\s*(\d[\d.,]*))?\s*(?:g|gr|grams?)?$/iu;
const EXAMPLE = 'enter measures and their grams such as "cup 125; tbsp 8; piece 50"';

/** Reads "cup 125; tbsp 8; piece 50"; a span is "tsp 2.8 to 5". A predicate comes back for what cannot be read. */
export function readMeasures(raw: unknown): Measures | { readonly says: string } {
  const stuck = unreadable(raw);
  if (stuck) return stuck;
  if (typeof raw !== "string") return { says: `is not a text; ${EXAMPLE}` };
  const measures = new Map<string, Measure>();
  for (const part of raw.split(/[;\n]/)) {
    const measureText = part.replace(/\s+/g, " ").trim();
    if (measureText === "") continue;
    const [, name = "", from = "", to = from] = ENTRY.exec(measureText) ?? [];
    const least = readNumber(from);
    const most = readNumber(to);
    if (name === "") return { says: `holds ${quote(measureText)}; ${EXAMPLE}` };
    if ("says" in least) return { says: `holds ${quote(measureText)}, whose number ${least.says}; ${EXAMPLE}` };
    if ("says" in most) return { says: `holds ${quote(measureText)}, whose number ${most.says}; ${EXAMPLE}` };
    if (!(least.value > 0) || most.value < least.value) {
      return { says: `holds ${quote(measureText)}; a measure weighs more than 0 g, the lighter figure first` };
    }
    const word = measureWord(name);
    if (measures.has(word)) return { says: `names the measure ${quote(word)} twice; keep one` };
    measures.set(word, { least: grams(least.value), most: grams(most.value) });
  }
  return measures;
}
