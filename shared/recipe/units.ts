import { gramsIn } from "../base/units.ts";
import type { CupSystem, EggSize, VolumeUnit } from "../base/volumes.ts";
import { singularName } from "../base/words.ts";
import type { Form } from "../larder/measures.ts";
import { isMark, isWord, type Token } from "./tokens.ts";

/** What a number in a recipe counts. */
export type Unit =
  | { readonly of: "weight"; readonly grams: number; readonly fine: boolean }
  | {
      readonly of: "volume";
      readonly unit: VolumeUnit;
      /** Where the line itself names the country, as "2 UK pints" or the German EL does. */
      readonly system?: CupSystem;
      readonly loose?: string;
      /** "packed", "sifted": how the cup is filled. */
      readonly form?: Form;
      readonly fine: boolean;
    }
  /** `word` is "" for a bare number. */
  | { readonly of: "count"; readonly word: string; readonly size?: EggSize; readonly loose?: string }
  /** A handful, a splash: no weight at all. */
  | { readonly of: "vague"; readonly word: string };

type Known = Unit & { readonly spellings: string };
/** `fine` units are written in whole hundreds, so that "1,250" stays unclear with them. */
const weight = (grams: number, spellings: string, fine = false): Known => ({ of: "weight", grams, fine, spellings });
const volume = (unit: VolumeUnit, spellings: string, system?: CupSystem): Known => ({
  of: "volume",
  unit,
  fine: unit === "ml",
  spellings,
  ...(system === undefined ? {} : { system }),
});

/** A German or French pound is 500 g, an Austrian Deka 10 g (common practice). */
const UNITS: readonly Known[] = [
  weight(0.001, "mg;milligram", true),
  weight(1, "g;gr;gm;gms;gram;gramm;gramme", true),
  weight(10, "dag;dkg;deka"),
  weight(1000, "kg;kgs;kilo;kilogram;kilogramm;kilogramme"),
  weight(500, "pfund;pfd"),
  weight(gramsIn("oz"), "oz;ozs;ounce;oz wt;unze"),
  weight(gramsIn("lb"), "lb;lbs;pound"),
  volume("ml", "ml;mls;milliliter;millilitre;cc"),
  volume("cl", "cl;centiliter;centilitre"),
  volume("dl", "dl;deciliter;decilitre"),
  volume("l", "l;lt;ltr;liter;litre"),
  volume("cup", "c;cup;cupful"),
  volume("tbsp", "tbsp;tbs;tbl;tblsp;tb;tbsps;tablespoon;tablespoonful;table spoon"),
  volume("tbsp", "el;esslöffel;essloffel;c a soupe;c a s;cas;cuillere a soupe", "EU"),
  volume("dessertspoon", "dsp;dstspn;dessertspoon;dessertspoonful;dessert spoon"),
  volume("tsp", "tsp;tsps;teasp;teaspoon;teaspoonful;tea spoon"),
  volume("tsp", "tl;teelöffel;teeloffel;c a cafe;c a c;cac;cuillere a cafe", "EU"),
  volume("dash", "dash;dashes"),
  volume("pinch", "pinch;pinches;prise;pincee"),
  volume("fl oz", "fl oz;floz;fluid ounce;fluid oz;oz fl"),
  volume("gill", "gill"),
  volume("pint", "pint;pt;pts"),
  volume("quart", "quart;qt;qts"),
  volume("gallon", "gallon;gal;gals"),
];

/** Packs, which weigh what the larder says of them or what stands before them; the first spelling is the larder's word. */
const PACKS = [
  "stick",
  "sachet;packet;pkt;envelope;env;pouch;päckchen;packchen;pckg;pck;packerl;tütchen",
  "cube;würfel;wurfel",
  "cake",
  "package;pkg;pack",
  "can;tin",
  ..."jar bottle box bag carton container tub punnet tube block bar".split(" "),
];
/** The same for other things that are counted. */
const PIECES = [
  "piece;pc;ea;stück;stuck",
  ..."square slice clove sprig leaf leaves sheet pat stalk pod bean head bunch loaf".split(" "),
];
const VAGUE =
  "handful;splash;drizzle;glug;knob;little;bit;few;some;several;touch;drop;scoop;ladle;mug;glass;spoon;spoonful;lot;smidgen";

