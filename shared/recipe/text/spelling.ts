// The ingredient that a misspelt name most likely means.

import { singularName } from "../../base/words.ts";
import { findIngredient, knownWords, type Larder } from "../../larder/larder.ts";
import { typeOf } from "./types.ts";

const byLength = new WeakMap<Larder, ReadonlyMap<number, readonly string[]>>();

function wordsByLength(larder: Larder): ReadonlyMap<number, readonly string[]> {
  const before = byLength.get(larder);
  if (before !== undefined) return before;
  const grouped = new Map<number, string[]>();
  for (const word of knownWords(larder)) {
    if (!/^\p{L}{3,}$/u.test(word)) continue;
    const group = grouped.get(word.length);
    if (group === undefined) grouped.set(word.length, [word]);
    else group.push(word);
  }
  byLength.set(larder, grouped);
  return grouped;
}

const heard = new Map<string, readonly string[]>();
const MAX_HEARD = 500;

/** Known words one slip of the pen away, two in a long word; a swap of neighbours is one. */
function nearWords(larder: Larder, word: string): readonly string[] {
  const key = `${larder.rows.length} ${word}`;
  const before = heard.get(key);
  if (before !== undefined) return before;
  const limit = word.length >= 7 ? 2 : 1;
  const near: { word: string; away: number }[] = [];
  for (let length = word.length - limit; length <= word.length + limit; length++) {
    for (const one of wordsByLength(larder).get(length) ?? []) {
      const away = slips(word, one, limit);
      if (away <= limit) near.push({ word: one, away });
    }
  }
  const words = near.sort((a, b) => a.away - b.away).map((one) => one.word);
  if (heard.size >= MAX_HEARD) heard.clear();
  heard.set(key, words);
  return words;
}

function slips(one: string, other: string, limit: number): number {
  let before: number[] = [];
  let now = Array.from({ length: other.length + 1 }, (_, at) => at);
  for (let row = 1; row <= one.length; row++) {
    const last = before;
    before = now;
    now = [row];
    let least = row;
    for (let at = 1; at <= other.length; at++) {
      const same = one[row - 1] === other[at - 1] ? 0 : 1;
      let value = Math.min((before[at] ?? 0) + 1, (now[at - 1] ?? 0) + 1, (before[at - 1] ?? 0) + same);
      const isSwap = row > 1 && at > 1 && one[row - 1] === other[at - 2] && one[row - 2] === other[at - 1];
      if (isSwap) value = Math.min(value, (last[at - 2] ?? 0) + 1);
      now.push(value);
      least = Math.min(least, value);
    }
    if (least > limit) return limit + 1;
  }
  return now[other.length] ?? limit + 1;
}

/** Names the tables know that this one is a slip away from, the nearest first; empty where it is a name of its own. */
export function meantNames(larder: Larder, name: string): string[] {
  const known = knownWords(larder);
  const words = singularName(name).split(" ").slice(0, 4);
  const meant = new Set<string>();
  words.forEach((word, at) => {
    if (known.has(word) || !/^\p{L}{4,}$/u.test(word) || typeOf(word, word).word !== "") return;
    for (const near of nearWords(larder, word).slice(0, 6)) {
      const repaired = words.map((one, place) => (place === at ? near : one)).join(" ");
      const spelled = findIngredient(larder, repaired) === undefined ? undefined : repaired;
      if (spelled !== undefined) meant.add(spelled);
    }
  });
  return [...meant].slice(0, 3);
}
