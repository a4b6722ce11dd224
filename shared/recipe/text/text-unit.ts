// What a text states once for all of its numbers: their unit, and whether percentages are amounts.

import { type UnitOfColumn, unitIn } from "./columns.ts";
import type { SourceLine } from "./source-lines.ts";
import type { TableLine } from "./table.ts";

const UNIT_SAID =
  /\b(?:all|weights?|quantit(?:y|ies)|amounts?|everything|measure(?:ment)?s?|figures|ingredients?|units?|numbers?)\b[^.\d]{0,30}\b(?:in|are|is|=|:)\s*\(?(grams?|g|kg|kilos?|kilograms?|ounces?|oz|pounds?|lbs?)\b|^\W*(?:all |in |all in |\()?(grams|kilos|kilograms|ounces|pounds|g|kg|oz|lb|lbs)\)?\W*$|\((?:in |all in )?(grams?|g|kg|kilos?|kilograms|ounces|oz|pounds|lbs?)\)\s*:?$/i;

/** The unit that a text states for its bare numbers. */
export function statedUnit(lines: readonly SourceLine[]): { unit: UnitOfColumn; line: number; isTitle: boolean } {
  for (const { text, at } of lines) {
    if (text.length > 90 || !/\b(?:g|kg|oz|lbs?|grams?|kilos?|kilograms?|ounces?|pounds?)\b/i.test(text)) continue;
    const match = UNIT_SAID.exec(text);
    const word = match?.[1] ?? match?.[2] ?? match?.[3];
    if (word !== undefined && !/\d\s*(?:g|kg|oz|lbs?)\b/i.test(text))
      return { unit: unitIn(word), line: at, isTitle: match?.[3] !== undefined ? text.length > 14 : hasName(text) };
  }
  return { unit: "", line: -1, isTitle: false };
}

/** "Brioche – all weights in grams" */
const hasName = (text: string): boolean => {
  const [name = "", rest] = text.split(/\s+[-–—|]\s+/);
  return rest !== undefined && /\p{L}{3}/u.test(name) && !UNIT_SAID.test(name);
};

const PERCENTS_SAID =
  /(?:%|\bper ?cent(?:ages?)?\b)[^.\d]{0,20}\b(?:of|on|to)\b[^.\d]{0,12}\b(?:flour|total|whole|mix|dough|batch|all)\b|\bon (?:the )?(?:total )?flour(?: weight)?\b|\bbakers?['’]?s? (?:%|percent(?:ages?)?)|^\W*(?:%|percent(?:ages?)?)\W*$/i;

/** Whether a text says of its bare numbers that they are shares of the flour. */
export const saysPercents = (lines: readonly SourceLine[], tables: ReadonlyMap<number, TableLine>): boolean =>
  lines.some(
    ({ text, at }) => text.length < 90 && !tables.has(at) && !/\d\s*%|\d$/.test(text) && PERCENTS_SAID.test(text),
  );

/** Whether percentages are the amounts of this text, and not a few words about milk or flour. */
export function hasPercents(lines: readonly SourceLine[], tables: ReadonlyMap<number, TableLine>): boolean {
  let percents = 0;
  let amounts = 0;
  for (const { text, at } of lines) {
    if (tables.has(at) || !/\d/.test(text) || text.length > 90) continue;
    const isPercent = /\d\s?%/.test(text) && !/%\s*(?:hydration|fat\b|milk|cocoa|protein)/i.test(text);
    // "Ciabatta: 100% flour, 80% water, 2% salt": one line may hold them all.
    const isList = isPercent && (text.match(/\d\s?%/g)?.length ?? 0) >= 3;
    if (isPercent) percents += isList ? 2 : 1;
    if (isPercent || /\d\s?(?:k?g|oz|lbs?|ml|cups?|tsp|tbsp)\b/i.test(text)) amounts += 1;
  }
  return percents >= 2 && percents >= amounts * 0.4;
}