const spelled = (list: string) => list.split(";").map(singularName);
const BY_SPELLING: ReadonlyMap<string, Unit> = new Map<string, Unit>([
  ...UNITS.flatMap(({ spellings, ...unit }) => spelled(spellings).map((one): [string, Unit] => [one, unit])),
  ...[...PACKS, ...PIECES].flatMap((list) =>
    spelled(list).map((one): [string, Unit] => [one, { of: "count", word: spelled(list)[0] ?? "" }]),
  ),
  ...spelled(VAGUE).map((one): [string, Unit] => [one, { of: "vague", word: one }]),
]);
const PACK_WORDS = new Set(PACKS.map((list) => list.split(";")[0]));
/** What longer spellings begin with: "fl" of "fl oz". */
const BEGINNINGS: ReadonlySet<string> = new Set(
  [...BY_SPELLING.keys()].flatMap((one) => [...one.matchAll(/ /g)].map(({ index }) => one.slice(0, index))),
);

const SIZES: ReadonlyMap<string, EggSize> = new Map(
  Object.entries({
    ...{ small: "small", medium: "medium", large: "large", big: "large", xl: "extra large", jumbo: "jumbo" },
  } as const),
);
const LETTERS: ReadonlyMap<string, EggSize> = new Map(Object.entries({ s: "small", m: "medium", l: "large" } as const));

/** The size that words behind a number name: "eggs (medium)", "eggs, size M". */
export function sizeIn(words: readonly string[]): EggSize | undefined {
  const low = words.map((word) => word.toLowerCase());
  const at = low.findIndex(
    (word, index) => SIZES.has(word) || isSizeLetter(words[index] ?? "", words[index - 1] ?? ""),
  );
  const word = low[at] ?? "";
  return word === "large" && low[at - 1] === "extra" ? "extra large" : (SIZES.get(word) ?? LETTERS.get(word));
}

/** A size letter stands in capitals: "3 eggs (M)". */
const isSizeLetter = (word: string, before: string): boolean =>
  /^[SML]$/.test(word) || (LETTERS.has(word) && before.toLowerCase() === "size");

const SYSTEMS: ReadonlyMap<string, CupSystem> = new Map(
  Object.entries({
    ...{ us: "US", american: "US", uk: "UK", imperial: "UK", british: "UK", australian: "AU", metric: "EU" },
  } as const),
);
/** Words that leave open how much: no rule says what a heaped spoon holds. */
export const LOOSE: ReadonlySet<string> = new Set(
  "heaped;heaping;rounded;scant;generous;good;barely;nearly;almost;short;overflowing;mounded;gehauft;gehaufte;gehaufter".split(
    ";",
  ),
);
export const looseProblem = (word: string): string => `"${word}" leaves open how much; write a level measure or grams`;
const EXACT = new Set(
  "level;flat;full;whole;packed;unpacked;sifted;unsifted;firmly;tightly;lightly;loosely;well;gestrichen;gestrichene;gestrichener".split(
    ";",
  ),
);

const FORM_WORDS: ReadonlyMap<string, Form> = new Map(
  Object.entries({
    ...{ sifted: "sifted", unsifted: "unsifted", unpacked: "unpacked", whole: "whole", slivered: "slivered" },
    ...{ sliced: "sliced", slice: "sliced", slices: "sliced", strips: "sliced", diced: "diced", cubed: "diced" },
    ...{ chopped: "chopped", shredded: "shredded", grated: "grated", mashed: "mashed", ground: "ground" },
  } as const),
);
const NOT_PACKED = new Set(["loosely", "lightly", "not", "un"]);

/** The forms that words name, "loosely packed" as unpacked. */
export const formsIn = (words: readonly string[]): Form[] =>
  words.flatMap((word, at): Form[] => {
    const low = word.toLowerCase();
    if (low === "packed") return [NOT_PACKED.has((words[at - 1] ?? "").toLowerCase()) ? "unpacked" : "packed"];
    const form = FORM_WORDS.get(low);
    return form === undefined ? [] : [form];
  });

/** A pack's word, or a square's: a weight beside several of them is the weight of each. */
export const isPackWord = (word: string): boolean => PACK_WORDS.has(word) || word === "square";

export type UnitRead = { readonly unit: Unit; readonly next: number };

