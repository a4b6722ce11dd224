import { CellError, type Fault, fault, refuseAll } from "../../shared/base/refusal.ts";
import { quoted } from "../../shared/base/show.ts";
import { withoutUnits } from "../../shared/cells/carried-units.ts";
import { toGrid } from "../../shared/cells/decoder.ts";
import { isBlank, type Measure } from "../../shared/cells/hint.ts";
import type { Answer, SheetFunction } from "./define.ts";

type Value = number | string;
type Rows = readonly (readonly Answer[])[];

/** A cell of a sheet takes no more (Google Sheets' limit). */
const LONGEST_TEXT = 50_000;

/**
 * What a formula cell runs: raw cells in, cells out. The only place where raw cells are read and where sentences get
 * their function's name. Throws CellError; anything else thrown is a defect and passes as it is.
 */
export function call(made: SheetFunction, raw: ArrayLike<unknown>): Value | Value[][] {
  try {
    const names = Object.keys(made.args);
    if (raw.length > names.length) {
      refuseAll([
        fault(
          `takes ${names.length === 1 ? "1 argument" : `${names.length} arguments`} (${names.join("; ")}), and ${raw.length} are given`,
        ),
      ]);
    }
    refuseAll(misplaced(made, raw));
    const cells = unitsRead(made, raw);
    const rows = made.rowwise ? callRows(made, cells) : callWhole(made, cells);
    return finish(rows);
  } catch (error) {
    throw error instanceof CellError ? new CellError(error.faults, made.name) : error;
  }
}

/** An argument left out without its `;` lets the next one slip into its place: "F" where a rise is meant. */
function misplaced(made: SheetFunction, raw: ArrayLike<unknown>): Fault[] {
  const entries = Object.entries(made.args);
  return entries.flatMap(([name, { is }], index) => {
    const cell = raw[index];
    if (!is.optional || typeof cell !== "string" || isBlank(cell) || takes(is, cell)) return [];
    const after = entries.slice(index + 1).findIndex(([, later]) => takes(later.is, cell));
    if (after < 0) return [];
    const blank = entries.slice(index, index + 1 + after).map(([skipped]) => skipped);
    const meant = entries[index + 1 + after]?.[0];
    return [
      fault(`is ${quoted(cell)}, which is meant for ${meant}; leave ${blank.join(" and ")} blank before it`, name),
    ];
  });
}

/** Whether an option of these words is asked for, and this is one. */
function takes({ hint, decode }: SheetFunction["args"][string]["is"], cell: string): boolean {
  if (hint.of !== "word") return false;
  const faults: Fault[] = [];
  decode(cell, "", faults);
  return faults.length === 0;
}

/** Amounts that carry their unit, as numbers of the unit the function works in. */
function unitsRead(made: SheetFunction, raw: ArrayLike<unknown>): ArrayLike<unknown> {
  const entries = Object.entries(made.args);
  const measured = entries.flatMap(([name, { is }], index) => {
    const hint = is.hint;
    if (!("measure" in hint) || hint.measure === undefined || raw[index] === undefined) return [];
    return [
      { name, hint, index, measure: isOfWater(raw[0], hint.measure) ? ("grams of water" as const) : hint.measure },
    ];
  });
  if (!measured.some(({ index }) => toGrid(raw[index]).some((row) => row.some(mayCarry)))) return raw;
  const at = entries.findIndex(([name, { is }]) => name === "unit" && is.hint.of === "word");
  const units = entries[at]?.[1].is;
  const read = units?.decode(raw[at], "unit", []) as string | undefined;
  const words: readonly string[] = units?.hint.of === "word" ? units.hint.words : [];
  const fits = { weight: "kg", size: "mm", degrees: "F" } as Readonly<Record<string, string>>;
  const cells = Array.from({ length: raw.length }, (_, index) => raw[index]);
  const faults: Fault[] = [];
  // What is compared with an argument that is left out is compared with the rest.
  const isGiven = (name: string) =>
    entries.some(([known], index) => known === name && !toGrid(raw[index]).flat().every(isBlank));
  const groupOf = ({ measure, hint: { group = "" } }: (typeof measured)[number]): string =>
    `${measure} ${isGiven(group) ? group : ""}`;
  for (const key of new Set(measured.map(groupOf))) {
    const group = measured.filter((one) => groupOf(one) === key);
    const grids = withoutUnits(
      group.map(({ index, ...argument }) => ({
        argument: { ...argument, unit: words.includes(fits[argument.measure] ?? "") ? (read ?? words[0]) : undefined },
        grid: toGrid(raw[index]),
      })),
      faults,
    );
    group.forEach(({ index }, place) => {
      cells[index] = Array.isArray(raw[index]) ? grids[place] : grids[place]?.[0]?.[0];
    });
  }
  refuseAll(faults);
  return cells;
}

