import { a1, type Zone, zoneA1 } from "./a1.ts";
import { formulaText, holds, type Layout, labelText, layOut, usedColumns } from "./layout.ts";
import type { CellModel, ColumnModel, Links, Options, SheetModel, Table, Unit, Value, Values } from "./model.ts";
import { type FormulaAt, type FormulaRectangle, rectangles } from "./rectangles.ts";
import { type DefinedName, definedNames, linkedRows, longEnough } from "./table-lengths.ts";
import { exactFormat, LOOKS, type Look, numberFormat } from "./theme.ts";
import { inType, wrappedRanges } from "./type-size.ts";
import { type Validation, validationOf } from "./validation.ts";

/** All that is written to a sheet; every grid has `rows` × `page` cells, which is what a person sees of its `columns`. */
export type SheetPlan = {
  readonly rows: number;
  readonly columns: number;
  /** Columns that are not folded away. */
  readonly page: number;
  /** Words beside the page, in runs of cells, and how its cells show numbers. */
  readonly aside: {
    readonly words: readonly {
      readonly row: number;
      readonly column: number;
      readonly cells: readonly (string | number)[];
    }[];
    readonly formats: readonly { readonly format: string; readonly ranges: readonly string[] }[];
  };
  readonly widths: readonly number[];
  readonly heights: readonly { readonly row: number; readonly rows?: number; readonly height: number }[];
  /** Rows that are not shown. */
  readonly hidden: readonly number[];
  /** Rows at the top that stay in sight. */
  readonly frozen: number;
  /** The first cell to fill in, where the cursor stands when the sheet is built; "" where it stays. */
  readonly start: string;
  /** Texts and numbers as typed; "" where a cell is blank or holds a formula. */
  readonly values: readonly (readonly (string | number)[])[];
  readonly formats: readonly (readonly string[])[];
  readonly looks: readonly (readonly Look[])[];
  readonly aligned: readonly (readonly ("left" | "right" | "center")[])[];
  readonly validations: readonly (readonly (Validation | null)[])[];
  /** Rectangles of formulas, ";" between arguments. */
  readonly formulas: readonly FormulaRectangle[];
  /** Headings of tables, which may need two lines. */
  readonly wrapped: readonly string[];
  readonly borders: Readonly<Record<"box" | "under" | "rule" | "over", readonly string[]>>;
  /** Everything but edge rows, formulas and what they fill, weights left out: a warning is shown where somebody types there. */
  readonly unprotected: readonly string[];
  readonly names: Layout["names"];
  /** Names that the whole workbook is to know. */
  readonly defines: readonly DefinedName[];
};

type Draft = {
  readonly values: (string | number)[][];
  readonly formats: string[][];
  readonly looks: Look[][];
  readonly aligned: ("left" | "right" | "center")[][];
  readonly validations: (Validation | null)[][];
  readonly formulas: FormulaAt[];
};

const LEFT_ALIGNED: ReadonlySet<Unit> = new Set<Unit>(["text", "date"]);
/** A day stands apart from the time before it. */
const sideOf = (unit: Unit) => (LEFT_ALIGNED.has(unit) ? "left" : unit === "day" ? "center" : "right");
const AS_TYPED = "General";

