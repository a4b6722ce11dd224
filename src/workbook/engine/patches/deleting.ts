import type { Library, Position, Zone } from "../library.ts";

type Change = { readonly type: string; readonly sheetId?: string };
type Range = { readonly sheetId: string; readonly zone: Zone };
type Interval = { readonly dependents: Range };
/** A tree of what depends on the rows of a column; what is in `buffer` it takes in when it is asked next. */
type Column = {
  root: object | null;
  buffer: Interval[];
  query(rows: { top: number; bottom: number }): readonly Interval[];
};
type Ranges = { readonly setsBySheetId: Record<string, object> };
/** What depends on the cells of a sheet is kept in a tree for each of its columns. */
type Graph = { readonly forest: Record<string, Record<string, Column>> };
type Evaluator = {
  readonly evaluatedCells: { clearSheet(sheetId: string): void };
  readonly spreadingRelations: {
    readonly arrayFormulasToResults: { keysForSheet(sheetId: string): readonly Position[] };
    removeNode(formula: Position): void;
  };
  formulaDependencies(): Graph;
  getCellsDependingOn(ranges: Iterable<Range>): Ranges;
};
type Evaluation = new (
  ...args: never[]
) => {
  readonly evaluator: Evaluator;
  readonly shouldRebuildDependenciesGraph: boolean;
  positionsToUpdate: readonly Position[];
  beforeHandle(change: Change): void;
  finalize(): void;
};

/**
 * When a sheet is deleted the engine calculates the whole workbook anew. Only what read that sheet is concerned: where nothing
 * did, the sheet is forgotten and the others stay as they are.
 */
export function deleteWithoutCalculating(library: Library): void {
  const registry = library.registries.coreViewsPluginRegistry;
  const Evaluation = registry.get("evaluation") as Evaluation;
  registry.replace(
    "evaluation",
    class extends Evaluation {
      /** Sheets that are deleted and whose formulas still stand in the graph. */
      private readonly gone = goneFrom(this.evaluator);
      override beforeHandle(change: Change) {
        const { type, sheetId } = change;
        const isRead = () =>
          sheetId === undefined || isReadElsewhere(this.evaluator.formulaDependencies(), sheetId, this.gone);
        if (type !== "DELETE_SHEET" || this.shouldRebuildDependenciesGraph || isRead()) super.beforeHandle(change);
        else this.forget(sheetId ?? "");
      }
      override finalize() {
        if (this.shouldRebuildDependenciesGraph) this.gone.clear();
        super.finalize();
      }
      private forget(sheetId: string) {
        const { evaluatedCells, spreadingRelations } = this.evaluator;
        for (const formula of spreadingRelations.arrayFormulasToResults.keysForSheet(sheetId))
          spreadingRelations.removeNode(formula);
        evaluatedCells.clearSheet(sheetId);
        this.positionsToUpdate = this.positionsToUpdate.filter((position) => position.sheetId !== sheetId);
        delete this.evaluator.formulaDependencies().forest[sheetId];
        this.gone.add(sheetId);
        if (this.gone.size >= MAX_GONE) {
          takeOut(this.evaluator.formulaDependencies(), this.gone);
          this.gone.clear();
        }
      }
    },
  );
}

const ALL_ROWS = { top: 0, bottom: Number.POSITIVE_INFINITY };
/** So many deleted sheets may stand in the graph before it is searched for their formulas. */
const MAX_GONE = 10;

function isReadElsewhere({ forest }: Graph, sheetId: string, gone: ReadonlySet<string>): boolean {
  return Object.values(forest[sheetId] ?? {}).some((column) =>
    column.query(ALL_ROWS).some(({ dependents: { sheetId: reader } }) => reader !== sheetId && !gone.has(reader)),
  );
}

/** Nothing of the sheets that are gone depends on anything any more. */
function takeOut({ forest }: Graph, gone: ReadonlySet<string>): void {
  for (const column of Object.values(forest).flatMap((columns) => Object.values(columns))) {
    const all = column.query(ALL_ROWS);
    const left = all.filter(({ dependents }) => !gone.has(dependents.sheetId));
    if (left.length === all.length) continue;
    column.root = null;
    column.buffer = left;
  }
}

/** A set of sheets whose formulas depend on nothing any more. */
function goneFrom(evaluator: Evaluator): Set<string> {
  const gone = new Set<string>();
  const dependents = evaluator.getCellsDependingOn.bind(evaluator);
  evaluator.getCellsDependingOn = (ranges) => {
    const cells = dependents(ranges);
    for (const sheetId of gone) delete cells.setsBySheetId[sheetId];
    return cells;
  };
  return gone;
}
