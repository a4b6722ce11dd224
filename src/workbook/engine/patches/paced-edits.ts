import type { Getters, Library, Position, Zone } from "../library.ts";

type Cut = { getters: Getters; dispatch(type: string, payload: object): void };
export type Change = { readonly type: string; readonly sheetId?: string };
type Evaluation = new (
  ...args: never[]
) => { readonly getters: Getters; readonly evaluator: Evaluator; beforeHandle(change: Change): void; finalize(): void };
type Positions = Iterable<Position> & { add(position: Position): void };
/** It keeps where filled formulas are blocked, in a table with room for the sheets that it knew. */
type Evaluator = { blockedArrayFormulas: Positions; createEmptyPositionSet(): Positions };

/** Workbooks whose cells wait with calculating, by their getters. */
const waiting = new WeakSet<object>();

let isOpening = false;

/** Opens a workbook; its cells are calculated with whatever is done next. */
export function openUncalculated<T>(open: () => T): T {
  isOpening = true;
  try {
    return open();
  } finally {
    isOpening = false;
  }
}

/** Rows and columns of a sheet that has no cells yet are nobody's concern. */
export const SIZING = new Set(["ADD_COLUMNS_ROWS", "REMOVE_COLUMNS_ROWS"]);

/**
 * While a workbook waits, commands change its cells and calculate nothing; what they changed is calculated afterwards. A new sheet
 * changes nothing that is there, nor does one that goes before it had a cell: without a word here the engine would calculate the whole workbook anew.
 */
export function calculateLater(library: Library): void {
  const registry = library.registries.coreViewsPluginRegistry;
  const Evaluation = registry.get("evaluation") as Evaluation;
  registry.replace(
    "evaluation",
    class extends Evaluation {
      private readonly added = new Set<string>();
      override beforeHandle(change: Change) {
        const { type, sheetId = "" } = change;
        if (type === "CREATE_SHEET") this.added.add(sheetId);
        else if (type === "DELETE_SHEET" && this.added.has(sheetId) && !hasCells(this.getters, sheetId))
          this.added.delete(sheetId);
        else if (!SIZING.has(type) || !this.added.has(sheetId) || hasCells(this.getters, sheetId))
          super.beforeHandle(change);
      }
      override finalize() {
        if (isOpening || waiting.has(this.getters)) return;
        if (this.added.size > 0) this.makeRoom();
        this.added.clear();
        super.finalize();
      }
      private makeRoom() {
        const { blockedArrayFormulas: known } = this.evaluator;
        this.evaluator.blockedArrayFormulas = this.evaluator.createEmptyPositionSet();
        const there = new Set(this.getters.getSheetIds?.() as readonly string[]);
        for (const position of known)
          if (there.has(position.sheetId)) this.evaluator.blockedArrayFormulas.add(position);
      }
    },
  );
}

const hasCells = (getters: Getters, sheetId: string): boolean =>
  ((getters.getCells?.(sheetId) ?? []) as readonly object[]).length > 0;

/** Stops and starts the calculating of one workbook. */
export function pacer(getters: Getters, calculate: () => void) {
  let changed = false;
  const goOn = () => {
    waiting.delete(getters);
    if (changed) calculate();
    changed = false;
  };
  return {
    /** A command was carried out. */
    note() {
      changed = waiting.has(getters);
    },
    /** Runs work whose changes are calculated once, at its end. */
    together<T>(work: () => T): T {
      if (waiting.has(getters)) return work();
      waiting.add(getters);
      try {
        return work();
      } finally {
        goOn();
      }
    },
    /** Somebody reads a value: what waits is calculated now. */
    settle() {
      if (!waiting.has(getters) || !changed) return;
      goOn();
      waiting.add(getters);
    },
  };
}

/** Taking out 800 rows, the engine clears their 20 000 cells by a command each, also those that hold nothing. */
export function clearOnlyCells(library: Library): void {
  const Cells = library.registries.corePluginRegistry.get("cell") as { prototype: object };
  Object.assign(Cells.prototype, {
    clearCells(this: Cut, sheetId: string, zones: readonly Zone[]) {
      for (const { left, top, right, bottom } of zones) {
        for (let col = left; col <= right; col++) {
          for (let row = top; row <= bottom; row++) {
            const position: Position = { sheetId, col, row };
            if (this.getters.getCell?.(position) === undefined) continue;
            this.dispatch("UPDATE_CELL", { ...position, content: "", style: null, format: "" });
          }
        }
      }
    },
  });
}
