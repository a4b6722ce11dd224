import type { Library, Position, Zone } from "../library.ts";

type Evaluator = {
  readonly evaluatedCells: { has(at: Position): boolean };
  checkCollision(formula: Position): (column: number, row: number) => void;
  computeFormulaCell(at: Position, cell: object): object;
  invalidatePositionsDependingOnSpread(sheetId: string, zone: Zone): void;
  /** Whether a cell was read before the formula that is computed now filled it; undefined while none is. */
  wasRead?: boolean | undefined;
};
type Handler = { readonly evaluator?: Evaluator };

/**
 * When a formula has filled its cells, the engine computes everything once more that depends on them, by any number of steps,
 * though mostly nobody has read the cells before: a workbook of array formulas is computed several times over. Here nothing is
 * computed again where none of them was read. Can go when the engine does the same.
 */
export function computeOnce(library: Library): void {
  const { handlers = [] } = new library.Model({ sheets: [{ id: "bare" }] }) as unknown as { handlers?: Handler[] };
  const evaluator = handlers.find((one) => one.evaluator !== undefined)?.evaluator;
  if (evaluator === undefined) throw new Error("The engine evaluates somewhere else now");
  const shared = Object.getPrototypeOf(evaluator) as Evaluator;
  const { computeFormulaCell, checkCollision, invalidatePositionsDependingOnSpread } = shared;
  if ([computeFormulaCell, checkCollision, invalidatePositionsDependingOnSpread].includes(undefined as never))
    throw new Error("The engine fills cells in another way now");

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
  shared.invalidatePositionsDependingOnSpread = function (sheetId, zone) {
    // Cells that the formula filled before are emptied: what stands in them has been read.
    if (this.wasRead !== false) invalidatePositionsDependingOnSpread.call(this, sheetId, zone);
  };
}
