// Amounts that no row took: each is asked about, so that nothing a text weighs is left out in silence.

import { gramsIn } from "../../base/units.ts";
import { prefermentIn } from "../kinds.ts";
import type { Ignored, Question, Row } from "./description.ts";
import type { Draft } from "./draft.ts";
import { readRow } from "./row.ts";
import type { Reading } from "./row-context.ts";
import type { SourceLine } from "./source-lines.ts";
import { isStarter } from "./starter.ts";
import type { TableLine } from "./table.ts";

const UNIT = "kg|kilos?|g|gr|grams?|oz|ounces?|lbs?|pounds?|#";
const MEASURE = "ml|cl|dl|l|lt|lit(?:re|er)s?|cups?|c\\.|tsp|tbsp|teaspoons?|tablespoons?";
const AMOUNT = new RegExp(`(?<![\\p{L}\\d.,/])\\.?\\d[\\d.,]*\\s?(?:${UNIT}|${MEASURE})(?![\\p{L}])`, "giu");
const WEIGHT = new RegExp(`(?<![\\p{L}\\d.,/–-])(\\d[\\d.,]*)\\s?(${UNIT})(?![\\p{L}/])`, "giu");
/** Two weights in a line, before anybody looks what they are of. */
const WEIGHS_TWICE = /\d\s?(?:k?g|g|oz|ou|l|p|#).*\d\s?(?:k?g|g|oz|ou|l|p|#)/i;
/** A text with more such lines is a table that nobody read, and these are enough to say so. */
const MOST = 300;
const MAY_WEIGH = /\d\s?(?:k|g|o|l|p|#|m|c|d|t)/i;
/** What a batch, a piece or a pack weighs is the amount of no ingredient. */
const OF_THE_WHOLE =
  /\b(?:dough|batter|loaf|loaves|rolls?|buns?|balls?|pieces?|pcs|each|portions?|tins?|bags?|sacks?|batch|mix(?:es)?|per|total|calories|serving)\b/i;

type Tables = ReadonlyMap<number, TableLine>;
/** Several columns of weights are asked about by themselves. */
const hasColumns = (table: TableLine | undefined): boolean =>
  table !== undefined && table.columns.filter((column) => column?.is === "weight").length > 1;

const ask = (line: number | null, reason: Question["reason"], about: readonly string[], isOpen: boolean): Question => ({
  reason,
  line,
  about,
  choices: [],
  isOpen,
});

export function leftOutOf(draft: Draft, lines: readonly SourceLine[], tables: Tables, reading: Reading): Question[] {
  if (draft.rows.length === 0)
    return lines.some(({ text }) => text !== "") ? [ask(null, "no ingredient", [], true)] : [];
  const asked = new Set(draft.questions.map(({ line }) => line));
  const unread = draft.ignored.filter((one) => holdsAmount(one) && !asked.has(one.line));
  const double = lines
    .filter(({ raw, at }) => WEIGHS_TWICE.test(raw) && !asked.has(at) && !hasColumns(tables.get(at)))
    .slice(0, MOST);
  const rowLines = unread.length === 0 ? new Set<number>() : new Set(draft.rows.map(({ line }) => line));
  const rowsOf = new Map(double.map(({ at }) => [at, [] as Row[]]));
  if (double.length > 0) for (const row of draft.rows) rowsOf.get(row.line)?.push(row);
  return [
    ...unread
      .filter(({ line }) => !rowLines.has(line))
      .map(({ line, text }) => ask(line, "left out", [text.slice(0, 80)], true)),
    ...double.flatMap(({ at, raw }) => {
      const rows = rowsOf.get(at) ?? [];
      const more = rows.length === 0 ? undefined : moreWeights(raw, rows, draft);
      if (more === undefined) return [];
      return [
        rows.length === 1
          ? ask(at, "unclear amount", [`it names ${more} as well`], true)
          : ask(at, "left out", [more], true),
      ];
    }),
    ...stepAmounts(draft, reading),
  ];
}

/** "1 c brown sugar" */
const CUP = /(?<![\d.,])(?:\d|[½¼¾])\s?[cT]\.?\s\p{Ll}{3}/u;

/** A line that was taken for no ingredient, and yet weighs something. */
function holdsAmount({ text, reason }: Ignored): boolean {
  if (!MAY_WEIGH.test(text) && !/\d\s?%/.test(text)) return false;
  const many = text.match(AMOUNT)?.length ?? 0;
  if (reason === "beside the dough") return many > 0 || /\d\s?%/.test(text);
  if (reason === "no ingredient") return many > 1 || (many === 1 && !OF_THE_WHOLE.test(text));
  if (reason === "heading" && CUP.test(text)) return true;
  return (reason === "title" || reason === "heading") && many > 1 && !OF_THE_WHOLE.test(text);
}

const toGrams = (number: string, unit: string): number => {
  const value = Number(number.replace(/[.,]$/, "").replace(",", "."));
  const plain = unit.toLowerCase();
  if (plain.startsWith("k")) return value * 1000;
  if (plain.startsWith("g")) return value;
  return value * gramsIn(plain.startsWith("o") ? "oz" : "lb");
};

const ALIKE = 0.07;
const isLike = (one: number, other: number): boolean => Math.abs(one - other) <= ALIKE * Math.max(one, other);

/** A weight of a line that is neither a row's nor a part of one; undefined where there is none. */
function moreWeights(raw: string, rows: readonly Row[], { yield: made }: Draft): string | undefined {
  if (rows.some(({ takes, keeps, remarks }) => takes !== null || keeps !== null || remarks.length > 0))
    return undefined;
  const open = raw.replace(/\([^)]*\)|\[[^\]]*\]/g, " ");
  const weights = [...open.matchAll(WEIGHT)].map(([text, number = "", unit = ""]) => ({
    text,
    grams: toGrams(number, unit),
  }));
  if (weights.length <= rows.length) return undefined;
  const taken = [...rows.map(({ grams }) => grams ?? 0), made.pieceWeight ?? 0, made.total ?? 0, made.flour ?? 0];
  const rest = weights.filter(({ grams }) => !taken.some((one) => isLike(one, grams)));
  const all = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0);
  // "6 lb 8 oz", "2 x 250 g", "500 g and 50 g more"
  const isSum =
    isLike(all(weights.map(({ grams }) => grams)), all(rows.map(({ grams }) => grams ?? 0))) ||
    /\d\s?[x×@*]\s?\d/i.test(open);
  return isSum || rest.length === 0 ? undefined : rest[0]?.text.trim();
}

