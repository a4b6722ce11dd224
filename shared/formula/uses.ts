// Which formula sheets use which as ingredients, by their titles; what runs in a circle is named and not followed.

export type Using = { readonly title: string; readonly ingredients: readonly string[] };
export type Uses = {
  /** For each sheet the places of those that it uses, each once, in the order of its ingredients. */
  readonly used: readonly (readonly number[])[];
  /** Titles in a circle, the first again at the end; one circle of those that hang together. */
  readonly circles: readonly (readonly string[])[];
  /** Titles that ingredients have and several sheets: none of them is meant for sure. */
  readonly twice: readonly string[];
};

/** As the sheets compare names: capitals and odd spaces aside. */
export const plainName = (name: string): string =>
  name
    .replace(/\u00a0/g, " ")
    .trim()
    .replace(/ +/g, " ")
    .toLowerCase();

export function usesOf(sheets: readonly Using[]): Uses {
  const byTitle = new Map<string, number[]>();
  sheets.forEach(({ title }, at) => {
    const key = plainName(title);
    if (key !== "") byTitle.set(key, [...(byTitle.get(key) ?? []), at]);
  });
  const twice = new Set<string>();
  const wanted = sheets.map(({ title, ingredients }) => {
    const places = ingredients.flatMap((name) => {
      // A starter that is fed with itself is no circle.
      const named = plainName(name) === plainName(title) ? [] : (byTitle.get(plainName(name)) ?? []);
      if (named.length > 1) twice.add(sheets[named[0] ?? 0]?.title ?? name);
      return named.length === 1 ? named : [];
    });
    return [...new Set(places)];
  });
  const group = groupsOf(wanted);
  const isCircle = (from: number, to: number) => group[from] === group[to];
  const circles = new Map<number, readonly string[]>();
  wanted.forEach((places, from) => {
    const to = places.find((one) => isCircle(from, one));
    const key = group[from] ?? 0;
    if (to === undefined || circles.has(key)) return;
    const path = [from, ...pathTo(from, to, (at) => (wanted[at] ?? []).filter((one) => isCircle(at, one)))];
    circles.set(
      key,
      path.map((at) => sheets[at]?.title ?? ""),
    );
  });
  return {
    used: wanted.map((places, from) => places.filter((to) => !isCircle(from, to))),
    circles: [...circles.values()],
    twice: [...twice],
  };
}

/** From a place to itself by way of another: the shortest path, without its beginning. */
function pathTo(end: number, first: number, next: (at: number) => readonly number[]): number[] {
  const before = new Map<number, number | null>([[first, null]]);
  for (const at of before.keys()) for (const to of next(at)) if (!before.has(to)) before.set(to, at);
  const path: number[] = [];
  for (let at: number | null | undefined = end; at !== null && at !== undefined; at = before.get(at)) path.unshift(at);
  return path;
}

/** Places that reach each other have the same number (Tarjan, "Depth-first search and linear graph algorithms", 1972). */
function groupsOf(next: readonly (readonly number[])[]): readonly number[] {
  const [order, low, group] = [
    new Map<number, number>(),
    new Map<number, number>(),
    Array<number>(next.length).fill(-1),
  ];
  const open: number[] = [];
  const visit = (at: number): void => {
    order.set(at, order.size);
    low.set(at, order.get(at) ?? 0);
    open.push(at);
    for (const to of next[at] ?? []) {
      if (!order.has(to)) visit(to);
      if (group[to] === -1) low.set(at, Math.min(low.get(at) ?? 0, low.get(to) ?? 0));
    }
    if (low.get(at) !== order.get(at)) return;
    for (let one = open.pop(); one !== undefined; one = one === at ? undefined : open.pop()) group[one] = at;
  };
  next.forEach((_, at) => {
    if (!order.has(at)) visit(at);
  });
  return group;
}
