// Rows within a line: several ingredients in one, and what is used beside the dough.

import { singularName } from "../../base/words.ts";
import { readRecipeLine } from "../line.ts";
import type { StageRole } from "./description.ts";
import { prefermentWordIn } from "./headings.ts";
import { readRow } from "./row.ts";
import type { Reading, RowRead } from "./row-context.ts";

const BESIDE: readonly (readonly [StageRole, RegExp])[] = [
  ["egg wash", /\begg ?wash\b|\bfor (?:brushing|glazing|the wash|wash)\b|\bto (?:brush|glaze)\b|\bbrushing\b/i],
  [
    "roll-in",
    /\b(?:roll-?in|for (?:the )?(?:lamination|laminating|roll(?:ing)?[- ]in|folding(?: in)?|layering|layers|turns|folds|block)|lamination|beurrage|tourage|laminating|butter block|lock(?:ing)?[- ]in|(?:folding|layering) (?:butter|fat|margarine|marg)|tourier(?:butter|fett|margarine)|ziehbutter)\b|\((?:folding|layering|turns|lock[- ]?in|laminate)\)/i,
  ],
  [
    "filling",
    /\bfor (?:the )?(?:filling|injecting|inside|middles?|centres?|centers?)\b|\b(?:to (?:inject|fill|sandwich)|for sandwiching)\b|\((?:the )?filling\)/i,
  ],
  ["icing", /\bfor (?:the )?(?:icing|glaze|frosting)\b|\((?:icing|glaze|frosting)\)/i],
  [
    "topping",
    /\b(?:for (?:the )?(?:topping|sprinkling|decorat(?:ion|ing)|garnish|finishing|top|crust|tops|rolling(?! (?:out|pin))|coating|dipping)|to (?:coat|roll(?: them| the \w+)? in|sprinkle|finish|top|decorate|garnish)|sprinkled? on top|on top)\b|\((?:topping|garnish)\)/i,
  ],
  [
    "dusting",
    /\b(?:(?:for )?(?:dusting|greasing|flouring|rolling out)|for (?:deep[- ]?)?(?:frying|boiling|poaching)|to (?:deep[- ]?)?fry|for (?:the |your )?(?:tins?|pans?|trays?|mou?lds?|ramekins?|dish(?:es)?|sheets?|bowl|bench|counter|board|work ?surface|hands|surface|banneton)|per lo spolvero|zum best[aä]uben|pour fleurer|pour le plan|para espolvorear|to (?:dust|grease|serve)|for serving|dust with)\b/i,
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

const AMOUNT = /\d|[½¼¾⅓⅔⅛]|\b(?:a|one|two|three) \p{L}/u;
/** "2 oeufs, 1 pincée de sel", "1 tsp soda dissolved in 2 tbs boiling water": between two that each have an amount. */
const JOINS =
  /[;,+]\s+|\s\/\s|\s[·|•]\s|\s(?:and|&|plus|und|et|e|y|och|og)\s|\s(?:(?:dissolved|mixed|beaten|stirred|blended|whisked|sifted|slaked|soaked|steeped|rubbed|made) )(?:up )?(?:in(?:to)?|with)\s(?=[\d½¼¾])/u;
const PARTS = /\s*[,;/·|•]\s+|\s+[·|•+]\s+|,(?=\p{L})|\s\/\s/u;
const MIN_ITEMS = 3;

const AMOUNTS = /\d\s?(?:%|k?g|gr|oz|lbs?|ml)(?![\p{L}])/giu;
const BEHIND_AMOUNT = /(?<=\d\s?(?:%|k?g|gr|oz|lbs?|ml))\s+(?=\p{L}{2})/iu;

/** Parted by signs, or one amount after the other: "flour 100% water 65% salt 2%", "500 g flour 10 g salt". */
function runOf(text: string): string[] {
  if (/[,;/·|•+]/.test(text)) return text.split(PARTS);
  return text.split(/^\d/.test(text) ? /(?<=[\p{L})])\s+(?=\d)/u : BEHIND_AMOUNT);
}

/** "Zakwas: 300 g rye flour, 300 g water": what nobody knows before a colon is no part of the first name. */
function opensUnknown(text: string, reading: Reading): boolean {
  const head = /^([^:,;]{1,30}?\p{L}[^:,;]{0,20}?)\s?:\s/u.exec(text)?.[1];
  return head !== undefined && !readRow(head, reading).isKnown;
}

/** "2 tbsp cinnamon" has an amount that only a person can weigh. */
const isAsked = ({ asks }: RowRead): boolean => asks.some(({ reason }) => reason === "unclear amount");

/** "… / yeast 2.2 = 100" */
const SUM_BEHIND = /(?:\s*=\s*\d[\d.,]*\s*(?:%|k?g|oz|lbs?)?)?\s*\.?$/i;
const AND_ALL = /\s(?:and|plus|&|und|et|e|y)\s(?=(?:all|the whole|tutt[oaie]|tout(?:e|es)?|tod[oa]s?|ganze?[rsn]?)\s)/i;

/** "Yeast dissolved in 2 tbsp water" */
const DISSOLVED =
  /\s(?:dissolved|mixed|beaten|stirred|blended|whisked|sifted|slaked|soaked|steeped)(?: up| together)? (?:in(?:to)?|with)\s(?=[\d½¼¾])/gi;

/** "1 c pecans, chopped": what has no amount and names nothing belongs to what stands before it. */
function withNotes(parts: readonly string[], reading: Reading): string[] {
  const all: string[] = [];
  for (const part of parts.map((one) => one.trim()).filter((one) => one !== "")) {
    const last = all[all.length - 1];
    const isNote =
      last !== undefined && AMOUNT.test(last) && !AMOUNT.test(part) && !isStageWord(part) && isManner(part, reading);
    if (isNote) all[all.length - 1] = `${last}, ${part}`;
    else all.push(part);
  }
  return all;
}

const MANNER =
  /^(?:(?:\p{L}+ly|very|freshly) )?\p{L}+(?:ed|en)(?: (?:and|&) \p{L}+)?$|^(?:(?:very )?(?:cold|warm|soft|hot|ripe|fresh)|divided|optional|(?:at )?room temp\p{L}*)(?: \p{L}+)?$/iu;
/** "Linseed" is no way to treat another thing. */
function isManner(part: string, reading: Reading): boolean {
  if (!MANNER.test(part)) return false;
  const row = readRow(part, reading);
  return row.type === "" && !row.isAll;
}

/** An ingredient in a list without an amount of its own. */
const isLoose = (part: string, reading: Reading): boolean =>
  !AMOUNT.test(part) && !isStageWord(part) && !readRow(part, reading).isAll && readRow(part, reading).type !== "";

/** "Flour 100, water 65, salt 2": several rows in one line; undefined where it is one. */
export function listedRows(text: string, reading: Reading): RowRead[] | undefined {
  if (!/[,;/·|•+]/.test(text) && (text.match(AMOUNTS)?.length ?? 0) < MIN_ITEMS) return undefined;
  const cut = text.replace(SUM_BEHIND, "").replace(AND_ALL, ", ").replace(DISSOLVED, ", ");
  const all = withNotes(runOf(cut), reading);
  const loose = all.filter((part) => isLoose(part, reading));
  // "Semola for dusting" at the end of a list has no amount, and is used beside the dough.
  const parts = all.filter((part) => !(loose.includes(part) && roleBeside(part) !== undefined));
  if (loose.length > 1 || (loose.length === 1 && parts.length < MIN_ITEMS)) return undefined;
  if (opensUnknown(text, reading)) return undefined;
  const isWhole = (part: string) =>
    isStageWord(part) || /^(?:all|the whole|tutt[oaie]|toute?s?|tod[oa]s?|ganze?[rs]?)\b|\ball$/i.test(part);
  if (
    parts.length < MIN_ITEMS ||
    parts.every(isWhole) ||
    !parts.every(
      (part) =>
        isWhole(part) ||
        loose.includes(part) ||
        (AMOUNT.test(part) && /\p{L}{2}/u.test(part.replace(/\b(?:k?g|oz|lbs?|ml|cups?|tsp|tbsp)\b/gi, ""))),
    )
  )
    return undefined;
  const rows = parts.map((part) =>
    isStageWord(part) ? { ...readRow(part, reading), isAll: true } : readRow(part, reading),
  );
  const isRow = (one: RowRead) =>
    (one.isAll ||
      one.grams !== null ||
      one.percent !== null ||
      one.bare !== null ||
      isAsked(one) ||
      loose.includes(one.text)) &&
    one.name !== "";
  return rows.every(isRow) &&
    rows.filter(isAsked).length * 3 <= rows.length &&
    rows.filter(({ isKnown, type, isAll }) => isKnown || isAll || type !== "").length >= rows.length - 1
    ? rows
    : undefined;
}

/** "Esponja, harina 700 g": a stage that is named in a list without an amount goes in whole. */
const isStageWord = (part: string): boolean =>
  !/\d/.test(part) && part.split(" ").length <= 2 && prefermentWordIn(singularName(part)) !== "";

/** "100 g sugar and 50 g butter": each with an amount of its own. */
export function splitRows(text: string, reading: Reading): RowRead[] | undefined {
  if (opensUnknown(text, reading)) return undefined;
  const parts = withNotes(text.replace(/[,(]\s*(?:to|for)\s[^,\d]+$/i, "").split(JOINS), reading);
  const isRead = (part: string) => readRecipeLine(part).is === "read" || (reading.isPercents && part.includes("%"));
  if (parts.length < 2 || !parts.every((part) => AMOUNT.test(part) && isRead(part))) return undefined;
  const rows = parts.map((part) => readRow(part, reading));
  return rows.every((one) => (one.grams ?? one.percent) !== null && one.name !== "") ? rows : undefined;
}
