import type { Band, Block, CellModel, ColumnModel, Formula, Options, Table } from "./model.ts";

/** The bands with the formulas of the form that was chosen: in the plain one each cell has a formula of its own. */
export function formed(bands: readonly Band[], { form }: Options): readonly Band[] {
  if (form !== "plain") return bands;
  return bands.map((band) => band.map((item) => ("table" in item ? plainTable(item) : plainBlock(item))));
}

function plainBlock(block: Block): Block {
  return { ...block, lines: block.lines.map((line) => ({ ...line, cells: line.cells.flatMap(plainCells) })) };
}

function plainCells(cell: CellModel): CellModel[] {
  const { plain, spills = [], name, formula: _, ...rest } = cell;
  if (plain === undefined) return [cell];
  return [name ?? "", ...spills].map((one, place) => ({
    ...rest,
    at: cell.at + place,
    formula: formulaAt(plain, place, name),
    ...(one === "" ? {} : { name: one }),
  }));
}

function plainTable(table: Table): Table {
  const formulas = new Map<string, Formula>();
  for (const { name, spills = [], plain } of table.columns) {
    if (plain === undefined) continue;
    [name, ...spills].forEach((one, place) => {
      if (one !== "") formulas.set(one, formulaAt(plain, place, name));
    });
  }
  const inPlain = (column: ColumnModel): ColumnModel => {
    const formula = formulas.get(column.name);
    if (formula === undefined) return column;
    const { spills: _, ...rest } = column;
    return { ...rest, formula };
  };
  return { ...table, columns: table.columns.map(inPlain) };
}

function formulaAt(plain: readonly Formula[], place: number, name = ""): Formula {
  const formula = plain[place];
  if (formula === undefined) throw new Error(`${name} fills more cells than it has plain formulas for`);
  return formula;
}
