// Lines of the method, with and without a heading above them.

import { type Celsius, type Minutes, minutes } from "../../base/units.ts";
import { singularName } from "../../base/words.ts";
import { isOvernight, temperaturesIn, timesIn } from "./times.ts";

/** What a step begins with; a few are ingredients' words as well until the line goes on like a step. */
const OPENING = String.raw`then |next,? |now |finally,? |meanwhile,? |gently |slowly |gradually |lightly |carefully |to (?=\w+ the )`;
const VERB_WORDS = [
  "mix|add|stir|knead|bake|preheat|pre-heat|combine|fold|let|leave|shape|place|cover|whisk|beat|sift|pour|roll|divide|dissolve|turn|transfer|remove|bring|heat|allow|melt|grease|dust|brush|sprinkle|weigh|scale|proof|prove|refrigerate|retard|spoon|spread|punch|knock|tip|put|set|work|blend|autolyse|autolyze|ferment|bulk|rest|cool|chill|cut|score|slash|steam|load|boil|rub|pre-?shape",
  "braid|plait|round|mould|mold|stretch|laminate|sheet|egg ?wash|glaze|soak|scald|toast|feed|refresh|build|degas|portion|deposit|drop|pipe|freeze|thaw|defrost|serve|store|slice|warm|ripen|scrape|make|prepare|take|use|line|form|flatten|pinch|invert|return|repeat|continue|check|insert|open|press|push|pull|wrap|sprinkle|fill|top|garnish|drain|rinse|swirl|strain|switch|test|reduce|increase|lower",
  "raise|start|finish|hold|keep|when|once|after|in a|on a|while|until|if|do not|don't|as soon|at this|just before|the (?:dough|next|loaves|bread|rolls|oven|mixture|levain|poolish|starter)|dough (?:should|will|is)",
];
const VERBS = new RegExp(`^(?:${OPENING})?(?:${VERB_WORDS.join("|")})\\b`, "i");
/** Stages of the work as a table or a short line names them: "Bulk 2 h", "DDT 25 °C", "Final proof: 60 min". */
const WORK_WORDS = [
  "mix(?:ing)?(?: time)?|knead(?:ing)?|autolyse|autolysis|bulk(?: ferment(?:ation)?)?|ferment(?:ation)?|floor time|first rise|second rise|rise|rising|bench(?: rest| time)?|rest(?:ing)?|intermediate proof|divid(?:e|ing)|shap(?:e|ing)|make-?up|mould(?:ing)?|final proof|proof(?:ing)?|prov(?:e|ing)|retard(?:ing)?|bak(?:e|ing)(?: time| temp(?:erature)?)?|oven(?: temp(?:erature)?)?",
  String.raw`cool(?:ing)?|temper(?:ing)?|ddt|desired dough temp(?:erature)?|dough temp(?:erature)?|final dough temp(?:erature)?|folds?|s&f|stretch (?:and|&) folds?|steam|1st speed|2nd speed|first speed|second speed|slow speed|fast speed|speed \d|scaling|score|lamination|chill(?:ing)?|sheeting|backen|kneten|ruhen|teigruhe|stückgare|stockgare|gare|cuisson|pétrissage|pointage|apprêt|cottura|lievitazione|puntata`,
];
const NO_WORK = String.raw`(?!\s+(?:flour|water|powder|soda|yeast|salt|milk|butter|formula|ingredients?)\b)`;
const WORK = new RegExp(String.raw`^(?:[\p{L}-]+ |\d(?:st|nd|rd|th) )?(?:${WORK_WORDS.join("|")})\b${NO_WORK}`, "iu");
const DOUGH_TEMPERATURE = /\b(?:ddt|(?:desired|final|target)?\s*dough temp(?:erature)?)\b/i;
/** A weight stands in it: "rest 500 g" is no step, but "divide into 500 g pieces" is. */
const HAS_WEIGHT = /\d\s?(?:k?g|oz|lbs?|ml|cups?|tbsp|tsp)\b/i;

const DIVIDED =
  /^(?:divide|scale|portion|détailler|façonner|diviser|peser|teilen|abwiegen|dividere|spezzare|dividir|s?pezzatura:?)(?!\p{L})(?: (?:at|into|to|in|en|à|zu))?\s*\d/iu;
const TIN_SIZE = /\d\s?(?:lb|kg|g)\s+(?:loaf |bread )?(?:tins?|pans?)\b/gi;
/** No dough and no water is so hot, in °C; degrees of neither unit may be of both. */
const OVEN = 120;
const isHot = (text: string): boolean =>
  temperaturesIn(text).some((one) => one >= OVEN) || /(?<!\d)[2-4]\d\d\s?[°º˚]/.test(text);

export type StepRead = {
  readonly text: string;
  readonly minutes: Minutes | null;
  readonly temperature: Celsius | null;
  readonly isUnclear: boolean;
};

