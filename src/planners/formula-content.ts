// What is typed into a formula sheet that makes its formula, and the cells that are written where it becomes another.
import {
  CELLS,
  type CellName,
  type Content,
  contentText,
  isBlank,
  type Line,
  TABLE_NAMES,
  TABLES,
  type TableName,
  tidy,
} from "../../shared/adjust/content.ts";
import { nameKey } from "../../shared/larder/built-in-larder.ts";
import type { CellsWrite, RowsInsert, Stamp } from "../../shared/protocol/history.ts";
import type { SeenSheet } from "../../shared/protocol/look.ts";
import { layOut } from "../../shared/sheet/layout.ts";
import type { Value } from "../../shared/sheet/model.ts";
import { filledTables } from "../../shared/typing/cells.ts";
import { type FormulaSheet, refuseOther, seenAs } from "./formula-sheet.ts";
import { partsOn } from "./parts-on-sheet.ts";

/** Typed rows of a table: the first, and how many; both rows of the sheet counted from 0. */
type Rows = { readonly first: number; readonly many: number };

export type SheetContent = {
  readonly seen: SeenSheet;
  readonly sheet: FormulaSheet;
  readonly content: Content;
  readonly has: (name: string) => boolean;
  readonly rows: (table: TableName) => Rows | undefined;
};

export function contentIn(seen: SeenSheet): SheetContent {
  const sheet = seenAs(seen) ?? refuseOther(seen.name);
  const { model, options } = sheet;
  const parts = partsOn(seen.values, model, options);
  const { names } = layOut(model, { ...options, parts });
  const has = (name: string) => names.has(name) && sheet.zone(name) !== undefined;
  const lasts = new Map(filledTables(seen.values).map(({ top, last }) => [top, last]));
  const rows = (table: TableName): Rows | undefined => {
    const top = has(TABLES[table][0]) ? sheet.zone(TABLES[table][0])?.row : undefined;
    const last = top === undefined ? undefined : lasts.get(top);
    return top === undefined || last === undefined ? undefined : { first: top + 1, many: last - top - 1 };
  };
  const value = (row: number, column: number): Value => {
    const cell = seen.values[row]?.[column] ?? null;
    return cell === "" ? null : typeof cell === "boolean" ? String(cell).toUpperCase() : cell;
  };
  const lines = (table: TableName): Line[] => {
    const { first, many } = rows(table) ?? { first: 0, many: 0 };
    const columns = TABLES[table].map((name) => (has(name) ? sheet.zone(name)?.column : undefined));
    return Array.from({ length: many }, (_, at) =>
      columns.map((column) => (column === undefined ? null : value(first + at, column))),
    );
  };
  const cells = CELLS.flatMap((name): [CellName, Value][] => {
    const zone = has(name) ? sheet.zone(name) : undefined;
    return zone === undefined ? [] : [[name, value(zone.row, zone.column)]];
  });
  return {
    seen,
    sheet,
    has,
    rows,
    content: {
      template: model.name,
      units: { weight: options.weight, temperature: options.temperature, length: options.length },
      tables: { rows: lines("rows"), sizes: lines("sizes"), steps: lines("steps") },
      cells: Object.fromEntries(cells),
    },
  };
}

/** Rows of an older version where those of the same name stand now; the others take what is left, from the top. */
export function inPlaces(now: readonly Line[], wanted: readonly Line[]): Line[] {
  const key = ([name]: Line) => (isBlank(name) ? "" : nameKey(String(name)));
  const left = wanted.filter((line) => !line.every(isBlank));
  const lines = now.map((line): Line | null => {
    const at = key(line) === "" ? -1 : left.findIndex((one) => key(one) === key(line));
    return at < 0 ? null : (left.splice(at, 1)[0] ?? null);
  });
  const filled = lines.map((line, at): Line => line ?? (isBlankLine(now[at]) ? [] : (left.shift() ?? [])));
  const free = filled.map((line): Line => (line.length > 0 ? line : (left.shift() ?? [])));
  return [...free, ...left];
}

const isBlankLine = (line: Line | undefined): boolean => line === undefined || line.every(isBlank);

