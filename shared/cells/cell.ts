import { atMost } from "../base/scaling.ts";
import { oneOf, quoted, shown } from "../base/show.ts";
import { nearest, singularName } from "../base/words.ts";
import type { Hint, Measured } from "./hint.ts";
import { type NumberStyle, readNumber } from "./number.ts";

/** What a cell cannot be read as, said as a predicate: `is "abc"; write a weight such as 350`. */
export type Problem = { readonly problem: string };
export const isProblem = (read: unknown): read is Problem =>
  typeof read === "object" && read !== null && "problem" in read;

/** Reads one cell that is not blank. */
export type Reader<T> = { readonly hint: Hint; readonly read: (raw: unknown) => T | Problem };

/** What stands in the way of reading any cell: a date, an error, a value still on its way. */
export function trouble(raw: unknown): Problem | undefined {
  if (Object.prototype.toString.call(raw) === "[object Date]") {
    // Sheets hands a time of day over as a moment of 30 December 1899.
    if ((raw as Date).getFullYear() < 1900)
      return { problem: "is a time of day; enter a number, such as 1.5 for 1:30" };
    return {
      problem: "is a date; if a fraction was typed, enter 0 1/2 or '1/2 and set the cell's format back to number",
    };
  }
  if (typeof raw === "number" && !Number.isFinite(raw)) return { problem: "is not a finite number" };
  if (typeof raw !== "string") return undefined;
  const text = raw.trim();
  if (/^#[A-Z0-9/]+[!?A]$/.test(text)) return { problem: `holds the error ${text}; correct that cell first` };
  if (/^loading\s*(\.\.\.|…)$/i.test(text)) return { problem: "is still calculating; it will be read when it is done" };
  return undefined;
}

/** A cell's content as it is quoted in a sentence. */
export function found(raw: unknown): string {
  if (typeof raw === "string") return quoted(raw);
  if (typeof raw === "number") return shown(raw, 4);
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
      const stuck = trouble(raw);
      if (stuck) return stuck;
      let value: number;
      if (typeof raw === "number") value = raw;
      else if (typeof raw === "string") {
        const read = readNumber(raw, style);
        if ("problem" in read) {
          const unit = unitBeside(raw, style);
          const says =
            unit === undefined ? `${read.problem}; enter ${what}` : `is not a number; enter it without ${quoted(unit)}`;
          return { problem: `is ${quoted(raw)}, which ${says}` };
        }
        value = read.value;
      } else return { problem: `is ${found(raw)}, not a number; enter ${what}` };
      // What was worked out in a cell is a hair over its limit at times: 0.1 + 0.2 is no more than 0.3.
      if (value < least && atMost(least, value)) return least as T;
      if (value > most && atMost(value, most)) return most as T;
      return (within(value, bounds, style, what) ?? value) as T | Problem;
    },
  };
}

const MEASURES =
  /^(?:m?g|gr|gram(?:me)?s?|kg|kilo(?:gram)?s?|oz|ounces?|lbs?|pounds?|[mcd]?l|[a-z]*lit(?:re|er)s?|cups?|pints?|quarts?|gallons?|fl oz|t(?:b?sp|easpoons?|ablespoons?)|[mc]?m[²³]?|inch(?:es)?|in|f(?:ee|oo)?t|°? ?[cf]|celsius|fahrenheit|h|hrs?|hours?|min(?:utes?|s)?|s|days?)$/i;

/** What is counted in "17 loaves". */
function unitBeside(raw: string, style: NumberStyle): string | undefined {
  if (raw.length > 60) return undefined;
  const [, amount = "", unit] = /^(.*\d)\s*([a-z°][a-z°/³² ]*)\.?$/i.exec(raw.trim()) ?? [];
  // "7oo" is a slip of the finger, not seven of anything.
  // Without a unit of measure the number could be another amount.
  const isMeasure = MEASURES.test(unit ?? "");
  return isMeasure || "problem" in readNumber(amount, style) || /^o+$/i.test(unit ?? "") ? undefined : unit;
}

/** Where a share may be large, 1.25 is as likely 125 % as 1.25 %, and neither is advised. */
const mayBeMore = (value: number, max: number): boolean => value < 2 && max >= 0.5;

function within(value: number, bounds: Bounds, style: NumberStyle, what: string): Problem | undefined {
  const { min = -Infinity, above = -Infinity, max = Infinity } = bounds;
  if (!Number.isFinite(value)) return { problem: `is not a finite number; enter ${what}` };
  if (value < min) return { problem: `is ${shown(value, 4)}; it cannot be below ${shown(min)}` };
  if (value <= above) return { problem: `is ${shown(value, 4)}; it must be above ${shown(above)}` };
  if (value <= max) return undefined;
  if (style.percent && !mayBeMore(value, max) && value / 100 <= max) {
    return {
      problem: `is ${shown(value, 4)}, which is ${shown(value * 100)} %; enter ${shown(value, 4)}% or ${shown(value / 100, 6)}`,
    };
  }
  const most = style.percent ? `${shown(max * 100)} %` : shown(max);
  return { problem: `is ${shown(value, 4)}; it cannot be above ${most}` };
}

/** One of a few words, or what else the trade calls them: `word({ dough: [], flour: [] })`. */
export function word<W extends string>(options: Readonly<Record<W, readonly string[]>>): Reader<W> {
  const words = Object.keys(options) as W[];
  let known: Map<string, W> | undefined;
  return {
    hint: { of: "word", words },
    read: (raw) => {
      const stuck = trouble(raw);
      if (stuck) return stuck;
      // Made on first use: loading the script must stay cheap.
      known ??= new Map(
        words.flatMap((option) => [option, ...options[option]].map((name) => [singularName(name), option])),
      );
      const match = typeof raw === "string" ? (known.get(raw) ?? known.get(singularName(raw))) : undefined;
      if (match !== undefined) return match;
      const near = typeof raw === "string" && words.length > 8 ? nearest(raw, words) : [];
      const hint = near.length > 0 ? `perhaps ${oneOf(near)}? Choose ` : "choose ";
      return { problem: `is ${found(raw)}; ${hint}${oneOf(words)}` };
    },
  };
}

/** Text as it stands; a number or a tick is taken as its text. */
export function text(): Reader<string> {
  return {
    hint: { of: "text" },
    read: (raw) =>
      trouble(raw) ??
      (typeof raw === "object"
        ? { problem: "is not a text" }
        : typeof raw === "number"
          ? shown(raw, 6)
          : String(raw).trim()),
  };
}
