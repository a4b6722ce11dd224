// The larder's table as Code.js carries it, at half its size: every formula cell loads that file. The build packs, see src/build/packed-larder.ts.

/** Digits after the point of the figures of a line, from water to ash. */
export const DECIMALS = [2, 2, 2, 3, 2, 2, 1, 0, 0, 2] as const;

/** A figure is written in letters: those of its leading digits, then one that ends it. 0 is a blank, 1 the figure 0. */
export const LEADING = { first: 35, many: 57 };
export const ENDING = { first: 93, many: 34 };
const FIGURE = /[#-[]*[\]-~]/g;

/** Signs that stand for an entry where the letters of `signs` are used up: two bytes each, and none that another way of writing changes. */
const MORE_SIGNS = 0x250;
export const MOST_SIGNS = 0x2ff - 0x250;
export const signOf = (at: number, signs: string): string =>
  signs[at] ?? String.fromCharCode(MORE_SIGNS + at - signs.length);
export const BETWEEN = "|";

/**
 * The lines of the table, without the numbers of their source. `text` holds a line's words, in which signs stand for
 * entries, and entries for signs before theirs; `figures` the ten figures of each line.
 */
export function unpackedLarder(text: string, signs: string, entries: string, figures: string): string[] {
  const parts = entries.split(BETWEEN);
  const words = parts.reduceRight((all, part, at) => all.split(signOf(at, signs)).join(part), text);
  const read = figures.match(FIGURE) ?? [];
  return words.split("\n").map((line, row) => {
    const [name, kind, ...rest] = line.split("\t");
    const own = DECIMALS.map((decimals, at) => figure(read[row * DECIMALS.length + at] ?? "", decimals));
    return [name, kind, "", ...own, ...rest].join("\t");
  });
}

function figure(letters: string, decimals: number): string {
  let value = 0;
  for (let at = 0; at < letters.length; at++) {
    const code = letters.charCodeAt(at);
    value =
      code < ENDING.first ? value * LEADING.many + code - LEADING.first : value * ENDING.many + code - ENDING.first;
  }
  if (value === 0) return "";
  const digits = String(value - 1).padStart(decimals + 1, "0");
  return `${digits.slice(0, digits.length - decimals)}.${digits.slice(digits.length - decimals)}`;
}
