// What formulas inside formulas are made of in the end: what is bought for a gram of each, with all that boils off and stays behind.
import { refuse } from "../base/refusal.ts";
import { quote } from "../base/show.ts";
import { nameKey } from "../larder/built-in-larder.ts";

/** Its parts as they go in, in any one unit; of all of it these shares boil off, and stay in the pan. */
export type Making = {
  readonly name: string;
  readonly parts: readonly { readonly name: string; readonly weight: number }[];
  readonly boilOff: number;
  readonly leftOver: number;
};
export type Makings = ReadonlyMap<string, Making>;

/** Weights and shares are whole numbers there, in hundred millionths of all of it. */
const HUNDRED_MILLION = 1e8;

/**
 * The cells in which formula sheets say all that goes into them: lines of product, ingredient, weight, boil-off and left-over
 * between tabs, the sheets inside below. A sheet that several use stands in each; its first lines count.
 */
export function readMakings(cells: readonly (string | null)[]): Makings {
  const makings = new Map<string, Making & { parts: { name: string; weight: number }[] }>();
  for (const cell of cells) {
    let open: { parts: { name: string; weight: number }[] } | undefined;
    for (const line of cell?.includes("\t") ? cell.split("\n") : []) {
      const [product = "", part = "", weight = "", boiled = "", left = ""] = line.split("\t").map((one) => one.trim());
      if (product !== "") {
        const key = nameKey(product);
        const making = { name: product, parts: [], boilOff: shareOf(boiled), leftOver: shareOf(left) };
        open = makings.has(key) ? undefined : making;
        if (open !== undefined) makings.set(key, making);
      }
      if (part !== "" && Number(weight) > 0) open?.parts.push({ name: part, weight: Number(weight) });
    }
  }
  return makings;
}

const MOST_LOST = 0.9;
const shareOf = (text: string): number => Math.min(Math.max(Number(text) / HUNDRED_MILLION, 0) || 0, MOST_LOST);

/** The product that a cell is about. */
export const productOf = (cell: string | null): string | null =>
  cell?.includes("\t") ? (cell.split("\t")[0]?.trim() ?? null) : null;

/** Grams of each ingredient that are bought for one usable gram, by its key. */
export type Bought = ReadonlyMap<string, { readonly name: string; readonly grams: number }>;

/** Each formula is worked out once; one that uses itself by way of others is named with its path. */
export function boughtFor(makings: Makings): (name: string) => Bought {
  const known = new Map<string, Bought>();
  const path: string[] = [];
  const ask = (name: string): Bought => {
    const key = nameKey(name);
    const before = known.get(key);
    if (before !== undefined) return before;
    const making = makings.get(key);
    if (making === undefined) return new Map([[key, { name, grams: 1 }]]);
    const start = path.findIndex((one) => nameKey(one) === key);
    if (start >= 0)
      return refuse(
        `run in a loop: ${[...path.slice(start), name].map(quote).join(" → ")}; break it at one of them`,
        "parts",
      );
    path.push(name);
    const bought = addedUp(making, key, ask);
    path.pop();
    known.set(key, bought);
    return bought;
  };
  return (name) => {
    path.length = 0;
    return ask(name);
  };
}

/** What is fed with itself is made of what it is fed with. */
function addedUp({ parts, boilOff, leftOver }: Making, key: string, ask: (name: string) => Bought): Bought {
  const others = parts.filter((part) => nameKey(part.name) !== key);
  const usable = others.reduce((all, { weight }) => all + weight, 0) * (1 - boilOff) * (1 - leftOver);
  const sums = new Map<string, { name: string; grams: number }>();
  for (const part of others)
    for (const [inside, { name, grams }] of ask(part.name)) {
      const before = sums.get(inside)?.grams ?? 0;
      sums.set(inside, { name, grams: before + (grams * part.weight) / usable });
    }
  return sums;
}
