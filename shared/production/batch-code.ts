// A code for everything made of one dough for one day, by which a lot leads to products and customers.
import { isoOf } from "./clock.ts";

/** Letters of the dough's name and the day: "Harbour levain loaf" for 5 December 2026 is HLL-261205. Doughs of the same letters get a number. */
export function batchCodes(doughs: readonly string[]): (dough: string, day: number) => string {
  const letters = new Map<string, string>();
  const taken = new Set<string>();
  for (const dough of doughs) {
    if (letters.has(dough)) continue;
    const short = lettersOf(dough);
    let code = short;
    for (let more = 2; taken.has(code); more++) code = `${short}${more}`;
    taken.add(code);
    letters.set(dough, code);
  }
  return (dough, day) => `${letters.get(dough) ?? lettersOf(dough)}-${isoOf(day).slice(2).replace(/-/g, "")}`;
}

/** The first letters of its words, or three of a single one. */
function lettersOf(name: string): string {
  const words = name.split(/[^\p{L}\p{N}]+/u).filter((word) => word !== "");
  const first = words.length === 1 ? (words[0] ?? "").slice(0, 3) : words.map((word) => word.slice(0, 1)).join("");
  return first.toUpperCase().slice(0, 5) || "X";
}
