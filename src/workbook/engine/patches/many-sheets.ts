// The engine does some work for every sheet there is whenever one of them changes. Here it is left until a sheet needs it, so that
// the two hundredth sheet is built as fast as the first.
import type { Getters, Library, Model } from "../library.ts";
import { type Change, SIZING } from "./paced-edits.ts";

type Adapter = { handle(change: Change): void };
type Colours = new (...args: never[]) => { finalize(): void; getCustomColors(): readonly string[] };

/**
 * After every command that paints, the engine goes over the cells of all sheets for the colours that its palette offers. They
 * are gathered when the palette is opened.
 */
export function gatherColoursWhenAsked(library: Library): void {
  const registry = library.registries.coreViewsPluginRegistry;
  const Colours = registry.get("custom_colors") as Colours;
  registry.replace(
    "custom_colors",
    class extends Colours {
      override finalize() {}
      override getCustomColors() {
        super.finalize();
        return super.getCustomColors();
      }
    },
  );
}

type Dimension = "COL" | "ROW";
type Positions = new (
  ...args: never[]
) => {
  computePositions(sheetId: string, dimension: Dimension): object;
  computeHeaderPositionsOfSheet(sheetId: string): Readonly<Record<Dimension, object>>;
};
type View = new (
  ...args: never[]
) => {
  readonly getters: Getters;
  readonly sheetsWithDirtyViewports: Set<string>;
  readonly shouldAdjustViewports: boolean;
  finalize(): void;
};

/** Where each row and column lies, and which of them fit on the screen, is worked out for the sheet that is looked at. */
export function placeWhatIsSeen(library: Library): void {
  const registry = library.registries.statefulUIPluginRegistry;
  const Positions = registry.get("header_positions") as Positions;
  registry.replace(
    "header_positions",
    class extends Positions {
      override computeHeaderPositionsOfSheet(sheetId: string) {
        const known: Partial<Record<Dimension, object>> = {};
        const along = (dimension: Dimension): object => {
          known[dimension] ??= this.computePositions(sheetId, dimension);
          return known[dimension];
        };
        return {
          get COL() {
            return along("COL");
          },
          get ROW() {
            return along("ROW");
          },
        };
      }
    },
  );
  const View = registry.get("viewport") as View;
  registry.replace(
    "viewport",
    class extends View {
      override finalize() {
        const seen = this.getters.getActiveSheetId?.();
        // After an undo the engine moves the views of all sheets.
        const later = this.shouldAdjustViewports ? [] : [...this.sheetsWithDirtyViewports].filter((id) => id !== seen);
        for (const sheetId of later) this.sheetsWithDirtyViewports.delete(sheetId);
        super.finalize();
        for (const sheetId of later) this.sheetsWithDirtyViewports.add(sheetId);
      }
    },
  );
}

/** What makes no range that reaches into a sheet. */
const NAMELESS = new Set(["ACTIVATE_SHEET", "CLEAR_CELLS"]);

/**
 * Where rows or columns come or go, the engine goes over the formulas of all sheets for those that reach into this one. None can
 * while it is new and nothing but its size was changed since.
 */
export function adaptNothingToNewSheets(model: Model): void {
  const { range } = model as unknown as { readonly range?: Adapter };
  if (range === undefined) throw new Error("The engine adapts its ranges somewhere else now");
  const adapt = range.handle.bind(range);
  let fresh: string | undefined;
  range.handle = (change) => {
    const { type, sheetId } = change;
    if (type === "CREATE_SHEET") fresh = sheetId;
    else if (SIZING.has(type) && sheetId === fresh) return;
    else if (!NAMELESS.has(type)) fresh = undefined;
    adapt(change);
  };
}
