// A row's text apart from its amount and name: percentages, temperatures, "optional", "all of the", bakers' shorthand.

import { type Celsius, toCelsius } from "../../base/units.ts";

/** How surely a percentage is the row's own: "2% milk" may name the milk, "100% rye flour" as well. */
export type PercentRead = { readonly value: number; readonly says: "amount" | "perhaps a name" | "a name" };

export type RowText = {
  /** What is left to weigh and to name; percentages that name something stay in it. */
  readonly plain: string;
  readonly percents: readonly PercentRead[];
  /** The same with every percentage taken out, for a text whose percentages are amounts. */
  readonly bare: string;
  readonly temperature: Celsius | null;
  readonly isOptional: boolean;
  /** "All of the poolish", "levain, from above". */
  readonly isAll: boolean;
  /** "except 40 g": what is kept back of all of it; "" where nothing is. */
  readonly keeps: string;
};

/** "jäst" holds no "st": the edge of a word is one for letters with accents as well. */
const EDGE = String.raw`(?:(?<=[\p{L}\p{N}])(?![\p{L}\p{N}])|(?<![\p{L}\p{N}])(?=[\p{L}\p{N}]))`;
const withEdges = ([{ source, flags }, long]: readonly [RegExp, string]): readonly [RegExp, string] => [
  new RegExp(source.split(String.raw`\b`).join(EDGE), `${flags}u`),
  long,
];

