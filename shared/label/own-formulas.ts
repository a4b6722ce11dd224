// Formulas of the shop's own that other formulas use: a filling, an icing, a levain, to any depth.
import { type Fault, fault, isFault, refuse } from "../base/refusal.ts";
import { quote } from "../base/show.ts";
import { type Ratio, ratio } from "../base/units.ts";
import { number, text, unreadable } from "../cells/cell.ts";
import { type Decoder, table } from "../cells/decoder.ts";
import { isBlank } from "../cells/hint.ts";
import { someWeight } from "../cells/readers.ts";
import { nameKey } from "../larder/built-in-larder.ts";
import type { Ingredient } from "../larder/ingredient.ts";
import { findIngredient, type Larder } from "../larder/larder.ts";
import { partsOf } from "./compound.ts";

/** Its parts as they go in, in any one unit, and the share of them that boils off: what leaves is water. */
export type OwnFormula = {
  readonly name: string;
  readonly parts: readonly { readonly name: string; readonly weight: number }[];
  readonly boilOff: Ratio;
};
export type OwnFormulas = ReadonlyMap<string, OwnFormula>;
export const NO_FORMULAS: OwnFormulas = new Map();

/** How a function's argument is described. */
export const OWN_FORMULAS =
  "(optional) Your own formulas used as ingredients, a table: product (blank: the one above), ingredient, weight, boil-off.";

/** Where the composition of an ingredient is looked up. */
export type Sources = { readonly larder: Larder; readonly formulas: OwnFormulas };

/** A table of product (blank: the one above), ingredient, weight and, in any row of the product, its boil-off. */
export const ownFormulas: Decoder<OwnFormulas> = table({ of: "any" }, true, readFormulas);

const MAX_BOIL_OFF = 0.9;
const boilOffCell = number<Ratio>(
  "a share of the weight such as 10% (0.1)",
  { min: 0, max: MAX_BOIL_OFF },
  { percent: true },
);

function readFormulas(rows: readonly (readonly unknown[])[], argument: string, faults: Fault[]): OwnFormulas {
  if (rows.some((row) => row.some(isWhole))) return readWhole(rows.flat());
  const formulas = new Map<string, { name: string; parts: { name: string; weight: number }[]; boilOff: Ratio }>();
  const first = rows.findIndex((row) => !row.every(isBlank));
  let above: string | undefined;
  for (const [index, cells] of rows.entries()) {
    const [product, part, amount, boiled] = cells;
    const isHeading = index === first && typeof amount === "string" && !/\d/.test(amount) && !unreadable(amount);
    if (cells.every(isBlank) || (isHeading && !isBlank(amount))) continue;
    const say = (says: string) => faults.push(fault(says, argument, index + 1));
    const read = <T>(value: T | Fault): T | null => {
      if (!isFault(value)) return value;
      say(value.says);
      return null;
    };
    const name = isBlank(product) ? null : read<string>(text().read(product));
    if (name !== null) {
      above = nameKey(name);
      if (!formulas.has(above)) formulas.set(above, { name, parts: [], boilOff: ratio(0) });
    }
    const formula = above === undefined ? undefined : formulas.get(above);
    if (formula === undefined) {
      say("has no product in its row or above it");
      continue;
    }
    if (!isBlank(boiled)) formula.boilOff = read<Ratio>(boilOffCell.read(boiled)) ?? formula.boilOff;
    const weight = isBlank(amount) ? null : read<number>(someWeight<never>().read(amount));
    if (weight === null || weight === 0) continue;
    const named = isBlank(part) ? null : read<string>(text().read(part));
    if (named !== null) formula.parts.push({ name: named, weight });
    else if (isBlank(part)) say("has a weight and no ingredient; enter its name");
  }
  for (const { name, parts } of formulas.values())
    if (parts.length === 0) faults.push(fault(`make ${quote(name)} of nothing; enter its weights`, argument));
  return formulas;
}

