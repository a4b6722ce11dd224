// Which recipe of an edited text is which: choices stay with theirs, wherever it stands and whatever it is called now.

export type RecipeKey = { readonly key: string; readonly title: string };

/** So many lines may differ where somebody types. */
const TYPED = 2;

/** Recipes go by their names; one whose name is being typed by its place. */
export function keysOf(titles: readonly string[], before: readonly RecipeKey[], isTyped: boolean): RecipeKey[] {
  const left = new Set(before);
  const same = titles.map((title) => {
    const one = [...left].find((old) => old.title === title);
    if (one !== undefined) left.delete(one);
    return one;
  });
  let last = Math.max(0, ...before.map(({ key }) => Number(key)));
  return titles.map((title, at) => {
    const old = before[at];
    const isHere = isTyped && titles.length === before.length && old !== undefined && left.has(old);
    const known = same[at] ?? (isHere ? old : undefined);
    if (known !== undefined) return { key: known.key, title };
    last += 1;
    return { key: String(last), title };
  });
}

/** Whether somebody types: all lines but one or two beside each other stay. */
export function isTyping(before: string, after: string): boolean {
  const [old, now] = [before.split("\n"), after.split("\n")];
  const least = Math.min(old.length, now.length);
  let start = 0;
  while (start < least && old[start] === now[start]) start += 1;
  let end = 0;
  while (end < least - start && old[old.length - 1 - end] === now[now.length - 1 - end]) end += 1;
  return Math.max(old.length, now.length) - start - end <= TYPED;
}