export type Changes = {
  readonly inserts: readonly RowsInsert[];
  readonly writes: readonly CellsWrite[];
  readonly stamps: readonly Stamp[];
  /** The sheet as it will be, for what is kept of it. */
  readonly after: string;
};

/** A single cell beside the formula itself, as the amount of an order. */
export type Beside = { readonly name: string; readonly value: Value };

export function changesTo(now: SheetContent, wanted: Content, beside: readonly Beside[] = []): Changes {
  const inserts: RowsInsert[] = [];
  const cells: Cell[] = [];
  for (const table of TABLE_NAMES) {
    const place = now.rows(table);
    if (place === undefined) continue;
    const lines = wanted.tables[table];
    const more = Math.max(0, lines.length - place.many);
    if (more > 0) inserts.push({ after: place.first + place.many - 1, many: more });
    TABLES[table].forEach((name, at) => {
      const zone = now.has(name) ? now.sheet.zone(name) : undefined;
      if (zone === undefined) return;
      for (let row = 0; row < Math.max(lines.length, place.many); row++) {
        const [was, is] = [now.content.tables[table][row]?.[at] ?? null, lines[row]?.[at] ?? null];
        if (isSame(was, is)) continue;
        const last = Math.min(row, place.many - 1);
        cells.push({ row: place.first + last, below: row - last, column: zone.column, value: is });
      }
    });
  }
  const single = (name: string, value: Value): void => {
    const zone = now.has(name) ? now.sheet.zone(name) : undefined;
    if (zone !== undefined) cells.push({ row: zone.row, below: 0, column: zone.column, value });
  };
  for (const name of CELLS)
    if (name in wanted.cells && !isSame(now.content.cells[name] ?? null, wanted.cells[name] ?? null))
      single(name, wanted.cells[name] ?? null);
  for (const { name, value } of beside) single(name, value);
  return moved(now, inserts, cells);
}

const isSame = (one: Value, other: Value): boolean => (isBlank(one) && isBlank(other)) || tidy(one) === tidy(other);

/** In a row of the sheet as it is, or so many below it in rows that come in there. */
type Cell = { readonly row: number; readonly below: number; readonly column: number; readonly value: Value };
const STAMPS = { version: "number", date: "day", change_1: "line" } as const;

/** Everything where it will stand: rows are inserted from below, and what stands under them moves down. */
function moved(now: SheetContent, inserts: readonly RowsInsert[], cells: readonly Cell[]): Changes {
  const down = (row: number): number =>
    row + inserts.reduce((sum, { after, many }) => sum + (after < row ? many : 0), 0);
  const cellsNow = cells.map(({ row, below, column, value }) => ({
    row: down(row) + below,
    column,
    value: value ?? "",
  }));
  const stamps = Object.entries(STAMPS).flatMap(([name, is]): Stamp[] => {
    const zone = now.has(name) ? now.sheet.zone(name) : undefined;
    return zone === undefined ? [] : [{ row: down(zone.row), column: zone.column, is }];
  });
  const fromBelow = [...inserts].sort((one, other) => other.after - one.after);
  const grid = now.seen.values.map((line) => [...line]);
  for (const { after, many } of fromBelow) grid.splice(after + 1, 0, ...Array.from({ length: many }, () => []));
  for (const { row, column, value } of cellsNow) {
    const line = grid[row] ?? [];
    while (line.length <= column) line.push("");
    line[column] = value;
    grid[row] = line;
  }
  return {
    inserts: fromBelow,
    writes: runs(cellsNow),
    stamps,
    after: contentText(contentIn({ ...now.seen, values: grid }).content),
  };
}

/** Cells below each other in a column are written at once. */
function runs(cells: readonly { row: number; column: number; value: string | number }[]): CellsWrite[] {
  const sorted = [...cells].sort((one, other) => one.column - other.column || one.row - other.row);
  const all: { row: number; column: number; cells: (string | number)[][] }[] = [];
  for (const { row, column, value } of sorted) {
    const last = all[all.length - 1];
    if (last !== undefined && last.column === column && last.row + last.cells.length === row) last.cells.push([value]);
    else all.push({ row, column, cells: [[value]] });
  }
  return all;
}
