// What a recipe says it makes: pieces, what each weighs, tins, dough or flour in all.

import { foldText, singularName } from "../../base/words.ts";
import { weightsIn } from "./yield-weights.ts";
import {
  COUNT,
  EACH,
  EACH_TAKES,
  FILLERS,
  GUESTS,
  NO_YIELD,
  PIECE,
  PREFIX,
  SIZE,
  TIN,
  WORD_LIST,
  WORDS,
  type YieldRead,
} from "./yield-words.ts";

/** What a line says that the recipe makes; undefined where it says nothing of it. `isSure` is for a line that may be nothing else. */
export function yieldIn(text: string): YieldRead | undefined {
  const bracketed = /^[([]([^()[\]]*)[)\]]$/.exec(text.trim())?.[1];
  if (bracketed !== undefined) return yieldIn(bracketed);
  const parts = text.length > 120 ? [] : text.split(/[,;|]\s+/);
  const whole = parts.length < 2 || weightsIn(text).all.length < 2 ? oneYield(text) : undefined;
  if (parts.length < 2 || whole !== undefined) return whole;
  // "Batch yield: 15.2 kg, 190 pieces of 80 g": each part says something of its own.
  const partYields = parts.map(oneYield);
  return partYields.some((one) => one === undefined)
    ? oneYield(text)
    : partYields.reduce((all, one) => (all === undefined || one === undefined ? (all ?? one) : bothYields(all, one)));
}

/** Whether a text only announces what a recipe makes: "Yield", "Batch size". */
export const isYieldWord = (text: string): boolean => {
  const words = `${text} `;
  return words.replace(PREFIX, "").trim() === "" || words.replace(/\s$/, " 1").replace(EACH, "").trim() === "1";
};

/** What the first says, and the other where the first says nothing. */
export const bothYields = (one: YieldRead, other: YieldRead): YieldRead => ({
  pieces: one.pieces ?? other.pieces,
  pieceWeight: one.pieceWeight ?? other.pieceWeight,
  tins: one.tins ?? other.tins,
  total: one.total ?? other.total,
  flour: one.flour ?? other.flour,
  isSpan: one.isSpan || other.isSpan,
});

function oneYield(text: string): YieldRead | undefined {
  if (!/\d|½/.test(text) && !new RegExp(`\\b(?:${WORD_LIST}|dozen)\\b`, "i").test(text)) return undefined;
  if (text.length > 120) return undefined;
  return timesEach(text) ?? eachSaid(text) ?? flourSaid(text) ?? piecesSaid(text);
}

/** "12 x 85 g" */
function timesEach(text: string): YieldRead | undefined {
  const times = /^\W*(\d{1,4})\s*[x×@]\s*(\d.*)$/i.exec(text);
  if (times !== null) {
    const { all, rest } = weightsIn(times[2] ?? "");
    if (all.length === 1 && !/\p{L}|\d/u.test(rest))
      return { ...NO_YIELD, pieces: Number(times[1]), pieceWeight: all[0] ?? null };
  }
  // "270 g balls x 30", "85 g each x 24"
  const behind = /^\W*(\d[\d.,]*\s?(?:k?g|oz|lbs?))\s+(?:\p{L}+ ){0,2}\p{L}*\s*[x×]\s*(\d{1,4})\W*$/iu.exec(text);
  const weights = behind === null ? [] : weightsIn(behind[1] ?? "").all;
  if (behind === null || weights.length !== 1) return undefined;
  return { ...NO_YIELD, pieces: Number(behind[2]), pieceWeight: weights[0] ?? null };
}

/** "Scaling weight: 480 g, 12 pieces" */
function eachSaid(text: string): YieldRead | undefined {
  const each = EACH.exec(text);
  if (each !== null) {
    // "Pesage : 4 pâtons de 800 g"
    const named = /^\s*(\d{1,4})\s+\p{L}+\s+(?:de|da|di|à|a|zu|je|zu je|of|at|@|von|x)\s*(\d.*)$/iu.exec(
      text.slice(each[0].length),
    );
    const sized = weightsIn(named?.[2] ?? "").all;
    if (named !== null && sized.length === 1)
      return { ...NO_YIELD, pieces: Number(named[1]), pieceWeight: sized[0] ?? null };
    // "Pezzatura: 4 pezzi da 500 g"
    const counted = piecesSaid(text.slice(each[0].length));
    if (counted !== undefined && counted.pieces !== null && counted.pieceWeight !== null) return counted;
    const weights = weightsIn(text.slice(each[0].length));
    if (weights.all.length > 0) {
      const more =
        /[,;|–-]\s*((?:makes|yields?|for|pieces|ergibt|ger|giver|donne|resa|rende|per|pour)\b.*|\d+\s*\p{L}.*)$/iu.exec(
          text,
        )?.[1];
      const pieces = more === undefined ? null : (yieldIn(more)?.pieces ?? null);
      return { ...NO_YIELD, pieces, pieceWeight: weights.all[0] ?? null };
    }
  }
  return undefined;
}

