// The tin that a text names with its sizes: "two 9 x 5 x 3 inch loaf pans", "a 20 cm round tin, 7 cm deep".

import { type Centimetres, type LengthUnit, toCentimetres } from "../../base/units.ts";

/** Sizes in the order in which sheets take them: length, width and depth of a box, diameter and depth of a round tin. */
export type TinRead = {
  readonly shape: "box" | "round";
  /** Length and width, or the diameter. */
  readonly across: readonly Centimetres[];
  /** Null where the text does not say how deep it is. */
  readonly depth: Centimetres | null;
  /** It is called a loaf tin: one loaf goes into each. */
  readonly isLoaf: boolean;
};

const NUMBER = String.raw`(\d{1,3}(?:[.,]\d{1,2})?)(\s?[½¼¾]|\s\d\/\d)?`;
const UNIT = String.raw`(?:\s*-?\s*(inch(?:es)?|in\b\.?|["″”]|cm\b|mm\b))`;
const BY = String.raw`\s*(?:x|×|by)\s*`;
const BOX = new RegExp(`(?<![\\d.,])${NUMBER}${UNIT}?${BY}${NUMBER}${UNIT}?(?:${BY}${NUMBER}${UNIT}?)?`, "iu");
const SINGLE = new RegExp(`(?<![\\d.,])${NUMBER}${UNIT}`, "iu");
const DEEP = new RegExp(
  `(?<![\\d.,])${NUMBER}${UNIT}\\s*(?:deep|high|tall|in depth)|\\b(?:depth|deep|height)\\s*(?:of|:)?\\s*${NUMBER}${UNIT}`,
  "iu",
);
const TIN = /\b(?:tins?|pans?|mou?lds?|springform|pullmans?)\b/i;
/** What is baked on lies flat, and what is cooked in is no tin. */
const NO_TIN =
  /\b(?:sheet|baking|roasting|frying|sauce|grill|oven|pizza|tart|pie|flan|muffin|bundt|tube|ring)[ -]?(?:pans?|tins?|moulds?)\b|\bsaucepan/i;
const ROUND = /\b(?:round|circular|springform|diameter|deep cake|cake|sandwich tins?)\b|Ø/i;

const FRACTIONS: Readonly<Record<string, number>> = { "½": 0.5, "¼": 0.25, "¾": 0.75 };
/** No baking tin is smaller or larger, in cm; nor shallower or deeper. */
const ACROSS = [4, 80] as const;
const DEPTH = [1.5, 30] as const;

function lengthOf(number: string | undefined, fraction: string | undefined, unit: string): Centimetres {
  const [above = "0", below = "1"] = (fraction ?? "").trim().split("/");
  const part = FRACTIONS[(fraction ?? "").trim()] ?? (fraction?.includes("/") ? Number(above) / Number(below) : 0);
  const value = Number((number ?? "").replace(",", ".")) + part;
  const plain: LengthUnit | "mm" = /^mm/i.test(unit) ? "mm" : /^cm/i.test(unit) ? "cm" : "in";
  return plain === "mm" ? toCentimetres(value / 10, "cm") : toCentimetres(value, plain);
}

const isWithin = (length: number, [least, most]: readonly [number, number]): boolean =>
  length >= least && length <= most;

/** The tin that one line names. */
export function tinIn(text: string): TinRead | undefined {
  if (text.length > 400 || !/\d/.test(text) || !TIN.test(text) || NO_TIN.test(text)) return undefined;
  const deep = DEEP.exec(text);
  const depthSaid = deep === null ? null : lengthOf(deep[1] ?? deep[4], deep[2] ?? deep[5], deep[3] ?? deep[6] ?? "");
  const rest = deep === null ? text : text.replace(deep[0], " ");
  const isLoaf = /\bloaf\b|\bpullman/i.test(text);
  const box = BOX.exec(rest);
  if (box !== null) {
    const unit = box[9] ?? box[6] ?? box[3];
    if (unit === undefined) return undefined;
    const across = [lengthOf(box[1], box[2], box[3] ?? unit), lengthOf(box[4], box[5], box[6] ?? unit)];
    const third = box[7] === undefined ? null : lengthOf(box[7], box[8], unit);
    return checked({ shape: "box", across, depth: third ?? depthSaid, isLoaf });
  }
  const single = SINGLE.exec(rest);
  if (single === null) return undefined;
  const size = lengthOf(single[1], single[2], single[3] ?? "");
  if (/\bsquare\b/i.test(text)) return checked({ shape: "box", across: [size, size], depth: depthSaid, isLoaf });
  if (!ROUND.test(text) || isLoaf) return undefined;
  return checked({ shape: "round", across: [size], depth: depthSaid, isLoaf });
}

const checked = (tin: TinRead): TinRead | undefined =>
  tin.across.every((one) => isWithin(one, ACROSS)) && (tin.depth === null || isWithin(tin.depth, DEPTH))
    ? tin
    : undefined;

const isSame = (one: TinRead, other: TinRead): boolean =>
  one.shape === other.shape && one.across.every((size, at) => Math.abs(size - (other.across[at] ?? 0)) < 0.06 * size);

/** The tin of a whole text: the same one wherever it is named, null where none is or where there are several. */
export function tinOf(lines: readonly { readonly text: string }[]): TinRead | null {
  let tin: TinRead | null = null;
  for (const { text } of lines) {
    const one = tinIn(text);
    if (one === undefined) continue;
    if (tin !== null && !isSame(tin, one)) return null;
    if (tin === null || tin.depth === null) tin = one;
  }
  return tin;
}

/** "Two 2 lb loaf tins": tins that go by what they hold, which says nothing sure of their size; how many of them. */
const BY_WEIGHT =
  /(?:^|\b(?:in|into|for|between|among|fill|line|grease|use)\s+)(?:(?:(a|an|the|your|one|two|three|four|five|six|\d{1,2})\s*(?:[x×]\s*)?)?(?:(?:well[- ])?(?:greased|lined|buttered|oiled|floured|non-?stick|large|prepared|and)\s+)*)(?:\d(?:\.\d)?|½|\d{3,4})\s?-?(?:lb|kg|g|pound)\b\s*(?:[(/]\s?\d+\s?(?:k?g|lb)\)?\s*)?(?:\p{L}+ )?(?:tin|pan)s?(?!\p{L})/iu;
const MANY: Readonly<Record<string, number>> = { two: 2, three: 3, four: 4, five: 5, six: 6 };

/** How many tins a text names by what they hold; undefined where it names none. */
export function tinsByWeight(text: string): { many: number; isAll: boolean } | undefined {
  if (text.length > 400 || !/\b(?:tins?|pans?)\b/i.test(text)) return undefined;
  const match = BY_WEIGHT.exec(text);
  if (match === null) return undefined;
  const said = (match[1] ?? "").toLowerCase();
  const many = MANY[said] ?? (/^\d+$/.test(said) ? Number(said) : 1);
  return { many, isAll: match[0].length >= text.replace(/[\s.,;]+$/, "").length };
}
