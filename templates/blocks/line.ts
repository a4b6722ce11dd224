import type { CellModel, Formula, Line, Unit } from "../../shared/sheet/model.ts";

/** A label and the cell that is typed beside it; `at` is the cell's column. */
export function inputLine(text: string, name: string, unit: Unit, more: Partial<CellModel> = {}, at = 1): Line {
  return { cells: [label(text), { role: "input", name, unit, at, ...more }] };
}

/** A label and the cell that is computed beside it. */
export function computedLine(
  text: string,
  name: string,
  unit: Unit,
  formula: Formula,
  more: Partial<CellModel> = {},
  at = 1,
): Line {
  return { cells: [label(text), { role: "computed", name, unit, formula, at, ...more }] };
}

/** The heading of a block and the line under it, as wide as the block. */
export function headingLine(text: string, columns: number): Line {
  return {
    cells: Array.from({ length: columns }, (_, at) => ({ at, role: "heading", ...(at === 0 ? { text } : {}) })),
  };
}

export const label = (text: string, at = 0): CellModel => ({ at, role: "label", text });

/** A line that stands only where the part is built. */
export const when = (condition: string, line: Line): Line => ({ ...line, when: condition });
