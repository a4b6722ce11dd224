import type { Library, Zone } from "./library.ts";
import type { Command } from "./plugins.ts";

/** A cell, or a column of a table, by the name that its template gives it; it moves with its cells. */
export type CellName = { readonly sheetId: string; readonly name: string; readonly zone: Zone };

const NAME_CELLS = "GRAMWRIGHT_NAME_CELLS";

/** Names cells of a sheet, in place of the names that it had. */
export const nameCells = (sheetId: string, names: readonly Omit<CellName, "sheetId">[]): Command => ({
  type: NAME_CELLS,
  payload: { sheetId, names },
});

type NamedZone = { readonly sheetId: string; readonly name: string; readonly range: { readonly zone: Zone } };
type Adapted = { readonly changeType: string; readonly range: NamedZone["range"] };
type NameCommand = { type: string; sheetId: string; sheetIdTo: string; names: readonly CellName[] };

/** Adds a part to the engine that keeps the names of cells, in the kept file too. No formula sees them. */
export function addCellNames(library: Library): void {
  library.registries.corePluginRegistry.add("gramwright_cell_names", cellNamesPlugin(library));
  library.coreTypes.add(NAME_CELLS);
  library.registries.inverseCommandRegistry.add(NAME_CELLS, (command) => [command]);
}

function cellNamesPlugin(library: Library): unknown {
  return class extends library.CorePlugin {
    static getters = ["getCellNames"];
    zones: readonly NamedZone[] = [];

    /** What was answered since `zones` became another list. */
    answers: { readonly of: readonly NamedZone[]; readonly bySheet: Map<string, readonly CellName[]> } | undefined;

    /** The same list as long as the names of the workbook stay where they are. */
    getCellNames(sheetId: string): readonly CellName[] {
      if (this.answers?.of !== this.zones) this.answers = { of: this.zones, bySheet: new Map() };
      const { bySheet } = this.answers;
      const known = bySheet.get(sheetId);
      if (known !== undefined) return known;
      const ofSheet = this.zones.filter((one) => one.sheetId === sheetId);
      const names = ofSheet.map(({ name, range }) => ({ sheetId, name, zone: range.zone }));
      bySheet.set(sheetId, names);
      return names;
    }

    adaptRanges({ applyChange }: { applyChange(range: unknown): Adapted }) {
      const remaining = this.zones.flatMap((one) => {
        const { changeType, range } = applyChange(one.range);
        if (changeType === "REMOVE") return [];
        return [changeType === "NONE" ? one : { ...one, range }];
      });
      this.history.update("zones", remaining);
    }

    handle(command: NameCommand) {
      const { type, sheetId, sheetIdTo } = command;
      const others = () => this.zones.filter((one) => one.sheetId !== sheetId);
      if (type === NAME_CELLS) this.history.update("zones", [...others(), ...this.placed(sheetId, command.names)]);
      if (type === "DELETE_SHEET") this.history.update("zones", others());
      if (type === "DUPLICATE_SHEET")
        this.history.update("zones", [...this.zones, ...this.placed(sheetIdTo, this.getCellNames(sheetId))]);
    }

    placed(sheetId: string, names: readonly Omit<CellName, "sheetId">[]): NamedZone[] {
      return names.map(({ name, zone }) => ({ sheetId, name, range: this.getters.getRangeFromZone(sheetId, zone) }));
    }

    import(data: { cellNames?: readonly CellName[] }) {
      this.zones = (data.cellNames ?? []).flatMap((one) => this.placed(one.sheetId, [one]));
    }

    export(data: { cellNames?: readonly CellName[] }) {
      if (this.zones.length > 0)
        data.cellNames = this.zones.map(({ sheetId, name, range }) => ({ sheetId, name, zone: range.zone }));
    }
  };
}
