import { type NumberStyle, readNumber } from "../base/number.ts";
import type { Fault } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { oneOf, quote, showNumber, shownApart } from "../base/show.ts";
import { nearest, singularName } from "../base/words.ts";
import type { Hint, Measured } from "./hint.ts";

/** Reads one cell that is not blank. */
export type Reader<T> = { readonly hint: Hint; readonly read: (raw: unknown) => T | Fault };

/** What stands in the way of reading any cell: a date, an error, a value still on its way. */
export function unreadable(raw: unknown): Fault | undefined {
  if (typeof raw === "string") return unreadableText(raw);
  if (Object.prototype.toString.call(raw) === "[object Date]") {
    // Sheets hands a time of day over as a moment of 30 December 1899.
    if ((raw as Date).getFullYear() < 1900) return { says: "is a time of day; enter a number, such as 1.5 for 1:30" };
    return {
      says: "is a date; if a fraction was typed, enter 0 1/2 or '1/2 and set the cell's format back to number",
    };
  }
  return typeof raw === "number" && !Number.isFinite(raw) ? { says: "is not a finite number" } : undefined;
}

function unreadableText(raw: string): Fault | undefined {
  if (!/^\s*(?:#|loading)/i.test(raw)) return undefined;
  const text = raw.trim();
  if (/^#[A-Z0-9/]+[!?A]$/.test(text)) return { says: `holds the error ${text}; correct that cell first` };
  if (/^loading\s*(\.\.\.|…)$/i.test(text)) return { says: "is still calculating; wait a moment" };
  return undefined;
}

/** A cell's content as it is quoted in a sentence. */
export function describeCell(raw: unknown): string {
  if (typeof raw === "string") return quote(raw);
  if (typeof raw === "number") return showNumber(raw, 4);
  return typeof raw === "boolean" ? String(raw).toUpperCase() : "not a number or a text";
}

type Bounds = { readonly min?: number; readonly max?: number; readonly above?: number };

/** `what` names the quantity with an example: "a weight such as 350". */
export function number<T extends number>(
  what: string,
  bounds: Bounds = {},
  style: NumberStyle = {},
  measured: Measured = {},
): Reader<T> {
  const { min: least = -Number.MAX_VALUE, max: most = Number.MAX_VALUE, above: over = -Infinity } = bounds;
  return {
    hint: { of: "number", what, ...bounds, ...measured },
    read: (raw) => {
      // Most cells hold a number as it should be.
      if (typeof raw === "number" && raw >= least && raw <= most && raw > over) return raw as T;
      const stuck = unreadable(raw);
      if (stuck) return stuck;
      let value: number;
      if (typeof raw === "number") value = raw;
      else if (typeof raw === "string") {
        const reading = readNumber(raw, style);
        if ("says" in reading) {
          const says =
            besideWord(raw, style, measured) ??
            (reading.reason === "two readings" ? reading.says : `${reading.says}; enter ${what}`);
          return { says: `is ${quote(raw)}, which ${says}` };
        }
        value = reading.value;
      } else return { says: `is ${describeCell(raw)}, not a number; enter ${what}` };
      // What was worked out in a cell is a hair over its limit at times: 0.1 + 0.2 is no more than 0.3.
      if (value < least && atMost(least, value)) return least as T;
      if (value > most && atMost(value, most)) return most as T;
      return (within(value, bounds, style, what) ?? value) as T | Fault;
    },
  };
}

/** What is counted in "17 loaves", and what a price is in. */
const COUNTED =
  /^(?:loa(?:f|ves)|rolls?|buns?|bagels?|baguettes?|pretzels?|pizzas?|cakes?|cookies?|biscuits?|muffins?|balls?|pieces?|pcs?|units?|items?|each|ea|tins?|pans?|trays?|mix(?:es)?|batch(?:es)?|portions?|servings?|persons?|people|feed(?:ing)?s?|folds?|sides?|eur|euros?|usd|dollars?|gbp|chf|aud|cad|nzd)\b(?! ?\/)/i;

/** What to enter for a number with a word behind it: never the number alone where the word may be a unit, which would make it another amount. */
function besideWord(raw: string, style: NumberStyle, { measure }: Measured): string | undefined {
  if (raw.length > 60) return undefined;
  const [, amount = "", word = ""] = /^(.*[\d¼-¾⅐-⅞])\s*([a-z°][a-z°/³² ]*)\.?$/i.exec(raw.trim()) ?? [];
  const reading = readNumber(amount, style);
  if (measure !== undefined && "says" in reading && reading.reason === "two readings") return reading.says;
  if (measure !== undefined || style.percent || "says" in reading) return undefined;
  if (/^(?:dozen|doz|dz)$/i.test(word)) return `is not a number; enter ${showNumber(12 * reading.value, 4)}`;
  return COUNTED.test(word) ? `is not a number; enter it without ${quote(word)}` : undefined;
}

/** Where a share may be large, 1.25 is as likely 125 % as 1.25 %, and neither is advised. */
const mayBeMore = (value: number, max: number): boolean => value < 2 && max >= 0.5;

function within(value: number, bounds: Bounds, style: NumberStyle, what: string): Fault | undefined {
  const { min = -Infinity, above = -Infinity, max = Infinity } = bounds;
  if (!Number.isFinite(value)) return { says: `is not a finite number; enter ${what}` };
  if (value < min) return { says: `is ${shownApart(value, min)}; it cannot be below ${showNumber(min)}` };
  if (value <= above) return { says: `is ${showNumber(value, 4)}; it must be above ${showNumber(above)}` };
  if (value <= max) return undefined;
  if (style.percent && !mayBeMore(value, max) && value / 100 <= max) {
    return {
      says: `is ${showNumber(value, 4)}, which is ${showNumber(value * 100)} %; enter ${showNumber(value, 4)}% or ${showNumber(value / 100, 6)}`,
    };
  }
  const most = style.percent ? `${showNumber(max * 100)} %` : showNumber(max);
  return { says: `is ${shownApart(value, max)}; it cannot be above ${most}` };
}

/** One of a few words, or what else the trade calls them: `word({ dough: [], flour: [] })`. */
export function word<W extends string>(options: Readonly<Record<W, readonly string[]>>): Reader<W> {
  const words = Object.keys(options) as W[];
  let known: Map<string, W> | undefined;
  return {
    hint: { of: "word", words },
    read: (raw) => {
      const stuck = unreadable(raw);
      if (stuck) return stuck;
      // Made on first use: loading the script must stay cheap.
      known ??= new Map(
        words.flatMap((option) => [option, ...options[option]].map((name) => [singularName(name), option])),
      );
      const match = typeof raw === "string" ? (known.get(raw) ?? known.get(singularName(raw))) : undefined;
      if (match !== undefined) return match;
      const near = typeof raw === "string" && words.length > 8 ? nearest(raw, words) : [];
      const hint = near.length > 0 ? `perhaps ${oneOf(near)}? Choose ` : "choose ";
      return { says: `is ${describeCell(raw)}; ${hint}${oneOf(words)}` };
    },
  };
}

/** Text as it stands; a number or a tick is taken as its text. */
export function text(): Reader<string> {
  return {
    hint: { of: "text" },
    read: (raw) =>
      unreadable(raw) ??
      (typeof raw === "object"
        ? { says: "is not a text" }
        : typeof raw === "number"
          ? showNumber(raw, 6)
          : String(raw).trim()),
  };
}
