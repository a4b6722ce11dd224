// The text as lines, without the marks that lists, web pages and plain-text headings put around them.

import { SPACES } from "../../base/words.ts";

export type SourceLine = {
  /** Its place in the text, counted from 0. */
  readonly at: number;
  /** As it stands there. */
  readonly raw: string;
  /** Without marks of lists and headings, in single spaces. */
  readonly text: string;
  readonly isListed: boolean;
  /** "1." or "2)" stood before it. */
  readonly isNumbered: boolean;
  /** Set off as a heading by its marks: "## Dough", "**Dough**", "--- Dough ---". */
  readonly isMarked: boolean;
};

/** A line that is longer is no line of a recipe. */
export const MAX_LINE_LENGTH = 1000;

const UNSEEN = /[\u200b-\u200f\u2060\ufeff\u00ad]/g;
const ENTITIES: Readonly<Record<string, string>> = {
  "&amp;": "&",
  "&nbsp;": " ",
  "&frac12;": "½",
  "&frac14;": "¼",
  "&frac34;": "¾",
  "&deg;": "°",
  "&#8211;": "–",
  "&ndash;": "–",
  "&quot;": '"',
};
const LIST_MARK = /^(?:[▢☐☑✓✔□■▪▫•●○◦‣⁃·∙*»>›➤►▸]|\[[ xX]?\])\s*|^[-–—]\s+/;
const NUMBER_MARK = /^(?:\d{1,2}[.)]|\(\d{1,2}\))\s+(?=\D)/;

export const linesOf = (text: string): SourceLine[] => text.split(/\r\n?|\n|[\u2028\u2029\v\f]/).map(sourceLine);

/** Lines repeat from one keystroke to the next. */
const REMEMBERED = new Map<string, Omit<SourceLine, "at">>();
const MAX_CACHED = 2000;

function sourceLine(raw: string, at: number): SourceLine {
  const before = REMEMBERED.get(raw);
  if (before !== undefined) return { at, ...before };
  const line = unmarked(raw);
  if (REMEMBERED.size >= MAX_CACHED) REMEMBERED.clear();
  REMEMBERED.set(raw, line);
  return { at, ...line };
}

function unmarked(raw: string): Omit<SourceLine, "at"> {
  let text = raw.length > MAX_LINE_LENGTH ? raw.slice(0, MAX_LINE_LENGTH) : raw;
  if (/[^\t -~]/.test(text)) text = text.replace(UNSEEN, "");
  if (text.includes("&")) text = text.replace(/&[#a-z0-9]+;/gi, (one) => ENTITIES[one.toLowerCase()] ?? one);
  // Tabs and wide gaps part columns, and tables look at the raw line.
  text = text.replace(SPACES, " ").trim();
  let isListed = false;
  let isNumbered = false;
  let isMarked = false;
  for (let turn = 0; turn < 3; turn++) {
    const mark = LIST_MARK.exec(text);
    // "*Name*" is a mark on both sides.
    if (mark !== null && !/^\*+[^*]+\*+:?$/.test(text)) {
      text = text.slice(mark[0].length);
      isListed = true;
      continue;
    }
    const framed = /^(?:#{1,6}\s*|[*_=~-]{1,4}\s*(?=[^*_=~-].*[*_=~-]:?$))(.*?)\s*[#*_=~-]*(:?)$/.exec(text);
    if (framed !== null && framed[1] !== "" && /\p{L}/u.test(framed[1] ?? "")) {
      text = `${framed[1]}${framed[2]}`;
      isMarked = true;
      continue;
    }
    break;
  }
  const numbered = NUMBER_MARK.exec(text);
  if (numbered !== null) {
    text = text.slice(numbered[0].length);
    isNumbered = true;
  }
  if (text.includes("**") || text.includes("__")) text = text.replace(/\*\*|__/g, "").trim();
  const opened = /^\[([^[\]]*\p{L}{3}[^[\]]*)\]\s+(?!.*\d\s?(?:k?g|oz|lbs?|ml|%)(?!\p{L}))(.+)$/iu.exec(text);
  if (opened !== null) {
    text = `${opened[1]} ${opened[2]}`;
    isMarked = true;
  }
  const bracketed = /^\[([^[\]]*\p{L}[^[\]]*)\]:?$/u.exec(text);
  if (bracketed !== null) {
    text = bracketed[1] ?? "";
    isMarked = true;
  }
  return { raw, text, isListed, isNumbered, isMarked };
}

export const isSeparator = (text: string): boolean => text !== "" && !/[\p{L}\d¼-¾⅐-⅞]/u.test(text);
