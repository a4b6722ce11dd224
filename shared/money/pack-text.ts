// Packs in words, as price lists spell them: "12 x 750 ml", "6/5 lb", "2 bags (25 kg)", "15 dozen".
import { type Fault, fault } from "../base/refusal.ts";
import { quote } from "../base/show.ts";
import { type Grams, grams } from "../base/units.ts";
import type { CupSystem } from "../base/volumes.ts";
import { findIngredient, type Larder } from "../larder/larder.ts";
import { lineWeigher } from "../recipe/grams.ts";
import { type Token, tokensOf } from "../recipe/tokens.ts";
import { isPackWord, readUnit } from "../recipe/units.ts";

/** These hold a sixth to a fifth more in the UK than in the US. */
const UNCLEAR_VOLUME = /(?<!\p{L})(fl\.? ?oz|fluid|gill|pint|pt|quart|qt|gallon|gal)s?(?!\p{L})/iu;

/** Grams in a pack, or what stands in the way, as a predicate. */
export function spelledPack(line: string, name: string | null, larder: Larder, cups: CupSystem): Grams | Fault {
  const unclear = (says: string): Fault => fault(`is ${quote(line)}: ${says}`);
  if (!/[\d¼-¾⅐-⅞]|dozen/i.test(line) || /^[-−–]/.test(line)) return unclear('no size; enter one such as "5 lb"');
  if (/\d ?t\b/i.test(line)) return unclear('a tonne, or a teaspoon? Enter "1000 kg" for a tonne');
  const order = isCountedBehind(line) ? undefined : asRecipe(line);
  if (order === undefined) return unclear('one pack, or several? Enter "2 x 3 kg" for two of 3 kg');
  const unread = unreadCount(order, name, larder);
  if (unread !== undefined) return unclear(`how much is ${quote(unread)}? Enter "24 x 500 g" or "30 pieces"`);
  const open = order.replace(/\([^)]*\)/g, "");
  const country = /\b(?:(uk|imperial|british)|us|american)\b/i.exec(order);
  const volume = UNCLEAR_VOLUME.exec(open)?.[1];
  if (volume !== undefined && country === null) return unclear(`say "US" or "UK" before ${volume}`);
  // "2 x 5 lb 4 oz": the packs multiply the whole of it.
  const [packs = ""] = /^(?:\d+ ?[x×*] ?)*(?=[\d½¼¾])/i.exec(order) ?? [];
  const count = (packs.match(/\d+/g) ?? []).reduce((all, one) => all * Number(one), 1);
  const weigh = lineWeigher(country === null ? cups : country[1] === undefined ? "US" : "UK", larder);
  const each = weigh(order.slice(packs.length), name);
  // "6 x 500 g (3 kg)" tells the whole in its brackets.
  const isWhole = packs !== "" && each.is === "weighed" && each.remarks.length > 0;
  const [weighed, times] = isWhole ? [weigh(order, name), 1] : [each, count];
  if (weighed.is !== "weighed") return unclear(weighed.says);
  const says =
    weighed.unsure ?? weighed.remarks[0]?.says ?? (weighed.least < weighed.most ? "a range; enter one size" : "");
  if (says !== "") return unclear(says);
  return weighed.least * times > 0 ? grams(weighed.least * times) : unclear("a pack weighs more than 0 g");
}

/**
 * Spellings of price lists as a recipe would write them: "6/5 lb" and "6 tubs of 5 lb" are 6 x 5 lb, "250 g x 40" is 40 x
 * 250 g. Undefined where a slash or brackets may stand for either.
 */
function asRecipe(line: string): string | undefined {
  const plain = line.replace(/\bu\.([sk])\.?/gi, "u$1").replace(/^(\d+) ?each$/i, "$1 pieces");
  const [, size, times] = /^(.*\p{L}.*?) ?[x×*] ?(\d+)$/iu.exec(plain) ?? [];
  if (size !== undefined) return `${times} x ${size}`;
  const [slash, packs = "", each = ""] = /^(\d+) ?\/ ?(\d+(?:[.,]\d+)?)(?= ?\p{L}|$)/u.exec(plain) ?? [];
  if (slash !== undefined) {
    if (Number(packs) >= Number(each.replace(",", ".")) || /\D/.test(each))
      return `${packs} x ${each}${plain.slice(slash.length)}`;
    // A half or a quarter is a fraction; 2/3 kg and 1/50 lb may be two packs of three kilograms, one of fifty pounds.
    return packs === "1" && ["2", "3", "4", "8", "16"].includes(each) ? plain : undefined;
  }
  // "2 bags (25 kg)": what stands behind packs is the weight of each, unless it is said to be all of it.
  const [inBrackets, many = "", inside = ""] = /^(\d+) ?\p{L}+\.? ?\((\d[^()]*)\)$/u.exec(plain) ?? [];
  const unit = inBrackets === undefined ? undefined : readUnit(tokensOf(inBrackets), 1)?.unit;
  if (unit?.of === "count" && isPackWord(unit.word) && !/each|total|together|in all/i.test(inside))
    return `${many} x ${inside}`;
  const [counted, count, word = ""] = /^(\d+) ?(\p{L}+)\.? (?:of |x |à )?(?=\d)/iu.exec(plain) ?? [];
  // "2 to 3 kg" is no two packs of 3 kg.
  if (counted === undefined || JOINING.test(word) || isMeasured(tokensOf(counted), 1)) return plain;
  return `${count} x ${/^doz/i.test(word) ? "12 x " : ""}${plain.slice(counted.length)}`;
}

/** "500 g (12)", "5 kg, 2 bags": a number behind the size may be how many there are, or what is in one. */
function isCountedBehind(line: string): boolean {
  if (/\p{L}\.? ?\(\d+\)$/u.test(line)) return true;
  const [, counted] = /\d ?\p{L}+\.? ?[,;] ?(\d+ ?\p{L}+)$/u.exec(line) ?? [];
  const unit = counted === undefined ? undefined : readUnit(tokensOf(counted), 1)?.unit;
  return unit?.of === "count" && unit.word !== "";
}

const JOINING = /^(?:to|or|and|plus|less|minus|by|with|bis|oder|und|ou|et)$/i;

function isMeasured(tokens: readonly Token[], at: number): boolean {
  const unit = readUnit(tokens, at)?.unit.of;
  return unit === "weight" || unit === "volume";
}

const COUNTING = /^(?:doz|dozen|x|ct|count|each|of|size|tray)$/;

/** What a pack that is only counted says beside numbers and the ingredient's name: nobody knows what "1 case" holds. */
function unreadCount(order: string, name: string | null, larder: Larder): string | undefined {
  const tokens = tokensOf(order.replace(/^\p{L}+ of (?=\d)/u, ""));
  if (tokens.some((_, at) => isMeasured(tokens, at))) return undefined;
  const words = tokens.flatMap((token, at) =>
    token.is === "word" && !COUNTING.test(token.low) && readUnit(tokens, at) === undefined ? [token.text] : [],
  );
  const label = words.join(" ");
  if (label === "" || (name === null && findIngredient(larder, label) !== undefined)) return undefined;
  const meant = name === null ? undefined : findIngredient(larder, name)?.name;
  return meant !== undefined && findIngredient(larder, label)?.name === meant ? undefined : label;
}
