import { type Fault, fault, isFault, Refusal, refuse, refuseAll } from "../base/refusal.ts";
import { oneOf, quote, rowsNamed } from "../base/show.ts";
import { nearest } from "../base/words.ts";
import { unreadable, word } from "../cells/cell.ts";
import { type Decoder, table } from "../cells/decoder.ts";
import { isBlank } from "../cells/hint.ts";
import { type BuiltIn, builtInOf, builtInRows, nameKey } from "./built-in-larder.ts";
import { type Ingredient, type OwnRow, ofBuiltIn, ofRow } from "./ingredient.ts";
import { COLUMNS, type Column } from "./larder-columns.ts";

/** The shop's ingredient table, ready for look-ups; empty when none was given. */
export type Larder = {
  readonly rows: readonly OwnRow[];
  readonly byName: ReadonlyMap<string, OwnRow>;
  /** The shop's rows that go by a name of this built-in row. */
  readonly byBuiltIn: ReadonlyMap<BuiltIn, readonly OwnRow[]>;
};

/** Without rows of a shop's own the built-in table answers alone. */
export const NO_LARDER: Larder = { rows: [], byName: new Map(), byBuiltIn: new Map() };

/** The argument `larder`: a range with a header row, its columns found by their headings in any order. */
export const larder = (isOptional: boolean): Decoder<Larder> => table({ of: "any" }, isOptional, readLarder);

function readLarder(rows: readonly (readonly unknown[])[], argument: string, faults: Fault[]): Larder {
  const top = rows.findIndex((row) => !row.every(isBlank));
  const header = rows[top];
  if (header === undefined) return NO_LARDER;
  const columns = readHeader(header, argument, faults);
  const at = columns.get("ingredient");
  if (at === undefined) {
    faults.push(fault('has no column headed "ingredient"; its first row holds the headings', argument));
    return NO_LARDER;
  }
  const ownRows = rows.slice(top + 1).flatMap((cells, index): OwnRow[] => {
    const raw = cells[at];
    const row = top + index + 2;
    const stuck = unreadable(raw);
    if (stuck) faults.push(fault(stuck.says, argument, row));
    if (stuck || isBlank(raw)) return [];
    const name = String(raw).trim();
    const cell = (column: Column) => cells[columns.get(column) ?? -1];
    const alsoCalled = namesIn(cell("also called"), argument, faults, row);
    const keys = [name, ...alsoCalled].map(nameKey);
    const builtIn = keys.map(builtInOf).find((word) => word !== undefined);
    return [{ name, alsoCalled, keys, row, cell, builtIn }];
  });
  return { rows: ownRows, byName: namesOf(ownRows, argument, faults), byBuiltIn: groupedByBuiltIn(ownRows) };
}

/** A table of cells as the argument reads it; refuses what it would refuse. */
export function readTable(cells: readonly (readonly unknown[])[]): Larder {
  const faults: Fault[] = [];
  const ownLarder = readLarder(cells, "ingredient sheet", faults);
  if (faults.length > 0) throw new Refusal(faults);
  return ownLarder;
}

function namesIn(raw: unknown, argument: string, faults: Fault[], row: number): string[] {
  const stuck = unreadable(raw);
  if (stuck) faults.push(fault(`column "also called" ${stuck.says}`, argument, row));
  if (stuck || isBlank(raw)) return [];
  return String(raw)
    .split(";")
    .map((name) => name.trim())
    .filter((name) => name !== "");
}

function readHeader(header: readonly unknown[], argument: string, faults: Fault[]): Map<Column, number> {
  const columns = new Map<Column, number>();
  const headings = word<Column>(COLUMNS);
  header.forEach((raw, at) => {
    const column = isBlank(raw) ? undefined : headings.read(raw);
    if (column === undefined || isFault(column)) return;
    if (columns.has(column)) faults.push(fault(`has two columns headed "${column}"; keep one`, argument));
    else columns.set(column, at);
  });
  return columns;
}

/** Two rows of one name would make every look-up a guess. */
function namesOf(ownRows: readonly OwnRow[], argument: string, faults: Fault[]): Map<string, OwnRow> {
  const byName = new Map<string, OwnRow>();
  for (const one of ownRows) {
    one.keys.forEach((key, at) => {
      const before = byName.get(key);
      const name = at === 0 ? one.name : (one.alsoCalled[at - 1] ?? "");
      if (before === undefined) byName.set(key, one);
      else if (before !== one)
        faults.push(
          fault(`is called ${quote(name)}, as is row ${before.row}; give one of them another name`, argument, one.row),
        );
    });
  }
  return byName;
}

