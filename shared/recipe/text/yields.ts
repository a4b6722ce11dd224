// What a recipe says it makes: pieces, what each weighs, tins, dough or flour in all.

import { type Grams, grams, gramsIn } from "../../base/units.ts";
import { foldText, singularName } from "../../base/words.ts";

export type YieldRead = {
  readonly pieces: number | null;
  readonly pieceWeight: Grams | null;
  readonly tins: number | null;
  readonly total: Grams | null;
  readonly flour: Grams | null;
  /** A span such as "12 to 14": nobody can scale by it. */
  readonly isSpan: boolean;
};
export const NO_YIELD: YieldRead = {
  pieces: null,
  pieceWeight: null,
  tins: null,
  total: null,
  flour: null,
  isSpan: false,
};

const WORDS: Readonly<Record<string, number>> = {
  ...{ a: 1, an: 1, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10 },
  ...{ eleven: 11, twelve: 12, fourteen: 14, fifteen: 15, sixteen: 16, eighteen: 18, twenty: 20, "twenty-four": 24 },
  ...{ thirty: 30, "thirty-six": 36, forty: 40, fifty: 50, sixty: 60, hundred: 100 },
};
const WORD_LIST = Object.keys(WORDS)
  .sort((a, b) => b.length - a.length)
  .join("|");
const COUNT = new RegExp(
  `(?<![\\p{L}\\d.,/])(\\d{1,5}(?![\\d.,]*\\d)|(?:${WORD_LIST})(?![\\p{L}-]))(?:\\s*(?:[-–—]|to|or)\\s*(\\d{1,5}|(?:${WORD_LIST})(?![\\p{L}])))?(\\s*(?:½|1/2|and a half))?(\\s*(?:dozen|doz\\.?|dz))?`,
  "iu",
);
const PIECES = [
  "loaf|loave|roll|bun|piece|pc|pce|unit|baguette|bagel|boule|batard|bâtard|pizza|base|crust|flatbread|naan|pita|cooky|cookie|biscuit|muffin|cupcake|scone|croissant|danish|danishe|cake|tart|round|ball|doughball|breadstick|grissini|ciabatta|focaccia|slab|brownie|bar|doughnut|donut|pretzel|twist|knot|brioche|teacake|crumpet|pastry|pastrie|bread|batch|miche|bloomer|cob|bap",
  "batch loave|stuck|brotchen|square|tray|sheet|tin|pan|mould|mold|stollen|challah|braid|plait|stick|ficelle|epi|bâton|baton|turnover|swirl|snail|sponge|layer|wheel|couronne|wreath|ring|english muffin|slice|portion|item|finger|each|ea",
].join("|");
const PIECE = new RegExp(`^(?:${PIECES})$`);
const TIN = /\b(?:tin|pan|mould|mold|pullman)\b/;
const PREFIX =
  /^(?:(?:this )?(?:recipe )?(?:makes|yields?|gives)|servings?|(?:(?:total|batch|dough) )?yield|quantity made|produces|recipe for|enough for|formula for|batch for|for|pieces|number of (?:pieces|loaves|rolls|buns|units)|number(?=\s*[:=])|no\.? of (?:pieces|loaves|rolls|units)|units|pcs|batch(?: size| weight)?|makes approx|ergibt|pour|per)\b\s*[:=-]?\s*/i;
const EACH =
  /^(?:piece weight|weight (?:per|of each) (?:piece|loaf|roll|unit)|unit weight|scaling weight|scal(?:e|ed|ing)(?: at| to| weight)?|dough (?:piece|weight per piece|per piece|per loaf)|dough piece weight|(?:ball|loaf|roll|bun|piece|unit) (?:weight|size)|each piece|divide at|portion(?: weight)?|weight each|individual weight|piece size)\b\s*[:=-]?\s*(?=\D{0,12}\d)/i;