/** "Flour used: 10 kg" */
function flourSaid(text: string): YieldRead | undefined {
  const flour =
    /^(?:mehlmenge|gesamtmehl|mehl gesamt|farine totale|total farine|farina totale|harina total|vetemjöl totalt)[^\d:=]{0,12}[:=-]?\s*(\d.{1,20})$|^(?:based on|basis|for|per|batch(?: size)?|using|flour (?:weight|basis|amount))\b\s*[:=-]?\s*(.{2,24}?)\s*(?:of )?(?:total )?flour\b\.?$|^(?:flour (?:weight|basis|used|in all|total)|total flour(?: weight)?)\s*[:=-]?\s*(.{2,20})$/i.exec(
      text,
    );
  if (flour !== null) {
    const weights = weightsIn(flour[1] ?? flour[2] ?? flour[3] ?? "");
    if (weights.all.length === 1) return { ...NO_YIELD, flour: weights.all[0] ?? null };
  }
  return undefined;
}

/** "Makes 12 rolls at 85 g", "2 loaves", "Batch size: 10 kg" */
function piecesSaid(text: string): YieldRead | undefined {
  const prefix = PREFIX.exec(text);
  const body = prefix === null ? text : text.slice(prefix[0].length);
  if (GUESTS.test(body) && !/\b(?:loaf|loaves|rolls?|buns?|pieces|pcs)\b/i.test(body)) return undefined;
  const weights = weightsIn(body.replace(SIZE, " "));
  const rest = weights.rest;
  const counted = COUNT.exec(rest);
  const words = singularName(rest.replace(COUNT, " ").replace(FILLERS, " "))
    .split(" ")
    .filter((word) => word !== "");
  const last = words[words.length - 1] ?? "";
  const isDozen = counted?.[4] !== undefined && words.length === 0;
  const isNamed = isDozen || PIECE.test(last) || (/\b(?:pc|piece|each|ea)\b/.test(foldText(rest)) && words.length <= 3);
  // Guests are no pieces.
  if (!isNamed && /^servings?/i.test(prefix?.[0] ?? "")) return undefined;
  const saysSo = prefix !== null && !/^(?:for|per|pour)\b/i.test(prefix[0]);
  // "2 sticks butter" makes nothing; "12 rolls" alone does.
  if (!saysSo && !(isNamed && counted !== null && words.length <= 4)) return undefined;
  // "Loaf 12" is a name.
  if (
    prefix === null &&
    counted !== null &&
    /^\W*\p{L}/u.test(rest.slice(0, counted.index)) &&
    !/[:=@×]|\b(?:approx|about|ca)\b/i.test(text)
  )
    return undefined;
  if (prefix === null && counted !== null && (counted.index ?? 0) > 8 && !/^\W*(?:about|approx)/i.test(rest))
    return undefined;
  if (
    prefix === null &&
    words.length > 1 &&
    /^(?:bread|base|stick|bar|ball|cake|sheet|square|tin|slice|each|ea|portion)$/.test(last) &&
    weights.all.length === 0 &&
    !/^(?:loaf|pizza|small|large|dough|round|square|cake|deep|shallow)$/.test(words[0] ?? "")
  )
    return undefined;
  if (
    prefix === null &&
    /^(?:slice|stick|bar|sheet|square|each|ea|portion|bread|base)$/.test(last) &&
    words.length === 1 &&
    weights.all.length === 0
  )
    return undefined;
  if (counted === null || (saysSo && /^(?:a|an)$/i.test(counted[1] ?? "") && counted[4] === undefined && !isNamed)) {
    if (!saysSo || weights.all.length === 0 || words.length > 3) return undefined;
    return /\bflour\b/i.test(rest)
      ? { ...NO_YIELD, flour: weights.all[0] ?? null }
      : { ...NO_YIELD, total: weights.all[0] ?? null };
  }
  const [, from = "", to, half, dozen] = counted;
  const perCount = dozen === undefined ? 1 : 12;
  const low = (WORDS[from.toLowerCase()] ?? Number(from)) + (half === undefined ? 0 : 0.5);
  const count = low * perCount;
  if (!(count > 0) || count > 100_000) return undefined;
  if (
    saysSo &&
    !isNamed &&
    words.length > 0 &&
    dozen === undefined &&
    weights.all.length === 0 &&
    !/^(?:large|small|medium|mini)$/.test(last) &&
    words.length > 3
  )
    return undefined;
  const isTin = TIN.test(last) || (words.length > 1 && TIN.test(singularName(rest)));
  const isTotal =
    /\b(?:total|in all|altogether|of dough|dough in|batter)\b/i.test(body) && !/\beach\b|@|\bat\b|x/i.test(body);
  // "4 x 2 lb tins, 920 g each": the size of a tin, and behind it what goes into it.
  const each = isTin ? /[^,;(]*\beach\b|(?:@|\bat\b)[^,;(]*/i.exec(body)?.[0] : undefined;
  const eachWeights = weightsIn(each ?? "").all;
  const weight = eachWeights[eachWeights.length - 1] ?? weights.all[0] ?? null;
  return {
    pieces: to === undefined ? count : null,
    // "2 lb tins" is a size, "tins @ 900 g" what goes into each.
    pieceWeight: isTotal || (isTin && !EACH_TAKES.test(body)) ? null : weight,
    tins: isTin && to === undefined ? count : null,
    total: isTotal ? weight : null,
    flour: null,
    isSpan: to !== undefined,
  };
}
