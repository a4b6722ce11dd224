import type { Library, Position, Zone } from "../library.ts";
import type { Reach } from "./unread-sheets.ts";

type Cell = { readonly id: string; readonly isFormula: boolean; readonly content?: string };
type Range = { readonly sheetId: string; readonly zone: Zone };
type Ranges = Iterable<Range> & { addMany(ranges: Iterable<Range>): void; delete(range: Range): void };
type Column = { query(rows: { top: number; bottom: number }): readonly { readonly dependents: Range }[] };
type Evaluator = {
  readonly getters: { getCell(at: Position): Cell | undefined };
  readonly evaluatedCells: { has(at: Position): boolean; delete(at: Position): void };
  readonly blockedArrayFormulas: { has(formula: Position): boolean; delete(formula: Position): void };
  readonly spreadingRelations: {
    readonly arrayFormulasToResults: { keysForSheet(sheetId: string): readonly Position[] };
    getArrayResultZone(formula: Position): Zone | undefined;
    removeNode(formula: Position): void;
    searchFormulaPositionsSpreadingOn(sheetId: string, zone: Zone): readonly Position[];
  };
  readonly cellsBeingComputed: { has(id: string): boolean };
  readonly nextRangesToUpdate: Ranges;
  readonly reach?: Reach | undefined;
  /** What depends on the cells of a sheet is kept in a tree for each of its columns. */
  formulaDependencies(): { readonly forest: Record<string, Record<number, Column> | undefined> };
  getCellsDependingOn(ranges: Iterable<Range>): Ranges;
  clearEvaluatedRanges(ranges: Iterable<Range>): void;
  invalidateSpreading(formula: Position): void;
  checkCollision(formula: Position): (column: number, row: number) => void;
  computeFormulaCell(at: Position, cell: object): object;
  invalidatePositionsDependingOnSpread(sheetId: string, zone: Zone): void;
  /** Whether a cell was read before the formula that is computed now filled it; undefined while none is. */
  wasRead?: boolean | undefined;
  /** The same of the cells that it filled before, while they are emptied. */
  wasOldRead?: boolean | undefined;
};
type Handler = { readonly evaluator?: Evaluator };

/**
 * When a formula has filled its cells, the engine computes everything once more that depends on them, by any number of steps,
 * though mostly nobody has read the cells before: a workbook of array formulas is computed several times over. Here only those
 * are computed again that were computed before, and what depends on them. Can go when the engine does the same.
 */
export function computeOnce(library: Library): void {
  const { handlers = [] } = new library.Model({ sheets: [{ id: "bare" }] }) as unknown as { handlers?: Handler[] };
  const evaluator = handlers.find((one) => one.evaluator !== undefined)?.evaluator;
  if (evaluator === undefined) throw new Error("The engine evaluates somewhere else now");
  const shared = Object.getPrototypeOf(evaluator) as Evaluator;
  const { computeFormulaCell, checkCollision, invalidateSpreading } = shared;
  const known = [computeFormulaCell, checkCollision, invalidateSpreading, shared.clearEvaluatedRanges];
  if (known.includes(undefined as never)) throw new Error("The engine fills cells in another way now");

  shared.computeFormulaCell = function (at, cell) {
    const before = this.wasRead;
    this.wasRead = undefined;
    try {
      return computeFormulaCell.call(this, at, cell);
    } finally {
      this.wasRead = before;
    }
  };
  // Asked for each cell that a formula is to fill, after its result is there and before it is put in.
  shared.checkCollision = function (formula) {
    const check = checkCollision.call(this, formula);
    this.wasRead = false;
    return (column, row) => {
      const { sheetId, col, row: first } = formula;
      if (this.evaluatedCells.has({ sheetId, col: col + column, row: first + row })) this.wasRead = true;
      check(column, row);
    };
  };
  // What a formula filled goes before it is computed: then a cell that is there has been read too early. It stays where the formula
  // is not computed: a cell that once had one of its own still counts among those that depend on what that one read.
  shared.clearEvaluatedRanges = function (ranges) {
    for (const range of ranges)
      for (const at of positionsOf(range))
        if (this.evaluatedCells.has(at) && !isFilled(this, at)) this.evaluatedCells.delete(at);
    const { arrayFormulasToResults } = this.spreadingRelations;
    const formulas = new Map<string, readonly Position[]>();
    for (const { sheetId, zone } of ranges) {
      const ofSheet = formulas.get(sheetId) ?? arrayFormulasToResults.keysForSheet(sheetId);
      formulas.set(sheetId, ofSheet);
      for (const formula of ofSheet.filter((one) => isIn(zone, one)))
        if (this.getters.getCell(formula)?.isFormula)
          for (const at of filledBy(this, formula)) this.evaluatedCells.delete(at);
        else forget(this, formula);
    }
  };
  shared.invalidateSpreading = function (formula) {
    if (this.spreadingRelations.getArrayResultZone(formula) === undefined) return;
    this.wasOldRead = filledBy(this, formula).some((at) => this.evaluatedCells.has(at));
    invalidateSpreading.call(this, formula);
    this.wasOldRead = undefined;
  };
  shared.invalidatePositionsDependingOnSpread = function (sheetId, zone) {
    if (this.wasOldRead === undefined && this.wasRead === false) return;
    const readers = readersOf(this, sheetId, zone, this.wasOldRead !== false);
    if (readers.length === 0) return;
    const dependents = this.getCellsDependingOn(readers);
    dependents.addMany(readers);
    dependents.delete({ sheetId, zone });
    this.nextRangesToUpdate.addMany(dependents);
  };
}

