import type { Getters, Library } from "../library.ts";

type Formula = { readonly [more: string]: unknown };
type Cell = { readonly compiledFormula?: Formula };
type Row = { readonly cells: Readonly<Record<string, string | undefined>> };
type Ids = Record<string, number>;
type Items = Record<string, unknown>;
type SheetData = { readonly id: string; cells?: object; styles?: Ids; formats?: Ids };
type Data = { readonly sheets: readonly SheetData[]; styles?: Items; formats?: Items };
type Cells = new (
  ...args: never[]
) => {
  readonly getters: Getters;
  readonly cells: Readonly<Record<string, Readonly<Record<string, Cell>> | undefined>>;
  export(data: Data, isPacked: boolean): void;
};
/** What a sheet was when it was written, and what was written then. */
type Written = { readonly of: readonly unknown[]; readonly data: Data };

/**
 * Whenever the workbook is kept, the engine writes out the cells of every sheet, with each cell's look in words. Here a sheet whose
 * cells are the same as before, in the same places, is not written anew: after an edit that is one sheet of all.
 */
export function writeWhatChanged(library: Library): void {
  const registry = library.registries.corePluginRegistry;
  const Cells = registry.get("cell") as Cells;
  registry.replace(
    "cell",
    class extends Cells {
      private readonly written = new Map<string, Written>();
      private names = "";
      override export(data: Data, isPacked: boolean) {
        if (isPacked) return super.export(data, isPacked);
        // Formulas say the names of other sheets.
        const names = JSON.stringify(data.sheets.map(({ id }) => [id, this.getters.getSheetName?.(id)]));
        if (names !== this.names) this.written.clear();
        this.names = names;
        const [styles, formats] = [gathered(), gathered()];
        for (const sheet of data.sheets) {
          const part = this.sheetData(sheet.id);
          const [exported] = part.sheets;
          sheet.cells = exported?.cells ?? {};
          sheet.styles = styles.add(exported?.styles, part.styles);
          sheet.formats = formats.add(exported?.formats, part.formats);
        }
        data.styles = styles.items;
        data.formats = formats.items;
      }
      private sheetData(sheetId: string): Data {
        const of = this.stateOf(sheetId);
        const known = this.written.get(sheetId);
        if (known !== undefined && known.of.length === of.length && known.of.every((one, at) => one === of[at]))
          return known.data;
        const data: Data = { sheets: [{ id: sheetId }] };
        super.export(data, false);
        this.written.set(sheetId, { of, data });
        return data;
      }
      /** Its cells in order, each with its place and its formula: a cell that changes is another one, but for its formula. */
      private stateOf(sheetId: string): unknown[] {
        const cells = this.cells[sheetId] ?? {};
        const rows = this.getters.getSheet?.(sheetId).rows as readonly Row[];
        const state: unknown[] = [];
        for (const [row, { cells: ofRow }] of rows.entries())
          for (const column in ofRow) {
            const id = ofRow[column];
            const cell = id === undefined ? undefined : cells[id];
            if (cell !== undefined) state.push(row, column, cell, cell.compiledFormula);
          }
        return state;
      }
    },
  );
}

/** Items of all sheets, each once under a number; `add` gives a sheet's zones the numbers of its items. */
function gathered() {
  const items: Items = {};
  const known = new Map<string, number>();
  return {
    items,
    add(zones: Ids = {}, values: Items = {}): Ids {
      const numbers = new Map<string, number>();
      for (const [id, item] of Object.entries(values)) {
        const text = JSON.stringify(item);
        const number = known.get(text) ?? known.size + 1;
        known.set(text, number);
        items[number] = item;
        numbers.set(id, number);
      }
      return Object.fromEntries(Object.entries(zones).map(([zone, id]) => [zone, numbers.get(String(id)) ?? 0]));
    },
  };
}
