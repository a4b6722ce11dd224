// Headings of any form: what part of the recipe the lines below them are.

import { type Celsius, celsius } from "../../base/units.ts";
import { singularName } from "../../base/words.ts";
import type { Stage, StageRole } from "./description.ts";
import { DOUGH, GROUP, MODES, type Mode, PREFERMENT, QUALIFIERS, ROLES } from "./heading-words.ts";
import { durationIn, temperatureIn } from "./times.ts";

export type Heading = { readonly mode: Mode } | { readonly stage: Stage; readonly isUnsure: boolean };

/** What the heading's own words are, without numbering and what stands in brackets or behind a dash. */
export function headingCore(text: string): string {
  return singularName(
    text
      .replace(/[([{].*?(?:[)\]}]|$)/g, " ")
      .replace(
        /^\s*(?:\d(?:st|nd|rd|th)|first|second|third|last)\s+(?:stage|step|part|phase|build)\b\s*[:.)–—-]\s*/i,
        "",
      )
      .replace(
        /^\s*(?:stage|step|part|phase|day|section|component)\s*(?:\d+|[a-dA-D]|one|two|three)\b\s*[:.)–—-]\s*/i,
        "",
      )
      .replace(/^\s*(?:[A-D]|\d|[IVX]{1,3})[.):]\s*/, "")
      .replace(/\s+(?:@|at|=|,|[-–—:|])?\s*\d[\s\S]*$/, " ")
      .replace(/\s[–—-]\s.*$/, " ")
      .replace(/pre-?ferment/gi, "preferment")
      .replace(/[^\p{L}\d' -]/gu, " "),
  )
    .replace(/\s+/g, " ")
    .trim();
}

const TONGUES: Readonly<Record<string, string>> = {
  ...{ sauerteig: "sourdough", zakwa: "sour", zakwas: "sour", surdeg: "sourdough", surdej: "sourdough" },
  ...{
    fordeg: "preferment",
    fordej: "preferment",
    voordeeg: "preferment",
    prefermento: "preferment",
    zaczyn: "preferment",
  },
  ...{ esponja: "sponge", "masa madre": "levain", "pasta madre": "levain" },
};

export const prefermentWordIn = (core: string): string => {
  const word = PREFERMENT.exec(core)?.[0] ?? "";
  if (/^(?:vorteig|vorstufe|old dough|pate fermentee|fermented dough|pre ferment)$/.test(word)) return "preferment";
  if (/^(?:anstellgut|mother|chef|leaven|lievito|madre|desem|discard)$/.test(word)) return "levain";
  if (/^refreshe?r|^refreshment|^rafraichi/.test(word)) return "levain";
  return TONGUES[word] ?? word;
};

/** The mode a heading opens, whatever marks stand around it. */
export function modeOf(text: string): Mode | undefined {
  const core = singularName(text.replace(/[^\p{L}\d'’ -]/gu, " "))
    .replace(/\s+/g, " ")
    .trim();
  if (core === "" || core.length > 60) return undefined;
  const plain = text
    .toLowerCase()
    .replace(/[^\p{L}\d'’ ]/gu, " ")
    .replace(/\s+/g, " ")
    .trim();
  return MODES.find(([, words]) => words.test(core) || words.test(plain))?.[0];
}

/** Words such as "bread" or "dough" in a name that is no heading: titles are asked elsewhere. */
const MAX_WORDS = 7;

/** "Day 2", "Stage II": what comes after something that was made before is the dough. */
export const LATER =
  /^(?:day|tag|jour|giorno|d[ií]a|dag|dzie[nń]|stage|step|stufe|[eé]tape|part|phase)\s*(?:[2-9]|two|three|ii|iii|b|c)\s*:?$/i;
const NO_STAGE: Stage = { role: "dough", name: "", line: null, preferment: "", hours: null, temperature: null };
/** "Day 1" says nothing of what it heads. */
export const isFirstDay = (text: string): boolean =>
  /^(?:day|tag|jour|giorno|d[ií]a|dag|dzie[nń]|stage|step|stufe|[eé]tape|part|phase)\s*(?:1|one|i|a)\s*:?$/i.test(text);

/**
 * The stage that a line without an amount of its own heads; undefined where its words are no stage's. `isSetOff` tells that
 * marks, capitals or a colon make it a heading whatever its words.
 */
export function stageOf(text: string, line: number, isSetOff: boolean): Heading | undefined {
  if (LATER.test(text.trim()))
    return { isUnsure: false, stage: { ...NO_STAGE, name: text.replace(/[\s:]+$/, ""), line } };
  const core = headingCore(text);
  const words = core.split(" ").filter((word) => word !== "");
  if (words.length === 0 || words.length > MAX_WORDS) return undefined;
  const stage = (role: StageRole, preferment = "", isUnsure = false): Heading => {
    const hours = durationIn(text);
    return {
      isUnsure,
      stage: {
        role,
        name: text.replace(/[\s:]+$/, ""),
        line,
        preferment,
        hours: hours === null ? null : hours / 60,
        temperature: temperatureOf(text),
      },
    };
  };
  const opened = core
    .replace(/^(?:for (?:the |a )?|to make (?:the )?|make (?:the )?|mix (?:the )?(?=final|dough))/, "")
    .trim();
  const plain = opened === "" ? core : opened;
  const isOnly = (pattern: RegExp) =>
    plain
      .replace(pattern, " ")
      .split(" ")
      .filter((word) => word !== "")
      .every((word) => QUALIFIERS.has(word) || /^\d+$/.test(word) || ROLES.some(([, words]) => words.test(word)));
  // "For the crunchy topping"
  const isFor = /^for (?:the |a )/.test(core);
  for (const [role, pattern] of ROLES) {
    if (pattern.test(plain) && (isSetOff || isFor || isOnly(pattern))) return stage(role);
  }
  const named = prefermentWordIn(plain);
  // "Preferment (biga)"
  const bracketed = singularName(/[([](.*?)[)\]]/.exec(text)?.[1] ?? "");
  const inBrackets = named === "preferment" ? prefermentWordIn(bracketed) : "";
  const preferment = inBrackets === "" ? named : inBrackets;
  // "Rafraîchi (levain)": a word that says nothing here, and beside it what it is.
  if (named === "" && isSetOff && new RegExp(`^(?:${PREFERMENT.source})$`).test(bracketed) && !DOUGH.test(plain))
    return stage("preferment", prefermentWordIn(bracketed));
  const isDough = /\b(?:final|main)\b/.test(plain) || DOUGH.test(plain);
  if (
    preferment !== "" &&
    !(isDough && /^(?:final|main)\b/.test(plain)) &&
    !/^sponge cake$/.test(plain) &&
    isOnly(PREFERMENT)
  )
    return stage("preferment", preferment);
  if (isDough && (DOUGH.test(plain) || isOnly(/\b(?:final|main|dough|mix)\b/g))) return stage("dough");
  if (isSetOff && GROUP.test(plain)) return stage("dough");
  if (!isSetOff) return /^for (?:the |a )/.test(core) && words.length <= 5 ? stage("part", "", true) : undefined;
  if (/\bdough\b/.test(plain)) return stage("dough");
  if (
    preferment !== "" &&
    words.length <= 4 &&
    !/\b(?:bread|loaf|loave|baguette|boule|pizza|roll|bun|bagel|ciabatta|focaccia|cake)\b/.test(plain)
  )
    return stage("preferment", preferment);
  return stage("part", "", true);
}

function temperatureOf(text: string): Celsius | null {
  const temperature = temperatureIn(text);
  return temperature === null ? null : celsius(temperature);
}
