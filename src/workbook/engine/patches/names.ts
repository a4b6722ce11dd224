// The engine calculates the whole workbook anew when a range gets a name, another place or no name any more. Here only the
// formulas that say the name are calculated. It can go when the engine does so itself.
import type { Getters, Library, Position } from "../library.ts";

type Change = {
  readonly type: string;
  readonly name?: string;
  readonly oldRangeName?: string;
  readonly newRangeName?: string;
};
type Formula = {
  readonly id: string;
  readonly isFormula: boolean;
  readonly compiledFormula: { usesSymbol(name: string): boolean };
};
type Evaluation = new (
  ...args: never[]
) => {
  readonly getters: Getters;
  readonly shouldRebuildDependenciesGraph: boolean;
  positionsToUpdate: Position[];
  beforeHandle(change: Change): void;
};

const NAMING = new Set(["CREATE_NAMED_RANGE", "UPDATE_NAMED_RANGE", "DELETE_NAMED_RANGE"]);

export function nameWithoutCalculating(library: Library): void {
  const registry = library.registries.coreViewsPluginRegistry;
  const Evaluation = registry.get("evaluation") as Evaluation;
  registry.replace(
    "evaluation",
    class extends Evaluation {
      override beforeHandle(change: Change) {
        if (!NAMING.has(change.type) || this.shouldRebuildDependenciesGraph) return super.beforeHandle(change);
        const names = [change.name, change.oldRangeName, change.newRangeName].filter((name) => name !== undefined);
        this.positionsToUpdate.push(...positionsOf(this.getters, names));
      }
    },
  );
}

/** Where formulas say one of these names. */
function positionsOf(getters: Getters, names: readonly string[]): Position[] {
  const sheetIds = (getters.getSheetIds?.() ?? []) as readonly string[];
  return sheetIds.flatMap((sheetId) =>
    ((getters.getCells?.(sheetId) ?? []) as readonly Formula[])
      .filter(({ isFormula, compiledFormula }) => isFormula && names.some((name) => compiledFormula.usesSymbol(name)))
      .map(({ id }) => getters.getCellPosition?.(id) as Position),
  );
}