function groupedByBuiltIn(ownRows: readonly OwnRow[]): Map<BuiltIn, OwnRow[]> {
  const groups = new Map<BuiltIn, OwnRow[]>();
  for (const one of ownRows) {
    if (one.builtIn === undefined) continue;
    const group = groups.get(one.builtIn);
    if (group) group.push(one);
    else groups.set(one.builtIn, [one]);
  }
  return groups;
}

/**
 * The ingredient of this name: a row of the shop's by its own names, then by the built-in table's names for it, then the
 * built-in row. Undefined when no table knows it; refuses when two rows of the shop's may be meant.
 */
export const findIngredient = (larder: Larder, name: string): Ingredient | undefined =>
  findByKey(larder, nameKey(name), name);

/** The same where the name's key is known already. */
export function findByKey(larder: Larder, key: string, name = key): Ingredient | undefined {
  const exact = larder.byName.get(key);
  if (exact !== undefined) return ofRow(exact);
  const builtIn = builtInOf(key);
  if (builtIn === undefined) return undefined;
  const group = larder.byBuiltIn.get(builtIn) ?? [];
  const canonical = group.find((one) => one.keys[0] === nameKey(builtIn.name));
  const first = canonical ?? group[0];
  if (first === undefined) return ofBuiltIn(builtIn);
  if (canonical === undefined && group.length > 1) {
    refuse(
      `${rowsNamed(group.map(({ row }) => row))} could each be meant by ${quote(name)}; enter it under "also called" in the one that is meant`,
      "larder",
    );
  }
  return ofRow(first);
}

const wordsOf = new WeakMap<Larder, ReadonlySet<string>>();

/** Every word of every name that would be found, as keys: what holds another word names nothing. */
export function knownWords(larder: Larder): ReadonlySet<string> {
  const before = wordsOf.get(larder);
  if (before !== undefined) return before;
  const keys = [...larder.byName.keys(), ...knownNames({ ...larder, rows: [] }).map(nameKey)];
  const words = new Set(keys.flatMap((key) => key.split(" ")));
  wordsOf.set(larder, words);
  return words;
}

/** The names of every ingredient that would be found. */
function knownNames({ rows }: Larder): string[] {
  return [...rows, ...builtInRows()].flatMap(({ name, alsoCalled }) => [name, ...alsoCalled]);
}

/** No ingredient is called by more; comparing whole paragraphs would take seconds. */
const MAX_COMPARED_LENGTH = 80;

/** What is said of a name no table knows. */
export function unknownName(larder: Larder, name: string): string {
  const near = nearest(name.slice(0, MAX_COMPARED_LENGTH), knownNames(larder));
  const perhaps = near.length > 0 ? `; perhaps ${oneOf(near)}? Enter` : "; enter";
  return `is ${quote(name)}, which the larder does not know${perhaps} a name it knows, or give the larder a row for it`;
}

/** Spelling takes time to compare, and only so many refusals are told in full. */
const COMPARED = 3;

/**
 * The ingredients of the rows that need one, null for the rest. Names that no table knows are refused together, each with
 * the nearest known ones; so is a needed row without a name.
 */
export function requireIngredients(
  larder: Larder,
  names: readonly (string | null)[],
  needed: (index: number) => boolean,
  argument = "ingredients",
): (Ingredient | null)[] {
  let compared = 0;
  return eachRow(names, (name, index) => {
    if (!needed(index)) return null;
    if (name === null) return refuse("is blank though the row has an amount; enter its name", argument, index + 1);
    const match = findIngredient(larder, name);
    if (match !== undefined) return match;
    compared += 1;
    const says = compared > COMPARED ? `is ${quote(name)}, which the larder does not know` : unknownName(larder, name);
    return refuse(says, argument, index + 1);
  });
}

/** The ingredient of one name, refused when no table knows it. */
export function requireIngredient(larder: Larder, name: string, argument = "ingredient"): Ingredient {
  return findIngredient(larder, name) ?? refuse(unknownName(larder, name), argument);
}

/** An answer per row; rows that refuse are refused together, and the same slip in one larder cell is told once. */
export function eachRow<R, T>(rows: readonly R[], ask: (row: R, index: number) => T): T[] {
  const faults = new Map<string, Fault>();
  const answers = rows.map((row, index): T | undefined => {
    try {
      return ask(row, index);
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      for (const one of error.faults) faults.set(`${one.argument} ${one.row} ${one.says}`, one);
      return undefined;
    }
  });
  refuseAll([...faults.values()]);
  // Without a fault every row was answered.
  return answers as T[];
}
