import { type Fault, fault, isFault, refuse, refuseAll } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { oneOf, quote, showNumber } from "../base/show.ts";
import { type Weight, weight } from "../base/units.ts";
import { nearest } from "../base/words.ts";
import { text, unreadable } from "../cells/cell.ts";
import { type Decoder, table } from "../cells/decoder.ts";
import { isBlank } from "../cells/hint.ts";
import { someWeight } from "../cells/readers.ts";
import { nameKey } from "../larder/built-in-larder.ts";

/** A row of a table of names and a weight. */
export type Named = {
  readonly names: readonly (string | null)[];
  readonly weight: Weight | null;
  /** Counted from the top of the range. */
  readonly row: number;
};

/** A table whose last column holds weights; `names` head the columns before it. */
export const weightTable = (names: readonly string[], isOptional: boolean): Decoder<readonly Named[]> =>
  table(
    { of: "any", measure: "weight", at: names.length, group: names.length > 1 ? "formulas" : "" },
    isOptional,
    (rows, argument, faults) => {
      const first = rows.findIndex((row) => !row.every(isBlank));
      const isOdd = rows.some((row) => row.length <= names.length || !row.slice(names.length + 1).every(isBlank));
      if (isOdd) {
        faults.push(fault(`must have ${names.length + 1} columns: ${names.join(", ")}, weight`, argument));
        return [];
      }
      const reader = someWeight<Weight>();
      return rows.flatMap((cells, index): Named[] => {
        const raw = cells[names.length];
        const isHeading = index === first && typeof raw === "string" && !/[\d¼-¾⅐-⅞]/.test(raw);
        if (cells.every(isBlank) || (isHeading && !isBlank(raw) && !unreadable(raw))) return [];
        const read = <T>(value: T | Fault): T | null => {
          if (!isFault(value)) return value;
          faults.push(fault(value.says, argument, index + 1));
          return null;
        };
        const texts = names.map((_, at) => (isBlank(cells[at]) ? null : read<string>(text().read(cells[at]))));
        const total = texts.find((name) => name !== null && /^(?:sub|grand)?[- ]?totals?\b/i.test(name.trim()));
        if (total) faults.push(fault(`is named ${quote(total)}; leave totals out of the range`, argument, index + 1));
        return [{ names: texts, weight: isBlank(raw) ? null : read<Weight>(reader.read(raw)), row: index + 1 }];
      });
    },
  );

type Product = {
  readonly name: string;
  readonly parts: { readonly key: string; readonly weight: number }[];
  sum: number;
  /** What it holds of itself, and where that is written. */
  seed: number;
  row: number;
};

/**
 * Raw ingredients of a day's orders, in the order the formulas first name them: products are broken down to any depth, each
 * to the scale of its own formula, and what is on hand comes off at its level. All weights share one unit.
 */
export function rawNeeds(
  orders: readonly Named[],
  formulas: readonly Named[],
  onHand: readonly Named[],
): (readonly [string, Weight])[] {
  const keys = new Map<string, string>();
  // A day's tables repeat few names many times.
  const keyOf = (name: string): string => {
    const key = keys.get(name) ?? nameKey(name);
    keys.set(name, key);
    return key;
  };
  const { products, parts } = readFormulas(formulas, keyOf);
  const wanted = summed(orders, keyOf, "orders");
  const unknown = orders.flatMap(({ names: [name], weight, row }) => {
    if (!name || weight === null || products.has(keyOf(name))) return [];
    const near = nearest(name, [...products.values()].map((one) => one.name).slice(0, 500));
    const perhaps = near.length > 0 ? `; perhaps ${oneOf(near)}?` : "";
    return [fault(`is ${quote(name)}, which has no formula${perhaps}`, "orders", row)];
  });
  refuseAll(unknown);
  const there = summed(onHand, keyOf, "on_hand");
  const needs = new Map<string, number>();
  for (const key of fromTheTop([...wanted.keys()], products)) {
    const [want, stock] = [wanted.get(key) ?? 0, there.get(key) ?? 0];
    const short = atMost(want, stock) ? 0 : want - stock;
    const product = products.get(key);
    if (product === undefined) needs.set(key, short);
    else {
      const mixed = toMix(product, short, stock);
      for (const part of product.parts)
        wanted.set(part.key, (wanted.get(part.key) ?? 0) + (mixed * part.weight) / (product.sum || 1));
    }
  }
  return [...parts].flatMap(([key, name]) => {
    const need = needs.get(key);
    return need === undefined ? [] : [[name, weight(need)] as const];
  });
}

