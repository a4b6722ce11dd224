import { absolute, type Zone, zoneA1 } from "./a1.ts";
import type { Band, Block, CellModel, Condition, Formula, Line, Links, Options, SheetModel, Table } from "./model.ts";

export type PlacedCell = {
  readonly cell: CellModel;
  readonly row: number;
  readonly column: number;
  /** Its block or table; cells of one are built or left out together, as far as no line says otherwise. */
  readonly of: Block | Table;
};
export type PlacedTable = { readonly table: Table; readonly row: number; readonly column: number };

/** Where everything of a model stands once parts that are not built have been left out. */
export type Layout = {
  readonly cells: readonly PlacedCell[];
  readonly tables: readonly PlacedTable[];
  readonly heights: readonly { readonly row: number; readonly height: number }[];
  /** Rows that are not shown: those of tables' formulas. */
  readonly hidden: readonly number[];
  readonly rows: number;
  /** Cells and whole columns of tables, by name. */
  readonly names: ReadonlyMap<string, Zone>;
};

const UNIT_CHOICES = ["weight", "temperature", "length"] as const;

export function holds(when: Condition | undefined, options: Options): boolean {
  if (when === undefined) return true;
  return when.split("&").every((one) => {
    const wanted = one.replace(/^!/, "");
    const there = options.parts.includes(wanted) || UNIT_CHOICES.some((unit) => options[unit] === wanted);
    return one.startsWith("!") ? !there : there;
  });
}

const EDGE = 16;
/** Two lines of a heading. */
const TALL = 36;
/** The row that ends a table without a total, and only has to be there. */
const END = 6;

/** A table is its heading, an edge row, its rows, and another edge row. */
const tableHeight = (table: Table) => table.rows + 3;
const downOf = (item: Block | Table) => ("down" in item ? (item.down ?? 0) : 0);
const isTable = (item: Block | Table): item is Table => "table" in item;

export function layOut(model: SheetModel, options: Options): Layout {
  const cells: PlacedCell[] = [];
  const tables: PlacedTable[] = [];
  const heights: { row: number; height: number }[] = [];
  const hidden = new Set<number>();
  const names = new Map<string, Zone>();
  let row = 0;
  for (const band of model.bands.map((one) => present(one, options)).filter((one) => one.length > 0)) {
    // A blank row between what belongs together.
    if (row > 0) {
      if (model.gap !== undefined) heights.push({ row, height: model.gap });
      row += 1;
    }
    let tallest = 0;
    const highest = Math.min(...band.map(downOf));
    for (const item of band) {
      if (isTable(item)) {
        placeTable(item, row);
        if (item.tallHead) heights.push({ row, height: TALL });
        // Beside a block or a list the edge row keeps its height: a line stands in it too.
        if (item.hidden) {
          if (item.total === undefined && item === band[0]) heights.push({ row: row + item.rows + 2, height: END });
        } else if (item === band[0] && band.every((one) => isTable(one) && one.list !== true))
          heights.push({ row: row + 1, height: EDGE });
        tallest = Math.max(tallest, tableHeight(item));
      } else {
        const down = downOf(item) - highest;
        tallest = Math.max(tallest, down + placeBlock(item, row + down));
      }
    }
    row += tallest;
  }
  const width = usedColumns({ cells, tables });
  for (const { name, ...place } of model.places ?? [])
    nameZone(name, { rows: row - place.row, columns: width - place.column, ...place });
  return { cells, tables, heights, hidden: [...hidden], rows: row, names };

  function placeTable(table: Table, top: number): void {
    tables.push({ table, row: top, column: table.left });
    if (table.hidden) hidden.add(top + 1);
    if (table.total !== undefined) placeLine({ cells: table.total }, top + table.rows + 2, table.left, table);
    // With its headings, as the larder argument takes it.
    nameZone(`${table.table}_table`, {
      row: top,
      column: table.left,
      rows: tableHeight(table),
      columns: table.columns.length,
    });
    table.columns.forEach(({ name }, index) => {
      nameZone(name, { row: top + 1, column: table.left + index, rows: table.rows + 2, columns: 1 });
      if (table.hidden) nameZone(`${name}_top`, { row: top + 1, column: table.left + index, rows: 1, columns: 1 });
    });
    // From its last row to the blank one below it, where something may be typed by mistake.
    const firstComputed = table.columns.findIndex(({ role }) => role !== "input");
    if (table.hidden && table.total === undefined && firstComputed > 0)
      nameZone(`${table.table}_below`, {
        row: top + table.rows + 2,
        column: table.left,
        rows: 2,
        columns: firstComputed,
      });
  }

  function placeBlock(block: Block, top: number): number {
    const lines = block.lines.filter(({ when }) => holds(when, options));
    lines.forEach((line, index) => {
      placeLine(block.close ? closedUp(line, options) : line, top + index, block.left, block);
    });
    return lines.length;
  }

  function placeLine(line: Line, at: number, left: number, of: Block | Table): void {
    if (line.height !== undefined) heights.push({ row: at, height: line.height });
    for (const cell of line.cells.filter(({ when }) => holds(when, options))) {
      const column = left + cell.at;
      cells.push({ cell, row: at, column, of });
      [cell.name, ...(cell.spills ?? [])].forEach((name, index) => {
        if (name) nameZone(name, { row: at, column: column + index, rows: 1, columns: 1 });
      });
    }
  }

  function nameZone(name: string, zone: Zone): void {
    if (names.has(name)) throw new Error(`${model.name}: two cells are named ${name}`);
    names.set(name, zone);
  }
}

