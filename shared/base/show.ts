/** A number as a person reads it in a sentence: at most `digits` after the point, no trailing zeros. */
export function showNumber(value: number, digits = 2): string {
  if (value !== 0 && Math.abs(value) < 0.5 * 10 ** -digits) return String(Number(value.toPrecision(1)));
  if (Math.abs(value) >= 1e15) return String(Number(value.toPrecision(4)));
  const text = fixed(value, digits);
  return text.includes(".") ? text.replace(/0+$/, "").replace(/\.$/, "") : text;
}

/** Nobody reads more digits behind a point. */
const MAX_PLACES = 6;

/** A number beside a limit that it does not meet: with so many digits that it does not read as the limit. */
export function shownApart(value: number, limit: number, digits = 4): string {
  for (let places = digits; places <= MAX_PLACES; places++)
    if (showNumber(value, places) !== showNumber(limit, places)) return showNumber(value, places);
  return value === limit
    ? showNumber(value, digits)
    : `a hair ${value > limit ? "more" : "less"} than ${showNumber(limit, digits)}`;
}

/** Halves go away from 0 and the 15 digits count that a sheet knows: 1.005 is 1.01, as in the cell beside the sentence. */
function fixed(value: number, digits: number): string {
  const [size = "0", power = "0"] = Math.abs(value).toPrecision(15).split("e");
  const whole = Math.floor(Number(`${size}e${Number(power) + digits}`) + 0.5);
  return `${value < 0 ? "-" : ""}${(whole / 10 ** digits).toFixed(digits)}`;
}

/**
 * A weight in whichever unit it is: in kilograms or pounds the third and fourth place count, too. A limit is rounded to the
 * side on which it still holds, so that what the sentence says can be typed.
 */
export function shownWeight(value: number, limit?: "at most" | "at least"): string {
  const size = Math.abs(value);
  const digits = size < 1 ? 4 : size < 10 ? 3 : 2;
  const scaled = value * 10 ** digits;
  const dust = 1e-9 * Math.abs(scaled);
  const whole = limit === "at most" ? Math.floor(scaled + dust) : Math.ceil(scaled - dust);
  return showNumber(limit === undefined ? value : whole / 10 ** digits, digits);
}

/** A share as a percentage: 0.655 is "65.5 %". */
export function shownShare(ratio: number, digits = 2): string {
  return `${showNumber(ratio * 100, digits)} %`;
}

/** Text from a cell, quoted and cut to a length that still fits a sentence. */
export function quote(text: string): string {
  const plain = /^\s|\s\s|[^\S ]|\s$/.test(text) ? text.replace(/\s+/g, " ").trim() : text;
  return `"${plain.length > 40 ? `${plain.slice(0, 37)}…` : plain}"`;
}

/** `"a", "b" or "c"`. */
export function oneOf(words: readonly string[]): string {
  const marked = words.map((word) => `"${word}"`);
  const last = marked.pop() ?? "";
  return marked.length === 0 ? last : `${marked.join(", ")} or ${last}`;
}

/** `row 2`, `rows 2 and 5`. */
export function rowsNamed(rows: readonly number[]): string {
  if (rows.length === 1) return `row ${rows[0]}`;
  const shown = rows.slice(0, 10).map(String);
  const last = rows.length > 10 ? `${rows.length - 10} more` : (shown.pop() ?? "");
  return `rows ${shown.join(", ")} and ${last}`;
}

/** A weight as it is read at a glance: whole grams, hundredths of an ounce, thousands set apart. */
export function inUnit(value: number, unit: "g" | "oz"): string {
  const [whole = "", part] = showNumber(value, unit === "g" ? 0 : 2).split(".");
  const apart = whole.replace(/\B(?=(\d{3})+$)/g, "\u202f");
  return `${apart}${part === undefined ? "" : `.${part}`}\u00a0${unit}`;
}
