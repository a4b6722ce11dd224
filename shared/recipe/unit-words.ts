// The units of recipes, and the words that they are written with.
import { gramsIn } from "../base/units.ts";
import type { CupSystem, EggSize, VolumeUnit } from "../base/volumes.ts";
import { singularName } from "../base/words.ts";
import type { Preparation } from "../larder/measures.ts";

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
      readonly preparation?: Preparation;
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
  volume("tsp", "ts;tsk;theelepel", "EU"),
  volume("tbsp", "ss;spsk;msk;eetlepel", "EU"),
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
  "piece;pc;ea;stück;stuck;stk;uds;ud;szt",
  ..."square slice clove sprig leaf leaves sheet pat stalk pod bean head bunch loaf".split(" "),
];
const VAGUE =
  "handful;splash;drizzle;glug;knob;little;bit;few;some;several;touch;drop;scoop;ladle;mug;glass;spoon;spoonful;lot;smidgen";

const spelled = (list: string) => list.split(";").map(singularName);
export const BY_SPELLING: ReadonlyMap<string, Unit> = new Map<string, Unit>([
  ...UNITS.flatMap(({ spellings, ...unit }) => spelled(spellings).map((one): [string, Unit] => [one, unit])),
  ...[...PACKS, ...PIECES].flatMap((list) =>
    spelled(list).map((one): [string, Unit] => [one, { of: "count", word: spelled(list)[0] ?? "" }]),
  ),
  ...spelled(VAGUE).map((one): [string, Unit] => [one, { of: "vague", word: one }]),
]);
export const PACK_WORDS = new Set(PACKS.map((list) => list.split(";")[0]));
/** Whether a word is a pack's in any spelling. */
export const isPackSpelling = (spelling: string): boolean => {
  const unit = BY_SPELLING.get(spelling);
  return unit?.of === "count" && PACK_WORDS.has(unit.word);
};
/** What longer spellings begin with: "fl" of "fl oz". */
export const BEGINNINGS: ReadonlySet<string> = new Set(
  [...BY_SPELLING.keys()].flatMap((one) => [...one.matchAll(/ /g)].map(({ index }) => one.slice(0, index))),
);
/** What a unit's first word may be, one or several of it, and how its spelling has it. */
export const FIRST_WORDS: ReadonlyMap<string, string> = new Map(
  [...BY_SPELLING.keys()].flatMap((one) => {
    const [first = ""] = one.split(" ");
    return [first, `${first}s`, `${first}es`]
      .filter((word) => singularName(word) === first)
      .map((word) => [word, first] as const);
  }),
);