/** A formula is gone, and with it what it filled; the engine keeps it in mind where another one fills its cell at once. */
function forget(evaluator: Evaluator, formula: Position): void {
  if (!evaluator.blockedArrayFormulas.has(formula)) evaluator.invalidateSpreading(formula);
  evaluator.blockedArrayFormulas.delete(formula);
  evaluator.spreadingRelations.removeNode(formula);
}

/** Whether a formula in another cell filled this one. */
function isFilled({ getters, spreadingRelations, blockedArrayFormulas }: Evaluator, at: Position): boolean {
  if (holdsSomething(getters.getCell(at))) return false;
  return spreadingRelations
    .searchFormulaPositionsSpreadingOn(at.sheetId, zoneOf(at))
    .some((formula) => !blockedArrayFormulas.has(formula));
}

/** The cells that a formula filled, but for its own. */
function filledBy(evaluator: Evaluator, formula: Position): Position[] {
  const zone = evaluator.spreadingRelations.getArrayResultZone(formula);
  if (zone === undefined || evaluator.blockedArrayFormulas.has(formula)) return [];
  return [...positionsOf({ sheetId: formula.sheetId, zone })].filter(
    (at) => !holdsSomething(evaluator.getters.getCell(at)),
  );
}

/**
 * The formulas that have read the cells of this zone, but for its first one; with those that are being computed, if they can have.
 * Those that are still to be computed read them when their turn comes.
 */
function readersOf(evaluator: Evaluator, sheetId: string, zone: Zone, withUnfinished: boolean): Range[] {
  const { evaluatedCells, cellsBeingComputed } = evaluator;
  const columns = evaluator.formulaDependencies().forest[sheetId];
  const readers = new Map<string, Range>();
  for (let column = zone.left; column <= zone.right; column++) {
    const top = column === zone.left ? zone.top + 1 : zone.top;
    if (top > zone.bottom) continue;
    for (const { dependents } of columns?.[column]?.query({ top, bottom: zone.bottom }) ?? [])
      for (const at of positionsOf(dependents)) {
        if (evaluator.reach?.has(at.sheetId) === false) {
          evaluator.reach.leave({ sheetId: at.sheetId, zone: zoneOf(at) });
          continue;
        }
        const cell = evaluator.getters.getCell(at);
        if (!cell?.isFormula) continue;
        if (!evaluatedCells.has(at) && !(withUnfinished && cellsBeingComputed.has(cell.id))) continue;
        readers.set(cell.id, { sheetId: at.sheetId, zone: zoneOf(at) });
      }
  }
  return [...readers.values()];
}

const holdsSomething = (cell: Cell | undefined): boolean => cell !== undefined && (cell.isFormula || !!cell.content);

const zoneOf = ({ col, row }: Position): Zone => ({ left: col, right: col, top: row, bottom: row });

const isIn = ({ left, right, top, bottom }: Zone, { col, row }: Position): boolean =>
  col >= left && col <= right && row >= top && row <= bottom;

function* positionsOf({ sheetId, zone: { left, right, top, bottom } }: Range): Iterable<Position> {
  for (let col = left; col <= right; col++) for (let row = top; row <= bottom; row++) yield { sheetId, col, row };
}