/** A formula sheet says all that goes into it in one cell: lines of product, ingredient, weight and boil-off between tabs; a tab behind a name is nothing. */
const isWhole = (cell: unknown): boolean => typeof cell === "string" && /\t[^\t\n]*\t[^\t\n]*\t/.test(cell);
/** There weights and boil-off are whole numbers, in hundred millionths of all of it. */
const HUNDRED_MILLION = 1e8;

/** Such cells, the sheets inside included. A sheet that several others use stands in each; its first lines count. */
function readWhole(cells: readonly unknown[]): OwnFormulas {
  const formulas = new Map<string, { name: string; parts: { name: string; weight: number }[]; boilOff: Ratio }>();
  for (const cell of cells) {
    let formula: { parts: { name: string; weight: number }[] } | undefined;
    for (const line of isWhole(cell) ? String(cell).split("\n") : []) {
      const [product = "", part = "", weight = "", boiled = ""] = line.split("\t").map((one) => one.trim());
      if (product !== "") {
        const known = formulas.has(nameKey(product));
        const one = {
          name: product,
          parts: [],
          boilOff: ratio(Math.min(Number(boiled) / HUNDRED_MILLION, MAX_BOIL_OFF) || 0),
        };
        formula = known ? undefined : one;
        if (!known) formulas.set(nameKey(product), one);
      }
      if (part !== "" && Number(weight) > 0) formula?.parts.push({ name: part, weight: Number(weight) });
    }
  }
  return new Map([...formulas].filter(([, { parts }]) => parts.length > 0));
}

/** A part of an ingredient. */
export type Inside = {
  readonly name: string;
  /** Grams of it that went into a gram, as that is finished; null where nobody says. */
  readonly share: number | null;
  /** Whether the shop has it as an ingredient or a formula; else it is only a word of what a supplier prints. */
  readonly isKnown: boolean;
};

/** What an ingredient is made of: by the shop's formula of it, else as its larder row says; null where neither does. */
export function partsInside(
  name: string,
  ingredient: Ingredient | null,
  { larder, formulas }: Sources,
): { readonly parts: readonly Inside[]; readonly formula: OwnFormula | null } | null {
  const key = nameKey(name);
  const formula = formulas.get(key);
  if (formula !== undefined) {
    // What is fed with itself has the composition of what it is fed with.
    const others = formula.parts.filter((part) => nameKey(part.name) !== key);
    const finished = others.reduce((all, { weight }) => all + weight, 0) * (1 - formula.boilOff);
    const parts = others.map((part) => ({ name: part.name, share: part.weight / finished, isKnown: true }));
    return { parts, formula };
  }
  if (ingredient === null || ingredient.madeOf === null) return null;
  const parts = partsOf(ingredient.madeOf, ingredient.row).map((part): Inside => {
    const row = larder.byName.get(nameKey(part.name));
    // Flour that is made of flour and vitamins is in no loop: its part is plain flour.
    const isItself = row !== undefined && row.row === ingredient.row;
    return { ...part, isKnown: formulas.has(nameKey(part.name)) || (row !== undefined && !isItself) };
  });
  return { parts, formula: null };
}

/** Follows what is made of what, each name once; what is made of itself is named with its path. */
export function descend<T>(
  { larder, formulas }: Sources,
  answer: (name: string, inside: (name: string) => T) => T,
): (name: string) => T {
  const known = new Map<string, T>();
  const path: string[] = [];
  const ask = (name: string): T => {
    const key = nameKey(name);
    const before = known.get(key);
    if (before !== undefined) return before;
    const start = path.findIndex((one) => nameKey(one) === key);
    if (start >= 0) return refuseLoop([...path.slice(start), name]);
    path.push(name);
    const value = answer(name, ask);
    path.pop();
    known.set(key, value);
    return value;
  };
  const refuseLoop = (loop: readonly string[]): never => {
    const [name = ""] = loop;
    if (loop.some((one) => formulas.has(nameKey(one))))
      return refuse(`run in a loop: ${loop.map(quote).join(" → ")}; break it at one of them`, "formulas");
    return refuse(`is made of itself: ${quote(name)}`, "larder", findIngredient(larder, name)?.row ?? undefined);
  };
  // A row that was refused leaves its path behind.
  return (name) => {
    path.length = 0;
    return ask(name);
  };
}
