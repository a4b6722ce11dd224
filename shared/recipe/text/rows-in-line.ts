// Rows within a line: several ingredients in one, and what is used beside the dough.

import { readRecipeLine } from "../line.ts";
import type { StageRole } from "./description.ts";
import { readRow } from "./row.ts";
import type { Reading, RowRead } from "./row-context.ts";

const BESIDE: readonly (readonly [StageRole, RegExp])[] = [
  ["egg wash", /\begg ?wash\b|\bfor (?:brushing|glazing|the wash|wash)\b|\bto (?:brush|glaze)\b|\bbrushing\b/i],
  [
    "roll-in",
    /\b(?:roll-?in|for (?:the )?(?:lamination|laminating|roll(?:ing)?[- ]in|folding in)|lamination|beurrage|tourage|laminating|butter block)\b/i,
  ],
  ["filling", /\bfor (?:the )?filling\b|\((?:the )?filling\)/i],
  ["icing", /\bfor (?:the )?(?:icing|glaze|frosting)\b|\((?:icing|glaze|frosting)\)/i],
  [
    "topping",
    /\b(?:for (?:the )?(?:topping|sprinkling|decorat(?:ion|ing)|garnish|finishing|top|crust)|to (?:sprinkle|finish|top|decorate|garnish)|sprinkled? on top|on top)\b|\((?:topping|garnish)\)/i,
  ],
  [
    "dusting",
    /\b(?:(?:for )?(?:dusting|greasing|flouring|rolling out)|for (?:the |your )?(?:tins?|pans?|trays?|bowl|bench|counter|board|work ?surface|hands|surface|banneton)|to (?:dust|grease|serve)|for serving|dust with)\b/i,
  ],
];

/** What a row is used for beside the dough; "flour, plus more for dusting" is flour of the dough. */
export function roleBeside(text: string): StageRole | undefined {
  if (
    /(?:\b(?:plus|and)|\+)\s+(?:some\s+|a (?:little|bit)\s+)?(?:more|extra|additional)\b|,\s*(?:more|extra) (?:for|to)\b/i.test(
      text,
    )
  )
    return undefined;
  return BESIDE.find(([, words]) => words.test(text))?.[0];
}

const AMOUNT = /\d|½|¼|¾/;
const PARTS = /\s*[,;/·|•]\s+|\s+[·|•+]\s+|,(?=\p{L})|\s\/\s/u;
const MIN_ITEMS = 3;

const AMOUNTS = /\d\s?(?:%|k?g|gr|oz|lbs?|ml)(?![\p{L}])/giu;
const BEHIND_AMOUNT = /(?<=\d\s?(?:%|k?g|gr|oz|lbs?|ml))\s+(?=\p{L}{2})/iu;

/** Parted by signs, or one amount after the other: "flour 100% water 65% salt 2%", "500 g flour 10 g salt". */
function runOf(text: string): string[] {
  if (/[,;/·|•+]/.test(text)) return text.split(PARTS);
  return text.split(/^\d/.test(text) ? /(?<=[\p{L})])\s+(?=\d)/u : BEHIND_AMOUNT);
}

/** "Flour 100, water 65, salt 2": several rows in one line; undefined where it is one. */
export function listedRows(text: string, reading: Reading): RowRead[] | undefined {
  if (!/[,;/·|•+]/.test(text) && (text.match(AMOUNTS)?.length ?? 0) < MIN_ITEMS) return undefined;
  const parts = runOf(text.replace(/\.$/, ""))
    .map((part) => part.trim())
    .filter((part) => part !== "");
  const isWhole = (part: string) => /^(?:all|the whole|tutt[oaie]|toute?s?|tod[oa]s?|ganze?[rs]?)\b|\ball$/i.test(part);
  if (
    parts.length < MIN_ITEMS ||
    parts.every(isWhole) ||
    !parts.every(
      (part) =>
        isWhole(part) ||
        (AMOUNT.test(part) && /\p{L}{2}/u.test(part.replace(/\b(?:k?g|oz|lbs?|ml|cups?|tsp|tbsp)\b/gi, ""))),
    )
  )
    return undefined;
  const read = parts.map((part) => readRow(part, reading));
  const isRow = (one: RowRead) =>
    (one.isAll || one.grams !== null || one.percent !== null || one.bare !== null) && one.name !== "";
  return read.every(isRow) &&
    read.filter(({ isKnown, type, isAll }) => isKnown || isAll || type !== "").length >= read.length - 1
    ? read
    : undefined;
}

/** "100 g sugar and 50 g butter": each with an amount of its own. */
export function splitRows(text: string, reading: Reading): RowRead[] | undefined {
  const parts = text.split(/[;,+]\s+|\s(?:and|&|plus)\s/).map((part) => part.trim());
  if (parts.length < 2 || !parts.every((part) => AMOUNT.test(part) && readRecipeLine(part).is === "read"))
    return undefined;
  const read = parts.map((part) => readRow(part, reading));
  return read.every((one) => one.grams !== null && one.name !== "") ? read : undefined;
}
