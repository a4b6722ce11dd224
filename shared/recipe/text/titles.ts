// The recipe's name, with what it makes where that stands beside it.

import { type Draft, hasAmount, ignore, looksLikeRow, type Place, takeYield } from "./draft.ts";
import { listedRows } from "./inline.ts";
import type { Reading } from "./row.ts";
import { readRow } from "./row.ts";
import type { SourceLine } from "./source-lines.ts";
import { isStep } from "./steps.ts";
import { yieldIn } from "./yields.ts";

export const titleIn = (text: string): string =>
  text
    .replace(/^(?:title|recipe|name|formula|product|recipe name)\s*[:–-]\s*/i, "")
    .replace(/[([](?:makes|serves|yields?|for|in|all|g|grams|kg)\b[^)\]]*[)\]]?$/i, "")
    .replace(/[\s:;,.–—|-]+$/, "")
    .slice(0, 80)
    .trim();

function isTitle(line: SourceLine, reading: Reading, next: readonly SourceLine[]): boolean {
  const { text } = line;
  if (text.split(" ").length > 12 || text.length > 90 || !/\p{L}{2}/u.test(text)) return false;
  if (line.isListed || line.isNumbered || /[.!?]$/.test(text)) return false;
  const read = readRow(text, reading);
  if (read.grams !== null || read.percent !== null || (read.bare !== null && read.isKnown)) return false;
  if (read.isKnown && !looksLikeRow(next.find(({ text: one }) => one !== ""))) return false;
  return !isStep(text, false, false) || line.isMarked;
}

/** A name with what it makes behind it: "Bagels – 24 pcs @ 110 g", "Soda bread (makes 1 loaf)". */
function headYield(text: string) {
  const found =
    /^(.*?\p{L}{3}.*?)(?:[([]([^()[\]]+)[)\]]|\s[–—-]\s*([^–—]+)|,\s*([^,]*\d[^,]*)|\s((?:makes|yields?|for)\s+\S.*))$/iu.exec(
      text,
    );
  const said = found?.[2] ?? found?.[3] ?? found?.[4] ?? found?.[5];
  const made = said === undefined ? undefined : yieldIn(said.trim());
  return made === undefined || found === null || hasAmount(found[1] ?? "")
    ? undefined
    : { made, title: found[1] ?? "" };
}

export function takeTitle({ draft, line, reading, next, isFirst }: Place): boolean {
  if (!isFirst || listedRows(line.text, reading) !== undefined) return false;
  const head = headYield(line.text);
  if (head === undefined && !isTitle(line, reading, next)) return false;
  if (head !== undefined) takeYield(draft, head.made);
  draft.title = titleIn(head?.title ?? line.text);
  return ignore(draft, line, "title");
}

/** A line that states the unit may be the name as well: "White dough (kg)". */
export function takeStated(draft: Draft, line: SourceLine, mayBeTitle: boolean): void {
  const isTitleToo = mayBeTitle && draft.title === "" && draft.rows.length === 0;
  if (isTitleToo) draft.title = titleIn(line.text);
  ignore(draft, line, isTitleToo ? "title" : "unit");
}
