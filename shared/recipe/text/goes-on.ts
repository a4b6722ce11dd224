// Lines that go on: a list with sentences behind it, and a list that is broken over several lines.

import { type Draft, hasAmount, type Place } from "./draft.ts";
import type { SourceLine } from "./source-lines.ts";
import { isStep } from "./steps.ts";
import { temperatureIn, timesIn } from "./times.ts";

const WEIGHED = /\d\s?(?:k?g|gr|oz|lbs?|ml|cl|dl|l|%|cups?|tsp|tbsp)(?!\p{L})/giu;
/** "… 40 g salt. Mix 8 min.": a list of amounts up to a full stop, and what stands behind it. */
const BEHIND = /^(.*?\d.*?(?:\p{L}{3}|\)|\d\s?(?:k?g|oz|lbs?|ml|%)))[.;]\s+((?:\p{Lu}|\d).*)$/u;
/** "Poolish: … 1 g yeast (12 h at 20 °C)" */
const IN_BRACKETS = /^([^:]{3,40}:\s.*\d.*?)\s*\(([^()]*\d[^()]*)\)\.?$/;

const isTimeAlone = (text: string): boolean =>
  text.length < 60 &&
  (timesIn(text).minutes.length > 0 || temperatureIn(text) !== null) &&
  !isStep(text.replace(/^\d.*$/, ""), false, true) &&
  /^\W*\d/.test(text);

/** What a list is followed by in its own line; undefined where nothing follows it but more of it. */
export function listAndRest(text: string): { list: string; rest: string; isOfStage: boolean } | undefined {
  const bracketed = IN_BRACKETS.exec(text);
  if (bracketed !== null && (bracketed[1]?.match(WEIGHED)?.length ?? 0) >= 2 && isTimeAlone(bracketed[2] ?? ""))
    return { list: bracketed[1] ?? "", rest: bracketed[2] ?? "", isOfStage: true };
  const [, list = "", rest = ""] = BEHIND.exec(text) ?? [];
  if (rest === "" || (list.match(WEIGHED)?.length ?? 0) < 2) return undefined;
  if (isTimeAlone(rest) && /^[^:\d]{3,40}:\s/.test(list)) return { list, rest, isOfStage: true };
  const sentences = rest.split(/(?<=\p{L}{2}[.!;]|\d\s?[CF°][.!;])\s+/u);
  const isMethod = sentences.every(
    (one) => isStep(one, hasAmount(one), true) || timesIn(one).minutes.length > 0 || temperatureIn(one) !== null,
  );
  return isMethod ? { list, rest, isOfStage: false } : undefined;
}

/** Reads a list and what follows it each by itself. */
export function takeGoesOn(
  place: Place,
  take: (place: Place) => boolean,
  steps: (draft: Draft, line: SourceLine, text: string) => boolean,
): boolean {
  const { draft, line, reading } = place;
  if (line.text.length < SHORTEST || draft.mode === "method") return false;
  const parts = listAndRest(line.text);
  if (parts === undefined || reading.corrections.lines[line.text] !== undefined) return false;
  const { list, rest, isOfStage } = parts;
  // "Sour: 800 g rye, … 16 h at 27 °C" says of the sour how long and how warm it stands.
  const text = isOfStage ? list.replace(/:\s/, ` (${rest.replace(/[().]+/g, " ").trim()}): `) : list;
  if (!take({ ...place, line: { ...line, text } })) return false;
  if (!isOfStage) steps(draft, line, rest);
  return true;
}
const SHORTEST = 24;

/** A comma, a small word, or an amount whose name is still to come. */
const OPEN_END = /(?:,|\s(?:and|with|of|the|plus|or)|[,:]\s*\d[\d.,]*\s?(?:k?g|oz|lbs?|ml|cups?|tsp|tbsp))$/iu;
/** "20 g malt / flour, 15 g caraway": a name, and the rest of it before the next comma. */
const OPEN_NAME = /,\s*\d[^,.:;]*\s\p{Ll}{2,}$/u;
const REST_OF_NAME = /^\p{Ll}[\p{L}'’-]*(?: \p{L}+){0,2}[,.]/u;
const BROKEN = 30;

/** The same lines; those that a letter broke within a list as one. */
export function unbroken(lines: readonly SourceLine[]): readonly SourceLine[] {
  if (!lines.some(isBroken)) return lines;
  const all: SourceLine[] = [];
  for (const line of lines) {
    const last = all[all.length - 1];
    const goesOn =
      last !== undefined &&
      isBroken(last) &&
      !line.isListed &&
      !line.isMarked &&
      (OPEN_END.test(last.text) ? /^(?:\p{Ll}|\d)/u.test(line.text) : REST_OF_NAME.test(line.text));
    if (goesOn && last !== undefined)
      all[all.length - 1] = { ...last, raw: `${last.text} ${line.text}`, text: `${last.text} ${line.text}` };
    else all.push(line);
  }
  return all.length === lines.length ? lines : all;
}

/** Long, with several amounts and commas between them, and no end. */
const isBroken = ({ text, isListed }: SourceLine): boolean =>
  text.length >= BROKEN &&
  !isListed &&
  text.includes(", ") &&
  (OPEN_END.test(text) || OPEN_NAME.test(text)) &&
  (text.match(WEIGHED)?.length ?? 0) >= 2;