/** The weight to mix; what feeds a product with itself comes off its stock. */
function toMix({ name, sum, seed, row }: Product, short: number, stock: number): number {
  if (short > 0 && sum === 0) return refuse(`makes ${quote(name)} of nothing; give it weights`, "formulas", row);
  if (seed === 0) return short;
  const build = (short * sum) / (sum - seed);
  const seeded = (build * seed) / sum;
  if (stock > 0 && sum > seed && atMost(seeded, stock)) return build;
  const enough = stock > 0 && sum > seed ? ` (${showNumber(seeded)} needed, ${showNumber(stock)} there)` : "";
  const instead = `name the seed differently, or put it on hand${enough}`;
  return refuse(`makes ${quote(name)} of itself; ${instead}`, "formulas", row);
}

/** Weights by name; a row without a weight does not count. */
function summed(rows: readonly Named[], keyOf: (name: string) => string, argument: string): Map<string, number> {
  const sums = new Map<string, number>();
  const faults: Fault[] = [];
  for (const { names, weight, row } of rows) {
    const name = names[0] ?? null;
    if (weight === null) continue;
    if (name === null) faults.push(fault("has a weight and no name; enter what it is", argument, row));
    else sums.set(keyOf(name), (sums.get(keyOf(name)) ?? 0) + weight);
  }
  refuseAll(faults);
  return sums;
}

function readFormulas(rows: readonly Named[], keyOf: (name: string) => string) {
  const products = new Map<string, Product>();
  /** Names of the ingredients by key, in the order of first mention. */
  const parts = new Map<string, string>();
  const faults: Fault[] = [];
  let above: string | undefined;
  for (const { names, weight, row } of rows) {
    const [name, part] = names;
    if (name) {
      above = keyOf(name);
      if (!products.has(above)) products.set(above, { name, parts: [], sum: 0, seed: 0, row });
    }
    const product = above === undefined ? undefined : products.get(above);
    if (weight === null) continue;
    if (!part) faults.push(fault("has a weight and no ingredient; enter its name", "formulas", row));
    else if (product === undefined) faults.push(fault("has no product in its row or above it", "formulas", row));
    else {
      const key = keyOf(part);
      if (!parts.has(key)) parts.set(key, part);
      product.sum += weight;
      if (key !== above) product.parts.push({ key, weight });
      else {
        product.seed += weight;
        product.row = row;
      }
    }
  }
  refuseAll(faults);
  return { products, parts };
}

/** Everything the starts are made of, each before what it is made of itself; without recursion, for chains have any length. */
function fromTheTop(starts: readonly string[], products: ReadonlyMap<string, Product>): string[] {
  const isOpen = new Map<string, boolean>();
  const done: string[] = [];
  for (const start of starts) {
    if (isOpen.has(start)) continue;
    const path = [{ key: start, next: 0 }];
    isOpen.set(start, true);
    for (let top = path[0]; top !== undefined; top = path[path.length - 1]) {
      const part = products.get(top.key)?.parts[top.next];
      top.next += 1;
      if (part === undefined) {
        path.pop();
        isOpen.set(top.key, false);
        done.push(top.key);
      } else if (isOpen.get(part.key)) {
        const loop = path
          .slice(path.findIndex(({ key }) => key === part.key))
          .map(({ key }) => products.get(key)?.name);
        refuse(`run in a loop: ${showPath([...loop, loop[0]])}; break it at one of them`, "formulas");
      } else if (!isOpen.has(part.key)) {
        isOpen.set(part.key, true);
        path.push({ key: part.key, next: 0 });
      }
    }
  }
  return done.reverse();
}

function showPath(path: readonly (string | undefined)[]): string {
  const names = path.map((name) => quote(name ?? ""));
  if (names.length > 10) names.splice(5, names.length - 9, `${names.length - 9} more`);
  return names.join(" → ");
}
