// The recipe's name, with what it makes where that stands beside it.

import { type Draft, hasAmount, ignore, looksLikeRow, type Place, takeYield } from "./draft.ts";
import { readRow } from "./row.ts";
import type { Reading } from "./row-context.ts";
import { listedRows } from "./rows-in-line.ts";
import type { SourceLine } from "./source-lines.ts";
import { isStep } from "./steps.ts";
import { opensOther } from "./under-heading.ts";
import { NO_YIELD } from "./yield-words.ts";
import { isYieldWord, yieldIn } from "./yields.ts";

export const titleIn = (text: string): string =>
  text
    .replace(/^(?:title|recipe|name|formula|product|recipe name)\s*[:–-]\s*/i, "")
    .replace(/[([](?:makes|serves|yields?|for|in|all|on|total|%|g|grams|kg)(?![\p{L}])[^)\]]*[)\]]?$/iu, "")
    .replace(/[\s:;,.–—|-]+$/, "")
    .slice(0, 80)
    .trim();

/** How a letter opens, and what it asks for: no name of a recipe. */
const LETTER =
  /^(?:hi|hiya|hello|hey|dear|good (?:morning|afternoon|evening)|morning|hallo|bonjour|ciao|hola|guten tag)(?: (?:all|both|there|team|everyone))?\s*[,!:.]?$|^(?:hi|hello|hey|dear)(?: \p{L}+){1,2}\s*[,!]$|\b(?:we|you|i) (?:need|want|would like|can|have)\b|\bplease\b/iu;

function isTitle(line: SourceLine, reading: Reading, next: readonly SourceLine[]): boolean {
  const { text } = line;
  if (LETTER.test(text) || text.split(" ").length > 12 || text.length > 90 || !/\p{L}{2}/u.test(text)) return false;
  const following = next.find(({ text: one }) => one !== "");
  if (line.isListed || (line.isNumbered && !looksLikeRow(following)) || /[.!?]$/.test(text)) return false;
  const row = readRow(text.replace(/\((?:total|based on|for|in all|makes|yields?)\b[^)]*\)/gi, " "), reading);
  // "65% hydration white" names no ingredient.
  // "Multigrain tin 600 g" over a gap: what one of them weighs.
  const isSized =
    row.grams !== null && !row.isKnown && row.type === "" && next[0]?.text === "" && /\p{L}{3}.*\d\s?k?g$/iu.test(text);
  if (isSized) return true;
  // "Rye sourdough, hydration 75"
  if (/\bhydration\b/i.test(text) && !hasAmount(text.replace(/%/g, "")) && looksLikeRow(following)) return true;
  const isPercent = row.percent !== null && (row.isKnown || row.type !== "");
  if (row.grams !== null || isPercent || (row.bare !== null && row.isKnown && /\d/.test(text))) return false;
  if (row.isKnown && !looksLikeRow(following) && !(following !== undefined && opensOther(following))) return false;
  return !isStep(text, false, false) || line.isMarked;
}

const BEHIND = /\s*[([|,;:]\s*|\s[–—-]\s*|\s(?=(?:makes|yields?|for)[\s:])/giu;

/** A name with what it makes behind it: "Bagels – 24 pcs @ 110 g", "Soda bread (makes 1 loaf)", "Rolls | 60 x 65 g". */
/** Fewer may number a version. */
const FEW = 4;

export function headYield(text: string) {
  // "Hot cross buns x 36"
  const [, name = "", word = "", many = ""] = /^(.*?(\p{L}{3,}))\s+[x×]\s?(\d{1,4})$/u.exec(text) ?? [];
  // "Sweet dough from 10 lb flour"
  const [, base = "", flour = ""] =
    /^(\D*?\p{L}{3,})\s+(?:from|on|with|using|based on|per|for|mit|auf|pour|avec)\s+(\d[^,;]*?\p{L}+)$/iu.exec(text) ??
    [];
  const based = base === "" ? undefined : yieldIn(`for ${flour}`);
  if (
    based?.flour != null &&
    !/^(?:makes|yields?|for|batch|recipe|water|poolish|biga|sponge|preferment|soaker|levain|starter)\b/i.test(base)
  )
    return { made: based, title: base };
  // "Flammkuchen 8 Stück"
  const [, called = "", count = ""] =
    /^(.*?\p{L}{3,})\s+(\d{1,4})\s*(?:stück|stk|st|pcs|pieces|pezzi|pièces|ea)\.?$/iu.exec(text) ?? [];
  if (count !== "" && !hasAmount(called) && !/\b(?:for|makes|yields?|per|of)$/i.test(called))
    return { made: { ...NO_YIELD, pieces: Number(count) }, title: called };
  const made =
    many === "" || hasAmount(name)
      ? undefined
      : (yieldIn(`${many} ${word}`) ?? (Number(many) >= FEW ? { ...NO_YIELD, pieces: Number(many) } : undefined));
  if (made !== undefined) return { made, title: name };
  for (const { index = 0, 0: sign } of text.matchAll(BEHIND)) {
    const title = text.slice(0, index);
    const named = title.replace(/\d+\s?%\s*(?:hydration|hyd\b|wholemeal|rye|whole wheat)/i, "");
    if (!/\p{L}{3}/u.test(named) || /^\d/.test(title) || hasAmount(named) || isYieldWord(title)) continue;
    const words = text
      .slice(index + sign.length)
      .replace(/[)\]]$/, "")
      .trim();
    // "Custard buns (20)", and "Kouign-amann (12)", whatever that is.
    const isCount = /^\d{1,3}$/.test(words) && /^\s*\(\s*$/.test(sign);
    const titleYield =
      yieldIn(isCount ? `${words} ${title.split(" ").slice(-1)[0]}` : words) ??
      (isCount && Number(words) >= FEW ? { ...NO_YIELD, pieces: Number(words) } : undefined);
    if (titleYield !== undefined) return { made: titleYield, title };
  }
  return undefined;
}

/** A yield has a weight of a piece and one in all; what has more is a list. */
const WEIGHTS = /\d\s?(?:k?g|oz|lbs?|ml|l)(?!\p{L})/giu;
const MANY = 3;

/** A name with its yield, which by itself would be no more than a yield. */
export function takeHead({ draft, line, reading, isFirst }: Place): boolean {
  const head =
    isFirst &&
    !LETTER.test(line.text) &&
    (line.text.match(WEIGHTS)?.length ?? 0) < MANY &&
    listedRows(line.text, reading) === undefined
      ? headYield(line.text)
      : undefined;
  if (head === undefined) return false;
  takeYield(draft, head.made);
  // "Dough for 100 croissants" is called so.
  draft.title = titleIn(/^(?:dough|batter|mix|recipe|formula|base)$/i.test(head.title.trim()) ? line.text : head.title);
  return ignore(draft, line, "title");
}

export function takeTitle({ draft, line, reading, next, isFirst }: Place): boolean {
  if (!isFirst || listedRows(line.text, reading) !== undefined || !isTitle(line, reading, next)) return false;
  draft.title = titleIn(line.text);
  return ignore(draft, line, "title");
}

/** A line that states the unit may be the name as well: "White dough (kg)". */
export function takeStated(draft: Draft, line: SourceLine, mayBeTitle: boolean): void {
  const isTitleToo = mayBeTitle && draft.title === "" && draft.rows.length === 0;
  // "Brioche – all weights in grams"
  if (isTitleToo)
    draft.title = titleIn(line.text.replace(/\s+[-–—|]\s+(?:all\b|weights?\b|quantit|amounts?\b).*$/i, ""));
  ignore(draft, line, isTitleToo ? "title" : "unit");
}
