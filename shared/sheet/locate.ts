// Where the named cells of a built sheet stand now, found by the words that were written beside them.
import { trimmedText } from "../base/words.ts";
import type { Zone } from "./a1.ts";
import { type Layout, labelText, layOut, type PlacedCell } from "./layout.ts";
import type { Options, SheetModel, Table } from "./model.ts";

export type Located = {
  readonly model: SheetModel;
  /** The units it was built with; its parts are those of the model, whether built or not. */
  readonly options: Options;
  /** Cells, and columns of tables from edge row to edge row, as far as they are there. */
  readonly zones: ReadonlyMap<string, Zone>;
};

type Grid = readonly (readonly unknown[])[];
type Place = { readonly row: number; readonly column: number };
type Match = { readonly label: PlacedCell; readonly row: number; readonly column: number };

const WEIGHTS = ["g", "oz"] as const;
const TEMPERATURES = ["C", "F"] as const;
const LENGTHS = ["cm", "in"] as const;

/** Begins the label under a table. */
export const TOTAL = "Total, ";

/** A word that is missing counts this much of a word that is there: parts may have been left out. */
const MISSING = 0.25;

/**
 * The model and the units whose words a sheet shows best, and its cells by their names; null where its table is not there.
 * Rows may have been inserted, deleted or sorted, and columns inserted beside the table.
 */
export function locate(grid: Grid, models: readonly SheetModel[], table = "formula"): Located | null {
  const texts = new Set(grid.flatMap((row) => row.map(trimmedText)));
  let best: { score: number; model: SheetModel; options: Options; layout: Layout } | undefined;
  for (const model of modelsMarked(models, texts)) {
    for (const options of optionsOf(model)) {
      const layout = layOut(model, options);
      const words = wordsOf(layout, options);
      const count = words.filter((word) => texts.has(word)).length;
      const score = count - MISSING * (words.length - count);
      if (best === undefined || score > best.score) best = { score, model, options, layout };
    }
  }
  if (best === undefined) return null;
  const zones = zonesOf(grid, best.layout, best.options);
  const columns = best.layout.tables.find(({ table: { table: name } }) => name === table)?.table.columns ?? [];
  if (columns.length === 0 || !columns.every(({ name, role }) => role !== "computed" || zones.has(name))) return null;
  return { model: best.model, options: best.options, zones };
}

/** Two models that lack their parts may look alike: the one whose mark is there is meant, whatever else fits. */
function modelsMarked(models: readonly SheetModel[], texts: ReadonlySet<string>): readonly SheetModel[] {
  const marked = models.filter(({ mark }) => mark !== undefined && texts.has(mark));
  return marked.length === 0 ? models : marked;
}

function optionsOf(model: SheetModel): Options[] {
  return WEIGHTS.flatMap((weight) =>
    TEMPERATURES.flatMap((temperature) =>
      LENGTHS.map((length): Options => ({ weight, temperature, length, parts: model.parts })),
    ),
  );
}

/** What is always written as it is: no name of a cell, so nothing typed. */
const isFixed = ({ cell }: PlacedCell): boolean =>
  cell.name === undefined && (cell.text ?? "") !== "" && cell.formula === undefined;

function wordsOf({ cells, tables }: Layout, options: Options): string[] {
  const heads = tables.flatMap(({ table }) => table.columns.map(({ head }) => labelText(head, options)));
  return [...heads, ...cells.filter(isFixed).map(({ cell }) => labelText(cell.text ?? "", options))];
}

function zonesOf(grid: Grid, layout: Layout, options: Options): Map<string, Zone> {
  const zones = new Map<string, Zone>();
  const fixed = fixedCells(grid, layout, options);
  for (const label of layout.cells) {
    const { name, spills = [] } = label.cell;
    if (name === undefined && spills.length === 0) continue;
    const place = label.cell.role === "helper" ? belowItsLabel(label, fixed) : placeInBlock(label, fixed, grid, layout);
    if (place === undefined || grid[place.row] === undefined) continue;
    [name, ...spills].forEach((one, at) => {
      if (one) zones.set(one, { row: place.row, column: place.column + at, rows: 1, columns: 1 });
    });
  }
  const tables = layout.tables.flatMap(({ table, column }) => {
    const heads = table.columns.map(({ head }) => labelText(head, options));
    const row = headingRow(grid, heads);
    return row === undefined ? [] : [{ table, column, heads, row }];
  });
  // What stands beside a table's page ends with it: nothing else bounds it there.
  const ends = new Map<number, number>();
  for (const { table, column, heads, row } of tables) {
    const isBeside = table.columns.every(({ role }) => role === "helper");
    const columns = columnsOf(grid[row] ?? [], heads, isBeside);
    const wide = Math.max(...columns, column + heads.length - 1);
    const below = [
      ...fixed.filter((one) => one.column >= column && one.column <= wide).map((one) => one.row),
      ...tables.map((one) => one.row),
    ].filter((one) => one > row);
    const end = (isBeside ? ends.get(row) : undefined) ?? endOf(grid, table, column, Math.min(grid.length, ...below));
    if (!ends.has(row)) ends.set(row, end);
    table.columns.forEach(({ name }, at) => {
      const column = columns[at] ?? -1;
      if (column >= 0 && end > row + 1) zones.set(name, { row: row + 1, column, rows: end - row - 1, columns: 1 });
    });
  }
  return zones;
}