const PLAIN_SHORTHAND: readonly (readonly [RegExp, string])[] = [
  [/\bfl(?:r)?\b(?!\.?\s*oz)\.?/gi, "flour"],
  [/\b[Ww](?:h(?:ole)?)?\.?\s?[Ww](?:h(?:ea)?t)?\b(?=\s+flour)/g, "whole wheat"],
  [/\bWW\b(?!\s+flour)/g, "whole wheat flour"],
  [/\bWWF\b/g, "whole wheat flour"],
  [/\bAP\b(?!\s+flour)/g, "all-purpose flour"],
  [/\bAP\b(?=\s+flour)/g, "all-purpose"],
  [/\bBF\b/g, "bread flour"],
  [/\bHG\b(?=\s+fl)/gi, "high-gluten"],
  [/\bHG\b/g, "high-gluten flour"],
  [/\bw(?:a)?tr\b\.?/gi, "water"],
  [/\bH2O\b/gi, "water"],
  [/\bsl?t\b(?=\.|$|[\s,:;-])\.?/gi, "salt"],
  [/\bya?st\b\.?/gi, "yeast"],
  [/\bsu?gr\b\.?/gi, "sugar"],
  [/\bbt(?:te)?r\b\.?/gi, "butter"],
  [/\bml?k\b\.?/gi, "milk"],
  [/\bb(?:a)?k(?:in)?g\.? (?:pdr|pwdr|powd)\b\.?/gi, "baking powder"],
  [/\bInst\.?(?=\s+(?:dry |dried )?yeast)/gi, "instant"],
  [/\b(?:lge?|lrg)\.?(?=\s+(?:eggs?|yolks?|whites?)\b)/gi, "large"],
  [/\bmed\.?(?=\s+(?:eggs?|yolks?|whites?)\b)/gi, "medium"],
  [/\bIDY\b/g, "instant yeast"],
  [/\bADY\b/g, "active dry yeast"],
  [/\bLM\b/g, "levain"],
  [/(\d)\s+#(?=\s|$)/g, "$1#"],
  [/\b(?:c)\/s\b/gi, "tbsp"],
  [/(\d)\s*à\s*(?=\d)/g, "$1 x "],
];
const SHORTHAND = PLAIN_SHORTHAND.map(withEdges);
const SHORT =
  /\b(?:fl|flr|wt|wtr|slt|st|yst|yast|sgr|sugr|btr|bttr|mlk|mk|wwf?|ap|bf|hg|idy|ady|lm|h2o|watr|bkg|bakg|wh|inst|lge?|lrg|med)\b|#|à|c\/s/i;

/** Words behind a percentage that make it part of a name. */
const NAMED =
  /^\s*(?:hydration|hyd\b|fat\b|milk|cocoa|cacao|protein|chocolate|dark\b|moisture|butterfat|solids|cream\b|yogh?urt|acid|ash\b|extraction|brix|lean|semi|vinegar)/i;
const NAMED_PERHAPS = /^\s*(?:whole|wholemeal|wholegrain|rye|spelt|stone|strong|white|organic|natural)/i;
const PERCENT = /(\d+(?:[.,]\d+)?)\s?%/g;

const TEMPERATURE =
  /(?:(@|\bat\b)\s*)?(?<![\d.,/])(-?\d{1,3}(?:[.,]\d)?)(?:\s*(?:[-–]|to)\s*\d{1,3}(?:[.,]\d)?)?\s?(?:([°º˚])\s?([CF]?)\b|(℃|℉)|degrees?\s*(c|f)?(?:elsius|ahrenheit)?\b|([CF])\b(?!\w|\s+\p{L}))/giu;
const OPTIONAL = /[,(]?\s*\boptional(?:ly)?\b\s*\)?/i;
const ALL =
  /^(?:all|use all|the whole|whole|entire|the entire)\s+(?:of\s+)?(?:the\s+)?(?=\p{L})|\((?:all|all of it|whole amount)\)|,?\s*\ball of (?:it|the above)\b|,?\s+(?:all|komplett|gesamt|complete|completo|tutt[oaie]|tout(?:e|es)?|tod[oa]s?|entier|entière)$|\s+ganz(?:er|e|es)?$|^(?:tutt[oaie]|tout(?:e|es)?|tod[oa]s?|ganz(?:er|e|es)?)\s+(?:l[ae]s?\s+|il\s+|l['’]|der\s+|die\s+|das\s+|den\s+|el\s+)?(?=\p{L})/iu;
const FROM_ABOVE =
  /[,(-]?\s*\b(?:from|see|as)\s+(?:the\s+)?(?:above|below|stage \d|step \d|yesterday|day (?:one|1))\b\)?|\(\s*(?:see )?(?:above|below)\s*\)/i;

const EXCEPT =
  /[,(]?\s*\b(?:except(?: for)?|minus|less|but(?: for)?|keeping(?: back)?|reserving|holding back|save)\s+(\d[\d.,]*\s?(?:k?g|grams?|oz|lbs?))(?![\p{L}]).*$/iu;

/** Grades of flour are written in figures: "00 flour", "Type 55", "Weizenmehl 550". */
const GRADES: readonly RegExp[] = [
  /(?<![\p{L}\d.,])(0{2,3}|0(?=\s+flour))(?=[ -]+(?:[\p{L}]+ ){0,2}(?:flour|farina))/giu,
  /(?<=\b(?:type|typ|tipo|t[ye]pe?)\s|\bT\.)(0{1,3}|\d{2,4}|(?<=tipo\s)[12](?=\s+\d|\s*[,:]\s|$))\b/giu,
  /(?<=(?:mehl|flour|farine|farina|harina)\s)(?:0{2,3}(?![\d.,])|0(?=\s*(?:$|[,:]\s)|\s+\d))/giu,
  /(?<=(?:mehl|flour|farine|farina|harina)\s)(405|550|630|700|812|850|997|1050|1150|1370|1600|1740)(?=[\s,;:(–-]+\d[\d.,]*\s?(?:%|k?g|oz|lbs?|ml|l)(?![\p{L}]))(?!\s?(?:%|k?g|oz|lbs?|ml|l)(?![\p{L}]))/giu,
];
/** Hidden in a word that leaves an ingredient what it is, so that no figure of it is taken for an amount. */
const hidden = (grade: string): string => `grade${[...grade].map((digit) => "abcdefghij"[Number(digit)]).join("")}ed`;
export const withGrades = (text: string): string =>
  text.replace(/grade([a-j]+)ed\b/g, (_, letters: string) =>
    [...letters].map((letter) => String("abcdefghij".indexOf(letter))).join(""),
  );

/** The amount of a name in a table stands in another cell. */
const GRADE_OF_CELL = /(?<=(?:mehl|flour|farine|farina|harina)\s)(0{2,3}|\d{3,4})$/iu;

/** Behind an amount the figure at the end is no second one: "350 g Roggenmehl 1150". */
const AMOUNT_BEFORE = /^\s*\d[\d.,]*\s?(?:k?g|gr|oz|lbs?|%)\s/i;

export function rowText(text: string, isCell = false): RowText {
  let plain = /\.{2,}|_{2,}|…|\t/.test(text) ? text.replace(/\.{2,}|_{2,}|…+|\t/g, " ") : text;
  let keeps = "";
  if (/flour|mehl|farin|harina|typ|tipo/i.test(plain))
    for (const grade of isCell || AMOUNT_BEFORE.test(plain) ? [...GRADES, GRADE_OF_CELL] : GRADES)
      plain = plain.replace(grade, (one) => hidden(one));
  let temperature: Celsius | null = null;
  let isOptional = false;
  let isAll = false;
  if (/roll/i.test(plain)) plain = plain.replace(/\broll(?:ing)?[- ]?in\b[,:]?/gi, " ");
  if (SHORT.test(plain)) for (const [short, long] of SHORTHAND) plain = plain.replace(short, long);
  if (/[°º˚℃℉@]|degree|\d\s?[CF]\b/i.test(plain)) {
    plain = plain.replace(TEMPERATURE, (whole, at, number, sign, letter, one, degree, bare) => {
      const unit = String(letter || degree || bare || (one === "℉" ? "F" : one ? "C" : "")).toUpperCase();
      const value = Number(String(number).replace(",", "."));
      // "2 C flour" are cups; so is "2 c." at the end.
      if (bare !== undefined && at === undefined && (value < 10 || bare !== String(bare).toUpperCase())) return whole;
      if (bare === "c" || bare === "f") return whole;
      temperature ??= toCelsius(value, unit === "F" || (unit === "" && value > 60) ? "F" : "C");
      return sign === undefined && one === undefined && degree === undefined && bare === undefined ? whole : " ";
    });
  }
  if (OPTIONAL.test(plain)) {
    plain = plain.replace(OPTIONAL, " ");
    isOptional = true;
  }
  if (
    /\b(?:all|whole|entire|above|below|from|see|yesterday|komplett|gesamt|complet\w|entier|entière|everything|ganz\w*|tutt\w|tout\w*|tod[oa]s?)\b/i.test(
      plain,
    )
  ) {
    plain = plain.replace(EXCEPT, (_, weight: string) => {
      keeps = weight;
      return " ";
    });
    for (const pattern of [ALL, FROM_ABOVE]) {
      const before = plain;
      plain = plain.replace(pattern, " ");
      isAll ||= plain !== before && !/^whole\b/i.test(before.trim());
      if (/^whole\b/i.test(before.trim())) plain = before;
    }
  }
  const percents: PercentRead[] = [];
  let bare = plain;
  if (plain.includes("%")) {
    const several = percentsIn(plain);
    percents.push(...several);
    bare = tidied(plain.replace(PERCENT, " "));
    plain = plain.replace(PERCENT, (one, _value, at: number) =>
      saysOf(plain.slice(at + one.length), plain.slice(0, at)) === "amount" ? " " : one,
    );
  }
  return { plain: tidied(plain), bare: tidied(bare), percents, temperature, isOptional, isAll, keeps };
}

const saysOf = (after: string, before: string): PercentRead["says"] => {
  if (/\b(?:hydration|hyd|fat|protein|at)\s*:?\s*$/i.test(before)) return "a name";
  if (NAMED.test(after)) return "a name";
  return NAMED_PERHAPS.test(after) ? "perhaps a name" : "amount";
};

function percentsIn(text: string): PercentRead[] {
  return [...text.matchAll(PERCENT)].map((one) => ({
    value: Number((one[1] ?? "").replace(",", ".")),
    says: saysOf(text.slice((one.index ?? 0) + one[0].length), text.slice(0, one.index ?? 0)),
  }));
}

const tidied = (text: string): string =>
  text
    .replace(/\(\s*[,;/-]*\s*\)|\[\s*\]/g, " ")
    .replace(/\s*[=|@~]\s*(?=$|[,)])/g, " ")
    .replace(/^[\s,;:|=@/–—-]+|[\s,;:|=@/–—-]+$/g, "")
    .replace(/\s+([,)])/g, "$1")
    .replace(/(?:[,;|/–—-]\s*){2,}/g, ", ")
    .replace(/\s{2,}/g, " ")
    .trim();
