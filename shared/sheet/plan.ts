import { a1, type Zone, zoneA1 } from "./a1.ts";
import { BUILT_BY, builtByColumn } from "./built-by.ts";
import { type Layout, layOut, usedColumns } from "./layout.ts";
import type { Links, Options, SheetModel, Unit, Values } from "./model.ts";
import { drawCell, drawColumn, HELPER_FORMAT, inputValue, set } from "./plan-cells.ts";
import { rectangles } from "./rectangles.ts";
import type { Draft, SheetPlan } from "./sheet-plan.ts";
import { definedNames, longEnough } from "./table-lengths.ts";
import { APPEARANCES, type Appearance, inType, numberFormat, wrappedRanges } from "./theme.ts";
import type { Validation } from "./validation.ts";

/** The sheet of a model for these choices and inputs. Pure: it reads nothing and writes nothing. */
export function plan(model: SheetModel, options: Options, typed: Values, links: Links = {}): SheetPlan {
  const layout = layOut(longEnough(model, typed, links), options);
  const widths = model.widths.slice(0, usedColumns(layout));
  const columns = widths.length;
  const grid = <T>(fill: T): T[][] => Array.from({ length: layout.rows }, () => Array<T>(columns).fill(fill));
  const draft: Draft = {
    values: grid<string | number>(""),
    formats: grid("@"),
    appearances: grid(APPEARANCES.label),
    aligned: grid("left"),
    validations: grid<Validation | null>(null),
    formulas: [],
  };
  const steps = {
    coarse: typeof typed.step_coarse === "number" ? typed.step_coarse : 1,
    decimals: stepDecimals(typed),
  };
  const format = (unit: Unit) => numberFormat(unit, options, steps);
  // Columns before cells: what stands in a table's last row is a cell of its own.
  drawTables();
  for (const { cell, row, column } of layout.cells) {
    drawCell(draft, cell, row, column, format, inputValue(typed[cell.name ?? ""], 0), options, layout.names, links);
  }
  const page = Math.min(model.foldedFrom ?? columns, columns);
  const builtBy = stamp();
  const borders = (border: NonNullable<Appearance["border"]>) => bordered(draft.appearances, border);
  const onPage = <T>(cells: readonly (readonly T[])[]) => cells.map((row) => row.slice(0, page));
  return {
    rows: layout.rows,
    columns,
    page,
    aside: aside(draft, layout, page),
    widths,
    heights: layout.heights,
    hidden: layout.hidden,
    frozen: model.frozen ?? 0,
    start: startOf(model, layout, draft),
    values: onPage(draft.values),
    formats: onPage(draft.formats),
    appearances: onPage(inType(draft.appearances, model.type)),
    aligned: onPage(draft.aligned),
    validations: onPage(draft.validations),
    formulas: rectangles(draft.formulas, draft.values),
    wrapped: layout.tables.flatMap(wrappedRanges),
    borders: { box: borders("box"), under: borders("under"), rule: borders("rule"), over: borders("over") },
    unprotected: unprotected(layout, draft, columns),
    names: layout.names,
    builtBy,
    defines: definedNames(model, layout.names),
  };

  /** The version in the first row; a blank cell that holds a formula is none. */
  function stamp(): Zone | null {
    const first = (draft.values[0] ?? []).slice(0, page);
    const isTaken = (at: number) =>
      draft.formulas.some(({ row, column }) => row === 0 && column === at) ||
      draft.appearances[0]?.[at] !== APPEARANCES.label;
    const column = builtByColumn(
      first.map((cell, at) => (cell === "" && isTaken(at) ? " " : cell)),
      widths,
    );
    if (column === null || first[0] === undefined || first[0] === "") return null;
    for (const [grid, value] of [
      [draft.values, BUILT_BY],
      [draft.appearances, APPEARANCES.remark],
      [draft.aligned, "left"],
    ] as const)
      (grid[0] as unknown[])[column] = value;
    return { row: 0, column, rows: 1, columns: 1 };
  }

  function drawTables(): void {
    for (const { table, row, column } of layout.tables) {
      table.columns.forEach((one, index) => {
        const zone = { row, column: column + index, rows: table.rows, columns: 1 };
        drawColumn(draft, table, one, zone, format, typed, options, layout.names, links);
      });
    }
  }
}