/** A word may head a column of the page and one beside it; a column whose words are computed stands beside those that are not. */
function columnsOf(line: readonly unknown[], heads: readonly string[], isBeside: boolean): number[] {
  const texts = line.map(trimmedText);
  const headed = heads.map((head) => (head === "" ? -1 : isBeside ? texts.lastIndexOf(head) : texts.indexOf(head)));
  return heads.map((head, at) => {
    if (head !== "") return headed[at] ?? -1;
    for (let away = 1; away < heads.length; away++)
      for (const near of [at - away, at + away]) {
        const column = headed[near] ?? -1;
        if (column >= 0) return column + at - near;
      }
    return -1;
  });
}

/** A table with a total ends with it. */
function endOf(grid: Grid, { total }: Table, column: number, end: number): number {
  if (total === undefined) return end;
  for (let row = end - 1; row >= 0; row--) if (trimmedText(grid[row]?.[column]).startsWith(TOTAL)) return row + 1;
  return end;
}

/** The fixed words that are there, the first of two in a column being the first in the model, too. */
function fixedCells(grid: Grid, { cells }: Layout, options: Options): Match[] {
  const taken = new Map<string, number>();
  return cells.filter(isFixed).flatMap((label): Match[] => {
    const text = labelText(label.cell.text ?? "", options);
    if (label.cell.role === "helper") return besideThePage(grid, label, text);
    const key = `${label.column} ${text}`;
    const from = taken.get(key) ?? 0;
    const row = grid.findIndex((line, index) => index >= from && trimmedText(line[label.column]) === text);
    if (row < 0) return [];
    taken.set(key, row + 1);
    return [{ label, row, column: label.column }];
  });
}

/** What stands beside the page leaves no gap for parts that are not built: it is found by its words alone. */
function besideThePage(grid: Grid, label: PlacedCell, text: string): Match[] {
  for (const [row, line] of grid.entries()) {
    const column = line.findIndex((cell) => trimmedText(cell) === text);
    if (column >= 0) return [{ label, row, column }];
  }
  return [];
}

/** A single figure beside the page has its name over it. */
function belowItsLabel({ row, column }: PlacedCell, fixed: readonly Match[]): Place | undefined {
  const label = fixed.find(
    ({ label: placed }) => placed.cell.role === "helper" && placed.row === row - 1 && placed.column === column,
  );
  return label === undefined ? undefined : { row: label.row + 1, column: label.column };
}

/** A block has no more lines in a row whose words are computed. */
const FARTHEST = 6;

/**
 * By the words of its own block: those of another say nothing of a block that is not built. A line whose words are not there was
 * left out, unless somebody wrote others over them.
 */
function placeInBlock(cell: PlacedCell, fixed: readonly Match[], grid: Grid, { cells }: Layout): Place | undefined {
  const words = cells.filter((one) => one.of === cell.of && isFixed(one));
  if (words.length === 0) return placeOf(cell, fixed);
  const ofBlock = fixed.filter(({ label }) => label.of === cell.of);
  const ofLine = words.filter(({ row }) => row === cell.row);
  const found = ofBlock.filter(({ label }) => label.row === cell.row);
  if (ofLine.length === 0) return placeOf(cell, ofBlock);
  if (found.length > 0) return placeOf(cell, found);
  const isWrittenOver = ofLine.some((word) => {
    const place = placeOf(word, ofBlock);
    const there = place === undefined ? "" : trimmedText(grid[place.row]?.[place.column]);
    return there !== "" && !fixed.some(({ row, column }) => row === place?.row && column === place.column);
  });
  return isWrittenOver ? placeOf(cell, ofBlock) : undefined;
}

/** By the words in its own line, to the left before to the right; otherwise by the nearest above, and for a title below. */
function placeOf({ row, column }: PlacedCell, fixed: readonly Match[]): Place | undefined {
  const rank = ({ label: placed }: Match): number => {
    const [down, left] = [row - placed.row, column - placed.column];
    if (down > FARTHEST || down < -2) return Number.POSITIVE_INFINITY;
    const side = left < 0 ? 50 - left : left;
    return down === 0 ? side : down > 0 ? (left < 0 ? 900 : 100) + 10 * down + side / 10 : 1000 - 10 * down + side / 10;
  };
  let best: Match | undefined;
  for (const one of fixed) if (rank(one) < (best === undefined ? Number.POSITIVE_INFINITY : rank(best))) best = one;
  if (best === undefined) return undefined;
  return { row: best.row + row - best.label.row, column: best.column + column - best.label.column };
}

/** The row with most of a table's headings, at least two thirds of them; those that are computed are not counted. */
function headingRow(grid: Grid, all: readonly string[]): number | undefined {
  const heads = all.filter((head) => head !== "");
  if (heads.length === 0) return undefined;
  let best: { row: number; hits: number } | undefined;
  grid.forEach((line, row) => {
    const texts = new Set(line.map(trimmedText));
    const hits = heads.filter((head) => texts.has(head)).length;
    if (hits * 3 >= heads.length * 2 && hits > (best?.hits ?? 0)) best = { row, hits };
  });
  return best?.row;
}