const OF_STEP = new RegExp(
  `(?<![\\p{L}\\d.,/])(\\d[\\d.,]*)\\s?(${UNIT})(?![\\p{L}/])\\s+(?:of\\s+)?(?:the\\s+)?((?:\\p{L}+[ -]){0,2}\\p{L}{3,})`,
  "giu",
);

/** "Add 50 g of the water" is water of a row; "feed 40 g starter" may be all that is said of a starter. */
function stepAmounts({ steps, rows }: Draft, reading: Reading): Question[] {
  const first = rows.reduce((least, { line }) => Math.min(least, line), Infinity);
  const largest = new Map<string, number>();
  for (const { type, grams } of rows) largest.set(type, Math.max(largest.get(type) ?? 0, grams ?? Infinity));
  return steps.flatMap(({ line, text }) => {
    if (!MAY_WEIGH.test(text)) return [];
    for (const [said, number = "", unit = "", words = ""] of text.matchAll(OF_STEP)) {
      const whole = readRow(words, reading);
      const [word = ""] = words.split(" ");
      const one = whole.isKnown ? whole : readRow(word, reading);
      // "Feed 40 g starter", where no row is a starter and none takes one; or a method before any row.
      const isUnread = prefermentIn(words) !== undefined && !rows.some((row) => row.takes !== null || isStarter(row));
      if (isUnread || (line < first && one.isKnown)) return [ask(line, "left out", [said.trim(), "step"], false)];
      if (!one.isKnown || one.type === "" || OF_THE_WHOLE.test(words)) continue;
      const most = largest.get(one.type) ?? 0;
      if (toGrams(number, unit) > most * (1 + ALIKE)) return [ask(line, "left out", [said.trim(), "step"], false)];
    }
    return [];
  });
}
