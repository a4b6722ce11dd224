// What the separators of a text's numbers mean: one text writes them one way.

/** "point": 1,250.5 and 0.5. "comma": 1.250,5 and 0,5. "unclear" where three digits behind a sign may be either. */
export type NumberStyle = "point" | "comma" | "unclear" | "plain";

const THREE = /(?<![\d.,])\d{1,3}([.,])\d{3}(?![\d.,])/g;
const POINT = /(?<![\d.,])\d*\.(?:\d{1,2}|\d{4,})(?![\d.,])|\d,\d{3}\.\d|\d,\d{3},\d{3}|\b0\.\d/;
const COMMA = /(?<![\d.,])\d+,(?:\d{1,2}|\d{4,})(?![\d.,])|\d\.\d{3},\d|\d\.\d{3}\.\d{3}|\b0,\d/;
/** Kilograms and the like are written with three decimals. */
const COARSE = /^\s*(?:kg|kilo|l\b|lit|lb)/i;

/** How a text writes its numbers; `answer` is what a person said where it leaves that open. */
export function numberStyle(text: string, answer: string | undefined): NumberStyle {
  const isPoint = POINT.test(text);
  const isComma = COMMA.test(text.replace(/(\d),(?= )/g, "$1 "));
  if (isPoint && !isComma) return "point";
  if (isComma && !isPoint) return "comma";
  const open = [...text.matchAll(THREE)].filter((one) => !COARSE.test(text.slice((one.index ?? 0) + one[0].length)));
  if (open.length === 0) return "plain";
  const signs = new Set(open.map(([, sign]) => sign));
  if (signs.size > 1) return "unclear";
  const [sign] = signs;
  if (answer === "thousands") return sign === "," ? "point" : "comma";
  if (answer === "decimals") return sign === "," ? "comma" : "point";
  return "unclear";
}

/** The text with its thousands joined and its decimals behind a point, so that every number means one thing. */
export function withPlainNumbers(text: string, style: NumberStyle): string {
  if (style === "plain" || style === "unclear" || !/\d[.,]\d/.test(text)) return text;
  if (style === "point") return text.replace(/(?<![\d.,])\d{1,3}(?:,\d{3})+(?![\d,])/g, (one) => one.replace(/,/g, ""));
  return text
    .replace(/(?<![\d.,])\d{1,3}(?:\.\d{3})+(?![\d.])/g, (one) => one.replace(/\./g, ""))
    .replace(/(\d+),(\d+)/g, (_, whole, part) => String(Number(`${whole}.${part}`)));
}
