// The engine calculates every cell that an edit reaches, on all sheets, before it answers. Here the sheet that was edited is calculated
// at once, any other when somebody reads it: a price that two hundred sheets go by is typed as fast as one that six go by. Can go when
// the engine does the same.
import type { Library, Position, Zone } from "../library.ts";

type Range = { readonly sheetId: string; readonly zone: Zone };
type Ranges = Iterable<Range> & { add(range: Range): void; addMany(ranges: Iterable<Range>): void };
/** What depends on what, and which other sheets the formulas of a sheet read. */
type Graph = {
  sheetsRead?: Map<string, Set<string>>;
  addDependencies(formula: Position, ranges: readonly Range[]): void;
};
/** The sheets that are calculated now. What depends on them elsewhere is left for its reader. */
export type Reach = { has(sheetId: string): boolean; leave(range: Range): void };
type Evaluator = {
  readonly getters: { tryGetSheet(sheetId: string): object | undefined };
  readonly nextRangesToUpdate: Ranges & { readonly constructor: new () => Ranges };
  formulaDependencies(): Graph;
  getArrayFormulasImpactedByChangesOf(positions: readonly Position[]): Ranges;
  getCellsDependingOn(ranges: Iterable<Range>): Ranges;
  evaluateCells(positions: readonly Position[]): void;
  evaluateAllCells(): void;
  evaluate(ranges: Iterable<Range>): void;
  reach?: Reach | undefined;
  /** What has changed, or reads what has changed on another sheet, and was not calculated since; by sheets. */
  unread?: Map<string, Ranges>;
  /** Sheets that were calculated since, with all that they read. */
  upToDate?: Set<string>;
};
type Compiled = { readonly rangeDependencies: readonly Range[] };
type Evaluation = new (
  ...args: never[]
) => {
  readonly evaluator: Evaluator;
  readonly shouldRebuildDependenciesGraph: boolean;
  getEvaluatedCell(at: Position): object;
  getEvaluatedCells(sheetId: string): readonly object[];
  getEvaluatedCellsPositions(sheetId: string): readonly Position[];
  getSpreadZone(at: Position, options?: object): Zone | undefined;
  getArrayFormulaSpreadingOn(at: Position): Position | undefined;
  isArrayFormulaSpillBlocked(at: Position): boolean;
  evaluateFormulaResult(sheetId: string, formula: string, at?: Position): unknown;
  evaluateCompiledFormula(sheetId: string, formula: Compiled, symbols?: unknown): unknown;
};
type Handler = { readonly evaluator?: Evaluator };

/** What an edit changes elsewhere waits for its reader; where the engine calculates everything anew, nothing waits. */
export function calculateWhatIsRead(library: Library): void {
  const { handlers = [] } = new library.Model({ sheets: [{ id: "bare" }] }) as unknown as { handlers?: Handler[] };
  const evaluator = handlers.find((one) => one.evaluator !== undefined)?.evaluator;
  if (evaluator === undefined) throw new Error("The engine evaluates somewhere else now");
  const shared = Object.getPrototypeOf(evaluator) as Evaluator;
  const { evaluateAllCells } = shared;
  shared.evaluateCells = function (positions) {
    this.upToDate?.clear();
    for (const { sheetId, col, row } of positions)
      leave(this, { sheetId, zone: { left: col, right: col, top: row, bottom: row } });
    const edited = new Set(positions.map(({ sheetId }) => sheetId));
    for (const range of within(this, edited, () => this.getArrayFormulasImpactedByChangesOf(positions)))
      leave(this, range);
    for (const sheetId of edited) calculate(this, sheetId);
  };
  shared.evaluateAllCells = function () {
    this.unread?.clear();
    evaluateAllCells.call(this);
  };
  noteSheetsRead(Object.getPrototypeOf(evaluator.formulaDependencies()) as Graph);
  readCalculated(library);
}

function leave(evaluator: Evaluator, range: Range): void {
  evaluator.unread ??= new Map();
  const known = evaluator.unread.get(range.sheetId) ?? new evaluator.nextRangesToUpdate.constructor();
  known.add(range);
  evaluator.unread.set(range.sheetId, known);
}

