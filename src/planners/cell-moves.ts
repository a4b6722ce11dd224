// Where the cells of a formula sheet go when it is planned anew with other parts.

import { refuse } from "../../shared/base/refusal.ts";
import { trimmedText } from "../../shared/base/words.ts";
import type { SeenSheet } from "../../shared/protocol/look.ts";
import type { Move, Remade } from "../../shared/protocol/remake.ts";
import type { Zone } from "../../shared/sheet/a1.ts";
import { isBuiltBy } from "../../shared/sheet/built-by.ts";
import { type Layout, labelText, layOut } from "../../shared/sheet/layout.ts";
import type { Options, SheetModel } from "../../shared/sheet/model.ts";
import { skeleton } from "../../shared/sheet/moved-references.ts";
import type { SheetPlan } from "../../shared/sheet/sheet-plan.ts";

type Plans = {
  readonly was: SheetPlan;
  readonly now: SheetPlan;
  readonly before: Options;
};

/** `model` has tables as long as they are on the sheet. */

export function movedCells(
  seen: SeenSheet,
  model: SheetModel,
  { was, now, before }: Plans,
): Pick<Remade, "typed" | "moves" | "rowsNow"> {
  const words = wordsIn(layOut(model, before), before);
  const here = placesOf(seen, words, was);
  const inputs = inputsOf(model);
  const moves: Move[] = [];
  const typed: Move[] = [];
  for (const [name, from] of here) {
    const to = now.names.get(name);
    // A table that has other columns now is no longer the same.
    if (to === undefined || to.columns !== from.columns) continue;
    const rows = Math.min(from.rows, to.rows);
    moves.push([
      { ...from, rows },
      { ...to, rows },
    ]);
    if (!inputs.has(name)) continue;
    // Of a column all rows but those of its formulas and its end.
    const [down, many] = from.rows === 1 ? [0, 1] : [1, rows - 2];
    const cut = (zone: Zone): Zone => ({ ...zone, row: zone.row + down, rows: many });
    if (many > 0) typed.push([cut(from), cut(to)]);
  }
  const rowsNow = rowsOf(here, moves, was, now);
  const ownCells = freeCells(seen, here, new Set(words.map(({ text }) => text)), was);
  return { typed: [...typed, ...ownCells.map((at) => movedFree(at, rowsNow, now))], moves, rowsNow };
}

/**
 * Cells and columns as they stand: rows were inserted in tables, which are as long in the plan, and perhaps between blocks. Each
 * row of the plan with words in it is looked for from where the one before it was.
 */
function placesOf(seen: SeenSheet, words: readonly Word[], was: SheetPlan): ReadonlyMap<string, Zone> {
  const shifts: number[] = [];
  let shift = 0;
  for (let row = 0; row < was.rows; row++) {
    const ownCells = words.filter((word) => word.row === row);
    const isAt = (at: number) => ownCells.every(({ column, text }) => trimmedText(seen.values[at]?.[column]) === text);
    if (ownCells.length > 0) {
      while (row + shift < seen.values.length && !isAt(row + shift)) shift += 1;
      if (row + shift >= seen.values.length) return refuseMoved(seen.name);
    }
    shifts[row] = shift;
  }
  return new Map([...was.names].map(([name, zone]) => [name, { ...zone, row: zone.row + (shifts[zone.row] ?? 0) }]));
}

type Word = { readonly row: number; readonly column: number; readonly text: string };

/** Words that stand on a sheet as they are, and where. */
function wordsIn({ cells, tables }: Layout, options: Options): Word[] {
  const heads = tables.flatMap(({ table, row, column }) =>
    table.columns.flatMap(({ head, headFormula }, at) =>
      headFormula === undefined ? [{ row, column: column + at, text: labelText(head, options) }] : [],
    ),
  );
  const texts = cells.flatMap(({ cell: { name, formula, text }, row, column }) =>
    name === undefined && formula === undefined ? [{ row, column, text: labelText(text ?? "", options) }] : [],
  );
  return [...heads, ...texts].map((word) => ({ ...word, text: word.text.trim() })).filter(({ text }) => text !== "");
}

