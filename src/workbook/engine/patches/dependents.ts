import type { Library, Position, Zone } from "../library.ts";
import type { Reach } from "./unread-sheets.ts";

type Dependency = { readonly sheetId: string; readonly zone: Zone };
type Column = { query(rows: { top: number; bottom: number }): readonly { readonly dependents: Dependency }[] };
/** What depends on the cells of a sheet is kept in a tree for each of its columns. */
type Graph = {
  readonly forest: Record<string, Record<number, Column> | undefined>;
  addDependencies(formula: object, ranges: readonly Dependency[]): void;
};
type Ranges = Iterable<Dependency> & {
  readonly constructor: new (ranges: Iterable<Dependency>) => Ranges;
  isEmpty(): boolean;
  hasPosition(at: Position): boolean;
};
type Evaluator = {
  readonly nextRangesToUpdate: Ranges;
  readonly reach?: Reach | undefined;
  formulaDependencies(): Graph;
  addDependencies(formula: Position & { readonly sheetId: string }, ranges: readonly Dependency[]): void;
  computeDependencies(ranges: readonly Dependency[]): void;
  getCellsDependingOn(ranges: Iterable<Dependency>): Ranges;
};
type Handler = { readonly evaluator?: Evaluator };

/** More columns than a sheet can have. */
const MAX_COLUMNS = 2 ** 15;

/**
 * The engine notes one place for all columns that a formula reads, and stretches it where formulas below each other read the
 * same column: then cells wait for cells that they never read, at times in a circle, until it gives up after 30 rounds. Each
 * column gets a note of its own.
 */
export function separateDependents(library: Library): void {
  const graph = bareEvaluator(library).formulaDependencies();
  const shared = Object.getPrototypeOf(graph) as Graph;
  const { addDependencies } = shared;
  shared.addDependencies = function (formula, ranges) {
    for (const range of ranges) {
      for (const column of columnsOf(range)) addDependencies.call(this, formula, [column]);
    }
  };
}

function bareEvaluator(library: Library): Evaluator {
  const { handlers = [] } = new library.Model({ sheets: [{ id: "bare" }] }) as unknown as { handlers?: Handler[] };
  const evaluator = handlers.find((one) => one.evaluator !== undefined)?.evaluator;
  if (evaluator === undefined) throw new Error("The engine keeps its dependencies somewhere else now");
  return evaluator;
}

/** What all evaluators do. */
const sharedEvaluator = (library: Library): Evaluator => Object.getPrototypeOf(bareEvaluator(library));

/** Only what the graph looks at is carried over; a range that cannot be read stays whole, for the engine to leave out. */
function columnsOf(range: Dependency & { readonly invalidXc?: string; readonly invalidSheetName?: string }) {
  const { sheetId, zone, invalidXc, invalidSheetName } = range;
  if (invalidXc !== undefined || invalidSheetName !== undefined || zone.left >= zone.right) return [range];
  return Array.from({ length: zone.right - zone.left + 1 }, (_, at) => ({
    sheetId,
    zone: { ...zone, left: zone.left + at, right: zone.left + at },
  }));
}

/**
 * What a formula reads by a name, or by INDIRECT, the engine notes each time it computes the formula, and sorts its trees anew
 * for that. It is noted once here.
 */
export function noteOnce(library: Library): void {
  const shared = sharedEvaluator(library);
  const names = new WeakMap<Graph, Set<string>>();
  shared.addDependencies = function (formula, ranges) {
    const graph = this.formulaDependencies();
    const known = names.get(graph) ?? new Set();
    names.set(graph, known);
    const fresh = ranges.filter(({ sheetId, zone: { left, right, top, bottom } }) => {
      const key = `${formula.sheetId}!${formula.col}!${formula.row} ${sheetId}!${left}!${right}!${top}!${bottom}`;
      if (known.has(key) && graph.forest[sheetId] !== undefined) return false;
      known.add(key);
      return true;
    });
    if (fresh.length > 0) graph.addDependencies(formula, fresh);
    this.computeDependencies(ranges);
  };
}

/**
 * What depends on some cells, by any number of steps, the engine gathers as zones that it cuts anew for each cell. Here each
 * cell is looked at once. Left out are cells that are to be computed next anyway, and what depends on them; on sheets that are not
 * calculated now, those that read of these are left for their reader.
 */
export function followDependents(library: Library): void {
  const shared = sharedEvaluator(library);
  shared.getCellsDependingOn = function (ranges) {
    const { forest } = this.formulaDependencies();
    const next = this.nextRangesToUpdate;
    const isNext = next.isEmpty() ? () => false : (at: Position) => next.hasPosition(at);
    const seen = new Map<string, Set<number>>();
    // What a range of cells is read by comes up again for each of its cells.
    const followed = new Set<Dependency>();
    const cells: Dependency[] = [];
    const queue = [...ranges];
    for (let range = queue.pop(); range !== undefined; range = queue.pop()) {
      const { sheetId, zone } = range;
      const columns = forest[sheetId];
      for (let column = zone.left; columns !== undefined && column <= zone.right; column++)
        for (const { dependents } of columns[column]?.query(zone) ?? []) {
          if (followed.has(dependents)) continue;
          followed.add(dependents);
          const ofSheet = seen.get(dependents.sheetId) ?? new Set();
          seen.set(dependents.sheetId, ofSheet);
          const runs = runsOf(dependents, (at) => {
            const key = at.row * MAX_COLUMNS + at.col;
            if (ofSheet.has(key) || isNext(at)) return false;
            ofSheet.add(key);
            return true;
          });
          for (const run of runs) {
            if (this.reach?.has(run.sheetId) === false) {
              this.reach.leave(run);
              continue;
            }
            cells.push(run);
            queue.push(run);
          }
        }
    }
    return new (next.constructor as Ranges["constructor"])(cells);
  };
}

/** The cells of a range that are wanted, those below each other together. */
function runsOf({ sheetId, zone: { left, right, top, bottom } }: Dependency, isWanted: (at: Position) => boolean) {
  const runs: Dependency[] = [];
  for (let col = left; col <= right; col++) {
    let run: Zone | undefined;
    for (let row = top; row <= bottom; row++) {
      if (!isWanted({ sheetId, col, row })) run = undefined;
      else if (run !== undefined) run.bottom = row;
      else {
        run = { left: col, right: col, top: row, bottom: row };
        runs.push({ sheetId, zone: run });
      }
    }
  }
  return runs;
}