/** Whether a line that stands under no heading of a method is a step of it. */
export function isStep(text: string, hasAmount: boolean, isInMethod: boolean): boolean {
  const words = text.split(" ").length;
  const hasTime = timesIn(text).minutes.length > 0 || isOvernight(text);
  const hasHeat = /\d\s?(?:°|º|℃|℉|deg(?:rees)?\b)|(?<!\d)\d{2,3}\s?[CF]\b/.test(text);
  if (DIVIDED.test(text)) return true;
  // "Proves 50 mins then 220 C for 35 mins", "Ugn 250°, 7-8 min": a time and the heat of an oven, and nothing weighed.
  if (hasTime && words <= 20 && !HAS_WEIGHT.test(text.replace(TIN_SIZE, " ")) && isHot(text)) return true;
  if (WORK.test(text) && !(hasAmount && HAS_WEIGHT.test(text)) && (hasTime || hasHeat || isInMethod)) return true;
  if (hasTime && isHeatAndTime(text)) return true;
  if (!VERBS.test(text)) return isInMethod && words > 4 && /[.!]$/.test(text);
  if (
    words >= 5 &&
    !/^(?:roll|rolled|warm|cool|cream|cut|top|rest|bulk|sheet|line|fill|press|form|round|set|use|hold|drop|toast|steam|boil|ferment|chill|soak|scald|glaze|rub|score|dust|salt|when|if)s?\b/i.test(
      text,
    )
  )
    return true;
  if (hasTime || hasHeat) return true;
  if (
    words >= 4 &&
    /^(?:\w+ly )?\w+ (?:the|your|it|them|together|into|in|on|for|until|with|all|up|out|each|to|and|over|well|everything|through)\b/i.test(
      text,
    )
  )
    return true;
  return (
    (isInMethod || !hasAmount) &&
    words >= 3 &&
    /^(?:mix|knead|bake|shape|divide|proof|prove|ferment|combine|stir|fold|let|leave|cover|preheat|score|autolyse|degas|whisk)\b/i.test(
      text,
    )
  );
}

/** "350F, 1 hr", "40 min at 220 °C": nothing but how hot and how long. */
const isHeatAndTime = (text: string): boolean =>
  temperaturesIn(text).length > 0 &&
  !/\p{L}/u.test(
    text
      .replace(/\d\s?°?\s?[CF]\b|\b(?:degrees?|fan|gas(?: mark)?|oven|at|for|about|approx|then|or|to|and|hot)\b/gi, " ")
      .replace(/\b(?:h(?:ou)?rs?|h|min(?:ute)?s?|hour)\b|(?<=\d)(?:h|hrs?|mins?)\b/gi, " "),
  );

export const doughTemperatureIn = (text: string): Celsius | null =>
  DOUGH_TEMPERATURE.test(text) ? (temperaturesIn(text)[0] ?? null) : null;

/** Sentences of a line as steps; one without a time goes with the one before it. */
export function stepsIn(text: string): StepRead[] {
  const sentences = text
    .split(/(?<=(?:[\p{L})°%]{2}|\d['′°%]|\d\s?[CFh])[.!;])\s+(?=\p{Lu}|\d)/u)
    .map((one) => one.trim())
    .filter((one) => one !== "");
  const steps: string[] = [];
  for (const sentence of sentences) {
    const hasTime = (one: string) => timesIn(one).minutes.length > 0 || isOvernight(one);
    const last = steps[steps.length - 1];
    if (last !== undefined && (!hasTime(sentence) || !hasTime(last))) steps[steps.length - 1] = `${last} ${sentence}`;
    else steps.push(sentence);
  }
  return steps.map(stepOf);
}

function stepOf(text: string): StepRead {
  const { minutes: times, within } = timesIn(text);
  const sum = times.reduce((all, one) => all + one, 0);
  const degrees = temperaturesIn(text);
  const isSame = degrees.every((one) => Math.abs(one - (degrees[0] ?? 0)) < 4);
  const isChoice = /\bor\b/i.test(text) && times.length > 1;
  const repeats = /\b(?:repeat|twice|\d\s?(?:x(?!\s*\d+\s?(?:k?g|oz|lb))|times))\b/i.test(text) && times.length > 0;
  const folds = times.length === 0 && within.length > 0;
  const isUnclear = isChoice || repeats || folds || (times.length === 0 && isOvernight(text));
  return {
    text,
    minutes: times.length === 0 || isUnclear ? null : minutes(Math.round(sum * 100) / 100),
    // "230 °C, then 210 °C" begins at the first.
    temperature: degrees.length > 0 && (isSame || degrees.length > 1) ? (degrees[0] ?? null) : null,
    isUnclear,
  };
}

/** "Mix", "Bulk", "Bake": whether it names a piece of work. */
export const isWorkWord = (text: string): boolean => WORK.test(singularName(text)) || VERBS.test(text);
