// The words and numbers of what a recipe makes.
import { type Grams, gramsIn } from "../../base/units.ts";

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

export const WORDS: Readonly<Record<string, number>> = {
  ...{ a: 1, an: 1, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10 },
  ...{ eleven: 11, twelve: 12, fourteen: 14, fifteen: 15, sixteen: 16, eighteen: 18, twenty: 20, "twenty-four": 24 },
  ...{ thirty: 30, "thirty-six": 36, forty: 40, fifty: 50, sixty: 60, hundred: 100 },
};
export const WORD_LIST = Object.keys(WORDS)
  .sort((a, b) => b.length - a.length)
  .join("|");
export const COUNT = new RegExp(
  `(?<![\\p{L}\\d.,/])(\\d{1,5}(?![\\d.,]*\\d)|(?:${WORD_LIST})(?![\\p{L}-]))(?:\\s*(?:[-–—]|to|or)\\s*(\\d{1,5}|(?:${WORD_LIST})(?![\\p{L}])))?(\\s*(?:½|1/2|and a half))?(\\s*(?:dozen|doz\\.?|dz))?`,
  "iu",
);
const PIECES = [
  "pezzo|pezzi|unidad|unidade|paton|pâton|pie|pasty|pastie|tartlet|samosa|empanada|strudel|panino|panini|pagnotta|pagnotte|pain|brot|brote|brotchen|piece|pieza|pan|bollo|bolla|bollar|stk|st|szt|ud|teigling|stuck",
  "loaf|loave|roll|bun|piece|pc|pce|unit|baguette|bagel|boule|batard|bâtard|pizza|base|crust|flatbread|naan|pita|cooky|cookie|biscuit|muffin|cupcake|scone|croissant|danish|danishe|cake|tart|round|ball|doughball|breadstick|grissini|ciabatta|focaccia|slab|brownie|bar|doughnut|donut|pretzel|twist|knot|brioche|teacake|crumpet|pastry|pastrie|bread|batch|miche|bloomer|cob|bap",
  "batch loave|stuck|brotchen|square|tray|sheet|tin|pan|mould|mold|stollen|challah|braid|plait|stick|ficelle|epi|bâton|baton|turnover|swirl|snail|sponge|layer|wheel|couronne|wreath|ring|english muffin|slice|portion|item|finger|each|ea",
].join("|");
export const PIECE = new RegExp(`^(?:${PIECES})$`);
export const TIN = /\b(?:tin|pan|mould|mold|pullman)\b/;
export const PREFIX =
  /^(?:(?:this )?(?:recipe )?(?:makes|yields?|gives)|servings?|(?:(?:total|batch|dough) )?yield|quantity made|qty|produces|recipe for|enough for|formula for|batch for|for|pieces|number of (?:pieces|loaves|rolls|buns|units)|number(?=\s*[:=])|no\.? of (?:pieces|loaves|rolls|units)|units|pcs|batch(?: size| weight)?|makes approx|ergibt|pour|per|ger|für|voor|til|till|räcker till|antal)\b\s*[:=-]?\s*/i;
export const EACH =
  /^(?:piece weight|weight (?:per|of each) (?:piece|loaf|roll|unit)|unit weight|scaling weight|scal(?:e|ed|ing)(?: at| to| weight)?|dough (?:piece|weight per piece|per piece|per loaf)|dough piece weight|(?:ball|loaf|roll|bun|piece|unit) (?:weight|size)|each piece|divide at|portion(?: weight)?|weight each|individual weight|piece size|stückgewicht|teigeinlage|einlage|s?pezzatura|pesage)\b\s*[:=-]?\s*(?=\D{0,12}\d)/i;
export const WEIGHT =
  /(\d+(?:[.,]\d+)?(?:\s?[½¼¾])?|\d+\s+\d\/\d|[½¼¾])\s*-?\s*(kgs?|kilos?|kilograms?|g|gr|grams?|grammes?|oz|ounces?|lbs?|pounds?|#)(?![\p{L}])\.?(?:\s*(\d+(?:\.\d+)?)\s*oz\b)?/giu;
export const SIZE =
  /\d+(?:[.,]\d+)?\s*(?:x|×|by|[-–])?\s*(?:\d+(?:[.,]\d+)?\s*)?-?\s*(?:x\s*\d+\s*)?(?:inch(?:es)?|in\b|cm\b|mm\b|["″])/gi;
export const GUESTS = /^\W*(?:serves?|servings?|people|persons?|guests?)\b|\b(?:servings?|people|persons?|guests?)\b/i;
export const FILLERS =
  /\b(?:about|around|approx(?:imately)?|approximatley|roughly|ca|circa|makes?|yields?|at|of|each|apiece|per|weighing|scaled|da|je|zu|von|dough|baked|in|from|x|total|finished|standard|the|and|raw|unbaked|weight|a|for|piece weight|g)\b|[~≈@×à:=,.()/-]/gi;

export const EACH_TAKES = /@|à|\b(?:at|each|scaled|of dough)\b|\bof\s+\d[\d.,]*\s?k?g\b/i;
const SIGNS: Readonly<Record<string, number>> = { "½": 0.5, "¼": 0.25, "¾": 0.75 };

function numberOf(text: string): number {
  const plain = text.trim();
  const mixed = /^(\d+)\s+(\d)\/(\d)$/.exec(plain);
  if (mixed) return Number(mixed[1]) + Number(mixed[2]) / Number(mixed[3]);
  const sign = /[½¼¾]/.exec(plain)?.[0];
  const head = plain.replace(/[½¼¾]/, "").trim().replace(",", ".");
  return (head === "" ? 0 : Number(head)) + (sign === undefined ? 0 : (SIGNS[sign] ?? 0));
}

export function gramsOfMatch([, amount = "", unit = "", ounces]: readonly (string | undefined)[]): number {
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
