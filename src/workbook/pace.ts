import type { Getters, Library, Position, Zone } from "./library.ts";

type Cut = { getters: Getters; dispatch(type: string, payload: object): void };
type Evaluation = new (...args: never[]) => { readonly getters: Getters; finalize(): void };

/** Workbooks whose cells wait with calculating, by their getters. */
const waiting = new WeakSet<object>();

/** While a workbook waits, commands change its cells and calculate nothing; what they changed is calculated afterwards. */
export function calculateLater(library: Library): void {
  const registry = library.registries.coreViewsPluginRegistry;
  const Evaluation = registry.get("evaluation") as Evaluation;
  registry.replace(
    "evaluation",
    class extends Evaluation {
      override finalize() {
        if (!waiting.has(this.getters)) super.finalize();
      }
    },
  );
}

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