const WEIGHT =
  /(\d+(?:[.,]\d+)?(?:\s?[½¼¾])?|\d+\s+\d\/\d|[½¼¾])\s*-?\s*(kgs?|kilos?|kilograms?|g|gr|grams?|grammes?|oz|ounces?|lbs?|pounds?|#)(?![\p{L}])\.?(?:\s*(\d+(?:\.\d+)?)\s*oz\b)?/giu;
const SIZE =
  /\d+(?:[.,]\d+)?\s*(?:x|×|by|[-–])?\s*(?:\d+(?:[.,]\d+)?\s*)?-?\s*(?:x\s*\d+\s*)?(?:inch(?:es)?|in\b|cm\b|mm\b|["″])/gi;
const GUESTS = /^\W*(?:serves?|servings?|people|persons?|guests?)\b|\b(?:servings?|people|persons?|guests?)\b/i;
const FILLERS =
  /\b(?:about|around|approx(?:imately)?|approximatley|roughly|ca|circa|makes?|yields?|at|of|each|apiece|per|weighing|scaled|dough|baked|in|from|x|total|finished|standard|the|and|raw|unbaked|weight|a|for|piece weight|g)\b|[~≈@×à:=,.()/-]/gi;

const EACH_TAKES = /@|à|\b(?:at|each|scaled|of dough)\b/i;
const SIGNS: Readonly<Record<string, number>> = { "½": 0.5, "¼": 0.25, "¾": 0.75 };

function numberOf(text: string): number {
  const plain = text.trim();
  const mixed = /^(\d+)\s+(\d)\/(\d)$/.exec(plain);
  if (mixed) return Number(mixed[1]) + Number(mixed[2]) / Number(mixed[3]);
  const sign = /[½¼¾]/.exec(plain)?.[0];
  const head = plain.replace(/[½¼¾]/, "").trim().replace(",", ".");
  return (head === "" ? 0 : Number(head)) + (sign === undefined ? 0 : (SIGNS[sign] ?? 0));
}

function gramsOfMatch([, amount = "", unit = "", ounces]: readonly (string | undefined)[]): number {
  const plain = unit.toLowerCase();
  const each = plain.startsWith("k")
    ? 1000
    : plain.startsWith("g")
      ? 1
      : plain.startsWith("o")
        ? gramsIn("oz")
        : gramsIn("lb");
  return (
    numberOf(amount) * each + (ounces === undefined || each !== gramsIn("lb") ? 0 : Number(ounces) * gramsIn("oz"))
  );
}

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
  return undefined;
}

/** "Scaling weight: 480 g, 12 pieces" */
function eachSaid(text: string): YieldRead | undefined {
  const each = EACH.exec(text);
  if (each !== null) {
    const weights = weightsIn(text.slice(each[0].length));
    if (weights.all.length > 0) {
      const more = /[,;|–-]\s*((?:makes|yields?|for|pieces)\b.*|\d+\s*\p{L}.*)$/iu.exec(text)?.[1];
      const pieces = more === undefined ? null : (yieldIn(more)?.pieces ?? null);
      return { ...NO_YIELD, pieces, pieceWeight: weights.all[0] ?? null };
    }
  }
  return undefined;
}

/** "Flour used: 10 kg" */
function flourSaid(text: string): YieldRead | undefined {
  const flour =
    /^(?:based on|basis|for|per|batch(?: size)?|using|flour (?:weight|basis|amount))\b\s*[:=-]?\s*(.{2,24}?)\s*(?:of )?(?:total )?flour\b\.?$|^(?:flour (?:weight|basis|used|in all|total)|total flour(?: weight)?)\s*[:=-]?\s*(.{2,20})$/i.exec(
      text,
    );
  if (flour !== null) {
    const weights = weightsIn(flour[1] ?? flour[2] ?? "");
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
    !/^(?:loaf|pizza|small|large|dough)$/.test(words[0] ?? "")
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
  const [weight = null] = weights.all;
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

/** The weights of a text, the same one in two units once; and what is left of it. */
function weightsIn(text: string): { all: Grams[]; rest: string } {
  const all: number[] = [];
  const rest = text.replace(WEIGHT, (...match) => {
    const weight = gramsOfMatch(match.slice(0, 4));
    if (weight > 0 && !all.some((one) => Math.abs(one - weight) < 0.06 * weight)) all.push(weight);
    return " ";
  });
  return { all: all.map(grams), rest };
}

const DIVIDE =
  /\b(?:divide|portion|scale|cut|shape|form|split|make|roll)\b[^.]*?\b(?:into|as|at|to)\b\s*([^.;]{2,60})|\b(?:divide|scale|portion)\s+(\d[^.;]{1,40})/i;

/** "Divide into 12 pieces of 85 g": what a step says of the pieces. */
export function yieldOfStep(text: string): YieldRead | undefined {
  const match = DIVIDE.exec(text);
  const words = match?.[1] ?? match?.[2] ?? "";
  if (words === "") return undefined;
  if (/^\s*\d+(?:[.,]\d+)?\s*(?:k?g|oz|lb)\b/i.test(words)) {
    const { all, rest } = weightsIn(words);
    const counted = /^\s*(?:(?:each|pieces?|rolls?|loaves|buns?|balls?|portions?|apiece|dough)\b.*)?$/i.test(rest);
    return counted && all.length === 1 ? { ...NO_YIELD, pieceWeight: all[0] ?? null } : undefined;
  }
  const read = yieldIn(
    words.replace(/\s*(?:,|and|then)\s+(?:shape|place|round|let|rest|roll|pre|form|put|leave)\b.*$/i, "").trim(),
  );
  return read === undefined || read.isSpan ? undefined : read;
}
