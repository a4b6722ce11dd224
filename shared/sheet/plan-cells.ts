// Cells and columns of a model, drawn into the grids of a plan.
import type { Zone } from "./a1.ts";
import { formulaText, holds, type Layout, labelText } from "./layout.ts";
import type { CellModel, ColumnModel, Links, Options, Table, Unit, Value, Values } from "./model.ts";
import type { Draft } from "./sheet-plan.ts";
import { linkedRows } from "./table-lengths.ts";
import { APPEARANCES, type Appearance, exactFormat } from "./theme.ts";
import { type Validation, validationOf } from "./validation.ts";

const LEFT_ALIGNED: ReadonlySet<Unit> = new Set<Unit>(["text", "date"]);
/** A day stands apart from the time before it. */
const sideOf = (unit: Unit) => (LEFT_ALIGNED.has(unit) ? "left" : unit === "day" ? "center" : "right");
const AS_TYPED = "General";

export function inputValue(typed: Values[string] | undefined, row: number): Value | undefined {
  return typeof typed === "object" && typed !== null ? typed[row] : row === 0 ? typed : undefined;
}

type Formatter = (unit: Unit) => string;

export function drawCell(
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
    set(draft.appearances, row, column + index, APPEARANCES[isWords ? "remark" : cell.role]);
    set(draft.aligned, row, column + index, isWords ? sideOf("text") : (cell.align ?? sideOf(unit)));
  }
  for (let at = column; at < column + (cell.wide ?? 0); at++) set(draft.appearances, row, at, APPEARANCES.line);
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

export function drawColumn(
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
  set(draft.appearances, row, column, APPEARANCES.head);
  set(draft.aligned, row, column, side);
  const choices = choicesOf(one, options, links);
  for (let at = row + 1; at <= row + rows + 2; at++) {
    const edge = at === row + 1 || at === row + rows + 2;
    set(draft.appearances, at, column, appearanceOf(table, one, edge, at === row + 1));
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
    for (let next = column; next < column + (one.wide ?? 0); next++) set(draft.appearances, at, next, APPEARANCES.line);
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

export function set<T>(grid: T[][], row: number, column: number, value: T): void {
  const cells = grid[row];
  if (cells === undefined || column >= cells.length)
    throw new Error(`the model reaches beyond the sheet at row ${row + 1}, column ${column + 1}`);
  cells[column] = value;
}

/** What a sheet works with beside its page never takes the look of what it reads: a figure made from a time stays a number. A whole one has no bare point. */
export const HELPER_FORMAT = "0.0#####";

/** How a row of a column looks: those at its ends are not for typing. */
function appearanceOf({ list, hidden }: Table, { role }: ColumnModel, isEnd: boolean, isFirst: boolean): Appearance {
  if (!isEnd || (list && isFirst)) return APPEARANCES[role];
  if (!hidden) return APPEARANCES.edge;
  return role === "helper" ? APPEARANCES.helper : APPEARANCES.computed;
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
