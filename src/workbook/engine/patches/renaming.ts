// The engine calculates the whole workbook anew when a sheet gets another name. Formulas know a sheet by its number, so nothing
// is another value then, unless some formula says a name that no sheet has or reads by a name's text. It can go when the engine sees that itself.
import type { Getters, Library } from "../library.ts";

type Change = { readonly type: string };
type Formula = {
  readonly isFormula: boolean;
  readonly compiledFormula: {
    readonly rangeDependencies: readonly { readonly invalidSheetName?: string }[];
    usesSymbol(name: string): boolean;
  };
};
type Evaluation = new (
  ...args: never[]
) => {
  readonly getters: Getters;
  beforeHandle(change: Change): void;
};

/** Functions whose values may hang on what a sheet is called. */
const BY_NAME = ["INDIRECT", "CELL"];

export function renameWithoutCalculating(library: Library): void {
  const registry = library.registries.coreViewsPluginRegistry;
  const Evaluation = registry.get("evaluation") as Evaluation;
  registry.replace(
    "evaluation",
    class extends Evaluation {
      override beforeHandle(change: Change) {
        if (change.type !== "RENAME_SHEET" || hasByName(this.getters)) super.beforeHandle(change);
      }
    },
  );
}

function hasByName(getters: Getters): boolean {
  const sheetIds = (getters.getSheetIds?.() ?? []) as readonly string[];
  return sheetIds.some((sheetId) =>
    ((getters.getCells?.(sheetId) ?? []) as readonly Formula[]).some(
      ({ isFormula, compiledFormula }) =>
        isFormula &&
        (compiledFormula.rangeDependencies.some(({ invalidSheetName }) => invalidSheetName !== undefined) ||
          BY_NAME.some((name) => compiledFormula.usesSymbol(name))),
    ),
  );
}
