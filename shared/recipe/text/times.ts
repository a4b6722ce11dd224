// Lengths of time and temperatures in the words of a method or a heading.

import { type Celsius, celsius, toCelsius } from "../../base/units.ts";

const WORDS: Readonly<Record<string, number>> = {
  ...{ a: 1, an: 1, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10 },
  ...{ twelve: 12, fifteen: 15, twenty: 20, thirty: 30, forty: 40, "forty-five": 45, sixty: 60, half: 0.5 },
};
const SIGNS: Readonly<Record<string, number>> = { "½": 0.5, "¼": 0.25, "¾": 0.75, "⅓": 1 / 3, "⅔": 2 / 3 };
const NUMBER = `(?:\\d+(?:[.,]\\d+)?\\s?[½¼¾⅓⅔]?|[½¼¾]|(?:${Object.keys(WORDS)
  .sort((a, b) => b.length - a.length)
  .join("|")})(?![\\p{L}]))(?:\\s\\d/\\d|\\s?and a half)?(?:\\s?\\d?/\\d)?`;
const UNIT =
  "(h(?:ou)?rs?\\.?|h|stunden?|std\\.?|heures?|horas?|ore|ora|uur|uren|timmar|timmer|timer|tim\\.?|min(?:ute)?s?\\.?|minuten|minutos?|minuti|minuto|minuter|minutter|minut|mn|['′]|sec(?:ond)?s?\\.?|days?)";
/** "1 h 20", "1h30", "1 to 2 hours", "35-40 min", "an hour and a half", "1 hr 30 min". */
const TIME = new RegExp(
  `(?<![\\p{L}\\d.,])(${NUMBER})\\s*(?:(?:[-–—]|to|or|bis)\\s*(${NUMBER})\\s*)?-?\\s?${UNIT}(?![\\p{L}])(?:\\s?and a half)?(?:(?<=h)([0-5]\\d)(?!\\d)|\\s*(?:and|,)?\\s*(\\d{1,2})(?:\\s*(?:min(?:ute)?s?\\.?|m)(?![\\p{L}])|(?![\\d\\p{L}°%./,:–-])(?!\\s*(?:[\\p{L}°%]|[-–]))))?`,
  "giu",
);
const OVERNIGHT = /\bovernight\b/i;

export type Times = {
  /** The middle of each, in minutes, in order. */
  readonly minutes: readonly number[];
  /** "Every 30 minutes", "after 20 minutes": they say when within another time. */
  readonly within: readonly number[];
};

function numberSaid(text: string): number {
  const plain = text.trim().toLowerCase();
  const half = /and a half$/.test(plain) ? 0.5 : 0;
  const head = plain.replace(/\s?and a half$/, "");
  if (WORDS[head] !== undefined) return (WORDS[head] ?? 0) + half;
  const fraction = /^(?:(\d+)\s+)?(\d)\/(\d)$/.exec(head);
  if (fraction) return Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]);
  const sign = /[½¼¾⅓⅔]/.exec(head)?.[0];
  const number = head
    .replace(/[½¼¾⅓⅔]/, "")
    .trim()
    .replace(",", ".");
  return (number === "" ? 0 : Number(number)) + (sign === undefined ? 0 : (SIGNS[sign] ?? 0)) + half;
}

const minutesIn = (unit: string): number => {
  const plain = unit.toLowerCase();
  if (/^(?:h|std|stund|heure|ore|ora|uur|uren|tim)/.test(plain)) return 60;
  if (/^d/.test(plain)) return 1440;
  return /^sec/.test(plain) ? 1 / 60 : 1;
};

const MAY_HOLD_TIME = /\d|½|¼|¾|hour|minute|overnight/i;

