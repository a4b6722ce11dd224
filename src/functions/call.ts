import { type Fault, fault, Refusal, refuseAll } from "../../shared/base/refusal.ts";
import { quote, showNumber } from "../../shared/base/show.ts";
import { toGrid } from "../../shared/cells/decoder.ts";
import { isBlank } from "../../shared/cells/hint.ts";
import { finish, type Rows, shapeAnswer, type Value } from "./answer.ts";
import { callRows } from "./call-rows.ts";
import { convertUnits } from "./convert-units.ts";
import type { SheetFunction } from "./define.ts";

/**
 * What a formula cell runs: raw cells in, cells out. The only place where raw cells are read and where sentences get
 * their function's name. Throws Refusal; anything else thrown is a defect and passes as it is.
 */
export function call(sheetFunction: SheetFunction, raw: ArrayLike<unknown>): Value | Value[][] {
  try {
    const names = Object.keys(sheetFunction.args);
    if (raw.length > names.length) {
      const takes = names.length === 1 ? "1 argument" : `${names.length} arguments`;
      const fix = oneList(sheetFunction, raw);
      refuseAll([
        fault(
          `takes ${takes} (${names.join("; ")}), and ${raw.length} are given${fix === undefined ? "" : `. For ${fix}`}`,
        ),
      ]);
    }
    refuseAll(misplaced(sheetFunction, raw));
    const cells = convertUnits(sheetFunction, raw);
    const rows = sheetFunction.rowwise ? callRows(sheetFunction, cells) : callWhole(sheetFunction, cells);
    return finish(rows);
  } catch (error) {
    throw error instanceof Refusal ? new Refusal(error.faults, sheetFunction.name) : error;
  }
}

/** An argument left out without its `;` lets the next one slip into its place: "F" where a rise is meant. */
function misplaced(sheetFunction: SheetFunction, raw: ArrayLike<unknown>): Fault[] {
  const entries = Object.entries(sheetFunction.args);
  return entries.flatMap(([name, { is }], index) => {
    const cell = raw[index];
    const fix = is.hint.of === "word" && Number.isFinite(cell) ? oneList(sheetFunction, raw) : undefined;
    if (fix !== undefined) return [fault(`is ${showNumber(Number(cell), 4)}. For ${fix}`, name)];
    if (!is.optional || typeof cell !== "string" || isBlank(cell) || takes(is, cell)) return [];
    const after = entries.slice(index + 1).findIndex(([, later]) => takes(later.is, cell));
    if (after < 0) return [];
    const blank = entries.slice(index, index + 1 + after).map(([skipped]) => skipped);
    const meant = entries[index + 1 + after]?.[0];
    return [
      fault(`is ${quote(cell)}, which is meant for ${meant}; leave ${blank.join(" and ")} blank before it`, name),
    ];
  });
}

/**
 * What to do where the values of one argument were given as several: `20; 22` for temps is one of temps, and the next one takes
 * the 22. Values of one sort belong together as far as the arguments that must follow get one each.
 */
function oneList({ args }: SheetFunction, raw: ArrayLike<unknown>): string | undefined {
  const entries = Object.entries(args);
  const at = entries.findIndex(([, { is }], index) => is.shape !== "cell" && isOneValue(raw[index]));
  const [name] = entries[at] ?? [];
  if (name === undefined) return undefined;
  const after = entries.slice(at + 1).map(([, { is }]) => is);
  const values = Array.from(raw).slice(at);
  const other = values.findIndex((value) => typeof value !== typeof values[0] || !isOneValue(value));
  const alike = other < 0 ? values : values.slice(0, other);
  const isChosen = (value: unknown) => typeof value === "string" && after.some((is) => is.optional && takes(is, value));
  const others = values.slice(alike.length).filter((value) => !isChosen(value));
  const following = Math.max(0, after.filter(({ optional }) => !optional).length - others.length);
  const together = alike.slice(0, alike.length - following);
  if (together.length < 2) return undefined;
  const shown = together.map((value) => (typeof value === "string" ? quote(value) : showNumber(Number(value), 4)));
  return `${name} select a range of cells, or enter {${shown.join("; ")}}`;
}

const isOneValue = (value: unknown): value is string | number =>
  Number.isFinite(value) || (typeof value === "string" && !isBlank(value));

/** Whether an option of these words is asked for, and this is one. */
function takes({ hint, decode }: SheetFunction["args"][string]["is"], cell: string): boolean {
  if (hint.of !== "word") return false;
  const faults: Fault[] = [];
  decode(cell, "", faults);
  return faults.length === 0;
}

function callWhole(sheetFunction: SheetFunction, raw: ArrayLike<unknown>): Rows {
  const faults: Fault[] = [];
  const missing: Fault[] = [];
  const args: Record<string, unknown> = {};
  const filled: boolean[] = [];
  let longest = 0;
  const entries = Object.entries(sheetFunction.args);
  entries.forEach(([name, { is }], index) => {
    const cells = raw[index];
    if (cells === undefined && is.shape !== "cell" && !is.optional)
      missing.push(fault(`is missing; give ${is.shape === "column" ? "a range" : "a cell or a range"}`, name));
    if (holdsAmounts(is)) filled.push(!toGrid(cells).every((row) => row.every(isBlank)));
    const value = is.decode(cells, name, faults);
    args[name] = value;
    if ((is.shape === "column" || is.shape === "either") && Array.isArray(value))
      longest = Math.max(longest, value.length);
  });
  refuseAll(missing);
  if (filled.length > 0 && !filled.includes(true)) return [];
  refuseAll(faults);
  for (const [name, { is }] of entries) {
    const value = args[name];
    if ((is.shape === "column" || is.shape === "either") && Array.isArray(value)) {
      args[name] = value.concat(Array(longest - value.length).fill(null));
    }
  }
  return shapeAnswer(sheetFunction, sheetFunction.compute(args));
}

/** A fresh sheet has its kinds, its steps and its larder already; what makes it a formula is missing. */
function holdsAmounts({ shape, optional, hint }: SheetFunction["args"][string]["is"]): boolean {
  return (shape === "column" && hint.of !== "kind") || ((shape === "list" || shape === "table") && !optional);
}
