// A code for everything made of one product for one day, by which a lot leads to products and customers.
import { isoOf } from "./clock.ts";

/** Letters of each product's title, in the order of the formula list. Products of the same letters get a number. */
export function batchLetters(titles: readonly string[]): readonly string[] {
  const taken = new Set<string>();
  return titles.map((title) => {
    const short = lettersOf(title);
    let code = short;
    for (let more = 2; taken.has(code); more++) code = `${short}${more}`;
    taken.add(code);
    return code;
  });
}

type Named = { readonly name: string; readonly title: string };

/** Letters and the day: "Harbour levain loaf" for 5 December 2026 is HLL-261205. */
export function batchCodes(products: readonly Named[]): (name: string, day: number) => string {
  const all = batchLetters(products.map(({ title }) => title));
  const letters = new Map(products.map(({ name }, at) => [name, all[at]]));
  return (name, day) => `${letters.get(name) ?? lettersOf(name)}-${isoOf(day).slice(2).replace(/-/g, "")}`;
}

/** The first letters of its words, or three of a single one. */
function lettersOf(name: string): string {
  const words = name.split(/[^\p{L}\p{N}]+/u).filter((word) => word !== "");
  const first = words.length === 1 ? (words[0] ?? "").slice(0, 3) : words.map((word) => word.slice(0, 1)).join("");
  return first.toUpperCase().slice(0, 5) || "X";
}