/** Every length of time in a text. */
export function timesIn(text: string): Times {
  const minutes: number[] = [];
  const within: number[] = [];
  if (!MAY_HOLD_TIME.test(text)) return { minutes, within };
  for (const one of text.matchAll(TIME)) {
    const [whole, from = "", to, unit = "", glued, apart] = one;
    const rest = glued ?? apart;
    const low = numberSaid(from);
    const high = to === undefined ? low : numberSaid(to);
    const half = /and a half$/i.test(whole) && !/and a half/i.test(from) ? 0.5 : 0;
    // "2 x 30 min" and "3 folds 30 min apart" are not added up here.
    const one1 = ((low + high) / 2 + half) * minutesIn(unit) + Number(rest ?? 0);
    if (!Number.isFinite(one1) || one1 <= 0) continue;
    const before = text.slice(Math.max(0, (one.index ?? 0) - 24), one.index ?? 0);
    const after = text.slice((one.index ?? 0) + whole.length, (one.index ?? 0) + whole.length + 24);
    const isWithin =
      /\b(?:every|after|at|first|last|final|each|of which|per|within)\s*(?:the\s*)?(?:about\s*)?$/i.test(before) ||
      /^\s*(?:apart|intervals?|in(?:to)?\b(?! (?:the|a) (?:fridge|retarder|oven|cooler))|before|prior)/i.test(after) ||
      /\(\s*or\s*$/.test(before);
    (isWithin ? within : minutes).push(one1);
  }
  return { minutes, within };
}

/** Minutes of a text that gives one length of time, or several one after another; null where it gives none. */
export function durationIn(text: string): number | null {
  const { minutes } = timesIn(text);
  return minutes.length === 0 ? null : minutes.reduce((all, one) => all + one, 0);
}

export const isOvernight = (text: string): boolean => OVERNIGHT.test(text);

const DEGREES =
  /(-?\d{1,3}(?:[.,]\d)?)(?:\s*°?\s*[CF]?\s*(?:[-–—]|to|bis)\s*(\d{1,3}(?:[.,]\d)?))?\s*(?:[°º˚]\s*([CF])?(?![\p{L}])|(℃)|(℉)|deg(?:rees?|\.)?\s*(C|F)?(?:elsius|ahrenheit)?(?![\p{L}])|\s?([CF])(?![\p{L}\d]))/giu;
const GAS = /\bgas(?: mark)?\s*(\d{1,2})\b/i;
/** British gas marks: 1 is 275 °F and each next one 25 °F more (common practice, no source). */
const gasMark = (mark: number): Celsius => toCelsius(250 + 25 * mark, "F");

/** The temperatures of a text in °C, in order; ranges as their middle, a second one in the other unit left out. */
export function temperaturesIn(text: string): Celsius[] {
  const temperatures: { value: number; unit: "C" | "F" | "" }[] = [];
  if (/\d/.test(text)) {
    for (const one of text.matchAll(DEGREES)) {
      const [whole, from = "", to, sign, cSign, fSign, word, bare] = one;
      const letter = String(sign ?? word ?? bare ?? (cSign ? "C" : fSign ? "F" : "")).toUpperCase() as "C" | "F" | "";
      if (bare !== undefined && bare !== bare.toUpperCase()) continue;
      const low = Number(from.replace(",", "."));
      const high = to === undefined ? low : Number(to.replace(",", "."));
      if (/^-/.test(whole) && /\d\s*$/.test(text.slice(0, one.index ?? 0))) continue;
      temperatures.push({ value: (low + high) / 2, unit: letter });
    }
  }
  // "160 fan": an oven's fan is set in °C.
  const fan =
    temperatures.length === 0
      ? /(?<!\d)(1\d\d|2[0-4]\d)\s?(?:fan\b|umluft\b|chaleur tournante)/i.exec(text)?.[1]
      : undefined;
  if (fan !== undefined) return [celsius(Number(fan))];
  if (temperatures.length === 0) {
    const gas = GAS.exec(text)?.[1];
    return gas === undefined ? [] : [gasMark(Number(gas))];
  }
  const isMixed = temperatures.some(({ unit }) => unit === "C") && temperatures.some(({ unit }) => unit === "F");
  return temperatures.flatMap(({ value, unit }) => {
    if (isMixed && unit === "F") return [];
    const known = unit === "" ? likelyUnit(value) : unit;
    return known === null ? [] : [celsius(Math.round(toCelsius(value, known) * 10) / 10)];
  });
}

/** Doughs proof at 20 to 40 °C or 68 to 104 °F, ovens stand at 130 to 250 °C or 275 to 500 °F; between them nobody can tell. */
function likelyUnit(value: number): "C" | "F" | null {
  if (value <= 50 || (value > 125 && value < 250)) return "C";
  return value <= 125 || value > 310 ? "F" : null;
}

export const temperatureIn = (text: string): Celsius | null => temperaturesIn(text)[0] ?? null;
