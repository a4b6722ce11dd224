import type { Library, Zone } from "../library.ts";

type Dependency = { readonly sheetId: string; readonly zone: Zone };
type Graph = { addDependencies(formula: object, ranges: readonly Dependency[]): void };
type Handler = { readonly evaluator?: { formulaDependencies(): Graph } };

/**
 * The engine notes one place for all columns that a formula reads, and stretches it where formulas below each other read the
 * same column: then cells wait for cells that they never read, at times in a circle, until it gives up after 30 rounds. Each
 * column gets a note of its own.
 */
export function separateDependents(library: Library): void {
  const { handlers = [] } = new library.Model({ sheets: [{ id: "bare" }] }) as unknown as { handlers?: Handler[] };
  const graph = handlers.find(({ evaluator }) => evaluator !== undefined)?.evaluator?.formulaDependencies();
  if (graph === undefined) throw new Error("The engine keeps its dependencies somewhere else now");
  const shared = Object.getPrototypeOf(graph) as Graph;
  const { addDependencies } = shared;
  shared.addDependencies = function (formula, ranges) {
    for (const range of ranges) {
      for (const column of columnsOf(range)) addDependencies.call(this, formula, [column]);
    }
  };
}

/** Only what the graph looks at is carried over; a range that cannot be read stays whole, for the engine to leave out. */
function columnsOf(range: Dependency & { readonly invalidXc?: string; readonly invalidSheetName?: string }) {
  const { sheetId, zone, invalidXc, invalidSheetName } = range;
  if (invalidXc !== undefined || invalidSheetName !== undefined || zone.left >= zone.right) return [range];
  return Array.from({ length: zone.right - zone.left + 1 }, (_, at) => ({
    sheetId,
    zone: { ...zone, left: zone.left + at, right: zone.left + at },
  }));
}