/** The unit that stands at a place of the line, with the words before it that belong to it; its "of" is passed over. */
export function readUnit(tokens: readonly Token[], start: number): UnitRead | undefined {
  let at = isMark(tokens[start], "-") && tokens[start + 1]?.is === "word" ? start + 1 : start;
  if (isMark(tokens[at], "#") && tokens[at]?.spaced === false) {
    return { unit: { of: "weight", grams: gramsIn("lb"), fine: false }, next: passOf(tokens, at + 1) };
  }
  let size: EggSize | undefined;
  let system: CupSystem | undefined;
  let loose: string | undefined;
  const filled: string[] = [];
  for (let passed = 0; passed < 4; passed++, at++) {
    if (isMark(tokens[at], "-") && !tokens[at]?.spaced) continue;
    const token = tokens[at];
    const low = token?.is === "word" ? token.low : "";
    const isExtra = low === "extra" && isWord(tokens[isMark(tokens[at + 1], "-") ? at + 2 : at + 1], "large");
    if (isExtra) {
      at += isMark(tokens[at + 1], "-") ? 2 : 1;
      size = "extra large";
    } else if (SIZES.has(low)) size = SIZES.get(low);
    else if (SYSTEMS.has(low)) system = SYSTEMS.get(low);
    else if (LOOSE.has(low)) loose = low;
    else if (EXACT.has(low)) filled.push(low);
    else break;
  }
  const found = matched(tokens, at);
  if (found !== undefined && !isName(found.unit, tokens, found.next)) {
    const [form] = formsIn(filled);
    const unit = {
      ...found.unit,
      ...(found.unit.of === "volume" && system !== undefined ? { system } : {}),
      ...(found.unit.of === "volume" && form !== undefined ? { form } : {}),
      ...(found.unit.of === "count" && size !== undefined ? { size } : {}),
      ...(found.unit.of !== "weight" && loose !== undefined ? { loose } : {}),
    };
    return { unit, next: passOf(tokens, found.next) };
  }
  return size === undefined ? undefined : { unit: { of: "count", word: "", size }, next: at };
}

function matched(tokens: readonly Token[], at: number): { unit: Unit; next: number } | undefined {
  const first = tokens[at];
  if (first?.is !== "word") return undefined;
  // The one spelling that case decides: T is a tablespoon, t a teaspoon.
  if (first.text === "T" || first.text === "t") {
    return {
      unit: { of: "volume", unit: first.text === "T" ? "tbsp" : "tsp", fine: false },
      next: passDot(tokens, at + 1),
    };
  }
  let found: { unit: Unit; next: number } | undefined;
  let spelling = "";
  let next = at;
  for (let token: Token | undefined = first; token?.is === "word"; token = tokens[next]) {
    spelling = spelling === "" ? singularName(token.low) : `${spelling} ${singularName(token.low)}`;
    next = passDot(tokens, next + 1);
    const unit = BY_SPELLING.get(spelling);
    if (unit !== undefined) found = { unit, next };
    if (!BEGINNINGS.has(spelling)) break;
  }
  return found;
}

/** "cake flour", "bar" and "block" name ingredients too: a cake is a unit beside yeast only. */
function isName(unit: Unit, tokens: readonly Token[], next: number): boolean {
  if (unit.of !== "count" || unit.word !== "cake") return false;
  return !tokens.slice(next, next + 4).some((token) => isWord(token, "yeast"));
}

function passDot(tokens: readonly Token[], at: number): number {
  return isMark(tokens[at], ".") && !tokens[at]?.spaced ? at + 1 : at;
}

const passOf = (tokens: readonly Token[], at: number): number => (isWord(tokens[at], "of", "de") ? at + 1 : at);

/** Whether a pack's word stands here: "1 14-oz can". */
export function readPack(tokens: readonly Token[], at: number): number | undefined {
  const start = isMark(tokens[at], "-") ? at + 1 : at;
  const found = matched(tokens, start);
  if (found?.unit.of !== "count" || !PACK_WORDS.has(found.unit.word)) return undefined;
  // "1 cup cake flour", "2 oz cake yeast": the word is part of the name.
  if (found.unit.word === "cake" && isWord(tokens[found.next], "flour", "flours", "yeast")) return undefined;
  return passOf(tokens, found.next);
}
