import { isMark, isWord, type Token } from "./tokens.ts";
import { readUnit } from "./units.ts";

const NOT_AMOUNTS: ReadonlySet<string> = new Set(
  (
    "inch inches cm mm min mins minute minutes hour hours hr hrs day days times people servings portions " +
    "degrees degree f celsius"
  ).split(" "),
);
const NUMBERED = new Set("type typ tipo no nr number size grade at step".split(" "));

/** Numbers that are no amounts: temperatures, lengths, times, percentages, flour types. */
export function passNeutral(tokens: readonly Token[], at: number): number | undefined {
  if (tokens[at]?.is !== "number") return undefined;
  let end = at;
  while (tokens[end]?.is === "number" || (isMark(tokens[end], "-/") && tokens[end + 1]?.is === "number")) end += 1;
  const next = tokens[end];
  if (isMark(next, '%°º℃℉"″')) {
    const letter = isMark(next, "°º") && isWord(tokens[end + 1], "c", "f") ? 1 : 0;
    return end + 1 + letter;
  }
  const word = isMark(next, "-") ? tokens[end + 1] : next;
  // "3 times 100 g" multiplies.
  if (isWord(word, "times") && (at === 0 || tokens[end + 1]?.is === "number")) return undefined;
  if (word?.is === "word" && NOT_AMOUNTS.has(word.low)) return isMark(next, "-") ? end + 2 : end + 1;
  const last = at > 0 ? tokens[at - 1] : undefined;
  const before = isMark(last, ".#") && at > 1 ? tokens[at - 2] : last;
  if (before?.is !== "word" || !NUMBERED.has(before.low)) return undefined;
  // "type 550 500 g": the first number alone.
  if (tokens[at + 1]?.is === "number") return at + 1;
  if (readUnit(tokens, end)?.unit.of === "weight") return undefined;
  return isWord(before, "at") && isWord(next, "c") ? end + 1 : end;
}
