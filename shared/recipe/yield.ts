// How many pieces a recipe says it makes.
const WORDS: Readonly<Record<string, number>> = {
  a: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  fifteen: 15,
  sixteen: 16,
  eighteen: 18,
  twenty: 20,
  "twenty-four": 24,
  thirty: 30,
};
const NUMBER = `\\d{1,5}|${Object.keys(WORDS).reverse().join("|")}`;
const MAKES = new RegExp(
  `\\b(?:makes|yields?|gives|recipe for|enough for)\\b[\\s:]*(?:about|around|approx(?:imately|\\.)?|roughly|ca\\.?|~)?\\s*(${NUMBER})(\\s+(?:and a half\\s+)?dozen)?\\b(.{0,40})`,
  "iu",
);
/** What follows the number where it counts no pieces: a span, a fraction, a weight, a volume, guests. */
const NO_PIECES =
  /^\s*(?:[-–/.,]\s*\d|to\s+\d|or\s+\d|(?:k?g|kilos?|grams?|grammes?|lbs?|pounds?|oz|ounces?|ml|l|litres?|liters?|cups?|quarts?|servings?|serves|portions?|people|persons?|guests?)\b)/i;
const MOST = 100_000;

/** Pieces that one of the lines says the recipe makes ("Makes 24", "yield: 2 dozen rolls"); null where none does, or not one number. */
export function recipeYield(lines: readonly string[]): number | null {
  for (const line of lines) {
    const [, number = "", dozen = "", after = ""] = MAKES.exec(line.slice(0, 500)) ?? [];
    if (number === "" || NO_PIECES.test(after)) continue;
    // "Makes a soft dough" counts nothing, "makes a dozen" does.
    if (number.toLowerCase() === "a" && dozen === "") continue;
    const count = WORDS[number.toLowerCase()] ?? Number(number);
    const pieces = dozen === "" ? count : /half/i.test(dozen) ? (count + 0.5) * 12 : count * 12;
    if (pieces > 0 && pieces <= MOST) return pieces;
  }
  return null;
}
