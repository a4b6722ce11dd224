// One sheet as a .csv file: its page as it stands, and behind each row which of its cells only Gramwright fills.
import { csvText as asText, csvOf } from "../../../shared/base/csv.ts";
import type { Engine, FormulaCell } from "../engine/engine.ts";
import type { EvaluatedCell, Position, Zone } from "../engine/library.ts";
import { isKeptValue } from "./formula.ts";

/** Heads the column behind the page. */
export const KEPT_HEAD = "Kept values: only Gramwright fills these";

type Fold = { readonly start: number; readonly isFolded: boolean };

/** Rows and columns that are hidden or folded away are left out. */
export function csvText(engine: Engine, sheetId: string): string {
  const filled = engine.get<readonly Position[]>("getEvaluatedCellsPositions", sheetId);
  const folds = engine.get<readonly Fold[]>("getHeaderGroups", sheetId, "COL");
  const page = Math.min(
    Math.max(0, ...filled.map(({ col }) => col + 1)),
    ...folds.filter(({ isFolded }) => isFolded).map(({ start }) => start),
  );
  const kept = keptCells(engine, sheetId, filled);
  const columns = Array.from({ length: page }, (_, col) => col).filter(
    (col) => !engine.get<boolean>("isColHidden", sheetId, col),
  );
  const end = Math.max(0, ...filled.filter(({ col }) => col < page).map(({ row }) => row + 1));
  const rows = Array.from({ length: end }, (_, row) => row).filter(
    (row) => !engine.get<boolean>("isRowHidden", sheetId, row),
  );
  const marks = rows.map((row) =>
    columns.flatMap((col) => (kept.has(`${col},${row}`) ? [engine.library.helpers.toXC(col, row)] : [])).join(" "),
  );
  const isMarked = marks.some((mark) => mark !== "");
  const cells = rows.map((row) => columns.map((col) => cellText(engine.evaluated({ sheetId, col, row }))));
  return csvOf(cells.map((row, at) => (isMarked ? [...row, at === 0 ? KEPT_HEAD : (marks[at] ?? "")] : row)));
}

type Filled = { readonly zone: Zone; readonly reads: readonly Zone[] };

/** Those that a function of ours fills, and those that show or count what it filled. */
function keptCells(engine: Engine, sheetId: string, filled: readonly Position[]): Set<string> {
  const kept = new Set<string>();
  const others: Filled[] = [];
  const keep = (col: number, row: number) => {
    if (cellText(engine.evaluated({ sheetId, col, row })) !== "") kept.add(`${col},${row}`);
  };
  for (const { col, row } of filled) {
    const position = { sheetId, col, row };
    const cell = engine.get<FormulaCell | undefined>("getCell", position);
    if (!cell?.isFormula) continue;
    const text = cell.compiledFormula.toFormulaString(engine.model.getters);
    const square = { left: col, right: col, top: row, bottom: row };
    const zone = engine.get<Zone | undefined>("getSpreadZone", position) ?? square;
    if (isKeptValue(engine.library, text)) eachCell(zone, keep);
    else others.push({ zone, reads: readsOf(engine, text) });
  }
  for (let size = -1; size !== kept.size; ) {
    size = kept.size;
    for (const { zone, reads } of others)
      eachCell(zone, (col, row) => {
        if (!kept.has(`${col},${row}`) && reads.some((read) => holdsKept(read, row, kept))) keep(col, row);
      });
  }
  return kept;
}

function eachCell({ left, right, top, bottom }: Zone, visit: (col: number, row: number) => void): void {
  for (let row = top; row <= bottom; row++) for (let col = left; col <= right; col++) visit(col, row);
}

/** Ranges of its own sheet. */
const readsOf = ({ library }: Engine, text: string): Zone[] =>
  [...text.replace(/"[^"]*"/g, "").matchAll(/(?<![\w!$.])\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?(?![\w(])/g)].map(
    ([a1]) => library.helpers.toZone(a1.replace(/\$/g, "")),
  );

/** A column beside the cell is read row by row; any other range as a whole. */
function holdsKept({ left, right, top, bottom }: Zone, row: number, kept: ReadonlySet<string>): boolean {
  const isBeside = bottom > top && top <= row && row <= bottom;
  for (let down = isBeside ? row : top; down <= (isBeside ? row : bottom); down++)
    for (let col = left; col <= right; col++) if (kept.has(`${col},${down}`)) return true;
  return false;
}

/** Numbers as any program adds them up: no units, no signs of thousands, a point. A date or a time is as it is shown. */
function cellText({ type, value, formattedValue, format }: EvaluatedCell): string {
  if (type === "empty" || value === null) return "";
  if (type !== "number") return asText(String(value));
  return format !== undefined && /[ymdhs]/i.test(format.replace(/"[^"]*"|\[[^\]]*\]/g, ""))
    ? formattedValue
    : String(Number(Number(value).toPrecision(12)));
}
