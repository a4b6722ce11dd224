// Bytes in letters that an HTML page and a script keep as they are; the build writes them, the page reads them.

/** " & ' - / < > backslash and backtick: what could end a text, or begin or end a comment. */
const LEFT_OUT = [34, 38, 39, 45, 47, 60, 62, 92, 96];
/** 85 printable letters. */
export const LETTERS = Array.from({ length: 94 }, (_, at) => 33 + at)
  .filter((code) => !LEFT_OUT.includes(code))
  .map((code) => String.fromCharCode(code))
  .join("");

/** Five letters are four bytes; what is left at the end has one letter more than bytes. */
export function bytesOf(letters: string): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(Math.floor((letters.length * 4) / 5));
  const values = new Map(Array.from(LETTERS, (letter, value) => [letter, value]));
  for (let from = 0, to = 0; from < letters.length; from += 5, to += 4) {
    let four = 0;
    for (let at = from; at < from + 5; at++) four = four * 85 + (values.get(letters[at] ?? "") ?? 84);
    for (let at = 0; at < 4 && to + at < bytes.length; at++) bytes[to + at] = Math.floor(four / 256 ** (3 - at)) % 256;
  }
  return bytes;
}

/** Stands between the parts of what is packed, and in none of them. */
export const PARTED = "\u0000";

export const canUnpack = (): boolean => typeof DecompressionStream !== "undefined";

/** Deflated text in letters, as it was. */
export async function unpacked(letters: string): Promise<string> {
  const stream = new Blob([bytesOf(letters)]).stream().pipeThrough(new DecompressionStream("deflate"));
  return new Response(stream).text();
}
