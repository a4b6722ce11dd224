import { gramsIn } from "../base/units.ts";
import type { CupSystem, EggSize } from "../base/volumes.ts";
import { singularName } from "../base/words.ts";
import { SIZES } from "../larder/egg-sizes.ts";
import { EXACT, LOOSE, preparationsIn, SYSTEMS } from "./measure-words.ts";
import { isMark, isWord, type Token } from "./tokens.ts";
import { BEGINNINGS, BY_SPELLING, FIRST_WORDS, PACK_WORDS, type Unit } from "./unit-words.ts";

/** A pack's word, or a square's: a weight beside several of them is the weight of each. */
export const isPackWord = (word: string): boolean => PACK_WORDS.has(word) || word === "square";

/** Every word that may stand between a number and its unit. */
const BESIDE: ReadonlySet<string> = new Set(["extra", ...SIZES.keys(), ...SYSTEMS.keys(), ...LOOSE, ...EXACT]);

export type UnitRead = { readonly unit: Unit; readonly next: number };

/** The unit that stands at a place of the line, with the words before it that belong to it; its "of" is passed over. */
export function readUnit(tokens: readonly Token[], start: number): UnitRead | undefined {
  let at = isMark(tokens[start], "-") && tokens[start + 1]?.is === "word" ? start + 1 : start;
  if (isMark(tokens[at], "#") && tokens[at]?.spaced === false) {
    return { unit: { of: "weight", grams: gramsIn("lb"), fine: false }, next: passOf(tokens, at + 1) };
  }
  let size: EggSize | undefined;
  let system: CupSystem | undefined;
  let loose: string | undefined;
  const filled: string[] = [];
  for (let passed = 0; passed < 4; passed++, at++) {
    if (isMark(tokens[at], "-") && !tokens[at]?.spaced) continue;
    const token = tokens[at];
    const low = token?.is === "word" ? token.low : "";
    if (!BESIDE.has(low)) break;
    const isExtra = low === "extra" && isWord(tokens[isMark(tokens[at + 1], "-") ? at + 2 : at + 1], "large");
    if (isExtra) {
      at += isMark(tokens[at + 1], "-") ? 2 : 1;
      size = "extra large";
    } else if (SIZES.has(low)) size = SIZES.get(low);
    else if (SYSTEMS.has(low)) system = SYSTEMS.get(low);
    else if (LOOSE.has(low)) loose = low;
    else if (EXACT.has(low)) filled.push(low);
    else break;
  }
  if (tokens[at]?.text === "L") {
    // "2 L eggs" are large ones; "1 L egg" may be a litre of egg.
    if (isBeforeEgg(tokens, at + 1, "eggs")) return { unit: { of: "count", word: "", size: "large" }, next: at + 1 };
    if (isBeforeEgg(tokens, at + 1, "egg")) loose ??= "L";
  }
  const unitMatch = matched(tokens, at);
  if (unitMatch !== undefined && !isName(unitMatch.unit, tokens, unitMatch.next)) {
    const next = passOf(tokens, unitMatch.next);
    if (at === start && loose === undefined) return { unit: unitMatch.unit, next };
    const [preparation] = preparationsIn(filled);
    const unit = {
      ...unitMatch.unit,
      ...(unitMatch.unit.of === "volume" && system !== undefined ? { system } : {}),
      ...(unitMatch.unit.of === "volume" && preparation !== undefined ? { preparation } : {}),
      ...(unitMatch.unit.of === "count" && size !== undefined ? { size } : {}),
      ...(unitMatch.unit.of !== "weight" && loose !== undefined ? { loose } : {}),
    };
    return { unit, next };
  }
  return size === undefined ? undefined : { unit: { of: "count", word: "", size }, next: at };
}

/** Whether the word stands here, or behind words such as "free-range". */
function isBeforeEgg(tokens: readonly Token[], at: number, word: string): boolean {
  for (let next = at; next < at + 4; next++) {
    if (isWord(tokens[next], word)) return true;
    if (tokens[next]?.is !== "word" && !isMark(tokens[next], "-")) return false;
  }
  return false;
}

function matched(tokens: readonly Token[], at: number): { unit: Unit; next: number } | undefined {
  const first = tokens[at];
  if (first?.is !== "word") return undefined;
  // The one spelling that case decides: T is a tablespoon, t a teaspoon.
  if (first.text === "T" || first.text === "t") {
    return {
      unit: { of: "volume", unit: first.text === "T" ? "tbsp" : "tsp", fine: false },
      next: passDot(tokens, at + 1),
    };
  }
  const start = FIRST_WORDS.get(first.low);
  if (start === undefined) return undefined;
  let unitMatch: { unit: Unit; next: number } | undefined;
  let spelling = "";
  let next = at;
  for (let token: Token | undefined = first; token?.is === "word"; token = tokens[next]) {
    spelling = spelling === "" ? start : `${spelling} ${singularName(token.low)}`;
    next = passDot(tokens, next + 1);
    const unit = BY_SPELLING.get(spelling);
    if (unit !== undefined) unitMatch = { unit, next };
    if (!BEGINNINGS.has(spelling)) break;
  }
  return unitMatch;
}

/** "cake flour", "bar" and "block" name ingredients too: a cake is a unit beside yeast only. */
function isName(unit: Unit, tokens: readonly Token[], next: number): boolean {
  if (unit.of !== "count" || unit.word !== "cake") return false;
  return !tokens.slice(next, next + 4).some((token) => isWord(token, "yeast"));
}

function passDot(tokens: readonly Token[], at: number): number {
  return isMark(tokens[at], ".") && !tokens[at]?.spaced ? at + 1 : at;
}

const passOf = (tokens: readonly Token[], at: number): number => (isWord(tokens[at], "of", "de") ? at + 1 : at);

/** Whether a pack's word stands here: "1 14-oz can". */
export function readPack(tokens: readonly Token[], at: number): number | undefined {
  const start = isMark(tokens[at], "-") ? at + 1 : at;
  const unitMatch = matched(tokens, start);
  if (unitMatch?.unit.of !== "count" || !PACK_WORDS.has(unitMatch.unit.word)) return undefined;
  // "1 cup cake flour", "2 oz cake yeast": the word is part of the name.
  if (unitMatch.unit.word === "cake" && isWord(tokens[unitMatch.next], "flour", "flours", "yeast")) return undefined;
  return passOf(tokens, unitMatch.next);
}