const refuseMoved = (name: string): never =>
  refuse(
    `Columns or headings of the sheet “${name}” were inserted, moved or changed, so its cells cannot be told. Undo that, or build a new sheet.`,
  );

/** What is typed: inputs, the title, and figures that are kept beside the page. */
function inputsOf({ bands }: SheetModel): ReadonlySet<string> {
  const names = bands
    .flat()
    .flatMap((item) =>
      "table" in item
        ? item.columns.filter(({ role }) => role === "input").map(({ name }) => name)
        : item.lines.flatMap(({ cells }) =>
            cells.filter(({ formula }) => formula === undefined).map(({ name }) => name),
          ),
    );
  return new Set(names.filter((name) => name !== undefined));
}

/**
 * For each row where it is now: as the cells in it have moved, and between those as the one above. Rows of what was taken out are
 * gone; what is below all moves with the end.
 */
function rowsOf(here: ReadonlyMap<string, Zone>, moves: readonly Move[], was: SheetPlan, now: SheetPlan): number[] {
  const known = new Map<number, number>([[0, 0]]);
  const gone = new Set<number>();
  for (const [from, to] of moves)
    if (from.column < was.page) for (let down = 0; down < from.rows; down++) known.set(from.row + down, to.row + down);
  for (const [name, { row, rows, column }] of here)
    if (column < was.page && !now.names.has(name)) for (let down = -1; down < rows; down++) gone.add(row + down);
  const end = Math.max(...[...here.values()].map(({ row, rows }) => row + rows), ...known.keys());
  const rowsNow: number[] = [];
  for (let row = 0; row <= end; row++) {
    const before = rowsNow[row - 1] ?? -1;
    rowsNow[row] = known.get(row) ?? (gone.has(row) || before < 0 ? -1 : before + 1);
  }
  rowsNow[end + 1] = now.rows;
  return rowsNow;
}

type At = { readonly row: number; readonly column: number };

/** Cells of the page that a person filled though the sheet has nothing there. */
function freeCells(
  { values, formulas = [] }: SeenSheet,
  here: ReadonlyMap<string, Zone>,
  words: ReadonlySet<string>,
  was: SheetPlan,
): At[] {
  const taken = new Set<string>();
  for (const { row, column, rows, columns } of here.values())
    for (let down = -1; down < rows; down++)
      for (let across = 0; across < columns; across++)
        if (down >= 0 || rows > 1) taken.add(`${row + down} ${column + across}`);
  const skeletons = new Set(was.formulas.flatMap(({ cells }) => cells.flat()).map(skeleton));
  return values.flatMap((line, row) =>
    line.slice(0, was.page).flatMap((value, column): At[] => {
      const formula = formulas[row]?.[column] ?? "";
      const isOurs =
        isBuiltBy(value) ||
        taken.has(`${row} ${column}`) ||
        (formula === "" ? typeof value === "string" && words.has(value.trim()) : skeletons.has(skeleton(formula)));
      return (value === "" && formula === "") || isOurs ? [] : [{ row, column }];
    }),
  );
}

/** Beside the same row as before; where nothing is beside it any more, below the sheet. */
function movedFree({ row, column }: At, rowsNow: readonly number[], now: SheetPlan): Move {
  const from = { row, column, rows: 1, columns: 1 };
  let above = row;
  while (above > 0 && (rowsNow[above] ?? -1) < 0) above -= 1;
  const to = Math.max(0, rowsNow[above] ?? 0) + row - above;
  const isFree = now.values[to]?.[column] === "" && !hasFormula(now, to, column);
  return [from, { ...from, row: isFree ? to : now.rows + 1 + (row % 10) }];
}

const hasFormula = ({ formulas }: SheetPlan, row: number, column: number): boolean =>
  formulas.some(({ row: top, column: left, cells }) => (cells[row - top]?.[column - left] ?? "") !== "");
