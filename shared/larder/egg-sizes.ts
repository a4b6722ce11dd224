// The sizes that eggs are named by: "large egg", "eggs, medium".
import type { EggSize } from "../base/volumes.ts";

export const SIZES: ReadonlyMap<string, EggSize> = new Map(
  Object.entries({
    ...{ small: "small", medium: "medium", large: "large", big: "large", xl: "extra large", jumbo: "jumbo" },
  } as const),
);

const WORDS = "extra large|large|medium|small|xl|jumbo";
const SIZED = new RegExp(`^(?:(${WORDS}) (.*\\begg\\b.*)|(.*\\begg\\b.*?) (${WORDS}))$`);

/** An egg's key parted into its size and the rest; undefined for any other key. */
export function partedEgg(key: string): { readonly size: EggSize; readonly rest: string } | undefined {
  if (!key.includes("egg")) return undefined;
  const [, before, behind, front, after] = SIZED.exec(key) ?? [];
  const word = before ?? after;
  if (word === undefined) return undefined;
  return { size: word === "extra large" ? word : (SIZES.get(word) ?? "large"), rest: behind ?? front ?? "" };
}
