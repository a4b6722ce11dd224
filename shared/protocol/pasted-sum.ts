// Whether a text that was pasted is the one that was packed. Line ends, blanks at the ends of lines and empty lines do no harm. A long
// text goes on in the next line after a backslash, and there blanks count.

export type Whole = "whole" | "damaged" | "unknown";

const [TAB, LINE_FEED, RETURN, BLANK, BACKSLASH] = [9, 10, 13, 32, 92];
/** FNV-1a, 32 bits. */
const [FNV_START, FNV_PRIME] = [2166136261, 16777619];

/** Length and checksum of a text without what does no harm. The sidebar waits for it over a million letters: nothing is put aside for one. */
export function sumOf(text: string): string {
  // Looked up once: a global is slow to reach where a script has a context of its own.
  const { imul } = Math;
  let hash = FNV_START;
  let length = 0;
  let last = 0;
  /** So many right before this letter, of which the line may still have an end. */
  let blanks = 0;
  let isNewLine = true;
  // At the beginning of a line blanks say nothing, unless the line before ended within a text.
  let goesOn = false;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === LINE_FEED && text.charCodeAt(at - 1) === RETURN) continue;
    if (code === LINE_FEED || code === RETURN) {
      goesOn = !isNewLine && last === BACKSLASH && blanks === 0;
      isNewLine = true;
      blanks = 0;
    } else if (code === BLANK || code === TAB) {
      if (!isNewLine || goesOn) blanks += 1;
    } else {
      if (isNewLine && length > 0) {
        hash = imul(hash ^ LINE_FEED, FNV_PRIME);
        length += 1;
      }
      for (; blanks > 0; blanks--) {
        hash = imul(hash ^ text.charCodeAt(at - blanks), FNV_PRIME);
        length += 1;
      }
      hash = imul(hash ^ code, FNV_PRIME);
      length += 1;
      last = code;
      isNewLine = false;
    }
  }
  return `${length}:${(hash >>> 0).toString(16)}`;
}

const DIGITS_AT_A_TIME = 12;
/** A prime below 2^33, so that 31 times a remainder and twelve digits stay exact. */
const MODULUS = 8_589_934_583;

/** Length, and a checksum of all digits: what a cell can afford to ask at its every calculation. */
export function quickSumOf(text: string): string {
  const digits = text.replace(/[^0-9]+/g, "");
  let sum = 0;
  for (let at = 0; at < digits.length; at += DIGITS_AT_A_TIME)
    sum = (sum * 31 + Number(digits.slice(at, at + DIGITS_AT_A_TIME))) % MODULUS;
  return `${text.length}:${sum}`;
}

/** A text on which the service that keeps the files shows whether it leaves them as they are. */
export const isAsWritten = (shown: string, written: string): boolean => bare(shown) === bare(written);
const bare = (text: string): string => text.replace(/\s+/g, "");