/** The sheet of a model for these choices and inputs. Pure: it reads nothing and writes nothing. */
export function plan(model: SheetModel, options: Options, typed: Values, links: Links = {}): SheetPlan {
  const layout = layOut(longEnough(model, typed, links), options);
  const widths = model.widths.slice(0, usedColumns(layout));
  const columns = widths.length;
  const grid = <T>(fill: T): T[][] => Array.from({ length: layout.rows }, () => Array<T>(columns).fill(fill));
  const draft: Draft = {
    values: grid<string | number>(""),
    formats: grid("@"),
    looks: grid(LOOKS.label),
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
  const borders = (border: NonNullable<Look["border"]>) => bordered(draft.looks, border);
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
    looks: onPage(inType(draft.looks, model.type)),
    aligned: onPage(draft.aligned),
    validations: onPage(draft.validations),
    formulas: rectangles(draft.formulas, draft.values),
    wrapped: layout.tables.flatMap(wrappedRanges),
    borders: { box: borders("box"), under: borders("under"), rule: borders("rule"), over: borders("over") },
    unprotected: unprotected(layout, draft, columns),
    names: layout.names,
    defines: definedNames(model, layout.names),
  };

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

function inputValue(typed: Values[string] | undefined, row: number): Value | undefined {
  return typeof typed === "object" && typed !== null ? typed[row] : row === 0 ? typed : undefined;
}

type Formatter = (unit: Unit) => string;

function drawCell(
  draft: Draft,
  cell: CellModel,
  row: number,
  column: number,
  format: Formatter,
  typed: Value | undefined,
  options: Options,
  names: Layout["names"],
  links: Links,
): void {
  const { unit = "text", formula } = cell;
  const computed = formula !== undefined;
  for (const [index, name] of ["", ...(cell.spills ?? [])].entries()) {
    const isWords = cell.worded?.includes(name) ?? false;
    const isHelper = cell.role === "helper" && unit === "plain";
    set(
      draft.formats,
      row,
      column + index,
      computed && (unit === "text" || isWords) ? AS_TYPED : isHelper ? HELPER_FORMAT : format(unit),
    );
    set(draft.looks, row, column + index, LOOKS[isWords ? "remark" : cell.role]);
    set(draft.aligned, row, column + index, isWords ? sideOf("text") : (cell.align ?? sideOf(unit)));
  }
  for (let at = column; at < column + (cell.wide ?? 0); at++) set(draft.looks, row, at, LOOKS.line);
  if (computed) {
    draft.formulas.push({ row, column, formula: formulaText(formula, options, names, links) });
    set(draft.validations, row, column, null);
  } else if (cell.role === "input") {
    set(draft.values, row, column, asCell(typed === undefined ? (cell.value ?? null) : typed, unit));
    set(draft.validations, row, column, validationOf({ ...cell, unit }, choicesOf(cell, options, links), options));
  } else {
    const isSaid = typed === undefined || typed === null;
    set(draft.values, row, column, isSaid ? labelText(cell.text ?? "", options) : asCell(typed, unit));
    if (unit === "exact" && typeof typed === "number") set(draft.formats, row, column, exactFormat(typed));
  }
}

function choicesOf(
  { name, choices, choicesNeed }: Pick<CellModel, "name" | "choices" | "choicesNeed">,
  options: Options,
  links: Links,
): readonly string[] | undefined {
  const linkedChoices = links[`choices of ${name}`];
  if (typeof linkedChoices === "string" && linkedChoices !== "") return linkedChoices.split("\n");
  return choices?.filter((choice) => holds(choicesNeed?.[choice], options));
}

function drawColumn(
  draft: Draft,
  table: Table,
  one: ColumnModel,
  { row, column, rows }: Zone,
  format: Formatter,
  typed: Values,
  options: Options,
  names: Layout["names"],
  links: Links,
): void {
  const side = one.align ?? sideOf(one.unit);
  const computed = one.role !== "input";
  // Written text such as 05:20 must stay text; what a formula fills must not be kept from being one.
  const isSaid = one.role === "ruled" && one.formula === undefined;
  if (one.headFormula === undefined) set(draft.values, row, column, labelText(one.head, options));
  else {
    draft.formulas.push({ row, column, formula: formulaText(one.headFormula, options, names, links) });
    set(draft.formats, row, column, AS_TYPED);
  }
  set(draft.looks, row, column, LOOKS.head);
  set(draft.aligned, row, column, side);
  const choices = choicesOf(one, options, links);
  for (let at = row + 1; at <= row + rows + 2; at++) {
    const edge = at === row + 1 || at === row + rows + 2;
    set(draft.looks, at, column, lookOf(table, one, edge, at === row + 1));
    const isHelper = one.role === "helper" && one.unit === "plain";
    set(
      draft.formats,
      at,
      column,
      computed && one.unit === "text" && !isSaid ? AS_TYPED : isHelper ? HELPER_FORMAT : format(one.unit),
    );
    set(draft.aligned, at, column, side);
    if (edge) {
      if (table.hidden && !computed) set(draft.validations, at, column, NOTHING_MAY_BE_TYPED);
      continue;
    }
    const value = inputValue(typed[one.name], at - row - 2) ?? null;
    set(draft.values, at, column, asCell(value, one.unit));
    if (one.unit === "exact" && typeof value === "number") set(draft.formats, at, column, exactFormat(value));
    for (let next = column; next < column + (one.wide ?? 0); next++) set(draft.looks, at, next, LOOKS.line);
    if (!computed) set(draft.validations, at, column, validationOf(one, choices, options));
  }
  if (one.role === "linked" && one.formula !== undefined) {
    for (let at = 0; at < linkedRows(links); at++) {
      const ownLinks = Object.entries(links).map(([name, link]) => [
        name,
        typeof link === "string" ? link : (link[at] ?? ""),
      ]);
      const formula = formulaText(one.formula, options, names, Object.fromEntries(ownLinks));
      draft.formulas.push({ row: row + 2 + at, column, formula });
    }
  } else if (one.formula !== undefined) {
    draft.formulas.push({ row: row + 1, column, formula: formulaText(one.formula, options, names, links) });
  }
}

function set<T>(grid: T[][], row: number, column: number, value: T): void {
  const cells = grid[row];
  if (cells === undefined || column >= cells.length)
    throw new Error(`the model reaches beyond the sheet at row ${row + 1}, column ${column + 1}`);
  cells[column] = value;
}

/** What a sheet works with beside its page never takes the look of what it reads: a figure made from a time stays a number. */
const HELPER_FORMAT = "0.######";

/** How a row of a column looks: those at its ends are not for typing. */
function lookOf({ list, hidden }: Table, { role }: ColumnModel, isEnd: boolean, isFirst: boolean): Look {
  if (!isEnd || (list && isFirst)) return LOOKS[role];
  if (!hidden) return LOOKS.edge;
  return role === "helper" ? LOOKS.helper : LOOKS.computed;
}

const NOTHING_MAY_BE_TYPED: Validation = {
  is: "nothing",
  help: "This row holds the table's formulas. Type in the rows below it.",
};

/** A typed value as the cell takes it: text stays text without the apostrophe that marks it, and a blank is "". */
function asCell(value: Value, unit: Unit): string | number {
  if (value === null || value === "") return "";
  if (unit === "text") return String(value).replace(/^'+/, "");
  // Text where a number belongs stays the text it is: no cell of numbers may make a formula of it.
  return typeof value === "string" && /^[=+\-@'\s]/.test(value) ? `'${value.replace(/^['\s]+/, "")}` : value;
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
function bordered(looks: readonly (readonly Look[])[], border: NonNullable<Look["border"]>): string[] {
  return runsDown(looks.map((row) => row.map((look) => look.border === border)));
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
