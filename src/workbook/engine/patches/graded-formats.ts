import type { EvaluatedCell, Library, Locale, Position } from "../library.ts";

// What it mends: a sheet shows decimals by a number's size where its format has conditions ("[>=100]#,##0;[>=10]#,##0.0;#,##0.00");
// the engine takes no condition in brackets. It can go when the engine does. Until then such a format is kept as one with three parts
// that mean the same for every number, and the shown text is made from the part whose condition holds.

const SHEET = /^\[>=(\d+)\]#,##0;\[>=10\]#,##0\.0;#,##0\.00$/;
const KEPT = /^#,##0\.00;-#,##0\.00;"from (\d+)"$/;

/** The format as the engine keeps it. */
export const keptFormat = (format: string): string => format.replace(SHEET, '#,##0.00;-#,##0.00;"from $1"');
/** The format as a sheet has it. */
export const sheetFormat = (format: string): string => format.replace(KEPT, "[>=$1]#,##0;[>=10]#,##0.0;#,##0.00");

/** The part of a format that is for this number. */
function partFor(format: string, value: number): string {
  const parts = format.split(";").map((part) => /^(?:\[>=(\d+)\])?(.*)$/.exec(part) ?? []);
  const [, , text = ""] = parts.find(([, least]) => least === undefined || value >= Number(least)) ?? [];
  return text;
}

type Shown = { readonly value: unknown; readonly format?: string };
type Evaluation = { getEvaluatedCell(this: { getters: object }, position: Position): EvaluatedCell };
type Grid = {
  getCellText(this: { getters: object }, position: Position, how?: { readonly showFormula?: boolean }): string;
};

const isGraded = ({ value, format }: Shown): boolean =>
  typeof value === "number" && format !== undefined && KEPT.test(format);

/** Shows numbers by their size, wherever a cell is shown: on the grid, to scripts and in files. */
export function showGraded(library: Library): void {
  const { prototype: cells } = library.registries.coreViewsPluginRegistry.get("evaluation") as {
    prototype: Evaluation;
  };
  const { prototype: grid } = library.registries.featurePluginRegistry.get("ui_sheet") as { prototype: Grid };
  const { getEvaluatedCell } = cells;
  const { getCellText } = grid;
  cells.getEvaluatedCell = function (position) {
    const cell = getEvaluatedCell.call(this, position);
    if (!isGraded(cell)) return cell;
    const { getLocale } = this.getters as { getLocale(): Locale };
    const format = partFor(sheetFormat(cell.format ?? ""), cell.value as number);
    return { ...cell, formattedValue: library.helpers.formatValue(cell.value, { format, locale: getLocale() }) };
  };
  grid.getCellText = function (position, how) {
    const cell = (this.getters as { getEvaluatedCell(position: Position): EvaluatedCell }).getEvaluatedCell(position);
    return isGraded(cell) && !how?.showFormula ? cell.formattedValue : getCellText.call(this, position, how);
  };
}
