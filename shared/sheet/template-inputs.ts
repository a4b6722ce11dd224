// What a template asks for, as a form asks it: read off the same model that the sheet is made from.
import type { Block, Bounds, CellModel, ColumnModel, Line, SheetModel, Table, Unit } from "./model.ts";

export type TemplateInput = {
  readonly name: string;
  /** Without its unit, which stands apart. */
  readonly label: string;
  readonly unit: Unit;
  readonly hint?: string;
  /** What the sheet starts with where nothing is typed. */
  readonly value?: number | string;
  readonly choices?: readonly string[];
  /** The column whose entries it may name. */
  readonly among?: string;
  readonly bounds?: Bounds;
};

/** A table's own inputs, and how many rows it has. */
export type InputTable = {
  readonly table: string;
  readonly rows: number;
  /** It is longer where more rows are typed. */
  readonly grows: boolean;
  readonly columns: readonly TemplateInput[];
};

export type InputGroup = {
  /** The block, or the part that its blocks and tables make up. */
  readonly name: string;
  /** "" where the block has none. */
  readonly heading: string;
  readonly inputs: readonly TemplateInput[];
  readonly tables: readonly InputTable[];
};

/** Every formula sheet has these, and a form of its own for them; the last three are filled in on the sheet. */
export const BLOCKS_OF_ALL: ReadonlySet<string> = new Set([
  "name",
  "make",
  "tin",
  "water",
  "cost",
  "label",
  "chart",
  "setup",
]);
const TABLES_OF_ALL: ReadonlySet<string> = new Set(["sizes", "formula"]);

/** What a template has of its own, block by block, in the order of the sheet; the parts of one part stand together. */
export function inputGroups(model: SheetModel): readonly InputGroup[] {
  const groups = new Map<string, InputGroup>();
  for (const item of model.bands.flat()) {
    const isTable = "table" in item;
    if ((isTable ? TABLES_OF_ALL : BLOCKS_OF_ALL).has(isTable ? item.table : item.block)) continue;
    const tables = isTable ? [tableOf(item)].filter(({ columns }) => columns.length > 0) : [];
    const inputs = isTable ? [] : inputsOf(item);
    if (tables.length + inputs.length === 0) continue;
    const name = item.when ?? (isTable ? item.table : item.block);
    const known = groups.get(name) ?? { name, heading: "", inputs: [], tables: [] };
    groups.set(name, {
      name,
      heading: known.heading || (isTable ? "" : headingOf(item)),
      inputs: [...known.inputs, ...inputs],
      tables: [...known.tables, ...tables],
    });
  }
  return [...groups.values()];
}

/** The inputs of one of a template's tables; undefined where it has no such table. */
export function inputTable(model: SheetModel, table: string): InputTable | undefined {
  const tableItem = model.bands.flat().find((item) => "table" in item && item.table === table);
  return tableItem !== undefined && "table" in tableItem ? tableOf(tableItem) : undefined;
}

/** The cell of a name that is typed in a template. */
export const inputCell = (model: SheetModel, name: string): CellModel | undefined =>
  model.bands
    .flat()
    .flatMap((item) => ("lines" in item ? item.lines : []))
    .flatMap(({ cells }) => cells)
    .find((cell) => cell.name === name && isInput(cell));

/** Whether it mixes a batter; everything else is a dough. */
export const makesBatter = (model: SheetModel): boolean => inputCell(model, "by")?.choices?.includes("batter") ?? false;

const isInput = ({ role, name, formula }: CellModel): boolean =>
  role === "input" && name !== undefined && formula === undefined;

const headingOf = ({ lines }: Block): string =>
  lines.flatMap(({ cells }) => cells).find(({ role, text }) => role === "heading" && text !== undefined)?.text ?? "";

const inputsOf = ({ lines }: Block): TemplateInput[] =>
  lines.flatMap((line) =>
    line.cells.filter((cell) => isInput(cell) && !cell.onSheet).map((cell) => inputOf(cell, line)),
  );

function inputOf(cell: CellModel, { cells }: Line): TemplateInput {
  const label = cells.find(({ role }) => role === "label")?.text ?? "";
  const remark = cells.find(({ role, text, formula }) => role === "remark" && formula === undefined && text)?.text;
  const hint = cell.hint ?? remark;
  return {
    name: cell.name ?? "",
    label: cell.asks ?? withoutUnit(label),
    unit: cell.unit ?? "text",
    ...(hint === undefined ? {} : { hint }),
    ...choicesOf(cell),
  };
}

function choicesOf({ value, choices, among, bounds }: CellModel): Partial<TemplateInput> {
  return {
    ...(value === undefined ? {} : { value }),
    ...(choices === undefined ? {} : { choices }),
    ...(among === undefined ? {} : { among }),
    ...(bounds === undefined ? {} : { bounds }),
  };
}

const tableOf = ({ table, rows, spare, columns }: Table): InputTable => ({
  table,
  rows,
  grows: spare !== undefined,
  columns: columns.filter(({ role, onSheet }) => role === "input" && !onSheet).map(columnOf),
});

const columnOf = ({ name, head, unit, choices, bounds }: ColumnModel): TemplateInput => ({
  name,
  label: withoutUnit(head),
  unit,
  ...(choices === undefined ? {} : { choices }),
  ...(bounds === undefined ? {} : { bounds }),
});

/** "Diameter ({length})" is Diameter; the form puts the unit that was chosen beside it. */
const withoutUnit = (text: string): string => text.replace(/\s*\((?:min|[^()]*\{[a-z]+\}[^()]*)\)/g, "").trim();