/** What stands beside the page: written apart, because most of it is blank. */
function aside({ values, formats }: Draft, { tables, cells }: Layout, page: number): SheetPlan["aside"] {
  // One run a row, from its first word to its last: formulas are written afterwards, over the blanks between.
  const words = values.flatMap((line, row) => {
    const filled = line.flatMap((value, column) => (column >= page && value !== "" ? [column] : []));
    const [first, last] = [filled[0], filled[filled.length - 1]];
    return first === undefined || last === undefined
      ? []
      : [{ row, column: first, cells: line.slice(first, last + 1) }];
  });
  const ranges = new Map<string, string[]>();
  const add = (zone: Zone): void => {
    const format = formats[zone.row + zone.rows - 1]?.[zone.column] ?? HELPER_FORMAT;
    ranges.set(format, [...(ranges.get(format) ?? []), zoneA1(zone)]);
  };
  for (const { table, row, column } of tables)
    for (const [at] of table.columns.entries())
      if (column + at >= page) add({ row: row + 1, column: column + at, rows: table.rows + 2, columns: 1 });
  for (const { cell, row, column } of cells)
    if (column >= page && (cell.formula !== undefined || cell.name !== undefined))
      add({ row, column, rows: 1, columns: 1 });
  return { words, formats: [...ranges].map(([format, some]) => ({ format, ranges: some })) };
}

/** The first blank cell of those that a sheet says are filled in first, or the first of them where none is blank. */
function startOf({ fillsFirst = [] }: SheetModel, { names }: Layout, { values }: Draft): string {
  const places = fillsFirst.flatMap((name) => {
    const zone = names.get(name);
    // The row of a table below that of its formulas.
    return zone === undefined ? [] : [{ row: zone.row + (zone.rows > 1 ? 1 : 0), column: zone.column }];
  });
  const start = places.find(({ row, column }) => values[row]?.[column] === "") ?? places[0];
  return start === undefined ? "" : a1(start);
}

/** Digits after the point that the finest step of the scales needs. */
function stepDecimals(typed: Values): number {
  const steps = [typed.step_coarse, typed.step_fine];
  const digits = steps.map((step) =>
    typeof step === "number" && step > 0 ? (String(step).split(".")[1] ?? "").length : 0,
  );
  return Math.min(4, Math.max(0, ...digits));
}

/** Cells of one border below each other, as ranges. */
function bordered(
  appearances: readonly (readonly Appearance[])[],
  border: NonNullable<Appearance["border"]>,
): string[] {
  return runsDown(appearances.map((row) => row.map((appearance) => appearance.border === border)));
}

function runsDown(marked: readonly (readonly boolean[])[]): string[] {
  const zones: Zone[] = [];
  const width = marked[0]?.length ?? 0;
  for (let column = 0; column < width; column++) {
    let from = -1;
    for (let row = 0; row <= marked.length; row++) {
      const is = marked[row]?.[column] ?? false;
      if (is && from < 0) from = row;
      if (!is && from >= 0) {
        const before = zones.find(
          (one) => one.row === from && one.rows === row - from && one.column + one.columns === column,
        );
        if (before) zones[zones.indexOf(before)] = { ...before, columns: before.columns + 1 };
        else zones.push({ row: from, column, rows: row - from, columns: 1 });
        from = -1;
      }
    }
  }
  return zones.map(zoneA1);
}

function unprotected(layout: Layout, draft: Draft, columns: number): string[] {
  const guarded = draft.values.map((row) => row.map(() => false));
  for (const { row, column } of draft.formulas) set(guarded, row, column, true);
  for (const { table, row, column } of layout.tables) {
    for (const edge of [row + 1, row + table.rows + 2]) {
      for (let at = column; at < Math.min(columns, column + table.columns.length); at++) set(guarded, edge, at, true);
    }
    if (!table.hidden) continue;
    for (const [at, { formula, takesWeights }] of table.columns.entries())
      if (formula !== undefined && !takesWeights)
        for (let down = row + 2; down < row + table.rows + 2; down++) set(guarded, down, column + at, true);
  }
  return runsDown(guarded.map((row) => row.map((one) => !one)));
}
