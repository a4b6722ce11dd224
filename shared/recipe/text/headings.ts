// Headings of any form: what part of the recipe the lines below them are.

import { type Celsius, celsius } from "../../base/units.ts";
import { singularName } from "../../base/words.ts";
import { PREFERMENT_WORDS } from "../../larder/kind-words.ts";
import type { Stage, StageRole } from "./description.ts";
import { durationIn, temperatureIn } from "./times.ts";

/** What follows such a heading, if it is no stage. */
export type Mode = "ingredients" | "method" | "nutrition" | "note" | "equipment" | "web page";

const MODES: readonly (readonly [Mode, RegExp])[] = [
  [
    "ingredients",
    /^(?:the )?(?:(?:dry|wet|liquid|other|main|bread|dough )?\s*ingredients?(?: list)?|zutaten|ingr[eé]dients?|what you(?:'ll| will)? need|you will need|for the recipe|recipe)$/,
  ],
  [
    "method",
    /^(?:the )?(?:method|directions?|instructions?|preparation|procedure|process|steps?|how to (?:make|bake)\b.*|what to do|make it|zubereitung|mixing|mixing method|make-?up|bake|baking|to make(?: it| the \w+)?|schedule|timeline|production)$/,
  ],
  ["nutrition", /^nutrition(?:al)?(?: facts| info(?:rmation)?| per \w+)?$/],
  ["equipment", /^(?:special )?(?:equipment|tools|you(?:'ll| will) also need|utensils)$/],
  [
    "note",
    /^(?:(?:recipe|baker'?s?|cook'?s?) )?(?:notes?|tips?(?: and tricks)?|storage|variations?|faqs?|make ahead|substitutions?)$/,
  ],
  [
    "web page",
    /^(?:comments?|reviews?|leave a (?:comment|reply|review)|related(?: recipes| posts)?|you (?:may|might) also like|\d+ (?:comments|responses|replies)|about (?:me|the author)|more recipes)$/,
  ],
];

/** Words that say what a part is; the first that fits decides. */
const ROLES: readonly (readonly [StageRole, RegExp])[] = [
  [
    "overall",
    /\b(?:overall|total (?:formula|dough|recipe)|whole formula|complete formula|full formula|total dough formula|formula total)\b/,
  ],
  ["egg wash", /\b(?:egg ?wash|eggwash|wash)\b/],
  [
    "roll-in",
    /\b(?:roll ?in|rolling in|lamination|laminating|beurrage|tourrage|tourage|butter block|fold in butter|locked in|lock in|laminate|roll in fat|folding butter|folding fat|layering)\b/,
  ],
  ["icing", /\b(?:icing|frosting|glaze|fondant|drizzle|glacage)\b/],
  [
    "filling",
    /\b(?:filling|frangipane|pastry cream|creme patissiere|custard|ganache|jam|curd|compote|swirl|spread|smear|schmear|remonce|remoulade|puree|cream|cheese mixture|fruit mixture|nut mixture)\b/,
  ],
  [
    "topping",
    /\b(?:topping|streusel|crumble|crumb|decoration|decorate|finish|finishing|garnish|crust|sprinkle|cross|crosse|meringue|whipped cream|sauce|sprinkling)\b/,
  ],
  [
    "dusting",
    /\b(?:dusting|bench flour|for the (?:bench|tin|pan|tray|counter|work surface)|greasing|to serve|for serving)\b/,
  ],
  ["part", /^(?:for )?(?:the )?(?:boiling|poaching|frying|deep frying|lye|lye bath|boiling bath|water bath|bath)$/],
  ["soaker", /\b(?:soaker|scald|tangzhong|yudane|water roux|porridge|mash|gelatini[sz]ed|altus|soaked grain|soak)\b/],
];
const OLD_DOUGH =
  "old dough|pate fermentee|fermented dough|pre ferment|vorteig|anstellgut|vorstufe|mother|chef|leaven|sauerteig|lievito|madre|desem";
const PREFERMENT = new RegExp(`\\b(?:${PREFERMENT_WORDS.join("|")}|${OLD_DOUGH})\\b`);
const DOUGH =
  /^(?:(?:the|final|main|first|1st|2nd|third|3rd|bread|bun|roll|pizza|sweet|rich|basic|base|second|last|actual|loaf|brioche|cake|cookie|biscuit|pastry|tart)\s+)*(?:dough|final|final mix|main mix|mix|batter|mixing|cake|sponge cake|base|final dough formula|main|bread|day 2|next day|dough mix|dough formula|formula|dough ingredient|detrempe|dough final|pate|pate finale|teig|hauptteig|brotteig|impasto|impasto finale|masa|masa final|deeg|dej|deg)$/;
/** A part of the ingredients that goes in at some time of the mixing. */
const GROUP =
  /^(?:(?:dry|wet|liquid|other|remaining|rest|additional|main)\s*(?:ingredient|stuff|mix|group)?s?|add ?in|mix ?in|inclusion|addition|add later|later addition|group [a-d\d]|creaming|hold back|bassinage|delayed|autolyse|minor|major|scale|flour|liquid|fat|sugar|leavening|spice|fruit)$/;
const QUALIFIERS = new Set(
  singularName(
    [
      "the for a of and with to in my our ingredient ingredients ripe liquid stiff firm white dark rye wheat whole wholewheat",
      "wholemeal spelt overnight young mature active build first second third 1st 2nd 3rd stage mix mixture formula recipe",
      "final main sweet rich day night before morning evening dough make made step phase part preferment starter sourdough",
      "culture seed feed refreshment sponge poolish biga levain hot cold grain mixed linseed ripened lively bubbly wild natural",
      "yeast yeasted german italian french fed refreshed matured ripening rested type b c i ii iii one two three chocolate",
      "cinnamon vanilla cheese almond apple lemon sugar butter cream egg honey nut pecan walnut raisin custard top on optional",
      "royal simple powdered",
    ].join(" "),
  ).split(" "),
);

export type Heading = { readonly mode: Mode } | { readonly stage: Stage; readonly isUnsure: boolean };

/** What the heading's own words are, without numbering and what stands in brackets or behind a dash. */
export function headingCore(text: string): string {
  return singularName(
    text
      .replace(/[([{].*?(?:[)\]}]|$)/g, " ")
      .replace(
        /^\s*(?:\d(?:st|nd|rd|th)|first|second|third|last)\s+(?:stage|step|part|phase|build)\b\s*[:.)–—-]\s*/i,
        "",
      )
      .replace(
        /^\s*(?:stage|step|part|phase|day|section|component)\s*(?:\d+|[a-dA-D]|one|two|three)\b\s*[:.)–—-]\s*/i,
        "",
      )
      .replace(/^\s*(?:[A-D]|\d|[IVX]{1,3})[.):]\s*/, "")
      .replace(/\s+(?:@|at|=|,|[-–—:|])?\s*\d[\s\S]*$/, " ")
      .replace(/\s[–—-]\s.*$/, " ")
      .replace(/pre-?ferment/gi, "preferment")
      .replace(/[^\p{L}\d' -]/gu, " "),
  )
    .replace(/\s+/g, " ")
    .trim();
}

export const prefermentWordIn = (core: string): string => {
  const word = PREFERMENT.exec(core)?.[0] ?? "";
  if (/^(?:vorteig|vorstufe|old dough|pate fermentee|fermented dough|pre ferment)$/.test(word)) return "preferment";
  if (/^(?:anstellgut|mother|chef|leaven|lievito|madre|desem)$/.test(word)) return "levain";
  return word === "sauerteig" ? "sourdough" : word;
};

/** The mode a heading opens, whatever marks stand around it. */
export function modeOf(text: string): Mode | undefined {
  const core = singularName(text.replace(/[^\p{L}\d'’ -]/gu, " "))
    .replace(/\s+/g, " ")
    .trim();
  if (core === "" || core.length > 60) return undefined;
  const plain = text
    .toLowerCase()
    .replace(/[^\p{L}\d'’ ]/gu, " ")
    .replace(/\s+/g, " ")
    .trim();
  return MODES.find(([, words]) => words.test(core) || words.test(plain))?.[0];
}

/** Words such as "bread" or "dough" in a name that is no heading: titles are asked elsewhere. */
const MAX_WORDS = 7;

/** "Day 2", "Stage II": what comes after something that was made before is the dough. */
const LATER = /^(?:day|stage|step|part|phase)\s*(?:[2-9]|two|three|ii|iii|b|c)\s*:?$/i;
const NO_STAGE: Stage = { role: "dough", name: "", line: null, preferment: "", hours: null, temperature: null };
/** "Day 1" says nothing of what it heads. */
export const isFirstDay = (text: string): boolean => /^(?:day|stage|step|part|phase)\s*(?:1|one|i|a)\s*:?$/i.test(text);

/**
 * The stage that a line without an amount of its own heads; undefined where its words are no stage's. `isSetOff` tells that
 * marks, capitals or a colon make it a heading whatever its words.
 */
export function stageOf(text: string, line: number, isSetOff: boolean): Heading | undefined {
  if (LATER.test(text.trim()))
    return { isUnsure: false, stage: { ...NO_STAGE, name: text.replace(/[\s:]+$/, ""), line } };
  const core = headingCore(text);
  const words = core.split(" ").filter((word) => word !== "");
  if (words.length === 0 || words.length > MAX_WORDS) return undefined;
  const stage = (role: StageRole, preferment = "", isUnsure = false): Heading => {
    const hours = durationIn(text);
    return {
      isUnsure,
      stage: {
        role,
        name: text.replace(/[\s:]+$/, ""),
        line,
        preferment,
        hours: hours === null ? null : hours / 60,
        temperature: temperatureOf(text),
      },
    };
  };
  const opened = core
    .replace(/^(?:for (?:the |a )?|to make (?:the )?|make (?:the )?|mix (?:the )?(?=final|dough))/, "")
    .trim();
  const plain = opened === "" ? core : opened;
  const isOnly = (pattern: RegExp) =>
    plain
      .replace(pattern, " ")
      .split(" ")
      .filter((word) => word !== "")
      .every((word) => QUALIFIERS.has(word) || /^\d+$/.test(word) || ROLES.some(([, words]) => words.test(word)));
  for (const [role, pattern] of ROLES) {
    if (pattern.test(plain) && (isSetOff || isOnly(pattern))) return stage(role);
  }
  const named = prefermentWordIn(plain);
  // "Preferment (biga)"
  const inBrackets =
    named === "preferment" ? prefermentWordIn(singularName(/[([](.*?)[)\]]/.exec(text)?.[1] ?? "")) : "";
  const preferment = inBrackets === "" ? named : inBrackets;
  const isDough = /\b(?:final|main)\b/.test(plain) || DOUGH.test(plain);
  if (
    preferment !== "" &&
    !(isDough && /^(?:final|main)\b/.test(plain)) &&
    !/^sponge cake$/.test(plain) &&
    isOnly(PREFERMENT)
  )
    return stage("preferment", preferment);
  if (isDough && (DOUGH.test(plain) || isOnly(/\b(?:final|main|dough|mix)\b/g))) return stage("dough");
  if (isSetOff && GROUP.test(plain)) return stage("dough");
  if (!isSetOff) return /^for (?:the |a )/.test(core) && words.length <= 5 ? stage("part", "", true) : undefined;
  if (/\bdough\b/.test(plain)) return stage("dough");
  if (
    preferment !== "" &&
    words.length <= 4 &&
    !/\b(?:bread|loaf|loave|baguette|boule|pizza|roll|bun|bagel|ciabatta|focaccia|cake)\b/.test(plain)
  )
    return stage("preferment", preferment);
  return stage("part", "", true);
}

function temperatureOf(text: string): Celsius | null {
  const read = temperatureIn(text);
  return read === null ? null : celsius(read);
}
