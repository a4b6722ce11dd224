/** Every kind of space a keyboard, a web page or a word processor may leave in a cell. */
export const SPACES = /[\s\u00a0\u1680\u180e\u2000-\u200d\u202f\u205f\u2060\u3000\ufeff]+/g;
const ONLY_SPACES = /^[\s\u00a0\u1680\u180e\u2000-\u200d\u202f\u205f\u2060\u3000\ufeff]*$/;
export const isOnlySpaces = (text: string): boolean => ONLY_SPACES.test(text);

/** Plain letters and signs in single spaces, which have nothing to fold but their case. */
const PLAIN = /^[!-~]+(?: [!-~]+)*$/;

/** Without case, accents, odd or doubled spaces. */
export function foldText(text: string): string {
  if (PLAIN.test(text)) return text.toLowerCase();
  return text
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(SPACES, " ")
    .trim();
}

/** The form two spellings of one name share: case, accents, odd or doubled spaces, hyphens and commas do not count. */
export function plainName(text: string): string {
  return foldText(text)
    .replace(/[-‐‑–,]/g, " ")
    .replace(/ {2,}/g, " ")
    .trim();
}

/** The plain name without a plural s on any word, so that "eggs" is "egg", "boxes" are "box" and "molasses" stays one word for both. */
export function singularName(text: string): string {
  if (ONE_WORD.test(text)) {
    const end = text.length - 1;
    if (text[end] !== "s" || end < 2) return text;
    if (text[end - 1] === "e" && text[end - 2] === "x") return text.slice(0, end - 1);
    return LETTERS.test(text.slice(end - 2, end)) ? text.slice(0, end) : text;
  }
  const known = SINGULAR.get(text);
  if (known !== undefined) return known;
  const singular = plainName(text).replace(/(?:(?<=x)e|(?<=[a-z]{2}))s(?= |$)/g, "");
  if (SINGULAR.size < MAX_CACHED && text.length < MAX_CACHED_LENGTH) SINGULAR.set(text, singular);
  return singular;
}

/** Most names asked for are one word in small letters, with nothing to fold but an s. */
const ONE_WORD = /^[a-z0-9]+$/;
const LETTERS = /^[a-z]+$/;

/** Recipes repeat their few words over and over; so many of them, and none of odd length, are kept. */
const SINGULAR = new Map<string, string>();
const MAX_CACHED = 4000;
const MAX_CACHED_LENGTH = 40;

/** The known words that are spelled most like this one, the nearest first. */
export function nearest(word: string, known: readonly string[], count = 3): string[] {
  const wanted = singularName(word);
  const limit = Math.max(2, Math.ceil(wanted.length / 3));
  return known
    .map((name) => {
      const other = singularName(name);
      // Spellings are at least as far apart as their lengths, so that a long text is not compared letter by letter.
      const isFar = Math.abs(other.length - wanted.length) > limit;
      return { name, other, away: isFar ? Number.POSITIVE_INFINITY : distance(wanted, other, limit) };
    })
    .filter(({ other, away }) => away <= limit || other.includes(wanted))
    .sort((a, b) => a.away - b.away)
    .slice(0, count)
    .map(({ name }) => name);
}

/** Levenshtein's edit distance; infinite where it is more than the limit. */
function distance(a: string, b: string, limit: number): number {
  let before = Array.from({ length: b.length + 1 }, (_, column) => column);
  let now = before.slice();
  for (let row = 1; row <= a.length; row++) {
    now[0] = row;
    // Each row's least is at least that of the row before.
    let least = row;
    for (let column = 1; column <= b.length; column++) {
      const swap = (before[column - 1] ?? 0) + (a[row - 1] === b[column - 1] ? 0 : 1);
      const away = Math.min(swap, (before[column] ?? 0) + 1, (now[column - 1] ?? 0) + 1);
      now[column] = away;
      if (away < least) least = away;
    }
    if (least > limit) return Number.POSITIVE_INFINITY;
    [before, now] = [now, before];
  }
  return before[b.length] ?? 0;
}

/** What a cell says; "" where it holds no text. */
export const trimmedText = (cell: unknown): string => (typeof cell === "string" ? cell.trim() : "");
