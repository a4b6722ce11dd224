import { showNumber } from "./show.ts";
import { SPACES } from "./words.ts";

export type NumberStyle = {
  /** A % sign is read as hundredths; without this it is refused. */
  readonly percent?: boolean;
  /** "1,250" is one and a quarter (cups, kilograms, counts); without this it is unclear and refused. */
  readonly threeDecimals?: boolean;
};

/** Why a text is no number: it holds none, it has a % sign where no share is meant, or it may be one of two. */
type NumberReason = "no number" | "percent sign" | "two readings";
type NumberFault = { readonly reason: NumberReason; readonly says: string };
export type NumberRead = { readonly value: number; readonly marked: boolean } | NumberFault;

const VULGAR: Readonly<Record<string, number>> = {
  "½": 1 / 2,
  "⅓": 1 / 3,
  "⅔": 2 / 3,
  "¼": 1 / 4,
  "¾": 3 / 4,
  "⅕": 1 / 5,
  "⅖": 2 / 5,
  "⅗": 3 / 5,
  "⅘": 4 / 5,
  "⅙": 1 / 6,
  "⅚": 5 / 6,
  "⅐": 1 / 7,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
  "⅑": 1 / 9,
  "⅒": 1 / 10,
};
const VULGAR_SIGNS = Object.keys(VULGAR).join("");

const WHOLE = /^\d+$/;
const ONE_SEPARATOR = /^(\d*)[.,](\d+)$/;
const SPACED = /^\d{1,3}(?: \d{3})+(?:[.,]\d+)?$/;
const POINTS_THEN_COMMA = /^\d{1,3}(?:\.\d{3})+(?:,\d+)?$/;
const COMMAS_THEN_POINT = /^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/;
const FRACTION = /^(?:(\d+) )?(\d+) ?[/⁄] ?(\d+)$/;
const GLUED_FRACTION = new RegExp(`^(\\d+)? ?([${VULGAR_SIGNS}])$`);

/**
 * Reads a number somebody typed as text, when it can mean one thing only: "12.5", "97,4", "1 250,5", "1.250,50", "3/4",
 * "1 1/2", "9½", "65%". "1,250" is refused unless the style says that three digits are decimals. "1e2" and "12." are not
 * numbers a person meant to type.
 */
export function readNumber(text: string, style: NumberStyle = {}): NumberRead {
  let rest = text.replace(SPACES, " ").trim().replace(/[−–]/g, "-");
  const marked = rest.endsWith("%");
  if (marked) {
    if (!style.percent) return { reason: "percent sign", says: "has a % sign, and no share is meant here" };
    rest = rest.slice(0, -1).trim();
  }
  const sign = rest.startsWith("-") ? -1 : 1;
  if (/^[-+]/.test(rest)) rest = rest.slice(1).trim();
  const size = readSize(rest, marked || style.threeDecimals === true);
  if (typeof size !== "number") return size;
  return { value: (sign * size) / (marked ? 100 : 1), marked };
}

/** Whether "11/2" may be "1 1/2" that lost its space. */
export const isGlued = (over: number, under: number): boolean =>
  over >= 10 && over > under && over % 10 > 0 && over % 10 < under;

/** What a number says that may be one of two; both can be entered as they are told. */
const either = (one: number | string, other: string): NumberFault => ({
  reason: "two readings",
  says: `could be ${one} or ${other}; enter the one you mean`,
});

/** Three digits behind a point would be asked about again. */
function decimal(value: number): string {
  const text = showNumber(value, 4);
  return /^[1-9]\d{0,2}\.\d{3}$/.test(text) ? `${text}0` : text;
}

const NO_NUMBER: NumberFault = { reason: "no number", says: "is not a number" };

function readSize(text: string, threeDecimals: boolean): number | NumberFault {
  if (WHOLE.test(text)) return Number(text);
  const single = ONE_SEPARATOR.exec(text);
  if (single) {
    const [, before = "", after = ""] = single;
    const unclear = after.length === 3 && before.length >= 1 && before.length <= 3 && before !== "0";
    if (unclear && !threeDecimals) return either(Number(`${before}${after}`), decimal(Number(`${before}.${after}`)));
    return Number(`${before}.${after}`);
  }
  if (SPACED.test(text)) return Number(text.replace(/ /g, "").replace(",", "."));
  if (POINTS_THEN_COMMA.test(text)) return Number(text.replace(/\./g, "").replace(",", "."));
  if (COMMAS_THEN_POINT.test(text)) return Number(text.replace(/,/g, ""));
  const glued = GLUED_FRACTION.exec(text);
  if (glued) return Number(glued[1] ?? 0) + (VULGAR[glued[2] ?? ""] ?? 0);
  const [, whole, over = "", under = ""] = FRACTION.exec(text) ?? [];
  const [above, below] = [Number(over), Number(under)];
  if (under === "" || below === 0 || (whole !== undefined && above >= below)) return NO_NUMBER;
  // "11/2" is 1 1/2 where a page lost the space.
  if (whole === undefined && isGlued(above, below))
    return either(decimal(above / below), `${over.slice(0, -1)} ${above % 10}/${under}`);
  return Number(whole ?? 0) + above / below;
}

/** 2.1 ÷ 100 is 0.021, whatever binary arithmetic adds. */
export const tidy = (value: number): number => Number(value.toPrecision(12));
