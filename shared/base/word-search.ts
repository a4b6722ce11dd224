// Finding a thing by some of its words, in any order.
import { singularName } from "./words.ts";

export type Findable = { readonly name: string; readonly kind: string; readonly also: readonly string[] };

/**
 * How a thing answers a search: null where it does not, "" where its name and kind hold every word, otherwise the other
 * name that does (or the first that holds some word, where only all of them together do).
 */
export function foundAs({ name, kind, also }: Findable, search: string): string | null {
  const wanted = singularName(search)
    .split(" ")
    .filter((word) => word !== "");
  const holds = (text: string, word: string) => singularName(text).includes(word);
  const words = `${name} ${kind}`;
  if (wanted.every((word) => holds(words, word))) return "";
  const other = also.find((one) => wanted.every((word) => holds(`${one} ${kind}`, word)));
  if (other !== undefined) return other;
  const rest = wanted.filter((word) => !holds(words, word));
  const helping = rest.map((word) => also.find((one) => holds(one, word)));
  return helping.every((one) => one !== undefined) ? (helping[0] ?? "") : null;
}
