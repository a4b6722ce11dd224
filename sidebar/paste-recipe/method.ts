// The steps of a text as the rows of a sheet's method: a name, minutes, a temperature, and what to do.

import { fromCelsius, type TemperatureUnit } from "../../shared/base/units.ts";
import type { Step } from "../../shared/recipe/text/description.ts";

const NAMES: readonly (readonly [name: string, words: RegExp])[] = [
  ["Autolyse", /\bautoly/i],
  [
    "Bulk fermentation",
    /\b(?:bulk|floor time|first ris|1st rise|ferment(?!ed))|\b(?:rise|prove|proof|double)\b.*\b(?:bowl|doubled|covered|cover)\b|^(?:let |leave (?:to )?)?ris(?:e|ing)\b/i,
  ],
  ["Bench rest", /\b(?:bench|intermediate|rest(?:ing)?|relax)\b/i],
  ["Retard", /\b(?:retard|overnight|fridge|refrigerat)/i],
  ["Final proof", /\b(?:final pro|second ris|2nd rise|proof|prove|proving|last rise)\b/i],
  ["Bake", /\b(?:bake|baking|oven)\b/i],
  ["Cool", /\bcool/i],
  ["Fold", /\b(?:fold|stretch)/i],
  ["Divide", /\b(?:divide|scale|portion)\b/i],
  ["Shape", /\b(?:shape|form|mould|mold|pre-?shape|round|roll)\b/i],
  ["Chill", /\b(?:chill|freez)/i],
  ["Laminate", /\blaminat/i],
  ["Mix", /\b(?:mix|knead|combine|whisk|cream|beat|stir|blend|add|speed)\b/i],
];
const MIXING = /^(?:mix|knead|combine|whisk|cream|beat|stir|blend|add|place|put|dissolve|weigh|in a)\b/i;
const MAX_HOW_LENGTH = 400;

/** The sentence that gives the time says what the step is. */
function nameOf(text: string): string {
  const sentences = text.split(/(?<=[.!;])\s+/);
  const timed = sentences.find((one) => /\d|overnight/i.test(one)) ?? text;
  if (MIXING.test(timed)) return "Mix";
  const matches = NAMES.map(([name, words]) => ({ name, at: timed.search(words) })).filter(({ at }) => at >= 0);
  const first = matches.sort((one, other) => one.at - other.at)[0];
  if (first !== undefined) return first.name;
  const words = timed
    .replace(/[.:;,].*$/, "")
    .split(" ")
    .slice(0, 3)
    .join(" ");
  return words.charAt(0).toUpperCase() + words.slice(1);
}

export type MethodRow = {
  readonly name: string;
  readonly minutes: number | null;
  readonly temperature: number | null;
  readonly how: string;
};

/** One row for each step that takes time; what stands between goes with the step before it, an opening with the one after. */
export function methodRows(steps: readonly Step[], unit: TemperatureUnit): MethodRow[] {
  const rows: { name: string; minutes: number | null; temperature: number | null; how: string }[] = [];
  let opening = "";
  for (const { text, minutes, temperature } of steps) {
    const last = rows[rows.length - 1];
    if (minutes === null && !/\bovernight\b/i.test(text)) {
      if (last === undefined) opening = `${opening} ${text}`.trim();
      else last.how = `${last.how} ${text}`.slice(0, MAX_HOW_LENGTH);
      continue;
    }
    const degrees = temperature === null ? null : Math.round(fromCelsius(temperature, unit) * 10) / 10;
    rows.push({
      name: nameOf(text),
      minutes,
      temperature: degrees,
      how: `${opening} ${text}`.trim().slice(0, MAX_HOW_LENGTH),
    });
    opening = "";
  }
  if (rows.length === 0 && opening !== "")
    rows.push({ name: nameOf(opening), minutes: null, temperature: null, how: opening.slice(0, MAX_HOW_LENGTH) });
  const seen = new Map<string, number>();
  return rows.map((row) => {
    const times = (seen.get(row.name) ?? 0) + 1;
    seen.set(row.name, times);
    return times === 1 ? row : { ...row, name: `${row.name} ${times}` };
  });
}
