// What was typed in a sheet, put into the plan of the one that takes its place.
import type { Writable } from "../../shared/protocol/plan-message.ts";
import type { Move } from "../../shared/protocol/remake.ts";
import { type Moves, withMoved, withoutDecimals } from "../../shared/sheet/moved-references.ts";
import { type FormulaAt, type FormulaRectangle, rectangles } from "../../shared/sheet/rectangles.ts";

type Cell = string | number | boolean | Date;

/** What each cell holds, a formula as it reads where its cells are now. */
export type Held = { readonly value: Cell; readonly formula: string };

export function contents(
  values: readonly (readonly Cell[])[],
  formulas: readonly (readonly string[])[],
  sheet: string,
  moves: Moves,
): Held[][] {
  return values.map((line, down) =>
    line.map((value, across) => {
      const formula = formulas[down]?.[across] ?? "";
      return { value, formula: formula === "" ? "" : withoutDecimals(withMoved(formula, sheet, moves, true)) };
    }),
  );
}

type Beside = Held & { readonly row: number; readonly column: number };

/** The plan with what was typed in it; what stands beyond it is written apart. */
export function carryTyped(
  plan: Writable,
  typed: readonly Move[],
  cells: readonly (readonly Held[])[],
): { readonly filled: Writable; readonly beside: readonly Beside[] } {
  const page: Cell[][] = plan.values.map((line) => [...line]);
  const formulas: FormulaAt[] = [];
  const beside: Beside[] = [];
  for (const [from, to] of typed)
    for (let down = 0; down < from.rows; down++)
      for (let across = 0; across < from.columns; across++) {
        const held = cells[from.row + down]?.[from.column + across] ?? { value: "", formula: "" };
        const [row, column] = [to.row + down, to.column + across];
        const line = page[row];
        if (line === undefined || column >= plan.page) beside.push({ ...held, row, column });
        else if (held.formula === "") line[column] = asText(held.value, plan.formats[row]?.[column]);
        else {
          line[column] = "";
          formulas.push({ row, column, formula: held.formula });
        }
      }
  const filled = { ...plan, values: page as Writable["values"], formulas: around(plan, page, formulas) };
  return { filled, beside: beside.filter(({ value, formula }) => value !== "" || formula !== "") };
}

/** All formulas in rectangles that leave out what is typed. */
function around(
  { rows, columns, formulas, aside }: Writable,
  page: readonly (readonly Cell[])[],
  typed: readonly FormulaAt[],
): FormulaRectangle[] {
  const values = page.map((line) => [...line, ...Array<Cell>(columns - line.length).fill("")]);
  for (const { row, column, cells } of aside.words) values[row]?.splice(column, cells.length, ...cells);
  const formulaCells = formulas.flatMap(({ row, column, cells }) =>
    cells.flatMap((line, down) =>
      line.flatMap((formula, across) =>
        formula === "" ? [] : [{ row: row + down, column: column + across, formula }],
      ),
    ),
  );
  return rectangles([...formulaCells, ...typed], values.slice(0, rows));
}

/** A typed text that begins like a formula stays a text, without the apostrophe where the cell takes nothing else. */
export function asText(value: Cell, format: string | undefined): Cell {
  if (typeof value !== "string") return value;
  if (format === "@") return value.replace(/^'+/, "");
  return /^[=+\-@]/.test(value) ? `'${value}` : value;
}
