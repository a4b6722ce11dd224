// A text in few letters that an HTML page and a script keep as they are; the build writes them, the page reads them.
import { CERTAIN, foretold } from "./foretold.ts";

/** " & ' - / < > backslash and backtick: what could end a text, or begin or end a comment. */
const LEFT_OUT = [34, 38, 39, 45, 47, 60, 62, 92, 96];
/** 85 printable letters. */
const LETTERS = Array.from({ length: 94 }, (_, at) => 33 + at)
  .filter((code) => !LEFT_OUT.includes(code))
  .map((code) => String.fromCharCode(code));
const BASE = 85;
/** All letters together are one long fraction; this many of them are in hand at a time (arithmetic coding). */
const IN_HAND = 6;
const LEAST = BASE * BASE * BASE * BASE * BASE;

/** Stands between the parts of what is packed, and in none of them. */
export const PARTED = "\u0001";
/** Stands behind it. */
const END = 0;

/** How much of the fraction's range is for a bit that is 1. */
const forOne = (range: number, chance: number): number => Math.floor(range / CERTAIN) * chance;

export function packed(text: string): string {
  const model = foretold();
  const digits: number[] = [];
  let low = 0;
  let range = LEAST * BASE;
  const write = (bit: number) => {
    const one = forOne(range, model.chance());
    model.learn(bit);
    if (bit === 0) low += one;
    range = bit === 0 ? range - one : one;
    if (low >= LEAST * BASE) {
      low -= LEAST * BASE;
      let at = digits.length - 1;
      for (; digits[at] === BASE - 1; at--) digits[at] = 0;
      digits[at] = (digits[at] ?? 0) + 1;
    }
    for (; range < LEAST; range *= BASE) shift();
  };
  const shift = () => {
    digits.push(Math.floor(low / LEAST));
    low = (low % LEAST) * BASE;
  };
  for (const byte of [...new TextEncoder().encode(text), END])
    for (let place = 7; place >= 0; place--) write((byte >> place) & 1);
  for (let left = 0; left < IN_HAND; left++) shift();
  return digits.map((digit) => LETTERS[digit]).join("");
}

/** The text that was packed. Throws where a letter is missing, or is not one of them, or the text ends too early. */
export function unpacked(letters: string): string {
  const model = foretold();
  const digits = new Map(LETTERS.map((letter, digit) => [letter, digit]));
  const bytes: number[] = [];
  let read = 0;
  let value = 0;
  const shift = () => {
    const digit = digits.get(letters.charAt(read++));
    if (digit === undefined) throw new Error("a letter is missing");
    value = value * BASE + digit;
  };
  while (read < IN_HAND) shift();
  for (let range = LEAST * BASE; bytes[bytes.length - 1] !== END; ) {
    let byte = 0;
    for (let place = 7; place >= 0; place--) {
      const one = forOne(range, model.chance());
      const bit = value < one ? 1 : 0;
      model.learn(bit);
      if (bit === 0) value -= one;
      range = bit === 0 ? range - one : one;
      for (; range < LEAST; range *= BASE) shift();
      byte = byte * 2 + bit;
    }
    bytes.push(byte);
  }
  if (read < letters.length) throw new Error("letters are left over");
  return new TextDecoder().decode(new Uint8Array(bytes.slice(0, -1)));
}
