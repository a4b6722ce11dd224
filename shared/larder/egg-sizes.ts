// The sizes that eggs are named by: "large egg", "eggs, medium".
import type { EggSize } from "../base/volumes.ts";

export const SIZES: ReadonlyMap<string, EggSize> = new Map(
  Object.entries({
    ...{ small: "small", medium: "medium", large: "large", big: "large", xl: "extra large", jumbo: "jumbo" },
  } as const),
);

const WORDS = "extra large|large|medium|small|xl|jumbo";
const FIRST = new RegExp(`^(${WORDS}) `);
const LAST = new RegExp(` (${WORDS})$`);
const EGG = /\begg\b/;

/** An egg's key parted into its size and the rest; undefined for any other key. */
export function partedEgg(key: string): { readonly size: EggSize; readonly rest: string } | undefined {
  if (!key.includes("egg")) return undefined;
  const [before = "", first] = FIRST.exec(key) ?? [];
  const [behind = "", last] = LAST.exec(key) ?? [];
  const parts = [
    [first, key.slice(before.length)],
    [last, key.slice(0, key.length - behind.length)],
  ] as const;
  for (const [word, rest] of parts) {
    if (word === undefined || !EGG.test(rest)) continue;
    return { size: word === "extra large" ? word : (SIZES.get(word) ?? "large"), rest };
  }
  return undefined;
}