const mayCarry = (cell: unknown): boolean => typeof cell === "string" && /\d.*[a-z"]/i.test(cell);
/** A tin filled with water has a weight for its size. */
const isOfWater = (shape: unknown, measure: Measure): boolean =>
  measure === "size" && typeof shape === "string" && /water|brim/i.test(shape);

function callWhole(made: SheetFunction, raw: ArrayLike<unknown>): Rows {
  const faults: Fault[] = [];
  const missing: Fault[] = [];
  const args: Record<string, unknown> = {};
  const filled: boolean[] = [];
  let longest = 0;
  const entries = Object.entries(made.args);
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
  return shaped(made, made.compute(args));
}

/** A fresh sheet has its kinds, its steps and its larder already; what makes it a formula is missing. */
function holdsAmounts({ shape, optional, hint }: SheetFunction["args"][string]["is"]): boolean {
  return (shape === "column" && hint.of !== "kind") || ((shape === "list" || shape === "table") && !optional);
}

function callRows(made: SheetFunction, raw: ArrayLike<unknown>): Rows {
  const faults: Fault[] = [];
  const width = "cells" in made.returns ? made.returns.cells.length : 1;
  const columns = Object.entries(made.args).map(([name, { is }], index) => ({
    name,
    is,
    // A table is one for all rows.
    table: is.shape === "table" ? { value: is.decode(raw[index], name, faults) } : undefined,
    ...(is.shape === "table" ? { cells: [], isColumn: false } : asColumn(raw[index], name, faults)),
  }));
  refuseAll(faults);
  const rows = Math.max(1, ...columns.map(({ cells }) => cells.length));
  const many = columns.some(({ isColumn }) => isColumn);
  const answers: (readonly Answer[])[] = [];
  for (let row = 0; row < rows; row++) {
    const args: Record<string, unknown> = {};
    const first = columns[0];
    const head = first && (first.isColumn ? first.cells[row] : first.cells[0]);
    if (isBlank(head) && !(first && !first.isColumn && head === undefined)) {
      answers.push(Array(width).fill(null));
      continue;
    }
    const before = faults.length;
    for (const { name, is, isColumn, cells, table } of columns) {
      args[name] = table
        ? table.value
        : is.decode(isColumn ? (cells[row] ?? "") : cells[0], name, faults, many ? row + 1 : undefined);
    }
    if (faults.length > before) continue;
    answers.push(...rowOf(made, args, many ? row + 1 : undefined, faults));
  }
  refuseAll(faults);
  return answers;
}

/** A refusal of the arithmetic belongs to the row it was asked for. */
function rowOf(made: SheetFunction, args: Record<string, unknown>, row: number | undefined, faults: Fault[]): Rows {
  if (row === undefined) return shaped(made, made.compute(args));
  try {
    return shaped(made, made.compute(args));
  } catch (error) {
    if (!(error instanceof CellError)) throw error;
    faults.push(...error.faults.map(({ says, argument }) => fault(says, argument, row)));
    return [];
  }
}

function asColumn(raw: unknown, name: string, faults: Fault[]): { cells: readonly unknown[]; isColumn: boolean } {
  const grid = toGrid(raw);
  const width = grid.reduce((most, row) => Math.max(most, row.length), 0);
  if (grid.length > 1 && width > 1) faults.push(fault("is a block of several rows and columns; give one column", name));
  const cells = grid.length === 1 ? (grid[0] ?? []) : grid.map((row) => row[0]);
  if (cells.length <= 1) return { cells, isColumn: false };
  let end = cells.length;
  while (end > 0 && isBlank(cells[end - 1])) end--;
  return { cells: cells.slice(0, end), isColumn: true };
}

function shaped(made: SheetFunction, answer: ReturnType<SheetFunction["compute"]>): Rows {
  switch (made.returns.shape) {
    case "cell":
      return [[answer as Answer]];
    case "row":
      return [answer as readonly Answer[]];
    case "column":
      return (answer as readonly Answer[]).map((one) => [one]);
    case "rows":
      return answer as Rows;
  }
}

/** The last gate: a rectangle of finite numbers, texts and "" for blank. */
function finish(rows: Rows): Value | Value[][] {
  const width = rows.reduce((most, row) => Math.max(most, row.length), 1);
  const cells = rows.map((row) => {
    const done = row.map(finishCell);
    while (done.length < width) done.push("");
    return done;
  });
  const first = cells[0]?.[0];
  if (first === undefined) return "";
  return cells.length === 1 && width === 1 ? first : cells;
}

function finishCell(answer: Answer): Value {
  if (answer === null) return "";
  if (typeof answer === "string")
    return answer.length > LONGEST_TEXT ? `${answer.slice(0, LONGEST_TEXT - 1)}…` : answer;
  if (!Number.isFinite(answer))
    refuseAll([fault("the answer is too large for a cell; look for a figure with too many digits")]);
  return answer === 0 ? 0 : answer;
}