/** Work that goes no further than these sheets. */
function within<T>(evaluator: Evaluator, sheets: ReadonlySet<string>, work: () => T): T {
  evaluator.reach = { has: (sheetId) => sheets.has(sheetId), leave: (range) => leave(evaluator, range) };
  try {
    return work();
  } finally {
    evaluator.reach = undefined;
  }
}

function noteSheetsRead(shared: Graph): void {
  const { addDependencies } = shared;
  shared.addDependencies = function (formula, ranges) {
    this.sheetsRead ??= new Map();
    for (const { sheetId } of ranges) {
      if (sheetId === formula.sheetId) continue;
      const readers = this.sheetsRead.get(formula.sheetId);
      if (readers === undefined) this.sheetsRead.set(formula.sheetId, new Set([sheetId]));
      else readers.add(sheetId);
    }
    addDependencies.call(this, formula, ranges);
  };
}

/** A sheet, and those that it reads, by any number of steps. */
function withRead({ sheetsRead }: Graph, sheetId: string): ReadonlySet<string> {
  const sheets = new Set([sheetId]);
  for (const one of sheets) for (const other of sheetsRead?.get(one) ?? []) sheets.add(other);
  return sheets;
}

/**
 * Calculates what waits on a sheet and on those that it reads. A formula says which names it reads when it is calculated first: then
 * there may be more.
 */
function calculate(evaluator: Evaluator, sheetId: string): void {
  evaluator.upToDate ??= new Set();
  const { unread, upToDate, getters } = evaluator;
  for (let again = true; again; ) {
    again = false;
    const sheets = withRead(evaluator.formulaDependencies(), sheetId);
    const changed = new evaluator.nextRangesToUpdate.constructor();
    for (const one of sheets) {
      const waiting = unread?.get(one);
      if (waiting === undefined) continue;
      unread?.delete(one);
      if (getters.tryGetSheet(one) === undefined) continue;
      changed.addMany(waiting);
      again = true;
    }
    if (again)
      within(evaluator, sheets, () => {
        changed.addMany(evaluator.getCellsDependingOn(changed));
        evaluator.evaluate(changed);
      });
    else for (const one of sheets) upToDate.add(one);
  }
}

/** A formula that somebody tries out may read any sheet, by its name or by that of a range. */
const READS_OTHERS = /[!_]/;

function readCalculated(library: Library): void {
  const registry = library.registries.coreViewsPluginRegistry;
  const Evaluation = registry.get("evaluation") as Evaluation;
  registry.replace(
    "evaluation",
    class extends Evaluation {
      private see(sheetId: string) {
        const { unread, upToDate, reach } = this.evaluator;
        if (unread === undefined || unread.size === 0 || upToDate?.has(sheetId)) return;
        if (reach === undefined && !this.shouldRebuildDependenciesGraph) calculate(this.evaluator, sheetId);
      }
      override getEvaluatedCell(at: Position) {
        this.see(at.sheetId);
        return super.getEvaluatedCell(at);
      }
      override getEvaluatedCells(sheetId: string) {
        this.see(sheetId);
        return super.getEvaluatedCells(sheetId);
      }
      override getEvaluatedCellsPositions(sheetId: string) {
        this.see(sheetId);
        return super.getEvaluatedCellsPositions(sheetId);
      }
      override getSpreadZone(at: Position, options?: object) {
        this.see(at.sheetId);
        return super.getSpreadZone(at, options);
      }
      override getArrayFormulaSpreadingOn(at: Position) {
        this.see(at.sheetId);
        return super.getArrayFormulaSpreadingOn(at);
      }
      override isArrayFormulaSpillBlocked(at: Position) {
        this.see(at.sheetId);
        return super.isArrayFormulaSpillBlocked(at);
      }
      override evaluateFormulaResult(sheetId: string, formula: string, at?: Position) {
        this.see(sheetId);
        if (READS_OTHERS.test(formula)) for (const other of [...(this.evaluator.unread?.keys() ?? [])]) this.see(other);
        return super.evaluateFormulaResult(sheetId, formula, at);
      }
      override evaluateCompiledFormula(sheetId: string, formula: Compiled, symbols?: unknown) {
        for (const one of [sheetId, ...formula.rangeDependencies.map((range) => range.sheetId)]) this.see(one);
        return super.evaluateCompiledFormula(sheetId, formula, symbols);
      }
    },
  );
}
