// Calculating a whole workbook the engine goes through every place of every sheet, 26 000 in one that is empty. Here it goes as
// far as there are cells. It can go when the engine does so itself.
import type { Library, Position, Zone } from "../library.ts";

type Place = { readonly sheetId: string; readonly zone: Zone };
type Evaluator = {
  readonly getters: {
    getSheetIds(): readonly string[];
    getSheet(sheetId: string): { readonly rows: readonly { readonly cells: Readonly<Record<string, unknown>> }[] };
  };
  readonly evaluatedCells: object;
  readonly spreadingRelations: {
    readonly arrayFormulasToResults: { keysForSheet(sheetId: string): readonly Position[] };
  };
  evaluateAllCells(): void;
  evaluate(places: readonly Place[]): void;
};
type Handler = { readonly evaluator?: Evaluator };

export function goWhereCellsAre(library: Library): void {
  const { handlers = [] } = new library.Model({ sheets: [{ id: "bare" }] }) as unknown as { handlers?: Handler[] };
  const evaluator = handlers.find((one) => one.evaluator !== undefined)?.evaluator;
  if (evaluator === undefined) throw new Error("The engine evaluates somewhere else now");
  const shared = Object.getPrototypeOf(evaluator) as Evaluator;
  const Cells = evaluator.evaluatedCells.constructor as new () => object;
  shared.evaluateAllCells = function () {
    (this as { evaluatedCells: object }).evaluatedCells = new Cells();
    this.evaluate(this.getters.getSheetIds().flatMap((sheetId) => usedPlace(this, sheetId)));
  };
}

/** The smallest rectangle around the cells of a sheet, and around formulas that filled others and are gone. */
function usedPlace({ getters, spreadingRelations }: Evaluator, sheetId: string): Place[] {
  const zone = { left: 0, right: -1, top: 0, bottom: -1 };
  const reach = (row: number, col: number) => {
    zone.bottom = Math.max(zone.bottom, row);
    zone.right = Math.max(zone.right, col);
  };
  for (const [row, { cells }] of getters.getSheet(sheetId).rows.entries())
    for (const column in cells) if (cells[column] !== undefined) reach(row, Number(column));
  for (const { row, col } of spreadingRelations.arrayFormulasToResults.keysForSheet(sheetId)) reach(row, col);
  return zone.right < 0 ? [] : [{ sheetId, zone }];
}