/** The line's cells that are built, side by side. */
function closedUp(line: Line, options: Options): Line {
  const cells = line.cells.filter(({ when }) => holds(when, options));
  return { ...line, cells: cells.map((cell, at) => ({ ...cell, at })) };
}

function present(band: Band, options: Options): (Block | Table)[] {
  return band.filter(({ when }) => holds(when, options));
}

/** Columns up to the last that is filled. */
export function usedColumns({ cells, tables }: Pick<Layout, "cells" | "tables">): number {
  return Math.max(
    ...cells.map(({ cell, column }) => column + 1 + (cell.spills?.length ?? 0)),
    ...tables.map(({ table, column }) => column + table.columns.length),
  );
}

/** Costs of a piece have two decimals more than money. */
export const withDecimals = (formula: string, { moneyDecimals = 2 }: Options): string =>
  formula.replace(/\{cost_decimals\}/g, String(moneyDecimals + 2));

/** The formula of these options, names turned into references of its own sheet. */
export function formulaText(formula: Formula, options: Options, names: Layout["names"], links: Links = {}): string {
  const chosen = typeof formula === "string" ? formula : formula.find(({ when }) => holds(when, options))?.formula;
  if (chosen === undefined) throw new Error("no formula for these options");
  return withDecimals(chosen, options)
    .replace(/\{(weight|temperature|length)\}/g, (_, unit: "weight" | "temperature" | "length") => options[unit])
    .replace(/@([a-z_]+[a-z0-9_]*)/g, (_, name: string) => {
      const zone = names.get(name);
      if (zone === undefined) throw new Error(`the formula ${chosen} names @${name}, and no cell is called that`);
      return absolute(zoneA1(zone));
    })
    .replace(/\[([a-z_]+)\]/g, (_, name: string) => String(links[name] ?? ""));
}

/** A label with its unit in it: {temperature} is °C. */
export function labelText(text: string, options: Options): string {
  return text
    .replace(/\{weight\}/g, options.weight)
    .replace(/\{priced\}/g, options.weight === "g" ? "kg" : "lb")
    .replace(/\{temperature\}/g, `°${options.temperature}`)
    .replace(/\{length\}/g, options.length);
}
